"""Where in a message a plan is told."""

from typing import NamedTuple

from handlers.reading.arranged import Plan


class Found(NamedTuple):
    """A plan told by words[start:end]; `aside` if another clause of the message leans on it."""

    start: int
    end: int
    plan: Plan
    aside: bool = False
