"""What many tests share: a book on disk, and a group that talks to it."""

from collections.abc import AsyncIterator
from pathlib import Path

import pytest

from storage import rooms
from storage.book import Book
from storage.database import Database
from tests.group import BEGIN, Group


@pytest.fixture
async def db(tmp_path: Path) -> AsyncIterator[Database]:
    opened = await Database.open(tmp_path / "book.db")
    yield opened
    await opened.close()


@pytest.fixture
async def book(db: Database) -> Book:
    async with db.transaction():
        room = await rooms.join(db, "!yard:test", BEGIN, zone="Europe/Lisbon", units="metric")
    return Book(db, room)


@pytest.fixture
def group(book: Book) -> Group:
    return Group(book)
