"""What is due, said to each group once a day at its own hour; never at night, never twice."""

from datetime import date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from handlers.calendar import digest
from handlers.dues import is_named_on
from handlers.state import look_up
from storage import outbox, rooms
from storage.book import Book
from storage.database import Database
from storage.rows import Due, Message, Room

DIGEST_AT = time(9, 0)
"""The group's local hour for what is due."""

QUIET_FROM = time(21, 0)
"""After an outage a digest may be late, but from this local hour on it waits for the morning."""

MOST_MISSED_DAYS = 31
"""How far back a digest after an outage looks for days on which it was not told."""


async def tell(db: Database, now: datetime) -> datetime | None:
    """Put the digests whose hour has come into the outbox; the next moment to look (UTC).

    None where the bot is in no room.
    """
    present = await rooms.present(db)
    for room in present:
        local = now.astimezone(ZoneInfo(room.zone))
        told_today = room.told_on is not None and room.told_on >= local.date()
        if not told_today and DIGEST_AT <= local.time() < QUIET_FROM:
            await _tell_room(db, room, local.date(), now)
    return min((_next(now, ZoneInfo(room.zone)) for room in present), default=None)


def _next(now: datetime, zone: ZoneInfo) -> datetime:
    """The next digest hour in a zone, strictly after `now` (both UTC)."""
    today = now.astimezone(zone).date()
    moments = [_moment(today + timedelta(days=days), zone) for days in (0, 1, 2)]
    return min(moment for moment in moments if moment > now)


def _moment(day: date, zone: ZoneInfo) -> datetime:
    """The digest hour of a local day, in UTC; a missing hour counts as the one after it."""
    return datetime.combine(day, DIGEST_AT, zone).astimezone(ZoneInfo("UTC"))


async def _tell_room(db: Database, room: Room, today: date, now: datetime) -> None:
    book = Book(db, room)
    async with db.transaction():
        dues = [due for due in await book.dues(until=today) if _is_news(due, room, today)]
        if dues:
            message = Message(
                tx_id=f"digest-{room.id}-{today}",
                kind="digest",
                body=await digest(book, dues, today),
                mentions=await _concerned(book, dues, today),
            )
            await outbox.put(db, room.id, message, now)
        await rooms.set_told(db, room, today)


def _is_news(due: Due, room: Room, today: date) -> bool:
    """Whether the due is to be named today, or was to be on a day that no digest told."""
    missed = (today - room.told_on).days if room.told_on else 1
    days = (today - timedelta(days=back) for back in range(min(missed, MOST_MISSED_DAYS)))
    return any(is_named_on(due, day) for day in days)


async def _concerned(book: Book, dues: list[Due], today: date) -> tuple[str, ...]:
    """The user ids of the keepers of the bins named."""
    keepers = {(await look_up(book, due.bin, today)).keeper for due in dues}
    members = await book.members()
    return tuple(m.user for m in members if m.user and m.present and m.name in keepers)
