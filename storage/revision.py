"""Whether anything that a group's pages show has changed."""

from storage.database import Database
from storage.rows import Room

Revision = tuple[object, ...]
"""Two that are equal were taken of the same book; nothing else can be read from it."""

_QUESTIONS = (
    "SELECT zone, units, digest_at FROM room WHERE id = ?",
    "SELECT group_concat(id || name || present) FROM member WHERE room = ?",
    "SELECT count(*), max(struck_at) FROM entry WHERE room = ? AND struck_by IS NOT NULL",
    "SELECT count(*), sum(sequence), max(changed_at), sum(julianday(put_off)), "
    "count(told_on), max(told_on) FROM due "
    "WHERE room = ? AND gone = 0",
)


async def revision(db: Database, room: Room) -> Revision:
    """The present state of all that the pages of a room are made from."""
    # Of all rooms, since the last of all is found without looking at any other.
    rows = [await db.row("SELECT max(id) FROM entry")]
    rows += [await db.row(question, (room.id,)) for question in _QUESTIONS]
    return tuple(tuple(row) if row else () for row in rows)
