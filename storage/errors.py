"""What a person can put right, in a sentence that says how."""

import sqlite3


class UserError(Exception):
    """Something is wrong that the person at the keyboard can put right; the message says how."""


class BookError(UserError):
    """The book cannot be used as it is."""


class StorageRefused(BookError):
    """The disk did not take a change: it was not made, and the cause lies outside the book."""


_CURES = {
    sqlite3.SQLITE_FULL: "the disk is full: make room on it and start again",
    sqlite3.SQLITE_READONLY: "it may only be read: make the file and its folder writable",
    sqlite3.SQLITE_PERM: "it may not be opened: make the file and its folder your own",
    sqlite3.SQLITE_CANTOPEN: "it cannot be opened: look at the folder and its permissions",
    sqlite3.SQLITE_IOERR: "the disk reports an error: look at the disk before going on",
    sqlite3.SQLITE_BUSY: "another program is writing in it: close that one first",
    sqlite3.SQLITE_LOCKED: "another program is writing in it: close that one first",
    sqlite3.SQLITE_NOMEM: "there is no memory left: close other programs and start again",
    sqlite3.SQLITE_CORRUPT: "it is damaged: put back a backup",
    sqlite3.SQLITE_NOTADB: "it is damaged, or no book at all: put back a backup",
}
"""What stands in the way of SQLite, by its primary result code, and what to do about it."""

DAMAGED = (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB)


def result_code(error: sqlite3.Error) -> int:
    """SQLite's primary result code of an error; 0 if it has none."""
    return int(getattr(error, "sqlite_errorcode", 0)) & 0xFF


def refusal(error: sqlite3.Error, path: object) -> StorageRefused | None:
    """The error as a person can mend it; None if it is not the disk's, but a bug of ours."""
    cure = _CURES.get(result_code(error))
    if cure is None:
        return None
    lost = "" if result_code(error) in DAMAGED else "; nothing is lost"
    return StorageRefused(f"the book {path} was not changed ({error}): {cure}{lost}")
