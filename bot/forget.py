"""`python -m bot forget`: a person who asks for it is taken out of a book; so are rooms left."""

import argparse
import asyncio
import logging
from datetime import timedelta
from pathlib import Path

from bot import clock
from bot.export import chosen_room
from bot.options import book_at
from bot.pacing import pause
from bot.terminal import say
from storage import forgetting
from storage.book import Book
from storage.database import Database
from storage.errors import BookError

log = logging.getLogger(__name__)

LOOK_AGAIN_SECONDS = 3600.0


def add_parser(subparsers: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Describe the command."""
    parser = subparsers.add_parser(
        "forget",
        help="take a person out of a book",
        description="Takes a person's name and account out of a book, and out of what the bot "
        "keeps of its own words. What they put into a bin stays in its totals, without the name. "
        "Stop the bot first. Older backups still hold the name until they are gone, too.",
    )
    parser.add_argument("--book", metavar="FILE", type=Path, required=True, help="the book")
    parser.add_argument("--room", metavar="ROOM", help="one room only (its address)")
    parser.add_argument("member", metavar="MEMBER", help="the name shown, or the Matrix account")


def run(args: argparse.Namespace) -> int:
    """Forget the person; 0 once it is done."""
    book_at(args.book)
    return asyncio.run(_forget(args))


async def _forget(args: argparse.Namespace) -> int:
    db = await Database.open(args.book, alone=True)
    try:
        book = Book(db, await chosen_room(db, args.room))
        members = await book.members()
        wanted = args.member.casefold()
        found = [m for m in members if wanted in (m.name.casefold(), (m.user or "").casefold())]
        if not found:
            names = ", ".join(member.name for member in members) or "nobody"
            raise BookError(f"this book knows no {args.member}; it knows: {names}")
        async with db.transaction():
            kept = sum([await forgetting.forget_member(book, member) for member in found])
    finally:
        await db.close()
    say(f"Forgot {args.member}. {kept} entries stay in the totals, without the name.")
    return 0


async def forget_left(db: Database, days: int, stop: asyncio.Event) -> None:
    """Forget the rooms that were left so many days ago, until `stop`; 0: none ever."""
    while days and not stop.is_set():
        gone = await forgetting.forget_left_rooms(db, clock.now() - timedelta(days=days))
        if gone:
            log.info("forgot %d rooms that were left %d days ago", gone, days)
        await pause(LOOK_AGAIN_SECONDS, stop)
