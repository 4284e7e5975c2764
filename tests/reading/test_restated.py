"""Bare corrections: a figure or a unit put right, and nothing else said."""

import pytest

from handlers.reading.acts import Act, Amend, Drain, Layer
from tests.reading.context import acts

LAYER = Layer(mass_kg=0.6, bin="shed")
DRAIN = Drain(volume_l=0.003, bin="shed")


@pytest.mark.parametrize(
    ("text", "last", "amend"),
    [
        ("make it 840", LAYER, Amend(mass_kg=0.84)),
        ("oh sorry 1.7, not 1.9", LAYER, Amend(mass_kg=1.7)),
        ("mistyped that, it's 1.25", LAYER, Amend(mass_kg=1.25)),
        ("whoops that was 480 not 840", LAYER, Amend(mass_kg=0.48)),
        ("*950 oops", LAYER, Amend(mass_kg=0.95)),
        ("120 should be 210", LAYER, Amend(mass_kg=0.21)),
        ("ought to have been 3.1", LAYER, Amend(mass_kg=3.1)),
        ("it must be 1.45", LAYER, Amend(mass_kg=1.45)),
        ("700 sorry, not 1700", LAYER, Amend(mass_kg=0.7)),
        ("I wrote 4 but meant 1.4", LAYER, Amend(mass_kg=1.4)),
        ("sorry it was 2.1 not 2.6, misread the scale", LAYER, Amend(mass_kg=2.1)),
        ("litres, not ml!", DRAIN, Amend(volume_l=3)),
        ("pints! not litres", Drain(volume_l=2), Amend(volume_l=2 * 0.56826125)),
        ("oops 1.8, not 2.8", None, Amend()),
        ("that should read millilitres", None, Amend()),
    ],
)
def test_a_figure_or_a_unit_is_put_right(text: str, last: Act | None, amend: Amend) -> None:
    (act,) = acts(text, last=last)
    assert isinstance(act, Amend)
    for field in ("mass_kg", "volume_l"):
        assert getattr(act, field) == pytest.approx(getattr(amend, field))


@pytest.mark.parametrize(
    "text",
    ["make that three beers", "make it 7",
     "it was Petra on the phone", "it was 1987 not 1986", "oops, forgot 3 chairs",
     "sorry, not a mile", "grams please, not ounces", "sorry 250 people came"],
)  # fmt: skip
def test_other_things_are_put_right_in_talk(text: str) -> None:
    assert not any(isinstance(act, Amend) for act in acts(text))


def test_a_day_before_a_deed_is_told_with_it() -> None:
    (act,) = acts("it was last night I put 2 kg of prawn shells in the shed")
    assert isinstance(act, Layer)
