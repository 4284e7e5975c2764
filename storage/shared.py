"""What stands in the CalDAV calendar of a room, as it was last put there."""

from collections.abc import Iterable, Mapping

from storage.database import Database
from storage.rows import Room


async def known(db: Database, room: Room) -> dict[str, str]:
    """The fingerprint of each event, by its UID."""
    rows = await db.rows("SELECT uid, fingerprint FROM caldav WHERE room = ?", (room.id,))
    return {row["uid"]: row["fingerprint"] for row in rows}


async def note(db: Database, room: Room, put: Mapping[str, str], gone: Iterable[str]) -> None:
    """These events were put there, and those taken out; a transaction of its own."""
    async with db.transaction():
        await db.write_many(
            "INSERT INTO caldav (room, uid, fingerprint) VALUES (?, ?, ?) "
            "ON CONFLICT DO UPDATE SET fingerprint = excluded.fingerprint",
            [(room.id, uid, fingerprint) for uid, fingerprint in put.items()],
        )
        await db.write_many(
            "DELETE FROM caldav WHERE room = ? AND uid = ?", [(room.id, uid) for uid in gone]
        )
