"""How far a long task is, told on the standard error output now and then."""

import sys
import time

FIRST_SECONDS = 1.0
EVERY_SECONDS = 2.0


class Progress:
    """Tells how many of so many things are done; nothing where that is soon all."""

    def __init__(self, what: str) -> None:
        self._what = what
        self._began = time.monotonic()
        self._next = self._began + FIRST_SECONDS

    def reached(self, done: int, of: int) -> None:
        """So many are done."""
        now = time.monotonic()
        if now >= self._next:
            rate = done / (now - self._began)
            sys.stderr.write(f"{done:,} of {of:,} {self._what}, {rate:,.0f} a second\n")
            self._next = now + EVERY_SECONDS
