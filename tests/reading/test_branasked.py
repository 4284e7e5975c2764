"""What is asked of bran by its amount, and what only sounds like it."""

from collections.abc import Mapping

import pytest

from handlers.reading.acts import Ask, Batch
from tests.reading.context import acts


def asked(text: str, **changes: object) -> list[Ask]:
    found = acts(text, in_room=True, **changes)
    return [act for act in found if isinstance(act, Ask)]


@pytest.mark.parametrize(
    ("text", "what", "kg", "litres"),
    [
        ("what does half a cup of bran weigh?", "weight", None, 0.125),
        ("how heavy is 2 L of bran?", "weight", None, 2),
        ("how many spoons of starter are in 90 g?", "weight", 0.09, None),
        ("how long will 500 g of starter last us?", "lasts", 0.5, None),
        ("how much bran have we gone through?", "used", None, None),
    ],
)
def test_what_is_asked_of_bran(
    text: str, what: str, kg: float | None, litres: float | None
) -> None:
    (ask,) = asked(text)
    assert (ask.topic, ask.what, ask.mass_kg, ask.volume_l) == ("bran", what, kg, litres)


@pytest.mark.parametrize(
    ("text", "kg", "at_hand"),
    [
        ("how much bran can I mix with 90 ml of treacle?", None, {"molasses": 0.09}),
        ("is 250 ml of treacle enough on 3 kg bran?", 3, {"molasses": 0.25}),
        ("is 60 ml of culture enough for 4 kg of bran?", 4, {"culture": 0.06}),
        (
            "what can I make from 2 kg of bran, 50 ml culture and 70 ml molasses?",
            2,
            {"culture": 0.05, "molasses": 0.07},
        ),
    ],
)
def test_what_there_is_of_the_rest(
    text: str, kg: float | None, at_hand: Mapping[str, float]
) -> None:
    (ask,) = asked(text)
    assert (ask.topic, ask.mass_kg, ask.at_hand) == ("bran", kg, at_hand)


def test_what_a_batch_comes_to_is_asked_behind_it() -> None:
    (ask,) = asked("how much bran will that make?", last=Batch(mass_kg=4))
    assert (ask.topic, ask.what, ask.mass_kg) == ("bran", "yield", 4)


@pytest.mark.parametrize(
    "text",
    [
        "how much molasses for 3 kg of bran?",
        "how many spoons of bran for 90 g of cod?",
        "how many bags of bran are there?",
        "what weight of bran is right for 3 kg of leeks?",
        "what's the recipe for 500 g of starter, and how many days does it stand?",
        "one tub of bran, how many weeks is that?",
        "how long will 1 kg of bran muffins last?",
        "how much does 5 kg of bran cost?",
    ],
)
def test_it_is_asked_of_something_else(text: str) -> None:
    assert all(ask.topic != "bran" for ask in asked(text))
