"""How long the event loop is held up: the longest of all the steps that it takes."""

import asyncio
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import Any

BAR_MS = 20.0
"""A loop held up for longer is noticed: by whoever is typing, and by the homeserver."""


NOTED = 0.0005
"""Seconds from which on a step is worth its name."""


@dataclass
class Held:
    """The longest step by the clock, and by the processor's time for each kind of step (s)."""

    clock: float = 0.0
    steps: int = 0
    kinds: dict[str, float] = field(default_factory=dict)

    @property
    def processor(self) -> float:
        """The longest of them all."""
        return max(self.kinds.values(), default=0.0)

    def told(self) -> str:
        """The longest kinds of steps, in words."""
        longest = sorted(self.kinds.items(), key=lambda kind: -kind[1])[:3]
        kinds = ", ".join(f"{name} {1000 * spent:.1f}" for name, spent in longest)
        return f"{1000 * self.clock:.0f} ms by the clock; of {self.steps:,} the longest: {kinds}"


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
        if processor > NOTED:
            name = _name(self)
            held.kinds[name] = max(held.kinds.get(name, 0.0), processor)

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
