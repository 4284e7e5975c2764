"""The calendar and the board over HTTP, each at an address that only its readers know.

Any other address, a method that is not asked for and a link that was revoked get the same 404. No
address is ever logged.
"""

import hashlib
import logging
from collections.abc import AsyncIterator, Callable, Coroutine
from contextlib import asynccontextmanager
from dataclasses import dataclass
from datetime import date, datetime
from functools import partial
from typing import Any

from aiohttp import web

from bot.board import POLICY, as_page
from bot.feed import as_calendar
from storage import links, session
from storage.book import Book
from storage.database import Database
from storage.links import Link
from storage.moments import local_day
from storage.revision import Revision, revision

log = logging.getLogger(__name__)

CALENDAR = "calendar.ics"
BOARD = ""
"""The names of the two pages under an address."""

LONGEST_PATH = 200

HEADERS = {
    "Cache-Control": "private, no-cache",
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
    "X-Robots-Tag": "noindex, nofollow",
    "Content-Security-Policy": POLICY,
}


Make = Callable[[Link, datetime, Database], Coroutine[Any, Any, bytes]]


@dataclass(frozen=True, slots=True)
class Page:
    """A page as it was made, with what it was made from."""

    revision: Revision
    day: date
    body: bytes
    etag: str


class Pages:
    """Answers requests from the book; a page is made anew only when the book or the day changed."""

    def __init__(self, db: Database, now: Callable[[], datetime]) -> None:
        self._db = db
        self._now = now
        self._made: dict[str, Page] = {}

    def application(self) -> web.Application:
        """The web application that serves them."""
        app = web.Application()
        app.router.add_route("*", "/{path:.*}", self._answer)
        app.on_response_prepare.append(_is_nobody)
        return app

    async def _answer(self, request: web.Request) -> web.Response:
        found = await self._page(request)
        if found is None:
            path = request.match_info["path"]
            if request.method in ("GET", "HEAD") and await self._is_board(f"{path}/"):
                return web.Response(status=308, headers={**HEADERS, "Location": f"{path}/"})
            self._made.pop(path, None)  # if it was revoked
            return web.Response(status=404, text="Not found\n", headers=HEADERS)
        page, kind = found
        headers = {**HEADERS, "ETag": page.etag}
        if any(tag.value in ("*", page.etag.strip('"')) for tag in request.if_none_match or ()):
            return web.Response(status=304, headers=headers)
        return web.Response(body=page.body, content_type=kind, charset="utf-8", headers=headers)

    async def _page(self, request: web.Request) -> tuple[Page, str] | None:
        path = request.match_info["path"]
        if request.method not in ("GET", "HEAD"):
            return None
        link, name = await self._opened(path)
        if link is None:
            return None
        if name == CALENDAR:
            return await self._kept(path, link, self._calendar), "text/calendar"
        if name == BOARD and link.member is None:
            return await self._kept(path, link, self._board), "text/html"
        return None

    async def _is_board(self, path: str) -> bool:
        """Whether a board lies there: phones and mail programs cut the slash off its address."""
        link, name = await self._opened(path)
        return link is not None and link.member is None and name == BOARD

    async def _opened(self, path: str) -> tuple[Link | None, str]:
        """The link whose address a path begins with, and the name of the page behind it."""
        token, slash, name = path.partition("/")
        if len(path) > LONGEST_PATH or not slash:
            return None, name
        return await links.opened_by(self._db, token), name

    async def _kept(self, path: str, link: Link, make: Make) -> Page:
        now, present = self._now(), await revision(self._db, link.room)
        day = local_day(now, link.room.zone)
        page = self._made.get(path)
        if page is None or (page.revision, page.day) != (present, day):
            # On the book's own thread: a board of a hundred bins takes longer than others may wait.
            body = await self._db.ask(partial(make, link, now))
            page = Page(present, day, body, f'"{hashlib.sha256(body).hexdigest()[:32]}"')
            self._made[path] = page
        return page

    async def _calendar(self, link: Link, now: datetime, db: Database) -> bytes:
        book = Book(db, link.room)
        return await as_calendar(book, now, member=link.member, with_cancelled=True)

    async def _board(self, link: Link, now: datetime, db: Database) -> bytes:
        return await as_page(Book(db, link.room), now)


async def _is_nobody(request: web.Request, response: web.StreamResponse) -> None:
    """Say nothing about the program that answers."""
    del request
    response.headers.pop("Server", None)


@asynccontextmanager
async def served(
    db: Database, listen: str, address: str, now: Callable[[], datetime]
) -> AsyncIterator[str | None]:
    """Serve while inside, at `listen` ("host:port"; empty: not at all).

    Gives the public address, which is `address` if that is not empty; None where nobody can be
    served: that is said, and no reason for the bot not to work.
    """
    runner = web.AppRunner(Pages(db, now).application(), access_log=None)
    await runner.setup()
    try:
        base = await _listening(runner, listen, address) if listen else None
        await session.set_address(db, base)
        yield base
    finally:
        await runner.cleanup()


async def _listening(runner: web.AppRunner, listen: str, address: str) -> str | None:
    host, _, port = listen.rpartition(":")
    try:
        await web.TCPSite(runner, host.strip("[]"), int(port)).start()
    except OSError as error:
        log.warning("calendars and boards are not served: cannot listen at %s (%s)", listen, error)
        return None
    chosen = runner.addresses[0][1]
    return address.rstrip("/") or f"http://{host}:{chosen}"
