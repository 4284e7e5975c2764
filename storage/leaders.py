"""Who has power in a room: its creators, and those whom it gives the level to change it."""

from collections.abc import Iterable
from typing import Literal

from storage.book import Book

EVERYBODY = "*"
"""Stands for a user id where everybody in the room has power."""

MadeBy = Literal["creation", "level"]


async def put(book: Book, users: Iterable[str], made_by: MadeBy) -> None:
    """These have power in the room by its creation or by their level, inside a transaction."""
    room = book.room.id
    await book.db.write("DELETE FROM leader WHERE room = ? AND made_by = ?", (room, made_by))
    await book.db.write_many(
        "INSERT OR IGNORE INTO leader (room, user, made_by) VALUES (?, ?, ?)",
        [(room, user, made_by) for user in users],
    )


async def leaders(book: Book) -> list[str]:
    """The names of those present who have power in the room, in the order they came."""
    rows = await book.db.rows(
        "SELECT name FROM member WHERE room = ?1 AND present AND user IS NOT NULL AND EXISTS "
        "(SELECT 1 FROM leader WHERE leader.room = ?1 AND leader.user IN (member.user, ?2)) "
        "ORDER BY id",
        (book.room.id, EVERYBODY),
    )
    return [row["name"] for row in rows]
