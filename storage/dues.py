"""The dues of a room: an index of what follows from its entries, kept so that each is told once."""

import sqlite3
from collections.abc import Collection, Sequence
from datetime import date, datetime

from storage import rooms
from storage.database import Database
from storage.moments import from_ms, to_day, to_hour, to_ms
from storage.rows import Bin, Due, Listed, Room

_SELECT = "SELECT due.*, bin.name FROM due LEFT JOIN bin ON bin.id = due.bin "

_LISTED = (
    f"{_SELECT} WHERE due.id IN (SELECT id FROM due WHERE room = ?1 AND gone = 0 "  # noqa: S608
    "UNION SELECT id FROM due WHERE room = ?1 AND changed_at >= ?2) ORDER BY due.id"
)


_ADD = (
    "INSERT INTO due "
    "(from_day, to_day, to_member, words, hour, changed_at, room, bin, what, occasion) "
    "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO UPDATE SET "
    "from_day = excluded.from_day, to_day = excluded.to_day, to_member = excluded.to_member, "
    "words = excluded.words, hour = excluded.hour, "
    "changed_at = excluded.changed_at, gone = 0, sequence = sequence + 1"
)


async def open_ones(db: Database, room: Room, until: date | None = None) -> list[Due]:
    """What is to be done, soonest first; with `until` only what begins by that day."""
    rows = await db.rows(
        _SELECT + "WHERE due.room = ? AND gone = 0 AND from_day <= ? "
        "ORDER BY from_day, to_day, due.id",
        (room.id, (until or date.max).isoformat()),
    )
    return [_due(row) for row in rows]


async def listed(db: Database, room: Room, gone_since: datetime) -> list[Listed]:
    """All open dues and those that went since a moment, in order of their making."""
    rows = await db.rows(
        _LISTED,
        (room.id, to_ms(gone_since)),
    )
    return [
        Listed(
            due=_due(row),
            sequence=row["sequence"],
            changed_at=from_ms(row["changed_at"]),
            gone=bool(row["gone"]),
        )
        for row in rows
    ]


async def put(
    db: Database,
    room: Room,
    bin: Bin | None,
    dues: Sequence[Due],
    at: datetime,
    *,
    of: Collection[str] = (),
) -> None:
    """Put the dues of a bin in place of its former ones, in a transaction.

    `of` are the kinds that they replace; of nothing, all those of the bin. One of the same
    occasion stays the same due: told and put off as it was, changed once more.
    """
    number = bin.id if bin else None
    rows = [row for row in await _open_rows(db, room, number) if not of or row["what"] in of]
    former = {(row["what"], row["occasion"]): row for row in rows}
    present = {(due.what, due.occasion): due for due in dues}
    if not former and not present:
        return
    moment = to_ms(at)
    await db.write_many(
        _ADD,
        [
            (*_said(due), moment, room.id, number, *key)
            for key, due in present.items()
            if key not in former
        ],
        room=room.id,
    )
    await db.write_many(
        "UPDATE due SET from_day = ?, to_day = ?, to_member = ?, words = ?, hour = ?, "
        "changed_at = ?, sequence = sequence + 1 WHERE id = ?",
        [
            (*_said(present[key]), moment, row["id"])
            for key, row in former.items()
            if key in present and _has_changed(row, present[key])
        ],
        room=room.id,
    )
    await db.write_many(
        "UPDATE due SET changed_at = ?, gone = 1, sequence = sequence + 1 WHERE id = ?",
        [(moment, row["id"]) for key, row in former.items() if key not in present],
        room=room.id,
    )


async def _open_rows(db: Database, room: Room, bin: int | None) -> list[sqlite3.Row]:
    async def ask() -> list[sqlite3.Row]:
        return await db.rows(
            "SELECT * FROM due WHERE room = ? AND bin IS ? AND gone = 0", (room.id, bin)
        )

    return await db.known(room.id, "due", ("open", bin), ask)


async def let_go(db: Database, room: Room, what: Collection[str], *, before: date) -> None:
    """Dues of some kinds that were over before a day are kept no longer, in a transaction; but
    what was put off to that day or later.

    That is no change that calendars are told of.
    """
    await db.write_many(
        "UPDATE due SET gone = 1 WHERE room = ?1 AND what = ?2 AND gone = 0 AND to_day < ?3 "
        "AND (put_off IS NULL OR put_off < ?3 OR put_off = ?4)",
        [(room.id, kind, before.isoformat(), date.max.isoformat()) for kind in what],
    )


async def rooms_with_hours(db: Database) -> list[Room]:
    """The rooms, where the bot is, in which something with an hour of its own is to be said."""
    found = await db.rows(
        "SELECT DISTINCT room FROM due INDEXED BY due_by_hour "
        "WHERE hour IS NOT NULL AND gone = 0 AND told_on IS NULL"
    )
    ids = {row["room"] for row in found}
    return [room for room in await rooms.present(db) if room.id in ids] if ids else []


async def at_hours(db: Database, room: Room) -> list[Due]:
    """The dues with an hour of their own that were not said yet, soonest first."""
    rows = await db.rows(
        _SELECT + "WHERE due.room = ? AND gone = 0 AND hour IS NOT NULL AND told_on IS NULL "
        "ORDER BY ifnull(put_off, from_day), hour, due.id LIMIT 100",
        (room.id,),
    )
    return [_due(row) for row in rows]


async def put_off(db: Database, due: Due, until: date | None) -> None:
    """No digest names the due before a day, or it is as if never put off (None); inside a
    transaction.
    """
    day = until.isoformat() if until else None
    await db.write("UPDATE due SET put_off = ? WHERE id = ?", (day, due.id))


async def set_told(db: Database, dues: Sequence[Due], day: date) -> None:
    """The dues were named in the digest of a day; inside a transaction."""
    await db.write_many(
        "UPDATE due SET told_on = ? WHERE id = ?", [(day.isoformat(), due.id) for due in dues]
    )


def _said(due: Due) -> tuple[str | None, ...]:
    hour = f"{due.hour:%H:%M}" if due.hour else None
    return due.from_day.isoformat(), due.to_day.isoformat(), due.to_member, due.words, hour


def _has_changed(row: sqlite3.Row, due: Due) -> bool:
    kept = ("from_day", "to_day", "to_member", "words", "hour")
    return tuple(row[name] for name in kept) != _said(due)


def _due(row: sqlite3.Row) -> Due:
    return Due(
        bin=Bin(id=row["bin"], name=row["name"]) if row["bin"] else None,
        what=row["what"],
        from_day=date.fromisoformat(row["from_day"]),
        to_day=date.fromisoformat(row["to_day"]),
        occasion=row["occasion"],
        to_member=row["to_member"],
        words=row["words"],
        hour=to_hour(row["hour"]),
        id=row["id"],
        told_on=to_day(row["told_on"]),
        put_off_until=to_day(row["put_off"]),
    )
