"""Empties the outbox: one message at a time, in order, each under its own transaction id.

A row stays until the homeserver has its event, and is sent again under the same id after a crash:
the homeserver knows the id and keeps one event. A send is never cancelled while the bot goes on,
because nio would hold the room's encryption for ever.
"""

import asyncio
import logging
from collections.abc import Callable
from datetime import datetime, timedelta

from nio import EncryptionError, MembersSyncError, RoomMessagesResponse, RoomSendResponse
from nio.client.async_client import AsyncClient
from nio.exceptions import LocalProtocolError
from nio.responses import RoomSendError, UploadError

from bot import files
from bot.connection import OUT_OF_REACH, SignedOut, http_status
from bot.content import event_of
from bot.pacing import Bell, Patience
from storage import outbox
from storage.database import Database
from storage.rows import Waiting

log = logging.getLogger(__name__)

ID_REMEMBERED = timedelta(hours=20)
"""Homeservers keep transaction ids for about a day; an older row is looked for before a resend."""
LOOK_BACK = 200
"""Events of the room searched for it."""
SAID_BEFORE = "M_DUPLICATE_ANNOTATION"

Clock = Callable[[], datetime]


class Sender:
    """Sends what waits in the outbox; ring `bell` when there is something new."""

    def __init__(self, client: AsyncClient, db: Database, now: Clock) -> None:
        self._client = client
        self._db = db
        self._now = now
        self._patience: dict[str, Patience] = {}
        self._not_before: dict[str, float] = {}
        self.bell = Bell()

    async def work(self, stop: asyncio.Event) -> None:
        """Send until `stop`; raises SignedOut when the homeserver has forgotten the bot."""
        while not stop.is_set():
            rows = await outbox.waiting(self._db, busy=self._resting())
            for row in rows:
                if stop.is_set():
                    return
                # Order counts within a room: after a failure its later rows wait as well.
                if row.room not in self._not_before:
                    await self._deliver(row)
            if not rows:
                await self.bell.wait(self._seconds_to_next())

    def _resting(self) -> list[str]:
        """The rooms that are not to be tried yet."""
        at = asyncio.get_running_loop().time()
        self._not_before = {room: t for room, t in self._not_before.items() if t > at}
        return list(self._not_before)

    def _seconds_to_next(self) -> float | None:
        if not self._not_before:
            return None
        at = asyncio.get_running_loop().time()
        return max(0.0, min(self._not_before.values()) - at)

    async def _deliver(self, row: Waiting) -> None:
        try:
            event = await self._sent_before(row) or await self._send(row)
        except (*OUT_OF_REACH, EncryptionError, LocalProtocolError, MembersSyncError) as error:
            self._rest(row.room, type(error).__name__)
            return
        if event is not None:
            self._patience.pop(row.room, None)
            await outbox.sent(self._db, row.id, event, self._now())

    async def _send(self, row: Waiting) -> str | None:
        """The id of the event sent; None if it is refused for good or to be tried later."""
        kind, content = event_of(row)
        if row.message.attached:
            file = await files.made(row.message.attached)
            stored = await files.upload(self._client, row.room, file)
            if isinstance(stored, UploadError):
                return await self._after_refusal(row, stored)
            content |= stored
        try:
            answer = await self._client.room_send(
                row.room,
                kind,
                content,
                tx_id=row.message.tx_id,
                # Or one new device of any member would silence the bot.
                ignore_unverified_devices=True,
            )
        finally:
            # nio leaves this behind when sharing keys fails, and the next send would hang.
            self._client.sharing_session.pop(row.room, None)
        if isinstance(answer, RoomSendResponse):
            return str(answer.event_id)
        return await self._after_refusal(row, answer)

    async def _after_refusal(
        self, row: Waiting, refusal: RoomSendError | UploadError
    ) -> str | None:
        code = refusal.status_code or "no reason given"
        if code in ("M_UNKNOWN_TOKEN", "M_MISSING_TOKEN") or not self._client.logged_in:
            raise SignedOut
        if code == SAID_BEFORE:
            return SAID_BEFORE
        if 400 <= http_status(refusal) < 500:
            log.error("a message was refused by the homeserver for good: %s", code)
            await outbox.refused(self._db, row.id, code)
        else:
            self._rest(row.room, code)
        return None

    def _rest(self, room: str, why: str) -> None:
        seconds = self._patience.setdefault(room, Patience()).failed()
        self._not_before[room] = asyncio.get_running_loop().time() + seconds
        log.warning("a message could not be sent (%s); next try in %d s", why, seconds)

    async def _sent_before(self, row: Waiting) -> str | None:
        """The event of an old row, if it went out but was not noted."""
        if self._now() - row.made_at < ID_REMEMBERED:
            return None
        answer = await self._client.room_messages(row.room, limit=LOOK_BACK)
        if not isinstance(answer, RoomMessagesResponse):
            return None
        for event in answer.chunk:
            unsigned = event.source.get("unsigned") or {}
            own = event.source.get("sender") == self._client.user_id
            if own and unsigned.get("transaction_id") == row.message.tx_id:
                return str(event.source["event_id"])
        return None
