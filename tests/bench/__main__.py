"""`python -m tests.bench [NAME …] [--json]`: how fast the bot is, beside peers of the same run."""

import argparse
import asyncio
import sys
from importlib import import_module

from tests.bench.measure import Measured, as_json, table

BENCHES = {
    "start": "the first answer of chat, and --help",
    "reading": "messages read on one core, beside readers of amounts and of dates; hostile texts",
    "message": "a log message handled and committed, beside the bare commit of the same rows",
    "backlog": "messages a second of a backlog and of a replay, on one core",
    "flat": "answers, digest and dues of a long history beside those of a short one",
    "loop": "the longest that the event loop is held up",
    "reply": "from sending to hearing the reply in a real room, beside a bare echo bot",
    "memory": "a day in 1,000 rooms, then 200,000 messages, in a running bot",
}


def main() -> int:
    """Run the benches and print their figures; whether bars are reached is for people to read."""
    parser = argparse.ArgumentParser(
        prog="python -m tests.bench",
        epilog="; ".join(f"{name}: {what}" for name, what in BENCHES.items()),
    )
    parser.add_argument("names", metavar="NAME", nargs="*", help="benches to run (default: all)")
    parser.add_argument("--json", action="store_true", help="figures as JSON instead of a table")
    given = parser.parse_args()
    unknown = set(given.names) - set(BENCHES)
    if unknown:
        parser.error(f"no such bench: {', '.join(sorted(unknown))}; there is {', '.join(BENCHES)}")
    rows: list[tuple[str, Measured]] = []
    for name in given.names or BENCHES:
        sys.stderr.write(f"{name}: {BENCHES[name]} …\n")
        measured = asyncio.run(import_module(f"tests.bench.{name}").measure())
        rows += [(name, one) for one in measured]
    sys.stdout.write((as_json(rows) if given.json else table(rows)) + "\n")
    return 0


if __name__ == "__main__":
    sys.exit(main())
