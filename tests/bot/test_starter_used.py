"""How much starter really went on a layer, told right behind it."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


async def begun(db: Database) -> TalkingRoom:
    """A room in which starter was counted and a layer just told."""
    room = TalkingRoom(db)
    await room.says("opened the green bin, 20 L, shared", who="olga")
    await room.says("we have 3 kg of bran left", who="olga")
    await room.says("put 2 kg of peelings in green")
    return room


async def used(room: TalkingRoom) -> float | None:
    """Grams of starter on the one layer that stands, and nothing else is in the book."""
    assert [e.act for e in await room.standing()].count("stock") == 1
    [layer] = [entry for entry in await room.standing() if entry.act == "layer"]
    assert layer.facts.mass_kg == 2.0
    return layer.facts.starter_g


@pytest.mark.parametrize(
    ("told", "grams"),
    [
        ("used about 40 g of bran on that", 40),
        ("used 25 g of starter", 25),
        ("sprinkled 30 g bran on top of it", 30),
        ("and 45 g of bran went on it", 45),
        ("used 35 g on that", 35),
    ],
)
async def test_it_counts_in_place_of_the_dose(db: Database, told: str, grams: float) -> None:
    room = await begun(db)
    advised = await used(room)
    assert advised != grams
    answer = await room.says(told)
    assert [message.kind for message in answer] == ["reaction"]
    assert await used(room) == pytest.approx(grams)
    await room.says("undo")
    assert await used(room) == advised


async def test_what_is_left_is_less_that_much(db: Database) -> None:
    room = await begun(db)
    await room.says("used 500 g of bran on that")
    assert "2.99 kg" in words(await room.says("how much bran is left?"))  # a slip is no count
    await room.says("used 100 g of bran on that")
    assert "About 2.9 kg" in words(await room.says("how much bran is left?"))


async def test_much_less_than_the_dose_is_said(db: Database) -> None:
    room = await begun(db)
    assert "the dose on it is" in words(await room.says("used 2 g of bran on it"))
    assert await used(room) == pytest.approx(2)


@pytest.mark.parametrize(
    "told",
    [
        "used 40 g of butter on that",
        "I'll use 40 g of bran on that",
        "you used 40 g of bran on that?",
        "didn't use 40 g of bran on it",
    ],
)
async def test_other_things_are_none(db: Database, told: str) -> None:
    room = await begun(db)
    advised = await used(room)
    await room.says(told)
    assert await used(room) == advised


async def test_behind_no_layer_it_is_silent(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the green bin, 20 L, shared", who="olga")
    assert await room.says("used a cup of bran") == []
