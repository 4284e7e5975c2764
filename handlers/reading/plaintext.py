"""A message as one plain text, that patterns are held against, and how long it is."""

from collections.abc import Sequence
from itertools import repeat

from handlers.reading.calendar.days import Day
from handlers.reading.message import Message
from handlers.reading.words.once import once

SHORT = 16
"""Words in a correction or an answer; longer messages tell something new."""


def plain_text(message: Message, *, days: bool = False) -> str:
    """The words with their stops, bin names as `qbin` and the bot's name left out.

    With `days`, a day is `qday`.
    """
    return _text_with_days(message) if days else _text(message)


@once
def _text(message: Message) -> str:
    return _plain(message, ())


@once
def _text_with_days(message: Message) -> str:
    return _plain(message, message.days)


def _plain(message: Message, days: Sequence[Day]) -> str:
    norms = message.norms.copy()
    for i in message.bot:
        norms[i] = ""
    if not (message.bins or days):
        return _said(norms)
    refs: dict[int, tuple[int, str]] = {d.start: (d.end, "qday") for d in days}
    refs |= {b.start: (b.end, "qbin") for b in message.bins}
    behind = 0
    for start, (end, name) in sorted(refs.items()):
        if start >= behind:
            norms[start:end] = [name, *repeat("", end - start - 1)]
            behind = end
            if norms[end : end + 2] == _PARTED:
                norms[end : end + 2] = ["'s", ""]
    return _said(norms)


_PARTED = ["'", "s"]
"""Behind a name that ends in a number: "bin 3's"."""


def _said(norms: list[str]) -> str:
    return " ".join([norm for norm in norms if norm not in _UNSAID]).strip(" ,.!:?-")


_UNSAID = frozenset({"", "@", "☺"})


def words_between(message: Message, start: int, end: int) -> str:
    """The words start to end as they are read, one space between."""
    return " ".join(message.norms[start:end])


def word_count(message: Message) -> int:
    """Words of the message, its signs left out."""
    return len([w for w in message.words if w.kind != "sign"])


def with_people(message: Message, text: str) -> str:
    """The text with members as `qmember`."""
    if not message.members:
        return text
    names = {" ".join(message.norms[m.start : m.end]) for m in message.members}
    words = [("qmember" if word in names else word) for word in text.split(" ")]
    return " ".join(words)


def is_asking(message: Message) -> bool:
    """Whether any part of the message asks."""
    return any(c.sense == "ask" for c in message.clauses) or message.asked
