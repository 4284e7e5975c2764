"""The rooms the bot is in, and their settings."""

import json
import sqlite3
from collections.abc import Iterable, Sequence
from datetime import date, datetime, time

from storage.database import Database
from storage.moments import from_ms, to_day, to_ms
from storage.rows import Room, Units


async def join(db: Database, address: str, at: datetime, *, zone: str, units: Units) -> Room:
    """The room at an address, made or come back to, inside a transaction."""
    await db.write(
        "INSERT INTO room (address, joined_at, zone, units) VALUES (?, ?, ?, ?) "
        "ON CONFLICT (address) DO UPDATE SET left_at = NULL",
        (address, to_ms(at), zone, units),
    )
    room = await find(db, address)
    assert room is not None
    return room


async def was_left(db: Database, address: str) -> bool:
    """Whether the bot was in a room before, and is not now."""
    row = await db.row("SELECT left_at FROM room WHERE address = ?", (address,))
    return row is not None and row["left_at"] is not None


async def leave(db: Database, address: str, at: datetime) -> None:
    """The bot is no longer in the room; its book is kept."""
    async with db.transaction():
        await db.write("UPDATE room SET left_at = ? WHERE address = ?", (to_ms(at), address))


async def move(db: Database, old: str, new: str) -> Room | None:
    """A room was replaced by another: its book goes there, inside a transaction.

    None if there is no book to move, or if the new room has a record of its own already.
    """
    moving, there = await find(db, old), await find(db, new)
    if moving is None or (there and there.id == moving.id):
        return None
    if there and await db.row("SELECT 1 FROM entry WHERE room = ?", (there.id,)):
        return None
    # Who is in the new room is told by the new room alone.
    await db.write(
        "UPDATE member SET present = 0 WHERE room = ? AND user IS NOT NULL", (moving.id,)
    )
    await db.write("DELETE FROM leader WHERE room = ?", (moving.id,))
    if there:
        await _make_way(db, there, moving)
    await db.write("UPDATE room SET address = ?, left_at = NULL WHERE id = ?", (new, moving.id))
    await db.write("INSERT INTO former (address, room) VALUES (?, ?)", (old, moving.id))
    # It hangs in the old room, where it can no longer be changed.
    await db.write("DELETE FROM notice_board WHERE room = ?", (moving.id,))
    return await find(db, new)


async def _make_way(db: Database, there: Room, moving: Room) -> None:
    """The new room was met before it was known whose it is: only its members are kept of it."""
    await db.write(
        "UPDATE member SET present = 1 WHERE room = ? AND user IN "
        "(SELECT user FROM member WHERE room = ? AND present)",
        (moving.id, there.id),
    )
    await db.write(
        "UPDATE member SET room = ?1 WHERE room = ?2 AND user NOT IN "
        "(SELECT user FROM member WHERE room = ?1 AND user IS NOT NULL)",
        (moving.id, there.id),
    )
    await db.write("UPDATE leader SET room = ? WHERE room = ?", (moving.id, there.id))
    for delete in (
        "DELETE FROM outbox WHERE room = ?",
        "DELETE FROM question WHERE room = ?",
        "DELETE FROM link WHERE room = ?",
        "DELETE FROM member WHERE room = ?",
        "DELETE FROM bin WHERE room = ?",
        "DELETE FROM room WHERE id = ?",
    ):
        await db.write(delete, (there.id,))


async def find(db: Database, address: str) -> Room | None:
    """The room at an address, also at one that it had before an upgrade."""

    async def ask() -> Room | None:
        row = await db.row(
            "SELECT * FROM room "
            "WHERE address = ?1 OR id = (SELECT room FROM former WHERE address = ?1)",
            (address,),
        )
        return _room(row) if row else None

    return await db.known(address, "room former", "room", ask)


async def addresses(db: Database, address: str) -> Sequence[str]:
    """The address of a room, and those that it had before."""

    async def ask() -> Sequence[str]:
        rows = await db.rows("SELECT before FROM renamed WHERE address = ?", (address,))
        return [address, *(row["before"] for row in rows)]

    return await db.known(address, "room former", "addresses", ask)


async def renamed(db: Database) -> dict[str, str]:
    """The addresses of rooms by those that they had before an upgrade."""

    async def ask() -> dict[str, str]:
        rows = await db.rows("SELECT before, address FROM renamed")
        return {row["before"]: row["address"] for row in rows}

    return await db.known(None, "room former", "renamed", ask)


async def present(db: Database) -> list[Room]:
    """The rooms the bot is in."""
    return [_room(row) for row in await db.rows("SELECT * FROM room WHERE left_at IS NULL")]


async def alike(db: Database) -> list[tuple[Room, list[str]]]:
    """One of the rooms the bot is in for all with the same hours, and the addresses of them all.

    The same are zone, hour of the digest, quiet hours, whether it is told and when it last was.
    """
    rows = await db.rows(
        "SELECT *, json_group_array(address) AS addresses FROM room WHERE left_at IS NULL "
        "GROUP BY zone, digest_at, quiet_from, quiet_to, reminds, told_on"
    )
    return [(_room(row), json.loads(row["addresses"])) for row in rows]


async def every(db: Database) -> list[Room]:
    """All rooms the book knows."""
    return [_room(row) for row in await db.rows("SELECT * FROM room ORDER BY id")]


async def set_zone(db: Database, room: Room, zone: str) -> None:
    """Change the group's zone, inside a transaction."""
    await db.write("UPDATE room SET zone = ? WHERE id = ?", (zone, room.id))


async def set_units(db: Database, room: Room, units: str) -> None:
    """Change the group's units, inside a transaction."""
    await db.write("UPDATE room SET units = ? WHERE id = ?", (units, room.id))


async def set_habit(db: Database, room: Room, habit: str) -> None:
    """Change the group's dosing habit, inside a transaction."""
    await db.write("UPDATE room SET habit = ? WHERE id = ?", (habit, room.id))


async def set_choice(db: Database, room: Room, name: str, value: float | str) -> None:
    """Keep a figure that the group chose itself, inside a transaction."""
    await _choose(db, room, name, value)


async def _choose(db: Database, room: Room, name: str, value: float | str) -> None:
    await db.write(
        "UPDATE room SET choices = json_set(choices, '$.' || ?, ?) WHERE id = ?",
        (name, value, room.id),
    )


async def set_quiet_days(db: Database, room: Room, days: str) -> None:
    """Change the days of the week without digests, as figures ("56"), inside a transaction."""
    await _choose(db, room, _QUIET_DAYS, days)


_QUIET_DAYS = "quiet_days"
"""Kept among the choices of the group, and none of the craft, as is the bot's own name."""


async def set_own_name(db: Database, room: Room, name: str) -> None:
    """The bot shows another name in the room, inside a transaction."""
    await _choose(db, room, _OWN_NAME, name)


_OWN_NAME = "own_name"


async def set_digest_at(db: Database, room: Room, at: time) -> None:
    """Change the local hour of the group's digest, inside a transaction."""
    await db.write("UPDATE room SET digest_at = ? WHERE id = ?", (f"{at:%H:%M}", room.id))


async def set_quiet(db: Database, room: Room, start: time, end: time) -> None:
    """Change the group's quiet hours, inside a transaction."""
    await db.write(
        "UPDATE room SET quiet_from = ?, quiet_to = ? WHERE id = ?",
        (f"{start:%H:%M}", f"{end:%H:%M}", room.id),
    )


async def set_reminds(db: Database, room: Room, reminds: bool) -> None:
    """Switch the group's digests on or off, inside a transaction."""
    await db.write("UPDATE room SET reminds = ? WHERE id = ?", (int(reminds), room.id))


async def set_reserved(db: Database, room: Room, reserved: Iterable[str]) -> None:
    """Change what only those with power in the room may do, inside a transaction."""
    await db.write(
        "UPDATE room SET reserved = ? WHERE id = ?", (json.dumps(sorted(reserved)), room.id)
    )


async def set_told(db: Database, room: Room, day: date) -> None:
    """The digest of a day was made, or there was nothing to say; inside a transaction."""
    await db.write("UPDATE room SET told_on = ? WHERE id = ?", (day.isoformat(), room.id))


def _room(row: sqlite3.Row) -> Room:
    choices = json.loads(row["choices"])
    quiet_days = frozenset(map(int, choices.pop(_QUIET_DAYS, "")))
    own_name = choices.pop(_OWN_NAME, "")
    return Room(
        id=row["id"],
        address=row["address"],
        joined_at=from_ms(row["joined_at"]),
        zone=row["zone"],
        units=row["units"],
        habit=row["habit"],
        choices=choices,
        digest_at=time.fromisoformat(row["digest_at"]),
        quiet_from=time.fromisoformat(row["quiet_from"]),
        quiet_to=time.fromisoformat(row["quiet_to"]),
        quiet_days=quiet_days,
        reminds=bool(row["reminds"]),
        told_on=to_day(row["told_on"]),
        reserved=frozenset(json.loads(row["reserved"])),
        own_name=own_name,
    )
