"""What is due, said to each group once a day at its own hour; never in its quiet hours."""

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from handlers.calendar import concerned, digest
from handlers.due_reasons import why_due
from handlers.dues import is_news
from handlers.quiet import is_quiet
from handlers.why import explained
from storage import dues as due_table
from storage import outbox, rooms
from storage.book import Book
from storage.database import Database
from storage.moments import to_ms
from storage.rows import Message, Room


async def tell(db: Database, now: datetime) -> datetime | None:
    """Put the digests whose hour has come into the outbox; the next moment to look (UTC).

    None where the bot is in no room.
    """
    for room in await rooms.present(db):
        if _is_time(room, now):
            await _tell_room(db, room.address, now)
    return await upcoming(db, now)


async def upcoming(db: Database, now: datetime) -> datetime | None:
    """The next digest hour of any room, strictly after `now` (both UTC)."""
    return min((_next(now, room) for room in await rooms.present(db)), default=None)


def _next(now: datetime, room: Room) -> datetime:
    zone = ZoneInfo(room.zone)
    today = now.astimezone(zone).date()
    moments = [_moment(today + timedelta(days=n), room.digest_at, zone) for n in (0, 1, 2)]
    return min(moment for moment in moments if moment > now)


def _moment(day: date, hour: time, zone: ZoneInfo) -> datetime:
    """An hour of a local day, in UTC.

    An hour that a change of the clocks leaves out is taken as much later as the clocks go forward;
    one that comes twice is taken the first time.
    """
    return datetime.combine(day, hour, zone).astimezone(UTC)


def _is_time(room: Room, now: datetime) -> bool:
    """Whether the room's digest of its present day is still to be told, and may be told now."""
    zone = ZoneInfo(room.zone)
    local = now.astimezone(zone)
    if not room.reminds or is_quiet(local.time(), room.quiet_from, room.quiet_to):
        return False
    if now < _moment(local.date(), room.digest_at, zone):
        return False
    # A day ahead was told in another zone, or by a clock that was wrong: it does not count.
    return room.told_on != local.date()


async def _tell_room(db: Database, address: str, now: datetime) -> None:
    async with db.transaction():
        room = await rooms.find(db, address)
        if room is None or not _is_time(room, now):
            return
        book = Book(db, room)
        today = now.astimezone(ZoneInfo(room.zone)).date()
        dues = [due for due in await book.dues(until=today) if is_news(due, today)]
        if dues:
            message = Message(
                tx_id=f"digest-{room.id}-{to_ms(now)}",
                kind="digest",
                body=await digest(book, dues, today),
                mentions=await concerned(book, dues, today),
                why=explained(await why_due(book, dues, today)) or None,
            )
            await outbox.put(db, room.id, message, now)
            await due_table.set_told(db, dues, today)
        await rooms.set_told(db, room, today)
