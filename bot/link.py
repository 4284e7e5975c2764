"""`python -m bot link`: the addresses of a group's calendar and board."""

import argparse
import asyncio

from bot import clock, settings
from bot.export import chosen_room
from bot.settings import Home, SettingsError
from bot.terminal import say
from handlers.asked import addresses
from storage import links, session
from storage.book import Book
from storage.database import Database
from storage.errors import BookError


def add_parser(subparsers: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Describe the command."""
    parser = subparsers.add_parser(
        "link",
        help="show where a group's calendar and board can be read",
        description="Shows the address of a group's calendar and board, made if there is none "
        "yet. Whoever has it can read along.",
    )
    parser.add_argument("--home", metavar="DIR", help="where the bot keeps everything")
    parser.add_argument("--room", metavar="ROOM", help="which room, if there are several")
    parser.add_argument("--member", metavar="NAME", help="just what one member keeps")
    parser.add_argument("--new", action="store_true", help="lock out whoever has the one before")


def run(args: argparse.Namespace) -> int:
    """Print the address."""
    place = settings.home(args.home)
    if not place.book.exists():
        raise BookError(f"there is no book in {place.folder} yet: start `python -m bot run` first")
    return asyncio.run(_link(place, args))


async def _link(place: Home, args: argparse.Namespace) -> int:
    db = await Database.open(place.book)
    try:
        base = await session.address(db)
        if base is None:
            raise SettingsError(
                "no calendar is served: set `listen` and start `python -m bot run` again"
            )
        book = Book(db, await chosen_room(db, args.room))
        known = {member.name for member in await book.members() if member.present}
        if args.member and args.member not in known:
            raise BookError(f"there is no member {args.member}; there are: {', '.join(known)}")
        token = await links.token(book, args.member)
        if token is None or args.new:
            token = addresses.made()
            async with db.transaction():
                await links.put(book, args.member, token, clock.now())
        say(addresses.told(base, token, is_own=args.member is not None))
    finally:
        await db.close()
    return 0
