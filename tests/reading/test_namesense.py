"""Bins named like persons, rooms and tanks: what is told of those is told of no bin."""

import pytest

from handlers.reading.acts import Ask, Bury, Drain, Layer, Observe, Seal, Unsure
from tests.reading.context import acts

_BINS = ("kitchen", "Mabel", "tank", "blue")


@pytest.mark.parametrize(
    "text",
    [
        "Mabel got two tubs of ice cream for her birthday",
        "gave Mabel a bath and a handful of raisins",
        "Mabel is full of cold",
        "Mabel has a bit of a smell about her, nappy time",
        "can someone take Mabel to school tomorrow?",
        "painted the kitchen blue, took 5 litres",
        "the kids had 2 kg of cherries in the kitchen, whole lot gone",
        "left a kilo of mince out in the kitchen overnight, is it safe to eat?",
        "emptied the tank, fish all fine, 30 litres changed",
        "drained the tank of the mower, 2 litres",
        "drained the fish tank, 5 litres",
        "put 3 kg of grass in the council blue bin",
        "emptied the blue bin into the green waste",
        "tipped the blue bin into the skip",
        "emptied the blue bin into the dumpster, 5 bags",
        "emptied the blue bin into the wheelie bin",
    ],
)
def test_what_is_told_of_the_namesake(text: str) -> None:
    assert acts(text, bins=_BINS, in_room=True) == ()


@pytest.mark.parametrize(
    ("text", "kind", "name"),
    [
        ("Mabel got 2 kg of peel", Layer, "Mabel"),
        ("fed Mabel 500 g of birthday cake leftovers", Layer, "Mabel"),
        ("drained 300 ml from Mabel before the school run", Drain, "Mabel"),
        ("left-over mince, 1 kg in the kitchen bin", Layer, "kitchen"),
        ("drained the tank, 2 litres", Drain, "tank"),
        ("2 kg of fish heads in the tank bin", Layer, "tank"),
        ("sealed Mabel", Seal, "Mabel"),
        ("put 2 kg of kitchen waste in the blue bin", Layer, "blue"),
        ("emptied the blue bin into bed 3", Bury, "blue"),
        ("emptied the blue bin into the trench by the rubbish heap", Bury, "blue"),
    ],
)
def test_what_is_told_of_the_bin(text: str, kind: type[Layer | Bury], name: str) -> None:
    [act] = acts(text, bins=_BINS, in_room=True)
    assert isinstance(act, kind)
    assert act.bin == name


@pytest.mark.parametrize(
    ("text", "bin", "materials"),
    [
        ("put 1 kg of fish in the red bin", "red", {"fish": 1.0}),
        ("1 kg chicken to red", "red", {"meat": 1.0}),
        ("put 1 kg rice and chicken in red", "red", {"grain": 0.5, "meat": 0.5}),
        ("put 2 kg in fish", "fish", {"mixed": 1.0}),
        ("fish got 2 kg", "fish", {"mixed": 1.0}),
        ("put 1 kg of rice in the chicken bin", "chicken", {"grain": 1.0}),
    ],
)
def test_a_bin_called_like_a_food_and_the_food(
    text: str, bin: str, materials: dict[str, float]
) -> None:
    [layer] = acts(text, bins=("red", "fish", "chicken"), in_room=True)
    assert isinstance(layer, Layer)
    assert (layer.bin, layer.materials) == (bin, materials)


@pytest.mark.parametrize(
    "text",
    [
        "Mabel ate half a kilo of strawberries",
        "testing, 2 kg in the blue bin",
        "this is only a test: sealed Mabel",
    ],
)
def test_what_is_doubtful_is_asked_about(text: str) -> None:
    [unsure] = acts(text, bins=_BINS, in_room=True)
    assert isinstance(unsure, Unsure)


def test_a_bin_in_doubt_is_asked_for_and_a_supposed_layer_is_none() -> None:
    [layer] = acts("2 kg in the blue? or was it Mabel", bins=_BINS, in_room=True)
    assert isinstance(layer, Layer)
    assert (layer.mass_kg, layer.bin) == (2, None)
    [asked] = acts("say I put 2 kg in Mabel, what would you tell me?", bins=_BINS, in_room=True)
    assert isinstance(asked, Ask)
    assert (asked.topic, asked.mass_kg, asked.bin) == ("dose", 2, "Mabel")


@pytest.mark.parametrize(
    "text",
    [
        "new kitchen bin 30 quid, 50 litres",
        "bought a kitchen bin, 30 L",
        "bought a new bin for the kitchen, 30 L",
    ],
)
def test_a_bin_in_the_shops_does_not_change_the_size_of_ours(text: str) -> None:
    [unsure] = acts(text, bins=_BINS, in_room=True)
    assert isinstance(unsure, Unsure)


def test_the_lid_of_a_tank_is_a_bins() -> None:
    [seen] = acts("tank lid bulging", bins=_BINS, in_room=True)
    assert isinstance(seen, Observe)
