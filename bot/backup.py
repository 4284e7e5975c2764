"""`python -m bot backup`: a copy of the book, made while it is in use; and the bot's daily ones."""

import argparse
import asyncio
import logging
from datetime import UTC, datetime
from pathlib import Path

from bot import clock, settings
from bot.options import book_at
from bot.pacing import pause
from bot.settings import Home
from bot.terminal import say
from storage import backup
from storage.errors import BookError

log = logging.getLogger(__name__)

LOOK_AGAIN_SECONDS = 3600.0
"""How often the running bot looks whether a day has begun, or tries again what failed."""


def add_parser(subparsers: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Describe the command."""
    parser = subparsers.add_parser(
        "backup",
        help="copy a book safely, also while it is in use",
        description="Copies a book, also while the bot uses it, and proves the copy whole. "
        "To go back to a copy: stop the bot, move the book away with its -wal and -shm files, put "
        "the copy in its place, start the bot.",
    )
    which = parser.add_mutually_exclusive_group()
    which.add_argument("--book", metavar="FILE", type=Path, help="the book to copy")
    which.add_argument("--home", metavar="DIR", help="where the bot keeps its book")
    parser.add_argument("to", metavar="TO", type=Path, help="a new file, or a folder for it")


def run(args: argparse.Namespace) -> int:
    """Copy the book; 0 once the copy is whole and on the disk."""
    book = book_at(args.book or settings.home(args.home).book)
    to = _named(book, args.to, clock.now())
    if to.exists():
        raise BookError(f"{to} is there already: name a new file, or a folder")
    if not to.parent.is_dir():
        raise BookError(f"there is no folder {to.parent}: make it first, or name another")
    if backup.newest_good(book) is None and (foreign := backup.foreign(book)):
        raise BookError(foreign)
    found = backup.faults(book)
    if found:
        raise BookError(f"{book} is damaged ({found[0]}): put back a backup instead of copying it")
    backup.copy(book, to)
    say(f"Copied to {to} ({to.stat().st_size / 1e6:.1f} MB), checked and whole.")
    return 0


def _named(book: Path, to: Path, now: datetime) -> Path:
    """The file to be made: in a folder it is named after the book and the moment (UTC)."""
    if not to.is_dir():
        return to
    return to / f"{book.stem}-{now.astimezone(UTC):%Y-%m-%dT%H%M%SZ}{book.suffix}"


async def keep_daily(place: Home, days: int, stop: asyncio.Event) -> None:
    """Make a backup each day (UTC) until `stop`, keeping those of the last `days`; 0: none.

    One that fails is said, and tried again later: the bot goes on without it.
    """
    while days and not stop.is_set():
        try:
            today = clock.now().astimezone(UTC).date()
            if made := await asyncio.to_thread(backup.daily, place.book, today, days):
                log.info("made the daily backup %s", made)
        except (BookError, OSError) as error:
            log.error("no daily backup: %s", error)
        await pause(LOOK_AGAIN_SECONDS, stop)
