"""The message that always shows the present calendar: edited in place, and pinned if it may be.

It is posted once a group has something due, or when it is asked for. In quiet hours it follows the
book, but not the day.
"""

import logging
from datetime import date, datetime, time, timedelta
from functools import partial
from urllib.parse import quote
from zoneinfo import ZoneInfo

from nio.client.async_client import AsyncClient

from bot.connection import OUT_OF_REACH, call
from bot.reminders import next_hour
from handlers.planning.calendar import notice
from handlers.planning.quiet import is_quiet
from storage import notices, outbox, rooms
from storage.book import Book
from storage.database import Database
from storage.moments import local_day, to_ms
from storage.notices import Notice
from storage.revision import Revision, revision
from storage.rows import Message, Room

log = logging.getLogger(__name__)

SELDOM = timedelta(minutes=1)
"""However often the book changes, edits are not made more often than this."""
SOON = timedelta(seconds=5)
"""When to look again for a message that is being sent."""

PINNED = "m.room.pinned_events"

HOW_TO_ALLOW = (
    "I would keep the calendar at the top of this room, but I may not pin messages here. Let an "
    "administrator give me the power to “change settings” or “pin messages” in the room's settings "
    "for roles and permissions; or pin it yourselves, I keep it up to date either way."
)


class Notices:
    """The notices of all rooms; remembers which have nothing new to show."""

    def __init__(self, db: Database, client: AsyncClient) -> None:
        self._db = db
        self._client = client
        self._seen: dict[int, tuple[Revision, object]] = {}

    async def refresh(self, now: datetime) -> datetime | None:
        """Bring every notice up to date; the next moment to look, None without rooms."""
        moments = [await self._refresh(room, now) for room in await rooms.present(self._db)]
        return min(moments, default=None)

    async def _refresh(self, room: Room, now: datetime) -> datetime:
        later = min(next_hour(now, room, room.quiet_to), next_hour(now, room, time(0)))
        present = await revision(self._db, room), local_day(now, room.zone), _is_night(room, now)
        if self._seen.get(room.id) == (present[0], present[1:]):
            return later
        before = await notices.find(self._db, room)
        if before and before.unwanted:
            self._seen[room.id] = (present[0], present[1:])
            return later
        if before and before.waiting:
            return now + SOON
        if before and not before.pinned:
            await self._pin(room, before, now)
        if before and now - before.changed_at < SELDOM:
            return before.changed_at + SELDOM
        if await self._show(room, before, now):
            return now + SOON
        self._seen[room.id] = (present[0], present[1:])
        return later

    async def _show(self, room: Room, before: Notice | None, now: datetime) -> bool:
        """Post or edit the notice if it has something new to show; whether it had."""
        today = local_day(now, room.zone)
        quiet = _is_night(room, now)
        if before is None and quiet:
            return False
        follows = before is not None and before.row
        day = before.shown_on if before and follows and quiet else today
        return await self._db.at_once(partial(_put_up, room, before, day, now))

    async def _pin(self, room: Room, shown: Notice, now: datetime) -> None:
        """Hang the notice at the top of the room, or say once how that can be allowed."""
        if shown.event is None or (shown.explained and not self._may_pin(room)):
            return
        path = f"/_matrix/client/v3/rooms/{quote(room.address, safe='')}/state/{PINNED}/"
        try:
            status, state = await call(self._client, "GET", path)
            others = state.get("pinned") if status == 200 else None
            ours = await notices.posted(self._db, room)
            pinned = [one for one in others if one not in ours] if isinstance(others, list) else []
            status, _ = await call(self._client, "PUT", path, {"pinned": [*pinned, shown.event]})
        except OUT_OF_REACH as error:
            log.warning("the calendar could not be pinned: %s", type(error).__name__)
            return
        async with self._db.transaction():
            if status == 200:
                await notices.set_pinned(self._db, room)
            elif status == 403 and not shown.explained and not _is_night(room, now):
                await notices.set_explained(self._db, room)
                words = Message(
                    tx_id=f"may-pin-{room.id}-{to_ms(now)}", kind="reply", body=HOW_TO_ALLOW
                )
                await outbox.put(self._db, room.id, words, now)

    def _may_pin(self, room: Room) -> bool:
        known = self._client.rooms.get(room.address)
        levels = known.power_levels if known else None
        own = self._client.user_id
        return bool(levels and levels.can_user_send_state(own, PINNED))


async def _put_up(
    room: Room, before: Notice | None, day: date, now: datetime, db: Database
) -> bool:
    """Post or edit the notice as it is on a day; whether it shows anything new."""
    book = Book(db, room)
    if before is None and not await book.dues():
        return False
    words = await notice(book, day)
    if before and words == before.shown:
        await notices.set_shown_on(db, room, day)
        return False
    await notices.put(db, room, before, words, day, now)
    return True


def _is_night(room: Room, now: datetime) -> bool:
    local = now.astimezone(ZoneInfo(room.zone))
    return is_quiet(local.time(), room.quiet_from, room.quiet_to)
