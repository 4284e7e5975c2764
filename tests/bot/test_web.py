"""What the bot serves over HTTP: to whoever has the address, and to nobody else."""

import logging
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from datetime import datetime, timedelta

import aiohttp
import pytest
from icalendar import Calendar

from bot.web import served
from handlers.reading.acts import Layer, Open, Set
from storage import rooms, session
from storage.database import Database
from tests.group import BEGIN, Group

NOT_FOUND = "Not found\n"


@pytest.fixture
async def base(db: Database, group: Group) -> AsyncIterator[str]:
    """A group with two bins, and the address under which it is served."""
    await group.says(Open(bin="shed", capacity_l=20.0), who="bram")
    await group.says(Layer(mass_kg=2.0, bin="shed"), who="bram")
    await group.says(Layer(mass_kg=1.0, bin="yard"), who="ines")
    async with served(db, "127.0.0.1:0", "", lambda: BEGIN) as address:
        assert address
        yield address


async def linked(group: Group, wanted: str = "", who: str = "ines") -> str:
    """The address of the calendar that the bot names when asked."""
    said = (await group.says(Set(what="calendar link", value=wanted), who=who)).say
    return next(word for word in said.split() if word.endswith("/calendar.ics"))


@asynccontextmanager
async def got(
    url: str, method: str = "GET", **headers: str
) -> AsyncIterator[aiohttp.ClientResponse]:
    async with (
        aiohttp.ClientSession() as web,
        web.request(method, url, headers={k.replace("_", "-"): v for k, v in headers.items()}) as r,
    ):
        yield r


async def test_the_calendar_is_served_to_whoever_has_its_address(base: str, group: Group) -> None:
    address = await linked(group)
    assert address.startswith(f"{base}/")
    async with got(address) as answer:
        assert answer.status == 200
        assert answer.headers["Content-Type"] == "text/calendar; charset=utf-8"
        assert len(Calendar.from_ical(await answer.text()).walk("VEVENT")) == 4


async def test_a_members_own_calendar(base: str, group: Group) -> None:
    own = await linked(group, "mine", who="bram")
    async with got(own) as answer:
        text = await answer.text()
    assert "shed" in text
    assert "yard" not in text
    async with got(own.removesuffix("calendar.ics")) as board:
        assert board.status == 404


async def test_an_address_without_its_last_slash_leads_to_the_board(
    base: str, group: Group
) -> None:
    board = (await linked(group)).removesuffix("calendar.ics")
    async with got(board.removesuffix("/")) as answer:
        assert (answer.status, str(answer.url)) == (200, board)
        assert answer.history[0].status == 308
    own = (await linked(group, "mine", who="bram")).removesuffix("/calendar.ics")
    async with got(own) as none, got(f"{base}/{'x' * 32}") as other:
        assert (none.status, other.status) == (404, 404)


async def test_the_address_stays_until_a_new_one_is_asked_for(base: str, group: Group) -> None:
    first = await linked(group)
    assert await linked(group, who="bram") == first
    second = await linked(group, "new")
    assert second != first
    async with got(first) as revoked, got(second) as present:
        assert (revoked.status, present.status) == (404, 200)
    assert len(first.split("/")[3]) == 32  # 24 random bytes


async def test_anything_else_is_answered_alike_and_tells_nothing(base: str, group: Group) -> None:
    address = await linked(group)
    token = address.split("/")[3]
    revoked = address
    await linked(group, "new")
    seen = set()
    for path in (
        "",
        "calendar.ics",
        "x/calendar.ics",
        f"{token}/calendar.ics",
        f"{token}/",
        f"{token[:-1]}/calendar.ics",
        f"{token}/../calendar.ics",
        "robots.txt",
        "a" * 5000,
        "%00/%ff",
    ):
        async with got(f"{base}/{path}") as answer:
            headers = frozenset(answer.headers.items() - {("Date", answer.headers["Date"])})
            seen.add((answer.status, await answer.text(), headers))
    [(status, body, sent)] = seen
    assert (status, body) == (404, NOT_FOUND)
    assert "Server" not in dict(sent)
    async with got(revoked, "POST") as answer:
        assert answer.status == 404


async def test_other_methods_are_not_there(base: str, group: Group) -> None:
    address = await linked(group)
    for method in ("POST", "PUT", "DELETE", "OPTIONS", "PROPFIND"):
        async with got(address, method) as answer:
            assert (answer.status, await answer.text()) == (404, NOT_FOUND)


async def test_head_gives_the_headers_alone(base: str, group: Group) -> None:
    address = await linked(group)
    async with got(address, "HEAD") as head, got(address) as whole:
        assert (head.status, await head.read()) == (200, b"")
        assert head.headers["ETag"] == whole.headers["ETag"]
        assert head.headers["Content-Length"] == whole.headers["Content-Length"]


async def test_what_has_not_changed_is_not_sent_again(base: str, group: Group) -> None:
    address = await linked(group)
    async with got(address) as first:
        tag = first.headers["ETag"]
    for known in (tag, f'"other", W/{tag}', "*"):
        async with got(address, If_None_Match=known) as again:
            assert (again.status, await again.read()) == (304, b"")
    await group.says(Layer(mass_kg=1.0, bin="new one"))
    async with got(address, If_None_Match=tag) as changed:
        assert changed.status == 200
        assert changed.headers["ETag"] != tag
        assert "new one" in await changed.text()


async def test_a_room_that_was_left_is_no_longer_served(
    base: str, group: Group, db: Database
) -> None:
    address = await linked(group)
    await rooms.leave(db, group.book.room.address, BEGIN)
    async with got(address) as answer:
        assert answer.status == 404


async def test_no_address_is_logged(
    base: str, group: Group, caplog: pytest.LogCaptureFixture
) -> None:
    caplog.set_level(logging.INFO)
    caplog.set_level(logging.DEBUG, "aiohttp")
    address = await linked(group)
    async with got(address) as answer:
        assert answer.status == 200
    assert address.split("/")[3] not in caplog.text


async def test_the_public_address_is_the_one_that_was_set(db: Database, group: Group) -> None:
    async with served(db, "127.0.0.1:0", "https://bins.example.org/", lambda: BEGIN):
        assert (await linked(group)).startswith("https://bins.example.org/")


async def test_where_nothing_is_served_the_bot_says_so(db: Database, group: Group) -> None:
    async with served(db, "", "", lambda: BEGIN) as address:
        assert address is None
        said = (await group.says(Set(what="calendar link", value=""))).say
    assert "listen" in said
    assert "http" not in said


async def test_a_place_that_is_taken_stops_nothing_else(
    db: Database, base: str, caplog: pytest.LogCaptureFixture
) -> None:
    async with served(db, base.removeprefix("http://"), "", lambda: BEGIN) as address:
        assert address is None
    assert "cannot listen" in caplog.text


async def test_the_page_follows_the_day(db: Database, group: Group) -> None:
    await group.says(Layer(mass_kg=1.0, bin="shed"))
    day = BEGIN

    def now() -> datetime:
        return day

    clock: Callable[[], datetime] = now
    async with served(db, "127.0.0.1:0", "", clock):
        board = (await linked(group)).removesuffix("calendar.ics")
        async with got(board) as first:
            assert "Monday 2 March 2026" in await first.text()
        day += timedelta(days=1)
        async with got(board) as second:
            assert "Tuesday 3 March 2026" in await second.text()
    assert await session.address(db)
