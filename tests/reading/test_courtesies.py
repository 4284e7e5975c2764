"""Greetings before a message and thanks behind it change nothing of what it means."""

import pytest

from handlers.reading.words.courtesies import without_courtesies
from handlers.reading.words.words import words_of
from tests.reading.corpus import agrees, messages, reading

FILES = ("messages.jsonl", "hand_d.jsonl", "hand_e.jsonl")


@pytest.mark.parametrize(
    ("text", "left"),
    [
        ("Morning all. ok so what's due? lol", "what 's due ?"),
        ("done, thanks!", "done ,"),
        ("thanks all", "thanks all"),
        ("ok to add bones?", "ok to add bones ?"),
        ("later folks", "later folks"),
    ],
)
def test_fillers_are_passed_over(text: str, left: str) -> None:
    assert " ".join(word.norm for word in without_courtesies(words_of(text))) == left


@pytest.mark.parametrize(
    ("before", "behind"),
    [
        ("ok so ", ""),
        ("Morning all. ", ""),
        ("ugh ", ""),
        ("", " lol"),
        ("", " thanks all"),
        ("", " x"),
    ],
)
def test_nearly_every_message_means_the_same_with_them(before: str, behind: str) -> None:
    rows = [row for name in FILES for row in messages(name)]
    wrong = []
    for row in rows:
        dressed = {**row, "body": f"{before}{row['body'].rstrip('.')}{behind}"}
        if not agrees(dressed, reading(dressed)):
            wrong.append(row["id"])
    assert len(wrong) <= 0.03 * len(rows), wrong
