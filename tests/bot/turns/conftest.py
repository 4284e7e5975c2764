"""A bin that three neighbours share."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """A Monday: Ines keeps the yard bin; Bram and Mei have spoken."""
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 30 L, shared")
    await room.says("added 4 kg scraps to the yard bin", who="bram")
    await room.says("hello!", who="mei")
    await room.waits(minutes=1)
    return room
