"""Of several bins told at once, some were caught or none: which, how to tell the others, and what
is told of them next.
"""

from collections.abc import Iterator
from dataclasses import replace
from datetime import datetime
from zoneinfo import ZoneInfo

from handlers.answer import Answer, Query, Turn
from handlers.phrasing import the, volume
from handlers.practice.figure import listed
from handlers.reading.acts import Act, Open, Unsure
from handlers.reading.bins.binroll import bins_told
from handlers.reading.bins.sizes import size_of_each
from handlers.reading.context import Context
from handlers.reading.message import read_message
from handlers.reading.words.binwords import BIN_WORDS, PLACE_NAMES, TOLD_BY
from storage.book import Book

MORE = "bins that are not told yet"
"""The rule of those left of a list that is told bit by bit."""


def some_of(act: Unsure, turn: Turn) -> Answer:
    """The question which bins there are, or whether those that were caught are to be written
    down.
    """
    count = act.count or 0
    named = [_with_size(one, turn) for one in act.guess if isinstance(one, Open) and one.bin]
    if not named:
        return Answer(say=_which(act, turn), query=Query.about(act, lacks="bins"))
    say = f"You told me of {count} bins, and I caught only {listed(named)}."
    rest = "Tell me the others in few words, such as “opened the red bin, 12 L”."
    say = f"{say} Shall I write that down? {rest}"
    return Answer(say=say, query=Query.about(*act.guess, lacks="yes"))


def _which(act: Unsure, turn: Turn) -> str:
    sizes = [one.capacity_l for one in act.guess if isinstance(one, Open) and one.capacity_l]
    if MORE in act.rules:
        return "And the other one?" if act.count == 1 else f"And the other {act.count}?"
    if sizes:
        return (
            f"{act.count} bins of {volume(sizes[0], turn.units)} each. What are they called, or "
            "where do they stand? Say it in few words, such as “red and shed”."
        )
    return (
        f"You told me of {act.count} bins. Which are they? Tell me each in few words, such as “red "
        "12 L, shed 20 L”."
    )


async def told_next(words: str, asked: Unsure, asked_at: datetime, book: Book) -> list[Act] | None:
    """The bins that the next words name, with what is still owed; None if they name none."""
    context = Context(
        at=asked_at,
        zone=ZoneInfo(book.room.zone),
        units=book.room.units,
        members=tuple([member.name for member in await book.members()]),
        in_room=True,
    )
    message = read_message(words, context)
    if (size := size_of_each(message)) is not None:
        return [replace(asked, guess=(Open(capacity_l=size),))]
    size = next((one.capacity_l for one in asked.guess if isinstance(one, Open)), None)
    known = {bin.name.casefold() for bin in await book.bins()}
    count = asked.count or 0
    for lead in _leads(count, size, one=message.has(_OF_A_BIN) or bool(message.measured())):
        told = bins_told(read_message(f"{lead}{words}", context))
        opened = [act for act in told if isinstance(act, Open) and act.bin]
        if opened and len(opened) == len(told) and len(opened) <= count:
            break
    else:
        return None
    if any((one.bin or "").casefold() in known for one in opened):
        return None
    sized = [replace(one, capacity_l=one.capacity_l or size) for one in opened]
    left = count - len(opened)
    more = Unsure(guess=asked.guess, count=left, rules=(MORE,))
    return [*sized, more] if left else list(sized)


_OF_A_BIN = BIN_WORDS | TOLD_BY | PLACE_NAMES | {"one"}
"""Without one of these and a size a word alone may be no bin's name: "Brilliant!"."""


def _leads(count: int, size: float | None, *, one: bool) -> Iterator[str]:
    """What was said before, in words with which the next are read: all of the bins, or one."""
    if count > 1:
        yield f"we have {count} bins: "
    if one:
        yield f"we have a {size:g} L bin: " if size else "we have a bin: "


def _with_size(act: Open, turn: Turn) -> str:
    size = f" ({volume(act.capacity_l, turn.units)})" if act.capacity_l else ""
    return f"{the(act.bin or '')}{size}"
