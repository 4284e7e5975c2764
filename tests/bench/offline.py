"""`python -m tests.bench.offline`: what is written while the bot is off is recorded later."""

import argparse
import asyncio
import sys
import time as stopwatch

from tests.bench.field import prepared

WITHIN_SECONDS = 60


async def main(messages: int) -> int:
    """Write while the bot is off, start it, and print how long it took and what is there."""
    async with prepared(plain=2, encrypted=3) as field:
        first = sum(map(len, field.written.values()))
        for number in range(messages):
            await field.write(first + number)
        began = stopwatch.monotonic()
        process = await field.process()
        await field.settled(300)
        spent = stopwatch.monotonic() - began
        await field.ended(process)
        told, is_well = await field.outcome()
        sys.stdout.write(
            f"{messages} messages in 2 plain and 3 encrypted rooms while off: recorded and "
            f"answered in {spent:.1f} s; {told}\n"
        )
        return int(not is_well or spent > WITHIN_SECONDS)


if __name__ == "__main__":
    parser = argparse.ArgumentParser()
    parser.add_argument("--messages", type=int, default=1000)
    sys.exit(asyncio.run(main(parser.parse_args().messages)))
