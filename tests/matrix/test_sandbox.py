"""`python -m bot sandbox`, as a newcomer runs it."""

from __future__ import annotations

import asyncio
import re
import signal
import sys
from asyncio.subprocess import PIPE, Process
from collections.abc import AsyncIterator, Awaitable, Callable
from pathlib import Path
from urllib.parse import quote

import pytest

from bot.homeserver import Homeserver
from bot.sandbox_room import TALK

pytestmark = pytest.mark.usefixtures("server")


Start = Callable[..., Awaitable[Process]]


@pytest.fixture
async def sandbox() -> AsyncIterator[Start]:
    """Starts sandboxes, and ends those that the test did not."""
    started: list[Process] = []

    async def start(*words: str) -> Process:
        command = [sys.executable, "-m", "bot", "sandbox", *words]
        process = await asyncio.create_subprocess_exec(
            *command, stdin=PIPE, stdout=PIPE, stderr=PIPE
        )
        started.append(process)
        return process

    yield start
    for process in started:
        if process.returncode is None:
            process.terminate()
            await process.communicate()


async def shown_until(process: Process, words: str) -> str:
    """What it prints up to the line with these words."""
    assert process.stdout is not None
    shown = ""
    async with asyncio.timeout(60):
        while words not in shown:
            line = (await process.stdout.readline()).decode()
            assert line, shown
            shown += line
    return shown


async def test_it_plays_shows_the_answers_and_ends(sandbox: Start) -> None:
    process = await sandbox("--once")
    async with asyncio.timeout(60):
        out, err = await process.communicate()
    assert (process.returncode, err) == (0, b"")
    shown = re.sub(r"\s+", " ", out.decode())
    for line in TALK:
        assert line.text in shown
    assert shown.count("Pailkeeper:") > sum(line.answered for line in TALK)


async def test_it_can_be_joined_stays_and_leaves_nothing_behind(
    sandbox: Start, tmp_path: Path
) -> None:
    process = await sandbox("--home", str(tmp_path / "sandbox"))
    shown = await shown_until(process, "  room ")
    (url,) = re.findall(r"homeserver +(http\S+)", shown)
    (alias,) = re.findall(r"room +(#\S+)", shown)
    server = Homeserver(url, tmp_path, "")
    for name, password in re.findall(r"user +(\S+) +password +(\S+)", shown):
        who = {"type": "m.id.user", "user": name}
        body = {"type": "m.login.password", "identifier": who, "password": password}
        status, answer = server.call("POST", "/_matrix/client/v3/login", body)
        assert status == 200, answer
        path = f"/_matrix/client/v3/join/{quote(alias)}"
        assert server.call("POST", path, {}, answer["access_token"])[0] == 200
    await shown_until(process, "The room stays open")
    process.send_signal(signal.SIGINT)
    async with asyncio.timeout(60):
        _, err = await process.communicate()
    assert (process.returncode, err) == (0, b"")
    with pytest.raises(OSError, match="refused"):
        server.call("GET", "/health")
    again = await sandbox("--home", str(tmp_path / "sandbox"))
    _, err = await again.communicate()
    assert "is in use" in err.decode()


async def test_a_port_in_use_is_named(sandbox: Start, server: Homeserver) -> None:
    process = await sandbox("--port", server.url.rpartition(":")[2])
    _, err = await process.communicate()
    assert "Choose another with --port" in err.decode()
    assert len(err.decode().splitlines()) == 1
