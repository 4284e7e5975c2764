"""`python -m tests.bench.killed`: killed at random moments while a real homeserver delivers."""

import argparse
import asyncio
import random
import sys
import time as stopwatch

from tests.bench.field import Field, prepared

LONGEST_LIFE_SECONDS = 1.5
KILLED_YOUNG = 0.3
"""So many are killed at any moment of their start, the others once they listen."""


async def main(kills: int, messages: int, seed: int) -> int:
    """Kill and go on; print what was lost or doubled."""
    dice = random.Random(seed)
    async with prepared(plain=2, encrypted=2) as field:
        began = stopwatch.monotonic()
        progress, ended = [0], ""
        writing = asyncio.create_task(_write(field, kills, messages, progress))
        for _ in range(kills):
            process = await field.process()
            if dice.random() > KILLED_YOUNG and process.stdout is not None:
                await process.stdout.readline()
            await asyncio.sleep(dice.uniform(0.0, LONGEST_LIFE_SECONDS))
            if process.returncode is None:
                process.kill()
            elif not ended:
                ended = field.log.read_text(errors="replace").splitlines()[-1]
            await process.wait()
            progress[0] += 1
        await writing
        process = await field.process()
        await field.settled(600)
        await field.ended(process)
        told, is_well = await field.outcome()
        sys.stdout.write(
            f"killed {kills} times during {messages} messages in 2 plain and 2 encrypted rooms: "
            f"{told}; {f'the bot ENDED by itself: {ended}' if ended else 'it went on each time'}; "
            f"{stopwatch.monotonic() - began:.0f} s\n"
        )
        return int(not is_well or bool(ended))


async def _write(field: Field, kills: int, messages: int, progress: list[int]) -> None:
    """Spread the messages over the lives of the bot."""
    first = sum(map(len, field.written.values()))
    for number in range(messages):
        while number / messages > (progress[0] + 1) / kills:  # noqa: ASYNC110 - paced by kills
            await asyncio.sleep(0.02)
        await field.write(first + number)
        await asyncio.sleep(0.02)


if __name__ == "__main__":
    parser = argparse.ArgumentParser()
    parser.add_argument("--kills", type=int, default=300)
    parser.add_argument("--messages", type=int, default=3000)
    parser.add_argument("--seed", type=int, default=1)
    given = parser.parse_args()
    sys.exit(asyncio.run(main(given.kills, given.messages, given.seed)))
