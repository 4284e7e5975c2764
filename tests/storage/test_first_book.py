"""A book that any earlier program left is brought up to date with all that stands in it."""

import sqlite3
from contextlib import closing
from datetime import date
from pathlib import Path

from handlers.sharing.keepers import custody_of
from storage import changes, naming, outbox, rooms
from storage.absences import away_on
from storage.book import Book
from storage.database import Database
from storage.migrations import STEPS
from storage.rows import NewEntry
from tests.group import BEGIN

FIRST_BOOK = """
INSERT INTO room (id, address, joined_at, zone, units) VALUES (1, '!yard:test', 0, 'UTC', 'metric');
INSERT INTO member (id, room, user, name) VALUES (1, 1, '@ines:test', 'ines');
INSERT INTO bin (id, room, name, key) VALUES (1, 1, 'shed', 'shed');
INSERT INTO entry (id, room, act, bin, run, member, writer, on_day, said_at, written_at, event,
    cause, mass_kg, root)
    VALUES (1, 1, 'layer', 1, 1, 1, 1, '2026-03-01', 0, 0, '$a', '$a', 2.0, 1);
INSERT INTO due (id, room, bin, what, occasion, from_day, to_day, told_on, changed_at)
    VALUES (1, 1, 1, 'drain', '2026-03-01', '2026-03-03', '2026-03-04', '2026-03-03', 0);
INSERT INTO outbox (id, room, tx_id, kind, body, made_at, sent_as)
    VALUES (1, 1, 'digest-1-0', 'digest', 'Today or tomorrow: drain the shed bin.', 0, '$digest');
INSERT INTO outbox (id, room, tx_id, kind, body, made_at, rewrites)
    VALUES (2, 1, 're-$e', 'reply', 'Corrected.', 0, 1);
UPDATE room SET told_on = '2026-03-03';
PRAGMA user_version = 1;
"""


async def test_the_first_book_keeps_its_entries_and_knows_of_absences(tmp_path: Path) -> None:
    path = tmp_path / "book.db"
    with closing(sqlite3.connect(path)) as old:
        old.executescript(STEPS[0] + FIRST_BOOK)
    db = await Database.open(path)
    try:
        [room] = await rooms.every(db)
        book = Book(db, room)
        [layer] = await book.entries()
        assert (layer.facts.mass_kg, layer.until) == (2.0, None)
        gone = NewEntry(
            act="away",
            event="$b",
            cause="$b",
            said_at=BEGIN,
            written_at=BEGIN,
            member="ines",
            on=date(2026, 3, 2),
            until=date(2026, 3, 8),
        )
        async with db.transaction():
            await changes.write_down(book, gone)
        assert await away_on(book, date(2026, 3, 8)) == {"ines"}
        assert await away_on(book, date(2026, 3, 9)) == frozenset()
        [due] = await naming.named(book, "digest-1-0", None)
        assert due.what == "drain"
        [waiting] = await outbox.waiting(db)
        assert (waiting.id, waiting.rewrites_event) == (2, "$digest")
        assert await db.rows("PRAGMA foreign_key_check") == []
    finally:
        await db.close()


async def test_whoever_had_left_by_then_keeps_no_bin(tmp_path: Path) -> None:
    path = tmp_path / "book.db"
    with closing(sqlite3.connect(path)) as old:
        old.executescript(STEPS[0] + FIRST_BOOK)
        old.execute("UPDATE member SET present = 0")
        old.commit()
    db = await Database.open(path)
    try:
        [room] = await rooms.every(db)
        book = Book(db, room)
        [bin] = await book.bins()
        custody = await custody_of(book, bin, date.max)
        assert custody.keeper is None
        assert custody.left is not None
        assert custody.left.member == "ines"
    finally:
        await db.close()
