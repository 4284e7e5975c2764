"""A rota lived through day by day: members say in words that they are away."""

import random
from collections import Counter
from dataclasses import dataclass, field
from datetime import date, timedelta

from storage.absences import away_on
from storage.database import Database
from storage.moments import local_day
from tests.room import TalkingRoom

MEMBERS = ("Ada", "Bram", "Cleo", "Dov", "Esi", "Finn")
AT_HOME = ("Ada", "Bram")
"""Those who never travel: equally available."""


@dataclass
class RotaYear:
    """Six members who drain a bin by turns, a week each."""

    db: Database
    seed: int = 1
    had: Counter[str] = field(default_factory=Counter)
    told: int = 0
    """Turns that digests told of."""
    away: int = 0
    """Days of members away."""
    apart: int = 0
    """The largest difference in turns between those who never travel."""
    _last: tuple[date, str] | None = None

    async def live(self, days: int) -> None:
        """So many days, each looked at once its digest was told."""
        dice, room = random.Random(self.seed), TalkingRoom(self.db)
        await room.says("opened the yard bin, 30 L, shared", who="Ada")
        for name in MEMBERS[1:]:
            await room.says("hello", who=name)
        members = ", ".join(MEMBERS)
        await room.says(f"draining rota for the yard bin: {members}, a week each", who="Ada")
        await room.waits(minutes=1)
        for _ in range(days):
            for message in await room.waits(days=1):
                self.told += message.kind == "digest" and "turn to drain" in message.body
            if dice.random() < 0.12:
                await self._travels(room, dice)
            await self._look(room)

    async def _travels(self, room: TalkingRoom, dice: random.Random) -> None:
        name = dice.choice(MEMBERS[len(AT_HOME) :])
        first = room.now.date() + timedelta(days=dice.choice([0, 0, 1, 5, 12]))
        last = first + timedelta(days=dice.choice([0, 1, 3, 6, 13]))
        await room.says(f"I'm away from {first} to {last}", who=name)

    async def _look(self, room: TalkingRoom) -> None:
        """Whoever has the turn today is here; whose it is counts once."""
        book = await room.book()
        today = local_day(room.now, book.room.zone)
        gone = await away_on(book, today)
        self.away += len(gone)
        turns = [
            due
            for due in await book.dues()
            if due.what == "turn to drain" and due.from_day <= today <= due.to_day
        ]
        assert len(turns) == 1, turns
        [due] = turns
        if due.to_member is None:
            assert gone >= set(MEMBERS)
            return
        assert due.to_member not in gone, (today, due.to_member)
        if (due.from_day, due.to_member) != self._last:
            self._last = due.from_day, due.to_member
            self.had[due.to_member] += 1
        one, other = AT_HOME
        self.apart = max(self.apart, abs(self.had[one] - self.had[other]))
        assert self.apart <= 1
