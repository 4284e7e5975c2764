"""The calendar of dues as iCalendar (RFC 5545, RFC 7986), for any calendar program."""

from datetime import date, datetime, time, timedelta
from uuid import NAMESPACE_URL, uuid5
from zoneinfo import ZoneInfo

from icalendar import Alarm, Calendar, Event

from bot.reminders import moment_of
from handlers.phrasing import capital, clock, span
from handlers.planning.calendar import duty, is_late, task
from handlers.planning.care import Care, care_of
from handlers.planning.dues import is_shown_on
from storage import dues
from storage.book import Book
from storage.moments import local_day, to_ms
from storage.rows import Due, Listed, Room

PRODUCT = "-//Pailkeeper//the group's calendar//EN"

REFRESH = timedelta(hours=1)
"""How often calendar programs are asked to look again."""

TAKES = timedelta(minutes=30)
"""How long something with an hour of its own is shown to take."""

MOST_DAYS_LATE = 1000
"""Days of being late that are counted in an event's number between two changes of the due."""

CANCELLED_FOR = timedelta(days=14)
"""How long what is no longer due is listed as cancelled, for programs that look rarely."""


async def as_calendar(
    book: Book, now: datetime, *, member: str | None = None, with_cancelled: bool = False
) -> bytes:
    """The dues of a room, or of one member, as all-day events; DTEND is the day after the last.

    The same book gives the same bytes on the same day.
    """
    today = local_day(now, book.room.zone)
    shown, care = await _shown(book, now, today, with_cancelled=with_cancelled)
    calendar = _calendar(member)
    for item in shown:
        if member is None or care.concerns(item.due, member):
            calendar.add_component(_event(item, book.room, care, today))
    return bytes(calendar.to_ical())


async def as_events(book: Book, now: datetime) -> dict[str, str]:
    """Each due by its UID, as a calendar of that one event: what a CalDAV server keeps."""
    today = local_day(now, book.room.zone)
    shown, care = await _shown(book, now, today, with_cancelled=False)
    made = {}
    for item in shown:
        one = Calendar()
        one.add("prodid", PRODUCT)
        one.add("version", "2.0")
        one.add_component(_event(item, book.room, care, today))
        made[_uid(item, book.room)] = one.to_ical().decode()
    return made


async def _shown(
    book: Book, now: datetime, today: date, *, with_cancelled: bool
) -> tuple[list[Listed], Care]:
    known = await dues.listed(book.db, book.room, now - CANCELLED_FOR)
    shown = [item for item in known if _is_listed(item, today, with_cancelled)]
    return shown, await care_of(book, [item.due for item in shown], today, discreet=True)


def _is_listed(item: Listed, today: date, with_cancelled: bool) -> bool:
    return with_cancelled if item.gone else is_shown_on(item.due, today)


def _calendar(member: str | None) -> Calendar:
    calendar = Calendar()
    calendar.add("prodid", PRODUCT)
    calendar.add("version", "2.0")
    calendar.add("method", "PUBLISH")
    name = f"Bins of {member}" if member else "Our bins"
    calendar.add("name", name)
    calendar.add("x-wr-calname", name)  # what programs read that do not know RFC 7986
    calendar.add("refresh-interval", REFRESH, parameters={"VALUE": "DURATION"})
    calendar.add("x-published-ttl", "PT1H")
    return calendar


def _event(item: Listed, room: Room, care: Care, today: date) -> Event:
    """A due as an event: of whole days, or of half an hour where it has an hour of its own.

    What is late stands on today, where a phone still shows it; each day it is a changed event.
    """
    due = item.due
    late = not item.gone and is_late(due, today)
    changed_at = item.changed_at
    if late:
        changed_at = max(changed_at, moment_of(today, time(), ZoneInfo(room.zone)))
    event = Event()
    event.add("uid", _uid(item, room))
    event.add("dtstamp", changed_at)
    event.add("last-modified", changed_at)
    event.add("sequence", _sequence(item, (today - due.to_day).days if late else 0))
    event.add("status", "CANCELLED" if item.gone else "CONFIRMED")
    start, end = (today, today + timedelta(days=1)) if late else _when(due, room)
    event.add("dtstart", start)
    event.add("dtend", end)
    since = f" (late since {due.to_day.day} {due.to_day:%B})" if late else ""
    event.add("summary", capital(duty(due, care, with_hour=False)) + since)
    # Counted from a far day, so that no day is called "today".
    days = span(due.from_day, due.to_day, date(due.to_day.year, 1, 1))
    event.add("description", capital(f"{days} at {clock(due.hour)}" if due.hour else days))
    event.add("categories", [due.what])
    event.add("transp", "TRANSPARENT")
    if not (item.gone or late):  # what is late rang on its own day, and the room is reminded
        event.add_component(_alarm(due, room))
    return event


def _sequence(item: Listed, days_late: int) -> int:
    """The number of a change: higher with each change of the due and, between two, each day that
    it is late, as RFC 5545 (3.8.7.4) wants it of an event that moves.
    """
    return item.sequence * MOST_DAYS_LATE + min(days_late, MOST_DAYS_LATE - 1)


def _when(due: Due, room: Room) -> tuple[date, date]:
    """Start and end: days and the day after the last, or moments in UTC."""
    if due.hour is None:
        return due.from_day, due.to_day + timedelta(days=1)
    start = moment_of(due.from_day, due.hour, ZoneInfo(room.zone))
    return start, start + TAKES


def _alarm(due: Due, room: Room) -> Alarm:
    """At its own hour, or at the group's hour on the first day."""
    alarm = Alarm()
    alarm.add("action", "DISPLAY")
    alarm.add("description", capital(task(due)))
    at = room.digest_at
    trigger = timedelta() if due.hour else timedelta(hours=at.hour, minutes=at.minute)
    alarm.add("trigger", trigger)
    return alarm


def _uid(item: Listed, room: Room) -> str:
    """The same for a due as long as it is kept, and no other book's."""
    # Not by the room's address: an upgrade changes that.
    place = f"{room.id}/{to_ms(room.joined_at)}/{item.due.id}"
    return f"{uuid5(NAMESPACE_URL, place)}@pailkeeper"
