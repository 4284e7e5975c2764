"""Scraps that pass from one bin into another are in no record, and it is said what to write."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom

MOVES = (
    ("moved 2 kg of scraps from the barn bin to the roof bin", "barn", "2 kg"),
    ("all the scraps from the barn bin are in the roof bin now", "barn", "4 kg"),
    ("emptied the roof bin into the barn bin", "roof", "1 kg"),
    ("took 1 kg out of the barn bin and tipped it into the roof bin", "barn", "1 kg"),
    ("poured half of the barn bin into the roof bin", "barn", "2 kg"),
)


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    room = TalkingRoom(db)
    await room.says("opened the barn bin, 25 L")
    await room.says("opened the roof bin, 15 L")
    await room.says("put 4 kg of skins in the barn bin")
    await room.says("put 1 kg of skins in the roof bin")
    return room


@pytest.mark.parametrize(("said", "source", "kg"), MOVES)
async def test_a_move_is_no_layer(room: TalkingRoom, said: str, source: str, kg: str) -> None:
    before = await room.standing()
    [answer] = await room.says(said)
    assert await room.standing() == before
    target = {"barn": "roof", "roof": "barn"}[source]
    for advised in (f"scratch the last layer in the {source} bin", f"added {kg} to the {target}"):
        assert advised in answer.body


async def test_what_is_advised_is_understood(room: TalkingRoom) -> None:
    await room.says("tipped the roof bin into the barn bin")
    await room.says("scratch the last layer in the roof bin")
    await room.says("added 1 kg to the barn bin")
    layers = [entry for entry in await room.standing() if entry.act == "layer"]
    assert {e.bin.name for e in layers if e.bin} == {"barn"}
    assert sum(e.facts.mass_kg or 0 for e in layers) == 5


@pytest.mark.parametrize(
    "said",
    ["moved the barn bin to the garden shed", "put 2 kg of skins from the market in the barn bin"],
)
async def test_other_moves(room: TalkingRoom, said: str) -> None:
    assert all("from bin to bin" not in answer.body for answer in await room.says(said))
