"""A record that a neighbour put right stays that of whoever told it."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Bram has put two lots into the shed bin, and Mei put one of them right."""
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 30 L", who="ines")
    await room.says("hello", who="mei")
    await room.says("added 1 kg of rice to the shed bin", who="bram", event="$rice")
    return room


@pytest.mark.parametrize(
    ("said", "left"),
    [
        ("scratch that", []),
        ("scratch the rice", []),
        ("no, 1.2 kg", [1.2]),
        ("it was 1.2 kg", [1.2]),
    ],
)
async def test_its_teller_has_the_last_word(
    room: TalkingRoom, said: str, left: list[float]
) -> None:
    await room.says("no, 3 kg", who="mei", replies_to="$rice")
    assert await room.kilos() == [3.0]
    await room.says(said, who="bram")
    assert await room.kilos() == left


async def test_a_later_record_of_the_teller_is_meant_before_it(room: TalkingRoom) -> None:
    await room.says("added 2 kg of bread to the shed bin", who="bram")
    await room.says("no, 3 kg", who="mei", replies_to="$rice")
    await room.says("scratch that", who="bram")
    assert await room.kilos() == [3.0]


async def test_what_its_teller_struck_out_since_stays_so(room: TalkingRoom) -> None:
    await room.says("no, 3 kg", who="mei", replies_to="$rice")
    await room.says("scratch that", who="bram")
    [told] = await room.says("scratch that", who="bram")
    assert told.body.startswith("Struck out already: 3 kg")
    await room.says("put it back", who="bram")
    assert await room.kilos() == [3.0]


@pytest.mark.parametrize(("said", "left"), [("no, 4 kg", [4.0]), ("scratch that", [])])
async def test_the_answer_to_a_correction_can_be_replied_to(
    room: TalkingRoom, said: str, left: list[float]
) -> None:
    await room.says("no, 3 kg", who="bram", event="$right")
    await room.says(said, who="mei", replies_to="re-$right")
    assert await room.kilos() == left
