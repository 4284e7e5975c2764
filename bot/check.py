"""`python -m bot check`: whether everything the bot stands on is in order, one line for each thing.

It changes nothing, and may be run while the bot is at work.
"""

import argparse
import shutil
import stat
from collections.abc import Iterator
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path

from bot import account as accounts
from bot import settings
from bot.check_server import Finding, findings_of_server, right, wrong
from bot.options import book_at
from bot.settings import Home, SettingsError
from bot.terminal import say
from storage import backup, lock
from storage.schema import VERSION

LEAST_FREE = 100_000_000
"""Bytes on the disk below which it is called full: a backup and a day's talk must fit."""


def add_parser(subparsers: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Describe the command."""
    parser = subparsers.add_parser(
        "check",
        help="see whether everything is in order",
        description="Looks at the book, its backups, permissions, the disk, the settings, the "
        "homeserver, the device's keys and the clock, and says what it finds. The exit status is "
        "1 if something is wrong.",
    )
    which = parser.add_mutually_exclusive_group()
    which.add_argument("--home", metavar="DIR", help="where the bot keeps everything")
    which.add_argument("--book", metavar="FILE", type=Path, help="only this book")


def run(args: argparse.Namespace) -> int:
    """Print the findings; 0 if all is well, 1 if something is wrong."""
    if args.book:
        findings = findings_of_book(book_at(args.book))
    else:
        findings = findings_of_home(settings.home(args.home))
    all_well = True
    for finding in findings:
        say(f"{'ok   ' if finding.well else 'WRONG'}  {finding.text}")
        all_well = all_well and finding.well
    return 0 if all_well else 1


def findings_of_home(place: Home) -> Iterator[Finding]:
    """Everything about a bot, the nearest things first."""
    try:
        settings.read(place)
        yield right("the settings can be read")
    except SettingsError as error:
        yield wrong(str(error))
    if good := backup.instead_of_none(place.book):
        yield wrong(backup.gone(place.book, good))
    elif place.book.exists():
        yield from findings_of_book(place.book)
    else:
        yield right(f"there is no book yet at {place.book}: the bot makes it when it first runs")
    yield _permissions([place.folder, *sorted(place.folder.rglob("*"))])
    try:
        account = accounts.read(place)
    except SettingsError as error:
        yield wrong(str(error))
        return
    if account is None:
        yield wrong(f"there is no login in {place.folder}: run `python -m bot login`")
        return
    yield from findings_of_server(place, account)


def findings_of_book(book: Path) -> Iterator[Finding]:
    """The book itself, its backups, who may read it, and the room left for it.

    Of a file that is none of ours nothing is told but that: its owner's ways are not our business.
    """
    good = backup.newest_good(book)
    if good is None and (foreign := backup.foreign(book)):
        yield wrong(foreign)
        return
    found = backup.faults(book, thorough=True)
    if found:
        copy = good or "a backup"
        yield wrong(
            f"the book {book} is damaged ({found[0]}): stop the bot, move the book away with its "
            f"-wal and -shm files, and put back {copy}"
        )
    else:
        yield from _contents(book)
    if good:
        yield right(f"the newest good backup is {good}")
    elif any(backup.folder_of(book).glob(f"{book.stem}-*")):
        yield wrong(f"no backup in {backup.folder_of(book)} is whole: look at the disk")
    else:
        yield right("there is no backup yet; the running bot makes one each day")
    yield _permissions([book])
    yield right("a bot is using the book" if lock.is_held(book) else "no bot is using the book")
    yield _space(book.parent)


@dataclass(frozen=True, slots=True)
class _Contents:
    version: int
    orphans: int
    rooms: int
    waiting: int
    unsent: int


def _contents(book: Path) -> Iterator[Finding]:
    told = _read(book)
    if told.version > VERSION:
        yield wrong(
            f"the book is of schema {told.version}, this program knows {VERSION}: update it"
        )
    elif told.version < VERSION:
        yield right(f"the book is of schema {told.version}: the next start brings it to {VERSION}")
    if told.orphans:
        yield wrong(f"{told.orphans} rows of the book point to nothing: put back a backup")
    yield right(
        f"the book is whole (schema {told.version}; {_counted(told.rooms, 'room')}; "
        f"{_counted(told.waiting, 'event')} to be worked through, "
        f"{_counted(told.unsent, 'message')} to be sent)"
    )


def _counted(number: int, thing: str) -> str:
    return f"{number} {thing}{'' if number == 1 else 's'}"


def _read(book: Path) -> _Contents:
    def number(question: str) -> int:
        return int(opened.execute(question).fetchone()[0])

    with closing(backup.read_only(book)) as opened:
        return _Contents(
            version=number("PRAGMA user_version"),
            orphans=len(opened.execute("PRAGMA foreign_key_check").fetchall()),
            rooms=number("SELECT count(*) FROM room WHERE left_at IS NULL"),
            waiting=number("SELECT count(*) FROM inbox WHERE state = 'waiting'"),
            unsent=number(
                "SELECT count(*) FROM outbox JOIN room ON room.id = outbox.room "
                "WHERE sent_as IS NULL AND refused IS NULL AND left_at IS NULL"
            ),
        )


def _permissions(paths: list[Path]) -> Finding:
    """What others than its owner may read or change is wrong."""
    for path in paths:
        try:
            mode = path.stat().st_mode
        except FileNotFoundError:
            continue  # the running bot has just done with it
        if stat.S_IMODE(mode) & 0o077:
            kind = "700" if stat.S_ISDIR(mode) else "600"
            return wrong(f"others may look into {path}: chmod {kind} '{path}'")
    return right(f"{paths[0]} is for its owner only")


def _space(folder: Path) -> Finding:
    free = shutil.disk_usage(folder).free
    text = f"{free / 1e9:.1f} GB are free on the disk of {folder}"
    return right(text) if free >= LEAST_FREE else wrong(f"only {text}: make room")
