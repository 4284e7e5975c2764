"""`python -m tests.bench.pages`: how fast calendar and board answer, 100 bins, three years."""

import asyncio
import sys
import tempfile
import time as stopwatch
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import aiohttp

from bot.web import served
from handlers.answer import Turn
from handlers.asked import addresses
from handlers.recording import keeping
from storage import rooms
from storage.book import Book
from storage.database import Database
from storage.rows import Facts, NewEntry

BINS, YEARS, RUN_DAYS = 100, 3, 42
NOW = datetime(2026, 3, 2, 18, 0, tzinfo=UTC)
REQUESTS = 400


def _turn(book: Book, at: datetime, event: str) -> Turn:
    return Turn(book=book, event=event, cause=event, sender="ines", at=at, now=at, today=at.date())


def _run(bin: str, begin: date, until: date) -> list[NewEntry]:
    """The entries of six weeks of a bin: filled in two, drained, sealed, buried."""
    said = [("open", 0, Facts(capacity_l=20.0))]
    said += [("layer", n, Facts(mass_kg=0.8)) for n in range(0, 14, 2)]
    said += [("drain", n, Facts(volume_l=0.3)) for n in range(3, 27, 3)]
    said += [("seal", 14, Facts()), ("bury", 28, Facts())]
    made = []
    for act, after, facts in said:
        on = begin + timedelta(days=after)
        at = datetime(on.year, on.month, on.day, 12, tzinfo=UTC)
        event = f"${bin}-{on}-{act}"
        if on <= until:
            made.append(
                NewEntry(
                    act=act,
                    event=event,
                    cause=event,
                    said_at=at,
                    written_at=at,
                    bin=bin,
                    member="ines",
                    writer="ines",
                    on=on,
                    facts=facts,
                )
            )
    return made


async def fill(book: Book) -> int:
    """Write three years of 100 bins; how many entries that are."""
    count = 0
    for number in range(BINS):
        name = f"bin {number + 1}"
        entries: list[NewEntry] = []
        begin = NOW.date() - timedelta(days=365 * YEARS + number % RUN_DAYS)
        while begin < NOW.date():
            entries += _run(name, begin, NOW.date())
            begin += timedelta(days=RUN_DAYS)
        async with book.db.transaction():
            await keeping.write_down(_turn(book, NOW, "$fill"), entries, [])
        count += len(entries)
    return count


async def _timed(web: aiohttp.ClientSession, url: str) -> float:
    began = stopwatch.perf_counter()
    async with web.get(url) as answer:
        assert answer.status == 200, answer.status
        await answer.read()
    return (stopwatch.perf_counter() - began) * 1000


def _p95(spent: list[float]) -> float:
    return sorted(spent)[int(len(spent) * 0.95)]


async def main() -> int:
    """Fill a book, serve it, and print the milliseconds of the requests; 1 over the bar."""
    with tempfile.TemporaryDirectory() as folder:
        db = await Database.open(Path(folder) / "book.db")
        try:
            async with db.transaction():
                room = await rooms.join(
                    db, "!b:test", NOW - timedelta(days=1200), zone="Europe/Lisbon", units="metric"
                )
            book = Book(db, room)
            entries = await fill(book)
            async with served(db, "127.0.0.1:0", "", lambda: NOW):
                turn = _turn(book, NOW, "$link")
                answer = await addresses.link("", turn)
                async with db.transaction():
                    await keeping.carry_out(turn, answer)
                feed = next(w for w in answer.say.split() if w.endswith("/calendar.ics"))
                return await _measure(db, feed, entries)
        finally:
            await db.close()


async def _measure(db: Database, feed: str, entries: int) -> int:
    slow = 0
    async with aiohttp.ClientSession() as web:
        for url in (feed, feed.removesuffix("calendar.ics")):
            first = await _timed(web, url)
            same = [await _timed(web, url) for _ in range(REQUESTS)]
            changed = []
            for n in range(20):
                async with db.transaction():
                    await db.write("UPDATE member SET name = ?", (f"ines {n}",))
                changed.append(await _timed(web, url))
            name = url.rsplit("/", 1)[1] or "board"
            sys.stdout.write(
                f"{name}: {BINS} bins, {entries} entries: first {first:.0f} ms; p95 of {REQUESTS} "
                f"{_p95(same):.1f} ms; median after a change {sorted(changed)[10]:.0f} ms\n"
            )
            slow += _p95(same) >= 10
    return 1 if slow else 0


if __name__ == "__main__":
    sys.exit(asyncio.run(main()))
