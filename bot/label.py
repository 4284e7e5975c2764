"""`python -m bot label`: a bin's label to print, as SVG."""

import argparse
import asyncio
import sys
from pathlib import Path

from bot import clock, settings
from bot.export import chosen_room
from bot.options import book_at
from bot.unasked import turn_of
from handlers.asked import addresses
from handlers.asked.labelart import drawn
from handlers.asked.labels import board_of, label
from handlers.phrasing import the
from storage import links, session
from storage.book import Book
from storage.database import Database
from storage.errors import BookError
from storage.rows import Bin


def add_parser(subparsers: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Describe the command."""
    parser = subparsers.add_parser(
        "label",
        help="draw a bin's label to print",
        description="Draws a bin's label as SVG, half a sheet of A4: its name, what may go in, "
        "the cautions, and a code that leads to its place on the group's board.",
    )
    parser.add_argument("bin", metavar="BIN", nargs="?", help="which bin, if there are several")
    parser.add_argument("--home", metavar="DIR", help="where the bot keeps everything")
    parser.add_argument("--book", metavar="FILE", type=Path, help="another book than the bot's")
    parser.add_argument("--room", metavar="ROOM", help="which room, if there are several")
    parser.add_argument("--to", metavar="FILE", type=Path, help="where to write it; else printed")


def run(args: argparse.Namespace) -> int:
    """Draw the label."""
    path = book_at(args.book or settings.home(args.home).book)
    picture = asyncio.run(_drawn(path, args))
    if args.to is None:
        sys.stdout.write(picture)
        return 0
    try:
        args.to.write_text(picture, encoding="utf-8")
    except OSError as error:
        raise BookError(f"the label cannot be written to {args.to} ({error})") from error
    return 0


async def _drawn(path: Path, args: argparse.Namespace) -> str:
    db = await Database.open(path)
    try:
        book = Book(db, await chosen_room(db, args.room))
        bin = await _chosen(book, args.bin)
        now = await session.played_until(db) or clock.now()
        board = board_of(await session.address(db), await _token(book), bin)
        return drawn(await label(book, bin, turn_of(book, now), board))
    finally:
        await db.close()


async def _chosen(book: Book, name: str | None) -> Bin:
    """The bin of a name, or the only one; BookError where that is none or several."""
    bins = await book.bins()
    known = await book.bin(name) if name else None
    chosen = [bin for bin in bins if name is None or bin == known or _is_called(bin, name)]
    if len(chosen) == 1:
        return chosen[0]
    names = ", ".join(bin.name for bin in bins) or "none"
    if name:
        raise BookError(f"this group has no bin {name}; it has: {names}")
    raise BookError(f"say which bin; this group has: {names}")


def _is_called(bin: Bin, name: str) -> bool:
    """Whether a name is the bin's as people say it: “the shed bin”, “shed bin”."""
    return name.casefold().removeprefix("the ") == the(bin.name).casefold().removeprefix("the ")


async def _token(book: Book) -> str | None:
    """The token of the group's board, made if it has none and one is served."""
    token = await links.token(book, None)
    if token is None and await session.address(book.db):
        token = addresses.made()
        async with book.db.transaction():
            await links.put(book, None, token, clock.now())
    return token
