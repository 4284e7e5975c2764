"""What a few words mean right behind talk of starter, and nowhere else."""

import pytest

from storage.database import Database
from storage.rows import Entry
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    room = TalkingRoom(db)
    for who in ("bram", "zoe"):
        await room.says("hello", who=who)
    await room.says("opened the yard bin, 20 L, shared", who="ines")
    await room.says("2 kg of fish heads in the yard bin", who="ines")
    return room


async def of_bran(room: TalkingRoom) -> list[Entry]:
    return [entry for entry in await room.standing() if entry.act in ("stock", "batch")]


@pytest.mark.parametrize(
    ("said", "litres"),
    [
        ("there's only about 3 cups left", 0.75),
        ("we've got like 2 litres left in the tub", 2.0),
    ],
)
async def test_what_is_left_is_starter(room: TalkingRoom, said: str, litres: float) -> None:
    await room.says("how much bran is that?", who="ines")
    await room.says(said, who="bram")
    [stock] = await of_bran(room)
    assert (stock.act, stock.facts.volume_l) == ("stock", litres)


@pytest.mark.parametrize(
    ("asked", "much"),
    [
        ("mixing more on Sunday, what's the recipe", "6 kg"),
        ("I can make some, got a recipe? I need the recipe", "6 kg"),
    ],
)
async def test_the_recipe_is_that_of_starter(room: TalkingRoom, asked: str, much: str) -> None:
    await room.says("how much starter is left?", who="ines")
    assert "molasses" in words(await room.says(asked, who="bram"))
    assert f"For {much} of bran" in words(await room.says(f"for {much} of bran", who="bram"))
    await room.says(f"mixed it, {much}", who="bram")
    [batch] = await of_bran(room)
    assert (batch.act, batch.facts.mass_kg) == ("batch", 6.0)


@pytest.mark.parametrize(
    "said",
    [
        "only 2 cups left",
        "whats the recipe",
        "made it. 3 kg",
        "what's the recipe for that cake zoe",
    ],
)
async def test_elsewhere_they_are_of_other_things(room: TalkingRoom, said: str) -> None:
    await room.says("zoe your cake was lovely", who="bram")
    await room.says("how is your mum", who="ines")
    assert await room.says(said, who="bram") == []
    assert await of_bran(room) == []


async def test_2_cups_of_soup_left_are_no_starter(room: TalkingRoom) -> None:
    await room.says("how much bran is that?", who="ines")
    assert await room.says("got 2 cups of soup left if anyone wants it", who="bram") == []
    assert await of_bran(room) == []
