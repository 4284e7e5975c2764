"""Few words, or a question, that are of the bins only where the room has just talked of them."""

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
_PUT = words_in("went gone topped added put dropped fed chucked buried")
_COLD = words_in("frozen froze frost cold warm hot degrees gets longer")
_CLOSED = words_in("close closed closing shut shutting")
_DRAWN = words_in("liquid juice leachate jar jars bottle bottles jug flask")
_CUES = SIGNS | _HARM | _BROKEN | _PUT | _COLD | _CLOSED | _DRAWN
_ASKING = words_in(
    "what whats which who whos why how where when is are was can could may will do does did should "
    "any and must"
)
"""What a question begins with that is asked without its sign."""
_LONGEST = 90
_WORD = Late(r"[a-z]+")


def may_be_of_bins(body: str) -> bool:
    """Whether a message is so short and so worded that it may be of the bins talked of before."""
    if len(body) > _LONGEST:
        return False
    words = [found[0] for found in _WORD.finditer(body.casefold())]
    return (
        any(sign in body for sign in "?°")
        or not {*words[:1]}.isdisjoint(_ASKING)
        or not _CUES.isdisjoint(words)
    )
