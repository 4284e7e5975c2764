"""Where a book stands: the sync token, the end of a replayed log, the address of its pages."""

from datetime import datetime

from storage.database import Database
from storage.moments import from_ms, to_ms

SYNC_TOKEN = "sync_token"
PLAYED_UNTIL = "played_until"
ADDRESS = "address"


async def sync_token(db: Database) -> str | None:
    """The sync token up to which the inbox is complete."""
    return await _value(db, SYNC_TOKEN)


async def set_sync_token(db: Database, token: str) -> None:
    """The inbox is complete up to a token; inside a transaction."""
    await db.write("INSERT OR REPLACE INTO session VALUES (?, ?)", (SYNC_TOKEN, token))


async def played_until(db: Database) -> datetime | None:
    """The end of the log that a book was made from: its own present. None for a live book."""
    value = await _value(db, PLAYED_UNTIL)
    return from_ms(int(value)) if value else None


async def set_played_until(db: Database, moment: datetime) -> None:
    """The book was made from a log that ends at a moment."""
    async with db.transaction():
        await db.write(
            "INSERT OR REPLACE INTO session VALUES (?, ?)", (PLAYED_UNTIL, str(to_ms(moment)))
        )


async def address(db: Database) -> str | None:
    """The web address under which calendars and boards are served; None where none are."""
    return await _value(db, ADDRESS)


async def set_address(db: Database, url: str | None) -> None:
    """Calendars and boards are served under an address, or no longer."""
    async with db.transaction():
        if url is None:
            await db.write("DELETE FROM session WHERE what = ?", (ADDRESS,))
        else:
            await db.write("INSERT OR REPLACE INTO session VALUES (?, ?)", (ADDRESS, url))


async def _value(db: Database, what: str) -> str | None:
    row = await db.row("SELECT value FROM session WHERE what = ?", (what,))
    return str(row["value"]) if row else None
