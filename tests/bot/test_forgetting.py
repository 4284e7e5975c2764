"""Who asks to be forgotten is; what went into a shared bin still counts."""

import asyncio
import sqlite3
from contextlib import closing
from datetime import timedelta
from pathlib import Path

import pytest

from bot.cli import main
from storage import backup, forgetting, rooms
from storage.book import Book
from storage.database import Database
from tests.group import BEGIN
from tests.room import TalkingRoom


async def talked(path: Path) -> None:
    """Two neighbours fill one bin; one of them is named in answers, dues and links."""
    db = await Database.open(path)
    room = TalkingRoom(db)
    await room.says("added 2 kg scraps to the shed bin", who="nerissa")
    await room.says("added 1 kg scraps to the shed bin", who="bram")
    await room.says("nerissa takes the shed bin on Friday", who="bram")
    await room.says("added 3 kg scraps", who="nerissa")
    await room.says("my calendar link please", who="nerissa")
    await room.says("how much has nerissa added?", who="bram")
    await room.waits(days=3)
    await db.close()


async def test_a_person_is_forgotten_and_the_totals_stay(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "book.db"
    await talked(path)
    assert b"nerissa" in path.read_bytes()
    assert await in_thread(["forget", "--book", str(path), "Nerissa"]) == 0
    assert "stay in the totals, without the name" in capsys.readouterr().out
    assert b"nerissa" not in path.read_bytes().lower()
    db = await Database.open(path)
    room = TalkingRoom(db)
    masses = [e.facts.mass_kg for e in await room.standing() if e.act == "layer"]
    assert sorted(mass or 0 for mass in masses) == [1.0, 2.0, 3.0]
    await db.close()
    assert backup.faults(path, thorough=True) == []


async def test_a_forgotten_keeper_keeps_nothing_and_takes_no_turns(tmp_path: Path) -> None:
    path = tmp_path / "book.db"
    await talked(path)
    db = await Database.open(path)
    rota = "rota for the shed bin: nerissa, bram, weekly"
    await TalkingRoom(db).says(rota, who="bram", event="$rota")
    await db.close()
    await in_thread(["forget", "--book", str(path), "nerissa"])
    db = await Database.open(path)
    room = TalkingRoom(db)
    room.now += timedelta(days=4)
    told = await room.says("who has the shed bin?", who="bram", event="$who")
    await db.close()
    keeper, turns = told[0].body.split("\n")
    assert keeper == "The shed bin: nobody."
    assert turns.startswith("Turn to keep the shed bin: bram today")
    assert "former" not in turns


async def in_thread(argv: list[str]) -> int:
    """A command runs a loop of its own."""
    return await asyncio.to_thread(main, argv)


async def test_one_whom_the_book_does_not_know(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    await talked(tmp_path / "book.db")
    assert await in_thread(["forget", "--book", str(tmp_path / "book.db"), "zoe"]) == 2
    assert "this book knows no zoe; it knows: nerissa, bram" in capsys.readouterr().err


async def test_the_words_of_a_message_leave_the_disk(tmp_path: Path) -> None:
    path = tmp_path / "book.db"
    db = await Database.open(path)
    room = TalkingRoom(db)
    await room.says(
        "added 2 kg scraps to the shed bin. My secret is PERSIMMON " + "so there " * 900
    )
    await db.close()
    assert b"PERSIMMON" not in path.read_bytes()


async def test_a_room_left_long_ago_is_forgotten_whole(book: Book, tmp_path: Path) -> None:
    room = TalkingRoom(book.db)
    await room.says("added 2 kg scraps to the shed bin", who="nerissa")
    await rooms.leave(book.db, "terminal", BEGIN)
    assert await forgetting.forget_left_rooms(book.db, BEGIN) == 0
    assert await forgetting.forget_left_rooms(book.db, BEGIN + timedelta(days=1)) == 1
    assert [room.address for room in await rooms.every(book.db)] == ["!yard:test"]
    with closing(sqlite3.connect(tmp_path / "book.db")) as opened:
        dump = "\n".join(opened.iterdump())
    assert "nerissa" not in dump
    assert "shed" not in dump


async def test_every_table_of_a_room_is_cleared(db: Database) -> None:
    cleared = {delete.split()[2] for delete in forgetting.OF_A_ROOM}
    tables = await db.rows("SELECT name FROM sqlite_master WHERE type = 'table'")
    for table in tables:
        keys = await db.rows("SELECT * FROM pragma_foreign_key_list(?)", (table["name"],))
        if any(key["table"] == "room" for key in keys):
            assert table["name"] in cleared
