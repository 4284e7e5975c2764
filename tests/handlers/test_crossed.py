"""What was told of two bins, each of the other one."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines and Bram, and two bins."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    for bin, size in (("green", 20), ("red", 12)):
        await room.says(f"opened the {bin} bin, {size} L, last Friday")
    return room


async def told(room: TalkingRoom) -> list[tuple[str, str, float | None]]:
    """Act, bin and kilos or litres of what stands, the openings left out."""
    return [
        (e.act, e.bin.name, e.facts.mass_kg or e.facts.volume_l)
        for e in await room.standing()
        if e.bin and e.act != "open"
    ]


BOTH = "1 kg bread in green and 600 g peelings in red"
CROSSED = [("layer", "red", 1.0), ("layer", "green", 0.6)]


@pytest.mark.parametrize(
    "said",
    [
        "I mixed up green and red today",
        "sorry, other way round",
        "no, the other way around",
        "vice versa, sorry",
        "I mixed them up, the bread went in red and the peelings in green",
        "oops I got green and red mixed up",
        "muddled up the red and the green bin, sorry",
        "I put them in the wrong way round",
        "green and red are the wrong way round",
        "swap green and red, I got them wrong",
        "I mixed up the two bins, sorry",
    ],
)
async def test_each_record_goes_to_the_other_bin(room: TalkingRoom, said: str) -> None:
    await room.says(BOTH, who="bram")
    [answer] = await room.says(said, who="bram")
    assert answer.body.startswith("Corrected: 1 kg in the red bin and 600 g in the green bin.")
    assert await told(room) == CROSSED


@pytest.mark.parametrize(
    "said",
    [
        "I mixed them up with the fork",
        "is it the other way round?",
        "it's the other way round with the lids",
        "I swapped green and red round so red is by the door",
        "I mixed up the peel and the bread",
        "I always confuse Bram and Zoe",
        "mixed up green and red with the pitchfork",
    ],
)
async def test_other_things_are_crossed_too(room: TalkingRoom, said: str) -> None:
    await room.says(BOTH, who="bram")
    before = await told(room)
    await room.says(said, who="bram")
    assert await told(room) == before


async def test_all_that_the_sender_told_of_the_day_but_no_others(room: TalkingRoom) -> None:
    await room.says("600 g peelings in red", who="ines")
    await room.says("1 kg bread in green", who="bram")
    await room.says("drained 100 ml from red", who="bram")
    await room.says("I mixed up green and red today", who="bram")
    assert sorted(await told(room)) == [
        ("drain", "green", 0.1),
        ("layer", "red", 0.6),
        ("layer", "red", 1.0),
    ]


async def test_undone_it_stands_as_it_was_told(room: TalkingRoom) -> None:
    await room.says(BOTH, who="bram")
    before = await told(room)
    await room.says("I mixed up green and red", who="bram")
    await room.says("undo", who="bram")
    assert await told(room) == before


async def test_one_record_in_one_bin_has_no_other_way_round(room: TalkingRoom) -> None:
    await room.says("1 kg bread in green", who="bram")
    assert await room.says("other way round", who="bram") == []
    assert await told(room) == [("layer", "green", 1.0)]
