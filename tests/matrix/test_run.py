"""`python -m bot run`, as a person runs it: how it starts, stops and refuses."""

from __future__ import annotations

import asyncio
import signal
import socket
import sqlite3
import stat
import subprocess
import sys
from asyncio.subprocess import Process
from contextlib import closing
from pathlib import Path
from typing import TYPE_CHECKING

import aiohttp
import pytest

from bot import account as accounts
from bot.account import Account, sole_user
from bot.cross_signing import new_seeds
from bot.settings import Home
from storage import links, rooms, session
from storage.book import Book
from storage.database import Database

if TYPE_CHECKING:
    from tests.matrix.conftest import Bot, Street


def command(home: Path, *more: str) -> list[str]:
    return [sys.executable, "-m", "bot", "run", "--home", str(home), *more]


async def started(street: Street, bot: Bot, *more: str) -> Process:
    """The bot as a process of its own, once it listens."""
    process = await street.process(*more, bot=bot)
    assert process.stdout is not None
    async with asyncio.timeout(60):
        line = await process.stdout.readline()
    assert line.decode() == "Listening. Stop with Ctrl-C.\n"
    return process


@pytest.mark.parametrize("number", [signal.SIGINT, signal.SIGTERM])
async def test_a_signal_stops_it_at_once_and_in_good_order(street: Street, number: int) -> None:
    process = await started(street, street.bot())
    process.send_signal(number)
    async with asyncio.timeout(5):
        assert await process.communicate() == (b"", b"")
    assert process.returncode == 0


async def test_a_second_signal_does_not_wait(street: Street) -> None:
    process = await started(street, street.bot())
    process.send_signal(signal.SIGTERM)
    process.send_signal(signal.SIGINT)
    async with asyncio.timeout(5):
        assert (await process.communicate())[1] == b""
    assert process.returncode in (0, 130)


async def test_what_it_keeps_is_for_its_owner_only(street: Street) -> None:
    bot = street.bot()
    process = await started(street, bot)
    process.terminate()
    await process.communicate()
    kept = [path for path in bot.home.folder.rglob("*") if path.is_file()]
    assert {"login.json", "book.db"} <= {path.name for path in kept}
    assert {oct(stat.S_IMODE(path.stat().st_mode)) for path in kept} == {"0o600"}


async def test_it_says_nothing_of_what_people_say(street: Street) -> None:
    ines, bot = await street.neighbour("ines"), street.bot()
    process = await started(street, bot, "--verbose")
    room = await street.room_with(bot, ines)
    await ines.say(room, "SOMETHING PRIVATE")
    strange = {"msgtype": ["SOMETHING PRIVATE"], "body": {"SOMETHING": "PRIVATE"}}
    await ines.send(room, "m.room.message", strange)
    await bot.answers(ines, room)
    process.terminate()
    out, err = await process.communicate()
    said = (out + err).decode()
    assert "came to a room" in said
    account = accounts.read(bot.home)
    assert account is not None
    assert account.seeds
    for private in ("PRIVATE", account.token, account.store_key, *account.seeds.values()):
        assert private not in said


def test_without_a_login_it_says_how_to_get_one(tmp_path: Path) -> None:
    done = subprocess.run(command(tmp_path), text=True, capture_output=True, check=False)
    assert done.returncode == 2
    assert "python -m bot login" in done.stderr
    assert len(done.stderr.splitlines()) == 1


def test_a_second_bot_at_the_same_home_is_refused(street: Street) -> None:
    bot = street.bot()
    with sole_user(Home(bot.home.folder)):
        done = subprocess.run(command(bot.home.folder), text=True, capture_output=True, check=False)
    assert done.returncode == 2
    assert "Another bot is using" in done.stderr


async def test_a_bot_that_is_signed_out_ends_with_what_to_do(street: Street) -> None:
    bot = street.bot()
    process = await started(street, bot)
    path = "/_matrix/client/v3/logout"
    assert street.server.call("POST", path, {}, bot.user.token)[0] == 200
    async with asyncio.timeout(10):
        _, err = await process.communicate()
    assert process.returncode == 2
    assert "The homeserver has signed this bot out. Run" in err.decode()
    assert len(err.decode().splitlines()) == 1


@pytest.mark.parametrize(("keys", "says"), [(None, "are gone"), ("Dear all", "are damaged")])
async def test_a_device_whose_keys_are_lost_is_not_taken_up_again(
    street: Street, keys: str | None, says: str
) -> None:
    bot = street.bot()
    process = await started(street, bot)
    process.terminate()
    await process.communicate()
    account = accounts.read(bot.home)
    assert account is not None
    store = accounts.key_store(bot.home, account)
    if keys is None:
        store.unlink()
    else:
        store.write_text(keys * 100)
    done = await asyncio.to_thread(
        subprocess.run, command(bot.home.folder), text=True, capture_output=True
    )
    assert done.returncode == 2
    assert says in done.stderr
    assert "python -m bot login" in done.stderr
    assert len(done.stderr.splitlines()) == 1


DIES_WRITING = """
import os, sqlite3, sys
store = sqlite3.connect(sys.argv[1], isolation_level=None)
store.execute("PRAGMA journal_mode = DELETE")
store.execute("CREATE TABLE key (id INTEGER PRIMARY KEY, secret BLOB)")
store.executemany("INSERT INTO key (secret) VALUES (?)", [(bytes(1000),)] * 200)
store.execute("PRAGMA cache_size = 1")
store.execute("BEGIN")
store.execute("UPDATE key SET secret = randomblob(1000)")
os._exit(0)
"""


def test_keys_that_a_crash_left_half_written_are_whole(tmp_path: Path) -> None:
    home = Home(tmp_path)
    home.keys.mkdir()
    account = Account(
        homeserver="", user="@p:test", device="P", token="", store_key="", seeds=new_seeds()
    )
    store = accounts.key_store(home, account)
    subprocess.run([sys.executable, "-c", DIES_WRITING, str(store)], check=True)
    assert store.with_name(f"{store.name}-journal").exists()
    accounts.refuse_lost_keys(home, account)
    with closing(sqlite3.connect(store)) as opened:
        assert opened.execute("SELECT DISTINCT secret FROM key").fetchall() == [(bytes(1000),)]


def test_a_broken_login_file_is_named(tmp_path: Path) -> None:
    (tmp_path / "login.json").write_text('{"homeserver": "http://x"')
    done = subprocess.run(command(tmp_path), text=True, capture_output=True, check=False)
    assert done.returncode == 2
    assert f"{tmp_path / 'login.json'} cannot be read" in done.stderr


async def test_it_serves_the_calendar_to_whoever_was_given_its_address(street: Street) -> None:
    ines, bot = await street.neighbour("ines"), street.bot()
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        place = f"127.0.0.1:{free.getsockname()[1]}"
    bot.home.settings.write_text(f'listen = "{place}"\n')
    await started(street, bot)
    room = await street.room_with(bot, ines)
    asked = await ines.say(room, "added 2 kg scraps to the shed bin")
    await ines.answer_to(room, asked, bot.user.id)
    db = await Database.open(bot.home.book)
    try:
        [known] = await rooms.every(db)
        async with db.transaction():
            await links.put(Book(db, known), None, "a-token", known.joined_at)
        base = await session.address(db)
    finally:
        await db.close()
    assert base == f"http://{place}"
    async with aiohttp.ClientSession() as web:
        async with web.get(f"{base}/a-token/calendar.ics") as answer:
            assert b"SUMMARY:Drain the shed bin" in await answer.read()
        async with web.get(f"{base}/another/calendar.ics") as answer:
            assert answer.status == 404
