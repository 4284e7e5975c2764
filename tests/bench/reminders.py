"""`python -m tests.bench.reminders`: a year in six zones, calm and killed 300 times."""

import asyncio
import sys
import tempfile
import time as stopwatch
from datetime import date
from pathlib import Path

from tests.bot.test_reminders import (
    calls_nobody_who_is_away,
    is_at_the_hour,
    is_said_as_wished,
    is_the_same,
    is_told_exactly_once,
    reads_well_aloud,
)
from tests.year import Year

YEARS = [
    ("Europe/Lisbon", date(2026, 1, 1)),
    ("America/New_York", date(2026, 1, 1)),
    ("Australia/Adelaide", date(2026, 1, 1)),
    ("Asia/Kolkata", date(2026, 1, 1)),
    ("America/Sao_Paulo", date(2018, 6, 1)),
    ("Pacific/Chatham", date(2026, 1, 1)),
]
KILLS = 300


async def main() -> int:
    """Live the years and print what was told; an assertion fails where something is amiss."""
    with tempfile.TemporaryDirectory() as folder:
        for seed, (zone, begin) in enumerate(YEARS, 1):
            name, began = zone.replace("/", "-"), stopwatch.monotonic()
            calm = Year(Path(folder) / f"{name}.db", zone, begin, seed=seed)
            told = await calm.live()
            is_at_the_hour(calm, told)
            is_told_exactly_once(calm, told)
            is_said_as_wished(calm, told)
            reads_well_aloud(calm, told)
            spared = calls_nobody_who_is_away(calm, told)
            killed = Year(Path(folder) / f"{name}-killed.db", zone, begin, seed=seed, kills=KILLS)
            same = is_the_same(told, await killed.live())
            digests = [said for said in told if said.kind == "digest"]
            named = sum(len(digest.named) for digest in digests)
            spent = stopwatch.monotonic() - began
            sys.stdout.write(
                f"{zone}: {len(calm.asked)} dues, each told on its first digest hour; "
                f"{len(digests)} digests at {calm.digest_at:%H:%M}, {named} namings, "
                f"{len(told) - len(digests)} reminders at hours of their own, {spared} times to a "
                f"stand-in; killed {KILLS} times: "
                f"{'the same' if same else 'DIFFERENT'} ({spent:.0f} s)\n"
            )
            if not same:
                return 1
    return 0


if __name__ == "__main__":
    sys.exit(asyncio.run(main()))
