"""What bins are called: by their last renaming that stands, or as they were first called."""

from storage.book import Book

_LAST_NAME = """
SELECT bin.id, bin.name, bin.called, (SELECT words FROM entry
    WHERE entry.bin = bin.id AND act = 'rename' AND struck_at IS NULL
    ORDER BY root DESC LIMIT 1) AS wanted
FROM bin WHERE id IN (SELECT bin FROM entry WHERE room = ? AND act = 'rename')
"""


async def settle(book: Book) -> None:
    """Give every bin the name that its renamings leave it, inside a transaction.

    A name that another bin has by now is not given twice.
    """
    for row in await book.db.rows(_LAST_NAME, (book.room.id,)):
        first = row["called"] or row["name"]
        wanted = row["wanted"] or first
        if wanted == row["name"]:
            continue
        taken = await book.db.row(
            "SELECT 1 FROM bin WHERE room = ? AND key = ? AND id != ?",
            (book.room.id, wanted.casefold(), row["id"]),
        )
        if taken is None:
            await book.db.write(
                "UPDATE bin SET name = ?, key = ?, called = ? WHERE id = ?",
                (wanted, wanted.casefold(), first, row["id"]),
            )
