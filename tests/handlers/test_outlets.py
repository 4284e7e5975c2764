"""Where the book can be seen, told in the room."""

import pytest

from storage import session
from storage.database import Database
from tests.room import TalkingRoom


@pytest.mark.parametrize(
    ("address", "answered"),
    [
        ("https://bins.example.org", "The board: https://bins.example.org/"),
        (None, "“Show the calendar” posts a picture"),
    ],
)
async def test_the_page_is_told_where_there_is_one(
    db: Database, address: str | None, answered: str
) -> None:
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L")
    if address:
        await session.set_address(db, address)
    (answer,) = await room.says("is there a web page with the dues?")
    assert answered in answer.body


async def test_how_all_is_written_out_is_told(db: Database) -> None:
    room = TalkingRoom(db)
    (answer,) = await room.says("can I get all this as a spreadsheet?")
    assert "export --format csv" in answer.body
    assert await room.standing() == []
