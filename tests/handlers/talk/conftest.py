"""The room in which records are talked of."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines and Bram, and a bin of 20 L that is being filled."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("opened the shed bin, 20 L")
    await room.says("added 2 kg to the shed bin")
    return room
