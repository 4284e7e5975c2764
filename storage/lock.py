"""One writer at a time: the lock beside a book, freed by the system whatever ends the process."""

import os
import sqlite3
from pathlib import Path

from storage.errors import BookError, result_code


class BookHeld(BookError):
    """Another process has the book for itself."""


class Lock:
    """The lock on a book; take it with `Lock(path)` and give it back with `close`.

    It is an SQLite lock on an empty file, which holds on every system and across processes.
    """

    def __init__(self, book: Path) -> None:
        place = beside(book)
        os.close(os.open(place, os.O_CREAT | os.O_RDWR, 0o600))
        self._held = sqlite3.connect(
            place, timeout=0, isolation_level=None, check_same_thread=False
        )
        try:
            self._held.execute("BEGIN EXCLUSIVE")
        except sqlite3.DatabaseError as error:
            self._held.close()
            if result_code(error) == sqlite3.SQLITE_BUSY:
                raise BookHeld(
                    f"another Pailkeeper is using the book {book}: stop that one first, or name "
                    "another book"
                ) from None
            raise BookError(
                f"the lock {place} cannot be taken ({error}): make room on the disk, or look at "
                "the file and its folder, and start again; nothing is lost"
            ) from error

    def close(self) -> None:
        """Let others have the book."""
        self._held.close()


def beside(book: Path) -> Path:
    """Where the lock on a book is."""
    return book.with_name(book.name + ".lock")


def is_held(book: Path) -> bool:
    """Whether some process has the book for itself now."""
    if not beside(book).exists():
        return False
    try:
        Lock(book).close()
    except BookHeld:
        return True
    except (BookError, OSError):
        return False  # the disk does not even take a lock
    return False
