"""The longest step of the event loop while the bot does what takes long: the bar is 20 ms.

What a running bot does with a homeserver's answers is watched by the bench `memory`.
"""

import gc
import itertools
import tempfile
import time
from collections.abc import Awaitable, Callable
from datetime import timedelta
from pathlib import Path

import aiohttp

from bot.reminders import tell
from bot.run import at_hand
from bot.turn import work_off
from bot.web import served
from storage import inbox, links, rooms
from storage.book import Book
from storage.database import Database
from storage.inbox import Arrival
from tests.bench import traffic
from tests.bench.held import BAR_MS, watched
from tests.bench.measure import Measured
from tests.bench.pages import fill

MESSAGES, ROOMS, DIGESTS = 3_000, 10, 1_000
LATER = traffic.BEGIN + timedelta(days=120)


async def measure() -> list[Measured]:
    """Longest steps in milliseconds, by the processor's time; by the clock in the notes."""
    at_hand()
    with tempfile.TemporaryDirectory() as folder:
        db = await Database.open(Path(folder) / "book.db")
        try:
            return [
                await _watch("a backlog of 3,000 messages", db, _backlog),
                await _watch("the digests of 1,000 rooms", db, _digests),
                await _watch("board and feed of 100 bins", db, _pages),
                _collection(),
            ]
        finally:
            await db.close()


async def _watch(what: str, db: Database, work: Callable[[Database], Awaitable[None]]) -> Measured:
    with watched() as held:
        await work(db)
    return Measured(
        what=what,
        value=1000 * held.processor,
        unit="ms",
        bar=BAR_MS,
        note=held.told(),
    )


def _collection() -> Measured:
    """Everything stands still while the collector looks through all that the program holds."""
    began = time.process_time()
    gc.collect()
    spent = time.process_time() - began
    return Measured(what="a full garbage collection", value=1000 * spent, unit="ms", bar=BAR_MS)


async def _backlog(db: Database) -> None:
    events = list(itertools.islice(traffic.events(ROOMS), MESSAGES))
    async with db.transaction():
        for room in {raw["room_id"] for raw in events}:
            await rooms.join(db, room, traffic.BEGIN, zone="Europe/Lisbon", units="metric")
    for start in range(0, MESSAGES, 100):
        some = events[start : start + 100]
        await inbox.take_in(db, [Arrival(room=raw["room_id"], raw=raw) for raw in some], "t")
    while await work_off(db, now=lambda: LATER, own=traffic.OWN):
        pass


async def _digests(db: Database) -> None:
    async with db.transaction():
        for number in range(ROOMS, DIGESTS):
            room = f"!yard{number}:bench"
            await rooms.join(db, room, traffic.BEGIN, zone="Europe/Lisbon", units="metric")
    await tell(db, LATER)


async def _pages(db: Database) -> None:
    room = await rooms.find(db, "!yard1:bench")
    assert room
    book = Book(db, room)
    await db.at_once(lambda db: fill(Book(db, room)))
    async with db.transaction():
        await links.put(book, None, "a-token-of-the-bench", LATER)
    async with (
        served(db, "127.0.0.1:0", "", lambda: LATER) as base,
        aiohttp.ClientSession() as session,
    ):
        for page in ("", "calendar.ics"):
            async with session.get(f"{base}/a-token-of-the-bench/{page}") as answer:
                assert answer.status == 200
                await answer.read()
