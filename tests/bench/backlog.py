"""What waited while the bot was off: messages a second through reading, handlers and storage."""

import asyncio
import itertools
import json
import os
import sys
import tempfile
import time
from asyncio.subprocess import DEVNULL
from collections.abc import Sequence
from datetime import timedelta
from pathlib import Path
from typing import Any

from bot.progress import Progress
from bot.run import at_hand
from bot.turn import work_off
from storage import inbox, rooms
from storage.database import Database
from storage.inbox import Arrival
from tests.bench import traffic
from tests.bench.measure import Measured, Reading

MESSAGES, ROOMS = 6_000, 20
IN_ONE_SYNC = 100
A_SECOND = 1_500


async def measure() -> list[Measured]:
    """Messages a second, on one core, by the clock and by the time the processor took."""
    cores = os.sched_getaffinity(0)
    os.sched_setaffinity(0, {min(cores)})
    try:
        with tempfile.TemporaryDirectory() as folder:
            return [*await _backlog(Path(folder)), await _replay(Path(folder))]
    finally:
        os.sched_setaffinity(0, cores)


async def _backlog(folder: Path) -> list[Measured]:
    events = list(itertools.islice(traffic.events(ROOMS), MESSAGES))
    at_hand()  # as in its rooms
    db = await Database.open(folder / "book.db")
    try:
        await _come_in(db, events)
        with Reading() as reading:
            began, cpu = time.perf_counter(), time.process_time()
            for start in range(0, MESSAGES, IN_ONE_SYNC):
                some = events[start : start + IN_ONE_SYNC]
                arrivals = [Arrival(room=raw["room_id"], raw=raw) for raw in some]
                await inbox.take_in(db, arrivals, f"t{start}")
            await _work_off(db)
            spent, cpu = time.perf_counter() - began, time.process_time() - cpu
        counts = await db.rows("SELECT state, count(*) FROM inbox GROUP BY state")
        assert [tuple(row) for row in counts] == [("done", MESSAGES)]
    finally:
        await db.close()
    read = sum(reading.spent)
    split = (
        f"{1000 * spent / MESSAGES:.3f} ms a message, of which reading the words "
        f"{1000 * read / MESSAGES:.3f} ms"
    )
    return [
        Measured(
            what="backlog, by the clock",
            value=MESSAGES / spent,
            unit="messages/s",
            bar=A_SECOND,
            more_is_better=True,
            note=split,
        ),
        Measured(
            what="backlog, by the processor's time",
            value=MESSAGES / cpu,
            unit="messages/s",
            bar=A_SECOND,
            more_is_better=True,
        ),
        Measured(
            what="backlog without reading the words",
            value=MESSAGES / (spent - read),
            unit="messages/s",
        ),
    ]


async def _come_in(db: Database, events: Sequence[dict[str, Any]]) -> None:
    async with db.transaction():
        for room in {raw["room_id"] for raw in events}:
            await rooms.join(db, room, traffic.BEGIN, zone="Europe/Lisbon", units="metric")


async def _work_off(db: Database) -> None:
    progress, done = Progress("messages"), 0
    end = traffic.BEGIN + timedelta(days=365)
    while worked_off := await work_off(db, now=lambda: end, own=traffic.OWN):
        done += worked_off
        progress.reached(done, MESSAGES)


async def _replay(folder: Path) -> Measured:
    """The command, from its start to its end, its reminders included."""
    log = folder / "log.jsonl"
    some = itertools.islice(traffic.events(1), MESSAGES)
    log.write_text("".join(f"{json.dumps(raw)}\n" for raw in some), encoding="utf-8")
    command = [sys.executable, "-m", "bot", "replay", str(log), "--json"]
    began = time.perf_counter()
    process = await asyncio.create_subprocess_exec(
        *command, "--book", str(folder / "replayed.db"), stdout=DEVNULL
    )
    assert await process.wait() == 0
    return Measured(
        what="replay of a log, with its reminders",
        value=MESSAGES / (time.perf_counter() - began),
        unit="messages/s",
    )
