"""How long the event loop is held up: the longest of all the steps that it takes."""

import asyncio
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any

BAR_MS = 20.0
"""A loop held up for longer is noticed: by whoever is typing, and by the homeserver."""


@dataclass
class Held:
    """The longest step by the clock and by the processor's time (s), and what it was."""

    clock: float = 0.0
    processor: float = 0.0
    what: str = ""
    steps: int = 0


@contextmanager
def watched() -> Iterator[Held]:
    """Watch every step of the event loops of this process, while inside."""
    held = Held()
    run = asyncio.Handle._run

    def watch(self: asyncio.Handle) -> None:
        clock, processor = time.perf_counter(), time.thread_time()
        run(self)
        processor = time.thread_time() - processor
        held.clock = max(held.clock, time.perf_counter() - clock)
        held.steps += 1
        if processor > held.processor:
            held.processor, held.what = processor, _name(self)

    vars_of: Any = asyncio.Handle
    vars_of._run = watch
    try:
        yield held
    finally:
        vars_of._run = run


def _name(handle: asyncio.Handle) -> str:
    """What a step was for: the coroutine of its task, or the callback itself."""
    callback = handle._callback  # type: ignore[attr-defined]
    task = getattr(callback, "__self__", None)
    if isinstance(task, asyncio.Task):
        coroutine: Any = task.get_coro()
        return str(getattr(coroutine, "__qualname__", coroutine))
    return str(getattr(callback, "__qualname__", callback))
