"""One log message after another, each committed, beside the bare commit of the very same rows.

The peer is SQLite alone: the statements that the bot carried out for the message are carried out
once more by the same program on a copy of the book, as durably, with nothing around them.
"""

import os
import sqlite3
import tempfile
import time
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import timedelta
from pathlib import Path
from typing import Any

from bot.run import at_hand
from bot.turn import work_off
from storage import backup, inbox, rooms
from storage.database import PRAGMAS, Database
from storage.inbox import Arrival
from tests.bench import traffic
from tests.bench.measure import Measured, Reading, median

MESSAGES = 300
BEFORE = 40
"""Messages that were there before, so that the bin is neither new nor the caches cold."""
TIMES_THE_COMMIT = 2.0


@dataclass
class Recording:
    """A connection that remembers the changes it carries out."""

    connection: sqlite3.Connection
    changes: list[tuple[str, Sequence[Any], bool]] = field(default_factory=list)

    def __getattr__(self, name: str) -> Any:
        return getattr(self.connection, name)

    def execute(self, sql: str, values: Sequence[Any] = ()) -> Any:
        if sql.startswith(("INSERT", "UPDATE", "DELETE")):
            self.changes.append((sql, values, False))
        return self.connection.execute(sql, values)

    def executemany(self, sql: str, many: Sequence[Any]) -> Any:
        self.changes.append((sql, many, True))
        return self.connection.executemany(sql, many)


async def measure() -> list[Measured]:
    """Median milliseconds of each."""
    with tempfile.TemporaryDirectory() as folder:
        return await _measure(Path(folder) / "book.db", Path(folder) / "bare.db")


async def _measure(path: Path, copy: Path) -> list[Measured]:
    at_hand()  # as in its rooms
    db = await Database.open(path)
    try:
        async with db.transaction():
            await rooms.join(db, "!y:bench", traffic.BEGIN, zone="UTC", units="metric")
        for number in range(BEFORE):
            await _hear(db, number)
            await _work(db, number)
        backup.copy(path, copy)
        bare = sqlite3.connect(copy, isolation_level=None, cached_statements=512)
        for pragma in PRAGMAS:
            bare.execute(pragma)
        desk = vars(db)["_desk"]
        recording = desk._connection = Recording(desk._connection)
        with Reading() as reading:
            spent = [await _pair(db, recording, bare, number) for number in range(BEFORE, MESSAGES)]
        bare.close()
    finally:
        await db.close()
    waited = [_disk(path) for _ in range(MESSAGES - BEFORE)]
    taken, taken_bare, worked, worked_bare, busy, busy_bare = (
        [1000 * times[n] for times in spent] for n in range(6)
    )
    peer = "bare commit of the same rows"
    return [
        Measured(
            what="log message, from the inbox to the commit",
            value=median(worked),
            unit="ms",
            peer=peer,
            beside=median(worked_bare),
            bar=TIMES_THE_COMMIT,
            note=f"of which reading the words {1000 * median(reading.spent):.2f} ms; of the bare "
            f"commit, waiting for the disk {1000 * median(waited):.2f} ms",
        ),
        Measured(
            what="with taking it in, the commit of its own",
            value=median(worked) + median(taken),
            unit="ms",
            peer=peer,
            beside=median(worked_bare) + median(taken_bare),
            bar=TIMES_THE_COMMIT,
        ),
        Measured(
            what="the same without the disk: the processor's time",
            value=median(busy),
            unit="ms",
            peer=peer,
            beside=median(busy_bare),
        ),
    ]


def _disk(path: Path) -> float:
    """Seconds until the disk has a page more: what no durable commit can do without."""
    with path.with_name("page").open("ab") as page:
        page.write(bytes(4096))
        page.flush()
        began = time.perf_counter()
        os.fsync(page.fileno())
        return time.perf_counter() - began


async def _pair(
    db: Database, recording: Recording, bare: sqlite3.Connection, number: int
) -> tuple[float, ...]:
    """Seconds: taken in, the same bare, worked off, the same bare; the processor's of those two."""
    recording.changes.clear()
    taken = await _hear(db, number)
    bare.execute("PRAGMA synchronous = NORMAL")  # as the bot takes in, see `inbox.take_in`
    taken_bare = _commit(bare, recording.changes)
    bare.execute("PRAGMA synchronous = FULL")
    recording.changes.clear()
    start = time.process_time()
    worked = await _work(db, number)
    middle = time.process_time()
    worked_bare = _commit(bare, recording.changes)
    busy, busy_bare = middle - start, time.process_time() - middle
    return taken, taken_bare, worked, worked_bare, busy, busy_bare


async def _hear(db: Database, number: int) -> float:
    at = traffic.BEGIN + timedelta(hours=3 * number)
    words = f"added {number % 9 / 10 + 0.3:.1f} kg scraps to the shed bin"
    if number % 20 == 18:
        words = "sealed the shed bin"
    if number % 20 == 19:
        words = "buried the shed bin"
    raw = traffic.message("!y:bench", f"${number}", "@ines:bench", at, words)
    began = time.perf_counter()
    await inbox.take_in(db, [Arrival(room="!y:bench", raw=raw)], f"t{number}")
    return time.perf_counter() - began


async def _work(db: Database, number: int) -> float:
    at = traffic.BEGIN + timedelta(hours=3 * number)
    began = time.perf_counter()
    await work_off(db, now=lambda: at, own=traffic.OWN)
    return time.perf_counter() - began


def _commit(bare: sqlite3.Connection, changes: Sequence[tuple[str, Sequence[Any], bool]]) -> float:
    began = time.perf_counter()
    bare.execute("BEGIN IMMEDIATE")
    for sql, values, many in changes:
        (bare.executemany if many else bare.execute)(sql, values)
    bare.execute("COMMIT")
    return time.perf_counter() - began
