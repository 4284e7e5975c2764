"""Books as earlier programs left them: one of each schema that was shipped, as SQL text.

`python -m tests.storage.shipped` writes the one of the present schema: do so when it ships.
"""

import asyncio
import sqlite3
import sys
from contextlib import closing
from pathlib import Path
from tempfile import TemporaryDirectory

from storage import changes, links, rooms
from storage.database import Database
from storage.schema import VERSION
from tests.room import TalkingRoom

FOLDER = Path(__file__).parent / "books"


def dump(version: int) -> Path:
    """The text of the book with that schema."""
    return FOLDER / f"schema-{version}.sql"


def restored(version: int, book: Path) -> None:
    """Make the book anew as that program left it."""
    with closing(sqlite3.connect(book)) as made:
        made.executescript(dump(version).read_text(encoding="utf-8"))


async def season(db: Database) -> None:
    """A season in which every table gets rows, and every kind of row its like."""
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L, it's shared")
    await room.says("added 2 kg scraps, mostly meat, to the shed bin", event="$first")
    await room.says("added 1 kg scraps to the shed bin", who="bram", event="$second")
    await room.edits("$first", "added 3 kg scraps, mostly meat, to the shed bin")
    await room.deletes("$second", who="bram")
    await room.says("added 4 L of peelings to the yard bin", who="bram")
    await room.says("drained 300 ml from the shed bin")
    await room.says("white mould in the shed bin, 21 °C")
    await room.says("mixed 2 kg of bran")
    await room.says("bram takes the shed bin on Friday")
    await room.says("I'll take it", who="bram")
    await room.says("sealed the shed bin", who="bram")
    await room.waits(days=16)
    await room.says("buried the shed bin under the pear tree", who="bram")
    await room.says("added 2 kg scraps to the shed bin")
    await room.says("added 1 kg scraps", who="oda")  # to which bin?
    book = await room.book()
    async with db.transaction():
        await links.put(book, None, "the-group's-token", room.now)
        await changes.meet(book, "@mei:test", "Mei", present=False)
        await rooms.move(db, "terminal", "!later:test")


async def _write() -> None:
    with TemporaryDirectory() as folder:
        db = await Database.open(Path(folder) / "book.db")
        try:
            await season(db)
        finally:
            await db.close()
        with closing(sqlite3.connect(Path(folder) / "book.db")) as book:
            lines = [*book.iterdump(), f"PRAGMA user_version = {VERSION};"]
    dump(VERSION).write_text("\n".join(lines) + "\n", encoding="utf-8")
    sys.stdout.write(f"{dump(VERSION)}: {len(lines)} statements\n")


if __name__ == "__main__":
    asyncio.run(_write())
