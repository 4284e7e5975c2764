"""A bin is told to be fuller than its layers make it, and then less so: it is asked anew."""

import pytest

from handlers.practice.density import capacity_kg
from storage.database import Database
from tests.room import TalkingRoom, words


async def asked_after(db: Database, *said: str) -> tuple[str, TalkingRoom]:
    """What is asked when somebody says these things of a bin that holds a kilo."""
    room = TalkingRoom(db)
    await room.says("opened the barn bin, 20 L", who="olga")
    await room.says("put 1 kg of peel in the barn", who="ines")
    told = ""
    for line in ("the barn bin is 3/4 full", *said):
        told = words(await room.says(line, who="rut"))
    return told, room


def lacking(share: float) -> float:
    """What the kilo lacks of so full a bin."""
    return round(share * capacity_kg(20.0, {"vegetable": 1.0}) - 1.0, 1)


@pytest.mark.parametrize(
    ("said", "share"),
    [
        ("hang on, more like a third", 1 / 3),
        ("no, only half full", 0.5),
        ("nearer 60 % actually", 0.6),
        ("I meant half", 0.5),
    ],
)
async def test_it_is_asked_anew(db: Database, said: str, share: float) -> None:
    told, room = await asked_after(db, said)
    assert f"the rest, about {lacking(share):.1f} kg?" in told
    assert await room.kilos() == [1.0]


async def test_a_yes_is_to_the_question_asked_last(db: Database) -> None:
    _, room = await asked_after(db, "no, more like half", "yes")
    assert await room.kilos() == [1.0, lacking(0.5)]


@pytest.mark.parametrize("said", ["no", "half past six", "half of them are away", "lovely day"])
async def test_nothing_else_asks_anew(db: Database, said: str) -> None:
    told, room = await asked_after(db, said)
    assert told == ""
    assert await room.kilos() == [1.0]
