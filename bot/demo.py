"""`python -m bot demo`: an invented group's season, played through the whole mind."""

import argparse
import asyncio
import tempfile
from pathlib import Path
from zoneinfo import ZoneInfo

from bot import log
from bot.playback import Playback
from bot.terminal import Painter, say
from handlers.planning.calendar import calendar
from handlers.planning.dues import shown
from storage import rooms
from storage.book import Book
from storage.database import Database

SEASON = Path(__file__).parent.parent / "sample_logs" / "season.jsonl"
ZONE = "Europe/Lisbon"

OPENING = """\
Five neighbours, a shed and a courtyard: an invented group's first weeks, as they might write them
in their room. Lines marked with a time are theirs; Pailkeeper answers what is meant for the book
and keeps quiet on the rest. A ✅ is its mark for “written down”."""


def add_parser(subparsers: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Describe the command."""
    subparsers.add_parser(
        "demo",
        description="Plays an invented group's season from sample_logs, with the bot's answers, "
        "and ends with the calendar.",
    )


def run(args: argparse.Namespace) -> int:
    """Play the season and print the calendar."""
    del args
    return asyncio.run(_demo())


async def _demo() -> int:
    events = list(log.lines(SEASON))
    zone = ZoneInfo(ZONE)
    with tempfile.TemporaryDirectory() as folder:
        db = await Database.open(Path(folder) / "season.db")
        try:
            say(OPENING)
            painter = Painter(zone)
            playback = Playback(db, zone=ZONE, units="metric", own="")
            async for item in playback.play(events):
                painter.show(item)
            book = Book(db, (await rooms.every(db))[0])
            today = events[-1].at.astimezone(zone).date()
            dues = await shown(book, today)
            say(f"\nThe calendar on {today:%A} {today.day} {today:%B}:")
            for line in await calendar(book, dues, today):
                say(f"  {line}")
        finally:
            await db.close()
    say("\nNow talk to it yourself: python -m bot chat")
    return 0
