"""A neighbour at matrix-js-sdk on node: a client, and an encryption library, of another make."""

import asyncio
import itertools
import json
import os
import shutil
import subprocess
from asyncio.subprocess import DEVNULL, PIPE, Process
from collections.abc import AsyncIterator, Callable, Mapping
from contextlib import asynccontextmanager
from pathlib import Path
from tempfile import mkdtemp
from typing import Any

from bot.homeserver import Homeserver, User

LIBRARY = "matrix-js-sdk@37.5.0"
PROGRAM = Path(__file__).with_name("other_client.mjs")
INSTALL_SECONDS = 300
PATIENCE_SECONDS = 60.0

Raw = Mapping[str, Any]


def missing() -> str | None:
    """What is not there and ought to be; None if all is."""
    lacking = [program for program in ("node", "npm") if shutil.which(program) is None]
    return f"{' and '.join(lacking)} not installed" if lacking else None


def library() -> Path:
    """The folder of the library's modules: fetched once, and kept outside the source tree."""
    cache = Path(os.environ.get("XDG_CACHE_HOME") or Path.home() / ".cache") / "pailkeeper"
    kept = cache / LIBRARY
    if not kept.exists():
        cache.mkdir(parents=True, exist_ok=True)
        # Elsewhere first: an install that was broken off is never taken for a whole one.
        fresh = Path(mkdtemp(dir=cache))
        quiet = ("--no-audit", "--no-fund", "--ignore-scripts", "--loglevel=error")
        subprocess.run(
            ["npm", "install", *quiet, "--prefix", str(fresh), LIBRARY],
            check=True,
            timeout=INSTALL_SECONDS,
        )
        try:
            fresh.rename(kept)
        except OSError:  # somebody else was faster
            shutil.rmtree(fresh)
    return kept / "node_modules"


class OtherClient:
    """One person's device; `heard` holds what it could read, and what it could not, in order."""

    def __init__(self, process: Process, user: User) -> None:
        self._process = process
        self._numbers = itertools.count(1)
        self._results: dict[int, Raw] = {}
        self._news = asyncio.Condition()
        self.user = user
        self.heard: list[Raw] = []

    async def listen(self) -> None:
        """Take in what the process says, until it ends."""
        assert self._process.stdout is not None
        async for line in self._process.stdout:
            said = json.loads(line)
            async with self._news:
                if "heard" in said:
                    self.heard.append(said["heard"])
                else:
                    self._results[said["number"]] = said
                self._news.notify_all()

    async def result(self, number: int) -> Any:
        """What came of an order; 0 is its start."""
        async with asyncio.timeout(PATIENCE_SECONDS), self._news:
            await self._news.wait_for(lambda: number in self._results)
        said = self._results[number]
        if "error" in said:
            raise RuntimeError(said["error"])
        return said["result"]

    async def does(self, order: str, **given: Any) -> Any:
        """Give an order and wait for its result."""
        number = next(self._numbers)
        assert self._process.stdin is not None
        line = json.dumps({"number": number, "order": order, **given}) + "\n"
        self._process.stdin.write(line.encode())
        await self._process.stdin.drain()
        return await self.result(number)

    async def send(self, room: str, kind: str, content: Raw) -> str:
        """Send any event; its id."""
        sent = await self.does("send", room=room, type=kind, content=content)
        return str(sent["event_id"])

    async def say(self, room: str, text: str) -> str:
        """Write a message."""
        return await self.send(room, "m.room.message", {"msgtype": "m.text", "body": text})

    async def edit(self, room: str, event: str, text: str) -> str:
        """Change the words of a message."""
        new = {"msgtype": "m.text", "body": text}
        relation = {"rel_type": "m.replace", "event_id": event}
        content = {**new, "body": f"* {text}", "m.new_content": new, "m.relates_to": relation}
        return await self.send(room, "m.room.message", content)

    async def react(self, room: str, event: str, sign: str) -> str:
        """Put a sign on a message."""
        relation = {"rel_type": "m.annotation", "event_id": event, "key": sign}
        return await self.send(room, "m.reaction", {"m.relates_to": relation})

    async def hears(self, wanted: Callable[[Raw], bool]) -> Raw:
        """The first thing that is wanted, once it is there."""

        def found() -> Raw | None:
            return next((raw for raw in self.heard if wanted(raw)), None)

        try:
            async with asyncio.timeout(PATIENCE_SECONDS), self._news:
                await self._news.wait_for(lambda: found() is not None)
        except TimeoutError:
            raise TimeoutError(f"waited in vain; heard {self.heard}") from None
        raw = found()
        assert raw is not None
        return raw

    async def answer_to(self, event: str) -> Raw:
        """What is said in reply to an event."""

        def replies(raw: Raw) -> bool:
            return bool(
                ((raw["relation"] or {}).get("m.in_reply_to") or {}).get("event_id") == event
            )

        return await self.hears(replies)

    async def change_of(self, event: str) -> str:
        """The new words of a message, once they were changed."""

        def changes(raw: Raw) -> bool:
            relation = raw["relation"] or {}
            return bool(
                relation.get("rel_type") == "m.replace" and relation.get("event_id") == event
            )

        return str((await self.hears(changes))["content"]["m.new_content"]["body"])


@asynccontextmanager
async def other_client(server: Homeserver, user: User) -> AsyncIterator[OtherClient]:
    """A neighbour who is listening."""
    modules = await asyncio.to_thread(library)
    process = await asyncio.create_subprocess_exec(
        *("node", str(PROGRAM), str(modules), server.url, user.id, user.device, user.token),
        stdin=PIPE,
        stdout=PIPE,
        stderr=DEVNULL,
        limit=2**22,
    )
    somebody = OtherClient(process, user)
    listening = asyncio.create_task(somebody.listen())
    try:
        await somebody.result(0)
        yield somebody
    finally:
        if process.returncode is None:
            process.kill()
        await process.wait()
        await asyncio.gather(listening, return_exceptions=True)
