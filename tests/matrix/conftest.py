"""A real homeserver for all tests here, and a street of neighbours with the bot for each."""

import asyncio
import itertools
import os
import sqlite3
import sys
from asyncio.subprocess import PIPE, Process
from collections.abc import AsyncIterator, Callable, Iterator
from contextlib import AsyncExitStack, closing
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any
from urllib.parse import quote
from uuid import uuid4

import pytest

from bot import account as accounts
from bot import homeserver
from bot.account import Account
from bot.connection import opened
from bot.homeserver import Homeserver, User
from bot.run import take_part
from bot.sandbox_neighbour import Neighbour, Raw, neighbour
from bot.settings import Home, Settings
from storage import inbox
from storage.database import Database

ENCRYPTION = {
    "type": "m.room.encryption",
    "state_key": "",
    "content": {"algorithm": "m.megolm.v1.aes-sha2"},
}
_streets = itertools.count(1)


@pytest.fixture(scope="session")
def server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Homeserver]:
    if not homeserver.is_installed():
        message = "Synapse is not installed: pip install -e '.[homeserver]'"
        if os.environ.get("CI"):
            pytest.fail(message)
        pytest.skip(message)
    with homeserver.running(tmp_path_factory.mktemp("homeserver")) as running:
        yield running


@dataclass
class Bot:
    """The bot in this process, to be started and stopped."""

    user: User
    home: Home
    account: Account
    settings: Settings = field(default_factory=Settings)
    task: asyncio.Task[None] | None = None
    _stop: asyncio.Event = field(default_factory=asyncio.Event)

    def start(self) -> None:
        self._stop = asyncio.Event()
        account = accounts.read(self.home)
        assert account is not None
        client = opened(self.home, account, self.settings.devices)
        taking_part = take_part(self.home, self.settings, account, client, self._stop)
        self.task = asyncio.create_task(taking_part)

    async def stop(self) -> None:
        if self.task is not None:
            self._stop.set()
            task, self.task = self.task, None
            async with asyncio.timeout(60):
                await task

    def said(self, words: str = "") -> Callable[[Raw], bool]:
        """Whether something heard in a room is the bot's, with these words in it."""

        def is_said(raw: Raw) -> bool:
            is_message = raw["type"] == "m.room.message" and raw["sender"] == self.user.id
            return is_message and words in str(raw["content"].get("body"))

        return is_said

    def replies(self, somebody: Neighbour, room: str) -> list[str]:
        """The events it replied to, in order; a doubled reply would stand here twice."""
        said = [raw["content"] for raw in somebody.heard[room] if self.said()(raw)]
        relations = [content.get("m.relates_to", {}) for content in said]
        return [r["m.in_reply_to"]["event_id"] for r in relations if "m.in_reply_to" in r]

    async def keep_token(self, token: str) -> None:
        """Have the book, which is not open, believe that all up to `token` was heard."""
        db = await Database.open(self.home.book)
        await inbox.take_in(db, [], token)
        await db.close()

    async def answers(self, somebody: Neighbour, room: str, words: str = "@pailkeeper help") -> str:
        """Have somebody say something, and wait until it is answered; the event said."""
        event = await somebody.say(room, words)
        await somebody.answer_to(room, event, self.user.id)
        return event

    async def comes_to(self, question: str) -> None:
        """Wait until the book answers a question with any row."""
        async with asyncio.timeout(60):
            while not self._has(question):  # noqa: ASYNC110 - a file on disk rings no bell
                await asyncio.sleep(0.05)

    async def comes_to_hold(self, question: str, rows: list[tuple[Any, ...]]) -> None:
        """Wait until the book answers a question with just these rows."""
        async with asyncio.timeout(60):
            while self.rows(question) != rows:  # noqa: ASYNC110 - a file on disk rings no bell
                await asyncio.sleep(0.05)

    def _has(self, question: str) -> bool:
        """Whether the book answers with any row; not while it is only being made."""
        try:
            return self.home.book.exists() and bool(self.rows(question))
        except sqlite3.OperationalError:
            return False

    def rows(self, question: str, *values: Any) -> list[tuple[Any, ...]]:
        """What the book on disk says."""
        with closing(sqlite3.connect(self.home.book)) as book:
            return list(book.execute(question, values))


@dataclass
class Street:
    """Neighbours, their rooms and the bot."""

    server: Homeserver
    folder: Path
    stack: AsyncExitStack
    number: int = field(default_factory=lambda: next(_streets))
    users: dict[str, User] = field(default_factory=dict)

    def user(self, name: str) -> User:
        user = self.server.register(f"{name}{self.number}", display=name.title())
        self.users[user.name] = user
        return user

    def limit(self, user: User, per_second: float, burst: int) -> None:
        """How many messages the homeserver takes from a user; 0 and 0: any number."""
        admin = self.server.register(f"admin{uuid4().hex}", admin=True)
        path = f"/_synapse/admin/v1/users/{user.id}/override_ratelimit"
        body = {"messages_per_second": per_second, "burst_count": burst}
        status, answer = self.server.call("POST", path, body, admin.token)
        assert status == 200, answer

    async def neighbour(self, name: str) -> Neighbour:
        user = self.user(name)
        return await self.stack.enter_async_context(
            neighbour(self.server, user, self.folder / name)
        )

    def bot(self, user: User | None = None, **settings: Any) -> Bot:
        user = user or self.user("pailkeeper")
        home = Home(self.folder / "bot")
        home.folder.mkdir(mode=0o700)
        account = Account(
            homeserver=self.server.url,
            user=user.id,
            device=user.device,
            token=user.token,
            store_key="a key for tests",
        )
        accounts.write(home, account)
        home.settings.touch(mode=0o600)
        home.settings.write_text('listen = ""\n')  # bots of several tests would want one port
        bot = Bot(user, home, account, Settings(**{"listen": "", **settings}))
        self.stack.push_async_callback(bot.stop)
        return bot

    async def process(self, *more: str, bot: Bot) -> Process:
        """The bot as a process of its own, ended with the test at the latest."""
        command = [sys.executable, "-m", "bot", "run", "--home", str(bot.home.folder), *more]
        process = await asyncio.create_subprocess_exec(*command, stdout=PIPE, stderr=PIPE)

        async def end() -> None:
            if process.returncode is None:
                process.kill()
                await process.communicate()

        self.stack.push_async_callback(end)
        return process

    async def room(
        self, host: Neighbour, *guests: str, version: str = "12", encrypted: bool = True
    ) -> str:
        """A new room of the host's, with invitations for the guests (user ids)."""
        status, answer = self.server.call(
            "POST",
            "/_matrix/client/v3/createRoom",
            {
                "preset": "private_chat",
                "room_version": version,
                "invite": list(guests),
                "initial_state": [ENCRYPTION] if encrypted else [],
            },
            host.client.access_token,
        )
        assert status == 200, answer
        return str(answer["room_id"])

    async def second_device(self, of: Neighbour) -> Neighbour:
        """The same person at another device, which the first has not signed."""
        user = self.users[of.name]
        body = {
            "type": "m.login.password",
            "identifier": {"type": "m.id.user", "user": user.id},
            "password": user.password,
        }
        status, answer = self.server.call("POST", "/_matrix/client/v3/login", body)
        assert status == 200, answer
        again = replace(user, device=answer["device_id"], token=answer["access_token"])
        folder = self.folder / again.device
        return await self.stack.enter_async_context(neighbour(self.server, again, folder))

    def curve_key(self, user: User) -> str:
        """The key that to-device messages to a user's device are made for."""
        _, answer = self.server.call(
            "POST",
            "/_matrix/client/v3/keys/query",
            {"device_keys": {user.id: []}},
            user.token,
        )
        keys = answer["device_keys"][user.id][user.device]["keys"]
        return str(keys[f"curve25519:{user.device}"])

    def send_ciphertext(
        self, sender: Neighbour, room: str, plain: bytes, clear: dict[str, Any] | None = None
    ) -> str:
        """Send any bytes, encrypted for a room that the sender has spoken in; the event's id."""
        olm = sender.client.olm
        assert olm is not None
        session = olm.outbound_group_sessions[room]
        content = {
            "algorithm": "m.megolm.v1.aes-sha2",
            "sender_key": olm.account.identity_keys["curve25519"],
            "ciphertext": session._session.encrypt(plain).to_base64(),
            "session_id": session.id,
            "device_id": sender.client.device_id,
        }
        path = f"/_matrix/client/v3/rooms/{quote(room)}/send/m.room.encrypted/{uuid4().hex}"
        token = sender.client.access_token
        status, answer = self.server.call("PUT", path, content | (clear or {}), token)
        assert status == 200, answer
        return str(answer["event_id"])

    async def begun(self, **more: Any) -> tuple[Neighbour, Bot, str]:
        """A neighbour, the bot at work, and a room with both."""
        ines, bot = await self.neighbour("ines"), self.bot()
        bot.start()
        return ines, bot, await self.room_with(bot, ines, **more)

    async def room_with(self, bot: Bot, host: Neighbour, **more: Any) -> str:
        """A room in which the bot is and has greeted."""
        room = await self.room(host, bot.user.id, **more)
        await host.hears(room, bot.said())
        return room


@pytest.fixture
async def street(server: Homeserver, tmp_path: Path) -> AsyncIterator[Street]:
    async with AsyncExitStack() as stack:
        yield Street(server, tmp_path, stack)
