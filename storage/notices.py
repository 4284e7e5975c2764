"""The message of a room that always shows the present calendar, and whether it is pinned."""

import sqlite3
from dataclasses import dataclass
from datetime import date, datetime

from storage import outbox
from storage.database import Database
from storage.moments import from_ms, to_ms
from storage.rows import Message, Room


@dataclass(frozen=True, slots=True, kw_only=True)
class Notice:
    """The message as it stands."""

    row: int
    """Of the outbox: what its edits rewrite; 0 before it is posted: asked for, or not wanted."""
    event: str | None
    """In the room; None until it is sent."""
    shown: str
    shown_on: date
    """The day that it was made for."""
    pinned: bool
    unwanted: bool
    explained: bool
    changed_at: datetime
    waiting: bool
    """Whether it or an edit of it is still to be sent."""


async def find(db: Database, room: Room) -> Notice | None:
    """The notice of a room, if it ever had one."""
    row = await db.row(
        "SELECT notice_board.*, first.id AS row, first.sent_as AS event, "
        "(SELECT max(made_at) FROM outbox WHERE id = first.id OR rewrites = first.id) AS changed, "
        "EXISTS (SELECT 1 FROM outbox WHERE (id = first.id OR rewrites = first.id) "
        "AND sent_as IS NULL AND refused IS NULL) AS waiting "
        "FROM notice_board LEFT JOIN outbox AS first ON first.tx_id = notice_board.message "
        "WHERE notice_board.room = ?",
        (room.id,),
    )
    return _notice(row) if row else None


async def put(
    db: Database, room: Room, before: Notice | None, shown: str, day: date, at: datetime
) -> None:
    """Post the notice, or an edit of it, inside a transaction."""
    message = Message(
        tx_id=f"calendar-{room.id}-{to_ms(at)}",
        kind="calendar",
        body=shown,
        rewrites=before.row or None if before else None,
    )
    await outbox.put(db, room.id, message, at)
    if before is None or not before.row:
        await db.write(
            "INSERT OR REPLACE INTO notice_board (room, message, shown, shown_on) "
            "VALUES (?, ?, ?, ?)",
            (room.id, message.tx_id, shown, day.isoformat()),
        )
    else:
        await db.write(
            "UPDATE notice_board SET shown = ?, shown_on = ? WHERE room = ?",
            (shown, day.isoformat(), room.id),
        )


async def set_shown_on(db: Database, room: Room, day: date) -> None:
    """What it shows is true of another day as well; inside a transaction."""
    await db.write(
        "UPDATE notice_board SET shown_on = ? WHERE room = ?", (day.isoformat(), room.id)
    )


async def set_pinned(db: Database, room: Room) -> None:
    """It hangs at the top of the room; inside a transaction."""
    await db.write("UPDATE notice_board SET pinned = 1 WHERE room = ?", (room.id,))


async def set_explained(db: Database, room: Room) -> None:
    """How to let the bot hang it there was said; inside a transaction."""
    await db.write("UPDATE notice_board SET explained = 1 WHERE room = ?", (room.id,))


async def take_away(db: Database, room: Room) -> None:
    """It is not wanted: no edits, and no other in its place; inside a transaction."""
    await db.write(
        "INSERT INTO notice_board (room, message, shown, shown_on, unwanted) "
        "VALUES (?, '', '', '1970-01-01', 1) ON CONFLICT DO UPDATE SET unwanted = 1",
        (room.id,),
    )


async def put_up_again(db: Database, room: Room) -> None:
    """It is to be posted anew, for it was asked for; inside a transaction."""
    await db.write(
        "INSERT OR REPLACE INTO notice_board (room, message, shown, shown_on) "
        "VALUES (?, '', '', '1970-01-01')",
        (room.id,),
    )


async def posted(db: Database, room: Room) -> list[str]:
    """The events of all notices that a room ever had."""
    rows = await db.rows(
        "SELECT sent_as FROM outbox WHERE room = ? AND kind != 'reaction' AND kind = 'calendar' "
        "AND rewrites IS NULL AND sent_as IS NOT NULL",
        (room.id,),
    )
    return [row["sent_as"] for row in rows]


def _notice(row: sqlite3.Row) -> Notice:
    return Notice(
        row=row["row"] or 0,
        event=row["event"],
        shown=row["shown"],
        shown_on=date.fromisoformat(row["shown_on"]),
        pinned=bool(row["pinned"]),
        unwanted=bool(row["unwanted"]),
        explained=bool(row["explained"]),
        changed_at=from_ms(row["changed"] or 0),
        waiting=bool(row["waiting"]),
    )
