"""Bins that are called by a number, or by what or who has them."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.mark.parametrize(
    ("said", "names"),
    [
        ("opened the room 12 pail, 12 L", {"room 12"}),
        ("opened plot 7, 12 L", {"plot 7"}),
        ("room 12 has its own pail, 12 L", {"room 12"}),
        ("opened the red bin, 20 L, and room 12 has its own pail, 12 L", {"red", "room 12"}),
        ("Bram has his own bin, 12 L", {"Bram's"}),
        ("I have my own bin now, 12 L", {"bin 1"}),
    ],
)
async def test_a_bin_is_begun_under_its_name(db: Database, said: str, names: set[str]) -> None:
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says(said)
    assert {e.bin.name for e in await room.standing() if e.bin} == names


async def test_what_is_done_to_room_12_is_not_done_to_another(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the canteen pail, 20 L")
    await room.says("opened the room 12 pail, 12 L")
    await room.says("2 kg each in canteen and room 12")
    await room.says("drained room 12, a cup")
    await room.says("sealed the canteen pail and room 12")
    done = [(e.act, e.bin.name) for e in await room.standing() if e.bin and e.act != "open"]
    assert sorted(done) == [
        ("drain", "room 12"),
        ("layer", "canteen"),
        ("layer", "room 12"),
        ("seal", "canteen"),
        ("seal", "room 12"),
    ]


@pytest.mark.parametrize(
    ("said", "sealed"),
    [
        ("sealed bins 1 and 2", ["bin 1", "bin 2"]),
        ("sealed 1 and 2", ["bin 1", "bin 2"]),
        ("sealed one and two", ["bin 1", "bin 2"]),
        ("sealed one", ["bin 1"]),
        ("sealed two today", ["bin 2"]),
    ],
)
async def test_a_number_alone_behind_a_deed(db: Database, said: str, sealed: list[str]) -> None:
    room = TalkingRoom(db)
    await room.says("opened bin one, 20 L, and bin two, 12 L")
    await room.says("opened the laneway bin, 20 L")
    await room.says("1 kg in one, 2 kg in two")
    await room.says("1 kg in the laneway bin")
    await room.says(said)
    assert [e.bin.name for e in await room.standing() if e.bin and e.act == "seal"] == sealed
