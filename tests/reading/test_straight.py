"""Amounts that stand beside the group's own bins, with nothing else said."""

from datetime import date

import pytest

from handlers.reading.acts import Act, Drain, Layer, Unsure
from handlers.reading.deeds.straight import RULE
from tests.reading.context import acts

BINS = ("green", "bin 2", "Hettie", "kitchen", "tank")


def in_room(text: str) -> tuple[Act, ...]:
    """What it means among bins of all sorts of names."""
    return acts(text, bins=BINS, in_room=True)


def told(text: str) -> list[tuple[str | None, float]]:
    """Bin and kg or litres of each layer."""
    found = in_room(text)
    assert not any(isinstance(act, Drain) for act in found)
    return [
        (act.bin, round(act.mass_kg or act.volume_l or 0, 2))
        for act in found
        if isinstance(act, Layer)
    ]


@pytest.mark.parametrize(
    ("text", "layers"),
    [
        ("tank 2 kg, kitchen: 3 quarts", [("tank", 2.0), ("kitchen", 3.41)]),
        ("half a bucket green half a bucket Hettie", [("green", 5.0), ("Hettie", 5.0)]),
        (
            "a handful in each of Hettie, green and bin 2",
            [("Hettie", 0.15), ("green", 0.15), ("bin 2", 0.15)],
        ),
        ("3 tubs in green and 1 in Hettie", [("green", 3.0), ("Hettie", 1.0)]),
        ("a caddy in the tank, two in the kitchen", [("tank", 5.0), ("kitchen", 10.0)]),
        ("bin 2 3 kg. green, 2. Hettie nil.", [("bin 2", 3.0), ("green", 2.0)]),
        ("1 kg of bread in bin 2, ditto green", [("bin 2", 1.0), ("green", 1.0)]),
        (
            "1 kg each into green and bin 2 and a handful of peel in Hettie",
            [("green", 1.0), ("bin 2", 1.0), ("Hettie", 0.15)],
        ),
        ("put 2 gallons in the green", [("green", 9.09)]),
        ("put two handfuls in the tank", [("tank", 0.3)]),
        ("8 kg in all, half Hettie, a quarter green, rest bin 2",
         [("Hettie", 4.0), ("green", 2.0), ("bin 2", 2.0)]),
    ],
)  # fmt: skip
def test_each_bin_has_its_amount(text: str, layers: list[tuple[str, float]]) -> None:
    assert told(text) == layers


def test_a_number_alone_is_of_the_same_things() -> None:
    first, second = in_room("2 caddies of apple peel in green and one in bin 2")
    assert isinstance(first, Layer)
    assert isinstance(second, Layer)
    assert first.materials == second.materials == {"fruit": 1.0}


@pytest.mark.parametrize("text", ["put 4 litres in the tank", "put a quart in the kitchen"])
def test_what_may_be_a_tank_of_another_kind_is_asked_about(text: str) -> None:
    [act] = in_room(text)
    assert isinstance(act, Unsure)


@pytest.mark.parametrize(
    "text",
    [
        "30 litres in the tank",
        "3 bags in the kitchen, 2 in the tank",
        "did somebody put 4 litres in the tank?",
        "I'll put 2 tubs in green and 1 in bin 2",
        "green is up to 2 kg, bin 2 to 1",
        "two tubs of green paint and one of white",
    ],
)
def test_what_went_into_no_bin_is_no_layer(text: str) -> None:
    assert not told(text)


def test_millilitres_that_stand_beside_bins_came_out() -> None:
    assert all(isinstance(act, Drain) for act in in_room("green 300 ml, bin 2 200 ml"))


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("3 kg sat, 2 kg sun and 1 kg today, all in green", [13, 14, 17]),
        ("3 kg mon, 2 kg sun in green", [15, 14]),
    ],
)
def test_each_amount_has_the_day_behind_it(text: str, days: list[int]) -> None:
    layers = [act for act in in_room(text) if isinstance(act, Layer)]
    assert [layer.on for layer in layers] == [date(2026, 6, day) for day in days]


@pytest.mark.parametrize(
    ("text", "shares"),
    [
        ("me and Ruth put 3 kg in green", [(None, 1.5), ("ruth", 1.5)]),
        ("Ines and I put 2 kg in the tank, half each", [(None, 1.0), ("ines", 1.0)]),
        ("Ruth put 3 kg in green", [("ruth", 3.0)]),
    ],
)
def test_two_doers_share_what_they_put_in(
    text: str, shares: list[tuple[str | None, float]]
) -> None:
    layers = [act for act in in_room(text) if isinstance(act, Layer)]
    assert [(layer.member, layer.mass_kg) for layer in layers] == shares


def test_as_much_again_on_another_day() -> None:
    layers = in_room("2 kg in green on sunday and again today")
    assert [act.on for act in layers if isinstance(act, Layer)] == [
        date(2026, 6, 14),
        date(2026, 6, 17),
    ]


@pytest.mark.parametrize(
    ("text", "of"),
    [
        ("put 2 kg of carrot peel in the green bin", {"vegetable": 1.0}),
        ("1.5 kg scraps, mostly bread, into the kitchen bin", {"grain": 0.7, "mixed": 0.3}),
        ("chucked about 700 g of fish in bin 2 yesterday", {"fish": 1.0}),
        ("900 g of cheese went into the green bin", {"dairy": 1.0}),
    ],
)
def test_what_is_told_to_its_last_word_needs_no_score(text: str, of: dict[str, float]) -> None:
    (layer,) = in_room(text)
    assert isinstance(layer, Layer)
    assert layer.rules == (RULE,)
    assert layer.materials == pytest.approx(of)


@pytest.mark.parametrize(
    "text",
    [
        "put 2 kg of flour in the kitchen cupboard",
        "will put 2 kg of peel in the green bin",
        "put 2 kg of peel in the green bin?",
        "never put 2 kg of peel in the green bin",
        "2 kg of peel for the green bin",
    ],
)
def test_a_word_more_is_for_the_scores(text: str) -> None:
    assert all(RULE not in act.rules for act in in_room(text))


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("1: 50 ml, 2: none, 3: 120 ml", [("drain", "bin 1", 0.05), ("drain", "bin 3", 0.12)]),
        ("bin 1 50 ml, bin 3 120", [("drain", "bin 1", 0.05), ("drain", "bin 3", 0.12)]),
        ("bin 1: 50 ml, bin 2: 2 kg", [("drain", "bin 1", 0.05), ("layer", "bin 2", 2.0)]),
        ("4: 500 g", [("layer", "bin 4", 0.5)]),
        ("5: 300 g, 1: 200 g", [("layer", "bin 5", 0.3), ("layer", "bin 1", 0.2)]),
        ("bin 3: 50 ml, bin 6: 2 kg veg", [("drain", "bin 3", 0.05), ("layer", "bin 6", 2.0)]),
        ("bin 1 and bin 2 300 g each", [("layer", "bin 1", 0.3), ("layer", "bin 2", 0.3)]),
        ("put 50 ml in bin 1 and 30 ml in bin 2",
         [("layer", "bin 1", 0.05), ("layer", "bin 2", 0.03)]),
        ("at 4:30 added 2 kg to bin 3", [("layer", "bin 3", 2.0)]),
        ("4: it smells", []),
    ],
)  # fmt: skip
def test_numbered_bins_each_have_their_own(text: str, told: list[tuple[str, str, float]]) -> None:
    found = acts(text, bins=("bin 1", "bin 2", "bin 3"), in_room=True)
    records = [act for act in found if isinstance(act, Layer | Drain)]
    assert len(records) == len(found)
    amounts = [a.volume_l if isinstance(a, Drain) or not a.mass_kg else a.mass_kg for a in records]
    assert [(a.act, a.bin, n) for a, n in zip(records, amounts, strict=True)] == told


_WEIGHED = Layer(mass_kg=0.4, materials={"mixed": 1.0}, bin="green", on=date(2026, 6, 17))
_DRAWN = Drain(volume_l=0.3, bin="green", on=date(2026, 6, 17))


@pytest.mark.parametrize(
    ("text", "last", "asked", "layers"),
    [
        ("green 500, Hettie 400", None, True, [("green", 0.5), ("Hettie", 0.4)]),
        ("Hettie 600", None, True, [("Hettie", 0.6)]),
        ("Hettie 500", _WEIGHED, False, [("Hettie", 0.5)]),
        ("Hettie and bin 2 300 each", _WEIGHED, False, [("Hettie", 0.3), ("bin 2", 0.3)]),
        ("Hettie 1.4, bin 2 0.8", _WEIGHED, False, [("Hettie", 1.4), ("bin 2", 0.8)]),
        ("Hettie 500", _DRAWN, False, []),
        ("Hettie 4", None, False, []),
        ("Hettie 500?", _WEIGHED, False, []),
        ("Hettie 400 people", _WEIGHED, False, []),
    ],
)
def test_bare_figures_are_weights_unless_liquid_is_talked_of(
    text: str, last: Act | None, asked: bool, layers: list[tuple[str, float]]
) -> None:
    found = acts(text, bins=BINS, in_room=True, last=last)
    assert any(isinstance(act, Unsure) for act in found) is asked
    told = [one for act in found for one in (act.guess if isinstance(act, Unsure) else (act,))]
    assert [(a.bin, a.mass_kg) for a in told if isinstance(a, Layer)] == layers
    assert last is _DRAWN or all(isinstance(act, Layer) for act in told)
