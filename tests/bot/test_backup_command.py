"""`python -m bot backup` and the running bot's own backups."""

import asyncio
import logging
import sqlite3
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot import backup as command
from bot.cli import main
from bot.settings import Home
from storage.database import Database


@pytest.fixture
async def home(tmp_path: Path) -> Home:
    place = Home(tmp_path / "home")
    place.folder.mkdir(mode=0o700)
    await (await Database.open(place.book)).close()
    return place


def tables_of(path: Path) -> int:
    with closing(sqlite3.connect(path)) as book:
        return int(book.execute("SELECT count(*) FROM sqlite_master").fetchone()[0])


@pytest.mark.parametrize("which", ["--book", "--home"])
async def test_it_copies_to_the_file_that_is_named(
    home: Home, which: str, capsys: pytest.CaptureFixture[str]
) -> None:
    given = home.book if which == "--book" else home.folder
    to = home.folder / "copy.db"
    assert main(["backup", which, str(given), str(to)]) == 0
    assert "checked and whole" in capsys.readouterr().out
    assert tables_of(to) == tables_of(home.book) > 0


async def test_in_a_folder_it_names_the_copy_after_the_moment(
    home: Home, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    moment = datetime(2026, 3, 2, 18, 0, 5, tzinfo=UTC)
    monkeypatch.setattr("bot.clock.now", lambda: moment)
    assert main(["backup", "--home", str(home.folder), str(tmp_path)]) == 0
    assert tables_of(tmp_path / "book-2026-03-02T180005Z.db") > 0


@pytest.mark.parametrize(
    ("book", "to", "says"),
    [
        ("none.db", "copy.db", "there is no book at"),
        ("book.db", "letter.txt", "is there already: name a new file"),
        ("book.db", "nowhere/copy.db", "there is no folder"),
        ("letter.txt", "copy.db", "is no book of Pailkeeper's (file is not a database)"),
        ("other.db", "copy.db", "is no book of Pailkeeper's (no such table: room)"),
        ("folder", "copy.db", "is a folder: name the book in it"),
        ("torn.db", "copy.db", "is damaged"),
    ],
)
async def test_what_cannot_be_done_is_said(
    home: Home, book: str, to: str, says: str, capsys: pytest.CaptureFixture[str]
) -> None:
    (home.folder / "letter.txt").write_text("Dear neighbours, " * 100)
    (home.folder / "folder").mkdir()
    with closing(sqlite3.connect(home.folder / "other.db")) as other:
        other.execute("CREATE TABLE song (name TEXT)")
    torn = bytearray(home.book.read_bytes())
    torn[4096 * 10 : 4096 * 11] = b"\xa5" * 4096
    (home.folder / "torn.db").write_bytes(torn)
    given = [str(home.folder / name) for name in (book, to)]
    assert main(["backup", "--book", *given]) == 2
    error = capsys.readouterr().err
    assert says in error
    assert len(error.splitlines()) == 1


async def test_the_running_bot_makes_one_each_day(
    home: Home, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(command, "LOOK_AGAIN_SECONDS", 0.01)
    moments = [datetime(2026, 3, day, 12, tzinfo=UTC) for day in (1, 1, 2, 3, 3)]
    stop = asyncio.Event()

    def next_moment() -> datetime:
        if len(moments) == 1:
            stop.set()
        return moments.pop(0)

    monkeypatch.setattr("bot.clock.now", next_moment)
    await command.keep_daily(home, 2, stop)
    made = sorted(path.name for path in (home.folder / "backups").iterdir())
    assert made == ["book-2026-03-02.db", "book-2026-03-03.db"]


async def test_a_daily_backup_that_fails_is_said_and_the_bot_goes_on(
    home: Home, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    monkeypatch.setattr(command, "LOOK_AGAIN_SECONDS", 0.01)
    (home.folder / "backups").write_text("in the way")
    stop = asyncio.Event()
    with caplog.at_level(logging.ERROR):
        task = asyncio.create_task(command.keep_daily(home, 7, stop))
        while len(caplog.records) < 2:  # noqa: ASYNC110 - a log rings no bell
            await asyncio.sleep(0.01)
        stop.set()
        await task
    assert "no daily backup: the folder" in caplog.text


async def test_none_are_made_where_none_are_wanted(home: Home) -> None:
    await command.keep_daily(home, 0, asyncio.Event())
    assert not (home.folder / "backups").exists()
