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
    db: Database,
    raw: Mapping[str, object],
    minute: int,
    *,
    parked: bool = False,
    sender: str = "@ines:test",
) -> None:
    at = BEGIN + timedelta(minutes=minute)
    raw = {**raw, "sender": sender, "origin_server_ts": int(at.timestamp() * 1000)}
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


def edit(event: str, original: str, body: str) -> dict[str, object]:
    new = {"msgtype": "m.text", "body": body}
    relation = {"rel_type": "m.replace", "event_id": original}
    return message(event, f"* {body}", **{"m.new_content": new, "m.relates_to": relation})


def mark(event: str, target: str, key: str) -> dict[str, object]:
    relation = {"rel_type": "m.annotation", "event_id": target, "key": key}
    return {"type": "m.reaction", "event_id": event, "content": {"m.relates_to": relation}}


async def test_edits_that_were_read_before_it_count(yard: Database) -> None:
    for minute, kg in ((1, 3), (2, 4)):
        await comes(yard, edit(f"$e{kg}", "$m", f"added {kg} kg scraps to the shed bin"), minute)
    await key_comes(yard)
    assert await masses(yard) == [4.0]
    assert await yard.rows("SELECT 1 FROM inbox WHERE raw IS NOT NULL") == []


async def test_an_edit_taken_back_before_it_does_not_count(yard: Database) -> None:
    await comes(yard, edit("$e", "$m", "added 3 kg scraps to the shed bin"), 1)
    gone = {"type": "m.room.redaction", "event_id": "$x", "content": {"redacts": "$e"}}
    await comes(yard, gone, 2)
    await key_comes(yard)
    assert await masses(yard) == [2.0]


async def test_a_cross_put_on_it_before_counts(yard: Database) -> None:
    await comes(yard, mark("$x", "$m", "❌"), 1)
    await key_comes(yard)
    assert await masses(yard) == []


async def test_an_edit_may_come_before_its_message(yard: Database) -> None:
    await comes(yard, edit("$e", "$late", "added 3 kg scraps to the shed bin"), 1)
    assert await masses(yard) == []
    await comes(yard, message("$late", "added 5 kg scraps to the shed bin"), 2)
    assert await masses(yard) == [3.0]
    assert await yard.rows("SELECT 1 FROM inbox WHERE state = 'waiting'") == []


@pytest.mark.parametrize("mallorys", [True, False])
async def test_it_must_be_the_writers_own(yard: Database, mallorys: bool) -> None:
    early = edit("$e", "$late", "added 3 kg scraps to the shed bin")
    await comes(yard, early, 1, sender="@mallory:test" if mallorys else "@ines:test")
    await comes(yard, message("$late", "added 5 kg scraps to the shed bin"), 2)
    assert await masses(yard) == [5.0 if mallorys else 3.0]


async def test_an_edit_of_what_never_comes_is_forgotten(yard: Database) -> None:
    await comes(yard, edit("$of-it", "$m", "added 4 kg scraps to the shed bin"), 1)
    await comes(yard, edit("$e", "$never", "added 3 kg scraps to the shed bin"), 2)
    await inbox.expire_put_by(yard, BEGIN + timedelta(days=1))
    kept = await yard.rows("SELECT event FROM inbox WHERE raw IS NOT NULL ORDER BY id")
    assert [row["event"] for row in kept] == ["$m", "$of-it"]
    assert [item.event for item in await inbox.parked(yard)] == ["$m"]
