"""A bin is told to be fuller than its layers make it."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """A green bin of 20 L with a kilo in it, and an empty red one whose size nobody told."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("opened the green bin, 20 L")
    await room.says("opened the red bin")
    await room.says("put 1 kg of peel in the green bin")
    return room


@pytest.mark.parametrize(
    ("said", "rest_kg"),
    [
        ("green is half full", 6.6),
        ("the green bin's about half full already", 6.6),
        ("green is three quarters full now", 10.5),
        ("green is 60% full", 8.2),
        ("there's about 8 litres in green", 5.1),
        ("there is 6 kg of scraps in the green bin now", 5.0),
        ("the green bin has about 6 kg in it", 5.0),
    ],
)
async def test_the_rest_is_written_down_once_that_is_said(
    room: TalkingRoom, said: str, rest_kg: float
) -> None:
    asked = words(await room.says(said, who="bram"))
    assert "By the book the green bin is about 5 % full." in asked
    assert await room.kilos() == [1.0]
    await room.says("yes", who="bram")
    assert await room.kilos() == [1.0, pytest.approx(rest_kg, rel=0.1)]


@pytest.mark.parametrize(
    "said",
    [
        "green is a quarter full",  # a glance may be wrong by as much
        "red is half full",  # of what size?
        "if green is half full we seal it",
        "green is half full, Zoe said, but it is hers to say",
        "there's 200 ml in green",
        "there's 5 minutes in green",
        "the glass is half full",
        "my green bin bag is half full",
    ],
)
async def test_nothing_is_asked(room: TalkingRoom, said: str) -> None:
    assert "By the book" not in words(await room.says(said, who="bram"))
    assert await room.kilos() == [1.0]


async def test_what_ferments_is_as_full_as_it_is(room: TalkingRoom) -> None:
    await room.says("sealed the green bin")
    assert "By the book" not in words(await room.says("green is half full"))
