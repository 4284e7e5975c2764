"""Copies of a book: made while it is in use, whole or not at all, and proven good.

A copy is one file that opens as a book. It is written under another name, checked, brought to the
disk and only then given its own, so that whatever bears a backup's name is one.
"""

import os
import sqlite3
from contextlib import closing, suppress
from datetime import date
from pathlib import Path

from storage.errors import BookError, result_code

FOLDER = "backups"
"""Where a book's own backups are: beside it."""


def folder_of(book: Path) -> Path:
    """Where the backups of a book are kept."""
    return book.parent / FOLDER


def copy(book: Path, to: Path) -> None:
    """Copy a book, in use or not, to a file that takes the place of one of that name."""
    new = to.with_name(f"{to.name}.new")
    try:
        new.unlink(missing_ok=True)
        os.close(os.open(new, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600))
        _fill(book, new)
        _to_disk(new)
        new.replace(to)
        _to_disk(to.parent)
    except (sqlite3.Error, OSError) as error:
        raise BookError(
            f"the backup {to} could not be made ({error}); the book and older backups are as "
            "they were. Make room or choose another place"
        ) from error
    finally:
        with suppress(OSError):
            new.unlink(missing_ok=True)


def daily(book: Path, today: date, keep: int) -> Path | None:
    """Today's backup, if it was still to be made; those of before the last `keep` days go."""
    folder = folder_of(book)
    to = folder / f"{book.stem}-{today.isoformat()}{book.suffix}"
    if to.exists():
        return None
    _make(folder)
    copy(book, to)
    for _, old in _dated(book)[:-keep]:
        old.unlink()
    return to


def before_migration(book: Path, version: int) -> Path:
    """The backup of a book as it is before a newer schema is put on it."""
    folder = folder_of(book)
    to = folder / f"{book.stem}-schema-{version}{book.suffix}"
    _make(folder)
    copy(book, to)
    return to


def newest_good(book: Path) -> Path | None:
    """The newest backup of a book that is whole, if there is any."""
    kept = folder_of(book).glob(f"{book.stem}-*{book.suffix}")
    by_age = sorted(kept, key=lambda path: path.stat().st_mtime, reverse=True)
    return next((path for path in by_age if not faults(path)), None)


def instead_of_none(book: Path) -> Path | None:
    """The newest good backup of a book that is gone, or empty; None where a book may be begun."""
    is_there = book.exists() and book.stat().st_size > 0
    return None if is_there else newest_good(book)


def gone(book: Path, good: Path) -> str:
    """What to do about a book that is gone though it has backups."""
    return (
        f"the book {book} is {'empty' if book.exists() else 'gone'}, though it has backups: put "
        f"its newest good one, {good}, in its place, or move {good.parent} away to begin anew"
    )


def faults(book: Path, *, thorough: bool = False) -> list[str]:
    """What is wrong with a book file as SQLite sees it, line by line; nothing if it is whole."""
    check = "integrity_check" if thorough else "quick_check"
    try:
        with closing(read_only(book)) as opened:
            rows = [str(row[0]) for row in opened.execute(f"PRAGMA {check}")]
            # Of one database, the heading that SQLite puts over each tells nothing.
            lines = [line for row in rows for line in row.splitlines() if line[:3] != "***"]
            return [] if lines == ["ok"] else lines
    except sqlite3.Error as error:
        return [str(error)]


def foreign(book: Path) -> str | None:
    """What to do about a file that is no book; None where it is one, damaged or not."""
    if book.is_dir():
        return f"{book} is a folder: name the book in it"
    try:
        with closing(read_only(book)) as opened:
            opened.execute("SELECT 1 FROM room, inbox, outbox LIMIT 1")  # what each book has
    except sqlite3.Error as error:
        if result_code(error) in (sqlite3.SQLITE_NOTADB, sqlite3.SQLITE_ERROR):
            return f"{book} is no book of Pailkeeper's ({error}): name another file"
    return None


def read_only(book: Path) -> sqlite3.Connection:
    """A connection that changes nothing, nor leaves anything beside a book that nobody uses."""
    address = f"{book.absolute().as_uri()}?mode=ro"
    beside = (book.with_name(book.name + end) for end in ("-wal", "-journal"))
    if not any(path.exists() for path in beside):
        address += "&immutable=1"
    return sqlite3.connect(address, uri=True)


def _fill(book: Path, new: Path) -> None:
    with closing(read_only(book)) as source, closing(sqlite3.connect(new)) as copied:
        # In one step: a reader of a write-ahead log holds nobody up, and sees one moment.
        source.backup(copied)
        copied.execute("PRAGMA journal_mode = DELETE")
    found = faults(new)
    if found:
        raise sqlite3.DatabaseError(f"the copy is not whole: {found[0]}")


def _make(folder: Path) -> None:
    try:
        folder.mkdir(mode=0o700, exist_ok=True)
    except OSError as error:
        raise BookError(
            f"the folder {folder} cannot be made ({error.strerror}): make the folder of the "
            "book writable"
        ) from error


def _dated(book: Path) -> list[tuple[date, Path]]:
    """The daily backups of a book, the oldest first."""
    found = []
    for path in folder_of(book).glob(f"{book.stem}-*{book.suffix}"):
        with suppress(ValueError):
            found.append((date.fromisoformat(path.stem[len(book.stem) + 1 :]), path))
    return sorted(found)


def _to_disk(path: Path) -> None:
    descriptor = os.open(path, os.O_RDONLY)
    try:
        os.fsync(descriptor)
    finally:
        os.close(descriptor)
