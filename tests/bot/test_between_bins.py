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
    ],
)
async def test_a_move_is_no_layer_and_what_is_advised_is_understood(
    room: TalkingRoom, said: str, after: dict[str, float]
) -> None:
    before = await held(room)
    [answer] = await room.says(said)
    assert await held(room) == before
    for advised in re.findall("“(.+?)”", answer.body):
        await room.says(advised)
    assert await held(room) == after


@pytest.mark.parametrize(
    ("said", "more_kg"),
    [
        ("moved the barn bin to the garden shed", 0),
        ("put 2 kg of skins from the market in the barn bin", 2),
    ],
)
async def test_other_moves(room: TalkingRoom, said: str, more_kg: float) -> None:
    before = await held(room)
    answers = await room.says(said)
    assert not any("from bin to bin" in answer.body for answer in answers)
    assert await held(room) == before | {"barn": before["barn"] + more_kg}
