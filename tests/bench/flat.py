"""The same questions to a long history and to a short one: 1,000,000 entries beside 1,000.

Both books are made by the same script, written row by row as the bot writes them; the long one as a
book of the first schema, so that bringing it up to date is seen as well. The rooms asked are alike,
and the two books are asked in turn, so that whatever else the machine does falls on both.
"""

import itertools
import json
import sqlite3
import sys
import tempfile
import time
from collections.abc import Awaitable, Callable, Iterator
from contextlib import closing
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

from bot.board import as_page
from bot.feed import as_calendar
from bot.reminders import tell
from bot.turn import work_off
from handlers.planning.calendar import calendar
from storage import inbox, rooms
from storage.book import Book
from storage.database import Database
from storage.inbox import Arrival
from storage.moments import to_ms
from storage.revision import revision
from storage.schema import SCHEMA
from tests.bench import traffic
from tests.bench.measure import Measured, median

YEARS, TODAY = 10, date(2036, 3, 1)
LONG_ROOMS, OF_LONG = 1_000, 1_036
SHORT_ROOMS, OF_SHORT = 6, 178
"""The rooms of the two books, and the entries of each."""
BUSY = 19_384
"""Entries of the busiest room of the long book, which is asked by itself. All these numbers leave
the bins at the same place in their present runs, so that only the history differs."""
RECENT, RECENT_DAYS = 126, 460
"""The last entries of a room, of two runs of each bin, and the days that they take."""
ROUNDS, WARM_UP = 64, 8
TIMES_THE_SHORT = 1.2

ENTRY = (
    "INSERT INTO entry (id, room, act, bin, run, member, writer, on_day, said_at, written_at, "
    "event, cause, mass_kg, volume_l, materials, rich, starter_g, capacity_l, root) "
    "VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)"
)
INBOX = (
    "INSERT INTO inbox (room, event, at, state, sender, kind) VALUES (?, ?, ?, 'done', ?, 'said')"
)
OUTBOX = (
    "INSERT INTO outbox (room, tx_id, kind, to_event, body, why, made_at, sent_as, sent_at) "
    "VALUES (?, ?, 'reply', ?, '2½ tablespoons of starter on 2 kg in the shed bin.', ?, ?, ?, ?)"
)
DUE = (
    "INSERT INTO due (room, bin, what, occasion, from_day, to_day, told_on, changed_at, gone) "
    "VALUES (?, ?, 'bury', ?, ?, ?, ?, ?, ?)"
)
MATERIALS = [json.dumps({kind: 1.0}) for kind in ("mixed", "fruit", "meat", "grain")]
WHY = "About 1 % of the weight is starter, common practice; 2 kg take 20 g. " * 3

RUN = ("open", *["layer", "layer", "layer", "drain"] * 4, "layer", "layer", "seal", "drain", "bury")
"""The acts of a run, which takes six weeks of its bin."""


def address(room: int) -> str:
    """The address of a room."""
    return f"!yard{room}:bench"


def write_book(path: Path, room_count: int, of_each: int, busy: int = 0) -> int:
    """Write a book of the first schema, its first room busy if so; how many entries it has."""
    with closing(sqlite3.connect(path, isolation_level=None)) as book:
        book.executescript(f"PRAGMA journal_mode = WAL; PRAGMA synchronous = OFF; {SCHEMA}")
        book.execute("PRAGMA user_version = 1")
        ids = itertools.count(1)
        for room in range(1, room_count + 1):
            book.execute("BEGIN")
            _write_room(book, room, busy if room == 1 and busy else of_each, ids)
            book.execute("COMMIT")
        book.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    return next(ids) - 1


def _write_room(book: sqlite3.Connection, room: int, entries: int, ids: Iterator[int]) -> None:
    joined = datetime(TODAY.year - YEARS, TODAY.month, TODAY.day, tzinfo=UTC)
    book.execute(
        "INSERT INTO room (id, address, joined_at, zone, units, told_on) "
        "VALUES (?, ?, ?, 'Europe/Lisbon', 'metric', ?)",
        (room, address(room), to_ms(joined), str(TODAY)),
    )
    names, bins = traffic.MEMBERS, traffic.BINS
    members = [room * 100 + n for n in range(len(names))]
    book.executemany(
        "INSERT INTO member (id, room, user, name) VALUES (?, ?, ?, ?)",
        [(members[n], room, f"@{name}:bench", name) for n, name in enumerate(names)],
    )
    book.executemany(
        "INSERT INTO bin (id, room, name, key) VALUES (?, ?, ?, ?)",
        [(room * 10 + n, room, name, name) for n, name in enumerate(bins)],
    )
    told: list[tuple[object, ...]] = []
    dues: list[tuple[object, ...]] = []
    for n in range(entries):
        on = _day_of(n, entries)
        bin, step = room * 10 + n % 3, n // 3
        act = RUN[step % len(RUN)]
        if n < entries - RECENT and n % 250 < 2:
            act = ("batch", "stock")[n % 250]
        at = to_ms(datetime(on.year, on.month, on.day, 12, tzinfo=UTC)) + n
        told.append(_entry(next(ids), room, act, bin, step // len(RUN) + 1, members[n % 6], on, at))
        if act == "bury":
            last = on + timedelta(days=4)
            dues.append((room, bin, str(step), str(on), str(last), str(last), at, 1))
    for bin in range(3):
        dues.append((room, room * 10 + bin, "now", str(TODAY), str(TODAY), None, to_ms(joined), 0))
    book.executemany(ENTRY, told)
    book.executemany(DUE, dues)
    at_of = {str(row[10]): int(str(row[8])) for row in told}
    book.executemany(
        INBOX, [(address(room), event, at, "@ines:bench") for event, at in at_of.items()]
    )
    book.executemany(
        OUTBOX,
        [(room, f"re-{e}", e, WHY, at, f"{e}-answer", at) for e, at in at_of.items()],
    )


def _day_of(n: int, entries: int) -> date:
    """The last entries of every room come at the same days; those before fill the years."""
    left = entries - 1 - n
    if left < RECENT:
        return TODAY - timedelta(days=2 + left * RECENT_DAYS // RECENT)
    years = 365 * YEARS - RECENT_DAYS - 2
    return TODAY - timedelta(days=365 * YEARS - n * years // (entries - RECENT))


def _entry(
    id: int, room: int, act: str, bin: int, run: int, member: int, on: date, at: int
) -> tuple[object, ...]:
    of_bin = act not in ("stock", "batch")
    weighed = act in ("layer", "stock", "batch") and id % 7 != 0
    return (
        id,
        room,
        act,
        bin if of_bin else None,
        run if of_bin else None,
        member,
        member,
        str(on),
        at,
        at,
        f"$old{id}",
        f"$old{id}",
        0.8 if weighed else None,
        1.5 if act in ("layer", "drain") and not weighed else None,
        MATERIALS[id % 4] if act == "layer" else None,
        0.1 if act == "layer" else None,
        8.0 if act == "layer" else None,
        20.0 if act == "open" else None,
        id,
    )


@dataclass
class Asked:
    """A book that is asked, and the room that is."""

    db: Database
    room: int
    number: int = 0

    async def book(self, db: Database) -> Book:
        """The room's own."""
        room = await rooms.find(db, address(self.room))
        assert room
        return Book(db, room)

    async def say(self, words: str) -> float:
        """Seconds from the words in the inbox to the answer committed."""
        self.number += 1
        at = NOW + timedelta(minutes=self.number)
        event = f"$new{self.room}-{self.number}"
        raw = traffic.message(address(self.room), event, "@ines:bench", at, words)
        await inbox.take_in(self.db, [Arrival(room=address(self.room), raw=raw)], None)
        began = time.perf_counter()
        await work_off(self.db, now=lambda: at, own=traffic.OWN)
        spent = time.perf_counter() - began
        async with self.db.transaction():  # as the sender would
            await self.db.write(
                "UPDATE outbox SET sent_as = tx_id, sent_at = 0 WHERE sent_as IS NULL"
            )
        return spent


NOW = datetime(TODAY.year, TODAY.month, TODAY.day, 12, tzinfo=UTC)
SAID = {
    "a layer": "added 2 kg scraps to the yard bin",
    "a correction": "no, 1.5 kg",
    "how full": "how full is the yard bin?",
    "what is due": "what's due?",
    "how much in all": "how much have we done so far?",
    "how much starter": "how much starter is left?",
    "who keeps it": "who has the yard bin?",
    "small talk": "good morning all",
}


async def _due_query(db: Database, book: Book) -> None:
    await calendar(book, await book.dues(), TODAY)


async def _hours(db: Database, book: Book) -> None:
    await tell(db, NOW)


async def _feed(db: Database, book: Book) -> None:
    await revision(db, book.room)
    await as_calendar(book, NOW, member=None, with_cancelled=True)


async def _board(db: Database, book: Book) -> None:
    await revision(db, book.room)
    await as_page(book, NOW)


ASKED: dict[str, Callable[[Database, Book], Awaitable[None]]] = {
    "due query": _due_query,
    "a look at all hours": _hours,
    "feed": _feed,
    "board": _board,
}


async def _time(asked: Asked, what: str) -> float:
    if what in SAID:
        return await asked.say(SAID[what])
    if what == "digest":
        return await _digest(asked)

    async def ask(db: Database) -> float:
        book = await asked.book(db)
        began = time.perf_counter()
        await ASKED[what](db, book)
        return time.perf_counter() - began

    return await asked.db.at_once(ask)


async def _digest(asked: Asked) -> float:
    """Seconds of a digest being told, beyond what it takes to see whether there is any to tell."""
    room = (asked.room,)
    async with asked.db.transaction():
        await asked.db.write("UPDATE due SET told_on = NULL WHERE room = ? AND gone = 0", room)
        await asked.db.write("UPDATE room SET told_on = '2000-01-01' WHERE id = ?", room)
    spent = []
    for _ in range(2):
        began = time.perf_counter()
        await tell(asked.db, NOW)
        spent.append(time.perf_counter() - began)
    return spent[0] - spent[1]


async def measure(room_count: int = LONG_ROOMS) -> list[Measured]:
    """Median milliseconds of each question, to rooms of the long book and of the short one."""
    with tempfile.TemporaryDirectory() as folder:
        paths = Path(folder) / "short.db", Path(folder) / "long.db"
        write_book(paths[0], SHORT_ROOMS, OF_SHORT)
        began = time.perf_counter()
        entries = write_book(paths[1], room_count, OF_LONG, BUSY)
        sys.stderr.write(f"{entries:,} entries written in {time.perf_counter() - began:.0f} s\n")
        began = time.perf_counter()
        short, long = await Database.open(paths[0]), await Database.open(paths[1])
        sys.stderr.write(f"brought up to date in {time.perf_counter() - began:.0f} s\n")
        try:
            *some, last = (Asked(short, room) for room in range(1, SHORT_ROOMS + 1))
            others = [Asked(long, 2 + n * (room_count - 2) // len(some)) for n in range(len(some))]
            busy = Asked(long, 1)
            return [
                *await _compare(some, others, f"{entries:,} entries"),
                *await _compare([last], [busy], f"the busiest room, {BUSY:,}"),
            ]
        finally:
            await short.close()
            await long.close()


async def _compare(short: list[Asked], long: list[Asked], label: str) -> list[Measured]:
    spent: dict[str, tuple[list[float], list[float]]] = {
        what: ([], []) for what in (*SAID, "digest", *ASKED)
    }
    for round in range(ROUNDS):
        for what, (of_short, of_long) in spent.items():
            of_short.append(await _time(short[round % len(short)], what))
            of_long.append(await _time(long[round % len(long)], what))
    return [
        Measured(
            what=f"{what} ({label})",
            value=1000 * median(of_long[WARM_UP:]),
            unit="ms",
            peer=f"in a book of {SHORT_ROOMS * OF_SHORT:,}",
            beside=1000 * median(of_short[WARM_UP:]),
            bar=None if what == "a look at all hours" else TIMES_THE_SHORT,
        )
        for what, (of_short, of_long) in spent.items()
    ]
