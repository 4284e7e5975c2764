"""Events whose key has not come: waited for a moment, tried again, owned up to, given up."""

import asyncio
import logging
from collections.abc import Iterable
from datetime import datetime, timedelta

from nio import ForwardedRoomKeyEvent, RoomKeyEvent, SyncResponse
from nio.client.async_client import AsyncClient

from bot import timeline
from bot.pacing import Bell
from storage import inbox, outbox, rooms
from storage.database import Database
from storage.inbox import Arrival, Item
from storage.rows import Message

log = logging.getLogger(__name__)

GRACE_SECONDS = 5.0
"""So long an event without its key holds back those after it, at most."""
OWN_UP_AFTER = timedelta(minutes=2)
OWN_UP_BEFORE = timedelta(hours=12)
GIVE_UP_AFTER = timedelta(days=7)

UNREADABLE = (
    "I could not read this message: its key has not reached me, so nothing of it is written down. "
    "Please say it again. If it happens often, your app may not trust the device I use."
)


class MissingKeys:
    """Rings `heard` when what can be read may be worked through."""

    def __init__(self, client: AsyncClient, db: Database, heard: Bell) -> None:
        self._client = client
        self._db = db
        self._heard = heard
        self._awaited: set[str] = set()
        self._held: asyncio.TimerHandle | None = None

    def expect(self, arrivals: Iterable[Arrival]) -> None:
        """Note which of the events now stored have no key yet."""
        self._awaited |= {arrival.raw["event_id"] for arrival in arrivals if arrival.parked}

    async def retry(self, response: SyncResponse, *, every: bool) -> None:
        """Read the parked events for which keys have come; `every`: whatever has come."""
        came = {
            event.session_id
            for event in response.to_device_events
            if isinstance(event, RoomKeyEvent | ForwardedRoomKeyEvent)
        }
        if not (came or every):
            return
        for item in await inbox.parked(self._db):
            if every or _session(item) in came:
                raw = timeline.decrypted(self._client, item)
                if raw is not None:
                    await inbox.unpark(self._db, item.id, raw)
                    self._awaited.discard(item.event)

    def ring_or_hold(self) -> None:
        """Wake the mind, but have it wait a moment for keys on their way: order counts."""
        if not self._awaited:
            self._release()
        elif self._held is None:
            loop = asyncio.get_running_loop()
            self._held = loop.call_later(GRACE_SECONDS, self._release)

    def _release(self) -> None:
        if self._held is not None:
            self._held.cancel()
            self._held = None
        self._awaited.clear()
        self._heard.ring()

    async def own_up(self, now: datetime) -> bool:
        """Say of an unread message that it was not read, once a day to its sender."""
        if not await inbox.parked(self._db):
            return False
        await inbox.expire_parked(self._db, now - GIVE_UP_AFTER)
        present = {room.address: room.id for room in await rooms.present(self._db)}
        told = False
        for item in await inbox.parked(self._db):
            room = present.get(item.room)
            if room is None or not OWN_UP_AFTER <= now - item.at < OWN_UP_BEFORE:
                continue
            day_of_sender = f"unread-{room}-{item.raw.get('sender')}-{now.date()}"
            message = Message(
                tx_id=day_of_sender, kind="reply", body=UNREADABLE, to_event=item.event
            )
            async with self._db.transaction():
                await outbox.put(self._db, room, message, now)
            told = True
        return told


def _session(item: Item) -> object:
    return item.raw.get("content", {}).get("session_id")
