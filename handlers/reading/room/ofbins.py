"""Few words that are of the bins only where the room has just talked of them."""

from handlers.reading.signs.seenalone import CUES as SIGNS
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_HARM = words_in(
    "dog dogs puppy cat cats kitten hens chickens rabbit animal kids kid child children toddler "
    "baby son daughter pregnant safe dangerous harmful poisonous toxic drink lick eat ate drank "
    "hands hand skin face eyes eye spilled spilt"
)
_BROKEN = words_in(
    "tap lid spigot leak leaks leaking ruined lost fine good ok okay normal bad "
    "throw saved ready ripe bury dig ground soil"
)
_CUES = SIGNS | _HARM | _BROKEN
_LONGEST = 90
_WORD = Late(r"[a-z]+")


def may_be_of_bins(body: str) -> bool:
    """Whether a message is so short and so worded that it may be of the bins talked of before."""
    if len(body) > _LONGEST:
        return False
    return not _CUES.isdisjoint(found[0] for found in _WORD.finditer(body.casefold()))
