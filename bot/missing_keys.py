"""Events that cannot be read yet: waited for a moment, tried again, owned up to, given up.

Either the key has not come, or the device that sent them is not trusted; both may change.
"""

import asyncio
import logging
from collections.abc import Iterable, Mapping
from datetime import datetime, timedelta
from typing import Any

from nio import (
    Event,
    ForwardedRoomKeyEvent,
    MegolmEvent,
    RoomKeyEvent,
    SyncResponse,
    UnknownToDeviceEvent,
)

from bot import timeline
from bot.connection import Client
from bot.heard import moment
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
ORIGINAL_COMES_WITHIN = timedelta(days=1)
"""So long an edit is kept by for a message that has not come: then it is from before our time."""

UNREADABLE = (
    "I could not read this message: its key has not reached me, so nothing of it is written down. "
    "Please say it again. If it happens often, your app may not trust the device I use."
)
WITHHELD = (
    "I could not read this message: your app keeps its key from me, so nothing of it is written "
    "down. Let it write to unverified devices in this room, or verify mine; then say it again."
)
IN_CLEAR = (
    "I took nothing from this message: it came unencrypted, and in this encrypted room I believe "
    "only what is encrypted. Please say it again from an app that encrypts."
)
UNSIGNED = (
    "I took nothing from this message: it came from a device that its owner has not signed. Verify "
    "that device from another of yours, and I write it down after all."
)

SENT_AT = "origin_server_ts"
MOST_WITHHELD = 1000
"""Notes of keys kept from us that are remembered: anybody can send some."""


class MissingKeys:
    """Rings `heard` when what can be read may be worked through."""

    def __init__(self, client: Client, db: Database, heard: Bell) -> None:
        self._client = client
        self._db = db
        self._heard = heard
        self._awaited: set[str] = set()
        self._withheld: set[object] = set()
        """Sessions whose key was kept from us on purpose."""
        self._told: set[str] = set()
        """What was owned up to since the start: looked at no more."""
        self._held: asyncio.TimerHandle | None = None

    def expect(self, arrivals: Iterable[Arrival]) -> None:
        """Note which of the events now stored have no key yet."""
        self._awaited |= {
            arrival.raw["event_id"]
            for arrival in arrivals
            if arrival.parked and not self._is_refused(arrival.room, arrival.raw)
        }

    async def retry(self, response: SyncResponse, *, every: bool) -> None:
        """Read the parked events for which keys have come; `every`: whatever has come."""
        self._note_withheld(response)
        came = {
            event.session_id
            for event in response.to_device_events
            if isinstance(event, RoomKeyEvent | ForwardedRoomKeyEvent)
        }
        if not (came or every):
            return
        for item in await inbox.parked(self._db):
            if every or _session(item.raw) in came:
                raw = timeline.decrypted(self._client, item)
                if raw is not None:
                    await inbox.unpark(self._db, item.id, raw)
                if raw is not None or self._is_refused(item.room, item.raw):
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
        """Say of an unread message that it was not read, and why, once a day to its sender."""
        if not await inbox.any_parked(self._db):
            return False
        await inbox.expire_parked(self._db, now - GIVE_UP_AFTER)
        await inbox.expire_put_by(self._db, now - ORIGINAL_COMES_WITHIN)
        present = {room.address: room.id for room in await rooms.present(self._db)}
        told = False
        for item in await inbox.parked(self._db):
            room, sender = present.get(item.room), item.raw.get("sender")
            once = f"unread-{room}-{sender}-{now.date()}"
            if room is None or sender == self._client.user_id or once in self._told:
                continue
            why, after = self._reason(item)
            if not after <= now - item.at < OWN_UP_BEFORE:
                continue
            message = Message(tx_id=once, kind="reply", body=why, to_event=item.event)
            async with self._db.transaction():
                await outbox.put(self._db, room, message, now)
            self._told.add(once)
            told = True
        return told

    async def refuse_in_clear(
        self, address: str, messages: Iterable[Mapping[str, Any]], now: datetime
    ) -> bool:
        """Say of words in clear that nothing was taken from them, once a day to their sender."""
        room = await rooms.find(self._db, address)
        told = False
        for raw in messages:
            event, sender, at = raw.get("event_id"), raw.get("sender"), moment(raw.get(SENT_AT))
            once = f"clear-{address}-{sender}-{now.date()}"
            if room is None or sender == self._client.user_id or once in self._told:
                continue
            if at is None or now - at >= OWN_UP_BEFORE or not isinstance(event, str):
                continue
            content = raw.get("content")
            if not isinstance(content, Mapping) or content.get("msgtype") == "m.notice":
                continue  # nothing would be taken from it anyway
            message = Message(tx_id=once, kind="reply", body=IN_CLEAR, to_event=event)
            async with self._db.transaction():
                await outbox.put(self._db, room.id, message, now)
            self._told.add(once)
            told = True
        return told

    def _reason(self, item: Item) -> tuple[str, timedelta]:
        """What to say of an unread message, and how long after it was sent."""
        if self._is_refused(item.room, item.raw):
            return UNSIGNED, timedelta(0)
        return (WITHHELD if _session(item.raw) in self._withheld else UNREADABLE), OWN_UP_AFTER

    def _is_refused(self, room: str, raw: Mapping[str, Any]) -> bool:
        """Whether it could be read, but its device is not trusted."""
        event = Event.parse_event(dict(raw))
        if not isinstance(event, MegolmEvent) or timeline.lacks_key(self._client, room, event):
            return False
        return self._client.trust.refuses(event)

    def _note_withheld(self, response: SyncResponse) -> None:
        for event in response.to_device_events:
            if isinstance(event, UnknownToDeviceEvent) and event.type == "m.room_key.withheld":
                session = event.source["content"].get("session_id")
                if isinstance(session, str) and len(self._withheld) < MOST_WITHHELD:
                    self._withheld.add(session)


def _session(raw: Mapping[str, Any]) -> object:
    return raw.get("content", {}).get("session_id")
