"""Whatever program wrote it, a book is brought forward whole, and copied before."""

import itertools
import sqlite3
from contextlib import closing
from pathlib import Path

import aiosqlite
import pytest

from bot.board import as_page
from bot.export import as_csv, as_json
from bot.feed import as_calendar
from storage import backup, migrations, rooms
from storage.book import Book
from storage.database import Database
from storage.errors import BookError
from storage.schema import VERSION
from tests.bench.flat import write_book
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


async def _steps(book: Path, entries: int) -> int:
    """Thousands of instructions that SQLite carries out to bring forward so long a book."""
    write_book(book, 1, entries)
    counted = itertools.count()
    async with aiosqlite.connect(book, isolation_level=None) as opened:
        await opened.execute_fetchall("PRAGMA foreign_keys = ON")
        await opened.set_progress_handler(lambda: next(counted) < 0, 1000)
        await migrations.migrate(opened, None)
    return next(counted)


async def test_a_long_book_is_brought_forward_in_proportion_to_its_length(tmp_path: Path) -> None:
    short, long = [await _steps(tmp_path / f"{n}.db", n) for n in (1_000, 4_000)]
    assert long < 6 * short


async def test_a_step_that_would_lose_something_is_not_taken(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    old = tmp_path / "old.db"
    write_book(old, 1, 200)
    before = counts(old)
    losing = [
        migrations.STEPS[0],
        "; ".join([migrations.STEPS[1], "DELETE FROM bin WHERE id = 11"]),
    ]
    monkeypatch.setattr(migrations, "STEPS", losing)
    with pytest.raises(BookError, match="nothing was changed"):
        await Database.open(old)
    assert counts(old) == before


async def test_a_book_with_something_lost_before_is_brought_forward_all_the_same(
    tmp_path: Path,
) -> None:
    old = tmp_path / "old.db"
    write_book(old, 1, 200)
    with closing(sqlite3.connect(old, isolation_level=None)) as opened:
        opened.execute("UPDATE entry SET bin = 99 WHERE id = 7")
    before = counts(old)
    await (await Database.open(old)).close()
    assert counts(old) == before
