"""`python -m tests.bench.outages`: the line to the homeserver breaks in every way, again and again.

Between the bot and the homeserver stands a proxy: it refuses everything for a while, loses answers
after the homeserver acted on them, delays them, cuts them short, and puts a proxy's page or a rate
limit in their place. Neighbours write meanwhile.
"""

import argparse
import asyncio
import random
import sys
import time as stopwatch
from collections import Counter
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, field, replace

import aiohttp
from aiohttp import web

from bot import account as accounts
from tests.bench.field import prepared

OUTAGE_SECONDS = 1.0
BUSIEST = 20.0
"""Requests a second, on average, above which it is called a hot loop."""
HOP_BY_HOP = ("host", "connection", "transfer-encoding", "content-encoding", "content-length")


@dataclass
class Line:
    """A line that fails by the dice; `down` while it refuses everything."""

    target: str
    dice: random.Random
    faults: float
    down: bool = False
    requests: int = 0
    injected: Counter[str] = field(default_factory=Counter)

    async def answer(self, request: web.Request) -> web.StreamResponse:
        """Pass a request on, or do something else to it."""
        self.requests += 1
        if self.down:
            return self._cut(request, "refused")
        fault = self.dice.random() / self.faults if self.faults else 1.0
        if fault < 0.2:
            self.injected["proxy's page"] += 1
            return web.Response(status=502, text="<h1>Bad gateway</h1>", content_type="text/html")
        if fault < 0.4:
            self.injected["rate limit"] += 1
            body = {"errcode": "M_LIMIT_EXCEEDED", "error": "slow", "retry_after_ms": 300}
            return web.json_response(body, status=429)
        if fault < 0.5:
            self.injected["delay"] += 1
            await asyncio.sleep(1.0)
        status, content, kind = await self._forward(request)
        if fault < 0.5 or fault >= 1.0:
            return web.Response(status=status, body=content, content_type=kind)
        if fault < 0.8:
            return self._cut(request, "answer lost")
        self.injected["answer cut short"] += 1
        return web.Response(status=status, body=content[: len(content) // 2], content_type=kind)

    def _cut(self, request: web.Request, what: str) -> web.Response:
        self.injected[what] += 1
        if request.transport is not None:
            request.transport.abort()
        return web.Response()

    async def _forward(self, request: web.Request) -> tuple[int, bytes, str]:
        headers = {k: v for k, v in request.headers.items() if k.lower() not in HOP_BY_HOP}
        data = await request.read()
        async with (
            aiohttp.ClientSession(auto_decompress=True) as session,
            session.request(
                request.method, self.target + request.raw_path, headers=headers, data=data
            ) as answer,
        ):
            return answer.status, await answer.read(), answer.content_type


@asynccontextmanager
async def standing(line: Line) -> AsyncIterator[str]:
    """The address at which the line can be reached."""
    app = web.Application(client_max_size=2**24)
    app.router.add_route("*", "/{path:.*}", line.answer)
    runner = web.AppRunner(app, access_log=None)
    await runner.setup()
    try:
        await web.TCPSite(runner, "127.0.0.1", 0).start()
        yield f"http://127.0.0.1:{runner.addresses[0][1]}"
    finally:
        await runner.cleanup()


async def main(outages: int, messages: int, seed: int) -> int:
    """Write while the line fails; print what was lost, doubled and asked for."""
    async with prepared(plain=1, encrypted=1) as ground:
        line = Line(ground.street.server.url, random.Random(seed), faults=0.3)
        account = accounts.read(ground.bot.home)
        assert account is not None
        first = sum(map(len, ground.written.values()))
        async with standing(line) as address:
            accounts.write(ground.bot.home, replace(account, homeserver=address))
            process = await ground.process()
            began = stopwatch.monotonic()
            for number in range(messages):
                await ground.write(first + number)
                if number * outages // messages < (number + 1) * outages // messages:
                    line.down = True
                    await asyncio.sleep(OUTAGE_SECONDS)
                    line.down = False
                await asyncio.sleep(0.05)
            line.faults = 0.0
            await ground.settled(400)
            spent = stopwatch.monotonic() - began
            went_on = await ground.ended(process)
        told, is_well = await ground.outcome()
        rate = line.requests / spent
        faults = ", ".join(f"{count} {what}" for what, count in sorted(line.injected.items()))
        sys.stdout.write(
            f"{outages} outages and more ({faults}) during {messages} messages: {told}; "
            f"{rate:.1f} requests a second; "
            f"{'the bot went on' if went_on else 'the bot ENDED'}; {spent:.0f} s\n"
        )
        return int(not (is_well and went_on) or rate > BUSIEST)


if __name__ == "__main__":
    parser = argparse.ArgumentParser()
    parser.add_argument("--outages", type=int, default=20)
    parser.add_argument("--messages", type=int, default=400)
    parser.add_argument("--seed", type=int, default=1)
    given = parser.parse_args()
    sys.exit(asyncio.run(main(given.outages, given.messages, given.seed)))
