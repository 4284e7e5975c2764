"""What is asked of scraps by their amount: paper, liquid, water and nitrogen."""

from collections.abc import Mapping

import pytest

from handlers.practice.kinds import Kind
from handlers.reading.acts import Ask
from tests.reading.context import acts


def asked(text: str) -> list[Ask]:
    return [act for act in acts(text, in_room=True) if isinstance(act, Ask)]


@pytest.mark.parametrize(
    ("text", "topic", "kg", "shares"),
    [
        ("how much newspaper for 4 kg of grapes?", "moisture", 4, {"fruit": 1}),
        ("how much cardboard with 4 kg of grapes on the heap?", "carbon", 4, {"fruit": 1}),
        ("how wet is 4 kg of grapes?", "moisture", 4, {"fruit": 1}),
        (
            "what's the moisture of 1 kg toast and 3 kg leeks?",
            "moisture",
            4,
            {"grain": 0.25, "vegetable": 0.75},
        ),
        ("how much nitrogen is in 6 kg of toast?", "carbon", 6, {"grain": 1}),
        ("how much liquid will 6 kg of grapes give?", "liquid", 6, {"fruit": 1}),
        ("how much liquid should the shed give?", "liquid", None, None),
    ],
)
def test_what_is_asked_of_scraps(
    text: str, topic: str, kg: float | None, shares: Mapping[Kind, float] | None
) -> None:
    (ask,) = asked(text)
    assert (ask.topic, ask.mass_kg, ask.materials) == (topic, kg, shares)


@pytest.mark.parametrize(
    "text",
    [
        "how much paper does the printer want for 3 kg?",
        "how wet is the lawn?",
        "how much sugar is in a cup of juice?",
    ],
)
def test_of_other_things_nothing_is_asked(text: str) -> None:
    assert asked(text) == []
