"""What a reminder was of is put off: later, tomorrow, till a day; by words or by a mark."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta

from handlers.answer import SILENCE, Answer, PutOff, Query, Turn
from handlers.phrasing import day
from handlers.planning.calendar import is_of, task
from handlers.planning.care import care_of
from handlers.planning.dues import OWN, is_shown_on
from handlers.planning.remindedof import (
    PUT_OFF,
    answers_else,
    dues_meant,
    is_promised,
    names_dues,
    told_by,
)
from handlers.powers import refusal
from handlers.practice.days import DRAIN, high_days
from handlers.practice.figure import listed
from handlers.reading.acts import Later
from handlers.reading.arranged import Pausing
from handlers.reading.arrangements.putoff import DAY_ALONE, FORGOTTEN, NOTHING_NAMED
from storage.rows import Due

MOST_LATER_DAYS = 60
"""The longest that something can be put off, so that it is not lost."""

MISSED = timedelta(days=4)
"""So long "forgot, next Saturday" is of what its sender was reminded of."""


async def later(act: Later, turn: Turn) -> Answer:
    """What was reminded of is put off."""
    if DAY_ALONE in act.rules and not await names_dues(turn):
        return SILENCE
    if FORGOTTEN in act.rules:
        return _put_off(await _missed(turn), round(act.days or 1), turn)
    if act.what and act.on:
        return await _deed_put_off(act, act.on, turn)
    if NOTHING_NAMED in act.rules and await answers_else(turn):
        return SILENCE  # "later!", behind what was answered to a record
    days = min(max(round(act.days or 1), 1), MOST_LATER_DAYS)
    dues = await dues_meant(act.bin, turn)
    if act.bin is None and turn.refers_to is None:  # what others have to do is theirs to put off
        care = await care_of(turn.book, dues, turn.today)
        dues = [d for d in dues if care.keeper(d) is None or care.concerns(d, turn.sender)]
        named = _named_last(dues)
        long = days > high_days(DRAIN) and all(due.what == "drain" for due in named)
        dues = dues if long else named  # "put it off until 10 April" is said of no draining
    if act.days is None:  # "remind us", of what was just put off to a day
        tomorrow = turn.today + timedelta(days=1)
        again = [due for due in dues if _until(due) > tomorrow]
        dues = [due for due in dues if due not in again]
        if again and not dues:
            return Answer(say=_said_again(again, min(map(_until, again)), turn))
    if days <= high_days(DRAIN):
        return _put_off(dues, days, turn)
    waiting = [due for due in dues if due.what != "drain"]
    answer = _put_off(waiting or dues, days, turn)
    undrained = [task(due) for due in dues if due not in waiting]
    if not (waiting and undrained):
        return answer
    return replace(answer, say=f"{answer.say} Not put off so long: {listed(undrained)}.")


async def _missed(turn: Turn) -> list[Due]:
    """What the sender was reminded of in members' own words last, a few days ago at most."""
    own = [
        due
        for due in await turn.book.dues(until=turn.today)
        if due.what in OWN and due.to_member == turn.sender and due.told_on
        if due.put_off_until != date.max and turn.today - due.to_day <= MISSED
    ]
    last = max((due.to_day for due in own), default=None)
    return [due for due in own if due.to_day == last]


async def _deed_put_off(act: Later, until: date, turn: Turn) -> Answer:
    """A deed waits for a day, as far as it is due before: at once what the sender has to do, what
    others have to do once that is confirmed.
    """
    until = min(until, turn.today + timedelta(days=MOST_LATER_DAYS))
    due = [
        one
        for one in await turn.book.dues(until=until - timedelta(days=1))
        if one.what == act.what and is_shown_on(one, turn.today)
        if act.bin is None or is_of(one, act.bin)
    ]
    care = await care_of(turn.book, due, turn.today)
    own = [
        one
        for one in due
        if care.keeper(one) is None or care.concerns(one, turn.sender) or is_promised(one, turn)
    ]
    meant = due if act.each or act.bin else own
    if len(meant) > len(own) and not act.firm:
        duties = listed([task(one) for one in meant])
        return Answer(
            say=f"Shall I leave it until {day(until, turn.today)}: {duties}?",
            query=Query.about(replace(act, on=until, firm=True), lacks="yes"),
        )
    return _put_off(meant, (until - turn.today).days, turn)


def _named_last(dues: Sequence[Due]) -> list[Due]:
    """Those that the latest digest named, where it named any: what was named days before, and is
    still to be done, is not meant with them.
    """
    last = max((due.told_on for due in dues if due.told_on), default=None)
    return [due for due in dues if last is None or due.told_on == last]


def _until(due: Due) -> date:
    return due.put_off_until or date.min


def _said_again(dues: Sequence[Due], until: date, turn: Turn) -> str:
    return f"{PUT_OFF} {day(until, turn.today)}: {listed([task(due) for due in dues])}."


def _put_off(dues: Sequence[Due], days: int, turn: Turn) -> Answer:
    if not dues:
        return SILENCE
    until = turn.today + timedelta(days=days)
    return Answer(
        put_off=[PutOff(due=due, until=until) for due in dues], say=_said_again(dues, until, turn)
    )


async def snoozed(message: str, turn: Turn) -> Answer:
    """A member marks a digest as not now: their part of it comes again tomorrow."""
    dues = await told_by(message, None, turn)
    return _put_off(dues, 1, turn) if dues else Answer()


async def paused(plan: Pausing, turn: Turn) -> Answer:
    """All that falls due before a day waits until then; one member alone is only told how."""
    if plan.own:
        return Answer(say=FOR_ALL)
    if plan.until is None or plan.until <= turn.today:
        return Answer(say=UNTIL_WHEN)
    if refused := await refusal("settings", turn):
        return Answer(say=refused)
    dues = await turn.book.dues(until=plan.until - timedelta(days=1))
    waiting = [due for due in dues if (due.put_off_until or date.min) < plan.until]
    until, begins = day(plan.until, turn.today), ""
    if plan.first:
        waiting = [due for due in waiting if max(due.from_day, turn.today) >= plan.first]
        begins = f" from {day(plan.first, turn.today)}"
    return Answer(
        put_off=[PutOff(due=due, until=plan.until) for due in waiting],
        say=f"No reminders{begins} until {until} of what is down so far: I name it then. Ask "
        "“what's due?” at any time.",
    )


FOR_ALL = (
    "I remind the group together, not one alone. Say “I'm away till Friday” and others are named "
    "meanwhile; “turn the reminders off” stops them for all."
)
UNTIL_WHEN = (
    "Until which day? Say “no reminders till Monday”, or “turn the reminders off” to stop them for "
    "good."
)
