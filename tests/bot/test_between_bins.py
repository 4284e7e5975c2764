"""Scraps that pass from one bin into another are in no record, and it is said what to write."""

import re

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Two layers in the barn bin, one in the roof bin."""
    room = TalkingRoom(db)
    await room.says("opened the barn bin, 25 L")
    await room.says("opened the roof bin, 15 L")
    await room.says("put 1 kg of rice in the barn bin")
    await room.says("put 4 kg of skins in the barn bin")
    await room.says("put 2 kg of skins in the roof bin")
    return room


async def held(room: TalkingRoom) -> dict[str, float]:
    out = {"barn": 0.0, "roof": 0.0}
    for entry in await room.standing():
        if entry.act == "layer" and entry.bin:
            out[entry.bin.name] += entry.facts.mass_kg or 0
    return out


@pytest.mark.parametrize(
    ("said", "after"),
    [
        ("moved 3 kg of scraps from the barn bin to the roof bin", {"barn": 2, "roof": 5}),
        ("took 1 kg out of the barn bin and tipped it into the roof bin", {"barn": 4, "roof": 3}),
        ("emptied the roof bin into the barn bin", {"barn": 7, "roof": 0}),
        ("all the scraps from the roof bin are in the barn bin now", {"barn": 7, "roof": 0}),
        ("poured half of the roof bin into the barn bin", {"barn": 6, "roof": 1}),
        ("put everything from the barn bin into the roof bin", {"barn": 0, "roof": 7}),
        (
            "topped up the barn with the contents of the roof bin, about 2 kg",
            {"barn": 7, "roof": 0},
        ),
        ("half of what's in the roof bin went into the barn bin", {"barn": 6, "roof": 1}),
        ("combined the two bins into one, all in the barn bin now", {"barn": 7, "roof": 0}),
        ("combined the barn bin and the roof bin, all in the roof bin now", {"barn": 0, "roof": 7}),
        ("tipped the roof bin into the barn bin and rinsed it", {"barn": 7, "roof": 0}),
        ("the roof bin is full so we tipped it all into the barn bin", {"barn": 7, "roof": 0}),
        ("contents of the roof bin → barn bin", {"barn": 7, "roof": 0}),
        ("barn bin contents -> roof bin", {"barn": 0, "roof": 7}),
    ],
)
async def test_a_move_is_no_layer_and_what_is_advised_is_understood(
    room: TalkingRoom, said: str, after: dict[str, float]
) -> None:
    before = await held(room)
    [answer] = await room.says(said)
    assert await held(room) == before
    advised = re.findall("“(.+?)”", answer.body)
    for words in ["yes"] if "Shall I" in answer.body else advised:
        await room.says(words)
    assert await held(room) == after


@pytest.mark.parametrize(
    ("said", "more_kg"),
    [
        ("moved the barn bin to the garden shed", 0),
        ("put 2 kg of skins from the market in the barn bin", 2),
        ("filled the barn bin with 2 kg of leaves", 2),
        ("topped up the barn bin with the contents of my fridge, 1 kg", 1),
        ("the roof bin is full so we put the rest, 1 kg, into the barn bin", 1),
        ("combined the two bins' shelves into one, it stands in the barn", 0),
    ],
)
async def test_other_moves(room: TalkingRoom, said: str, more_kg: float) -> None:
    before = await held(room)
    answers = await room.says(said)
    assert not any("from bin to bin" in answer.body for answer in answers)
    assert await held(room) == before | {"barn": before["barn"] + more_kg}


async def test_all_layers_of_a_bin_pass_into_the_other_and_back(room: TalkingRoom) -> None:
    before = await held(room)
    await room.says("emptied the barn bin into the roof bin", who="bram")
    [answer] = await room.says("yes", who="bram")
    assert answer.body.startswith("Corrected: 2 layers of the barn bin now stand in the roof bin.")
    assert await held(room) == {"barn": 0, "roof": 7}
    await room.says("undo", who="bram")
    assert await held(room) == before


async def test_a_no_leaves_all_as_it_was(room: TalkingRoom) -> None:
    before = await held(room)
    await room.says("emptied the barn bin into the roof bin")
    await room.says("no")
    assert await held(room) == before
