import io
import json
from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest

from bot.cli import main
from bot.read import LARGEST_LINE, answer_lines, answered
from handlers.reading.context import Context

CONTEXT = Context(
    at=datetime(2026, 6, 17, 12, tzinfo=UTC),
    zone=ZoneInfo("Europe/London"),
    bins=("shed",),
    members=("ines",),
)


def answers(*lines: bytes) -> list[dict[str, object]]:
    out = io.StringIO()
    answer_lines(io.BytesIO(b"\n".join(lines) + b"\n"), out, CONTEXT, answered)
    return [json.loads(line) for line in out.getvalue().splitlines()]


def test_a_message_gives_its_acts() -> None:
    event = {
        "body": "Ines put 2 kg in the shed",
        "at": "2026-06-10T09:00:00+01:00",
        "sender": "kofi",
    }
    (answer,) = answers(json.dumps(event).encode())
    assert answer == {
        "acts": [
            {"act": "layer", "mass_kg": 2.0, "materials": {"mixed": 1.0}, "bin": "shed",
             "member": "ines",
             "on": "2026-06-10"}
        ]
    }  # fmt: skip


def test_small_talk_gives_no_acts() -> None:
    assert answers(b'{"body": "morning all"}') == [{"acts": []}]


def test_a_line_that_is_no_object_is_the_body() -> None:
    (answer,) = answers(b"added 2 kg to the shed")
    assert [act["act"] for act in answer["acts"]] == ["layer"]  # type: ignore[attr-defined]


@pytest.mark.parametrize(
    ("line", "why"),
    [
        (b"\xff\xfe", "the line is not UTF-8"),
        (b"x" * (LARGEST_LINE + 1), "the line is over 64 KiB"),
        (b"x" * (3 * LARGEST_LINE), "the line is over 64 KiB"),
        (b'{"at": "2026-06-10T09:00:00+01:00"}', "the object has no body"),
        (b'{"body": "hi", "at": "yesterday"}', "at is no ISO 8601 time"),
        (b'{"body": "hi", "at": "2026-06-10T09:00:00"}', "at has no offset from UTC"),
    ],
)
def test_what_cannot_be_read_is_refused_and_the_next_line_read(line: bytes, why: str) -> None:
    refused, after = answers(line, b"morning")
    assert refused == {"acts": [], "refused": why}
    assert after == {"acts": []}


@pytest.mark.parametrize(
    "options", [["--zone", "Nowhere/Land"], ["--units", "furlongs"], ["--bogus"]]
)
def test_bad_options_end_with_status_2_and_one_clear_line(
    options: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(SystemExit) as stopped:
        main(["read", *options])
    assert stopped.value.code == 2
    assert capsys.readouterr().err.strip()


@pytest.mark.parametrize(
    "said",
    [
        "I'm away till Monday",
        "I'm back",
        "who's away next week?",
        "remind us to empty the shed caddy on Friday at 6",
        "cancel the caddy reminder",
        "show the calendar",
        "pin the calendar",
    ],
)
def test_what_is_arranged_is_no_act_of_the_contract(said: str) -> None:
    assert answered(json.dumps({"body": said}).encode(), CONTEXT) == {"acts": []}
