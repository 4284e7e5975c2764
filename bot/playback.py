"""A log is played through the whole mind at the log's own times."""

from collections.abc import AsyncIterator, Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.log import UNTIL, Line
from bot.reminders import tell, upcoming
from bot.turn import work_off
from storage import inbox, outbox, rooms, session
from storage.database import Database
from storage.inbox import Arrival
from storage.rows import Message, Units

OWN_NAME = "pailkeeper"
"""Whose messages in a log are the bot's own, by the name in the user id."""


LONGEST_IDLE = timedelta(days=400)
"""A log that is silent for longer is not followed day by day: nobody was reminded any more."""


@dataclass(frozen=True, slots=True)
class Spoken:
    """Something the bot said, and when."""

    at: datetime
    room: str
    message: Message


class Playback:
    """Plays events into a book, room by room, and hands back what the bot says to them."""

    def __init__(self, db: Database, *, zone: str, units: Units, own: str) -> None:
        self._db = db
        self._zone = zone
        self._units = units
        self._own = own
        self._now: datetime | None = None
        self._wake: datetime | None = None

    async def play(self, lines: Iterable[Line]) -> AsyncIterator[Line | Spoken]:
        """Each event of the log, and after it all that the bot says before the next one."""
        self._now = self._now or await session.played_until(self._db)
        for line in lines:
            async for spoken in self.run_until(line.at):
                yield spoken
            if line.raw.get("type") == UNTIL:
                continue
            yield line
            for answer in await self.take(line.raw, line.at):
                yield answer

    async def take(self, raw: dict[str, object], at: datetime) -> list[Spoken]:
        """One event, and what the bot says to it at once."""
        address = raw.get("room_id")
        room = address if isinstance(address, str) else "terminal"
        async with self._db.transaction():
            if await rooms.find(self._db, room) is None:
                await rooms.join(self._db, room, at, zone=self._zone, units=self._units)
            await inbox.add(self._db, [Arrival(room=room, raw=raw)])
        while await work_off(self._db, now=lambda: at, own=self._own):
            pass
        if self._wake:  # a new room, or a new hour of its digest, may come before the others
            self._wake = await upcoming(self._db, at)
        return await self._speak(at)

    async def run_until(self, moment: datetime) -> AsyncIterator[Spoken]:
        """Let time run on, with the reminders that fall due."""
        if self._now is None or moment > self._now:
            if self._now and moment - self._now > LONGEST_IDLE:
                async for spoken in self.run_until(self._now + LONGEST_IDLE):
                    yield spoken
                self._now, self._wake = moment, None
            wake = self._wake or await tell(self._db, self._now or moment)
            while wake and wake <= moment:
                self._wake = await tell(self._db, wake)
                for spoken in await self._speak(wake):
                    yield spoken
                wake = self._wake
            self._now = moment

    async def _speak(self, at: datetime) -> list[Spoken]:
        said = []
        while rows := await outbox.waiting(self._db):
            for row in rows:
                await outbox.sent(self._db, row.id, row.message.tx_id, at)
                said.append(Spoken(at, row.room, row.message))
        return said


def own_user(lines: Iterable[Line]) -> str:
    """The bot's user id in a log of a room it was in; empty if it was not."""
    for line in lines:
        sender = line.raw.get("sender")
        if isinstance(sender, str) and sender.startswith(f"@{OWN_NAME}:"):
            return sender
    return ""
