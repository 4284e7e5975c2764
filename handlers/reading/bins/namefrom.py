"""How far a name goes that is said from a word on: "Sir Rots-a-Lot", "Oscar the Grouch"."""

from collections.abc import Sequence

from handlers.reading.calendar.daywords import MONTHS, WEEKDAYS
from handlers.reading.message import Message
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.titles import end_of_titled
from handlers.reading.words.vocabulary import words_in

_NAME_ENDS = words_in(
    "and but it its is for with so in on at the a today to from because cos as after by who "
    "which we i he she now this yesterday if , . ; : ! ? ( ) - — ☺ | then near lol haha hope "
    "see sorry thanks will x xx ta cheers must cant since also already until before when while "
    "start starts started bc bcos bcoz coz cuz cus becoz though tho hehe obvs obviously < >"
)


def is_capital(message: Message, i: int) -> bool:
    """Whether word i is written as a name is, and names no day."""
    word = message.words[i] if i < len(message.words) else None
    capital = word is not None and word.kind == "word" and word.text[:1].isupper()
    return capital and message.norms[i] not in WEEKDAYS and message.norms[i] not in MONTHS


_BEFORE_NAME = words_in("'s it the him her er a \" ' as bin one them : <")
_TOLD_APART = words_in("small little wee big young old junior baby tiny new great")
"""What tells a new bin from one of the same name: "small Grace"."""


def name_from(message: Message, i: int, end: int, *, capital: bool = False) -> str | None:
    """The name said from word i on: a known one, a quoted one, or the words to the next stop."""
    for ref in message.bins:
        if i <= ref.start <= i + 2 and ref.name is not None and not capital:
            told_apart = message.norms[ref.start - 1] in _TOLD_APART and ref.start > i
            return f"{message.words[ref.start - 1].text} {ref.name}" if told_apart else ref.name
    while i < end and (message.norms[i] in _BEFORE_NAME or _is_new_one(message.norms, i)):
        i += 1
    if titled := end_of_titled(message.words, message.norms, i):
        return message.text(i, min(titled, end))
    stop = i
    limit = min(end, i + 4)
    while stop < limit:
        if not _goes_on(message, i, stop, end):
            word = message.words[stop]
            if message.norms[stop] in NAME_STOPS:
                break
            if capital and word.kind == "word" and not word.text[:1].isupper():
                break
        stop += 1
    if stop > i and message.words[i].kind == "number":
        return None
    return message.hyphened(i, stop) or None


def _is_new_one(norms: Sequence[str], i: int) -> bool:
    """ "Named the new one Dot": words for a bin before its name."""
    return norms[i] == "new" and norms[i + 1 : i + 2] != [] and norms[i + 1] in _NEW_ONES


_NEW_ONES = BIN_WORDS | {"one"}
NAME_STOPS = _NAME_ENDS | {'"', "'"}


def _goes_on(message: Message, start: int, i: int, end: int) -> bool:
    """Whether a small word stands within a name: "Sir Rots-a-Lot", "Oscar the Grouch"."""
    if i == start or message.words[i].text[:1].isupper():
        return False
    hyphen = message.body[message.words[i].start - 1 : message.words[i].start] == "-"
    linked = message.norms[i] in _LINKS and message.words[start].text[:1].isupper()
    return hyphen or (linked and i + 1 < end and is_capital(message, i + 1))


_LINKS = words_in("the of von van de la du da mac")
