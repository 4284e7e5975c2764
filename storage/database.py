"""The one way to SQLite: opening a book safely, one writer, all or nothing."""

import asyncio
import os
import sqlite3
from collections.abc import AsyncIterator, Awaitable, Callable, Coroutine, Hashable, Sequence
from contextlib import AbstractAsyncContextManager, asynccontextmanager
from functools import partial
from pathlib import Path
from typing import Any, TypeVar

import aiosqlite

from storage import backup
from storage.desk import Desk, Transaction, Values
from storage.errors import BookError, refusal
from storage.lock import Lock
from storage.migrations import migrate, refuse_foreign

PRAGMAS = (
    "PRAGMA journal_mode = WAL",
    "PRAGMA synchronous = FULL",  # an answer once given must survive a power cut
    "PRAGMA foreign_keys = ON",
    "PRAGMA busy_timeout = 60000",  # a backup tool, or somebody looking into it, soon lets go
    "PRAGMA trusted_schema = OFF",
    "PRAGMA secure_delete = ON",  # words that are not kept are not left on the disk either
    "PRAGMA temp_store = MEMORY",  # nor in a temporary file, which would be slower besides
)

MEMORY = ":memory:"

STATEMENTS_KEPT = 512
"""Statements that SQLite need not be told again: more than the program has."""

Result = TypeVar("Result")
Work = Callable[["Database"], Coroutine[Any, Any, Result]]
"""What is done to a book in one go."""


class Database:
    """An open book; use `open` and always `close` (its thread would keep the process alive)."""

    def __init__(
        self, connection: aiosqlite.Connection, desk: Desk, lock: Lock | None = None
    ) -> None:
        self._connection = connection
        self._desk = desk
        self._lock = lock
        self._writing = asyncio.Lock()

    @classmethod
    async def open(cls, path: Path | str, *, alone: bool = False) -> "Database":
        """Open or create the book at `path` (":memory:" for one that is not kept).

        `alone`: no other process may have it so until it is closed. A damaged book is refused.
        """
        lock = None
        try:
            if path != MEMORY:
                lock = await asyncio.to_thread(_ready, Path(path), alone)
            connection = await aiosqlite.connect(
                path, isolation_level=None, cached_statements=STATEMENTS_KEPT
            )
        except (sqlite3.OperationalError, OSError) as error:
            _free(lock)
            raise BookError(f"cannot open the book {path}: {error}") from error
        try:
            connection.row_factory = sqlite3.Row
            await refuse_foreign(connection, path)
            for pragma in PRAGMAS:
                await connection.execute_fetchall(pragma)
            await migrate(connection, None if path == MEMORY else Path(path))
        except sqlite3.DatabaseError as error:
            await connection.close()
            _free(lock)
            raise refusal(error, path) or BookError(
                f"{path} cannot be used as a book ({error}): "
                "nothing was changed; name another file or put back a backup"
            ) from error
        except BaseException:
            await connection.close()
            _free(lock)
            raise
        return cls(connection, Desk(connection._conn, path), lock)

    async def close(self) -> None:
        """Close the book and end its thread."""
        await self._connection.close()
        _free(self._lock)

    async def at_once(self, work: Work[Result], *, lasting: bool = True) -> Result:
        """Do all of `work` in one transaction, on the book's own thread.

        `work` is given the book as that thread sees it, where no question waits for the thread of
        the event loop. It may await nothing but what it asks of this book. What is not `lasting`
        survives the end of the process, and a power cut only once something later does.
        """
        async with self._writing:
            return await self._do(self._desk.at_once, lambda: work(AtTheDesk(self)), lasting)

    async def ask(self, work: Work[Result]) -> Result:
        """Like `at_once`, for work that changes nothing: a page to be made of many questions."""
        async with self._writing:
            return await self._do(self._desk.drive, lambda: work(AtTheDesk(self)))

    def transaction(self) -> AbstractAsyncContextManager[None]:
        """All writes inside are kept together, or none is: any exit but success rolls back."""
        return self._transaction()

    @asynccontextmanager
    async def _transaction(self) -> AsyncIterator[None]:
        async with self._writing:
            try:
                await self._do(self._desk.begin)
                yield
                await self._do(self._desk.commit)
            except BaseException:
                # Also when cancelled at the beginning, which then has begun all the same.
                await self._do(self._desk.roll_back)
                raise

    async def rows(self, sql: str, values: Values = ()) -> list[sqlite3.Row]:
        """All rows of a question."""
        return await self._do(self._desk.rows, sql, values)

    async def row(self, sql: str, values: Values = ()) -> sqlite3.Row | None:
        """The first row of a question, if any."""
        rows = await self.rows(sql, values)
        return rows[0] if rows else None

    async def known(
        self, room: Hashable, of: str, key: Hashable, ask: Callable[[], Awaitable[Result]]
    ) -> Result:
        """What `ask` gives of a room; in `at_once` it is asked once, until its grounds change.

        `of` names these: all that the answer depends on, as `recall.concerns` takes it.
        """
        return await ask()

    def note(self, room: Hashable, of: str, key: Hashable, answer: object) -> None:
        """What `known` would find now, after a change; only `at_once` remembers it."""

    async def write(
        self, sql: str, values: Values = (), *, room: int | None = None, part: str = ""
    ) -> int:
        """Carry out one change, inside a transaction; the id of a row inserted, 0 if none was.

        `room` and `part` say what alone of the table changes: nothing else is asked for anew.
        """
        return await self._do(partial(self._desk.write, sql, values, room=room, part=part))

    async def write_many(
        self, sql: str, many: Sequence[Values], *, room: int | None = None, part: str = ""
    ) -> None:
        """Carry out one change for each of many rows (of a room), inside a transaction."""
        if many:
            await self._do(partial(self._desk.write_many, sql, many, room=room, part=part))

    async def _do(self, step: Callable[..., Result], *given: Any) -> Result:
        """Take a step on the book's own thread; steps are taken in the order they were asked."""
        # aiosqlite names no public way to have its thread do more than one statement.
        result: Result = await self._connection._execute(step, *given)  # type: ignore[no-untyped-call]
        return result


class AtTheDesk(Database):
    """The book inside `at_once`: the same questions and changes, answered without a pause."""

    def __init__(self, book: Database) -> None:
        super().__init__(book._connection, book._desk)

    async def at_once(self, work: Work[Result], *, lasting: bool = True) -> Result:
        """Do all of `work`, or nothing of it; it lasts as the whole does."""
        async with self.transaction():
            return await work(self)

    async def ask(self, work: Work[Result]) -> Result:
        """Ask here and now."""
        return await work(self)

    def transaction(self) -> Transaction:
        """All writes inside are kept with the whole, or undone by themselves."""
        return self._desk.transaction()

    async def rows(self, sql: str, values: Values = ()) -> list[sqlite3.Row]:
        """All rows of a question."""
        return self._desk.rows(sql, values)

    async def row(self, sql: str, values: Values = ()) -> sqlite3.Row | None:
        """The first row of a question, if any."""
        rows = self._desk.rows(sql, values)
        return rows[0] if rows else None

    async def write(
        self, sql: str, values: Values = (), *, room: int | None = None, part: str = ""
    ) -> int:
        """Carry out one change; the id of a row inserted, 0 if none was."""
        return self._desk.write(sql, values, room=room, part=part)

    async def known(
        self, room: Hashable, of: str, key: Hashable, ask: Callable[[], Awaitable[Result]]
    ) -> Result:
        """What `ask` gave for the key before, or gives now."""
        kept = self._desk.known(room, of)
        if key not in kept:
            kept[key] = await ask()
        answer: Result = kept[key]
        return answer

    def note(self, room: Hashable, of: str, key: Hashable, answer: object) -> None:
        """Remember it in place of asking."""
        self._desk.known(room, of)[key] = answer

    async def _do(self, step: Callable[..., Result], *given: Any) -> Result:
        return step(*given)


def _ready(book: Path, alone: bool) -> Lock | None:
    """Make a new book its owner's only, and look through one that is there; its lock."""
    if book.is_dir():
        raise BookError(f"{book} is a folder: name the book in it")
    if good := backup.instead_of_none(book):
        raise BookError(backup.gone(book, good))
    if not book.exists():
        os.close(os.open(book, os.O_WRONLY | os.O_CREAT, 0o600))
    lock = Lock(book) if alone else None
    found = backup.faults(book)
    if found:
        _free(lock)
        good = backup.newest_good(book)
        cure = (
            f"move it away with its -wal and -shm files and put back its newest good backup, {good}"
            if good
            else "put back a backup, or name another file"
        )
        raise BookError(
            f"{book} cannot be used as a book ({found[0]}): nothing was changed; {cure}"
        )
    return lock


def _free(lock: Lock | None) -> None:
    if lock is not None:
        lock.close()
