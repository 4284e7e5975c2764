"""Refusals and the like between people, which answer nothing of ours."""

import pytest

from handlers.reading.acts import Decline, Later, Retract
from tests.reading.context import acts


@pytest.mark.parametrize(
    "text",
    ["sorry, can't do choir", "I must decline the port", "sorry can't do the raffle",
     "remind me tomorrow, Ines, I want that cake recipe", "delete that photo",
     "cancel that booking", "what a week", "scratch that, curry for dinner",
     "scratch that, Thursday suits the band", "take that down from the gate",
     "ignore what I said about the neighbours", "wipe that grin off your face",
     "undo that bottom button", "homework done, tea next", "give us a bell after choir",
     "no can do, play without me"],
)  # fmt: skip
def test_what_is_between_people_is_no_answer(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("sorry, can't do my turn", Decline),
        ("sorry, can't do Friday", Decline),
        ("I have to decline the shed", Decline),
        ("remind me tomorrow", Later),
        ("ignore what I said about the 3 kg", Retract),
        ("scratch that", Retract),
    ],
)
def test_what_is_ours_is_answered(text: str, kind: type) -> None:
    assert [type(act) for act in acts(text)] == [kind]
