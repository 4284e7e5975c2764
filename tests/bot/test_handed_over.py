"""A bin handed over without its name, while it is on its way or was just told of."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words

ASKED = "Bram, will you take the green bin?"


async def begun(db: Database) -> TalkingRoom:
    """Ines keeps the green bin; Bram and Rut have spoken."""
    room = TalkingRoom(db)
    await room.says("opened the green bin, 20 L, shared")
    for who in ("bram", "rut"):
        await room.says("hello", who=who)
    return room


@pytest.mark.parametrize(
    "told",
    ["here you go bram", "it's all yours now @bram", "bram's got it now", "gave it to bram",
     "right, over to you Bram", "Bram has it at home now"],
)  # fmt: skip
async def test_what_is_on_its_way_is_given(db: Database, told: str) -> None:
    room = await begun(db)
    await room.says("can someone take the green bin?")
    assert ASKED in words(await room.says(told))
    await room.says("I'll take it", who="bram")
    assert await room.keeper("green") == "bram"


@pytest.mark.parametrize("told", ["it's all yours now, Bram", "handed it over to bram"])
async def test_what_was_just_told_of_is_given(db: Database, told: str) -> None:
    room = await begun(db)
    await room.says("added 2 kg of peelings to the green bin")
    assert ASKED in words(await room.says(told))


@pytest.mark.parametrize(
    "lines",
    [
        ["here you go bram"],
        ["added 2 kg of peelings to the green bin", "here you go bram"],
        ["added 2 kg of peelings to the green bin", "bram's got it now"],
        ["can someone take the green bin?", "did you see my ladder?", "bram's got a cold"],
        ["can someone take the green bin?", "here you go ines"],
    ],
)
async def test_other_things_are_given_too(db: Database, lines: list[str]) -> None:
    room = await begun(db)
    *before, last = lines
    for line in before:
        await room.says(line)
    assert await room.says(last) == []


async def test_what_another_keeps_is_not_given_away(db: Database) -> None:
    room = await begun(db)
    await room.says("added 2 kg of peelings to the green bin", who="rut")
    assert await room.says("it's all yours now Bram", who="rut") == []
