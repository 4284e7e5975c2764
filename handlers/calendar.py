"""What is due when; and what a member answers to a reminder."""

from collections.abc import Iterable, Mapping, Sequence
from datetime import date, timedelta
from itertools import groupby

from handlers.answer import SILENCE, Answer, Handler, PutOff, Turn
from handlers.bins import unknown
from handlers.due_reasons import why_due
from handlers.dues import DUTIES, EVENTS, is_shown_on
from handlers.phrasing import capital, day, span, the, when
from handlers.practice.days import DRAIN, FERMENT, FILL
from handlers.practice.figure import listed
from handlers.reading.acts import Act, Ask, Bury, Done, Drain, Later, Seal
from handlers.state import look_up
from storage.book import Book
from storage.rows import Bin, Due

NOTHING = (
    "Nothing is due. The calendar fills as layers go in: a bin is drained every two or three days, "
    "sealed within two weeks, and buried ten to fourteen days after that."
)
USUAL_DAYS = tuple(figure.line() for figure in (DRAIN, FILL, FERMENT))
"""The figures behind it."""

MOST_LATER_DAYS = 60
"""The longest that something can be put off, so that it is not lost."""

LATE = "late"
"""Said in `Ask.what`: only what should have been done before."""

Keepers = Mapping[Bin | None, str | None]


async def asked(act: Ask, turn: Turn) -> Answer:
    """What is due: of one bin or all, for one member or everybody, by a day or at any time."""
    dues = [due for due in await turn.book.dues(until=act.on) if is_shown_on(due, turn.today)]
    if act.bin:
        states = [await look_up(turn.book, bin, turn.today) for bin in await turn.book.bins()]
        names = {state.bin.name.casefold() for state in states}
        if act.bin.casefold() not in names and states:
            return unknown(act.bin, states)
        dues = [due for due in dues if _is_of(due, act.bin)]
    if act.member:
        keepers = await keepers_of(turn.book, dues, turn.today)
        dues = [due for due in dues if concerns(due, keepers, act.member)]
    if act.what == LATE:
        dues = [due for due in dues if is_late(due, turn.today)]
    lines = await calendar(turn.book, dues, turn.today)
    if not lines:
        say = _nothing(act, turn)
        return Answer(say=say, why=USUAL_DAYS if say == NOTHING else ())
    return Answer(say="\n".join(lines), why=await why_due(turn.book, dues, turn.today))


def _nothing(act: Ask, turn: Turn) -> str:
    if act.what == LATE:
        return "Nobody is late."
    if not (act.bin or act.member or act.on):
        return NOTHING
    about = f" with {the(act.bin)}" if act.bin else ""
    by = f" by {day(act.on, turn.today)}" if act.on else ""
    member = f" for {act.member}" if act.member else ""
    return f"Nothing is due{about}{member}{by}."


def _is_of(due: Due, bin: str) -> bool:
    return due.bin is not None and due.bin.name.casefold() == bin.casefold()


def is_late(due: Due, today: date) -> bool:
    """Whether it should have been done before that day."""
    return due.to_day < today and due.what not in EVENTS


async def keepers_of(book: Book, dues: Sequence[Due], today: date) -> Keepers:
    """Who keeps each bin that something is due for; on the day it changes hands, who has it yet."""
    days = {due.bin: today for due in dues}
    for due in dues:
        if due.what == "hand over" and due.from_day == today:
            days[due.bin] = today - timedelta(days=1)
    return {bin: (await look_up(book, bin, on)).keeper for bin, on in days.items() if bin}


def concerns(due: Due, keepers: Keepers, member: str) -> bool:
    """Whether a due is a member's: they keep the bin, or take it."""
    return member.casefold() in {
        name.casefold() for name in (keepers.get(due.bin), due.to_member) if name
    }


async def calendar(
    book: Book, dues: Sequence[Due], today: date, keepers: Keepers | None = None
) -> list[str]:
    """The dues as lines, soonest first, those for the same days together."""
    keepers = keepers or await keepers_of(book, dues, today)
    ordered = sorted(dues, key=lambda due: (_from(due, today), due.to_day, *_about(due)))
    lines = []
    for (start, end), group in groupby(ordered, key=lambda due: (_from(due, today), due.to_day)):
        lines.append(f"{when(start, end, today)}: {_together(group, keepers)}")
    return lines


def _from(due: Due, today: date) -> date:
    """From when it is to be done, seen from today."""
    return max(due.from_day, due.put_off_until or due.from_day, min(today, due.to_day))


def _about(due: Due) -> tuple[str, str]:
    return due.what, due.bin.name if due.bin else ""


def duty(due: Due, keepers: Keepers) -> str:
    """What is to be done and by whom, if that is known: "drain the shed bin (Bram)"."""
    if due.bin is None:
        words, who = DUTIES[due.what], due.to_member
    else:
        words, who = DUTIES[due.what].format(bin=the(due.bin.name)), keepers.get(due.bin)
        words += f" to {due.to_member}" if due.to_member else ""
    return f"{words} ({who})" if who else words


def _together(dues: Iterable[Due], keepers: Keepers) -> str:
    """What is to be done, each thing said once: "drain the shed bin (Bram) and bin 2 (Ines)"."""
    said = []
    for what, group in groupby(dues, key=lambda due: due.what):
        first, *more = (duty(due, keepers) for due in group)
        verb = DUTIES[what].removesuffix("{bin}") if what in ACTS else ""
        said.append(listed([first, *(each.removeprefix(verb) for each in more)]))
    return "; ".join(said)


async def digest(book: Book, dues: Sequence[Due], today: date) -> str:
    """The words of a day's digest, a line for each day: what must be done today comes first, then
    what can be done from today on, then what is late, the longest last.
    """
    keepers = await keepers_of(book, dues, today)
    ordered = sorted(dues, key=lambda due: _urgency(due, today))
    lines = []
    for last, group in groupby(ordered, key=lambda due: due.to_day):
        lines.append(f"{_by_when(last, today)}: {_together(group, keepers)}.")
    return "\n".join(lines)


def _by_when(last: date, today: date) -> str:
    if last < today:
        return f"Late, since {day(last, today)}"
    if (last - today).days > 1:
        return f"Today, or by {day(last, today)}"
    return capital(span(today, last, today))


def _urgency(due: Due, today: date) -> tuple[bool, int, str, str]:
    return due.to_day < today, abs((due.to_day - today).days), *_about(due)


async def concerned(book: Book, dues: Sequence[Due], today: date) -> tuple[str, ...]:
    """The user ids of those who keep the bins named, or take one."""
    keepers = await keepers_of(book, dues, today)
    return tuple(
        member.user
        for member in await book.members()
        if member.user
        and member.present
        and any(concerns(due, keepers, member.name) for due in dues)
    )


ACTS = {"drain": Drain, "seal": Seal, "bury": Bury}


async def done(act: Done, turn: Turn, carry_on: Handler) -> Answer:
    """What was reminded of has been done: answered as the act it was."""
    open_now = await _meant(act.bin, turn)
    match open_now:
        case []:
            return SILENCE  # a mark would promise a record that there is none of
        case [due] if due.bin and due.what in ACTS:
            return await carry_on(ACTS[due.what](bin=due.bin.name), turn)
        case [due]:
            return Answer(put_off=[PutOff(due=due, until=date.max)], noted=True)
    duties = [duty(due, {}) for due in open_now]
    return Answer(say=f"Well done. Which was it: {listed(duties, 'or')}?")


async def later(act: Later, turn: Turn) -> Answer:
    """What was reminded of is put off."""
    days = min(max(round(act.days or 1), 1), MOST_LATER_DAYS)
    return _put_off(await _meant(act.bin, turn), days, turn)


def _put_off(dues: Sequence[Due], days: int, turn: Turn) -> Answer:
    if not dues:
        return SILENCE
    until = turn.today + timedelta(days=days)
    duties = [duty(due, {}) for due in dues]
    return Answer(
        put_off=[PutOff(due=due, until=until) for due in dues],
        say=f"I will say again {day(until, turn.today)}: {listed(duties)}.",
    )


async def ticked(told_on: date, turn: Turn) -> tuple[list[Act], Answer]:
    """What a member has done who marks the digest of a day as done; what is no act is put off."""
    dues = await _told(told_on, turn)
    acts: list[Act] = [
        ACTS[due.what](bin=due.bin.name) for due in dues if due.bin and due.what in ACTS
    ]
    rest = [PutOff(due=due, until=date.max) for due in dues if due.what not in ACTS]
    return acts, Answer(put_off=rest)


async def snoozed(told_on: date, turn: Turn) -> Answer:
    """A member marks the digest of a day as not now: their part of it comes again tomorrow."""
    dues = await _told(told_on, turn)
    return _put_off(dues, 1, turn) if dues else Answer()


async def _told(on: date, turn: Turn) -> list[Due]:
    """What a digest named to a member and is still to be done; all of it, if it was one thing."""
    named = [due for due in await turn.book.dues(until=turn.today) if due.told_on == on]
    keepers = await keepers_of(turn.book, named, turn.today)
    own = [due for due in named if concerns(due, keepers, turn.sender)]
    return own or (named if len(named) == 1 else [])


async def _meant(bin: str | None, turn: Turn) -> list[Due]:
    """What is due now: of the bin named; else what the speaker keeps, if that is anything."""
    dues = [
        due
        for due in await turn.book.dues(until=turn.today)
        if is_shown_on(due, turn.today) and (bin is None or _is_of(due, bin))
    ]
    if bin is not None:
        return dues
    keepers = await keepers_of(turn.book, dues, turn.today)
    return [due for due in dues if concerns(due, keepers, turn.sender)] or dues
