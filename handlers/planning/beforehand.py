"""A word ahead of what is due, or of a reminder: "remind us the evening before"."""

import re
from dataclasses import replace
from datetime import date, timedelta

from handlers.answer import Answer, Turn
from handlers.phrasing import clock, day
from handlers.planning.calendar import task
from handlers.planning.dues import ACTS
from handlers.planning.owndates import is_meant, set_date, set_ones, with_ahead
from handlers.reading.arranged import OwnDate, Untimed
from handlers.reading.calendar.recurrence import CODES, first_after
from storage.rows import Due, Entry

ONCE = (
    "I cannot see when that is so. Name me a day: “remind us on Friday at 18:00 to look at the "
    "soil”."
)
ON_WHICH = "Say on which days to say it: “remind us on the last Friday of each month to {words}”."


async def beforehand(plan: Untimed, turn: Turn) -> Answer:
    """A reminder is set for so long before another; of what follows from the book it is told when
    that is, and how to set one for the day before.
    """
    if plan.once:
        return Answer(say=ONCE)
    meant = await _meant(plan, turn)
    if meant is not None and plan.days:
        return await _ahead_of(meant, plan, plan.days, turn)
    due = await _due(plan.words, turn)
    return Answer(say=_of_due(due, plan, turn) if due and plan.days else _of_digest(turn))


async def _meant(plan: Untimed, turn: Turn) -> Entry | None:
    """The one reminder that it is to come before: the one called so, or the one just set."""
    dated = await set_ones(turn)
    if plan.words:
        called = [entry for entry in dated if is_meant(entry, plan.words, None)]
        return called[0] if len(called) == 1 else None
    last = await turn.book.last_by(turn.sender)
    return next((entry for entry in dated if last and entry.id == last.id), None)


async def _ahead_of(old: Entry, plan: Untimed, days: int, turn: Turn) -> Answer:
    """One more reminder, so many days before another; or that one itself moved there."""
    words, rule = old.facts.words or "", old.facts.rule
    sooner = _sooner(rule, days)
    if old.on is None or (rule and sooner is None):
        return Answer(say=ON_WHICH.format(words=words))
    first = old.on - timedelta(days=days)
    if sooner and first < turn.today:
        first = first_after(sooner, first, turn.today) or first
    if not plan.instead:
        words = with_ahead(words, days)
    hour = plan.hour or (old.facts.hour if plan.instead else None)
    wish = OwnDate(words=words, first=first, rule=sooner, hour=hour, for_whom=old.receiver)
    answer = await set_date(wish, turn)
    if not plan.instead or not answer.entries:
        return answer
    entries = [replace(entry, replaces=old.id, event=old.event) for entry in answer.entries]
    return replace(answer, entries=entries, strikes=[old])


def _sooner(rule: str | None, days: int) -> str | None:
    """A rule of days of the week, so many days before; None for one that has no such days."""
    if rule is None or rule.startswith(("FREQ=DAILY", "FREQ=YEARLY")):
        return rule
    named = re.fullmatch(r"(FREQ=WEEKLY[^B]*)(?:BYDAY=([A-Z,]+))?", rule)
    if named is None:
        return None
    if named[2] is None:
        return rule
    back = [CODES[(CODES.index(code) - days) % 7] for code in named[2].split(",")]
    return f"{named[1]}BYDAY={','.join(sorted(back, key=CODES.index))}"


async def _due(words: str, turn: Turn) -> Due | None:
    """What is next due to a bin that is named, or of a deed that is; else whatever comes next."""
    said = words.casefold()
    coming = [due for due in await turn.book.dues() if due.bin and due.from_day > turn.today]
    of_bin = [due for due in coming if due.bin and due.bin.name.casefold() in said]
    of_deed = [due for due in of_bin or coming if due.what in ACTS and _DEEDS[due.what] in said]
    found = of_deed or of_bin
    return min(found, key=lambda due: due.from_day, default=None)


_DEEDS = {"drain": "drain", "seal": "seal", "bury": "bur"}
"""What stands in every word for a deed: "burial", "bury"."""


def _of_due(due: Due, plan: Untimed, turn: Turn) -> str:
    eve = max(due.from_day - timedelta(days=plan.days or 1), turn.today)
    hour = f" at {clock(plan.hour)}" if plan.hour else ""
    on = _dated(eve, turn.today)
    return (
        f"I name it on the morning of its first day, {day(due.from_day, turn.today)}, and no "
        f"sooner. For a word before, say “remind us {on}{hour} to {task(due)}”."
    )


def _dated(on: date, today: date) -> str:
    near = (on - today).days <= 1
    return day(on, today) if near else f"on {on.day} {on:%B}"


def _of_digest(turn: Turn) -> str:
    return (
        f"What is due is named on its first day, at {clock(turn.book.room.digest_at)}, and no "
        "sooner. Say “remind us at 7:30” for another hour; for a word before, “remind us on "
        "Thursday at 18:00 to bring a spade”."
    )
