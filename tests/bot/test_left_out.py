"""Something told of as put in went elsewhere: it is struck out, with all else left as it was."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


async def kilos_after(db: Database, *lines: tuple[str, str]) -> list[float | None]:
    """What the layers weigh that stand when the lines are said."""
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L, shared", who="olga")
    for who in ("rut", "ines"):
        await room.says("morning", who=who)
    for who, words in lines:
        await room.says(words, who=who)
    return await room.kilos()


PEEL = ("ines", "put 2 kg of potato peel in the shed")
HAM = ("ines", "oh and 400 g of ham bones")


@pytest.mark.parametrize(
    "words",
    [
        "forget the ham, the dog got it",
        "ignore the ham bones. they went in the rubbish",
        "sorry, not the ham bones, those ended up in the landfill",
        "skip the ham, next door's cat nicked it",
        "don't count the ham bones, I binned them",
        "the ham bones went in the freezer after all",
    ],
)
async def test_what_went_elsewhere_is_struck_out(db: Database, words: str) -> None:
    assert await kilos_after(db, PEEL, HAM, ("ines", words)) == [2.0]


async def test_it_is_though_others_have_spoken_since(db: Database) -> None:
    talk = (("rut", "we had a grand day at the fair"), ("ines", "forget the ham, the hens had it"))
    assert await kilos_after(db, PEEL, HAM, *talk) == [2.0]


@pytest.mark.parametrize(
    ("who", "words"),
    [
        ("ines", "forget the ham, I made soup"),
        ("ines", "don't forget the ham, the dog gets it"),
        ("ines", "forget the eggs, the dog got them"),
        ("ines", "did the ham bones go in the rubbish?"),
        ("rut", "forget the cake, the dog got it"),
    ],
)
async def test_what_is_said_of_other_things_strikes_nothing_out(
    db: Database, who: str, words: str
) -> None:
    assert await kilos_after(db, PEEL, HAM, (who, words)) == [2.0, 0.4]


async def test_only_that_part_of_a_layer_goes(db: Database) -> None:
    mixed = ("ines", "put 2 kg of rice and 1 kg of salmon in the shed")
    assert await kilos_after(db, mixed, ("ines", "ignore the salmon, the cat had it")) == [2.0]
