"""From any earlier schema to the present one: ordered steps, each committed with its number."""

import asyncio
from collections.abc import Sequence
from pathlib import Path

import aiosqlite

from storage import backup
from storage.errors import BookError
from storage.schema import SCHEMA, VERSION

ABSENCES = """
-- The last local day of what lasts: of an absence ('away'); NULL: until the member is back.
ALTER TABLE entry ADD COLUMN until_day TEXT;
CREATE INDEX entry_away ON entry (room) WHERE act = 'away';
CREATE INDEX entry_back ON entry (member) WHERE act = 'back';
"""

COMMUNAL = """
ALTER TABLE entry ADD COLUMN words TEXT;    -- a bin's new name, its condition, a rota's duty
ALTER TABLE entry ADD COLUMN days INTEGER;  -- how long each turn of a rota lasts
CREATE INDEX entry_turns ON entry (room)
    WHERE act IN ('rota', 'join', 'quit', 'over', 'swap', 'swapped');
CREATE INDEX entry_renamed ON entry (room) WHERE act = 'rename';

-- The name that a bin was first called by; NULL: the one it has.
ALTER TABLE bin ADD COLUMN called TEXT;

-- What only those with power in the room may do (JSON); all else is for everybody.
ALTER TABLE room ADD COLUMN reserved TEXT NOT NULL DEFAULT '[]';

-- Those with power in a room; '*': everybody.
CREATE TABLE leader (
    room        INTEGER NOT NULL REFERENCES room,
    user        TEXT NOT NULL,              -- Matrix user id
    made_by     TEXT NOT NULL CHECK (made_by IN ('creation', 'level')),
    UNIQUE (room, user, made_by)
) STRICT;
"""

STEPS: Sequence[str] = (SCHEMA, ABSENCES, COMMUNAL)
"""Step n brings a book from version n to n + 1; `PRAGMA user_version` holds the version."""


async def migrate(connection: aiosqlite.Connection, book: Path | None) -> None:
    """Bring the book up to VERSION, after a backup of it; BookError if a newer program wrote it."""
    version = await _version(connection)
    if version > VERSION:
        raise BookError(
            f"this book was written by a newer Pailkeeper (schema {version}, this one knows "
            f"{VERSION}): update the program, nothing was changed"
        )
    if book is not None and 0 < version < VERSION:
        await asyncio.to_thread(backup.before_migration, book, version)
    for step in range(version, VERSION):
        await connection.executescript(
            f"BEGIN IMMEDIATE; {STEPS[step]}; PRAGMA user_version = {step + 1}; COMMIT;"
        )


async def refuse_foreign(connection: aiosqlite.Connection, path: Path | str) -> None:
    """BookError for a database that another program made: ours would write into it."""
    if await _version(connection) == 0 and list(
        await connection.execute_fetchall("SELECT 1 FROM sqlite_master LIMIT 1")
    ):
        raise BookError(
            f"{path} is the database of another program: nothing was changed; name another file"
        )


async def _version(connection: aiosqlite.Connection) -> int:
    rows = list(await connection.execute_fetchall("PRAGMA user_version"))
    return int(rows[0][0])
