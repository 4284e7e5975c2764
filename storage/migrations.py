"""From any earlier schema to the present one: ordered steps, each committed with its number."""

from collections.abc import Sequence

import aiosqlite

from storage.errors import BookError
from storage.schema import SCHEMA, VERSION

STEPS: Sequence[str] = (SCHEMA,)
"""Step n brings a book from version n to n + 1; `PRAGMA user_version` holds the version."""


async def migrate(connection: aiosqlite.Connection) -> None:
    """Bring the book up to VERSION; BookError if a newer program wrote it."""
    version = await _version(connection)
    if version > VERSION:
        raise BookError(
            f"this book was written by a newer Pailkeeper (schema {version}, this one knows "
            f"{VERSION}): update the program, nothing was changed"
        )
    for step in range(version, VERSION):
        await connection.executescript(
            f"BEGIN IMMEDIATE; {STEPS[step]}; PRAGMA user_version = {step + 1}; COMMIT;"
        )


async def _version(connection: aiosqlite.Connection) -> int:
    rows = list(await connection.execute_fetchall("PRAGMA user_version"))
    return int(rows[0][0])
