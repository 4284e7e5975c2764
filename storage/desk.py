"""SQLite on the thread that a book belongs to: statement after statement, nothing waits."""

import re
import sqlite3
from collections.abc import Callable, Coroutine, Hashable, Sequence
from contextlib import AbstractAsyncContextManager, AbstractContextManager
from functools import lru_cache
from typing import Any, NoReturn, TypeVar

from storage.errors import StorageRefused, refusal
from storage.recall import Recall

Values = Sequence[Any]
Result = TypeVar("Result")


_CHANGE = re.compile(r"(?:INSERT (?:OR \w+ )?INTO|UPDATE|DELETE FROM)\s+(\w+)")


@lru_cache(maxsize=500)
def _changed_by(sql: str) -> str:
    """The table that a statement changes; empty for one that changes none."""
    found = _CHANGE.match(sql)
    return found[1] if found else ""


class Desk:
    """Where a book lies open; whatever is asked here is answered before anything else is."""

    def __init__(self, connection: sqlite3.Connection, path: object) -> None:
        self._connection = connection
        self._path = path
        self._depth = 0
        self._changes_before = 0
        self._recall = Recall()
        self._version = 0

    def rows(self, sql: str, values: Values = ()) -> list[sqlite3.Row]:
        """All rows of a question."""
        try:
            return self._connection.execute(sql, values).fetchall()
        except sqlite3.Error as error:
            self._refuse(error)

    def write(
        self, sql: str, values: Values = (), *, room: int | None = None, part: str = ""
    ) -> int:
        """Carry out one change; the id of a row inserted, 0 if none was."""
        self._recall.forget(_changed_by(sql), room, part)
        try:
            done = self._connection.execute(sql, values)
            return (done.rowcount and done.lastrowid) or 0
        except sqlite3.Error as error:
            self._refuse(error)

    def write_many(
        self, sql: str, many: Sequence[Values], *, room: int | None = None, part: str = ""
    ) -> None:
        """Carry out one change for each of many rows, all of one room if it is given."""
        self._recall.forget(_changed_by(sql), room, part)
        try:
            self._connection.executemany(sql, many)
        except sqlite3.Error as error:
            self._refuse(error)

    def known(self, room: Hashable, of: str) -> dict[Hashable, Any]:
        """What was found out of a room, and stays so while nothing in `of` changes."""
        return self._recall.of(room, of)

    def _look_round(self) -> None:
        """Remember nothing if others have written in the book since it was last looked at."""
        (version,) = self._connection.execute("PRAGMA data_version").fetchone()
        if version != self._version:
            self._recall.clear()
            self._version = version

    def begin(self) -> None:
        """Begin a transaction, or a part of the one that is going on."""
        if self._depth and not self._connection.in_transaction:
            raise StorageRefused(f"an error undid what was being written in the book {self._path}")
        self._do(f"SAVEPOINT part_{self._depth}" if self._depth else "BEGIN IMMEDIATE")
        if not self._depth:
            self._changes_before = self._connection.total_changes
            self._look_round()
        self._depth += 1

    def commit(self) -> None:
        """Keep what was begun last: for good, or with the transaction that it is a part of."""
        outer = self._depth - 1
        if outer:
            self._do(f"RELEASE part_{outer}")
        elif self._connection.total_changes > self._changes_before:
            self._do("COMMIT")
        else:
            self._connection.rollback()  # there is nothing to bring to the disk
        self._depth = outer

    def roll_back(self) -> None:
        """Undo what was begun last, if anything was."""
        self._recall.clear()
        self._depth = max(self._depth - 1, 0)
        if self._depth == 0:
            self._connection.rollback()
        elif self._connection.in_transaction:  # some errors have already undone all of it
            self._do(f"ROLLBACK TO part_{self._depth}")
            self._do(f"RELEASE part_{self._depth}")

    def _do(self, sql: str) -> None:
        try:
            self._connection.execute(sql)
        except sqlite3.Error as error:
            self._refuse(error)

    def transaction(self) -> "Transaction":
        """All writes inside are kept together, or none is."""
        return Transaction(self)

    def at_once(
        self, work: Callable[[], Coroutine[Any, Any, Result]], lasting: bool = True
    ) -> Result:
        """Do all of `work` in one transaction; it must not wait for anything outside the book."""
        if not lasting:
            self._connection.execute("PRAGMA synchronous = NORMAL")
        try:
            with self.transaction():
                return self.drive(work)
        finally:
            if not lasting:
                self._connection.execute("PRAGMA synchronous = FULL")

    def drive(self, work: Callable[[], Coroutine[Any, Any, Result]]) -> Result:
        """The result of work that never waits, without an event loop."""
        if not self._depth:
            self._look_round()
        coroutine = work()
        try:
            coroutine.send(None)
        except StopIteration as end:
            result: Result = end.value
            return result
        finally:
            coroutine.close()
        raise RuntimeError("work on the book waited for something outside it")

    def _refuse(self, error: sqlite3.Error) -> NoReturn:
        """A full disk and the like become StorageRefused; what is a bug of ours stays one."""
        told = refusal(error, self._path)
        if told is None:
            raise error
        raise told from error


class Transaction(AbstractContextManager[None], AbstractAsyncContextManager[None]):
    """What is written inside is kept together, or none of it is: any exit but success undoes it."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def __enter__(self) -> None:
        self._desk.begin()

    def __exit__(self, kind: type[BaseException] | None, *_: object) -> None:
        if kind is not None:
            self._desk.roll_back()
            return
        try:
            self._desk.commit()
        except BaseException:
            self._desk.roll_back()
            raise

    async def __aenter__(self) -> None:
        self.__enter__()

    async def __aexit__(self, kind: type[BaseException] | None, *_: object) -> None:
        self.__exit__(kind)
