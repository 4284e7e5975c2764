"""The bin that passes from one keeper to the next."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines keeps the yard bin, which everybody feeds; Bram and Mei have spoken."""
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 30 L, shared")
    await room.says("added 4 kg scraps, mostly meat, to the yard bin", who="bram")
    await room.says("put 1 kg of peelings in the yard bin", who="mei")
    await room.waits(minutes=1)
    return room
