"""What starter is asked for: shares by amount, depths, and the two ends of a bin."""

from collections.abc import Mapping

import pytest

from handlers.practice.kinds import Kind
from handlers.reading.acts import Ask, Layer
from tests.reading.context import acts


def asked(text: str, *, in_room: bool = True) -> list[Ask]:
    return [act for act in acts(text, in_room=in_room) if isinstance(act, Ask)]


@pytest.mark.parametrize(
    ("text", "kg", "shares"),
    [
        ("4 kg of leeks and 1 kg of cod, how much bran?", 5, {"vegetable": 0.8, "fish": 0.2}),
        ("how much starter on 3 kg beef and 1 kg peel?", 4, {"meat": 0.75, "vegetable": 0.25}),
        (
            "how much bran for a kilo of carrots, 750 g of toast and 250 g of brie?",
            2,
            {"vegetable": 0.5, "grain": 0.375, "dairy": 0.125},
        ),
        ("how much bran for 4 kg of scraps, 1 kg of it cod?", 4, {"mixed": 0.75, "fish": 0.25}),
        ("how much bran for 2 kg of leeks and cod?", 2, {"vegetable": 0.5, "fish": 0.5}),
    ],
)
@pytest.mark.parametrize("in_room", [True, False])
def test_an_amount_of_each_gives_the_shares(
    text: str, kg: float, shares: Mapping[Kind, float], in_room: bool
) -> None:
    (ask,) = asked(text, in_room=in_room)
    assert ask.mass_kg == pytest.approx(kg)
    assert ask.materials == pytest.approx(shares)


def test_what_is_measured_beside_a_weight_is_asked_of_by_itself() -> None:
    weighed, poured = asked("how much bran for 2 kg cod, 2 kg rice and 4 L of leeks?")
    assert (weighed.mass_kg, weighed.volume_l) == (4, None)
    assert weighed.materials == {"fish": 0.5, "grain": 0.5}
    assert (poured.mass_kg, poured.volume_l, poured.materials) == (None, 4, {"vegetable": 1})
    (only,) = asked("how much bran for 2 kg of leeks in a 20 L bucket?")
    assert (only.mass_kg, only.volume_l) == (2, None)


@pytest.mark.parametrize(
    ("text", "depth_m", "width_m"),
    [
        ("how much starter for a layer 6 cm deep?", 0.06, None),
        ("how much bran on 7 cm in a 25 cm bucket?", 0.07, 0.25),
        ("how much bran for 3 inches of leeks?", 0.0762, None),
        ("how much bran for 2 kg in a 25 cm bucket?", None, None),
    ],
)
def test_the_depth_of_a_layer(text: str, depth_m: float | None, width_m: float | None) -> None:
    (ask,) = asked(text)
    assert [ask.depth_m, ask.width_m] == pytest.approx([depth_m, width_m])


@pytest.mark.parametrize(
    ("text", "what", "capacity_l"),
    [
        ("how much bran at the bottom of a 15 L bucket?", "bottom", 15),
        ("how much starter goes on the floor of the shed bin?", "bottom", None),
        ("how much bran on top before we seal the shed?", "top", None),
        ("how much bran on top of 2 kg of cod?", None, None),
    ],
)
def test_the_ends_of_a_bin(text: str, what: str | None, capacity_l: float | None) -> None:
    (ask,) = asked(text)
    assert (ask.topic, ask.what, ask.capacity_l) == ("dose", what, capacity_l)


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("how much bran for 3 bins?", 3),
        ("how much starter do we need for two full bins?", 2),
        ("how many cups of bran does it take for four of our bins?", 4),
        ("how much bran for 2 kg in 3 bins?", None),
        ("how much bran for bin 3?", None),
        ("how much bran for the bins?", None),
    ],
)
def test_bins_that_are_only_counted(text: str, count: float | None) -> None:
    (ask,) = asked(text)
    assert (ask.topic, ask.count) == ("dose", count)


def test_whether_there_is_enough_for_some_bins_is_asked_of_what_is_left() -> None:
    (ask,) = asked("do we have enough bran for 3 bins?")
    assert (ask.topic, ask.count) == ("starter", None)


@pytest.mark.parametrize(
    "text", ["how much bran do we need on that", "how much starter do we need on this"]
)
def test_the_dose_of_what_was_told_is_asked_and_not_the_stock(text: str) -> None:
    last = Layer(bin="shed", mass_kg=2.0, materials={"mixed": 1.0})
    told = acts(text, in_room=True, last=last)
    assert [act.topic for act in told if isinstance(act, Ask)] == ["dose"]
