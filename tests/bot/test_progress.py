"""A long task says how far it is; a short one says nothing."""

import time
from pathlib import Path

import pytest

from bot import progress
from bot.cli import main
from bot.progress import Progress

SEASON = Path(__file__).parents[2] / "sample_logs" / "season.jsonl"


def test_it_tells_now_and_then(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    seconds = iter([0.0, 0.5, 1.5, 2.0, 4.0])
    monkeypatch.setattr(time, "monotonic", lambda: next(seconds))
    told = Progress("events")
    for done in (500, 1500, 2000, 4000):
        told.reached(done, 6000)
    assert capsys.readouterr().err.splitlines() == [
        "1,500 of 6,000 events, 1,000 a second",
        "4,000 of 6,000 events, 1,000 a second",
    ]


def test_a_replay_tells_it_beside_its_output(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(progress, "FIRST_SECONDS", 0.0)
    monkeypatch.setattr(progress, "EVERY_SECONDS", 0.0)
    assert main(["replay", str(SEASON), "--json"]) == 0
    said = capsys.readouterr()
    assert all(line.startswith("{") for line in said.out.splitlines())
    assert "of 42 events" in said.err
