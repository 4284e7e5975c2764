"""A running bot in 1,000 rooms: its memory after a day and after 200,000 messages, and its loop.

The bot is a process of its own, `python -m bot run`, on a homeserver of this bench: one that knows
1,000 rooms with six members each, tells their messages as fast as the bot asks, and takes what it
says. What a real one would do slowly it does at once, so that a year's talk fits into minutes.
"""

import asyncio
import itertools
import json
import sys
import tempfile
from asyncio.subprocess import DEVNULL, Process
from collections import Counter
from contextlib import closing
from pathlib import Path
from sqlite3 import OperationalError, connect
from typing import Any

from aiohttp import web

from bot import account as accounts
from bot.account import Account
from bot.settings import Home
from tests.bench import traffic
from tests.bench.held import BAR_MS, Held
from tests.bench.measure import Measured

ROOMS, A_DAY, MESSAGES = 1_000, 6_000, 200_000
IN_ONE_SYNC = 200
MEGABYTES = 150.0
NO_GROWTH = 1.05
"""Times the memory after a day: what is more than noise is growth."""


class FakeHomeserver:
    """Tells so many messages as are allowed, in answers to syncs, and counts what it is sent."""

    def __init__(self) -> None:
        self._events = traffic.events(ROOMS)
        self._allowed = asyncio.Semaphore(0)
        self._is_known = False
        self.told = 0
        self.sent = 0

    def allow(self, messages: int) -> None:
        """So many more may be told."""
        for _ in range(messages // IN_ONE_SYNC):
            self._allowed.release()

    async def answer(self, request: web.Request) -> web.Response:
        """Any request of the bot's."""
        path = request.path
        if path.endswith("/sync"):
            if request.query.get("since"):
                return web.json_response(await self._sync())
            # The first time all rooms are asked for; later only whether there are invitations.
            first, self._is_known = not self._is_known, True
            return web.json_response(self.first_sync() if first else _sync_of({}))
        if "/send/" in path:
            self.sent += 1
            return web.json_response({"event_id": f"$sent{self.sent}"})
        if path.endswith("/keys/upload"):
            return web.json_response({"one_time_key_counts": {"signed_curve25519": 50}})
        if path.endswith("/keys/query"):
            return web.json_response({"device_keys": {}, "failures": {}})
        if path.endswith("/keys/claim"):
            return web.json_response({"one_time_keys": {}, "failures": {}})
        return web.json_response({"errcode": "M_UNRECOGNIZED", "error": path}, status=404)

    def first_sync(self) -> dict[str, Any]:
        """All rooms with their members, and the bot coming into them before anything was said."""
        rooms = (f"!yard{number}:bench" for number in range(ROOMS))
        members = [f"@{name}:bench" for name in traffic.MEMBERS]
        return _sync_of(
            {
                room: ([_member(room, user) for user in members], [_member(room, traffic.OWN)])
                for room in rooms
            }
        )

    async def _sync(self) -> dict[str, Any]:
        try:
            async with asyncio.timeout(5):
                await self._allowed.acquire()
        except TimeoutError:
            return _sync_of({})
        rooms: dict[str, tuple[list[dict[str, Any]], list[dict[str, Any]]]] = {}
        for raw in itertools.islice(self._events, IN_ONE_SYNC):
            rooms.setdefault(raw["room_id"], ([], []))[1].append(raw)
        self.told += IN_ONE_SYNC
        return _sync_of(rooms)


_batches = itertools.count(1)


def _sync_of(
    rooms: dict[str, tuple[list[dict[str, Any]], list[dict[str, Any]]]],
) -> dict[str, Any]:
    joined = {
        room: {
            "state": {"events": state},
            "timeline": {"events": timeline, "limited": False, "prev_batch": "p"},
            "ephemeral": {"events": []},
            "account_data": {"events": []},
            "unread_notifications": {},
            "summary": {},
        }
        for room, (state, timeline) in rooms.items()
    }
    return {
        "next_batch": f"s{next(_batches)}",
        "rooms": {"join": joined, "invite": {}, "leave": {}},
        "to_device": {"events": []},
        "device_lists": {"changed": [], "left": []},
        "device_one_time_keys_count": {"signed_curve25519": 50},
        "presence": {"events": []},
    }


def _member(room: str, user: str) -> dict[str, Any]:
    name = user[1:].split(":", 1)[0]
    return {
        "type": "m.room.member",
        "event_id": f"$come-{name}-{room[1:]}",
        "sender": user,
        "state_key": user,
        "origin_server_ts": int(traffic.BEGIN.timestamp() * 1000),
        "content": {"membership": "join", "displayname": name},
    }


async def measure(messages: int = MESSAGES) -> list[Measured]:
    """Resident megabytes after a day and after all; the longest step of the loop (ms)."""
    server = FakeHomeserver()
    app = web.Application(client_max_size=2**26)
    app.router.add_route("*", "/{path:.*}", server.answer)
    runner = web.AppRunner(app, access_log=None)
    await runner.setup()
    try:
        site = web.TCPSite(runner, "127.0.0.1", 0)
        await site.start()
        with tempfile.TemporaryDirectory() as folder:
            return await _watch(server, Path(folder), runner.addresses[0][1], messages)
    finally:
        await runner.cleanup()


async def _watch(server: FakeHomeserver, folder: Path, port: int, messages: int) -> list[Measured]:
    home, report = Home(folder), folder / "held.json"
    accounts.write(
        home,
        Account(
            homeserver=f"http://127.0.0.1:{port}",
            user=traffic.OWN,
            device="BENCH",
            token="a token",
            store_key="a key for the bench",
            seeds={},
        ),
    )
    home.settings.touch(mode=0o600)
    home.settings.write_text('listen = ""\n', encoding="utf-8")
    command = ("-m", "tests.bench.watched", str(report), "run", "--home", str(folder))
    bot = await asyncio.create_subprocess_exec(sys.executable, *command, stdout=DEVNULL)
    try:
        after: Counter[int] = Counter()
        for until in (A_DAY, messages // 2, messages):
            server.allow(until - server.told)
            await _worked_off(home, until, bot)
            after[until] = _resident_kb(bot)
    finally:
        bot.terminate()
        await bot.wait()
    held = Held(**json.loads(report.read_text(encoding="utf-8")))
    day, half, full = (after[until] / 1024 for until in (A_DAY, messages // 2, messages))
    return [
        Measured(
            what=f"resident after a day in {ROOMS:,} rooms", value=day, unit="MB", bar=MEGABYTES
        ),
        Measured(
            what=f"resident after {messages:,} messages",
            value=full,
            unit="MB",
            peer=f"after {messages // 2:,}",
            beside=half,
            bar=NO_GROWTH,
            note=f"{server.sent:,} messages were sent in the meantime",
        ),
        Measured(
            what="longest step of the loop, by the processor's time",
            value=1000 * held.processor,
            unit="ms",
            bar=BAR_MS,
            note=held.told(),
        ),
    ]


async def _worked_off(home: Home, messages: int, bot: Process) -> None:
    """Wait until the bot has heard and answered so many messages."""
    while True:
        await asyncio.sleep(1)
        assert bot.returncode is None, "the bot ended"
        if _heard(home) >= messages and not _count(
            home, "SELECT count(*) FROM inbox WHERE raw NOTNULL"
        ):
            return


def _heard(home: Home) -> int:
    return _count(home, "SELECT count(*) FROM inbox WHERE kind = 'said'")


def _count(home: Home, question: str) -> int:
    try:
        with closing(connect(home.book)) as book:
            return int(book.execute(question).fetchone()[0])
    except OperationalError:  # while it is being made
        return 0


def _resident_kb(process: Process) -> int:
    status = Path(f"/proc/{process.pid}/status").read_text(encoding="ascii")
    return int(next(line.split()[1] for line in status.splitlines() if line.startswith("VmRSS")))
