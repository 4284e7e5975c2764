"""What was said of the group's rotas, and which absences were known when."""

from datetime import date, datetime
from typing import NamedTuple

from storage.absences import absences
from storage.book import Book
from storage.lines import LINES
from storage.moments import from_ms
from storage.rows import Absence, Entry

_SAID = (
    f"{LINES}WHERE room = ?1 "
    "AND act IN ('rota', 'join', 'quit', 'over', 'swap', 'swapped') AND struck_at IS NULL "
    f"UNION ALL {LINES}WHERE room = ?1 AND act IN ('leave', 'return') "
    "AND struck_at IS NULL ORDER BY root, id"
)

_OF_TURNS = "bin member entry:rota,join,quit,over,swap,swapped,leave,return"


class Known(NamedTuple):
    """An absence, and when it was told."""

    absence: Absence
    told_at: datetime


async def said(book: Book) -> list[Entry]:
    """What stands of all rotas and of who left the room, in the order it was first said."""

    async def ask() -> list[Entry]:
        return await book.told(_SAID, (book.room.id,))

    return await book.known(_OF_TURNS, ("turns", book.aside), ask)


async def known_absences(book: Book, first: date) -> list[Known]:
    """The absences that end on a day or later, with when they were told."""
    found = await absences(book, first, date.max)
    rows = await book.db.rows(
        "SELECT id, said_at FROM entry WHERE room = ? AND act = 'away' AND struck_at IS NULL",
        (book.room.id,),
    )
    told = {row["id"]: from_ms(row["said_at"]) for row in rows}
    return [Known(one, told[one.entry]) for one in found]
