"""Answers that one neighbour gives another, and near ones that are given of a bin."""

import pytest

from handlers.reading.acts import Accept, Act, Ask, Decline
from tests.reading.context import acts


@pytest.mark.parametrize(
    "text",
    [
        "Yes, I have space.",
        "yes we have room at ours",
        "Yep, I've a spare sofa.",
        "I do. Why?",
        "I do! Where is it?",
        "I am. Who else?",
        "I can. What day?",
        "Me too. When is it?",
        "finished! 12,000 words",
        "done, paid, thanks",
        "third night of no sleep, my body cant",
        "that ending. my heart cannot",
        "my wallet cant this month",
        "my eyes cant with this font",
        "got it love, it weighs a ton what's in it",
        "the parcel's here, what on earth is in it",
    ],
)
def test_an_answer_to_a_neighbour_is_left_alone(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("yes, I have room for big blue", Accept),
        ("I can take the shed, what time?", Accept),
        ("no love not me, my knees wont do another month of carrying it", Decline),
        ("my back cant take big blue again", Decline),
        ("what's in bin 3?", Ask),
        ("got the shed home, what's in it?", Ask),
    ],
)
def test_what_is_answered_of_a_bin_is_kept(text: str, kind: type[Act]) -> None:
    assert any(isinstance(act, kind) for act in acts(text))


def test_room_for_a_bin_that_waits_is_a_yes() -> None:
    (act,) = acts("Yes, I have room.", in_room=True, on_offer=True)
    assert isinstance(act, Accept)
