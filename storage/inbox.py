"""Every event seen, once; its words are kept only until it has been worked through."""

import json
import sqlite3
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from storage import rooms, words
from storage.database import Database
from storage.moments import from_ms, to_ms
from storage.session import set_sync_token
from storage.traces import SAID, Trace, latest_said, row_of

OLDEST = 1000
"""Events among which the rooms take turns: of ten batches, looked through anew for each."""
DEEPEST = 100
"""Levels of JSON in an event; no message has so many."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Arrival:
    """An event as it came; `parked` while it cannot be decrypted."""

    room: str
    raw: Mapping[str, Any]
    parked: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Item:
    """An event of the inbox that waits, or is parked."""

    id: int
    room: str
    event: str
    at: datetime
    raw: dict[str, Any]


async def take_in(db: Database, arrivals: Sequence[Arrival], token: str | None) -> None:
    """Keep new events and the sync token that covers them in one transaction."""

    async def both(db: Database) -> None:
        await add(db, arrivals)
        if token is not None:
            await set_sync_token(db, token)

    # What a power cut takes with its token is told again: the disk need not be waited for.
    await db.at_once(both, lasting=False)


async def add(db: Database, arrivals: Sequence[Arrival]) -> None:
    """Keep new events, inside a transaction; one seen before is passed over."""
    rows = [row for arrival in arrivals if (row := _row(arrival)) is not None]
    await db.write_many(
        "INSERT OR IGNORE INTO inbox (room, event, at, raw, state) VALUES (?, ?, ?, ?, ?)",
        rows,
        part="come",
    )


def _row(arrival: Arrival) -> tuple[str, str, int, str, str] | None:
    event, at = arrival.raw.get("event_id"), arrival.raw.get("origin_server_ts")
    if not isinstance(event, str) or not words.is_sound(event):
        return None
    if not isinstance(at, int) or not -(2**62) < at < 2**62:
        return None
    if _is_deeper(arrival.raw, DEEPEST):
        return None
    state = "parked" if arrival.parked else "waiting"
    return arrival.room, event, at, json.dumps(arrival.raw), state


async def waiting(db: Database, limit: int = 100) -> list[Item]:
    """The events to work through next: in the order they came, and no room before the others."""
    oldest = await db.rows(
        "SELECT id, room FROM inbox INDEXED BY inbox_waiting WHERE state = 'waiting' "
        "ORDER BY id LIMIT ?",
        (OLDEST,),
    )
    renamed = await rooms.renamed(db)
    had, turns = Counter[str](), list[tuple[int, int]]()
    for id, address in oldest:
        room = renamed.get(address, address)
        had[room] += 1
        turns.append((had[room], id))
    ids = [id for _, id in sorted(turns)[:limit]]
    rows = await db.rows(
        "SELECT * FROM inbox WHERE id IN (SELECT value FROM json_each(?))", (json.dumps(ids),)
    )
    items = {row["id"]: _item(row) for row in rows}
    return [items[id] for id in ids]


async def how_many_wait(db: Database) -> int:
    """How many events are still to be worked through."""
    row = await db.row("SELECT count(*) FROM inbox WHERE state = 'waiting'")
    return int(row[0]) if row else 0


def _is_deeper(value: object, levels: int) -> bool:
    """Whether JSON is nested so deep that reading it back might end the program."""
    if levels == 0:
        return True
    parts = value.values() if isinstance(value, Mapping) else value
    return (
        isinstance(parts, Iterable)
        and not isinstance(parts, str)
        and any(_is_deeper(part, levels - 1) for part in parts)
    )


async def messages_waiting(
    db: Database,
    room: str,
    *,
    limit: int,
    before: datetime | None = None,
    sender: str | None = None,
) -> int:
    """How many messages of a room (of a sender, from before a moment) wait, up to a limit."""
    # Searched as text: what Python takes for JSON, SQLite may not (a NaN, say).
    of_sender = None if sender is None else json.dumps({"sender": sender})[1:-1]
    rows = await db.rows(
        "SELECT 1 FROM inbox INDEXED BY inbox_waiting_in "
        "WHERE state = 'waiting' AND room = ?1 AND (?2 IS NULL OR at < ?2) "
        "AND (?3 IS NULL OR instr(raw, ?3)) AND instr(raw, '\"m.room.message\"') LIMIT ?4",
        (room, None if before is None else to_ms(before), of_sender, limit),
    )
    return len(rows)


async def any_parked(db: Database) -> bool:
    """Whether any event waits for its key, or for the message that it is about."""
    return bool(
        await db.rows("SELECT 1 FROM inbox INDEXED BY inbox_parked WHERE state = 'parked' LIMIT 1")
    )


async def parked(db: Database) -> list[Item]:
    """The events that could not be decrypted yet."""
    rows = await db.rows(
        "SELECT * FROM inbox INDEXED BY inbox_parked WHERE state = 'parked' AND about IS NULL "
        "ORDER BY id"
    )
    return [_item(row) for row in rows]


async def unpark(db: Database, item: int, raw: Mapping[str, Any]) -> None:
    """A parked event was decrypted: let it wait its turn."""
    async with db.transaction():
        await db.write(
            "UPDATE inbox SET state = 'waiting', raw = ? WHERE id = ? AND state = 'parked'",
            (json.dumps(raw), item),
        )


async def state(db: Database, room: str, event: str) -> str | None:
    """Where an event stands: waiting, parked, done or failed; None if it has not come."""
    row = await row_of(db, room, event)
    return str(row["state"]) if row else None


async def is_withdrawn(db: Database, room: str, event: str) -> bool:
    """Whether a message or mark was taken back, by its writer or a moderator."""
    for address in await rooms.addresses(db, room):
        if await db.rows(
            "SELECT 1 FROM inbox WHERE room = ? AND about = ? AND kind = 'withdrawn'",
            (address, event),
        ):
            return True
    return False


async def withdraws(db: Database, room: str, event: str) -> bool:
    """Whether an event is itself the taking back of another."""
    row = await row_of(db, room, event)
    return row is not None and row["kind"] == "withdrawn"


async def put_by(db: Database, item: int, about: str) -> None:
    """Park an event until the one that it is about is worked through; inside a transaction."""
    await db.write("UPDATE inbox SET state = 'parked', about = ? WHERE id = ?", (about, item))


async def _is_any_put_by(db: Database) -> bool:
    """Whether any event waits for the one that it is about."""

    async def ask() -> bool:
        return bool(
            await db.rows(
                "SELECT 1 FROM inbox INDEXED BY inbox_parked "
                "WHERE state = 'parked' AND about IS NOT NULL LIMIT 1"
            )
        )

    return await db.known(None, "inbox:parked", "is any put by", ask)


async def expire_parked(db: Database, before: datetime) -> None:
    """Give up on parked events from before a moment: their key will not come."""
    async with db.transaction():
        await db.write(
            "UPDATE inbox INDEXED BY inbox_parked SET state = 'failed', raw = NULL "
            "WHERE state = 'parked' AND at < ?",
            (to_ms(before),),
        )


async def expire_put_by(db: Database, before: datetime) -> None:
    """Give up on what is about an event that has not come, nor waits for its key."""
    async with db.transaction():
        await db.write(
            "UPDATE inbox SET state = 'failed', raw = NULL WHERE state = 'parked' AND at < ? "
            "AND about IS NOT NULL AND NOT EXISTS (SELECT 1 FROM inbox AS original "
            "WHERE original.event = inbox.about AND original.state = 'parked')",
            (to_ms(before),),
        )


async def settle(db: Database, item: Item, state: str, trace: Trace) -> None:
    """Mark an event as worked through and forget its words, inside a transaction.

    What was put by until then may have its turn.
    """
    if await _is_any_put_by(db):
        await db.write(
            "UPDATE inbox SET state = 'waiting', about = NULL WHERE state = 'parked' AND about = ?",
            (trace.event,),
        )
    await db.write(
        "UPDATE inbox SET state = ?, raw = NULL, sender = ?, kind = ?, about = ?, mark = ? "
        "WHERE id = ?",
        (state, trace.sender, trace.kind, trace.about, trace.mark, item.id),
        part="settled",
    )
    if trace.kind == "said":
        latest = await latest_said(db, item.room)
        if latest is None or latest[0] < item.id:
            db.note(item.room, SAID, "latest", (item.id, trace))


def _item(row: sqlite3.Row) -> Item:
    return Item(
        id=row["id"],
        room=row["room"],
        event=row["event"],
        at=from_ms(row["at"]),
        raw=json.loads(row["raw"]),
    )
