"""The calendar feed, read by two iCalendar readers that are not ours."""

import random
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, timedelta
from typing import Any

from ical.calendar_stream import IcsCalendarStream
from icalendar import Calendar

from bot.feed import as_calendar
from handlers.planning.dues import EVENTS, is_shown_on
from handlers.reading.acts import (
    Accept,
    Act,
    Amend,
    Bury,
    Decline,
    Drain,
    Layer,
    Observe,
    Offer,
    Open,
    Retract,
    Seal,
)
from storage import rooms
from storage.book import Book
from storage.rows import Due
from tests.group import BEGIN, Group

Shown = tuple[str, date, date]
"""Summary, first day, day after the last."""


def events(feed: bytes) -> list[dict[str, Any]]:
    """The events as the first reader (icalendar) sees them."""
    calendar = Calendar.from_ical(feed.decode())
    return [
        {
            "uid": str(event["UID"]),
            "sequence": event.decoded("SEQUENCE"),
            "cancelled": event["STATUS"] == "CANCELLED",
            "shown": (str(event["SUMMARY"]), event.decoded("DTSTART"), event.decoded("DTEND")),
        }
        for event in calendar.walk("VEVENT")
    ]


def by_the_second_reader(feed: bytes) -> set[Shown]:
    """What is shown to somebody whose calendar program reads with the library ical."""
    calendar = IcsCalendarStream.calendar_from_ics(feed.decode())
    return {
        (str(event.summary), event.dtstart, event.dtend)  # type: ignore[misc]
        for event in calendar.events
        if event.status != "CANCELLED"
    }


@dataclass
class Client:
    """A calendar program that never forgets an event until it is told that it is cancelled."""

    known: dict[str, dict[str, Any]] = field(default_factory=dict)

    def reread(self, feed: bytes) -> set[Shown]:
        for event in events(feed):
            before = self.known.get(event["uid"])
            if before and before["shown"][1:] != event["shown"][1:]:
                assert event["sequence"] > before["sequence"], "moved without a new SEQUENCE"
            if before is None or event["sequence"] >= before["sequence"]:
                self.known[event["uid"]] = event
        return {event["shown"] for event in self.known.values() if not event["cancelled"]}


def windows(shown: set[Shown]) -> list[tuple[date, date]]:
    return sorted((first, after - timedelta(days=1)) for _, first, after in shown)


def days_of(due: Due, today: date) -> tuple[date, date]:
    """The days on which a due stands in the feed: what is late is shown today."""
    late = due.to_day < today and due.what not in EVENTS
    return (today, today) if late else (due.from_day, due.to_day)


def change(rng: random.Random) -> Act:
    """Something said about one of four bins."""
    bin = rng.choice(["shed", "yard", "blue", "porch"])
    acts: list[Act] = [
        Layer(bin=bin, mass_kg=rng.choice([0.5, 2.0, 4.0])),
        Drain(bin=bin),
        Seal(bin=bin),
        Bury(bin=bin),
        Open(bin=bin, capacity_l=rng.choice([10.0, 20.0])),
        Observe(bin=bin, celsius=rng.choice([8.0, 14.0, 26.0])),
        Offer(bin=bin, to="bram", on=BEGIN.date() + timedelta(days=rng.randrange(90))),
        Accept(bin=bin),
        Decline(bin=bin),
        Amend(mass_kg=3.0),
        Amend(on=BEGIN.date() + timedelta(days=rng.randrange(60))),
        Retract(),
    ]
    return rng.choices(acts, [6, 4, 3, 2, 1, 2, 2, 2, 1, 1, 2, 3])[0]


async def test_a_client_that_rereads_the_feed_shows_the_books_dues(group: Group) -> None:
    rng, client = random.Random(1), Client()
    days, seen = 0, 0
    for n in range(200):
        days += rng.random() < 0.3
        await group.says(change(rng), who=rng.choice(["ines", "bram"]), days=days)
        now = BEGIN + timedelta(days=days, hours=4)
        feed = await as_calendar(group.book, now, with_cancelled=True)
        dues = [due for due in await group.book.dues() if is_shown_on(due, now.date())]
        asked = sorted(days_of(due, now.date()) for due in dues)
        present = {event["shown"] for event in events(feed) if not event["cancelled"]}
        assert windows(present) == asked
        if n % 5 == 0:  # it reads slowly
            assert by_the_second_reader(feed) == present
        kept = client.reread(feed)
        assert {shown for shown in kept if is_current(shown, now.date())} == {
            shown for shown in present if is_current(shown, now.date())
        }
        seen += len(present)
    assert seen > 500
    assert any(event["cancelled"] for event in client.known.values())
    assert any(event["sequence"] > 1 for event in client.known.values())


def is_current(shown: Shown, today: date) -> bool:
    """Not a thing of the past, which no program needs to be told of (soil, a bin handed over)."""
    return not (shown[0].startswith(("Plant", "Hand", "See that")) and shown[2] <= today)


async def fed(book: Book, **options: Any) -> bytes:
    return await as_calendar(book, BEGIN, **options)


async def test_the_windows_are_whole_days(group: Group) -> None:
    # DTEND is the day after the last: RFC 5545, 3.6.1.
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    drain = next(e for e in events(await fed(group.book)) if e["shown"][0].startswith("Drain"))
    assert drain["shown"][1:] == (date(2026, 3, 4), date(2026, 3, 6))
    assert b"DTSTART;VALUE=DATE:20260304\r\n" in await fed(group.book)


async def test_a_moved_due_keeps_its_uid_and_counts_up(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"), days=-9)
    await group.says(Seal(bin="shed"))
    before = {e["shown"][0]: e for e in events(await fed(group.book))}
    await group.says(Amend(on=date(2026, 2, 28)))
    after = {e["shown"][0]: e for e in events(await fed(group.book))}
    bury = "Bury the shed bin (ines)"
    assert before[bury]["uid"] == after[bury]["uid"]
    assert before[bury]["shown"] != after[bury]["shown"]
    assert (before[bury]["sequence"], after[bury]["sequence"]) == (0, 1000)


async def test_what_is_late_stands_on_today_until_it_is_done(group: Group) -> None:
    # RFC 5545, 3.8.7.4: SEQUENCE goes up with each change that moves an event.
    await group.says(Layer(mass_kg=2.0, bin="shed"), days=-9)
    client, days = Client(), [BEGIN + timedelta(days=n) for n in (0, 1, 9)]
    feeds = [await as_calendar(group.book, now, with_cancelled=True) for now in days]
    for now, feed in zip(days, feeds, strict=True):
        today = now.date()
        late = [shown for shown in client.reread(feed) if "late since" in shown[0]]
        assert [shown[1:] for shown in late if shown[0].startswith("Drain")] == [
            (today, today + timedelta(days=1))
        ]
        assert by_the_second_reader(feed)
    assert len({event["uid"] for feed in feeds for event in events(feed)}) == len(client.known)
    late_drain = next(e for e in events(feeds[-1]) if e["shown"][0].startswith("Drain"))
    await group.says(Drain(bin="shed"), days=9)
    done = events(await as_calendar(group.book, days[-1], with_cancelled=True))
    (gone,) = [event for event in done if event["uid"] == late_drain["uid"]]
    assert gone["cancelled"]
    assert gone["sequence"] > late_drain["sequence"]


async def test_the_alarm_rings_at_the_groups_hour(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    alarms = Calendar.from_ical((await fed(group.book)).decode()).walk("VALARM")
    assert {alarm.decoded("TRIGGER") for alarm in alarms} == {timedelta(hours=9)}


async def test_programs_are_told_how_often_to_look(group: Group) -> None:
    # RFC 7986, 5.7 asks for VALUE=DURATION.
    assert b"REFRESH-INTERVAL;VALUE=DURATION:PT1H\r\n" in await fed(group.book)


async def test_a_member_sees_what_they_keep_or_take(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"), who="bram")
    await group.says(Layer(mass_kg=2.0, bin="yard"), who="ines")
    await group.says(Offer(bin="shed", to="ines", on=date(2026, 3, 9)), who="bram")
    own = {event["shown"][0] for event in events(await fed(group.book, member="ines"))}
    assert own == {
        "Drain the yard bin (ines)",
        "Seal the yard bin (ines)",
        "Hand over the shed bin to ines (bram)",
    }


async def test_names_cannot_break_out_of_their_line(group: Group) -> None:
    name = "x\r\nBEGIN:VALARM;,\\ " + "ü" * 80
    await group.says(Layer(mass_kg=2.0, bin=name))
    feed = await fed(group.book)
    assert all(len(line) <= 75 for line in feed.split(b"\r\n"))  # octets: RFC 5545, 3.1
    assert len(events(feed)) == 2
    assert {shown[1] for shown in by_the_second_reader(feed)} == {
        date(2026, 3, 4),
        date(2026, 3, 16),
    }


async def test_the_same_book_gives_the_same_bytes(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    first = await fed(group.book)
    assert await as_calendar(group.book, datetime(2026, 3, 2, 23, tzinfo=UTC)) == first


async def test_another_books_dues_have_other_uids(group: Group) -> None:
    async with group.book.db.transaction():
        other = await rooms.join(
            group.book.db, "!other:test", BEGIN, zone="Europe/Lisbon", units="metric"
        )
    second = Group(Book(group.book.db, other))
    await group.says(Layer(mass_kg=2.0, bin="shed"), event="$a")
    await second.says(Layer(mass_kg=2.0, bin="shed"), event="$b")
    first = {event["uid"] for event in events(await fed(group.book))}
    again = {event["uid"] for event in events(await fed(second.book))}
    assert len(first | again) == 4


async def test_a_room_that_was_upgraded_keeps_its_uids(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    before = {event["uid"] for event in events(await fed(group.book))}
    async with group.book.db.transaction():
        moved = await rooms.move(group.book.db, group.book.room.address, "!new:test")
    assert moved
    assert {event["uid"] for event in events(await fed(Book(group.book.db, moved)))} == before
