"""`python -m tests.bench.fuzz`: a million inputs that nobody would write, and no harm by any.

The inputs are grown from the labelled messages, from pieces of them and from any characters at all,
by a seed: the same seed gives the same inputs.
"""

import argparse
import asyncio
import csv
import html.parser
import io
import json
import random
import re
import sys
import tempfile
import time as stopwatch
from collections import Counter
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager, suppress
from datetime import UTC, datetime
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from aiohttp.test_utils import make_mocked_request
from icalendar import Calendar

from bot import log, settings
from bot.board import as_page
from bot.content import event_of
from bot.export import as_csv, as_json
from bot.feed import as_calendar
from bot.heard import from_event
from bot.web import Pages
from handlers.reading.context import Context
from handlers.reading.read import read
from storage import inbox, rooms, words
from storage.book import Book
from storage.database import Database
from storage.errors import UserError
from storage.inbox import Arrival
from storage.rows import Message, Waiting
from tests.reading.corpus import FOLDER, messages
from tests.room import BEGIN, TalkingRoom

LONGEST_SECONDS = 2.0
"""No input may take longer: a machine that others use may stop us for a while."""
STRANGE = [
    *("<b>x</b>", "<script>", "&amp;", "@room", "@ines:test", "https://x.test", "://", "=1+1", "|"),
    *("`", "**", "[x](y)", "\u202e", "\u2066", "\u200b", "\0", "\r", "\t", "\n", "\ud800", "NaN"),
    *("1e400", "-0", "½⅓", "99999999999999999999", "31/2", "2026-02-30", "25:61", "❌", "👍", "("),
    *(")", "\\", "'", '"', ";--", "{}", "[]", "null", "true", "%s", "../", "*"),
]
FORMULAS = frozenset("=+-@\t\r")
OURS = frozenset(
    tag
    for file in (Path(__file__).parents[2] / "bot").glob("*.py")
    for tag in re.findall(r"<([a-z][a-z0-9]*)", file.read_text(encoding="utf-8"))
)
"""Every tag that the program writes itself."""
CONTEXT = Context(
    at=BEGIN,
    zone=ZoneInfo("Europe/Lisbon"),
    units="metric",
    bins=("shed", "yard", "bin 3"),
    members=("ines", "bram"),
    sender="ines",
    bot_names=("pailkeeper", "bot"),
    after_bot=True,
    to_bot=True,
)


class Source:
    """Inputs without end."""

    def __init__(self, seed: int) -> None:
        self.dice = random.Random(seed)
        files = sorted(FOLDER.glob("*.jsonl"))
        self.messages = [str(row["body"]) for file in files for row in messages(file.name)]
        self.pieces = sorted({word for body in self.messages for word in body.split()})

    def text(self) -> str:
        """A message, bent, mixed or made up; seldom very long."""
        match self.dice.randrange(10):
            case 0 | 1 | 2:
                return self._bent(self.dice.choice(self.messages))
            case 3 | 4 | 5:
                found = self.dice.choices(self.pieces, k=self.dice.randrange(1, 12))
                return " ".join(found)
            case 6 | 7:
                both = [*self.dice.choices(self.pieces, k=6), *self.dice.choices(STRANGE, k=3)]
                self.dice.shuffle(both)
                return " ".join(both)
            case 8 if self.dice.random() < 0.01:
                return self.dice.choice([*self.pieces, *STRANGE]) * self.dice.randrange(1, 3000)
            case _:
                length = self.dice.randrange(30)
                return "".join(chr(self._code()) for _ in range(length))

    def value(self, depth: int = 0) -> Any:
        """Any JSON."""
        match self.dice.randrange(9 if depth < 3 else 7):
            case 0 | 1 | 2:
                return self.text()
            case 3:
                return self.dice.choice([0, -1, 1.5, 2**70, float("nan"), float("inf"), True])
            case 4:
                return None
            case 5 | 6:
                return self.dice.choice(["$e1", "m.text", "m.replace", "@ines:test", "m.notice"])
            case 7:
                return [self.value(depth + 1) for _ in range(self.dice.randrange(3))]
            case _:
                return {self.text(): self.value(depth + 1) for _ in range(self.dice.randrange(3))}

    def event(self) -> dict[str, Any]:
        """An event with any of its parts wrong."""
        relation = {
            "rel_type": self._or("m.replace"),
            "event_id": self._or("$e1"),
            "key": self._or("❌"),
            "m.in_reply_to": self._or({"event_id": self._or("$e1")}),
        }
        body, new = self._or(self.text()), {"body": self._or(self.text())}
        content = {
            "msgtype": self._or("m.text"),
            "body": body,
            "m.new_content": self._or(new),
            "m.relates_to": self._or(relation),
            "m.mentions": self._or({"user_ids": self._or(["@ines:test"])}),
            "membership": self._or("join"),
            "displayname": self._or(self.text()),
            "redacts": self._or("$e1"),
        }
        kinds = ["m.room.message", "m.room.message", "m.reaction", "m.room.redaction"]
        return {
            "type": self._or(self.dice.choice([*kinds, "m.room.member"])),
            "event_id": self._or(f"$f{self.dice.randrange(10**9)}"),
            "sender": self._or("@ines:test"),
            "state_key": self._or("@ines:test"),
            "origin_server_ts": self._or(1_772_474_400_000 + self.dice.randrange(10**9)),
            "content": self._or(content),
        }

    def _or(self, wanted: Any) -> Any:
        return wanted if self.dice.random() < 0.93 else self.value()

    def _bent(self, text: str) -> str:
        letters = list(text)
        for _ in range(self.dice.randrange(1, 4)):
            at = self.dice.randrange(len(letters) + 1)
            match self.dice.randrange(3):
                case 0:
                    letters[at:at] = self.dice.choice(STRANGE)
                case 1:
                    del letters[at : at + self.dice.randrange(1, 6)]
                case _:
                    letters[at:at] = letters[at : at + 8]
        return "".join(letters)

    def _code(self) -> int:
        top = self.dice.choice([0x7F, 0x2FF, 0x206F, 0xFFFF, 0x10FFFF])
        return self.dice.randrange(top + 1)


class Markup(html.parser.HTMLParser):
    """Notes every tag but those that we write, and every attribute that does something."""

    def __init__(self, ours: frozenset[str] = frozenset({"br"})) -> None:
        super().__init__()
        self._ours = ours
        self.found: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """A tag that is not ours, or that calls or loads something."""
        acting = [name for name, _ in attrs if name.startswith("on") or name in ("src", "href")]
        if tag not in self._ours or acting:
            self.found.append(tag)


def say(source: Source) -> None:
    """What the bot repeats is neither markup nor a mention."""
    body = words.text(source.text())
    harmless(Message(tx_id="t", kind="reply", body=body, to_event="$e1"))


def harmless(message: Message) -> None:
    """No markup but our own, and nobody called who was not to be."""
    _, content = event_of(Waiting(id=1, room="!r", message=message, made_at=BEGIN))
    if message.kind == "reaction":
        return
    markup = Markup()
    markup.feed(content.get("formatted_body", ""))
    assert not markup.found
    called = {"user_ids": list(message.mentions)} if message.mentions else {}
    assert content["m.mentions"] == called
    json.dumps(content, ensure_ascii=False).encode()


def name(source: Source) -> None:
    """A name is one short line."""
    made = words.name(source.text())
    assert len(made) <= words.LONGEST_NAME
    assert made.isprintable() or "\u200d" in made or "\u200c" in made or made.split()


def understand(source: Source) -> None:
    """The reading of a message, as it is let in."""
    read(words.text(source.text()), CONTEXT)


def hear(source: Source) -> None:
    """An event of any shape."""
    from_event(source.event())


def play(source: Source, folder: Path) -> None:
    """A line of a log."""
    path = folder / "log.jsonl"
    line = json.dumps(source.event()) if source.dice.random() < 0.5 else source.text()
    path.write_text(line, encoding="utf-8", errors="surrogatepass")
    with suppress(UserError):
        for event in log.lines(path):
            from_event(event.raw)


def choose(source: Source) -> None:
    """A settings file."""
    row = source.dice.choice(settings.SETTINGS)
    value = json.dumps(source.value()) if source.dice.random() < 0.7 else source.text()
    with suppress(UserError):
        settings.parse(f"{row.name} = {value}\n", Path("settings.toml"))


async def many(what: Callable[[Source], None], source: Source, count: int) -> float:
    """So many inputs; the longest time that one took (s)."""
    slowest = 0.0
    for _ in range(count):
        began = stopwatch.perf_counter()
        what(source)
        slowest = max(slowest, stopwatch.perf_counter() - began)
    return slowest


async def ask(pages: Pages, source: Source, count: int) -> float:
    """Paths of the web pages: all are refused alike."""
    slowest = 0.0
    for _ in range(count):
        path = words.text(source.text()).replace("\n", "/")
        request = make_mocked_request(source.dice.choice(["GET", "HEAD", "POST"]), "/x")
        vars(request)["_match_info"] = {"path": path}
        began = stopwatch.perf_counter()
        answer = await pages._answer(request)
        slowest = max(slowest, stopwatch.perf_counter() - began)
        assert answer.status == 404
    return slowest


async def live(folder: Path, source: Source, count: int) -> float:
    """Events through the whole mind and into stored rows; the book can be told all the same."""
    slowest = 0.0
    for part in range(0, count, 500):
        async with opened(folder / f"book{part}.db") as db:
            room = TalkingRoom(db)
            for _ in range(min(500, count - part)):
                raw = source.event()
                began = stopwatch.perf_counter()
                for spoken in await room.playback.take(raw, room.now):
                    harmless(spoken.message)
                slowest = max(slowest, stopwatch.perf_counter() - began)
            failed = await db.rows("SELECT 1 FROM inbox WHERE state = 'failed'")
            assert not failed
            for known in await rooms.every(db):
                await show(Book(db, known))
    return slowest


@asynccontextmanager
async def opened(path: Path) -> AsyncIterator[Database]:
    """A book, closed whatever happens: its thread would keep the process alive."""
    db = await Database.open(path)
    try:
        yield db
    finally:
        await db.close()


async def show(book: Book) -> None:
    """All that is told of a book elsewhere: whole, and without a word that does something."""
    await as_json(book, BEGIN)
    for line in csv.reader(io.StringIO(await as_csv(book))):
        formulas = [cell for cell in line if cell[:1] in FORMULAS and not is_number(cell)]
        assert not formulas, formulas
    assert Calendar.from_ical((await as_calendar(book, BEGIN)).decode()).walk("VCALENDAR")
    page = Markup(OURS)
    page.feed((await as_page(book, BEGIN)).decode())
    assert not page.found, page.found


def is_number(cell: str) -> bool:
    """A number below nought is no formula."""
    with suppress(ValueError):
        float(cell)
        return True
    return False


async def main(inputs: int, seed: int) -> int:
    """Print what was tried, and the longest time one input took; an exception ends it."""
    source, tried = Source(seed), Counter[str]()
    worst = 0.0
    with tempfile.TemporaryDirectory() as name_of_folder:
        folder = Path(name_of_folder)
        shares: list[tuple[str, Callable[[Source], None], float]] = [
            ("messages read", understand, 0.30),
            ("events heard", hear, 0.25),
            ("words said", say, 0.15),
            ("names", name, 0.15),
            ("settings", choose, 0.05),
            ("log lines", lambda s: play(s, folder), 0.05),
        ]
        for what, function, share in shares:
            tried[what] = round(inputs * share)
            worst = max(worst, await many(function, source, tried[what]))
        tried["web paths"] = round(inputs * 0.04)
        async with opened(folder / "pages.db") as db:
            await inbox.take_in(db, [Arrival(room="!r", raw={})], None)
            pages = Pages(db, lambda: datetime.now(UTC))  # noqa: TID251 - no craft depends on it
            worst = max(worst, await ask(pages, source, tried["web paths"]))
        tried["events through the mind"] = inputs - tried.total()
        worst = max(worst, await live(folder, source, tried["events through the mind"]))
    told = ", ".join(f"{count} {what}" for what, count in tried.items())
    sys.stdout.write(
        f"{tried.total()} inputs: {told}; none escaped; slowest {worst * 1000:.0f} ms\n"
    )
    return int(worst > LONGEST_SECONDS)


if __name__ == "__main__":
    parser = argparse.ArgumentParser()
    parser.add_argument("--inputs", type=int, default=1_000_000)
    parser.add_argument("--seed", type=int, default=1)
    given = parser.parse_args()
    sys.exit(asyncio.run(main(given.inputs, given.seed)))
