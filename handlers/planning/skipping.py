"""A day of a reminder that comes again is left out: "skip the bran check next week"."""

from collections.abc import Sequence
from datetime import date, timedelta

from handlers.answer import SILENCE, Answer, PutOff, Turn
from handlers.phrasing import day, span
from handlers.planning.dues import HORIZON, OWN, root_of
from handlers.planning.owndates import (
    NO_SUCH,
    days_ahead,
    is_meant,
    set_ones,
    struck,
    subject,
    which_one,
    would_strike_another,
)
from handlers.practice.figure import listed
from handlers.reading.arranged import Skip
from handlers.reading.calendar.recurrence import first_after, occurrences
from storage.rows import Due, Entry


async def skip(plan: Skip, turn: Turn) -> Answer:
    """The days of the one reminder that is meant are left out; nothing is said where none is."""
    meant = await _called(plan, turn)
    there = [entry for entry in meant if _days_of(entry, plan, turn.today)]
    if len({subject(entry) for entry in there}) > 1:
        return Answer(say=which_one(there))
    if not there:
        comes = [entry for entry in meant if plan.words and _following(entry, turn.today)]
        if comes:
            return Answer(say=_not_then(comes, plan, turn))
        return Answer(say=NO_SUCH) if await would_strike_another(turn) else SILENCE
    main = min(there, key=days_ahead)
    with_it = [entry for entry in await set_ones(turn) if subject(entry) == subject(main)]
    if main.facts.rule is None:
        return struck(with_it)
    days = _days_of(main, plan, turn.today)
    dues = [due for entry in with_it for due in await _left_out(entry, main, days, turn)]
    if not dues:
        return Answer(say=TOO_FAR)
    left_out = listed([day(one, turn.today) for one in days])
    following = _following(main, days[-1] + timedelta(days=1))
    then = f" Next: {day(following, turn.today)}." if following else ""
    return Answer(
        put_off=[PutOff(due=due, until=date.max) for due in dues],
        say=f"Left out {left_out}: {subject(main)}.{then}",
    )


async def _left_out(entry: Entry, main: Entry, days: Sequence[date], turn: Turn) -> list[Due]:
    """What of a reminder falls away with some days of the main one: the word ahead, too."""
    sooner = timedelta(days=days_ahead(entry) - days_ahead(main))
    own = [due for due in await turn.book.dues() if due.what in OWN]
    return [due for due in own if root_of(due) == str(entry.root) and due.from_day + sooner in days]


TOO_FAR = f"That is more than {HORIZON.days // 7} weeks ahead: say it again nearer the day."


async def _called(plan: Skip, turn: Turn) -> list[Entry]:
    """The reminders that are called so; without words the one set last by the sender, if it falls
    on those days, else whichever does.
    """
    dated = await set_ones(turn)
    if plan.words:
        return [entry for entry in dated if is_meant(entry, plan.words, None)]
    last = await turn.book.last_by(turn.sender)
    own = [entry for entry in dated if last is not None and entry.id == last.id]
    return [entry for entry in own if _days_of(entry, plan, turn.today)] or dated


def _days_of(entry: Entry, plan: Skip, today: date) -> list[date]:
    """The days of a reminder that are to be left out."""
    if plan.first is None or entry.on is None:
        following = _following(entry, today)
        return [following] if following else []
    last = min(plan.last or plan.first, entry.until or date.max)
    return occurrences(entry.facts.rule, entry.on, max(plan.first, today), last)


def _following(entry: Entry, start: date) -> date | None:
    """The next day of a reminder from one on."""
    if entry.on is None:
        return None
    rule = entry.facts.rule
    found = first_after(rule, entry.on, start) if rule else entry.on
    return found if found and start <= found <= (entry.until or found) else None


def _not_then(comes: Sequence[Entry], plan: Skip, turn: Turn) -> str:
    """That what is called so does not fall on those days, and when it does."""
    nexts = [(subject(entry), _following(entry, turn.today)) for entry in comes]
    said = listed([f"“{words}” {day(on, turn.today)}" for words, on in nexts if on])
    first = plan.first or turn.today
    then = span(first, plan.last or first, turn.today)
    return f"Nothing of the sort is set for {then}: next comes {said}."
