"""The sums that SQLite keeps are those of the entries that stand, whatever was struck out."""

import asyncio
import sqlite3
from contextlib import closing
from datetime import timedelta
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from handlers.practice import density
from handlers.state import layer_mass
from storage import changes, rooms, sums
from storage.book import Book
from storage.database import Database
from storage.migrations import ABSENCES, COMMUNAL, SHARED_CALENDAR
from storage.rows import Entry, Facts, NewEntry
from storage.schema import SCHEMA, SUMS, VERSION
from tests.group import BEGIN

LAYER = st.tuples(
    st.just("layer"),
    st.sampled_from([None, "shed", "yard"]),
    st.sampled_from(["ines", "bram"]),
    st.builds(
        Facts,
        mass_kg=st.sampled_from([None, 0.5, 2.0]),
        volume_l=st.sampled_from([None, 1.0, 3.0]),
        materials=st.sampled_from([None, {"meat": 0.7, "mixed": 0.3}, {"fruit": 1.0}]),
        starter_g=st.sampled_from([None, 12.0, 30.5]),
    ),
)
STOCK = st.tuples(
    st.just("stock"), st.none(), st.just("ines"), st.builds(Facts, mass_kg=st.just(3.0))
)
STRIKE = st.tuples(st.just("strike"), st.integers(0, 30))
STEPS = st.lists(st.one_of(LAYER, STOCK, STRIKE), max_size=20)


async def live(db: Database, steps: list[tuple[object, ...]]) -> Book:
    async with db.transaction():
        book = Book(db, await rooms.join(db, "!y:test", BEGIN, zone="UTC", units="metric"))
        made: list[int] = []
        for number, step in enumerate(steps):
            match step:
                case ("strike", int(pick)):
                    struck = [e for e in await book.entries() if e.id in made[pick:][:1]]
                    await changes.strike_out(book, struck, f"$x{number}", BEGIN)
                case (str(act), bin, str(who), Facts() as facts):
                    entry = NewEntry(
                        act=act,
                        event=f"$e{number}",
                        cause=f"$e{number}",
                        said_at=BEGIN,
                        written_at=BEGIN,
                        bin=bin if isinstance(bin, str) else None,
                        member=who,
                        writer=who,
                        on=BEGIN.date() + timedelta(days=number * 7 % 11),
                        facts=facts,
                    )
                    made.append(await changes.write_down(book, entry))
    return book


async def assert_sums(book: Book) -> None:
    standing = [entry for entry in await book.entries() if not entry.struck]
    layers = [entry for entry in standing if entry.act == "layer"]
    for bin in [None, *await book.bins()]:
        for member in [None, *await book.members()]:
            own = [
                entry
                for entry in layers
                if bin in (None, entry.bin) and (member is None or entry.member == member.name)
            ]
            parts = await sums.put_in(book, bin, member)
            kg = sum(p.mass_kg + density.mass_kg(p.volume_l, p.materials) for p in parts)
            assert sum(part.layers for part in parts) == len(own)
            assert kg == pytest.approx(sum(layer_mass(entry.facts) or 0.0 for entry in own))
            first = min((entry.on for entry in own if entry.on), default=None)
            assert await sums.first_layer(book, bin, member) == first
    stock = await book.latest_batch("stock")
    if stock:
        assert await sums.dosed_since(book, stock) == pytest.approx(doses(layers, stock))


def doses(layers: list[Entry], stock: Entry) -> float:
    return sum(entry.facts.starter_g or 0.0 for entry in layers if entry.id > stock.id)


@settings(max_examples=60, deadline=None)
@given(STEPS)
def test_the_sums_are_those_of_what_stands(steps: list[tuple[object, ...]]) -> None:
    async def check() -> None:
        db = await Database.open(":memory:")
        try:
            await assert_sums(await live(db, steps))
        finally:
            await db.close()

    asyncio.run(check())


@settings(max_examples=15, deadline=None)
@given(STEPS)
def test_a_book_from_before_there_were_sums_gets_them(steps: list[tuple[object, ...]]) -> None:
    async def check(path: Path) -> None:
        with closing(sqlite3.connect(path)) as book:
            book.executescript(SCHEMA + ABSENCES + SHARED_CALENDAR + COMMUNAL)
            book.execute(f"PRAGMA user_version = {VERSION}")
        db = await Database.open(path)
        await live(db, steps)
        await db.close()
        with closing(sqlite3.connect(path)) as book:
            book.executescript(SUMS)
        db = await Database.open(path)
        try:
            [room] = await rooms.every(db)
            await assert_sums(Book(db, room))
        finally:
            await db.close()

    with TemporaryDirectory() as folder:
        asyncio.run(check(Path(folder) / "book.db"))
