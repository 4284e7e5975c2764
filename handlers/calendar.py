"""What is due when; and what a member answers to a reminder."""

from collections.abc import Sequence
from datetime import date, timedelta
from itertools import groupby

from handlers.answer import Answer, Handler, PutOff, Turn
from handlers.bins import unknown
from handlers.dues import DUTIES, is_shown_on
from handlers.phrasing import capital, day, the, when
from handlers.practice.figure import listed
from handlers.reading.acts import Ask, Bury, Done, Drain, Later, Seal
from handlers.state import look_up
from storage.book import Book
from storage.rows import Due

NOTHING = "Nothing is due. The calendar fills as layers go in and bins are sealed."
MOST_LATER_DAYS = 60
"""The longest that something can be put off, so that it is not lost."""


async def asked(act: Ask, turn: Turn) -> Answer:
    """What is due, of one bin or of all."""
    dues = [due for due in await turn.book.dues() if is_shown_on(due, turn.today)]
    if act.bin:
        states = [await look_up(turn.book, bin, turn.today) for bin in await turn.book.bins()]
        names = {state.bin.name.casefold() for state in states}
        if act.bin.casefold() not in names and states:
            return unknown(act.bin, states)
        dues = [due for due in dues if due.bin.name.casefold() == act.bin.casefold()]
    lines = await calendar(turn.book, dues, turn.today)
    return Answer(say="\n".join(lines) or NOTHING)


async def calendar(book: Book, dues: Sequence[Due], today: date) -> list[str]:
    """The dues as lines, soonest first, those for the same days together."""
    keepers = {due.bin: (await look_up(book, due.bin, today)).keeper for due in dues}
    ordered = sorted(dues, key=lambda due: (_from(due, today), due.to_day, due.bin.name, due.what))
    lines = []
    for (start, end), group in groupby(ordered, key=lambda due: (_from(due, today), due.to_day)):
        duties = [_duty(due, keepers[due.bin]) for due in group]
        lines.append(f"{when(start, end, today)}: {listed(duties)}")
    return lines


def _from(due: Due, today: date) -> date:
    """From when it is to be done, seen from today."""
    return max(due.from_day, due.put_off_until or due.from_day, min(today, due.to_day))


def _duty(due: Due, keeper: str | None) -> str:
    return DUTIES[due.what].format(bin=the(due.bin.name)) + (f" ({keeper})" if keeper else "")


async def digest(book: Book, dues: Sequence[Due], today: date) -> str:
    """The words of a day's digest: what is due today first, then what is late."""
    lines = []
    for due in sorted(dues, key=lambda due: (due.to_day < today, due.to_day, due.bin.name)):
        keeper = (await look_up(book, due.bin, today)).keeper
        words = capital(_duty(due, keeper))
        if due.to_day < today:
            lines.append(f"{words}: since {day(due.to_day, today)}.")
        elif due.to_day == today:
            lines.append(f"{words}: today.")
        elif due.what == "plant":
            lines.append(f"{words}: the soil is ready from today on.")
        else:
            lines.append(f"{words}: today, or by {day(due.to_day, today)}.")
    return "\n".join(lines)


ACTS = {"drain": Drain, "seal": Seal, "bury": Bury}


async def done(act: Done, turn: Turn, carry_on: Handler) -> Answer:
    """What was reminded of has been done: answered as the act it was."""
    open_now = await _open_dues(act.bin, turn)
    match open_now:
        case []:
            return Answer(noted=True)
        case [due] if due.what == "plant":
            return Answer(put_off=[PutOff(due=due, until=date.max)], noted=True)
        case [due]:
            return await carry_on(ACTS[due.what](bin=due.bin.name), turn)
    duties = [_duty(due, None) for due in open_now]
    return Answer(say=f"Well done. Which was it: {listed(duties, 'or')}?")


async def later(act: Later, turn: Turn) -> Answer:
    """What was reminded of is put off."""
    days = min(max(round(act.days or 1), 1), MOST_LATER_DAYS)
    until = turn.today + timedelta(days=days)
    open_now = await _open_dues(act.bin, turn)
    if not open_now:
        return Answer(noted=True)
    duties = [_duty(due, None) for due in open_now]
    return Answer(
        put_off=[PutOff(due=due, until=until) for due in open_now],
        say=f"I will say again {day(until, turn.today)}: {listed(duties)}.",
    )


async def _open_dues(bin: str | None, turn: Turn) -> list[Due]:
    return [
        due
        for due in await turn.book.dues(until=turn.today)
        if is_shown_on(due, turn.today)
        and (bin is None or due.bin.name.casefold() == bin.casefold())
    ]
