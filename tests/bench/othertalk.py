"""`python -m tests.bench.othertalk FILE`: how often the reading speaks on talk of other things.

FILE holds real messages that have nothing to do with bins, one a line, such as the SMS Spam
Collection (T. A. Almeida, J. M. Gómez Hidalgo, A. Yamakami, DocEng 2011): of its lines "ham", a
tab and a text the texts are read, and none marked "spam". Nothing is learned from them.
"""

import argparse
import sys
from collections import Counter
from datetime import UTC, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

from handlers.reading.context import Context
from handlers.reading.read import read
from tests.reading.corpus import RECORDS

CONTEXT = Context(
    at=datetime(2026, 6, 10, 11, tzinfo=UTC),
    zone=ZoneInfo("Europe/London"),
    bins=("shed", "kitchen", "blue", "bin 3", "Rosie"),
    members=("ines", "bram", "zoe", "tom"),
    sender="ines",
)


def texts(file: Path) -> list[str]:
    """The messages of a file, without those that its marks call spam."""
    parted = (line.rpartition("\t") for line in file.read_text(encoding="utf-8").splitlines())
    return [text.strip() for mark, _, text in parted if mark != "spam" and text.strip()]


def main(file: Path, show: int) -> None:
    """Counts what is spoken on, and shows some of it."""
    said = texts(file)
    spoke = [(text, acts) for text in said if (acts := [act.act for act in read(text, CONTEXT)])]
    kinds = Counter(kind for _, acts in spoke for kind in acts)
    records = sum(any(kind in RECORDS for kind in acts) for _, acts in spoke)
    for text, acts in spoke[:show]:
        sys.stdout.write(f"{', '.join(acts)}: {text}\n")
    share = 100 * len(spoke) / max(1, len(said))
    sys.stdout.write(
        f"{len(said)} messages, spoken on {len(spoke)} ({share:.2f} %), records {records}: "
        f"{', '.join(f'{count} {kind}' for kind, count in kinds.most_common())}\n"
    )


if __name__ == "__main__":
    parser = argparse.ArgumentParser()
    parser.add_argument("file", type=Path)
    parser.add_argument("--show", type=int, default=0, help="messages to show")
    given = parser.parse_args()
    main(given.file, given.show)
