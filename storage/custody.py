"""What was said of who keeps a bin, in the order it was first said."""

import json
from datetime import date, datetime

from storage.book import LINES, Book
from storage.moments import from_ms, to_ms
from storage.rows import Bin, Entry

# What stands in for an entry has its place (`root`), so that a slip put right changes no order.
_SAID = (
    f"{LINES}WHERE bin = ?1 AND struck_at IS NULL AND act IN ('open', 'offer', "
    "'accept', 'decline', 'withdraw', 'retire') AND root >= ?2 UNION ALL "
    f"{LINES}WHERE room = ?3 AND act IN ('leave', 'return') AND struck_at IS NULL "
    "AND root >= ?2 ORDER BY root, id"
)
_FIRST_DEED = LINES + (  # noqa: S608 — both are ours
    "WHERE bin = ? AND root > ? AND member IS NOT NULL "
    "AND act IN (SELECT value FROM json_each(?)) AND struck_at IS NULL "
    "ORDER BY run, root LIMIT 1"
)
_LAST_TAKEN = (
    "SELECT max(root) AS root FROM entry WHERE bin = ? AND act = 'accept' AND on_day <= ? "
    "AND days = 0 AND struck_at IS NULL"
)


async def said_since_taken(book: Book, bin: Bin, day: date) -> list[Entry]:
    """What was said since a bin was last taken at once, by a day: nothing before it matters."""
    if not book.is_whole:
        return await said(book, bin)
    taken = await book.db.row(_LAST_TAKEN, (bin.id, day.isoformat()))
    return await book.told(_SAID, (bin.id, (taken and taken["root"]) or 0, book.room.id))


async def said(book: Book, bin: Bin) -> list[Entry]:
    """All that was said of who keeps a bin: opened, offered, taken; and who left the room."""
    return await book.told(_SAID, (bin.id, 0, book.room.id))


async def first_deed(book: Book, bin: Bin, after: int) -> Entry | None:
    """The entry by which the use of a bin began, or began again once it was retired (`after`)."""
    begins = ("open", "layer") if after else ("open", "layer", "drain", "seal", "bury", "observe")
    found = await book.told(
        _FIRST_DEED,
        (bin.id, after, json.dumps(begins)),
    )
    return found[0] if found else None


async def last_heard(book: Book, user: str) -> datetime | None:
    """When a user last said or marked anything in the room."""
    row = await book.db.row(
        "SELECT at FROM inbox WHERE room = ? AND sender = ? "
        "AND kind IN ('said', 'edited', 'reacted') ORDER BY id DESC LIMIT 1",
        (book.room.address, user),
    )
    return from_ms(row["at"]) if row else None


async def is_anything_asked(book: Book, since: datetime) -> bool:
    """Whether a bin or a turn may wait for somebody to take it; what is older has lapsed."""
    row = await book.db.row(
        "SELECT 1 FROM entry AS asked WHERE room = ? AND act IN ('offer', 'swap') "
        "AND struck_at IS NULL AND (said_at >= ? OR member IS NULL) AND NOT EXISTS "
        "(SELECT 1 FROM entry AS done WHERE done.bin = asked.bin AND done.struck_at IS NULL "
        "AND done.act IN ('accept', 'withdraw', 'swapped', 'retire') AND done.root > asked.root)",
        (book.room.id, to_ms(since)),
    )
    return row is not None


async def just_taken(book: Book, member: str, first: date, last: date) -> str | None:
    """The name of the bin that a member took over between two days, the latest one."""
    row = await book.db.row(
        "SELECT bin_name FROM line WHERE room = ?1 AND act = 'accept' AND member = "
        "(SELECT id FROM member WHERE room = ?1 AND name = ?2) AND on_day BETWEEN ?3 AND ?4 "
        "AND struck_at IS NULL ORDER BY on_day DESC, id DESC LIMIT 1",
        (book.room.id, member, first.isoformat(), last.isoformat()),
    )
    return str(row["bin_name"]) if row else None
