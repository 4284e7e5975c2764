"""What is done to a message before its key has come holds when it can be read at last."""

from collections.abc import Mapping
from datetime import timedelta

import pytest

from bot.turn import work_off
from storage import inbox, outbox, rooms
from storage.book import Book
from storage.database import Database
from storage.inbox import Arrival
from tests.group import BEGIN

ROOM, OWN = "!yard:test", "@pailkeeper:test"


async def comes(
    db: Database, raw: Mapping[str, object], minute: int, *, parked: bool = False
) -> None:
    at = BEGIN + timedelta(minutes=minute)
    raw = {**raw, "sender": "@ines:test", "origin_server_ts": int(at.timestamp() * 1000)}
    await inbox.take_in(db, [Arrival(room=ROOM, raw=raw, parked=parked)], None)
    while await work_off(db, now=lambda: at, own=OWN):
        pass


def message(event: str, body: str, **more: object) -> dict[str, object]:
    content = {"msgtype": "m.text", "body": body, **more}
    return {"type": "m.room.message", "event_id": event, "content": content}


@pytest.fixture
async def yard(db: Database) -> Database:
    """A room with one message whose key has not come."""
    async with db.transaction():
        await rooms.join(db, ROOM, BEGIN - timedelta(days=1), zone="UTC", units="metric")
    sealed = {"type": "m.room.encrypted", "event_id": "$m", "content": {"session_id": "s"}}
    await comes(db, sealed, 0, parked=True)
    return db


async def key_comes(db: Database) -> None:
    [item] = await inbox.parked(db)
    raw = message("$m", "added 2 kg scraps to the shed bin")
    clear = {**item.raw, **raw}
    await inbox.unpark(db, item.id, clear)
    later = BEGIN + timedelta(minutes=5)
    while await work_off(db, now=lambda: later, own=OWN):
        pass


async def masses(db: Database) -> list[float | None]:
    room = await rooms.find(db, ROOM)
    assert room
    return [e.facts.mass_kg for e in await Book(db, room).entries() if not e.struck]


async def test_it_is_recorded_when_its_key_comes(yard: Database) -> None:
    await key_comes(yard)
    assert await masses(yard) == [2.0]
    assert len(await outbox.waiting(yard)) == 1


async def test_what_was_taken_back_is_never_recorded_nor_answered(yard: Database) -> None:
    gone = {"type": "m.room.redaction", "event_id": "$x", "content": {"redacts": "$m"}}
    await comes(yard, gone, 1)
    await key_comes(yard)
    assert await masses(yard) == []
    assert await outbox.waiting(yard) == []
    assert await yard.rows("SELECT 1 FROM inbox WHERE raw IS NOT NULL") == []
