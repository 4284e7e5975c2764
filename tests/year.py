"""A group lives through a year, day by day in its own zone, with the reminders it gets."""

import asyncio
import random
import re
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from bot.reminders import tell
from handlers import arranging, route
from handlers.answer import Turn
from handlers.planning.dues import is_news
from handlers.planning.reminded import RECORDED
from handlers.reading.acts import Act, Layer, Open
from handlers.reading.arranged import Away, OwnDate, Plan
from handlers.recording import keeping
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


@dataclass(frozen=True, slots=True)
class Wish:
    """A reminder that a member sets: so many days apart, or once, and its hour if it has one."""

    words: str
    after: int
    every: int | None
    hour: time | None
    rule: str | None = None

    def days(self, begin: date, end: date) -> list[date]:
        """The days it is meant for, counted on a calendar."""
        first = begin + timedelta(days=self.after)
        count = 1 if self.every is None else (end - first).days // self.every + 1
        return [first + timedelta(days=n * (self.every or 0)) for n in range(count)]


WISHES = [
    Wish("empty the caddy", 3, None, time(18, 0)),
    Wish("wash the lids", 6, 14, None, "FREQ=DAILY;INTERVAL=14"),
    Wish("count the bran", 2, 7, time(19, 30), "FREQ=WEEKLY"),
    Wish("look at the traps", 1, 3, time(7, 15), "FREQ=DAILY;INTERVAL=3"),
    Wish("the spring party", 200, None, None),
]

Key = tuple[str, str, str]
"""Bin, what is to be done, on which occasion."""


@dataclass(frozen=True, slots=True)
class Told:
    """What was said unasked: when, in the group's own time, and what it names as (bin, what)."""

    at: datetime
    body: str
    mentions: str
    kind: str = "digest"

    @property
    def named(self) -> list[tuple[str, str]]:
        return self.named_in(self.body)

    def named_in(self, words: str) -> list[tuple[str, str]]:
        named, present = [], ""
        for what, bin in DUTY.findall(words):
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
    """For each due of a bin the days on whose digest hour it was to be done, or could be."""
    pressing: dict[date, set[tuple[str, str]]] = field(default_factory=dict)
    """What a day's digest has to name as that day's, as (bin, what)."""
    away: dict[str, list[tuple[date, date]]] = field(default_factory=dict)
    """The days on which members were away."""

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
        for wish in WISHES:
            first = self.begin + timedelta(days=wish.after)
            plan = OwnDate(words=wish.words, first=first, rule=wish.rule, hour=wish.hour)
            await self._says(plan, NAMES[0], start)
        for name, bin in zip(NAMES[: self.members], BINS, strict=False):
            size = self._rng.choice((10.0, 15.0, 20.0))
            await self._says(Open(bin=bin, capacity_l=size), name, start)

    async def _goes_away(self, today: date) -> None:
        """Now and then a member is away for a week, and says so in the morning."""
        for name in NAMES[: self.members]:
            gone = self.away.get(name)
            if (gone is None or gone[-1][1] < today) and self._rng.random() < 1 / 60:
                last = today + timedelta(days=6)
                self.away.setdefault(name, []).append((today, last))
                early = datetime.combine(today, time(7, 20), ZoneInfo(self.zone))
                await self._lives_until(early.astimezone(UTC))
                await self._says(Away(first=today, last=last), name, early.astimezone(UTC))

    async def _day(self, today: date) -> None:
        await self._goes_away(today)
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

    async def _says(self, act: Act | Plan, who: str, at: datetime) -> None:
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
            answer = arranging.answer if isinstance(act, Plan) else route.answer
            await keeping.carry_out(turn, await answer(act, turn))  # type: ignore[arg-type]
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
        local = wake.astimezone(ZoneInfo(self.zone))
        today = local.date()
        if local.time() == self.digest_at:
            for due in await (await self._book()).dues(today):
                if due.bin:
                    self.asked.setdefault(_key(due), []).append(today)
                    if due.to_day == today and is_news(due, today):
                        self.pressing.setdefault(today, set()).add((due.bin.name, due.what))
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
        rows = await self._db.rows(
            "SELECT * FROM outbox WHERE kind IN ('digest', 'reminder') ORDER BY id"
        )
        zone = ZoneInfo(self.zone)
        return [
            Told(
                from_ms(row["made_at"]).astimezone(zone), row["body"], row["mentions"], row["kind"]
            )
            for row in rows
        ]


def _key(due: Due) -> Key:
    return due.bin.name if due.bin else "", due.what, due.occasion
