"""The one way to SQLite: opening a book safely, one writer, all or nothing."""

import asyncio
import sqlite3
from collections.abc import AsyncIterator, Sequence
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Any

import aiosqlite

from storage.errors import BookError
from storage.migrations import migrate

PRAGMAS = (
    "PRAGMA journal_mode = WAL",
    "PRAGMA synchronous = FULL",  # an answer once given must survive a power cut
    "PRAGMA foreign_keys = ON",
    "PRAGMA busy_timeout = 5000",
    "PRAGMA trusted_schema = OFF",
)

Values = Sequence[Any]


class Database:
    """An open book; use `open` and always `close` (its thread would keep the process alive)."""

    def __init__(self, connection: aiosqlite.Connection) -> None:
        self._connection = connection
        self._writing = asyncio.Lock()

    @classmethod
    async def open(cls, path: Path | str) -> "Database":
        """Open or create the book at `path` (":memory:" for one that is not kept)."""
        try:
            connection = await aiosqlite.connect(path, isolation_level=None)
        except sqlite3.OperationalError as error:
            raise BookError(f"cannot open the book {path}: {error}") from error
        try:
            connection.row_factory = sqlite3.Row
            for pragma in PRAGMAS:
                await connection.execute_fetchall(pragma)
            await migrate(connection)
        except sqlite3.DatabaseError as error:
            await connection.close()
            raise BookError(
                f"{path} cannot be used as a book ({error}): "
                "nothing was changed; name another file or put back a backup"
            ) from error
        except BaseException:
            await connection.close()
            raise
        return cls(connection)

    async def close(self) -> None:
        """Close the book and end its thread."""
        await self._connection.close()

    @property
    def changes(self) -> int:
        """How many rows were written since the book was opened: the same, nothing has changed."""
        return self._connection.total_changes

    @asynccontextmanager
    async def transaction(self) -> AsyncIterator[None]:
        """All writes inside are kept together, or none is: any exit but success rolls back."""
        async with self._writing:
            await self._connection.execute_fetchall("BEGIN IMMEDIATE")
            try:
                yield
                await self._connection.execute_fetchall("COMMIT")
            except BaseException:
                await self._connection.rollback()
                raise

    async def rows(self, sql: str, values: Values = ()) -> list[sqlite3.Row]:
        """All rows of a question."""
        return list(await self._connection.execute_fetchall(sql, values))

    async def row(self, sql: str, values: Values = ()) -> sqlite3.Row | None:
        """The first row of a question, if any."""
        rows = await self.rows(sql, values)
        return rows[0] if rows else None

    async def write(self, sql: str, values: Values = ()) -> int:
        """Carry out one change, inside a transaction; the id of a row inserted."""
        async with self._connection.execute(sql, values) as cursor:
            return cursor.lastrowid or 0

    async def write_many(self, sql: str, many: Sequence[Values]) -> None:
        """Carry out one change for each of many rows, inside a transaction."""
        await self._connection.executemany(sql, many)
