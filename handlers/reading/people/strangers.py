"""Somebody who is said to have done it and whom no member of the room is called like."""

from difflib import get_close_matches

from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.people.members import may_be_name
from handlers.reading.questions.question import CRAFT
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word

_BETWEEN = words_in("has have had 's just also already then now kindly")
"""Words between a name and what its bearer did."""
_JOINED = words_in(
    ", and & ; : . ! - auntie aunty aunt uncle mr mrs ms miss old our then also earlier later "
    "meanwhile so but because cos think reckon believe guess tonight morning evening afternoon"
) | {"\n"}
"""What may stand before a name within a message."""
_LEADS = sorted(
    words_in(
        "just also then today and ive have finally yesterday now again already so well she they "
        "who you this morning tonight later maybe with weve"
    )
)
"""Words that begin a message, and are written with slips."""
_AND = words_in("and & ,")
_US = words_in("me i us we myself")
_SELVES = words_in(
    "himself herself itself themself themselves myself yourself yerself hisself himsel"
)
"""Whoever is so called ("Himself put 2 kg in") is known at home, and not by that name."""
_NOBODY = CRAFT | _BETWEEN | _SELVES | frozenset(_LEADS) | words_in("starter bran liquid scraps")
_DEEDS = words_in(
    "put add drain seal bury throw tip chuck bring dump empty toss pop bin drop shut close pour "
    "tap dig feed"
)
_ALIKE = 0.74


def stranger(group: Group) -> str | None:
    """ "Zoe put 800 g in": the name, where it can be nothing else, right before what was done."""
    message, verb = group.message, group.verb
    if verb is None or verb.verb.plain not in _DEEDS or group.sense != "did":
        return None
    if not message.context.in_room:
        return None
    at = verb.start - 1
    while at > group.start and message.norms[at] in _BETWEEN:
        at -= 1
    if at < group.start or not _is_name(message.words[at]):
        return None
    spans = (message.bins, message.items, message.members, message.days, message.signs)
    if at in indexes(*spans) or at in message.bot:
        return None
    first = _first_of(message, at)
    return None if first is None else message.words[first].text


def _first_of(message: Message, at: int) -> int | None:
    """Where the first of those who did it together is named; None where the word is no name."""
    if at == 0:
        slip = get_close_matches(message.norms[at], _LEADS, n=1, cutoff=_ALIKE)
        return None if slip else at
    before, other = message.norms[at - 1], at - 2
    if before not in _AND or other < 0:
        dated = any(day.end == at for day in message.days)  # "yesterday Zoe put 800 g in"
        return at if dated or before in _JOINED else None
    if other in indexes(message.members) or message.norms[other] in _US:
        return None  # "me and Zoe"
    together = before != "," and _is_name(message.words[other])
    return other if together else at  # "Tom and Zoe"


def _is_name(word: Word) -> bool:
    return may_be_name(word) and word.norm not in _NOBODY
