"""What waits is committed together: each event whole or not at all, and none at another's cost."""

import asyncio
from datetime import timedelta
from pathlib import Path

import pytest

from bot import hearing
from bot.turn import SORRY, work_off
from handlers.reading.context import Context
from handlers.reading.plans import Reading
from storage import inbox, rooms
from storage.database import Database
from storage.errors import StorageRefused
from storage.inbox import Arrival
from tests.bot.test_write_failures import TALK, assert_sound, dump, said
from tests.failing import BEGIN, OWN, ROOM, Disk, FailingConnection, conversation

END = BEGIN + timedelta(days=30)
RECORDS = ("entry", "bin", "member", "due", "question", "tally", "dosed")


async def taken_in(path: Path, *, at_a_time: int, disk: Disk | None = None) -> None:
    """The talk is taken into a book, some events at a time, and worked off."""
    events = conversation(TALK)
    db = await Database.open(path)
    try:
        if await rooms.find(db, ROOM) is None:
            async with db.transaction():
                await rooms.join(db, ROOM, BEGIN, zone="Europe/Lisbon", units="metric")
        for start in range(0, len(events), at_a_time):
            some = [Arrival(room=ROOM, raw=raw) for raw in events[start:][:at_a_time]]
            await inbox.take_in(db, some, None)
            if disk:
                desk = vars(db)["_desk"]
                desk._connection = FailingConnection(desk._connection, disk)
            await worked_off(db)
    finally:
        await db.close()


async def worked_off(db: Database) -> None:
    while await work_off(db, now=lambda: END, own=OWN):
        pass


def records(path: Path) -> list[str]:
    """What the book says of bins, word for word."""
    starts = tuple(f'INSERT INTO "{table}"' for table in RECORDS)
    return [line for line in dump(path) if line.startswith(starts)]


async def test_a_backlog_makes_the_same_book_as_one_by_one(tmp_path: Path) -> None:
    await taken_in(tmp_path / "one.db", at_a_time=1)
    await taken_in(tmp_path / "all.db", at_a_time=len(TALK))
    assert records(tmp_path / "all.db") == records(tmp_path / "one.db") != []


async def test_a_refusal_in_the_midst_of_a_backlog_undoes_all_of_it(tmp_path: Path) -> None:
    await taken_in(tmp_path / "whole.db", at_a_time=len(TALK))
    path, refused = tmp_path / "book.db", 0
    before: list[str] = []
    while True:
        disk = Disk(passes=refused)
        try:
            await taken_in(path, at_a_time=len(TALK), disk=disk)
        except StorageRefused:
            before = before or dump(path)
            if disk.commits:
                break
            assert dump(path) == before
            refused += 1
    assert refused > 30
    assert records(path) == records(tmp_path / "whole.db")
    assert_sound(path)


async def test_an_event_that_fails_takes_no_neighbour_along(
    db: Database, monkeypatch: pytest.MonkeyPatch
) -> None:
    def reads(body: str, of: Context) -> Reading:
        if body == "2":
            raise ZeroDivisionError
        return Reading(body, of)

    monkeypatch.setattr(hearing, "Reading", reads)
    words = ["added 1 kg scraps to the shed bin", "2", "added 3 kg scraps to the shed bin"]
    talk = [said(body) for body in words]
    async with db.transaction():
        await rooms.join(db, ROOM, BEGIN, zone="Europe/Lisbon", units="metric")
    await inbox.take_in(db, [Arrival(room=ROOM, raw=raw) for raw in conversation(talk)], None)
    await worked_off(db)
    states = [tuple(row) for row in await db.rows("SELECT event, state FROM inbox ORDER BY id")]
    assert states == [("$e0", "done"), ("$e1", "failed"), ("$e2", "done")]
    assert [row[0] for row in await db.rows("SELECT mass_kg FROM entry")] == [1.0, 3.0]
    [sorry] = await db.rows("SELECT to_event FROM outbox WHERE body = ?", (SORRY,))
    assert sorry["to_event"] == "$e1"


async def test_work_on_the_book_waits_for_nothing_else(db: Database) -> None:
    async def dawdles(db: Database) -> None:
        await rooms.join(db, ROOM, BEGIN, zone="UTC", units="metric")
        await asyncio.sleep(0)

    with pytest.raises(RuntimeError):
        await db.at_once(dawdles)
    assert await rooms.every(db) == []


async def room_named(db: Database, address: str) -> None:
    await rooms.join(db, address, BEGIN, zone="UTC", units="metric")


async def breaks(db: Database) -> None:
    async with db.transaction():
        await room_named(db, "!second:test")
        raise ZeroDivisionError


async def test_a_part_that_breaks_is_undone_by_itself(db: Database) -> None:
    async def whole(db: Database) -> None:
        await room_named(db, "!first:test")
        with pytest.raises(ZeroDivisionError):
            await db.at_once(breaks)

    await db.at_once(whole)
    assert [room.address for room in await rooms.every(db)] == ["!first:test"]


async def test_a_part_is_not_kept_without_the_whole(db: Database) -> None:
    async def whole(db: Database) -> None:
        async with db.transaction():
            await room_named(db, "!first:test")
        await breaks(db)

    with pytest.raises(ZeroDivisionError):
        await db.at_once(whole)
    assert await rooms.every(db) == []
