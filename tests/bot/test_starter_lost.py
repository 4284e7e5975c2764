"""Starter that is spilled, eaten or spoiled, told in passing and put right; and what a batch takes,
asked bit by bit.
"""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines has 2 kg of starter."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("opened the yard bin, 20 L, shared", who="ines")
    await room.says("we have 2 kg of bran left", who="ines")
    return room


async def left(room: TalkingRoom) -> float | None:
    """The kilos of the last count that stands."""
    counts = [entry.facts.mass_kg for entry in await room.standing() if entry.act == "stock"]
    return counts[-1]


@pytest.mark.parametrize(
    ("said", "kg"),
    [
        ("spilled half a kilo of it on the floor", 1.5),
        ("spilled half a kilo of bran on the kitchen floor", 1.5),
        ("half a kilo of bran went on the floor", 1.5),
        ("the mice ate 300 g of the bran", 1.7),
        ("mice got at the bran, lost about 300 g", 1.7),
        ("a kilo of the bran got wet and had to be thrown", 1.0),
        ("threw out 1 kg of bran, it had gone mouldy", 1.0),
        ("200 g of starter went mouldy", 1.8),
    ],
)
async def test_what_is_lost_goes_from_the_count(room: TalkingRoom, said: str, kg: float) -> None:
    await room.says(said, who="ines")
    assert await left(room) == pytest.approx(kg)


@pytest.mark.parametrize(
    "said",
    [
        "there is 1 kg of bran on the table for whoever wants it",
        "will the mice eat 300 g of bran?",
        "the dog had 1 kg of bran muffins",
        "the hens ate 300 g of bran flakes",
        "put 200 g of bran on the layer",
        "if the mice eat 300 g of bran again I give up",
    ],
)
async def test_what_is_not_lost_stays(room: TalkingRoom, said: str) -> None:
    await room.says(said, who="ines")
    assert await left(room) == pytest.approx(2.0)


@pytest.mark.parametrize(
    ("said", "right", "kg"),
    [
        ("spilled half a kilo of it on the floor", "no, more like 200 g", 1.8),
        ("gave Bram 500 g of bran", "no, 600 g", 1.4),
        ("bought another kilo of bran", "no, 2 kilos", 4.0),
        ("gave Bram 100 g of bran", "no, 1.5 kg left", 1.5),
    ],
)
async def test_put_right_it_is_of_what_came_or_went(
    room: TalkingRoom, said: str, right: str, kg: float
) -> None:
    await room.says(said, who="ines")
    await room.says(right, who="ines")
    assert await left(room) == pytest.approx(kg)


@pytest.mark.parametrize("behind", ["how much molasses does that need?", "how much EM for that?"])
async def test_a_recipe_asked_bit_by_bit(room: TalkingRoom, behind: str) -> None:
    await room.says("how do I make bran?", who="ines")
    told = words(await room.says("I've got 3 kilos of wheat bran", who="ines"))
    assert "For 3 kg of bran" in told
    assert await left(room) == pytest.approx(2.0)  # it is no starter yet
    assert "For 3 kg of bran" in words(await room.says(behind, who="ines"))


@pytest.mark.parametrize(
    "asked",
    [
        "I've got 5 kg of wheat bran, how much EM do I need?",
        "how much EM do I need for 5 kg of bran?",
        "how much culture for 5 kg of bran?",
    ],
)
async def test_culture_for_bran_is_a_batch(room: TalkingRoom, asked: str) -> None:
    assert "For 5 kg of bran" in words(await room.says(asked, who="ines"))


async def test_culture_for_scraps_is_a_dose(room: TalkingRoom) -> None:
    told = words(await room.says("how much EM do I put on 2 kg of meat?", who="ines"))
    assert "tablespoons" in told
    assert "molasses" not in told


async def test_behind_a_recipe_what_is_left_is_still_counted(room: TalkingRoom) -> None:
    await room.says("how do I make bran?", who="ines")
    await room.says("I've got 3 kg of bran left", who="ines")
    assert await left(room) == pytest.approx(3.0)
