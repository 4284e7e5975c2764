"""A neighbour promises to see to a bin in its keeper's place: the keeper stays its keeper."""

from dataclasses import replace
from datetime import date

from handlers.answer import SILENCE, Answer, Turn
from handlers.people import is_same
from handlers.phrasing import capital, day
from handlers.planning.putoff import later
from handlers.reading.acts import Later
from handlers.reading.arranged import Promise
from handlers.state import named, states_of
from storage.absences import absences
from storage.rows import Entry


async def promised(plan: Promise, turn: Turn) -> Answer:
    """Noted; whoever sees to the bin of a member who is away, or will be, stands in for them."""
    if plan.bin is None:
        return SILENCE  # nobody asked for it
    by = plan.by or turn.sender
    state = await named(turn.book, plan.bin, turn.today)
    if state is None or is_same(state.keeper, by):  # one's own bin is no favour
        if plan.deed and plan.on and plan.on > turn.today and is_same(by, turn.sender):
            return await later(Later(what=plan.deed, bin=plan.bin, on=plan.on), turn)
        return SILENCE
    keeper = plan.whose or state.keeper
    absence = None if plan.deed or keeper is None else await _absence_of(keeper, turn)
    if absence is None or is_same(absence.receiver or "", by):
        return Answer(noted=True)
    if not _covers(plan, absence, turn.today):
        who = capital(absence.member or "")
        ends = day(absence.until, turn.today) if absence.until else "they say so"
        return Answer(
            say=f"Whoever stands in does so for all of the time that {who} is away, until {ends}: "
            f"say “I'll do {who}'s” if you can. Else I only know that {who} is away."
        )
    entry = turn.entry(
        "away", bin=None, member=absence.member, on=absence.on, until=absence.until, receiver=by
    )
    return Answer(
        entries=[replace(entry, event=absence.event, writer=absence.writer, replaces=absence.id)],
        strikes=[absence],
        noted=True,
    )


def _covers(plan: Promise, absence: Entry, today: date) -> bool:
    """Whether it is promised for all that is left of an absence."""
    begins = max(absence.on or today, today)
    is_late = plan.on is not None and plan.on > begins
    return not is_late and (
        plan.until is None or (absence.until is not None and plan.until >= absence.until)
    )


async def _absence_of(member: str, turn: Turn) -> Entry | None:
    """What tells of a member's present absence, or of the next one."""
    gone = await absences(turn.book, turn.today, date.max)
    own = [one for one in gone if is_same(one.member, member)]
    return await turn.book.entry(own[0].entry) if own else None


async def kept_by(member: str, turn: Turn) -> str | None:
    """The bin in use that a member keeps, if it is one alone."""
    kept = await all_kept_by(member, turn)
    return kept[0] if len(kept) == 1 else None


async def all_kept_by(member: str, turn: Turn) -> list[str]:
    """The bins in use that a member keeps."""
    states = await states_of(turn.book, turn.today)
    return [state.bin.name for state in states if is_same(state.keeper, member)]
