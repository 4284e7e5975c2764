"""`python -m tests.bench.keepers`: random conversations of eight about three bins, watched.

After each step every bin has one keeper or is openly unattended, and nobody came to one but by
their own word. The same seed gives the same conversations.
"""

import argparse
import asyncio
import random
import sys
import tempfile
import time as stopwatch
from collections import Counter
from pathlib import Path

from storage.database import Database
from tests.keepers import WHATS, Watch
from tests.room import TalkingRoom

LENGTH = 250
"""Steps of one conversation."""


async def main(steps: int, seed: int) -> int:
    """Live through the conversations and print what was watched; an assertion ends it."""
    dice, done, changes, began = random.Random(seed), 0, 0, stopwatch.monotonic()
    kinds = Counter[str]()
    while done < steps:
        with tempfile.TemporaryDirectory() as folder:
            path = Path(folder) / "book.db"
            watch = Watch(TalkingRoom(await Database.open(path)), path)
            try:
                await watch.begin()
                for _ in range(min(LENGTH, steps - done)):
                    what = dice.choice(WHATS)
                    kinds[what] += 1
                    who, pick, more = (dice.randrange(97) for _ in range(3))
                    await watch.step((what, who, pick, more))
            finally:
                await watch.room.db.close()
        done += watch.steps
        changes += watch.changes
    told = ", ".join(f"{count} {what}" for what, count in sorted(kinds.items()))
    sys.stdout.write(
        f"{done} steps (seed {seed}), {changes} changes of keepers, no bin with two keepers or one "
        f"who was gone, nobody a keeper unasked ({stopwatch.monotonic() - began:.0f} s)\n{told}\n"
    )
    return 0


if __name__ == "__main__":
    parser = argparse.ArgumentParser()
    parser.add_argument("--steps", type=int, default=12_000)
    parser.add_argument("--seed", type=int, default=1)
    given = parser.parse_args()
    sys.exit(asyncio.run(main(given.steps, given.seed)))
