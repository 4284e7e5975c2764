"""The book's file: all or nothing, never overwritten, refused when it cannot be trusted."""

import asyncio
import sqlite3
from pathlib import Path

import pytest

from storage import changes, inbox, outbox, rooms, session, traces
from storage.book import Book
from storage.database import Database
from storage.errors import BookError
from storage.inbox import Arrival
from storage.rows import Facts, Message, NewEntry
from storage.schema import VERSION
from tests.group import BEGIN


def new_entry(**said: object) -> NewEntry:
    given = {
        "act": "layer",
        "event": "$a",
        "cause": "$a",
        "said_at": BEGIN,
        "written_at": BEGIN,
        "on": BEGIN.date(),
    }
    return NewEntry(**{**given, **said})  # type: ignore[arg-type]  # a table of fields


async def test_a_new_book_has_the_present_schema(db: Database) -> None:
    row = await db.row("PRAGMA user_version")
    assert row is not None
    assert row[0] == VERSION


async def test_a_book_survives_a_power_cut(db: Database) -> None:
    # https://www.sqlite.org/pragma.html#pragma_synchronous: FULL is 2
    for pragma, wanted in (("journal_mode", "wal"), ("synchronous", 2), ("foreign_keys", 1)):
        row = await db.row(f"PRAGMA {pragma}")
        assert row is not None
        assert row[0] == wanted


async def test_what_fails_half_way_leaves_nothing(book: Book) -> None:
    async def fails_half_way() -> None:
        async with book.db.transaction():
            await changes.write_down(book, new_entry(bin="shed"))
            raise RuntimeError("half way")

    with pytest.raises(RuntimeError):
        await fails_half_way()
    assert await book.entries() == []
    assert await book.bins() == []


async def test_a_cancelled_transaction_leaves_nothing(book: Book) -> None:
    begun = asyncio.Event()

    async def never_ends() -> None:
        async with book.db.transaction():
            await changes.write_down(book, new_entry(bin="shed"))
            begun.set()
            await asyncio.Event().wait()

    task = asyncio.create_task(never_ends())
    await begun.wait()
    task.cancel()
    with pytest.raises(asyncio.CancelledError):
        await task
    async with book.db.transaction():
        await changes.write_down(book, new_entry(event="$b"))
    assert [entry.event for entry in await book.entries()] == ["$b"]


async def test_an_entry_comes_back_as_it_was_written(book: Book) -> None:
    facts = Facts(
        mass_kg=2.0,
        materials={"meat": 0.7, "mixed": 0.3},
        rich=0.7,
        starter_g=13.0,
        signs=("sour",),
        place="under the pear",
        shared=True,
        celsius=21.5,
        ph=3.9,
    )
    async with book.db.transaction():
        await changes.write_down(book, new_entry(bin="shed", member="ines", facts=facts))
    [entry] = await book.entries()
    assert entry.facts == facts
    assert entry.bin
    assert (entry.bin.name, entry.member, entry.on) == ("shed", "ines", BEGIN.date())


async def test_a_struck_entry_stays_readable(book: Book) -> None:
    async with book.db.transaction():
        await changes.write_down(book, new_entry(bin="shed"))
        await changes.strike_out(book, await book.entries(), "$x", BEGIN)
    assert [entry.struck for entry in await book.entries()] == [True]
    assert await book.of_event("$a") == []
    assert [entry.event for entry in await book.touched_by("$x")] == ["$a"]


async def test_rooms_do_not_see_each_other(book: Book) -> None:
    async with book.db.transaction():
        other = Book(
            book.db, await rooms.join(book.db, "!other:test", BEGIN, zone="UTC", units="us")
        )
        await changes.write_down(book, new_entry(bin="shed", member="ines"))
        await changes.write_down(other, new_entry(bin="Shed", member="bram"))
    assert [entry.member for entry in await book.entries()] == ["ines"]
    assert [bin.name for bin in await other.bins()] == ["Shed"]
    assert [member.name for member in await other.members()] == ["bram"]


async def test_an_event_is_taken_in_once_with_its_token(db: Database) -> None:
    raw = {"event_id": "$1", "origin_server_ts": 5, "type": "m.room.message", "content": {}}
    arrival = Arrival(room="!r", raw=raw)
    await inbox.take_in(db, [arrival], "t1")
    await inbox.take_in(db, [arrival, arrival], "t2")
    assert len(await inbox.waiting(db)) == 1
    assert await session.sync_token(db) == "t2"


async def test_words_are_forgotten_once_worked_through(db: Database) -> None:
    raw = {"event_id": "$1", "origin_server_ts": 5, "content": {"body": "secret words"}}
    await inbox.take_in(db, [Arrival(room="!r", raw=raw)], None)
    [item] = await inbox.waiting(db)
    trace = traces.Trace(event="$1", at=item.at, sender="@a:b", kind="said", about=None, mark=None)
    async with db.transaction():
        await inbox.settle(db, item, "done", trace)
    assert await inbox.waiting(db) == []
    assert await db.row("SELECT 1 FROM inbox WHERE raw IS NOT NULL") is None
    assert await traces.trace(db, "!r", "$1") == trace


async def test_an_answer_is_sent_once_and_an_edit_knows_what_it_edits(book: Book) -> None:
    db, room = book.db, book.room.id
    async with db.transaction():
        first = Message(tx_id="re-$1", kind="reply", body="one", to_event="$1")
        await outbox.put(db, room, first, BEGIN)
        await outbox.put(db, room, first, BEGIN)
    [row] = await outbox.waiting(db)
    await outbox.sent(db, row.id, "$sent", BEGIN)
    for change in ("two", "three"):
        async with db.transaction():
            found = await outbox.answer_to(db, room, "$1")
            assert found
            again = Message(
                tx_id=change, kind="reply", body=change, to_event="$1", rewrites=found[0]
            )
            await outbox.put(db, room, again, BEGIN)
        [row] = await outbox.waiting(db)
        assert (row.message.body, row.rewrites_event) == (change, "$sent")
        await outbox.sent(db, row.id, f"${change}", BEGIN)


async def test_what_the_bot_says_of_itself_is_said_to_nobody(book: Book) -> None:
    """A "why?" behind it is of the answer before."""
    db, room = book.db, book.room.id
    answer = Message(tx_id="re-$1", kind="reply", body="2 spoons", to_event="$1", why="2 kg")
    notice = Message(tx_id="pins", kind="notice", body="I may not pin messages here.")
    async with db.transaction():
        await outbox.put(db, room, answer, BEGIN)
        await outbox.put(db, room, notice, BEGIN)
    last, to_people = await outbox.latest(db, room), await outbox.latest_to_people(db, room)
    assert last
    assert to_people
    assert (last[0].body, to_people[0].why) == (notice.body, "2 kg")


async def test_what_is_changed_before_it_is_sent_is_said_once(book: Book) -> None:
    db, room = book.db, book.room.id
    said = []
    for change in ("one", "two", "three"):
        async with db.transaction():
            found = await outbox.answer_to(db, room, "$1")
            again = Message(
                tx_id=change,
                kind="reply",
                body=change,
                to_event="$1",
                rewrites=found[0] if found else None,
            )
            await outbox.put(db, room, again, BEGIN)
        if change == "one":
            continue  # the next one is made before it is sent
        [row] = await outbox.waiting(db)
        said.append((row.message.body, row.rewrites_event))
        await outbox.sent(db, row.id, f"${change}", BEGIN)
    assert said == [("two", None), ("three", "$two")]


async def test_a_book_of_a_newer_program_is_refused_untouched(tmp_path: Path) -> None:
    path = tmp_path / "newer.db"
    with sqlite3.connect(path) as connection:
        connection.execute("PRAGMA user_version = 999")
    connection.close()
    with pytest.raises(BookError, match="newer"):
        await Database.open(path)


async def test_a_file_that_is_no_book_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "letter.db"
    path.write_text("Dear neighbours, " * 100)
    with pytest.raises(BookError, match="cannot be used as a book"):
        await Database.open(path)
    assert path.read_text().startswith("Dear neighbours")


async def test_namesakes_are_told_apart(book: Book) -> None:
    async with book.db.transaction():
        await changes.meet(book, "@ana:a", "Ana")
        await changes.meet(book, "@ana:b", "Ana")
    assert [member.name for member in await book.members()] == ["Ana", "Ana (@ana:b)"]


async def test_one_only_spoken_of_becomes_the_member_who_comes(book: Book) -> None:
    async with book.db.transaction():
        await changes.write_down(book, new_entry(member="bram"))
        await changes.meet(book, "@bram:a", "Bram")
    [member] = await book.members()
    assert (member.name, member.user) == ("Bram", "@bram:a")
