"""What is said when the bot comes into a room, and when it is asked back."""

from datetime import UTC, datetime, timedelta

import pytest

from bot.greeting import greet, greet_again
from handlers.asked.help import MOST_NAMED
from storage import rooms
from storage.database import Database
from tests.room import TalkingRoom

LATER = datetime(2026, 4, 2, 12, tzinfo=UTC)


async def greetings(db: Database) -> list[str]:
    rows = await db.rows("SELECT body FROM outbox WHERE kind = 'greeting' ORDER BY id")
    return [row["body"] for row in rows]


async def comes_back(db: Database, at: datetime) -> None:
    async with db.transaction():
        room = await rooms.find(db, "terminal")
        assert room
        await greet_again(db, room, at)


@pytest.mark.parametrize(
    ("bins", "told"),
    [
        (["shed"], "as it was: the shed bin."),
        (["shed", "green"], "as it was: the shed bin and the green bin."),
        ([f"bin {n}" for n in range(1, MOST_NAMED + 2)], f"as it was: {MOST_NAMED + 1} bins."),
    ],
)
async def test_asked_back_it_says_what_its_book_holds(
    db: Database, bins: list[str], told: str
) -> None:
    room = TalkingRoom(db)
    for name in bins:
        await room.says(f"opened {name}, 20 L")
    await comes_back(db, LATER)
    await comes_back(db, LATER + timedelta(days=30))
    said = await greetings(db)
    assert len(said) == 2
    assert told in said[0]


async def test_what_is_out_of_use_is_not_named(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened shed, 20 L")
    await room.says("opened green, 20 L")
    await room.says("the green bin is out of use")
    await comes_back(db, LATER)
    [said] = await greetings(db)
    assert "green" not in said


async def test_nothing_is_said_again_of_an_empty_book(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("hello")
    async with db.transaction():
        there = await rooms.find(db, "terminal")
        assert there
        await greet(db, there, LATER)
        await greet(db, there, LATER)
        await greet_again(db, there, LATER)
    assert len(await greetings(db)) == 1


async def test_a_room_that_the_bot_left_is_told_from_one_it_is_in(db: Database) -> None:
    assert not await rooms.was_left(db, "!yard:test")
    async with db.transaction():
        await rooms.join(db, "!yard:test", LATER, zone="UTC", units="metric")
    assert not await rooms.was_left(db, "!yard:test")
    await rooms.leave(db, "!yard:test", LATER)
    assert await rooms.was_left(db, "!yard:test")
