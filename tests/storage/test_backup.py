"""Copies of a book: whole or not at all, made before anything risky, and named in need."""

import asyncio
import os
import sqlite3
import stat
from contextlib import closing
from datetime import date, timedelta
from pathlib import Path

import pytest

from storage import backup, lock, migrations, rooms, session
from storage.database import Database
from storage.errors import BookError, StorageRefused, refusal
from storage.schema import VERSION
from tests.group import BEGIN

TODAY = date(2026, 3, 2)


def damage(book: Path) -> None:
    """Overwrite the middle of a file, as a failing disk would."""
    with book.open("r+b") as file:
        file.seek(book.stat().st_size // 2)
        file.write(b"\xa5" * 8192)


async def filled(path: Path, count: int = 300) -> None:
    db = await Database.open(path)
    await come_to(db, count)
    await db.close()


async def come_to(db: Database, count: int) -> None:
    """Come to so many rooms in one transaction; those the book knows are the same again."""
    async with db.transaction():
        for number in range(count):
            await rooms.join(db, f"!room{number}:test", BEGIN, zone="UTC", units="us")


def names_in(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def rooms_in(book: Path) -> int:
    with closing(sqlite3.connect(book)) as opened:
        return int(opened.execute("SELECT count(*) FROM room").fetchone()[0])


async def test_a_copy_made_while_the_book_is_written_is_one_moment_of_it(tmp_path: Path) -> None:
    db = await Database.open(tmp_path / "book.db")
    copies = []

    async def write() -> None:
        for number in range(40):
            async with db.transaction():  # two rooms at a time: a copy never holds an odd one
                for half in "ab":
                    await rooms.join(db, f"!{number}{half}", BEGIN, zone="UTC", units="us")

    async def copy() -> None:
        for number in range(8):
            to = tmp_path / f"copy{number}.db"
            await asyncio.to_thread(backup.copy, tmp_path / "book.db", to)
            copies.append(rooms_in(to))

    await asyncio.gather(write(), copy())
    await db.close()
    assert all(count % 2 == 0 for count in copies)
    assert copies == sorted(copies)


async def test_a_copy_is_its_owners_only_and_opens_as_a_book(tmp_path: Path) -> None:
    await filled(tmp_path / "book.db")
    before = os.umask(0)
    try:
        backup.copy(tmp_path / "book.db", tmp_path / "copy.db")
    finally:
        os.umask(before)
    assert stat.S_IMODE((tmp_path / "copy.db").stat().st_mode) == 0o600
    assert names_in(tmp_path) == ["book.db", "copy.db"]
    db = await Database.open(tmp_path / "copy.db")
    assert len(await rooms.every(db)) == 300
    await db.close()


async def test_a_copy_that_fails_leaves_the_former_one(tmp_path: Path) -> None:
    await filled(tmp_path / "book.db", 3)
    backup.copy(tmp_path / "book.db", tmp_path / "copy.db")
    await filled(tmp_path / "other.db")
    damage(tmp_path / "other.db")
    with pytest.raises(BookError, match="could not be made"):
        backup.copy(tmp_path / "other.db", tmp_path / "copy.db")
    assert rooms_in(tmp_path / "copy.db") == 3
    assert not [name for name in names_in(tmp_path) if name.endswith(".new")]


async def test_daily_backups_are_kept_for_so_many_days(tmp_path: Path) -> None:
    book = tmp_path / "book.db"
    await filled(book, 1)
    for day in range(5):
        assert backup.daily(book, TODAY + timedelta(days=day), keep=3)
        assert backup.daily(book, TODAY + timedelta(days=day), keep=3) is None
    assert names_in(tmp_path / "backups") == [
        "book-2026-03-04.db",
        "book-2026-03-05.db",
        "book-2026-03-06.db",
    ]


async def test_a_damaged_book_is_refused_and_its_newest_good_backup_named(tmp_path: Path) -> None:
    book = tmp_path / "book.db"
    await filled(book)
    for day in range(3):
        made = backup.daily(book, TODAY + timedelta(days=day), keep=7)
        assert made
        os.utime(made, (day, day))
    damage(tmp_path / "backups" / "book-2026-03-04.db")
    damage(book)
    before = book.read_bytes()
    with pytest.raises(BookError, match=r"put back its newest good backup, .*book-2026-03-03\.db"):
        await Database.open(book)
    assert book.read_bytes() == before
    book.unlink()
    (tmp_path / "backups" / "book-2026-03-03.db").rename(book)
    db = await Database.open(book)
    assert len(await rooms.every(db)) == 300
    await db.close()


async def test_a_book_is_copied_before_a_newer_schema_is_put_on_it(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    book = tmp_path / "book.db"
    await filled(book, 2)
    step = "CREATE TABLE shelf (id INTEGER PRIMARY KEY) STRICT"
    monkeypatch.setattr(migrations, "STEPS", (*migrations.STEPS, step))
    monkeypatch.setattr(migrations, "VERSION", VERSION + 1)
    db = await Database.open(book)
    assert await db.rows("SELECT * FROM shelf") == []
    assert len(await rooms.every(db)) == 2
    await db.close()
    with closing(sqlite3.connect(tmp_path / "backups" / f"book-schema-{VERSION}.db")) as copied:
        assert copied.execute("PRAGMA user_version").fetchone() == (VERSION,)
        assert copied.execute("SELECT count(*) FROM room").fetchone() == (2,)


async def test_a_migration_that_fails_leaves_the_book_as_it_was(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    book = tmp_path / "book.db"
    await filled(book, 2)
    with monkeypatch.context() as newer:
        step = "CREATE TABLE shelf (id INTEGER PRIMARY KEY) STRICT; CREATE TABLE room (id TEXT)"
        newer.setattr(migrations, "STEPS", (*migrations.STEPS, step))
        newer.setattr(migrations, "VERSION", VERSION + 1)
        with pytest.raises(BookError, match="cannot be used as a book"):
            await Database.open(book)
    db = await Database.open(book)
    assert len(await rooms.every(db)) == 2
    assert await db.rows("SELECT 1 FROM sqlite_master WHERE name = 'shelf'") == []
    await db.close()


async def test_the_database_of_another_program_is_refused_untouched(tmp_path: Path) -> None:
    path = tmp_path / "accounts.db"
    with closing(sqlite3.connect(path)) as other:
        other.execute("CREATE TABLE money (amount)")
        other.commit()
    before = path.read_bytes()
    with pytest.raises(BookError, match="another program"):
        await Database.open(path)
    assert path.read_bytes() == before


async def test_one_process_at_a_time_writes(tmp_path: Path) -> None:
    book = tmp_path / "book.db"
    db = await Database.open(book, alone=True)
    assert lock.is_held(book)
    with pytest.raises(BookError, match="another Pailkeeper is using"):
        await Database.open(book, alone=True)
    reader = await Database.open(book)
    assert await rooms.every(reader) == []
    await reader.close()
    await db.close()
    assert not lock.is_held(book)
    await (await Database.open(book, alone=True)).close()


async def test_a_refused_start_does_not_keep_the_lock(tmp_path: Path) -> None:
    book = tmp_path / "book.db"
    book.write_text("Dear neighbours, " * 100)
    for _ in range(2):
        with pytest.raises(BookError, match="cannot be used as a book"):
            await Database.open(book, alone=True)
    assert not lock.is_held(book)


@pytest.mark.parametrize(
    ("pragma", "says"),
    [
        ("PRAGMA query_only = ON", "make the file and its folder writable; nothing is lost"),
        ("PRAGMA max_page_count = 1", "the disk is full: make room on it"),
    ],
)
async def test_what_the_disk_refuses_is_said_and_undone(
    tmp_path: Path, pragma: str, says: str
) -> None:
    book = tmp_path / "book.db"
    await filled(book, 2)
    db = await Database.open(book)
    await db.rows(pragma)
    with pytest.raises(StorageRefused, match=says):
        await come_to(db, 2000)
    assert len(await rooms.every(db)) == 2
    await db.rows("PRAGMA query_only = OFF")
    async with db.transaction():
        await session.set_sync_token(db, "t")
    await db.close()


async def test_another_writer_is_said(tmp_path: Path) -> None:
    book = tmp_path / "book.db"
    await filled(book, 1)
    db = await Database.open(book)
    await db.rows("PRAGMA busy_timeout = 10")
    with closing(sqlite3.connect(book, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        with pytest.raises(StorageRefused, match="another program is writing"):
            async with db.transaction():
                await session.set_sync_token(db, "t")
    async with db.transaction():
        await session.set_sync_token(db, "t")
    await db.close()


async def test_another_writer_is_waited_for(tmp_path: Path) -> None:
    book = tmp_path / "book.db"
    await filled(book, 1)
    db = await Database.open(book)
    [patience] = [row[0] for row in await db.rows("PRAGMA busy_timeout")]
    assert patience >= 60_000
    with closing(sqlite3.connect(book, isolation_level=None)) as other:
        other.execute("BEGIN EXCLUSIVE")
        writing = asyncio.create_task(come_to(db, 3))
        await asyncio.sleep(0.2)
        assert not writing.done()
        other.execute("ROLLBACK")
        await writing
    assert rooms_in(book) == 3
    await db.close()


async def test_a_lock_that_the_disk_does_not_take_is_not_called_held(tmp_path: Path) -> None:
    book = tmp_path / "book.db"
    lock.beside(book).write_text("Dear neighbours, " * 100)
    with pytest.raises(BookError, match=f"the lock {lock.beside(book)} cannot be taken"):
        await Database.open(book, alone=True)
    assert not lock.is_held(book)


@pytest.mark.parametrize("is_there", [False, True], ids=["gone", "empty"])
async def test_a_book_that_is_gone_is_not_begun_anew_beside_its_backups(
    tmp_path: Path, is_there: bool
) -> None:
    book = tmp_path / "book.db"
    await filled(book, 3)
    good = backup.daily(book, TODAY, 7)
    assert good is not None
    book.write_bytes(b"") if is_there else book.unlink()
    with pytest.raises(BookError, match=f"though it has backups: put its newest good one, {good}"):
        await Database.open(book, alone=True)
    assert book.exists() is is_there
    assert not lock.is_held(book)
    good.parent.rename(tmp_path / "elsewhere")
    await (await Database.open(book)).close()
    assert rooms_in(book) == 0


async def test_a_transaction_cancelled_as_it_begins_is_not_left_open(tmp_path: Path) -> None:
    db = await Database.open(tmp_path / "book.db")

    async def begin() -> None:
        async with db.transaction():
            await asyncio.Event().wait()

    for steps in range(6):
        task = asyncio.create_task(begin())
        for _ in range(steps):
            await asyncio.sleep(0)
        task.cancel()
        with pytest.raises(asyncio.CancelledError):
            await task
        async with db.transaction():
            await session.set_sync_token(db, str(steps))
    await db.close()


def test_damage_found_at_work_is_not_called_harmless() -> None:
    error = sqlite3.DatabaseError("database disk image is malformed")
    error.sqlite_errorcode = sqlite3.SQLITE_CORRUPT
    told = str(refusal(error, "book.db"))
    assert "put back a backup" in told
    assert "nothing is lost" not in told


def test_a_bug_of_ours_is_not_blamed_on_the_disk() -> None:
    error = sqlite3.OperationalError("no such column: shed")
    error.sqlite_errorcode = sqlite3.SQLITE_ERROR
    assert refusal(error, "book.db") is None
