"""The secret parts of the addresses under which a group's calendar can be read."""

import hmac
from dataclasses import dataclass
from datetime import datetime

from storage import rooms
from storage.book import Book
from storage.database import Database
from storage.moments import to_ms
from storage.rows import Room


@dataclass(frozen=True, slots=True, kw_only=True)
class Link:
    """What an address opens: a room's calendar, or that of one member in it."""

    room: Room
    member: str | None


async def token(book: Book, member: str | None) -> str | None:
    """The token that opens the calendar of the group, or of a member; None before one was made."""
    row = await book.db.row(
        "SELECT token FROM link LEFT JOIN member ON member.id = link.member "
        "WHERE link.room = ? AND member.name IS ?",
        (book.room.id, member),
    )
    return str(row["token"]) if row else None


async def put(book: Book, member: str | None, token: str, at: datetime) -> None:
    """Make a token the only one that opens this calendar, inside a transaction."""
    row = await book.db.row(
        "SELECT id FROM member WHERE room = ? AND name = ? ORDER BY present DESC, id",
        (book.room.id, member),
    )
    number = row["id"] if row else None
    await book.db.write("DELETE FROM link WHERE room = ? AND member IS ?", (book.room.id, number))
    await book.db.write(
        "INSERT INTO link (room, member, token, made_at) VALUES (?, ?, ?, ?)",
        (book.room.id, number, token, to_ms(at)),
    )


async def opened_by(db: Database, token: str) -> Link | None:
    """What a token opens; every known one is compared, each in the same time."""
    rows = await db.rows(
        "SELECT link.token, room.address, member.name FROM link JOIN room ON room.id = link.room "
        "LEFT JOIN member ON member.id = link.member "
        "WHERE room.left_at IS NULL AND (member.id IS NULL OR member.present)"
    )
    found = None
    for row in rows:
        if hmac.compare_digest(row["token"].encode(), token.encode()):
            found = row
    room = await rooms.find(db, found["address"]) if found else None
    return Link(room=room, member=found["name"]) if found and room else None
