"""What is due when, as lines of the calendar; and the questions about it."""

from collections.abc import Iterable, Sequence
from datetime import date, timedelta
from itertools import groupby

from handlers.answer import Answer, Turn
from handlers.chosen import in_words
from handlers.people import is_same
from handlers.phrasing import capital, clock, day, span, the, when
from handlers.planning.care import Care, care_of
from handlers.planning.due_reasons import why_due
from handlers.planning.dues import ACTS, ALL_BINS, DUTIES, EVENTS, OWN, TURNS, root_of, shown
from handlers.practice.days import DRAIN, FERMENT, FILL, drained_every, high_days
from handlers.practice.figure import listed
from handlers.reading.acts import Ask
from handlers.reading.questions.duekinds import ALL_BUT, LATE, NEXT
from handlers.recording.bins import unknown
from handlers.state import BinState, states_of
from storage.book import Book
from storage.rows import Due, Room


def nothing_yet(room: Room) -> str:
    """That nothing is due, and when something will be, by the days that the group takes."""
    return (
        "Nothing is due. The calendar fills as layers go in: a bin is drained "
        f"{drained_every()}, sealed within {high_days(FILL)} days, and "
        f"buried {in_words('ferment_days', room)} days after that."
    )


USUAL_DAYS = tuple(figure.line() for figure in (DRAIN, FILL, FERMENT))
"""The figures behind it."""


async def asked(act: Ask, turn: Turn) -> Answer:
    """What is due: of one bin or all, for one member or everybody, by a day, between two, or at
    any time.
    """
    dues = await shown(turn.book, turn.today, act.on)
    state = None
    if act.bin:
        states = await states_of(turn.book, turn.today)
        state = next((one for one in states if is_same(one.bin.name, act.bin)), None)
        if state is None and states:
            return unknown(act.bin, states)
        dues = [due for due in dues if is_of(due, act.bin)]
    care = await care_of(turn.book, dues, turn.today)
    if members := asked_for(act):
        dues = [due for due in dues if any(care.concerns(due, one) for one in members)]
    dues = _of_kind(dues, act.what, turn.today)
    if act.first and act.first > turn.today:
        dues = [
            due for due in dues if max(due.to_day, due.put_off_until or due.to_day) >= act.first
        ]
    if not act.on:
        dues = next_of_each(dues)
    lines = await calendar(turn.book, dues, turn.today, care)
    if (
        not lines
        and act.what in ACTS
        and not asked_for(act)
        and (said := await _none_yet(act.what, act.bin, turn))
    ):
        return Answer(say=said)
    if not lines:
        return _nothing(act, turn, state)
    return Answer(say="\n".join(lines), why=await why_due(turn.book, dues, turn.today))


def asked_for(act: Ask) -> tuple[str, ...]:
    """The members whose dues are asked for; none where those of all are."""
    return act.members or ((act.member,) if act.member else ())


def _of_kind(dues: list[Due], what: str | None, today: date) -> list[Due]:
    """Those of a deed, or of all others; or what is late, or comes first."""
    if what is None:
        return dues
    if what == LATE:
        return [due for due in dues if is_late(due, today)]
    if what == NEXT:
        return _first_of(dues, today)
    if what.startswith(ALL_BUT):
        return [due for due in dues if due.what != what.removeprefix(ALL_BUT)]
    return [due for due in dues if _is_deed(due, what)]


def _is_deed(due: Due, what: str) -> bool:
    """Whether it is that deed, or a member's turn or reminder to do it: "drain the yard bin"."""
    in_words = (due.words or "").casefold().split()[:1] == [what]
    return in_words or due.what in (what, f"turn to {what}")


def _first_of(dues: Sequence[Due], today: date) -> list[Due]:
    """What is to be done first: what is late or due today, else what comes on the next day."""
    begins = [_from(due, today) for due in dues]
    first = max(min(begins, default=today), today)
    return [due for due, begin in zip(dues, begins, strict=True) if begin <= first]


async def _none_yet(what: str, bin: str | None, turn: Turn) -> str | None:
    """That no bin is ready, and when the next one will be; of one bin only if the day is known."""
    dues = next_of_each([due for due in await turn.book.dues() if _is_deed(due, what)])
    coming = [due for due in dues if is_of(due, bin)] if bin else dues
    if bin and not coming:
        return None
    if what == "bury" and not dues:
        return "No bin is sealed yet, so none is ready to bury."
    said = "Not yet." if bin else f"No bin is ready to {what} yet."
    return "\n".join([said, *await calendar(turn.book, coming, turn.today)])


def _nothing(act: Ask, turn: Turn, state: BinState | None) -> Answer:
    if act.what == LATE:
        return Answer(say="Nobody is late.")
    if act.what == "plant" and not act.bin:
        return Answer(say="No ground where a bin was buried waits to be planted.")
    if act.what in ACTS and asked_for(act):
        return Answer(say=f"{capital(listed(asked_for(act)))} has nothing to {act.what} just now.")
    if state and act.what:
        return Answer(say=_not_yet(act.what, state, turn))
    members = asked_for(act)
    if not (act.bin or members or act.on):
        return Answer(say=nothing_yet(turn.book.room), why=USUAL_DAYS)
    about = f" with {the(act.bin)}" if act.bin else ""
    if act.on and act.first:
        by = f" {span(act.first, act.on, turn.today)}"
    else:
        by = f" by {day(act.on, turn.today)}" if act.on else ""
    member = f" for {listed(members)}" if members else ""
    return Answer(say=f"Nothing is due{about}{member}{by}.")


def _not_yet(what: str, state: BinState, turn: Turn) -> str:
    """Why a bin is not to be sealed, buried or drained now, and when it will be."""
    run, bin = state.run, the(state.bin.name)
    if run.buried:
        return f"{capital(bin)} was buried {day(run.buried, turn.today)}."
    if not run.first_layer and not run.sealed:
        return f"There is nothing in {bin} yet."
    if what == "bury":
        soonest = run.to_bury(run.sealed or turn.today)
        if not run.sealed:
            return (
                f"{capital(bin)} is not sealed yet. Sealed today, it can be buried from "
                f"{day(soonest.start, turn.today)} on."
            )
    if what == "plant":
        return f"{capital(bin)} is not buried yet."
    return f"That is not due for {bin}."


def is_of(due: Due, bin: str) -> bool:
    """Whether a due is of a bin; what members set is of the bins that it names."""
    if due.words:
        return bin.casefold() in due.words.casefold()
    return due.bin is not None and is_same(due.bin.name, bin)


def is_late(due: Due, today: date) -> bool:
    """Whether it should have been done before that day."""
    return due.to_day < today and due.what not in EVENTS


def next_of_each(dues: Sequence[Due]) -> list[Due]:
    """Of reminders and turns that come again only the next time, with all other dues."""
    seen: set[object] = set()
    kept = []
    for due in dues:
        again = root_of(due) if due.what in OWN else (due.what, due.bin)
        if due.what in OWN | TURNS and again in seen:
            continue
        seen.add(again)
        kept.append(due)
    return kept


async def calendar(
    book: Book, dues: Sequence[Due], today: date, care: Care | None = None
) -> list[str]:
    """The dues as lines, soonest first, those for the same days together."""
    care = care or await care_of(book, dues, today)

    def shown_on(due: Due) -> tuple[date, date, bool]:
        start = _from(due, today)
        is_put_off = start > max(due.to_day, today)
        return start, start if is_put_off else due.to_day, is_put_off

    ordered = sorted(dues, key=lambda due: (*shown_on(due), *about(due)))
    lines = []
    for (start, end, is_put_off), group in groupby(ordered, key=shown_on):
        said = list(group)
        if is_put_off:
            lines.append(f"{capital(day(start, today))}, put off: {together(said, care)}")
        else:
            lines.append(_when(start, end, today, said, care))
    return lines


def _when(start: date, end: date, today: date, dues: Sequence[Due], care: Care) -> str:
    missed = end < today and all(due.what in EVENTS for due in dues)
    days = f"{capital(day(end, today))}, past" if missed else when(start, end, today)
    return f"{days}: {together(dues, care)}"


def _from(due: Due, today: date) -> date:
    """From when it is to be done, seen from today."""
    return max(due.from_day, due.put_off_until or due.from_day, min(today, due.to_day))


def about(due: Due) -> tuple[str, str, str]:
    """What dues of the same days are put in order by."""
    hour = clock(due.hour) if due.hour else ""
    return due.what, hour, due.bin.name if due.bin else due.words or ""


def task(due: Due) -> str:
    """What is to be done: "drain the shed bin"; what members set in their own words."""
    if due.words is not None:
        return due.words
    words = DUTIES[due.what].format(bin=the(due.bin.name) if due.bin else ALL_BINS)
    return f"{words} to {due.to_member}" if due.what == "hand over" and due.to_member else words


def duty(due: Due, care: Care, *, with_hour: bool = True) -> str:
    """What is to be done and by whom, if that is known: "drain the shed bin (Bram)"."""
    who = care.keeper(due)
    if who and (helper := care.helper(due)):
        who = f"{helper} for {who}"
    elif who and care.is_away(due):
        stand_in = care.stand_in(due)
        alone = who if care.discreet else f"{who} is away: who can?"
        who = f"{stand_in} for {who}" if stand_in else alone
    with_hour = with_hour and due.put_off_until is None
    words = f"{task(due)} at {clock(due.hour)}" if due.hour and with_hour else task(due)
    return f"{words} ({who})" if who else words


def together(dues: Iterable[Due], care: Care) -> str:
    """What is to be done, each thing said once: "drain the shed bin (Bram) and bin 2 (Ines)"."""
    said = []
    for what, group in groupby(dues, key=lambda due: due.what):
        first, *more = (duty(due, care) for due in group)
        verb = DUTIES[what].removesuffix("{bin}") if what in ACTS else ""
        said.append(listed([first, *(each.removeprefix(verb) for each in more)]))
    return "; ".join(said)


async def notice(book: Book, today: date) -> str:
    """The calendar as it hangs in the room: by dates, so that it is as true tomorrow."""
    dues = next_of_each(await shown(book, today))
    care = await care_of(book, dues, today)
    ordered = sorted(dues, key=lambda due: (not is_late(due, today), due.to_day, *about(due)))
    lines = []
    for (start, end), group in groupby(ordered, key=lambda due: _dates(due, today)):
        far = end - timedelta(days=LONG_BEFORE)
        late = "Late, since " if end < today else ""
        lines.append(f"{late}{capital(span(start, end, far))}: {together(group, care)}")
    left_out = len(lines) - MOST_LINES
    if left_out > 0:
        lines = [*lines[:MOST_LINES], f"… and {left_out} more: ask “what's due?”"]
    return "\n".join(["What is due", *(lines or ["Nothing just now."])])


LONG_BEFORE = 30
"""Days: seen from so long before, no day is called "today"."""

MOST_LINES = 30


def _dates(due: Due, today: date) -> tuple[date, date]:
    if is_late(due, today):
        return due.to_day, due.to_day
    return max(due.from_day, due.put_off_until or due.from_day), due.to_day
