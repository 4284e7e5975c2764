"""The group's calendar on a real CalDAV server (Radicale), read back by a client (caldav)."""

import asyncio
import random
import socket
import sys
import urllib.request
from collections.abc import AsyncIterator
from datetime import date, timedelta
from pathlib import Path
from typing import Any, cast

import pytest
from caldav.davclient import DAVClient

from bot import calendar_server
from bot.calendar_server import CalendarServer, OutOfReach
from bot.feed import as_events
from bot.pacing import Bell, Patience
from bot.settings import Settings
from handlers.planning.dues import is_shown_on
from handlers.reading.acts import Bury, Layer, Seal
from storage.database import Database
from tests.bot.test_feed import change, days_of
from tests.group import BEGIN, Group

USER, PASSWORD = "pailkeeper", "bran & molasses"


def free_port() -> int:
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return int(one.getsockname()[1])


def is_up(url: str) -> bool:
    try:
        with urllib.request.urlopen(url, timeout=1):
            return True
    except OSError as error:
        return getattr(error, "code", None) == 401


@pytest.fixture
async def radicale(tmp_path: Path) -> AsyncIterator[str]:
    """The address of a CalDAV server with an account for the bot."""
    users = tmp_path / "users"
    users.write_text(f"{USER}:{PASSWORD}\n")
    port = free_port()
    process = await asyncio.create_subprocess_exec(
        sys.executable,
        "-m",
        "radicale",
        "--config",
        "",
        f"--server-hosts=127.0.0.1:{port}",
        "--auth-type=htpasswd",
        f"--auth-htpasswd-filename={users}",
        "--auth-htpasswd-encryption=plain",
        f"--storage-filesystem-folder={tmp_path / 'collections'}",
        stdout=asyncio.subprocess.DEVNULL,
        stderr=asyncio.subprocess.DEVNULL,
    )
    url = f"http://127.0.0.1:{port}/"
    try:
        async with asyncio.timeout(60):
            while not await asyncio.to_thread(is_up, url):  # noqa: ASYNC110 - it rings no bell
                await asyncio.sleep(0.1)
        yield url
    finally:
        process.terminate()
        await process.wait()


def settings(url: str) -> Settings:
    return Settings(caldav=url, caldav_user=USER, caldav_password=PASSWORD)


def client(url: str) -> Any:
    made = DAVClient(url, username=USER, password=PASSWORD, enable_rfc6764=False, require_tls=False)
    return made.principal()  # type: ignore[no-untyped-call]


def shown(url: str) -> list[tuple[date, date]]:
    """The days of all events that a calendar program sees there."""
    [calendar] = client(url).calendars()
    events = [event.icalendar_component for event in calendar.events()]
    return sorted(
        (event.decoded("DTSTART"), event.decoded("DTEND") - timedelta(days=1)) for event in events
    )


async def test_it_shows_the_books_dues_through_a_season(
    group: Group, db: Database, radicale: str
) -> None:
    rng, days = random.Random(2), 0
    asked: list[tuple[date, date]] = []
    server = CalendarServer(db, settings(radicale))
    for n in range(60):
        days += rng.random() < 0.3
        await group.says(change(rng), who=rng.choice(["ines", "bram"]), days=days)
        if n % 6 == 0:
            now = BEGIN + timedelta(days=days, hours=4)
            await server.update(now)
            dues = [due for due in await group.book.dues() if is_shown_on(due, now.date())]
            asked = sorted(days_of(due, now.date()) for due in dues)
            assert await asyncio.to_thread(shown, radicale) == asked
    assert asked


async def test_a_restart_goes_on_where_it_was_and_mends_what_was_taken_out(
    group: Group, db: Database, radicale: str
) -> None:
    await group.says(Layer(bin="shed", mass_kg=2.0))
    await CalendarServer(db, settings(radicale)).update(BEGIN)
    before = await asyncio.to_thread(shown, radicale)
    assert len(before) == 2

    def tidy_up() -> None:
        [calendar] = client(radicale).calendars()
        calendar.events()[0].delete()
        calendar.save_event(
            "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//test//EN\r\nBEGIN:VEVENT\r\n"
            "UID:party\r\nDTSTAMP:20260301T000000Z\r\nDTSTART;VALUE=DATE:20260401\r\n"
            "DTEND;VALUE=DATE:20260402\r\nSUMMARY:Party\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n"
        )

    await asyncio.to_thread(tidy_up)
    await CalendarServer(db, settings(radicale)).update(BEGIN)
    party = (date(2026, 4, 1), date(2026, 4, 1))
    assert await asyncio.to_thread(shown, radicale) == sorted([*before, party])


async def test_what_is_done_leaves_the_server(group: Group, db: Database, radicale: str) -> None:
    server = CalendarServer(db, settings(radicale))
    await group.says(Layer(bin="shed", mass_kg=2.0))
    await server.update(BEGIN)
    await group.says(Seal(bin="shed"), days=1)
    await group.says(Bury(bin="shed"), days=1)
    now = BEGIN + timedelta(days=1)
    await server.update(now)
    events = await as_events(group.book, now)
    assert len(await asyncio.to_thread(shown, radicale)) == len(events) == 2


async def test_a_server_out_of_reach_is_said_to_be(group: Group, db: Database) -> None:
    await group.says(Layer(bin="shed", mass_kg=2.0))
    server = CalendarServer(db, settings(f"http://127.0.0.1:{free_port()}/"))
    with pytest.raises(OutOfReach):
        await server.update(BEGIN)


class Shaky:
    """A server that is out of reach the first time."""

    def __init__(self) -> None:
        self.asked = 0
        self.reached = asyncio.Event()

    async def update(self, now: object) -> None:
        del now
        self.asked += 1
        if self.asked == 1:
            raise OutOfReach("ConnectionError")
        self.reached.set()


async def test_a_server_that_comes_back_is_served_again(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(Patience, "failed", lambda _: 0.01)
    monkeypatch.setattr(calendar_server, "PAUSE_SECONDS", 0.01)
    server, stop, changed = Shaky(), asyncio.Event(), Bell()
    keeping = calendar_server.keep_shared(
        cast("CalendarServer", server), lambda: BEGIN, changed, stop
    )
    task = asyncio.create_task(keeping)
    async with asyncio.timeout(10):
        await server.reached.wait()
        stop.set()
        changed.ring()
        await task
    assert server.asked == 2
