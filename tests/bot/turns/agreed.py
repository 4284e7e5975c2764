"""The rotas that a group agrees on, and what comes of them."""

from datetime import date

from storage.rows import Message
from tests.room import TalkingRoom

DRAINING = "draining rota for the yard bin: Ines, Bram and Mei, a week each"
KEEPING = "rota for the yard bin: Ines, Bram and Mei, a week each"


async def turns(room: TalkingRoom) -> list[tuple[str, date, str | None]]:
    book = await room.book()
    dues = await book.dues()
    return [(d.what, d.from_day, d.to_member) for d in dues if d.what.startswith("turn")]


def march(day: int) -> date:
    return date(2026, 3, day)


def digests(messages: list[Message]) -> list[str]:
    return [message.body for message in messages if message.kind == "digest"]
