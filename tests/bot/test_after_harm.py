"""What follows on somebody who swallowed of it, in a room."""

from datetime import timedelta

from storage.database import Database
from tests.room import TalkingRoom


async def test_what_is_said_next_is_heard_for_an_hour(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    assert "poison line" in (await room.says("my uncle drank the bin juice"))[-1].body
    await room.says("oh no", who="bram")
    assert (
        "However well they seem" in (await room.says("he seems fine, do we have to call?"))[-1].body
    )
    room.now += timedelta(hours=2)
    assert not await room.says("he seems fine, do we have to call?")
