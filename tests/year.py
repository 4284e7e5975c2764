"""A group lives through a year, day by day in its own zone, with the reminders it gets."""

import asyncio
import random
import re
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from bot.reminders import tell
from handlers import keeping, route
from handlers.answer import Turn
from handlers.reading.acts import Act, Layer, Open
from handlers.reminded import RECORDED
from storage import changes, rooms
from storage.book import Book
from storage.database import Database
from storage.moments import from_ms
from storage.rows import Due

NAMES = ["Ada", "Bram", "Cleo", "Dov", "Esi", "Finn", "Gita", "Hugo", "Ines", "Jun", "Kofi", "Lale"]
BINS = ["shed", "yard", "blue", "green", "porch", "attic", "cellar", "gate", "north", "south"]
BINS += ["hut", "barn"]

DUTY = re.compile(
    r"(drain|seal|bury|plant where|see that nothing dug where|look into)? ?the (\w+) bin"
)
WHATS = {"see that nothing dug where": "cover", "look into": "check"}

RESTART = timedelta(minutes=1)
"""The longest that a bot which was killed is away."""

Key = tuple[str, str, str]
"""Bin, what is to be done, on which occasion."""


@dataclass(frozen=True, slots=True)
class Told:
    """A digest: when it was made, in the group's own time, and what it names as (bin, what)."""

    at: datetime
    body: str
    mentions: str

    @property
    def named(self) -> list[tuple[str, str]]:
        named, present = [], ""
        for what, bin in DUTY.findall(self.body):
            present = what or present  # said once for several bins
            named.append((bin, WHATS.get(present, present.split()[0])))
        return named


@dataclass
class Year:
    """Members who tend their bins, most of them on the day they are reminded.

    `kills`: how often the bot is killed and started again, half of them while it is telling.
    """

    path: Path
    zone: str
    begin: date
    days: int = 365
    members: int = 12
    seed: int = 1
    kills: int = 0
    digest_at: time = time(9, 0)
    asked: dict[Key, list[date]] = field(default_factory=dict)
    """For each due the days on whose digest hour it was to be done, or could be."""

    async def live(self) -> list[Told]:
        """The digests of the year."""
        self._rng = random.Random(self.seed)
        self._db = await Database.open(self.path)
        start = datetime.combine(self.begin, time(7, 30), ZoneInfo(self.zone)).astimezone(UTC)
        fate = random.Random(self.seed + 1)
        span = timedelta(days=self.days).total_seconds()
        moments = (start + timedelta(seconds=fate.uniform(0, span)) for _ in range(self.kills // 2))
        self._kills = sorted(moments, reverse=True)
        days = fate.sample(range(self.days), min(self.days, self.kills - self.kills // 2))
        self._kill_days = {self.begin + timedelta(days=n) for n in days}
        self._fate = fate
        self._count = 0
        try:
            await self._begin(start)
            for n in range(self.days):
                await self._day(self.begin + timedelta(days=n))
            return await self._told()
        finally:
            await self._db.close()

    async def _begin(self, start: datetime) -> None:
        async with self._db.transaction():
            room = await rooms.join(self._db, "!y:test", start, zone=self.zone, units="metric")
            await rooms.set_digest_at(self._db, room, self.digest_at)
        self._wake = await tell(self._db, start)
        for name, bin in zip(NAMES[: self.members], BINS, strict=False):
            size = self._rng.choice((10.0, 15.0, 20.0))
            await self._says(Open(bin=bin, capacity_l=size), name, start)

    async def _day(self, today: date) -> None:
        zone = ZoneInfo(self.zone)
        hours = [(self._rng.uniform(7.5, 22.5), name) for name in range(self.members)]
        for hour, number in sorted(hours):
            wall = datetime.combine(today, time(0), zone) + timedelta(hours=hour)
            await self._lives_until(wall.astimezone(UTC))
            for act in await self._wants(BINS[number], today):
                await self._says(act, NAMES[number], wall.astimezone(UTC))

    async def _wants(self, bin: str, today: date) -> list[Act]:
        """What a member does with a bin that day, mostly what is due."""
        dues = [due for due in await (await self._book()).dues() if due.bin and due.bin.name == bin]
        now = [due for due in dues if due.from_day <= today and due.what in RECORDED]
        done = [due for due in now if self._rng.random() < 0.8]
        acts: list[Act] = [RECORDED[due.what](bin=bin) for due in done[:1]]
        is_filling = not any(
            due.what == "bury" or (due.what == "seal" and due in now) for due in dues
        )
        if is_filling and self._rng.random() < 0.5:
            acts.append(Layer(bin=bin, mass_kg=round(self._rng.uniform(0.2, 1.5), 1)))
        return acts

    async def _says(self, act: Act, who: str, at: datetime) -> None:
        self._count += 1
        book = await self._book()
        event = f"$e{self._count}"
        turn = Turn(
            book=book,
            event=event,
            cause=event,
            sender=who,
            at=at,
            now=at,
            today=at.astimezone(ZoneInfo(self.zone)).date(),
        )
        async with self._db.transaction():
            await changes.meet(book, f"@{who}:test", who)
            await keeping.carry_out(turn, await route.answer(act, turn))
        self._wake = await tell(self._db, at)

    async def _lives_until(self, moment: datetime) -> None:
        while True:
            wake = self._wake
            assert wake is not None
            if self._kills and self._kills[-1] <= min(moment, wake):
                await self._is_killed(self._kills.pop())
            elif wake <= moment:
                await self._looks(wake)
            else:
                return

    async def _looks(self, wake: datetime) -> None:
        """The bot looks at the calendar; on some days it is killed while it tells."""
        today = wake.astimezone(ZoneInfo(self.zone)).date()
        for due in await (await self._book()).dues(today):
            self.asked.setdefault(_key(due), []).append(today)
        if today in self._kill_days:
            self._kill_days.remove(today)
            telling = asyncio.create_task(tell(self._db, wake))
            await asyncio.sleep(self._fate.uniform(0, 0.006))
            telling.cancel()
            await asyncio.gather(telling, return_exceptions=True)
            await self._is_killed(wake + self._fate.random() * RESTART)
        else:
            self._wake = await tell(self._db, wake)

    async def _is_killed(self, at: datetime) -> None:
        await self._db.close()
        self._db = await Database.open(self.path)
        self._wake = await tell(self._db, at)

    async def _book(self) -> Book:
        return Book(self._db, (await rooms.every(self._db))[0])

    async def _told(self) -> list[Told]:
        rows = await self._db.rows("SELECT * FROM outbox WHERE kind = 'digest' ORDER BY id")
        zone = ZoneInfo(self.zone)
        return [
            Told(from_ms(row["made_at"]).astimezone(zone), row["body"], row["mentions"])
            for row in rows
        ]


def _key(due: Due) -> Key:
    return due.bin.name if due.bin else "", due.what, due.occasion
