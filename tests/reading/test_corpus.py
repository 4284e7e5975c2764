"""Whole labelled messages, read through the one door."""

import pytest

from tests.reading.corpus import RECORDS, agrees, is_silent, messages, reading

# File, and the least share of its messages that must be read wholly right: a little under what
# the reading reached when the floor was set.
FLOORS = {
    "messages.jsonl": 0.98,
    "hand_d.jsonl": 0.97,
    "hand_e.jsonl": 0.96,
    "hand_wa.jsonl": 0.98,
    "hand_wb.jsonl": 0.97,
    "hand_wc.jsonl": 0.93,
    "hand_xa.jsonl": 0.98,
    "hand_xb.jsonl": 0.98,
    "hand_xb_hard.jsonl": 0.97,
    "hand_ya.jsonl": 0.96,
    "hand_yb.jsonl": 0.97,
    "hand_yc.jsonl": 0.97,
    "hand_yn.jsonl": 0.98,
    "hand_za.jsonl": 0.94,
    "hand_zb.jsonl": 0.97,
    "hand_zc.jsonl": 0.96,
    "hand_zn.jsonl": 0.97,
    "own_records.jsonl": 0.97,
    "own_small_talk.jsonl": 0.98,
    "own_questions.jsonl": 0.97,
    "own_answers.jsonl": 0.97,
    "own_harder.jsonl": 0.97,
    "own_voices.jsonl": 0.94,
    "own_stories.jsonl": 0.88,
    "own_places.jsonl": 0.95,
    "own_asides.jsonl": 0.95,
    "own_amounts.jsonl": 0.89,
    "own_kinds.jsonl": 0.92,
}

ONE_IN_A_HUNDRED = 0.01
"""Weights learned from all messages cannot be right on every one of them."""


@pytest.mark.parametrize(("name", "floor"), FLOORS.items())
def test_whole_messages_are_read_right(name: str, floor: float) -> None:
    rows = list(messages(name))
    wrong = [row["id"] for row in rows if not agrees(row, reading(row))]
    assert 1 - len(wrong) / len(rows) >= floor, wrong


@pytest.mark.parametrize("name", FLOORS)
def test_no_record_is_made_that_nobody_told(name: str) -> None:
    invented = [
        row["id"]
        for row in messages(name)
        if not any(
            a["act"] in RECORDS for label in [row["expect"], *row.get("or", [])] for a in label
        )
        and any(act["act"] in RECORDS for act in reading(row))
    ]
    assert len(invented) <= max(1, ONE_IN_A_HUNDRED * len(list(messages(name)))), invented


@pytest.mark.parametrize("name", FLOORS)
def test_small_talk_meets_silence(name: str) -> None:
    spoke = [row["id"] for row in messages(name) if is_silent(row) and reading(row)]
    assert len(spoke) <= max(1, ONE_IN_A_HUNDRED * len(list(messages(name)))), spoke
