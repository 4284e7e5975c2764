"""What is due, said to each group once a day at its own hour, and at the hours its members set;
never in its quiet hours.
"""

from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta
from functools import partial
from zoneinfo import ZoneInfo

from bot import unasked
from handlers.asked.why import explained
from handlers.planning import owndates
from handlers.planning.care import Care, care_of
from handlers.planning.digest import Line, called, digest, reminder
from handlers.planning.due_reasons import why_due
from handlers.planning.dues import OWN, is_news, latest_of_each
from handlers.planning.quiet import is_quiet
from handlers.recording import keeping
from storage import dues as due_table
from storage import naming, outbox, rooms
from storage.book import Book
from storage.database import Database
from storage.moments import local_day, to_ms
from storage.rows import Due, Kind, Message, Room


async def tell(db: Database, now: datetime) -> datetime | None:
    """Put what is to be said now into the outbox; the next moment to look (UTC).

    None where the bot is in no room.
    """
    for room, addresses in await rooms.alike(db):
        if _is_time(room, now):
            for address in addresses:
                await db.at_once(partial(_tell_day, address, now))
    for room in await due_table.rooms_with_hours(db):
        if _at_this_hour(await due_table.at_hours(db, room), room, now):
            await db.at_once(partial(_tell_hour, room.address, now))
    return await upcoming(db, now)


async def upcoming(db: Database, now: datetime) -> datetime | None:
    """The next moment at which something may have to be said, strictly after `now` (both UTC)."""
    moments = [next_hour(now, room, room.digest_at) for room, _ in await rooms.alike(db)]
    for room in await due_table.rooms_with_hours(db):
        hours = await due_table.at_hours(db, room)
        moments += _hours_to_come(hours, room, now)
    return min(moments, default=None)


async def next_in(db: Database, room: Room, now: datetime) -> datetime:
    """The next moment at which something may have to be said in a room."""
    hours = _hours_to_come(await due_table.at_hours(db, room), room, now)
    return min([next_hour(now, room, room.digest_at), *hours])


def _hours_to_come(dues: list[Due], room: Room, now: datetime) -> Iterator[datetime]:
    """The moments of what has an hour of its own; what quiet hours keep back comes after them."""
    for due in dues:
        at = _hour_of(due, room)
        if at > now:
            yield at
        elif _is_day_of(due, room, now) and room.reminds:
            yield next_hour(now, room, room.quiet_to)


def next_hour(now: datetime, room: Room, hour: time) -> datetime:
    """The next time that it is that hour where the room is (UTC)."""
    zone = ZoneInfo(room.zone)
    today = now.astimezone(zone).date()
    moments = [moment_of(today + timedelta(days=n), hour, zone) for n in (0, 1, 2)]
    return min(moment for moment in moments if moment > now)


def moment_of(day: date, hour: time, zone: ZoneInfo) -> datetime:
    """An hour of a local day, in UTC.

    An hour that a change of the clocks leaves out is taken as much later as the clocks go forward;
    one that comes twice is taken the first time.
    """
    return datetime.combine(day, hour, zone).astimezone(UTC)


def _is_time(room: Room, now: datetime) -> bool:
    """Whether the room's present day is still to be told, and may be told now."""
    zone = ZoneInfo(room.zone)
    local = now.astimezone(zone)
    if is_quiet(local.time(), room.quiet_from, room.quiet_to):
        return False
    if now < moment_of(local.date(), room.digest_at, zone):
        return False
    # A day ahead was told in another zone, or by a clock that was wrong: it does not count.
    return room.told_on != local.date()


async def _tell_day(address: str, now: datetime, db: Database) -> None:
    room = await rooms.find(db, address)
    if room is None or not _is_time(room, now):
        return
    book, today = Book(db, room), local_day(now, room.zone)
    await owndates.settle(book, now)
    await keeping.settle_turns(unasked.turn_of(book, now))
    if room.reminds:
        news = [due for due in await book.dues(until=today) if is_news(due, today)]
        still = today.weekday() in room.quiet_days
        if still:  # only what members set for such a day
            news = [due for due in news if due.what in OWN]
        dues = await _latest(book, news, today)
        care = await care_of(book, dues, today)
        await _say(book, "digest", digest(dues, today, care), care, now)
        if not still:
            await unasked.put(book, now)
    await rooms.set_told(db, room, today)


async def _latest(book: Book, dues: list[Due], today: date) -> list[Due]:
    """What is worth saying of dues that are to be said; the rest counts as said."""
    latest = latest_of_each(dues, today)
    await due_table.set_told(book.db, [due for due in dues if due not in latest], today)
    return latest


async def _tell_hour(address: str, now: datetime, db: Database) -> None:
    room = await rooms.find(db, address)
    if room is None:
        return
    book, today = Book(db, room), local_day(now, room.zone)
    named = _at_this_hour(await due_table.at_hours(db, room), room, now)
    dues = await _latest(book, named, today)
    care = await care_of(book, dues, today)
    lines = [Line(words=reminder(due, care), dues=(due,)) for due in dues]
    await _say(book, "reminder", lines, care, now)


def _at_this_hour(dues: list[Due], room: Room, now: datetime) -> list[Due]:
    """What is to be said now of what has an hour of its own: on its day, not before, not at night.

    Where that was missed, the digest says it.
    """
    local = now.astimezone(ZoneInfo(room.zone))
    if not room.reminds or is_quiet(local.time(), room.quiet_from, room.quiet_to):
        return []
    return [due for due in dues if _is_day_of(due, room, now) and _hour_of(due, room) <= now]


def _is_day_of(due: Due, room: Room, now: datetime) -> bool:
    return (due.put_off_until or due.from_day) == local_day(now, room.zone)


def _hour_of(due: Due, room: Room) -> datetime:
    assert due.hour is not None
    day = due.put_off_until or due.from_day
    return moment_of(day, due.hour, ZoneInfo(room.zone)) if day < date.max else _NEVER


_NEVER = datetime.max.replace(tzinfo=UTC)


async def _say(book: Book, kind: Kind, lines: list[Line], care: Care, now: datetime) -> None:
    """One message of these lines, and what it names; nothing where there is none."""
    if not lines:
        return
    dues = [due for line in lines for due in line.dues]
    today = local_day(now, book.room.zone)
    message = Message(
        tx_id=f"{kind}-{book.room.id}-{to_ms(now)}",
        kind=kind,
        body="\n".join(line.words for line in lines),
        mentions=await called(book, dues, care),
        why=explained(await why_due(book, dues, today)) or None,
    )
    await outbox.put(book.db, book.room.id, message, now)
    await naming.put(book.db, message.tx_id, [line.dues for line in lines])
    await due_table.set_told(book.db, dues, today)
