"""The invented conversations run as they stand, and end as they should."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

from bot.turn import SORRY

ROOT = Path(__file__).parent.parent.parent
LOGS = sorted((ROOT / "sample_logs").glob("*.jsonl"))


def said(log: Path, book: Path) -> list[str]:
    command = [sys.executable, "-m", "bot", "replay", str(log), "--zone", "Europe/Lisbon"]
    done = subprocess.run(
        [*command, "--book", str(book), "--json"], text=True, capture_output=True, check=True
    )
    return [json.loads(line)["body"] for line in done.stdout.splitlines()]


@pytest.mark.parametrize("log", LOGS, ids=lambda log: log.stem)
def test_a_log_runs_through_without_a_fault(log: Path, tmp_path: Path) -> None:
    bodies = said(log, tmp_path / "book.db")
    assert len(bodies) > 20
    assert SORRY not in bodies


def test_the_communal_bin_ends_in_good_hands(tmp_path: Path) -> None:
    bodies = said(ROOT / "sample_logs" / "communal.jsonl", tmp_path / "book.db")
    order = [
        "Nives takes the courtyard bin tomorrow; until then Ottilie keeps it.",
        "Today the courtyard bin goes from Ottilie to Nives.",
        "Noted for the courtyard bin. You found 6 kg; by the book there is about 3.7 kg.",
        "I keep kinds, so for “chicken” I looked for meat or bone.",
        "Turns to drain the courtyard bin, a week each: Nives today to Sunday 19 April,",
        "Nives is to drain the courtyard bin Monday 27 April to Sunday 3 May.",
        "Here only those with power in the room may rename a bin: ask Ottilie.",
        "Nives has left the room, and nobody keeps Gertie.",
        "Teodor keeps Gertie now.",
        "Gertie, run 1:",
        "The label of Gertie, to print on half a sheet of A4.",
    ]
    at = [next((n for n, body in enumerate(bodies) if body.startswith(one)), -1) for one in order]
    assert -1 not in at, dict(zip(order, at, strict=True))
    assert at == sorted(at)
    kept = next(body for body in bodies if body.startswith("Gertie:\n"))
    assert kept.split("\n")[1:] == [
        "Ottilie, Monday 6 to Friday 10 April.",
        "Nives, Saturday 11 to Saturday 18 April.",
        "Nobody, Sunday 19 April.",
        "Teodor, since Monday 20 April.",
    ]
