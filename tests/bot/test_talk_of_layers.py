"""What went in, told in passing while the room talks of its bins."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("opened the yard bin, 20 L, shared", who="ines")
    return room


@pytest.mark.parametrize(
    ("said", "kilos"),
    [
        ("3kg from the café just went in: bread, greens, a few sausages", 3.0),
        ("1.5 kg of leeks and the like went in", 1.5),
    ],
)
async def test_what_went_in_with_its_foods_is_no_question(
    room: TalkingRoom, said: str, kilos: float
) -> None:
    await room.says(said, who="bram")
    assert await room.kilos() == [kilos]


async def test_what_went_into_the_oven_is_no_layer(room: TalkingRoom) -> None:
    await room.says("2 kilos went into the oven: rice, greens and some chicken", who="bram")
    assert await room.kilos() == []


@pytest.mark.parametrize(
    "said", ["I weighed the yard bin, 13 kilos with the bucket", "it weighs 9 kilos bucket and all"]
)
async def test_what_a_bin_weighs_is_no_layer(room: TalkingRoom, said: str) -> None:
    await room.says("600 g of peelings in the yard bin", who="bram")
    await room.says("how full is the yard bin?", who="bram")
    await room.says(said, who="bram")
    assert await room.kilos() == [0.6]
