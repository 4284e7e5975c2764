"""The Matrix session: everything said in the bot's rooms goes into the inbox, once and in order.

Events and the sync token that covers them are stored in one transaction, and only then is the
token used: whatever happens in between, the homeserver tells it again.
"""

import asyncio
import logging
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from typing import Any

from nio.responses import SyncError, SyncResponse

from bot import timeline, upgrades
from bot.connection import OUT_OF_REACH, Client, SignedOut, http_date, http_status, tend_keys
from bot.greeting import greet, greet_again
from bot.invitations import Invitations
from bot.missing_keys import MissingKeys
from bot.pacing import Bell, Patience, pause
from bot.settings import Settings
from storage import inbox, rooms, session, words
from storage.database import Database
from storage.inbox import Arrival

log = logging.getLogger(__name__)

LONG_POLL_MS = 30_000
TIMELINE_LIMIT = 100
FILTER: dict[str, dict[str, Any]] = {
    "room": {
        "timeline": {"limit": TIMELINE_LIMIT},
        "ephemeral": {"types": []},
        "account_data": {"types": []},
    },
    "presence": {"types": []},
    "account_data": {"types": []},
}
SPACE = "m.space"
CLOCKS_DIFFER = timedelta(minutes=10)
EARLIEST = datetime.min.replace(tzinfo=UTC)

Clock = Callable[[], datetime]


class Session:
    """One device's sync loop; rings for what is new in the inbox and for what it says itself."""

    def __init__(
        self,
        client: Client,
        db: Database,
        settings: Settings,
        now: Clock,
        *,
        heard: Bell,
        outgoing: Bell,
    ) -> None:
        self._client = client
        self._db = db
        self._settings = settings
        self._now = now
        self._outgoing = outgoing
        self._keys = MissingKeys(client, db, heard)
        self._present: set[str] = set()
        self.invitations = Invitations(client, settings)
        self.ready = asyncio.Event()
        """Set once the rooms are known: before, nio can send to none."""

    async def listen(self, stop: asyncio.Event) -> None:
        """Sync until `stop`; raises SignedOut when the homeserver has forgotten the bot."""
        present = (room.address for room in await rooms.present(self._db))
        self._present = {*present, *await rooms.renamed(self._db)}
        since = await session.sync_token(self._db)
        patience = Patience()
        while not stop.is_set():
            try:
                response = await self._sync(since, stop)
                if response is None:
                    return
                if isinstance(response, SyncError):
                    since = self._after_refusal(response, since)
                    raise timeline.Incomplete(f"sync was refused ({response.status_code})")
                await self._take(response, since)
            except (*OUT_OF_REACH, timeline.Incomplete) as error:
                seconds = patience.failed()
                log.warning("%s: %s; next try in %d s", type(error).__name__, error, seconds)
                await pause(seconds, stop)
                continue
            patience.succeeded()
            since = response.next_batch
            # Before anything is answered: a member who has just come must be able to read it.
            if await tend_keys(self._client):
                await self._keys.retry(response, every=True)
            self.ready.set()
            self._keys.ring_or_hold()
            if await self._keys.own_up(self._now()):
                self._outgoing.ring()

    async def _sync(
        self, since: str | None, stop: asyncio.Event
    ) -> SyncResponse | SyncError | None:
        """One answer, or None when stopped while waiting for it."""
        if not self._client.logged_in:
            raise SignedOut  # a soft logout has taken the token out of the client
        first = not self.ready.is_set()
        # nio would go on from its own token, which may be ahead of ours.
        self._client.next_batch = ""
        asking = asyncio.create_task(
            self._client.sync(
                timeout=0 if first else LONG_POLL_MS,
                sync_filter=FILTER,
                since=since,
                full_state=first,
            )
        )
        stopping = asyncio.create_task(stop.wait())
        try:
            await asyncio.wait({asking, stopping}, return_when=asyncio.FIRST_COMPLETED)
            return await asking if asking.done() else None
        finally:
            for task in (asking, stopping):
                task.cancel()
            await asyncio.gather(asking, stopping, return_exceptions=True)

    def _after_refusal(self, refusal: SyncError, since: str | None) -> str | None:
        """The token to go on with after an error."""
        if refusal.status_code in ("M_UNKNOWN_TOKEN", "M_MISSING_TOKEN"):
            raise SignedOut
        if since is not None and http_status(refusal) == 400:
            log.error("the homeserver no longer knows where we were; reading its rooms anew")
            return None
        return since

    async def _take(self, response: SyncResponse, since: str | None) -> None:
        first = not self.ready.is_set()
        await self._note_leaving(response, first)
        # By the clock that is ahead: that of a machine just started may still be behind.
        received = max(self._now(), http_date(response) or EARLIEST)
        arrivals: list[Arrival] = []
        for room, info in response.rooms.join.items():
            known = room in self._present
            if self._is_empty(room):
                self.invitations.leave(room)
                if not known:
                    continue
            news = await timeline.news(self._client, self._db, room, info, since, known, received)
            arrivals += news.arrivals
            if not known:
                # Before the token is kept: after a crash the coming is told, and noted, again.
                await self._come_in(room, news.came_at)
            await self._note_own_name(room)
            if news.in_clear and await self._keys.refuse_in_clear(room, news.in_clear, self._now()):
                self._outgoing.ring()
            if known and (new := upgrades.replacement(info)):
                await self._replaced(room, *new)
        await inbox.take_in(self._db, arrivals, response.next_batch)
        self.invitations.take(response)
        self._keys.expect(arrivals)
        await self._keys.retry(response, every=first)

    def _is_empty(self, room: str) -> bool:
        """Whether there is nobody to talk with: all others have left, or it only groups rooms."""
        there = self._client.rooms[room]
        return there.room_type == SPACE or set(there.users) == {self._client.user_id}

    async def _replaced(self, room: str, new: str, server: str) -> None:
        """A room of ours was upgraded: go where it went, or take its book along if we are there."""
        if new not in self._present:
            self.invitations.expect(new, server)
        elif await upgrades.predecessor(self._client, new) == room:
            await upgrades.take_along(self._db, room, new, self._now())
            self._outgoing.ring()

    async def _come_in(self, room: str, came_at: datetime | None) -> None:
        now = self._now()
        old = await upgrades.predecessor(self._client, room)
        if old and await upgrades.take_along(self._db, old, room, now):
            self._present |= {room, old}
            self._outgoing.ring()
            return
        # The place in the timeline decides what we hear; clocks of servers differ.
        joined_at = now if came_at is None else came_at - CLOCKS_DIFFER
        zone, units = self._settings.zone, self._settings.units
        async with self._db.transaction():
            is_back = await rooms.was_left(self._db, room)
            row = await rooms.join(self._db, room, joined_at, zone=zone, units=units)
            await greet(self._db, row, now)
            if is_back:
                await greet_again(self._db, row, now)
        self._present.add(room)
        self._outgoing.ring()

    async def _note_own_name(self, room: str) -> None:
        """Keep the name that we show in a room: we are called by it."""
        ours = self._client.rooms[room].users.get(self._client.user_id)
        row = await rooms.find(self._db, room)
        name = words.name((ours and ours.display_name) or "")
        if row and row.own_name != name:
            async with self._db.transaction():
                await rooms.set_own_name(self._db, row, name)

    async def _note_leaving(self, response: SyncResponse, first: bool) -> None:
        gone = self._present & set(response.rooms.leave)
        if first:
            # With the full state, a room that is not told of is one we were taken out of.
            gone |= self._present - set(response.rooms.join)
        for room in gone:
            log.info("the bot is no longer in a room")
            await rooms.leave(self._db, room, self._now())
            self._present.discard(room)
        for room in response.rooms.leave:
            self._client.rooms.pop(room, None)
