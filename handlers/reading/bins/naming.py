"""The name that a new bin is given: "called Dot", "meet Dot", "new bin: Dot", "we call him Dot"."""

from collections.abc import Sequence

from handlers.reading.bins.givennames import CALLED, NEVER_NAMES, named_by, written
from handlers.reading.bins.lonebins import lone_bin
from handlers.reading.bins.namefrom import is_capital, name_from
from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.words.binwords import BIN_WORDS


def called(group: Group) -> bool:
    """Whether a word of naming stands in the group."""
    return not CALLED.isdisjoint(group.norms)


def _named_already(group: Group) -> str | None:
    """The bin that the words name, if they do not only say that it is a new one."""
    norms = group.message.norms
    names = [
        b.name
        for b in group.bins
        if b.name is not None and "from" not in norms[max(0, b.start - 2) : b.start]
    ]
    fresh = ("new", "second", "third", "other", "spare")
    return next((name for name in names if name.split()[0] not in fresh), None)


_NEAR = 16
"""Words behind the sentence of a new bin in which its name is looked for."""


def new_name(group: Group) -> str | None:
    """The name of a bin that was started, where its own sentence says it."""
    message = group.message
    sentence = message.sentences[group.clauses[0].sentence]
    if told := _said_to_be_called(group, sentence.end):
        return told
    called_next = message.has_in(_CALLING, sentence.end) and _called_next(message, sentence.end)
    if found := called_next or _named_already(group) or _greeted(group):
        return found
    sized = [a.end for a in group.amounts if a.size]
    generic = group.bins[0].end if group.bins else sized[0] if sized else _behind_new_one(group)
    if generic and message.norms[generic : generic + 2] in (
        ["in", "the"],
        ["on", "the"],
        ["for", "the"],
    ):
        return lone_bin(message) or name_from(message, generic + 2, sentence.end)
    if group.verb is None:
        return name_behind(group) or _introduced(group)
    said = name_from(message, group.verb.end, group.end, capital=True)
    return said or _listed_name(message, group.verb.end, sentence.end) or name_behind(group)


def _behind_new_one(group: Group) -> int:
    """Index behind "one" in "starting a fresh one in the closet"; 0 if none is begun so."""
    norms = group.message.norms
    ones = (i for i in range(group.start + 1, group.end) if norms[i] == "one")
    return next((i + 1 for i in ones if norms[i - 1] in ("new", "fresh", "second", "another")), 0)


def _said_to_be_called(group: Group, end: int) -> str | None:
    """The name behind a word of naming, or one that a bin is said to answer to or to bear."""
    message = group.message
    for i in range(group.start, min(len(message.norms) - 2, end + 8)):
        if message.norms[i] == "name" and (lead := _behind_name(message.norms, i + 1)):
            return name_from(message, lead, len(message.norms))
    for i in range(group.start, end - 1):
        if message.norms[i : i + 2] == ["name", "of"]:
            return name_from(message, i + 2, end)
        if message.norms[i] in CALLED and message.norms[i + 1] not in NEVER_NAMES:
            name = name_from(message, i + 1, end)
            if name:
                return name
    near = min(len(message.norms), end + _NEAR)
    return named_by(message, group.start, near) or written(message, group.start, near)


def _called_next(message: Message, start: int) -> str | None:
    """ "New bin, 15 litres, Alf's old one. Calling it Tetchy": the next sentence names it."""
    norms = message.norms
    at = next((i for i in range(start, min(start + 4, len(norms) - 1)) if norms[i] in CALLED), 0)
    if at and (told := name_from(message, at + 1, len(norms), capital=True)):
        return told
    if at and norms[at + 1] in _THE_BIN and norms[at + 2 : at + 3] and norms[at + 2] not in _NOT_SO:
        return name_from(message, at + 2, len(norms))
    for i in range(start, min(start + _LED_BY, len(norms) - 2)):  # "they call him Tetchy"
        if norms[i] in _CALLING and norms[i + 1] in _THE_BIN and is_capital(message, i + 2):
            return name_from(message, i + 2, len(norms), capital=True)
    return None


_CALLING = CALLED | {"call", "calls"}
_LED_BY = 8
"""Words of a sentence before the name that it gives."""
_THE_BIN = frozenset({"it", "him", "her", "this"})
_NOT_SO = NEVER_NAMES | frozenset({"a", "an", "quits", "off", "my", "our", "something", "names"})
"""Behind "calling it" none of these is a name."""


def _behind_name(norms: Sequence[str], i: int) -> int:
    """Index behind what joins "name" and the name ("is", ":", "will be"); 0 if nothing does."""
    if norms[i : i + 1] and norms[i] in (":", "is", "="):
        return i + 1
    return i + 2 if norms[i : i + 2] in (["will", "be"], ["shall", "be"], ["to", "be"]) else 0


def _introduced(group: Group) -> str | None:
    """ "Mabel is our new bin": the capital words before the copula."""
    message = group.message
    sentence = message.sentences[group.clauses[0].sentence]
    for i in range(sentence.start + 1, min(sentence.start + 4, sentence.end - 1)):
        if message.norms[i] in ("is", "'s") and message.norms[i + 1] in ("our", "my", "the", "a"):
            return name_from(message, sentence.start, i, capital=True)
    return None


def _listed_name(message: Message, start: int, end: int) -> str | None:
    """ "New bin started today: stairwell, 15 litres": the words behind the colon."""
    for i in range(start, end - 1):
        if message.norms[i] == ":" and message.words[i + 1].kind == "word":
            vessel = not BIN_WORDS.isdisjoint(message.norms[i + 1 : i + 3])  # "a bucket of 15 L"
            return None if vessel else name_from(message, i + 1, end)
    return None


def _greeted(group: Group) -> str | None:
    """ "Say hello to Doris", "meet Doris"."""
    message = group.message
    sentence = message.sentences[group.clauses[0].sentence]
    for i in range(sentence.start, sentence.end - 1):
        if message.norms[i] in ("meet", "introducing", "welcome") or message.norms[i : i + 2] == [
            "hello",
            "to",
        ]:
            at = i + 1 if message.norms[i] != "hello" else i + 2
            return name_from(message, at, sentence.end, capital=True)
    return None


def name_behind(group: Group) -> str | None:
    """ "New bin alert: Gertrude, 15 L": the capital words behind the first stop."""
    message = group.message
    sentence = message.sentences[group.clauses[0].sentence]
    for i in range(group.start, sentence.end - 1):
        if (
            message.norms[i] in (":", ",", "-", "—", "(")
            and message.words[i + 1].text[:1].isupper()
        ):
            return name_from(message, i + 1, sentence.end, capital=True)
    return None
