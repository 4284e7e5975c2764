"""Which dues a digest or a reminder named, and in which of its lines."""

from collections.abc import Sequence

from storage import dues
from storage.book import Book
from storage.database import Database
from storage.rows import Due


async def put(db: Database, message: str, lines: Sequence[Sequence[Due]]) -> None:
    """A message (its `tx_id`) names these dues, line by line; inside a transaction."""
    await db.write_many(
        "INSERT OR IGNORE INTO naming (message, line, due) VALUES (?, ?, ?)",
        [(message, number, due.id) for number, line in enumerate(lines, 1) for due in line],
    )


async def named(book: Book, message: str, line: int | None) -> list[Due]:
    """The dues that a message named, or one line of it, and that are still open."""
    rows = await book.db.rows(
        "SELECT DISTINCT due FROM naming WHERE message = ?1 AND (?2 IS NULL OR line = ?2)",
        (message, line),
    )
    numbers = {row["due"] for row in rows}
    return [due for due in await dues.open_ones(book.db, book.room) if due.id in numbers]
