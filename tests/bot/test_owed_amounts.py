"""What was told without an amount has it told behind, as an estimate too, or to a neighbour who
asked.
"""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


async def kilos_after(db: Database, *lines: tuple[str, str]) -> list[float | None]:
    """What the layers weigh that stand when the lines are said."""
    room = TalkingRoom(db)
    await room.says("opened the attic bin, 20 L, shared", who="olga")
    for who in ("rut", "ines"):
        await room.says("morning", who=who)
    await room.says("put some tired old kale in the attic", who="ines")
    for who, words in lines:
        await room.says(words, who=who)
    return [kg and round(kg, 3) for kg in await room.kilos()]


@pytest.mark.parametrize(
    ("words", "kg"),
    [
        ("350 g", 0.35),
        ("hm, 350 g maybe?", 0.35),
        ("I don't know, I'd say half a kilo", 0.5),
        ("roughly 350 I reckon", 0.35),
        ("no idea", None),
        ("350 g of butter for the scones", None),
    ],
)
async def test_right_behind_it(db: Database, words: str, kg: float | None) -> None:
    assert await kilos_after(db, ("ines", words)) == [kg]


@pytest.mark.parametrize(
    "asked", ["how much kale was that?", "what did the kale weigh ines", "did you weigh it?"]
)
@pytest.mark.parametrize(
    ("words", "kg"), [("not sure, 350 g?", 0.35), ("about 350 I guess", 0.35), ("350 grams", 0.35)]
)
async def test_a_neighbour_asked_how_much_it_was(
    db: Database, asked: str, words: str, kg: float
) -> None:
    assert await kilos_after(db, ("rut", asked), ("ines", words)) == [kg]


@pytest.mark.parametrize(
    ("asked", "words"),
    [
        ("how heavy is your suitcase?", "about 20 kg"),
        ("how much butter for the scones?", "350 g I think"),
        ("what did the tickets come to?", "about 350 I guess"),
    ],
)
async def test_a_neighbour_asked_of_something_else(db: Database, asked: str, words: str) -> None:
    assert await kilos_after(db, ("rut", asked), ("ines", words)) == [None]


async def test_another_who_answers_settles_nothing(db: Database) -> None:
    talk = (("rut", "how heavy was the kale?"), ("rut", "I'd guess 350 g"))
    assert await kilos_after(db, *talk) == [None]


async def test_what_has_its_amount_keeps_it(db: Database) -> None:
    talk = (
        ("ines", "600 g"),
        ("rut", "how heavy was the kale?"),
        ("ines", "maybe 350 g"),
    )
    assert await kilos_after(db, *talk) == [0.6]
