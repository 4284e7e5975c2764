"""What was said of who keeps a bin, in the order it was first said."""

import json
from datetime import date, datetime

from storage.book import Book
from storage.lines import LINES
from storage.moments import from_ms, to_day, to_ms
from storage.rows import Bin, Entry, Member

# What stands in for an entry has its place (`root`), so that a slip put right changes no order.
# "+root": who left and came back is found among the few who did, not among all entries since.
_SAID = (
    f"{LINES}WHERE bin = ?1 AND struck_at IS NULL AND act IN ('open', 'offer', "
    "'accept', 'decline', 'withdraw', 'retire') AND root >= ?2 UNION ALL "
    f"{LINES}WHERE room = ?3 AND act IN ('leave', 'return') AND struck_at IS NULL "
    "AND +root >= ?2 ORDER BY root, id"
)
OF_CUSTODY = "bin member entry:open,offer,accept,decline,withdraw,retire,leave,return"
"""What the custody of a bin follows from, but for the deeds by which its use began."""
_FIRST_DEED = LINES + (  # noqa: S608 — both are ours
    "WHERE bin = ? AND root > ? AND member IS NOT NULL "
    "AND act IN (SELECT value FROM json_each(?)) AND struck_at IS NULL "
    "ORDER BY run, root LIMIT 1"
)
_LAST_TAKEN = (
    "SELECT max(root) AS root, max(on_day) AS day FROM entry WHERE bin = ? AND act = 'accept' "
    "AND on_day <= ? AND days = 0 AND struck_at IS NULL"
)


async def said_since_taken(book: Book, bin: Bin, day: date) -> list[Entry]:
    """What was said since a bin was last taken at once, by a day: nothing before it matters."""
    if not book.is_whole:
        return await said(book, bin)

    root, last = await _last_taken(book, bin, date.max)
    if last > day:
        root, _ = await _last_taken(book, bin, day)
    return await _said_since(book, bin, root)


async def _last_taken(book: Book, bin: Bin, until: date) -> tuple[int, date]:
    """The last entry (its root; 0: none) by which a bin was taken at once, and its last day."""

    async def ask() -> tuple[int, date]:
        taken = await book.db.row(_LAST_TAKEN, (bin.id, until.isoformat()))
        root = (taken and taken["root"]) or 0
        return root, to_day(taken["day"] if taken else None) or date.min

    return await book.known("entry:accept", ("taken", bin.id, until), ask)


async def said(book: Book, bin: Bin) -> list[Entry]:
    """All that was said of who keeps a bin: opened, offered, taken; and who left the room."""
    return await _said_since(book, bin, 0)


async def _said_since(book: Book, bin: Bin, root: int) -> list[Entry]:
    async def ask() -> list[Entry]:
        return await Book(book.db, book.room).told(_SAID, (bin.id, root, book.room.id))

    told = await book.known(OF_CUSTODY, ("said", bin.id, root), ask)
    return told if book.is_whole else [entry for entry in told if entry.id not in book.aside]


async def first_deed(book: Book, bin: Bin, after: int) -> Entry | None:
    """The entry by which the use of a bin began, or began again once it was retired (`after`)."""
    begins = ("open", "layer") if after else ("open", "layer", "drain", "seal", "bury", "observe")

    async def ask() -> Entry | None:
        found = await book.told(_FIRST_DEED, (bin.id, after, json.dumps(begins)))
        return found[0] if found else None

    key = "first deed", bin.id, after, book.aside
    first = await book.known("bin member entry:rewritten", key, ask)
    if first and first.run == 1:
        return first  # nothing that is only added comes before it
    return await book.known(f"bin member entry:{','.join(begins)}", key, ask)


LATELY = 300
"""Of so many things said in a room the last of one user is looked for."""


async def last_heard(book: Book, member: Member) -> datetime | None:
    """When a member last said anything in the room of late, or wrote anything down."""
    row = await book.db.row(
        "SELECT max(at) AS at FROM (SELECT at, sender FROM inbox WHERE room = ? "
        "AND kind = 'said' ORDER BY id DESC LIMIT ?) WHERE sender = ?",
        (book.room.address, LATELY, member.user),
    )
    last = await book.last_by(member.name)
    heard = [from_ms(row["at"])] if row and row["at"] else []
    return max([*heard, *([last.written_at] if last else [])], default=None)


async def is_anything_asked(book: Book, since: datetime) -> bool:
    """Whether a bin or a turn may wait for somebody to take it; what is older has lapsed."""

    async def ask() -> int:
        # Until when what is asked may be taken: what nobody asks for themselves has no end.
        row = await book.db.row(
            "SELECT max(iif(member IS NULL, 1 << 62, said_at)) AS latest FROM entry AS asked "
            "WHERE room = ? AND act IN ('offer', 'swap') AND struck_at IS NULL AND NOT EXISTS "
            "(SELECT 1 FROM entry AS done WHERE done.bin = asked.bin AND done.struck_at IS NULL "
            "AND done.act IN ('accept', 'withdraw', 'swapped', 'retire') "
            "AND done.root > asked.root)",
            (book.room.id,),
        )
        return (row and row["latest"]) or 0

    of = "entry:offer,swap,accept,withdraw,swapped,retire"
    return await book.known(of, "asked", ask) >= to_ms(since)


async def is_anything_taken(book: Book, since: datetime) -> bool:
    """Whether somebody has agreed to take a bin since a moment."""

    async def ask() -> int:
        row = await book.db.row(
            "SELECT max(said_at) AS latest FROM entry WHERE room = ? AND act = 'accept' "
            "AND struck_at IS NULL",
            (book.room.id,),
        )
        return (row and row["latest"]) or 0

    return await book.known("entry:accept", "taken lately", ask) >= to_ms(since)


async def just_taken(book: Book, member: str, first: date, last: date) -> str | None:
    """The name of the bin that a member took over between two days, the latest one."""

    async def latest() -> date:
        row = await book.db.row(
            "SELECT max(on_day) AS day FROM entry WHERE room = ?1 AND act = 'accept' AND member = "
            "(SELECT id FROM member WHERE room = ?1 AND name = ?2) AND struck_at IS NULL",
            (book.room.id, member),
        )
        return to_day(row["day"] if row else None) or date.min

    of = "bin member entry:accept"
    if await book.known(of, ("last took", member), latest) < first:
        return None

    async def ask() -> str | None:
        row = await book.db.row(
            "SELECT bin_name FROM line WHERE room = ?1 AND act = 'accept' AND member = "
            "(SELECT id FROM member WHERE room = ?1 AND name = ?2) AND on_day BETWEEN ?3 AND ?4 "
            "AND struck_at IS NULL ORDER BY on_day DESC, id DESC LIMIT 1",
            (book.room.id, member, first.isoformat(), last.isoformat()),
        )
        return str(row["bin_name"]) if row else None

    key = "just taken", member, first, last
    return await book.known(of, key, ask)
