"""Each group's calendar on a CalDAV server (RFC 4791), kept up to date: what the book says is put
there, event by event; what others write into it is left alone, and never read back.
"""

import asyncio
import hashlib
import logging
from collections.abc import Callable, Mapping
from datetime import datetime
from functools import partial
from typing import Any

from bot.feed import as_events
from bot.pacing import Bell, Patience, pause
from bot.settings import Settings, SettingsError
from storage import rooms, shared
from storage.book import Book
from storage.database import Database
from storage.moments import local_day
from storage.revision import revision
from storage.rows import Room

log = logging.getLogger(__name__)

NAME = "Our bins"
LOOK_AGAIN_SECONDS = 600.0
"""A new day comes without a change of the book."""
PAUSE_SECONDS = 5.0
"""After a change: more changes may follow on its heels."""


class OutOfReach(Exception):
    """The server did not take what was to be put there; it is worth another try."""


class CalendarServer:
    """One account on a CalDAV server, with a calendar for each room."""

    def __init__(self, db: Database, chosen: Settings) -> None:
        self._db = db
        self._chosen = chosen
        self._calendars: dict[int, Any] = {}
        self._seen: dict[int, object] = {}

    async def update(self, now: datetime) -> None:
        """Bring the calendar of every room up to date; OutOfReach if the server is."""
        for room in await rooms.present(self._db):
            present = await revision(self._db, room), local_day(now, room.zone)
            if self._seen.get(room.id) != present:
                await self._update(room, now)
                self._seen[room.id] = present

    async def _update(self, room: Room, now: datetime) -> None:
        noted = known = await shared.known(self._db, room)
        if room.id not in self._calendars:
            # Once in each life: the server may have been restored, or somebody have tidied up.
            there = await asyncio.to_thread(self._open, room)
            known = {uid: mark for uid, mark in known.items() if uid in there}
        events = await self._db.ask(partial(_events, room, now))
        marks = {uid: _fingerprint(text) for uid, text in events.items()}
        changed = {uid: events[uid] for uid, mark in marks.items() if known.get(uid) != mark}
        gone = [uid for uid in noted if uid not in events]
        try:
            await asyncio.to_thread(self._put, room, changed, gone)
        except OutOfReach:
            self._calendars.pop(room.id, None)
            raise
        await shared.note(self._db, room, {uid: marks[uid] for uid in changed}, gone)

    def _open(self, room: Room) -> set[str]:
        """Find or make the room's calendar; the UIDs of the events in it."""
        from caldav.davclient import DAVClient
        from caldav.lib.error import DAVError, NotFoundError

        url = self._chosen.caldav
        name = f"pailkeeper-{room.id}"
        try:
            client = DAVClient(
                url,
                username=self._chosen.caldav_user or None,
                password=self._chosen.caldav_password or None,
                timeout=30,
                enable_rfc6764=False,
                require_tls=url.startswith("https:"),
            )
            principal: Any = client.principal()  # type: ignore[no-untyped-call]
            calendar = principal.calendar(cal_id=name)
            try:
                there = {str(event.icalendar_component["UID"]) for event in calendar.events()}
            except NotFoundError:
                calendar = principal.make_calendar(name=NAME, cal_id=name)
                there = set()
        except (DAVError, OSError) as error:
            raise OutOfReach(f"{type(error).__name__}") from error
        self._calendars[room.id] = calendar
        return there

    def _put(self, room: Room, changed: Mapping[str, str], gone: list[str]) -> None:
        from caldav.lib.error import DAVError, NotFoundError

        calendar = self._calendars[room.id]
        try:
            for text in changed.values():
                calendar.save_event(text)
            for uid in gone:
                try:
                    calendar.event_by_uid(uid).delete()
                except NotFoundError:
                    continue
        except (DAVError, OSError) as error:
            raise OutOfReach(f"{type(error).__name__}") from error


async def _events(room: Room, now: datetime, db: Database) -> dict[str, str]:
    return await as_events(Book(db, room), now)


def _fingerprint(text: str) -> str:
    return hashlib.sha256(text.encode()).hexdigest()[:32]


async def keep_shared(
    server: CalendarServer, now: Callable[[], datetime], changed: Bell, stop: asyncio.Event
) -> None:
    """Keep the calendars up to date until `stop`; a server that is out of reach is tried again."""
    _require_library()
    patience = Patience()
    while not stop.is_set():
        try:
            await server.update(now())
            patience.succeeded()
            wait = LOOK_AGAIN_SECONDS
        except OutOfReach as error:
            wait = patience.failed()
            log.warning("the CalDAV server is out of reach (%s); next try in %d s", error, wait)
        await changed.wait(wait)
        if not stop.is_set():
            await pause(PAUSE_SECONDS, stop)


def _require_library() -> None:
    try:
        import caldav
    except ImportError:
        raise SettingsError(
            "The setting caldav wants a library more: pip install -e '.[caldav]'"
        ) from None
    del caldav
