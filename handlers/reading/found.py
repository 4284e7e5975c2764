"""Where in a message a plan is told."""

from typing import NamedTuple

from handlers.reading.acts import Ask, Done, Later, Open
from handlers.reading.arranged import Plan


class Found(NamedTuple):
    """A plan told by words[start:end]; `aside` if another clause of the message leans on it."""

    start: int
    end: int
    plan: Plan | Ask | Open | Later | Done
    """An `Ask` here says more than the reading contract does: whose, by when, which. An `Open`
    says how big a bin is, a `Later` which deed is put off, a `Done`
    what was done with the ground."""
    aside: bool = False
