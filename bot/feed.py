"""The calendar of dues as iCalendar (RFC 5545), for any calendar program."""

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from icalendar import Calendar, Event

from handlers.dues import DUTIES, is_shown_on
from handlers.phrasing import capital, the
from storage.book import Book

PRODUCT = "-//Pailkeeper//the group's calendar//EN"


async def as_calendar(book: Book, now: datetime) -> bytes:
    """The dues of a room as all-day events; DTEND is the day after the last one."""
    today = now.astimezone(ZoneInfo(book.room.zone)).date()
    calendar = Calendar()
    calendar.add("prodid", PRODUCT)
    calendar.add("version", "2.0")
    for due in await book.dues():
        if not is_shown_on(due, today):
            continue
        event = Event()
        event.add("uid", f"{book.room.id}-{due.bin.id}-{due.what}@pailkeeper")
        event.add("dtstamp", now)
        event.add("dtstart", due.from_day)
        event.add("dtend", due.to_day + timedelta(days=1))
        event.add("summary", capital(DUTIES[due.what].format(bin=the(due.bin.name))))
        event.add("transp", "TRANSPARENT")
        calendar.add_component(event)
    return bytes(calendar.to_ical())
