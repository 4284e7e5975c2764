"""`python -m tests.bench.turns`: rotas over two years, with members who travel at random.

Many are worked out alone; one is lived through, day by day, by a bot that is told in words who is
away. An assertion ends it where somebody has a turn on a day away, or equals had unequal turns.
"""

import argparse
import asyncio
import random
import sys
import tempfile
import time as stopwatch
from pathlib import Path

from handlers.sharing.turns import DAY, Gone, Turns
from storage.database import Database
from tests.handlers.test_turns import MONDAY, NAMES, YEARS, check
from tests.rota_year import RotaYear


def journeys(dice: random.Random, names: tuple[str, ...]) -> list[Gone]:
    """Absences of two years; every second member travels with the one before."""
    made = []
    for number in range(0, len(names), 2):
        for _ in range(dice.randrange(20)):
            first = MONDAY + DAY * dice.randrange(730)
            last = first + DAY * dice.choice([0, 1, 2, 6, 13, 27])
            known = first + DAY * dice.choice([-30, -7, -1, 0, 1, 3])
            made += [
                Gone(member=name, first=first, last=last, known=known)
                for name in names[number : number + 2]
            ]
    return made


def alone(count: int, dice: random.Random) -> tuple[int, int]:
    """So many rotas worked out and checked; how many turns, and how many nobody was there for."""
    turns = nobody = 0
    for _ in range(count):
        names = NAMES[: dice.randrange(2, 9)]
        gone = journeys(dice, names)
        days = dice.choice([1, 2, 3, 7, 14])
        rota = Turns(start=MONDAY, days=days, members=[(n, MONDAY) for n in names], gone=gone)
        stints = rota.until(MONDAY + YEARS)
        check(rota, gone, stints)
        turns += len(stints)
        nobody += sum(stint.member is None for stint in stints)
    return turns, nobody


async def main(rotas: int, days: int, seed: int) -> int:
    """Work out and live through rotas, and print what was found."""
    began = stopwatch.monotonic()
    turns, nobody = alone(rotas, random.Random(seed))
    sys.stdout.write(
        f"{rotas} rotas over two years: {turns} turns, {nobody} with nobody there; no one put down "
        f"on a day away, equals at most 1 apart ({stopwatch.monotonic() - began:.0f} s)\n"
    )
    with tempfile.TemporaryDirectory() as folder:
        db = await Database.open(Path(folder) / "book.db")
        try:
            year = RotaYear(db, seed=seed)
            await year.live(days)
        finally:
            await db.close()
    had = ", ".join(f"{name} {count}" for name, count in sorted(year.had.items()))
    sys.stdout.write(
        f"one rota lived through for {days} days: turns {had}; {year.told} told in digests; "
        f"{year.away} days away, none with a turn; the two who never travelled {year.apart} apart "
        f"at the most ({stopwatch.monotonic() - began:.0f} s)\n"
    )
    return 0


if __name__ == "__main__":
    parser = argparse.ArgumentParser()
    parser.add_argument("--rotas", type=int, default=300)
    parser.add_argument("--days", type=int, default=730)
    parser.add_argument("--seed", type=int, default=1)
    given = parser.parse_args()
    sys.exit(asyncio.run(main(given.rotas, given.days, given.seed)))
