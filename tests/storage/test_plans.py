"""No question about one message looks through the rows of all others, however many there are."""

import re
import sqlite3
from collections.abc import Sequence
from contextlib import closing
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest

from bot import log
from bot.feed import as_calendar
from bot.playback import Playback, own_user
from storage import inbox, outbox, rooms
from storage.book import Book
from storage.database import Database
from storage.desk import Desk
from storage.revision import revision
from tests.group import BEGIN

SEASON = Path(__file__).parents[2] / "sample_logs" / "season.jsonl"
LONG = ("entry", "inbox", "outbox", "due", "question", "tally", "dosed")
"""The tables that grow with the years."""
PARTIAL = ("due_by_hour", "outbox_held", "outbox_waiting", "inbox_waiting", "inbox_parked")
"""Indexes that hold only what waits, which is little: they may be read from end to end."""


async def test_every_question_finds_its_rows_by_an_index(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked: dict[str, Sequence[Any]] = {}
    real = Desk.rows

    def rows(self: Desk, sql: str, values: Sequence[Any] = ()) -> list[sqlite3.Row]:
        asked.setdefault(sql, values)
        return real(self, sql, values)

    monkeypatch.setattr(Desk, "rows", rows)
    db = await Database.open(tmp_path / "book.db")
    try:
        await live(db)
    finally:
        await db.close()
    assert len(asked) > 40
    anew = r"\bact = \?"  # with indexes for some acts, SQLite plans it whenever it is asked
    assert [sql for sql in asked if re.search(anew, sql)] == []
    with closing(sqlite3.connect(tmp_path / "book.db")) as book:
        found = [scan for sql, values in asked.items() for scan in scans(book, sql, values)]
    assert found == []


async def live(db: Database) -> None:
    """A season, with all that is asked around it."""
    events = list(log.lines(SEASON))
    playback = Playback(db, zone="Europe/Lisbon", units="metric", own=own_user(events))
    _ = [item async for item in playback.play(events)]
    for address in [room.address for room in await rooms.every(db)]:
        room = await rooms.find(db, address)
        assert room
        await revision(db, room)
        await as_calendar(Book(db, room), BEGIN + timedelta(days=30), with_cancelled=True)
        await inbox.messages_waiting(db, address, limit=3, before=BEGIN, sender="@ines:test")
        await outbox.unsent(db, room.id, limit=3, before=BEGIN)
        await outbox.lately(db, room.id, BEGIN, BEGIN, sender="@ines:test")
        [known, *_] = await db.rows("SELECT * FROM outbox WHERE kind = 'reply' AND room = 1")
        await outbox.told_in(db, room.id, known["tx_id"], "@ines:test")
        await outbox.was_said(db, room.id, "Rinse it.", BEGIN, BEGIN)
    await inbox.parked(db)


def scans(book: sqlite3.Connection, sql: str, values: Sequence[Any]) -> list[str]:
    """The steps of SQLite's plan that read a growing table from end to end."""
    plan = [str(row[3]) for row in book.execute(f"EXPLAIN QUERY PLAN {sql}", values)]
    return [
        f"{step}: {sql}"
        for step in plan
        if step.startswith(tuple(f"SCAN {table}" for table in LONG)) and not step.endswith(PARTIAL)
    ]
