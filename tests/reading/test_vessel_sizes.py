"""How much there is to bury, as it is told: lots added up, or a vessel by its sides."""

from math import pi

import pytest

from handlers.reading.acts import Ask
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("how big a trench for 8 L and 12 L?", 20),
        ("what hole for a drum of 60 L, half full?", 30),
        ("how long a trench for a crate of 50 x 40 x 20 cm?", 40),
        # A cylinder: pi / 4 x d2 x h.
        ("what trench does a bucket 28 cm across and 30 cm high want?", pi / 4 * 28**2 * 0.03),
        ("trench for a 10 inch wide pail 14 inches tall?", pi / 4 * 25.4**2 * 35.56 / 1000),
        ("how many litres of soil for a 15 L bin in a tub?", 15),
        ("what hole for the ferment, 40 cm wide and 30 cm deep?", None),
    ],
)
def test_what_is_to_be_buried(text: str, litres: float | None) -> None:
    [asked] = [act for act in acts(text, in_room=True) if isinstance(act, Ask)]
    assert asked.topic == "trench"
    assert asked.volume_l == (litres if litres is None else pytest.approx(litres))


@pytest.mark.parametrize(
    ("text", "topic", "liquid", "water"),
    [
        ("how much for a bath of water, 120 L?", "dilution", None, 120),
        ("is a teaspoon to the litre about right for pots?", "dilution", 0.005, 1),
        ("is a spoon to the gallon about right for the juice?", "dilution", 0.015, 4.54609),
        ("how strong for a fig tree in a tub?", "dilution", None, None),
        ("how much for 3 litres of potato peel?", "dose", None, None),
    ],
)
def test_what_is_liquid_and_what_is_water(
    text: str, topic: str, liquid: float | None, water: float | None
) -> None:
    [asked] = [act for act in acts(text) if isinstance(act, Ask)]
    assert (asked.topic, asked.liquid_l, asked.water_l) == (topic, liquid, water)


def test_what_fills_a_bin_is_more_than_a_loose_layer() -> None:
    [asked] = acts("how much starter do I need to fill a 10 L bin?", in_room=True)
    assert isinstance(asked, Ask)
    # A pressed bin of scraps weighs 0.65 to 0.9 kg to the litre (community garden pails: 0.72).
    assert asked.mass_kg is not None
    assert 6.5 <= asked.mass_kg <= 9
