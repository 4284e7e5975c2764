"""What a batch knows from asking once is never older than what it wrote since."""

import sqlite3
from collections.abc import Awaitable, Callable
from contextlib import closing
from pathlib import Path

import pytest

from storage import changes, rooms
from storage.book import Book
from storage.database import Database
from tests.group import BEGIN
from tests.storage.test_database import new_entry


async def names(book: Book) -> tuple[list[str], list[str]]:
    return [bin.name for bin in await book.bins()], [one.name for one in await book.members()]


async def writes(book: Book) -> None:
    await changes.write_down(book, new_entry(bin="shed", member="ines"))


async def strikes(book: Book) -> None:
    [entry] = await book.of_event("$a")
    await changes.strike_out(book, [entry], "$x", BEGIN)


async def meets(book: Book) -> None:
    await changes.meet(book, "@ines:test", "Ines")


async def breaks(book: Book) -> None:
    async def part(db: Database) -> None:
        own = Book(db, book.room)
        await changes.write_down(own, new_entry(bin="yard", member="bram"))
        assert "yard" in (await names(own))[0]
        raise ZeroDivisionError

    with pytest.raises(ZeroDivisionError):
        await book.db.at_once(part)


STEPS: list[tuple[Callable[[Book], Awaitable[None]], list[str], list[str]]] = [
    (writes, ["shed"], ["ines"]),
    (meets, ["shed"], ["Ines"]),
    (breaks, ["shed"], ["Ines"]),
    (strikes, [], ["Ines"]),
]


async def test_it_is_asked_anew_after_every_change(book: Book) -> None:
    async def lives(db: Database) -> None:
        own = Book(db, book.room)
        for change, bins, members in STEPS:
            await change(own)
            assert await names(own) == (bins, members)
            assert (await own.bin("yard")) is None

    await book.db.at_once(lives)


async def test_a_setting_holds_from_the_next_message_on(book: Book) -> None:
    async def lives(db: Database) -> None:
        assert await rooms.find(db, book.room.address) == book.room
        await rooms.set_units(db, book.room, "us")
        changed = await rooms.find(db, book.room.address)
        assert changed
        assert changed.units == "us"

    await book.db.at_once(lives)


async def test_what_another_program_wrote_in_between_is_seen(book: Book, tmp_path: Path) -> None:
    async def looks(db: Database) -> list[str]:
        return (await names(Book(db, book.room)))[1]

    insert = "INSERT INTO member (room, name) VALUES (?, ?)"
    with closing(sqlite3.connect(tmp_path / "book.db", isolation_level=None)) as other:
        for look, expected in ((book.db.at_once, []), (book.db.ask, ["mei"])):
            assert await look(looks) == expected
            other.execute(insert, (book.room.id, "mei"))
        other.execute(insert, (book.room.id, "dov"))
    assert await book.db.ask(looks) == ["mei", "mei", "dov"]
