"""A log is played through the whole mind at the log's own times."""

from collections.abc import AsyncIterator, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from functools import partial

from bot.log import UNTIL, Line
from bot.reminders import next_in, tell
from bot.turn import work_off
from storage import inbox, outbox, rooms, session
from storage.database import Database
from storage.inbox import Arrival
from storage.rows import Message, Units

OWN_NAME = "pailkeeper"
"""Whose messages in a log are the bot's own, by the name in the user id."""


TOGETHER = 100
"""Events of a log that are committed together."""

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
        self._begin: dict[str, datetime] = {}
        """When the rooms of a log begin: at their earliest event, which need not come first."""

    async def play(self, lines: Sequence[Line]) -> AsyncIterator[Line | Spoken]:
        """Each event of the log, and after it all that the bot says before the next one."""
        self._now = self._now or await session.played_until(self._db)
        for line in lines:
            address = address_of(line.raw)
            self._begin[address] = min(self._begin.get(address, line.at), line.at)
        for start in range(0, len(lines), TOGETHER):
            for item in await self._db.at_once(partial(self._play, lines[start:][:TOGETHER])):
                yield item

    async def take(self, raw: dict[str, object], at: datetime) -> list[Spoken]:
        """One event, and what the bot says to it at once."""
        return await self._db.at_once(partial(self._take, raw, at))

    async def run_until(self, moment: datetime) -> AsyncIterator[Spoken]:
        """Let time run on, with the reminders that fall due."""
        for spoken in await self._db.at_once(partial(self._run_until, moment)):
            yield spoken

    async def _play(self, lines: Sequence[Line], db: Database) -> list[Line | Spoken]:
        played: list[Line | Spoken] = []
        for line in lines:
            played += await self._run_until(line.at, db)
            if line.raw.get("type") != UNTIL:
                played += [line, *await self._take(line.raw, line.at, db)]
        return played

    async def _take(self, raw: dict[str, object], at: datetime, db: Database) -> list[Spoken]:
        address = address_of(raw)
        room = await rooms.find(db, address)
        if room is None:
            begin = self._begin.get(address, at)
            room = await rooms.join(db, address, begin, zone=self._zone, units=self._units)
        await inbox.add(db, [Arrival(room=address, raw=raw)])
        while await work_off(db, now=lambda: at, own=self._own):
            pass
        if self._wake:  # a new room, or a new hour of its digest, may come before the others
            coming = await next_in(db, await rooms.find(db, address) or room, at)
            self._wake = min(self._wake, coming)
        return await self._speak(at, db)

    async def _run_until(self, moment: datetime, db: Database) -> list[Spoken]:
        if self._now and moment <= self._now:
            return []
        spoken = []
        if self._now and moment - self._now > LONGEST_IDLE:
            spoken += await self._run_until(self._now + LONGEST_IDLE, db)
            self._now, self._wake = moment, None
        wake = self._wake or await tell(db, self._now or moment)
        while wake and wake <= moment:
            self._wake = await tell(db, wake)
            spoken += await self._speak(wake, db)
            wake = self._wake
        self._now = moment
        return spoken

    async def _speak(self, at: datetime, db: Database) -> list[Spoken]:
        said = []
        while rows := await outbox.waiting(db):
            for row in rows:
                await outbox.sent(db, row.id, row.message.tx_id, at)
                said.append(Spoken(at, row.room, row.message))
        return said


def address_of(raw: Mapping[str, object]) -> str:
    """The room of an event; a log of one room need not name it."""
    address = raw.get("room_id")
    return address if isinstance(address, str) else "terminal"


def own_user(lines: Iterable[Line]) -> str:
    """The bot's user id in a log of a room it was in; empty if it was not."""
    for line in lines:
        sender = line.raw.get("sender")
        if isinstance(sender, str) and sender.startswith(f"@{OWN_NAME}:"):
            return sender
    return ""
