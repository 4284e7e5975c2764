"""`python -m bot check`: plain findings, and a status that a machine can read."""

import sqlite3
import stat
from collections import namedtuple
from contextlib import closing
from datetime import date
from pathlib import Path

import pytest

from bot.account import Account, write
from bot.cli import main
from bot.settings import Home
from storage import backup
from storage.database import Database
from storage.schema import VERSION

Out = pytest.CaptureFixture[str]


@pytest.fixture
async def book(tmp_path: Path) -> Path:
    folder = tmp_path / "home"
    folder.mkdir(mode=0o700)
    await (await Database.open(folder / "book.db")).close()
    return folder / "book.db"


def findings(out: Out) -> tuple[list[str], list[str]]:
    """What is in order, and what is wrong."""
    lines = out.readouterr().out.splitlines()
    assert all(line.startswith(("ok     ", "WRONG  ")) for line in lines)
    well = [line[7:] for line in lines if line.startswith("ok")]
    return well, [line[7:] for line in lines if line.startswith("WRONG")]


def all_in(folder: Path) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in folder.iterdir()}


async def test_a_book_in_order(book: Path, capsys: Out) -> None:
    before = all_in(book.parent)
    assert main(["check", "--book", str(book)]) == 0
    well, bad = findings(capsys)
    assert bad == []
    assert any(line.startswith(f"the book is whole (schema {VERSION}; 0 rooms") for line in well)
    assert "no bot is using the book" in well
    assert all_in(book.parent) == before


async def test_a_book_in_use(book: Path, capsys: Out) -> None:
    db = await Database.open(book, alone=True)
    assert main(["check", "--book", str(book)]) == 0
    await db.close()
    assert "a bot is using the book" in findings(capsys)[0]


def others_may_read(book: Path) -> None:
    book.chmod(0o644)


def damaged(book: Path) -> None:
    backup.daily(book, date(2026, 3, 2), 7)
    with book.open("r+b") as file:
        file.seek(book.stat().st_size // 2)
        file.write(b"\xa5" * 8192)


def from_tomorrow(book: Path) -> None:
    with closing(sqlite3.connect(book)) as opened:
        opened.execute("PRAGMA user_version = 99")


def pointing_to_nothing(book: Path) -> None:
    with closing(sqlite3.connect(book)) as opened:
        opened.execute("INSERT INTO bin (room, name, key) VALUES (7, 'shed', 'shed')")
        opened.commit()


def of_another_kind(book: Path) -> None:
    with closing(sqlite3.connect(book)) as opened:
        opened.execute("DROP TABLE outbox")


def with_a_bad_backup(book: Path) -> None:
    (book.parent / "backups").mkdir()
    (book.parent / "backups" / "book-2026-03-02.db").write_text("Dear neighbours")


@pytest.mark.parametrize(
    ("happens", "says"),
    [
        (others_may_read, "others may look into {book}: chmod 600 '{book}'"),
        (damaged, "-wal and -shm files, and put back {folder}/backups/book-2026-03-02.db"),
        (from_tomorrow, f"the book is of schema 99, this program knows {VERSION}: update it"),
        (pointing_to_nothing, "1 rows of the book point to nothing: put back a backup"),
        (of_another_kind, "is no book of Pailkeeper's (no such table: outbox)"),
        (with_a_bad_backup, "no backup in {folder}/backups is whole: look at the disk"),
    ],
)
async def test_what_is_wrong_with_a_book(
    book: Path, happens: object, says: str, capsys: Out
) -> None:
    assert callable(happens)
    happens(book)
    assert main(["check", "--book", str(book)]) == 1
    bad = findings(capsys)[1]
    assert any(says.format(book=book, folder=book.parent) in line for line in bad), bad


async def test_a_full_disk(book: Path, capsys: Out, monkeypatch: pytest.MonkeyPatch) -> None:
    usage = namedtuple("usage", ["free"])
    monkeypatch.setattr("shutil.disk_usage", lambda _: usage(20_000_000))
    assert main(["check", "--book", str(book)]) == 1
    assert any("0.0 GB are free" in line for line in findings(capsys)[1])


def test_a_book_that_is_not_there_is_bad_usage(tmp_path: Path, capsys: Out) -> None:
    assert main(["check", "--book", str(tmp_path / "none.db")]) == 2
    assert "there is no book at" in capsys.readouterr().err


def test_a_new_home_needs_a_login(tmp_path: Path, capsys: Out) -> None:
    assert main(["check", "--home", str(tmp_path / "home")]) == 1
    assert findings(capsys)[1] == [
        f"there is no login in {tmp_path / 'home'}: run `python -m bot login`"
    ]


def lost(book: Path) -> None:
    backup.daily(book, date(2026, 3, 2), 7)
    book.unlink()


async def test_a_book_that_is_gone_from_a_home(book: Path, capsys: Out) -> None:
    lost(book)
    assert main(["check", "--home", str(book.parent)]) == 1
    assert "is gone, though it has backups" in findings(capsys)[1][0]


async def test_a_home_that_reaches_nobody(book: Path, capsys: Out) -> None:
    home = Home(book.parent)
    address = "http://127.0.0.1:9"  # the discard port: nothing listens there
    write(home, Account(homeserver=address, user="@p:x", device="D", token="t", store_key="k"))
    home.settings.write_text('units = "stone"')
    home.settings.chmod(0o640)
    assert main(["check", "--home", str(home.folder)]) == 1
    bad = findings(capsys)[1]
    assert [line.split(":")[0] for line in bad] == [
        str(home.settings),
        f"others may look into {home.settings}",
        "the homeserver http",
    ]
    assert stat.S_IMODE(home.login.stat().st_mode) == 0o600


@pytest.mark.parametrize("words", [b"", b"# A shopping list\n" * 200])
def test_a_file_that_is_none_of_ours_is_left_alone(
    tmp_path: Path, capsys: Out, words: bytes
) -> None:
    foreign = tmp_path / "list.md"
    foreign.write_bytes(words)
    foreign.chmod(0o644)
    assert main(["check", "--book", str(foreign)]) == 1
    well, bad = findings(capsys)
    assert well == []
    [line] = bad
    assert line.endswith("name another file")
    assert main(["check", "--book", str(tmp_path)]) == 1
    assert findings(capsys)[1] == [f"{tmp_path} is a folder: name the book in it"]
