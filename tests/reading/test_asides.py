"""Refusals and the like between people, which answer nothing of ours."""

import pytest

from handlers.reading.acts import Decline, Later
from tests.reading.context import acts


@pytest.mark.parametrize(
    "text",
    ["sorry, can't do choir", "I must decline the port", "sorry can't do the raffle",
     "remind me tomorrow, Ines, I want that cake recipe", "delete that photo",
     "cancel that booking", "what a week", "scratch that, curry for dinner",
     "scratch that, Friday suits me", "make it four coffees, Ines is coming"],
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
    ],
)
def test_what_is_ours_is_answered(text: str, kind: type) -> None:
    assert [type(act) for act in acts(text)] == [kind]
