"""What contradicts the book is said at once: a sealing before a layer, and others' word."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines and Bram, with a bin each."""
    room = TalkingRoom(db)
    await room.says("opened the larder bin, 20 L", who="bram")
    await room.says("opened the gate bin, 20 L")
    return room


async def test_what_a_member_said_of_himself_stands(room: TalkingRoom) -> None:
    await room.says("I'm away 2 to 9 March", who="bram")
    [answer] = await room.says("Bram's away next week")
    assert "Bram can say so" in answer.body
    assert sum(entry.act == "away" for entry in await room.standing()) == 1
    await room.says("I'm back already", who="bram")
    [mark] = await room.says("Bram's away next week")
    assert mark.kind == "reaction"


async def test_a_sealing_before_the_last_layer(room: TalkingRoom) -> None:
    await room.says("added 2 kg to the gate bin")
    [answer] = await room.says("sealed the gate bin last night")
    assert "counts as open" in answer.body
    [answer] = await room.says("sealed the gate bin")
    assert "Bury it" in answer.body
