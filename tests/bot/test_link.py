"""`python -m bot link`, as the person who runs the bot meets it."""

import subprocess
import sys
from pathlib import Path

import pytest

from storage import changes, links, rooms, session
from storage.book import Book
from storage.database import Database
from tests.group import BEGIN

BASE = "https://bins.example.org"


def link(home: Path, *more: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "bot", "link", "--home", str(home), *more],
        capture_output=True,
        text=True,
        encoding="utf-8",
        timeout=60,
        check=False,
    )


@pytest.fixture
async def home(tmp_path: Path) -> Path:
    """The home of a bot that serves one room's calendar."""
    db = await Database.open(tmp_path / "book.db")
    async with db.transaction():
        room = await rooms.join(db, "!r:test", BEGIN, zone="Europe/Lisbon", units="metric")
        await changes.meet(Book(db, room), "@ines:test", "ines")
    await session.set_address(db, BASE)
    await db.close()
    return tmp_path


async def opened(home: Path, url: str) -> str | None:
    """Whose calendar an address opens: a member's, "all", or None for nobody's."""
    db = await Database.open(home / "book.db")
    try:
        found = await links.opened_by(db, url.removeprefix(f"{BASE}/").partition("/")[0])
    finally:
        await db.close()
    return (found.member or "all") if found else None


async def test_it_is_made_once_and_anew_when_asked(home: Path) -> None:
    first = link(home)
    assert first.returncode == 0
    [board, feed] = [word for word in first.stdout.split() if word.startswith(BASE)]
    assert feed == f"{board}calendar.ics"
    assert link(home).stdout == first.stdout
    assert await opened(home, board) == "all"
    second = link(home, "--new").stdout
    assert second != first.stdout
    assert await opened(home, board) is None


async def test_a_members_own(home: Path) -> None:
    said = link(home, "--member", "ines").stdout
    assert await opened(home, said.split()[-1]) == "ines"


@pytest.mark.parametrize("more", [["--member", "nobody"], ["--room", "!other:test"]])
async def test_what_is_not_known_is_named(home: Path, more: list[str]) -> None:
    done = link(home, *more)
    assert done.returncode == 2
    assert len(done.stderr.splitlines()) == 1


async def test_where_nothing_is_served_it_says_how(home: Path) -> None:
    db = await Database.open(home / "book.db")
    await session.set_address(db, None)
    await db.close()
    done = link(home)
    assert done.returncode == 2
    assert "`listen`" in done.stderr


def test_without_a_book_it_says_so(tmp_path: Path) -> None:
    assert "there is no book" in link(tmp_path).stderr
