"""`python -m bot chat`: a room at the prompt, kept in a file so that it is there again tomorrow."""

import argparse
import asyncio
import sys
from collections.abc import Mapping
from pathlib import Path
from typing import Any
from uuid import uuid4
from zoneinfo import ZoneInfo

from bot import clock, settings
from bot.options import add_room_options, local_zone
from bot.playback import Playback, Spoken
from bot.speaker import speaker_of
from bot.terminal import Painter, say
from handlers.asked.help import HELP
from storage import rooms
from storage.book import Book
from storage.database import Database
from storage.errors import BookError

ROOM = "terminal"

ORDERS = """\
  /edit WORDS    change the last message      /delete      take it back
  /reply WORDS   answer the bot's last words  /mark ❌     put a sign on them
  /help          what the bot understands     /quit        leave (or Ctrl-D)"""

WELCOME = f"""\
A room at the prompt. Write as you would to your neighbours; name who speaks, if it is not you:
  ines: added 2 kg scraps, mostly meat, to the shed bin
{ORDERS}"""


def add_parser(subparsers: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Describe the command."""
    parser = subparsers.add_parser(
        "chat",
        description="Opens a room at the prompt, kept in a file. Any speaker can be named: "
        "“NAME: added 2 kg scraps, mostly meat”.",
    )
    parser.add_argument("--book", metavar="FILE", type=Path, help="the book to keep it in")
    parser.add_argument(
        "--as",
        dest="speaker",
        metavar="NAME",
        type=_speaker,
        default="you",
        help="who speaks (default: you)",
    )
    add_room_options(parser, default_zone=local_zone())


def _speaker(value: str) -> str:
    """The name of who speaks."""
    if not value.strip():
        raise argparse.ArgumentTypeError("a name is needed, like --as Ines")
    return value.strip()


def run(args: argparse.Namespace) -> int:
    """Talk until the end of input or /quit."""
    path = args.book or settings.home(None).folder / "terminal.db"
    if args.book is None:
        path.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
    elif not path.parent.is_dir():
        raise BookError(
            f"there is no folder {path.parent}: make it first, or name a book in another one"
        )
    return asyncio.run(_chat(args, path))


async def _chat(args: argparse.Namespace, path: Path) -> int:
    db = await Database.open(path, alone=True)
    try:
        async with db.transaction():
            room = await rooms.join(db, ROOM, clock.now(), zone=args.zone, units=args.units)
        talk = Talk(db, Book(db, room), args.speaker)
        say(f"{WELCOME}\n(kept in {path})")
        await talk.let_time_run()
        while (line := await asyncio.to_thread(_read_line)) is not None:
            if not await talk.take(line.strip()):
                break
    finally:
        await db.close()
    return 0


def _read_line() -> str | None:
    if sys.stdin.isatty():
        sys.stdout.write("> ")
        sys.stdout.flush()
    line = sys.stdin.readline()
    return line if line else None


class Talk:
    """A conversation at the prompt: lines become the events that a Matrix room would send."""

    def __init__(self, db: Database, book: Book, speaker: str) -> None:
        self._book = book
        self._speaker = self._last_speaker = speaker
        zone = book.room.zone
        self._painter = Painter(ZoneInfo(zone), heard=False)
        self._playback = Playback(db, zone=zone, units=book.room.units, own="")
        self._last_message: str | None = None  # of `_last_speaker`, who alone can change it
        self._last_answer: str | None = None

    async def take(self, line: str) -> bool:
        """One line typed; False to leave."""
        if not line.startswith("/"):
            return await self._speak(line)
        order, _, words = line[1:].partition(" ")
        words = words.strip()
        match order:
            case "quit":
                return False
            case "help":
                say(f"{HELP}\n{ORDERS}")
            case "edit" if words and self._last_message:
                await self._send("m.room.message", _edit(self._last_message, words))
            case "delete" if self._last_message:
                await self._send("m.room.redaction", {"redacts": self._last_message})
            case "reply" if words and self._last_answer:
                await self._message(words, replies_to=self._last_answer)
            case "mark" if self._last_answer or self._last_message:
                target = self._last_answer or self._last_message
                await self._send("m.reaction", _mark(target, words or "❌"))
            case "edit" | "delete" | "reply" | "mark":
                say(f"/{order}: there is nothing yet to do that to, or the words are missing.")
            case _:
                say("There is /edit, /delete, /reply, /mark, /help and /quit.")
        return True

    async def _speak(self, line: str) -> bool:
        if not line:
            return True
        bins = [bin.name for bin in await self._book.bins()]
        members = [member.name for member in await self._book.members()]
        speaker, words = speaker_of(line, members, bins)
        self._last_speaker = speaker or self._speaker
        await self._message(words)
        return True

    async def _message(self, body: str, replies_to: str | None = None) -> None:
        content: dict[str, Any] = {"msgtype": "m.text", "body": body}
        if replies_to:
            content["m.relates_to"] = {"m.in_reply_to": {"event_id": replies_to}}
        self._last_message = await self._send("m.room.message", content)

    async def _send(self, kind: str, content: Mapping[str, Any]) -> str:
        await self.let_time_run()
        now, event = clock.now(), f"${uuid4().hex}"
        raw = {
            "type": kind,
            "event_id": event,
            "sender": self._last_speaker,
            "origin_server_ts": int(now.timestamp() * 1000),
            "content": dict(content),
            "room_id": ROOM,
        }
        for spoken in await self._playback.take(raw, now):
            self._show(spoken)
        return event

    async def let_time_run(self) -> None:
        """Say what has fallen due since the last line."""
        async for spoken in self._playback.run_until(clock.now()):
            self._show(spoken)

    def _show(self, spoken: Spoken) -> None:
        self._painter.show(spoken)
        message = spoken.message
        # A mark has no words to reply to: what it stands on is meant then.
        self._last_answer = message.to_event if message.kind == "reaction" else message.tx_id


def _edit(original: str, words: str) -> dict[str, Any]:
    return {
        "msgtype": "m.text",
        "body": f"* {words}",
        "m.new_content": {"msgtype": "m.text", "body": words},
        "m.relates_to": {"rel_type": "m.replace", "event_id": original},
    }


def _mark(target: str | None, key: str) -> dict[str, Any]:
    return {"m.relates_to": {"rel_type": "m.annotation", "event_id": target, "key": key}}
