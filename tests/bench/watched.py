"""The command line, its event loop watched: `python -m tests.bench.watched REPORT COMMAND …`."""

import json
import sys
from dataclasses import asdict
from pathlib import Path

from bot.cli import main
from tests.bench.held import watched

if __name__ == "__main__":
    report, *command = sys.argv[1:]
    with watched() as held:
        status = main(command)
    Path(report).write_text(json.dumps(asdict(held)), encoding="utf-8")
    sys.exit(status)
