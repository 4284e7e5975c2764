"""When the tasks of the running bot wait, and for how long."""

import asyncio
import random


class Bell:
    """Wakes the one task that waits for work; rung before it waits, it need not wait."""

    def __init__(self) -> None:
        self._rung = asyncio.Event()

    def ring(self) -> None:
        """There is something to do."""
        self._rung.set()

    async def wait(self, seconds: float | None = None) -> None:
        """Until the bell rings, or at most so many seconds."""
        try:
            async with asyncio.timeout(seconds):
                await self._rung.wait()
        except TimeoutError:
            pass
        self._rung.clear()


class Patience:
    """How long to wait before the next try: twice as long each time, up to five minutes."""

    FIRST_SECONDS = 1.0
    LONGEST_SECONDS = 300.0

    def __init__(self) -> None:
        self._failures = 0

    def succeeded(self) -> None:
        """The next failure counts as the first again."""
        self._failures = 0

    def failed(self) -> float:
        """Seconds to wait after one more failure, a little random."""
        seconds = min(self.FIRST_SECONDS * 2.0**self._failures, self.LONGEST_SECONDS)
        self._failures = min(self._failures + 1, 32)
        return seconds * random.uniform(0.75, 1.0)


async def pause(seconds: float, stop: asyncio.Event) -> None:
    """Wait so long, or until `stop`."""
    try:
        async with asyncio.timeout(seconds):
            await stop.wait()
    except TimeoutError:
        pass
