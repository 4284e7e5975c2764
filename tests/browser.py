"""A real browser (Chromium) without a window, told what to do over its debugging protocol."""

import asyncio
import base64
import itertools
import os
import shutil
import time
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Any

import aiohttp

FLAGS = (
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--hide-scrollbars",
    "--remote-debugging-port=0",
)

PROGRAM = shutil.which("chromium") or shutil.which("chromium-browser")

IS_REQUIRED = os.environ.get("CI") == "true"


class Browser:
    """One page of a browser."""

    def __init__(self, socket: aiohttp.ClientWebSocketResponse) -> None:
        self._socket = socket
        self._numbers = itertools.count(1)
        self.complaints: list[str] = []
        """What the browser wrote into the page's log: refused styles, failed requests, …"""

    async def call(self, method: str, **params: Any) -> dict[str, Any]:
        """Give an order and wait for its result."""
        number = next(self._numbers)
        await self._socket.send_json({"id": number, "method": method, "params": params})
        while True:
            said = await self._heard()
            if said.get("id") == number:
                assert "error" not in said, said
                result: dict[str, Any] = said["result"]
                return result

    async def _heard(self) -> dict[str, Any]:
        async with asyncio.timeout(60):
            said: dict[str, Any] = await self._socket.receive_json()
        if said.get("method") == "Log.entryAdded":
            self.complaints.append(said["params"]["entry"]["text"])
        return said

    async def open(self, url: str, *, width: int, height: int = 900) -> None:
        """Show a page in a window of that size (CSS pixels)."""
        for domain in ("Page", "Log", "Accessibility"):
            await self.call(f"{domain}.enable")
        await self.call(
            "Emulation.setDeviceMetricsOverride",
            width=width,
            height=height,
            deviceScaleFactor=1,
            mobile=width < 600,
        )
        await self.call("Page.navigate", url=url)
        while (await self._heard()).get("method") != "Page.loadEventFired":
            pass

    async def value(self, expression: str) -> Any:
        """What an expression comes to in the page (the page's own scripts may be forbidden)."""
        result = await self.call("Runtime.evaluate", expression=expression, returnByValue=True)
        return result["result"].get("value")

    async def spoken(self) -> list[tuple[str, str]]:
        """Role and name of all that a screen reader is given, in order."""
        tree = await self.call("Accessibility.getFullAXTree")
        return [
            (node["role"]["value"], node.get("name", {}).get("value", ""))
            for node in tree["nodes"]
            if not node["ignored"]
        ]

    async def picture(self) -> bytes:
        """A picture of the whole page, as PNG."""
        taken = await self.call("Page.captureScreenshot", captureBeyondViewport=True)
        return base64.b64decode(taken["data"])

    async def paper(self) -> bytes:
        """The page as it is printed, as PDF."""
        printed = await self.call("Page.printToPDF", printBackground=False)
        return base64.b64decode(printed["data"])


@asynccontextmanager
async def browser(folder: Path) -> AsyncIterator[Browser]:
    """A browser that keeps what it must in `folder`."""
    assert PROGRAM, "Chromium is missing: apt-get install chromium"
    process = await asyncio.create_subprocess_exec(
        PROGRAM,
        *FLAGS,
        f"--user-data-dir={folder}",
        "about:blank",
        stdout=asyncio.subprocess.DEVNULL,
        stderr=asyncio.subprocess.DEVNULL,
    )
    try:
        port = await asyncio.to_thread(_port, folder / "DevToolsActivePort")
        async with aiohttp.ClientSession() as web:
            async with web.get(f"http://127.0.0.1:{port}/json/list") as answer:
                [page] = [tab for tab in await answer.json() if tab["type"] == "page"]
            async with web.ws_connect(page["webSocketDebuggerUrl"], max_msg_size=0) as socket:
                yield Browser(socket)
    finally:
        process.terminate()
        await process.wait()


def _port(file: Path) -> int:
    """The port that the browser chose, once it has written it down."""
    for _ in range(600):
        if file.exists() and (written := file.read_text().split()):
            return int(written[0])
        time.sleep(0.05)
    raise TimeoutError("the browser did not start")
