"""`python -m bot replay`: a room's log through the whole mind, and what the bot says to it."""

import argparse
import asyncio
import json
import sys
from collections.abc import Sequence
from pathlib import Path
from zoneinfo import ZoneInfo

from bot import log
from bot.options import add_room_options
from bot.playback import Playback, Spoken, address_of, own_user
from bot.progress import Progress
from bot.terminal import Painter, say
from storage import rooms, session
from storage.database import Database

MOST_NAMED = 10
"""Lines passed over that are named by their numbers."""


def add_parser(subparsers: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Describe the command."""
    parser = subparsers.add_parser(
        "replay",
        help="play a room's log through the bot",
        description="Plays a log (JSON Lines of Matrix room events) through the bot at the log's "
        "own times and shows its replies and reminders. A last line of type "
        f"{log.UNTIL} lets time run on.",
    )
    parser.add_argument("log", metavar="LOG", type=Path, help="the log to play")
    parser.add_argument("--book", metavar="FILE", type=Path, help="keep the book here")
    parser.add_argument("--json", action="store_true", help="one JSON object for each thing said")
    add_room_options(parser)


def run(args: argparse.Namespace) -> int:
    """Play the log; 0, or the exit status of an error."""
    return asyncio.run(_replay(args))


async def _replay(args: argparse.Namespace) -> int:
    no_events: list[int] = []
    events = list(log.lines(args.log, no_events))
    db = await Database.open(args.book or ":memory:", alone=True)
    try:
        painter = Painter(ZoneInfo(args.zone))
        playback = Playback(db, zone=args.zone, units=args.units, own=own_user(events))
        progress, played = Progress("events"), 0
        async for item in playback.play(events):
            if not isinstance(item, Spoken):
                played += 1
                progress.reached(played, len(events))
            if args.json:
                if isinstance(item, Spoken):
                    say(json.dumps(as_json(item), ensure_ascii=False))
            else:
                painter.show(item)
        if events:
            await session.set_played_until(db, max(line.at for line in events))
        too_old = await _before_the_book(db, events)
    finally:
        await db.close()
    _tell_passed_over(no_events, "not whole, or without the id, sender or time of an event")
    _tell_passed_over(too_old, "older than the book of their room")
    return 0


async def _before_the_book(db: Database, events: Sequence[log.Line]) -> list[int]:
    """The lines told before the book knew their room: nothing of them is taken in."""
    began = {room.address: room.joined_at for room in await rooms.every(db)}
    return [
        line.number
        for line in events
        if line.raw.get("type") != log.UNTIL and line.at < began.get(address_of(line.raw), line.at)
    ]


def _tell_passed_over(numbers: Sequence[int], why: str) -> None:
    """Say on standard error how many lines were passed over, which, and why."""
    if numbers:
        named = ", ".join(map(str, numbers[:MOST_NAMED]))
        more = ", …" if len(numbers) > MOST_NAMED else ""
        sys.stderr.write(f"passed over {len(numbers):,}, {why}: line {named}{more}\n")


def as_json(spoken: Spoken) -> dict[str, str | None]:
    """Something said, as `--json` prints it."""
    return {
        "at": spoken.at.isoformat(),
        "to": spoken.message.to_event,
        "kind": spoken.message.kind,
        "body": spoken.message.body,
    }
