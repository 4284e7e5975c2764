"""What is still known of events that were worked through: who wrote and when, never the words."""

import json
import sqlite3
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from functools import partial

from storage import rooms
from storage.database import Database
from storage.moments import from_ms

LAST = 2**63 - 1
"""No item has a higher number."""
SAID = "inbox:rewritten"
"""What depends on the messages worked through: nothing takes them away but a change of them all."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Trace:
    """What is still known of an event that was worked through: never its words."""

    event: str
    at: datetime
    sender: str | None
    kind: str | None
    about: str | None
    mark: str | None
    """The sign of a reaction; of a message, that it asked the others in the room or was of other
    things than the bins, what favour it asked or promised, or what it asked us (JSON)."""


async def marked_by(db: Database, room: str, user: str, events: Sequence[str]) -> list[Trace]:
    """The marks that a member set on events, those taken back too."""
    found = []
    for address in await rooms.addresses(db, room):
        found += await db.rows(
            "SELECT * FROM inbox WHERE room = ? AND about IN (SELECT value FROM json_each(?)) "
            "AND about IS NOT NULL AND kind = 'reacted' AND sender = ?",
            (address, json.dumps(list(events)), user),
        )
    return [_trace(row) for row in found]


async def trace(db: Database, room: str, event: str) -> Trace | None:
    """What is still known of an event."""
    row = await row_of(db, room, event)
    return _trace(row) if row else None


async def row_of(db: Database, room: str, event: str) -> sqlite3.Row | None:
    """The row of an event, also of the room's former addresses."""
    for address in await rooms.addresses(db, room):
        row = await db.row("SELECT * FROM inbox WHERE room = ? AND event = ?", (address, event))
        if row:
            return row
    return None


async def mark_anew(db: Database, room: str, event: str, mark: str) -> None:
    """Change what is kept of a message, inside a transaction."""
    for address in await rooms.addresses(db, room):
        await db.write(
            "UPDATE inbox SET mark = ? WHERE room = ? AND event = ?", (mark, address, event)
        )


async def last_said(db: Database, room: str, before: int) -> Trace | None:
    """The last message somebody wrote in a room before an item."""
    latest = await latest_said(db, room)
    if latest and latest[0] >= before:  # the item waited for its key, while others were said
        latest = await _said_before(db, room, before)
    return latest[1] if latest else None


async def said_lately(db: Database, room: str, before: int, most: int) -> list[Trace]:
    """The last messages somebody wrote in a room before an item, the latest first."""
    rows = await db.rows(
        "SELECT * FROM inbox WHERE room = ? AND id < ? AND kind = 'said' ORDER BY id DESC LIMIT ?",
        (room, before, most),
    )
    return [_trace(row) for row in rows]


async def item_of(db: Database, room: str, event: str) -> int | None:
    """The number of the item that an event came in as; None if it never did."""
    row = await row_of(db, room, event)
    return row["id"] if row else None


async def said_before(db: Database, room: str, event: str) -> Trace | None:
    """The last message somebody wrote in a room before an event."""
    row = await row_of(db, room, event)
    before = await _said_before(db, row["room"], row["id"]) if row else None
    return before[1] if before else None


async def latest_said(db: Database, room: str) -> tuple[int, Trace] | None:
    """The last message of a room that was worked through, with the number of its item."""
    return await db.known(room, SAID, "latest", partial(_said_before, db, room, LAST))


async def _said_before(db: Database, room: str, item: int) -> tuple[int, Trace] | None:
    row = await db.row(
        "SELECT * FROM inbox WHERE room = ? AND id < ? AND kind = 'said' ORDER BY id DESC LIMIT 1",
        (room, item),
    )
    return (row["id"], _trace(row)) if row else None


def _trace(row: sqlite3.Row) -> Trace:
    return Trace(
        event=row["event"],
        at=from_ms(row["at"]),
        sender=row["sender"],
        kind=row["kind"],
        about=row["about"],
        mark=row["mark"],
    )
