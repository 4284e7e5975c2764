"""What a bin is like is told by whoever took it or handed it on."""

import pytest

from handlers.reading.arrangements.communal import Condition
from handlers.reading.plans import plans
from tests.reading.communal.said_in import TAKEN, THURSDAY


@pytest.mark.parametrize(
    ("said", "kg", "fill"),
    [
        ("lid cracked, about 6 kg", 6.0, None),
        ("more like 9 kg", 9.0, None),
        ("the tap leaks and it's half full", None, 0.5),
        ("heavier than I thought!", None, None),
    ],
)
def test_the_taker_tells_what_a_bin_is_like(
    said: str, kg: float | None, fill: float | None
) -> None:
    assert plans(said, TAKEN)[0] == (Condition(words=said, bin="shed", mass_kg=kg, fill=fill),)


def test_whoever_has_handed_a_bin_on_tells_what_it_is_like() -> None:
    said = "handed the shed bin over to Bram last night, it's about half full and a bit whiffy"
    condition = Condition(words="it's about half full and a bit whiffy", bin="shed", fill=0.5)
    assert plans(said, THURSDAY) == ((condition,), said)
    assert plans("gave Bram the shed bin, it's raining now", THURSDAY)[0] == ()


@pytest.mark.parametrize(
    "said", ["added 2 kg of bread", "drained it", "how heavy is it?", "thanks"]
)
def test_a_record_or_a_question_of_the_taker_is_no_condition(said: str) -> None:
    assert plans(said, TAKEN)[0] == ()
