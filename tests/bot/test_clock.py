"""The task that sleeps until something is due: woken by changes, not led astray by the clock."""

import asyncio
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Any, cast

import pytest

from bot import run
from bot.matrix import Session
from bot.pacing import Bell
from bot.pinned import Notices
from handlers.reading.acts import Layer
from storage.database import Database
from tests.group import Group


@dataclass
class Clock:
    """A clock on the wall that somebody sets."""

    time: datetime

    def now(self) -> datetime:
        return self.time


@dataclass
class NotYet:
    """A session that does not know its rooms yet: nothing is hung up in them."""

    ready: asyncio.Event


@pytest.fixture
def clock(monkeypatch: pytest.MonkeyPatch) -> Clock:
    made = Clock(datetime(2026, 3, 4, 8, 0, tzinfo=UTC))
    monkeypatch.setattr(run, "clock", made)
    # What a person would wait a minute for, a test need not.
    monkeypatch.setattr(run, "_seconds_until", lambda *_: 0.05)
    return made


@asynccontextmanager
async def reminding(db: Database) -> AsyncIterator[Bell]:
    bell, stop = Bell(), asyncio.Event()
    session = cast("Session", NotYet(asyncio.Event()))
    notices = cast("Notices", None)
    task = asyncio.create_task(run._remind(db, notices, session, bell, Bell(), stop))
    try:
        yield bell
    finally:
        stop.set()
        bell.ring()
        await task


async def said(db: Database, count: int) -> list[str]:
    """What was said unasked, once there is so much of it; and a little later, to see no more."""

    async def rows() -> list[Any]:
        return await db.rows("SELECT body FROM outbox WHERE kind IN ('digest', 'reminder')")

    async with asyncio.timeout(10):
        while len(await rows()) < count:  # noqa: ASYNC110 - a table rings no bell
            await asyncio.sleep(0.02)
    await asyncio.sleep(0.3)
    return [row["body"] for row in await rows()]


async def test_a_jump_of_the_clock_neither_loses_nor_doubles(
    group: Group, db: Database, clock: Clock
) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    drain = "Today or tomorrow: drain the shed bin (ines)."
    async with reminding(db):
        assert await said(db, 0) == []
        clock.time += timedelta(hours=3)  # over the hour of the digest
        assert await said(db, 1) == [drain]
        clock.time -= timedelta(hours=4)  # and back before it
        assert await said(db, 1) == [drain]
        clock.time += timedelta(hours=2)
        assert await said(db, 1) == [drain]
        clock.time += timedelta(days=3)  # the machine slept
        late = "Late, since Thursday 5 March: drain the shed bin (ines)."
        assert await said(db, 2) == [drain, late]


async def test_it_is_woken_by_what_changes_the_book(
    group: Group, db: Database, clock: Clock, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(run, "_seconds_until", lambda *_: 60.0)
    clock.time = datetime(2026, 3, 4, 10, 0, tzinfo=UTC)
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    async with reminding(db) as bell:
        assert len(await said(db, 1)) == 1
        await group.says(Layer(mass_kg=2.0, bin="yard"), days=-9)
        clock.time += timedelta(days=1)
        bell.ring()
        heard = await said(db, 2)
        assert heard[1] == "Late, since Tuesday 24 February: drain the yard bin (ines)."
