"""`python -m tests.bench.feed`: 200 random changes of the book, read back by two calendar readers.

A client that only re-reads the feed over HTTP (with its ETag) is to show exactly the book's dues,
after every change, by each of two readers that are not the library it is written with.
"""

import argparse
import asyncio
import random
import sys
import tempfile
import time as stopwatch
import warnings
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import aiohttp
import vobject
from ical.calendar_stream import IcsCalendarStream

from bot.reminders import moment_of, tell
from bot.web import served
from handlers import arranging
from handlers.answer import Turn
from handlers.asked import addresses
from handlers.planning.care import care_of
from handlers.planning.dues import is_shown_on
from handlers.reading.arranged import Away, Back, CallOff, OwnDate, Plan
from handlers.recording import keeping
from storage import changes, rooms
from storage.book import Book
from storage.database import Database
from storage.rows import Due
from tests.bot.test_feed import change, days_of
from tests.group import BEGIN, Group

Shown = tuple[str, str]
"""Start and end of an event: ISO 8601 days, or moments in UTC."""


def arranged(rng: random.Random, today: date) -> Plan:
    """Something that members arrange among themselves."""
    first = today + timedelta(days=rng.randrange(1, 20))
    plans: list[Plan] = [
        OwnDate(words=f"errand {rng.randrange(9)}", first=first, hour=time(18, 30)),
        OwnDate(words=f"round {rng.randrange(9)}", first=first, rule="FREQ=WEEKLY;INTERVAL=2"),
        CallOff(words=f"errand {rng.randrange(9)}"),
        CallOff(words=f"round {rng.randrange(9)}"),
        Away(first=first, last=first + timedelta(days=5)),
        Back(on=today),
    ]
    return rng.choice(plans)


def by_ical(feed: str) -> list[Shown]:
    """What the reader `ical` shows."""
    calendar = IcsCalendarStream.calendar_from_ics(feed)
    return sorted(
        (_iso(event.dtstart), _iso(event.dtend))
        for event in calendar.events
        if event.status != "CANCELLED"
    )


def by_vobject(feed: str) -> list[Shown]:
    """What the reader `vobject` shows."""
    calendar = vobject.readOne(feed)
    return sorted(
        (_iso(event.dtstart.value), _iso(event.dtend.value))
        for event in getattr(calendar, "vevent_list", [])
        if event.status.value != "CANCELLED"
    )


def _iso(value: object) -> str:
    if isinstance(value, datetime):
        return value.astimezone(UTC).isoformat()
    assert isinstance(value, date)
    return value.isoformat()


def windows(dues: list[Due], group: Group, today: date) -> list[Shown]:
    """What the book says: computed from its dues, not from the feed."""
    return sorted(_window(due, group, today) for due in dues)


def _window(due: Due, group: Group, today: date) -> Shown:
    first, last = days_of(due, today)
    if due.hour is None or first != due.from_day:
        return first.isoformat(), (last + timedelta(days=1)).isoformat()
    start = moment_of(due.from_day, due.hour, ZoneInfo(group.book.room.zone))
    return _iso(start), _iso(start + timedelta(minutes=30))


class Client:
    """A calendar program that asks again with the ETag it was given."""

    def __init__(self, web: aiohttp.ClientSession, url: str) -> None:
        self._web = web
        self._url = url
        self._etag = ""
        self.text = ""
        self.spared = 0

    async def reread(self) -> str:
        headers = {"If-None-Match": self._etag} if self._etag else {}
        async with self._web.get(self._url, headers=headers) as answer:
            if answer.status == 304:
                self.spared += 1
                return self.text
            assert answer.status == 200, answer.status
            self._etag = answer.headers["ETag"]
            self.text = await answer.text()
        return self.text


async def _arrange(group: Group, plan: Plan, who: str, days: int) -> None:
    group.count += 1
    at = BEGIN + timedelta(days=days, minutes=group.count)
    event = f"$p{group.count}"
    turn = Turn(
        book=group.book, event=event, cause=event, sender=who, at=at, now=at, today=at.date()
    )
    async with group.book.db.transaction():
        await keeping.carry_out(turn, await arranging.answer(plan, turn))


async def _link(group: Group, wanted: str) -> str:
    turn = Turn(
        book=group.book,
        event=f"$l{wanted}",
        cause="$l",
        sender="ines",
        at=BEGIN,
        now=BEGIN,
        today=BEGIN.date(),
    )
    answer = await addresses.link(wanted, turn)
    async with group.book.db.transaction():
        await keeping.carry_out(turn, answer)
    return next(word for word in answer.say.split() if word.endswith(".ics"))


async def main(count: int, seed: int) -> int:
    """Change, re-read and compare; 1 where something else is shown than the book's dues."""
    warnings.simplefilter("ignore")
    rng, days, moment = random.Random(seed), 0, [BEGIN]
    began = stopwatch.monotonic()
    wrong = events = 0
    with tempfile.TemporaryDirectory() as folder:
        db = await Database.open(Path(folder) / "book.db")
        async with db.transaction():
            room = await rooms.join(db, "!f:test", BEGIN, zone="Europe/Lisbon", units="metric")
        group = Group(Book(db, room))
        async with db.transaction():
            for who in ("ines", "bram"):
                await changes.meet(group.book, f"@{who}:test", who)
        async with served(db, "127.0.0.1:0", "", lambda: moment[0]), aiohttp.ClientSession() as web:
            whole, mine = (
                Client(web, await _link(group, "")),
                Client(web, await _link(group, "mine")),
            )
            for _ in range(count):
                days += rng.random() < 0.3
                who = rng.choice(["ines", "bram"])
                moment[0] = BEGIN + timedelta(days=days, hours=4)
                if rng.random() < 0.3:
                    await _arrange(group, arranged(rng, moment[0].date()), who, days)
                else:
                    await group.says(change(rng), who=who, days=days)
                await tell(db, moment[0])
                dues = [
                    due for due in await group.book.dues() if is_shown_on(due, moment[0].date())
                ]
                care = await care_of(group.book, dues, moment[0].date())
                own = [due for due in dues if care.concerns(due, "ines")]
                for client, asked in ((whole, dues), (mine, own)):
                    feed = await client.reread()
                    wanted = windows(asked, group, moment[0].date())
                    wrong += by_ical(feed) != wanted
                    wrong += by_vobject(feed) != wanted
                    events += len(wanted)
            spared = whole.spared + mine.spared
        await db.close()
    sys.stdout.write(
        f"{count} random changes, the group's feed and one member's re-read after each by ical and "
        f"vobject: {events} events in all, {wrong} readings that differ from the book; {spared} "
        f"times unchanged (304); {stopwatch.monotonic() - began:.0f} s\n"
    )
    return int(bool(wrong))


if __name__ == "__main__":
    parser = argparse.ArgumentParser()
    parser.add_argument("--changes", type=int, default=200)
    parser.add_argument("--seed", type=int, default=1)
    given = parser.parse_args()
    sys.exit(asyncio.run(main(given.changes, given.seed)))
