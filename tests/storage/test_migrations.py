"""Whatever program wrote it, a book is brought forward whole, and copied before."""

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from bot.board import as_page
from bot.export import as_csv, as_json
from bot.feed import as_calendar
from storage import backup, rooms
from storage.book import Book
from storage.database import Database
from storage.schema import VERSION
from tests.room import BEGIN, TalkingRoom
from tests.storage.shipped import dump, restored

SHIPPED = [version for version in range(1, VERSION + 1) if dump(version).exists()]
KEPT = {"entry": "WHERE act != 'leave'"}
"""A book from before leaving was written down gets an entry for each who had left."""
COUNTED = ("room", "former", "member", "bin", "entry", "due", "link", "question", "inbox", "outbox")


def counts(book: Path) -> dict[str, int]:
    with closing(sqlite3.connect(book)) as opened:
        found = {}
        for table in COUNTED:
            sql = f"SELECT count(*) FROM {table} {KEPT.get(table, '')}"  # noqa: S608
            found[table] = opened.execute(sql).fetchone()[0]
        return found


def columns(book: Path) -> dict[str, list[tuple[object, ...]]]:
    """Each table, view and index with its columns, whatever the words that made it."""
    with closing(sqlite3.connect(book)) as opened:
        names = opened.execute("SELECT name FROM sqlite_master WHERE name NOT LIKE 'sqlite%'")
        return {
            name: [
                row[1:5] for row in opened.execute("SELECT * FROM pragma_table_info(?)", (name,))
            ]
            for (name,) in names.fetchall()
        }


def test_every_schema_that_was_shipped_is_kept() -> None:
    assert set(range(1, VERSION)) <= set(SHIPPED)


@pytest.mark.parametrize("version", SHIPPED)
async def test_a_book_of_any_earlier_program_is_brought_forward(
    tmp_path: Path, version: int
) -> None:
    old, new = tmp_path / "old.db", tmp_path / "new.db"
    restored(version, old)
    before = counts(old)
    assert all(before.values()), before
    db = await Database.open(old)
    try:
        assert counts(old) == before
        for room in await rooms.every(db):
            book = Book(db, room)
            told = await as_json(book, BEGIN)
            assert len(await as_csv(book)) > 500
            assert b"DTSTART" in await as_calendar(book, BEGIN)
            assert b"shed" in await as_page(book, BEGIN)
            assert "pear tree" in str(told)
        # And it is written on.
        assert await TalkingRoom(db).says("added 2 kg scraps to the shed bin", event="$new")
    finally:
        await db.close()
    fresh = await Database.open(new)
    await fresh.close()
    assert columns(old) == columns(new)
    assert backup.faults(old, thorough=True) == []
    copy = tmp_path / "backups" / f"old-schema-{version}.db"
    assert copy.exists() is (version < VERSION)
    if copy.exists():
        assert counts(copy) == before
