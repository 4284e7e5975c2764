"""Neighbours talk of how much starter was put on; what they say of it is neither scraps nor
liquid.
"""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


async def standing_after(db: Database, *lines: tuple[str, str]) -> list[tuple[str, float | None]]:
    """Each layer and draining that stands, with its amount in kilos or litres."""
    room = TalkingRoom(db)
    await room.says("opened the red bin, 20 L, shared", who="olga")
    await room.says("morning", who="rut")
    await room.says("put 2 kg of fish skins in red", who="ines")
    for who, words in lines:
        await room.says(words, who=who)
    kept = [entry for entry in await room.standing() if entry.act != "open"]
    return [(entry.act, entry.facts.mass_kg or entry.facts.volume_l) for entry in kept]


AS_TOLD = [("layer", 2.0)]


@pytest.mark.parametrize(
    "asked",
    [
        "how much starter was that ines?",
        "ines what bran did you give it",
        "loads of bran on fish, ines!",
        "did you sprinkle anything on?",
    ],
)
@pytest.mark.parametrize(
    "told",
    ["not sure, two handfuls", "a fistful", "it was 4 spoons", "about 40 g", "chucked a cup on"],
)
async def test_what_is_told_behind_talk_of_starter_is_starter(
    db: Database, asked: str, told: str
) -> None:
    assert await standing_after(db, ("rut", asked), ("ines", told)) == AS_TOLD


@pytest.mark.parametrize("told", ["did 2 tablespoons", "gave it 3 spoons", "used 2 handfuls"])
async def test_spoons_put_on_are_no_liquid_though_it_is_time_to_drain(
    db: Database, told: str
) -> None:
    assert await standing_after(db, ("ines", told)) == AS_TOLD


@pytest.mark.parametrize(
    ("told", "stands"),
    [
        ("oops, it was 3 kg", [("layer", 3.0)]),
        ("sorry, only 150 g", [("layer", 0.15)]),
        ("put 150 g in", [("layer", 2.0), ("layer", 0.15)]),
        ("and 200 g of rice in red", [("layer", 2.0), ("layer", 0.2)]),
        ("drained 3 tablespoons from red", [("layer", 2.0), ("drain", 0.045)]),
    ],
)
async def test_what_is_told_of_the_bin_still_is(
    db: Database, told: str, stands: list[tuple[str, float]]
) -> None:
    assert await standing_after(db, ("rut", "plenty of bran please"), ("ines", told)) == stands


async def test_a_handful_is_scraps_where_nobody_spoke_of_starter(db: Database) -> None:
    talk = (("rut", "lovely day"), ("ines", "chucked another handful of peel in red"))
    assert await standing_after(db, *talk) == [*AS_TOLD, ("layer", 0.15)]


async def test_it_is_so_though_the_layer_lacks_its_amount(db: Database) -> None:
    talk = (("ines", "some rice in red"), ("rut", "did you put bran on?"), ("ines", "a handful"))
    assert await standing_after(db, *talk) == [*AS_TOLD, ("layer", None)]
