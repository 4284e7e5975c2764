"""`python -m bot replay`: a room's log through the whole mind, and what the bot says to it."""

import argparse
import asyncio
import json
from pathlib import Path
from zoneinfo import ZoneInfo

from bot import log
from bot.options import add_room_options
from bot.playback import Playback, Spoken, own_user
from bot.progress import Progress
from bot.terminal import Painter, say
from storage import session
from storage.database import Database


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
    events = list(log.lines(args.log))
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
    finally:
        await db.close()
    return 0


def as_json(spoken: Spoken) -> dict[str, str | None]:
    """Something said, as `--json` prints it."""
    return {
        "at": spoken.at.isoformat(),
        "to": spoken.message.to_event,
        "kind": spoken.message.kind,
        "body": spoken.message.body,
    }
