"""From sending a message to hearing the reply, in real rooms, beside a bare echo bot.

A neighbour on a real Synapse writes to the bot and to the echo bot in turn, one message at a time;
each of the two is a process of its own. What the neighbour's client takes is in both figures.
"""

import asyncio
import sys
import tempfile
import time
from asyncio.subprocess import DEVNULL
from contextlib import AsyncExitStack
from pathlib import Path

from bot import account as accounts
from bot import homeserver
from bot.account import Account
from bot.gathering import OF_MEMBER_A_MINUTE
from bot.homeserver import User
from bot.sandbox_neighbour import Neighbour
from bot.settings import Home
from tests.bench.measure import Measured, median, p95
from tests.matrix.conftest import Street

MESSAGES, WARM_UP = 80, 10
IN_ONE_ROOM = OF_MEMBER_A_MINUTE - 5
"""Messages before the next room: of more in a minute the bot would tell the answers together."""
TIMES_THE_MEDIAN, TIMES_THE_P95 = 1.15, 1.3


async def measure() -> list[Measured]:
    """Median and p95 milliseconds, in a plain and in an encrypted room."""
    if not homeserver.is_installed():
        sys.stderr.write("Synapse is not installed: pip install -e '.[homeserver]'\n")
        return []
    made = []
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        with homeserver.running(folder / "homeserver") as server:
            for encrypted in (False, True):
                street_folder = folder / ("encrypted" if encrypted else "plain")
                street_folder.mkdir()
                async with AsyncExitStack() as stack:
                    made += await _measure(Street(server, street_folder, stack), encrypted)
    return made


async def _measure(street: Street, encrypted: bool) -> list[Measured]:
    writer = await street.neighbour("ines")
    bot, echo = street.bot(), street.user("echo")
    home = Home(street.folder / "echo")
    home.folder.mkdir()
    accounts.write(
        home,
        Account(
            homeserver=street.server.url,
            user=echo.id,
            device=echo.device,
            token=echo.token,
            store_key="a key for the bench",
        ),
    )
    for command in (
        ("-m", "bot", "run", "--home", str(bot.home.folder)),
        ("-m", "tests.bench.echo", str(home.folder)),
    ):
        process = await asyncio.create_subprocess_exec(sys.executable, *command, stdout=DEVNULL)
        street.stack.push_async_callback(process.wait)
        street.stack.callback(process.terminate)
    users = (bot.user, echo)
    rooms: list[str] = []
    spent: tuple[list[float], list[float]] = ([], [])
    for number in range(MESSAGES + WARM_UP):
        if number % IN_ONE_ROOM == 0:
            rooms = [await _room(street, writer, user, encrypted) for user in users]
        for user, room, of_one in zip(users, rooms, spent, strict=True):
            seconds = await _reply(writer, room, user, number)
            if number >= WARM_UP:
                of_one.append(1000 * seconds)
    kind = "encrypted" if encrypted else "plain"
    ours, theirs = spent
    return [
        Measured(
            what=f"reply in a room, {kind}: {name}",
            value=of(ours),
            unit="ms",
            peer="bare nio echo bot",
            beside=of(theirs),
            bar=bar,
        )
        for name, of, bar in (
            ("median", median, TIMES_THE_MEDIAN),
            ("p95", p95, TIMES_THE_P95),
        )
    ]


async def _room(street: Street, writer: Neighbour, user: User, encrypted: bool) -> str:
    room = await street.room(writer, user.id, encrypted=encrypted)

    def is_in() -> bool:
        known = writer.client.rooms.get(room)
        return known is not None and user.id in known.users and not known.invited_users

    await writer.until(is_in)
    return room


async def _reply(writer: Neighbour, room: str, user: User, number: int) -> float:
    words = f"added {number % 9 / 10 + 0.3:.1f} kg scraps to the shed bin"
    if number % 20 == 19:
        words = "what's due?"
    began = time.perf_counter()
    event = await writer.say(room, words)
    await writer.answer_to(room, event, user.id)
    return time.perf_counter() - began
