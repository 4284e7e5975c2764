"""What is said of "it" is of the bin that the room's talk is on; a leak and a room are no deeds."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Two bins with scraps; the blue one is sealed."""
    room = TalkingRoom(db)
    for who in ("bram", "zoe"):
        await room.says("hello", who=who)
    await room.says("two bins: blue and shed, both 20 L", who="ines")
    await room.says("2 kg of peelings in blue", who="ines")
    await room.says("1 kg of bread in the shed bin", who="bram")
    await room.says("sealed blue", who="ines")
    return room


async def deeds(room: TalkingRoom) -> list[str]:
    return [entry.act for entry in await room.standing() if entry.act in ("drain", "seal")]


@pytest.mark.parametrize("asked", ["when's it ready?", "when will that be ready?"])
async def test_it_is_the_bin_that_was_just_spoken_of(room: TalkingRoom, asked: str) -> None:
    told = words(await room.says(asked, who="zoe"))
    assert "bury the blue bin" in told
    assert "shed" not in told
    await room.says("the shed bin is getting heavy", who="bram")
    told = words(await room.says(asked, who="zoe"))
    assert "the shed bin" in told.lower()
    assert "blue" not in told


@pytest.mark.parametrize(
    "asked",
    ["when can I bury blue and how deep a hole do I dig?", "how big a hole for blue, and when?"],
)
async def test_when_and_how_big_a_hole(room: TalkingRoom, asked: str) -> None:
    told = words(await room.says(asked, who="zoe"))
    assert "bury the blue bin" in told
    assert "Dig one hole" in told


@pytest.mark.parametrize(
    "said",
    [
        "the shed bin is dripping at the tap, half a cup on the floor",
        "puddle under the shed bin, 300 ml I'd say",
        "the shed bin drained itself over the rug, half a litre",
    ],
)
async def test_a_leak_is_no_draining(room: TalkingRoom, said: str) -> None:
    await room.says(said, who="bram")
    assert await deeds(room) == ["seal"]


async def test_what_was_drawn_off_beside_a_leak_is_one(room: TalkingRoom) -> None:
    await room.says("the shed bin leaks, so I drained 300 ml into a jug", who="bram")
    assert await deeds(room) == ["seal", "drain"]


@pytest.mark.parametrize(
    "said", ["closed the shed. nothing else in there now", "the shed's shut, no more scraps please"]
)
async def test_a_place_that_is_shut_to_scraps_is_asked_about(room: TalkingRoom, said: str) -> None:
    assert "Shall I write down" in words(await room.says(said, who="bram"))
    assert await deeds(room) == ["seal"]
    await room.says("yes", who="bram")
    assert await deeds(room) == ["seal", "seal"]


async def test_a_shed_that_is_shut_for_the_night(room: TalkingRoom) -> None:
    assert await room.says("shut the shed for the night", who="bram") == []
