"""The commands as a person at a shell meets them: real processes, real files."""

import csv
import io
import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from icalendar import Calendar

from bot.cli import COMMANDS

ROOT = Path(__file__).parent.parent.parent
SEASON = ROOT / "sample_logs" / "season.jsonl"


def bot(*words: str, said: str = "") -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "bot", *words],
        cwd=ROOT,
        input=said,
        capture_output=True,
        text=True,
        encoding="utf-8",
        timeout=60,
        check=False,
    )


@pytest.mark.parametrize("command", ["", *COMMANDS])
def test_every_command_explains_itself(command: str) -> None:
    done = bot(*command.split(), "--help")
    assert done.returncode == 0
    assert "usage: python -m bot" in done.stdout


@pytest.mark.parametrize(
    "words",
    [
        ["compose"],
        [],
        ["replay"],
        ["replay", "no-such-log.jsonl"],
        ["replay", "README.md"],
        ["replay", str(SEASON), "--zone", "Atlantis/Capital"],
        ["export", "--book", "no-such-book.db"],
        ["export", "--book", "README.md"],
        ["export", "--book", "tests"],
        ["chat", "--book", "tests"],
        ["chat", "--as", " "],
        ["reckon", "alchemy"],
        ["reckon", "dose", "mass=-2kg"],
        ["reckon", "dilution", "water=9L", "parts=0"],
    ],
    ids=" ".join,
)
def test_bad_usage_is_one_clear_line_and_status_2(words: list[str]) -> None:
    done = bot(*words)
    assert done.returncode == 2
    assert done.stdout == ""
    assert len(done.stderr.strip().splitlines()) == 1
    assert "Traceback" not in done.stderr


def test_the_demo_plays_a_season_and_ends_with_the_calendar() -> None:
    done = bot("demo")
    assert done.returncode == 0, done.stderr
    body, calendar = done.stdout.split("The calendar on Tuesday 31 March:")
    for wanted in ("tablespoons", "green mould", "keeps quiet", "Bury it", "takes the courtyard"):
        assert wanted in body
    assert "plant where the shed bin was buried" in calendar


def replayed(path: Path) -> list[dict[str, Any]]:
    done = bot("replay", str(SEASON), "--zone", "Europe/Lisbon", "--book", str(path), "--json")
    assert done.returncode == 0, done.stderr
    return [json.loads(line) for line in done.stdout.splitlines()]


@pytest.fixture(scope="module")
def book(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("books") / "season.db"
    replayed(path)
    return path


def test_a_replay_prints_what_was_said_in_order(tmp_path: Path) -> None:
    said = replayed(tmp_path / "season.db")
    assert {item["kind"] for item in said} >= {"reply", "reaction", "digest"}
    assert all(set(item) == {"at", "to", "kind", "body"} for item in said)
    assert [item["at"] for item in said] == sorted(item["at"] for item in said)
    assert all(item["to"] or item["kind"] in ("digest", "notice") for item in said)


def test_replaying_again_into_the_same_book_adds_and_says_nothing(tmp_path: Path) -> None:
    path = tmp_path / "season.db"
    replayed(path)
    before = json.loads(bot("export", "--book", str(path)).stdout)
    assert replayed(path) == []
    assert json.loads(bot("export", "--book", str(path)).stdout) == before


def test_a_replay_names_the_lines_that_it_passes_over(tmp_path: Path) -> None:
    said = {"type": "m.room.message", "sender": "@ines:x", "content": {"msgtype": "m.text"}}
    at = 1_772_474_400_000
    lines: list[object] = [
        said | {"event_id": "$1", "origin_server_ts": at},
        [1, 2],
        said | {"event_id": "$2", "origin_server_ts": 1e300},
        said | {"event_id": 5, "origin_server_ts": at},
        said | {"event_id": "$3", "origin_server_ts": -at},
        {"type": "pailkeeper.until", "origin_server_ts": at + 1},
    ]
    log = tmp_path / "log.jsonl"
    log.write_text("\n".join(map(json.dumps, lines)))
    book = ("--book", str(tmp_path / "book.db"))
    done = bot("replay", str(log), *book)
    assert done.returncode == 0
    assert done.stderr == (
        "passed over 4, not whole, or without the id, sender or time of an event: line 2, 3, 4, 5\n"
    )
    log.write_text(json.dumps(said | {"event_id": "$4", "origin_server_ts": at - 1}))
    assert bot("replay", str(log), *book).stderr == (
        "passed over 1, older than the book of their room: line 1\n"
    )


EVENT = {
    "type": "m.room.message",
    "event_id": "$1",
    "sender": "@ines:x",
    "origin_server_ts": 1_772_474_400_000,
    "content": {"msgtype": "m.text", "body": "opened the shed bin, 20 L"},
}


@pytest.mark.parametrize(
    ("written", "status", "told"),
    [
        (f"\ufeff{json.dumps(EVENT)}\n", 0, ""),
        (f'{json.dumps(EVENT)}\n{{"type": "m.room.mess', 0, "passed over 1, not whole"),
        (f'{{"type": "m.room.mess\n{json.dumps(EVENT)}\n', 2, "line 1: not JSON"),
        ('{"type": "m.room.mess', 2, "line 1: not JSON"),
        (json.dumps([EVENT]), 2, "is one JSON array: a log has one JSON object a line"),
    ],
    ids=["begun with a mark", "cut off", "broken", "only a broken line", "an array"],
)
def test_a_log_as_other_programs_write_it(
    written: str, status: int, told: str, tmp_path: Path
) -> None:
    log = tmp_path / "log.jsonl"
    log.write_text(written, encoding="utf-8")
    done = bot("replay", str(log))
    assert done.returncode == status
    assert told in done.stderr
    assert ("Opened the shed bin" in done.stdout) == (status == 0)


def test_what_a_log_tells_out_of_order_is_recorded(tmp_path: Path) -> None:
    log = tmp_path / "log.jsonl"
    bodies = ("opened the shed bin, 20 L", "added 4 kg to the shed bin")
    lines = [
        {
            "type": "m.room.message",
            "event_id": f"${number}",
            "sender": "@ines:x",
            "origin_server_ts": 1_772_474_400_000 - number * 3_600_000,
            "content": {"msgtype": "m.text", "body": body},
        }
        for number, body in enumerate(bodies)
    ]
    log.write_text("\n".join(map(json.dumps, lines)))
    done = bot("replay", str(log))
    assert "on 4 kg in the shed bin" in " ".join(done.stdout.split())
    told = done.stderr.splitlines()  # a slow machine tells how far it is
    assert [line for line in told if " of 2 events, " not in line] == []


def test_the_book_exported_as_json(book: Path) -> None:
    exported = json.loads(bot("export", "--book", str(book)).stdout)
    assert set(exported) >= {"bins", "entries", "starter", "members"}
    bins = {bin["name"]: bin for bin in exported["bins"]}
    courtyard = bins["courtyard"]
    assert courtyard["shared"] is True
    assert courtyard["capacity_l"] == 22.0
    assert courtyard["keeper"] == "Teodor"
    assert courtyard["stage"] == "in the ground"
    assert courtyard["buried"] == "2026-03-27"
    assert {"what": "plant", "from": "2026-04-10", "to": "2026-04-17"} in courtyard["dues"]
    assert {member["name"] for member in exported["members"]} >= {"Nives", "Bram", "Sabah"}
    struck = [entry for entry in exported["entries"] if entry["struck"]]
    assert struck
    assert {"id", "act", "bin", "run", "member", "on", "said_at", "event"} <= set(struck[0])


def test_the_book_exported_as_csv_holds_the_same_entries(book: Path) -> None:
    exported = json.loads(bot("export", "--book", str(book)).stdout)
    rows = list(
        csv.DictReader(io.StringIO(bot("export", "--book", str(book), "--format", "csv").stdout))
    )
    assert [row["id"] for row in rows] == [str(entry["id"]) for entry in exported["entries"]]


def test_the_calendar_is_read_by_a_calendar_library(book: Path) -> None:
    # RFC 5545, read with the icalendar library
    calendar = Calendar.from_ical(bot("export", "--book", str(book), "--format", "ics").stdout)
    events = {str(event["summary"]): event for event in calendar.walk("VEVENT")}
    [event] = [event for name, event in events.items() if "Plant where the courtyard bin" in name]
    assert event.decoded("dtstart").isoformat() == "2026-04-10"
    assert event.decoded("dtend").isoformat() == "2026-04-18"


def test_a_chat_is_there_again_tomorrow(tmp_path: Path) -> None:
    path = str(tmp_path / "room.db")
    first = bot(
        "chat", "--book", path, said="ines: added 2 kg scraps, mostly meat, to the shed bin\n"
    )
    assert first.returncode == 0, first.stderr
    assert "tablespoons" in first.stdout
    second = bot("chat", "--book", path, said="bram: how full is the shed bin?\n/quit\n")
    assert "2 kg" in second.stdout
    third = bot("chat", "--book", path, said="ines: drained 1 L from the shed bin\n/delete\n")
    assert "wrote it down" in third.stdout
    exported = json.loads(bot("export", "--book", path).stdout)
    assert [(e["act"], e["struck"]) for e in exported["entries"]] == [
        ("layer", False),
        ("drain", True),
    ]


def test_figures_are_exported_without_what_floats_add(tmp_path: Path) -> None:
    path = str(tmp_path / "room.db")
    said = "opened the gate bin, 20 L\nadded 0.1 kg of fish and 0.2 kg of bread to the gate bin\n"
    bot("chat", "--book", path, said=said)
    layer = json.loads(bot("export", "--book", path).stdout)["entries"][1]
    numbers = [layer["mass_kg"], layer["starter_g"], *layer["materials"].values()]
    assert layer["mass_kg"] == 0.3
    assert all(len(str(number)) <= 8 for number in numbers), numbers


def test_a_name_before_a_line_holds_for_that_line(tmp_path: Path) -> None:
    path = str(tmp_path / "room.db")
    said = "bram: opened the gate bin, 20 L\nadded 1 kg of bread\nines: hello\nadded 2 kg of rice\n"
    bot("chat", "--book", path, "--as", "mei", said=said)
    entries = json.loads(bot("export", "--book", path).stdout)["entries"]
    assert [(e["act"], e["member"]) for e in entries] == [
        ("open", "bram"),
        ("layer", "mei"),
        ("layer", "mei"),
    ]


def test_a_chat_makes_no_folders_that_were_mistyped(tmp_path: Path) -> None:
    done = bot("chat", "--book", str(tmp_path / "no" / "room.db"), said="hello\n")
    assert done.returncode == 2
    assert f"there is no folder {tmp_path / 'no'}: make it first" in done.stderr
    assert list(tmp_path.iterdir()) == []
