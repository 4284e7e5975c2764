"""What members set themselves, in a room of the terminal."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """A room in Lisbon on Monday 2 March 2026 at 18:00."""
    room = TalkingRoom(db)
    await room.waits(minutes=0)
    return room
