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


@pytest.mark.parametrize(
    ("text", "last", "amend"),
    [
        ("weighed it again, 0.75", LAYER, Amend(mass_kg=0.75)),
        ("we reweighed it and it's 820 g", LAYER, Amend(mass_kg=0.82)),
        ("kitchen scales say 540 without the bowl", LAYER, Amend(mass_kg=0.54)),
        ("third weighing gives 0.9", LAYER, Amend(mass_kg=0.9)),
        ("checked it on the proper scales: 700 grams", LAYER, Amend(mass_kg=0.7)),
        ("minus the crate it's 480 g", LAYER, Amend(mass_kg=0.48)),
        ("it's 510 without the pan", LAYER, Amend(mass_kg=0.51)),
        ("take 150 g off that for the tub", LAYER, Amend(mass_kg=0.45)),
        ("the correct weight for that is 1.35", LAYER, Amend(mass_kg=1.35)),
        ("I had the point in the wrong place: 0.06", LAYER, Amend(mass_kg=0.06)),
        ("turns out it was litres, not ml", DRAIN, Amend(volume_l=3)),
        ("read litres where I wrote millilitres", DRAIN, Amend(volume_l=3)),
        ("that's pints, I'm a fool", None, Amend()),
        ("it was cooked, not raw", LAYER, Amend(materials={"cooked": 1.0})),
    ],
)
def test_circumstance_puts_a_record_right(text: str, last: Act | None, amend: Amend) -> None:
    (act,) = acts(text, last=last)
    assert isinstance(act, Amend)
    for field in ("mass_kg", "volume_l"):
        assert getattr(act, field) == pytest.approx(getattr(amend, field))
    assert act.materials == amend.materials


@pytest.mark.parametrize(
    "text",
    [
        "the scales say 82 kg, diet starts now",
        "weighed him again, 4.2 kg, the midwife is happy",
        "it's pounds not euros over there",
        "it was cooked, not raw, at the sushi place",
        "make that three coffees, my mates are here",
        "not a gallon, a pint! the milk I mean",
    ],
)
def test_what_is_weighed_or_ordered_elsewhere(text: str) -> None:
    assert acts(text, last=LAYER) == ()
