"""Bins that are called by one word of their names."""

import pytest

from handlers.reading.acts import Ask, Drain, Layer, Open
from tests.reading.context import acts

BINS = ("blue barrel", "village hall", "Old Myrtle", "Little Myrtle", "wee Effie", "tub 3", "snug")


def bins_of(text: str, **changes: object) -> list[str | None]:
    return [getattr(act, "bin", None) for act in acts(text, bins=BINS, **changes)]


@pytest.mark.parametrize(
    ("text", "bin"),
    [
        ("2 kg of neeps into the barrel", "blue barrel"),
        ("Barrel. 900 g of crusts.", "blue barrel"),
        ("took 400 ml off the barrel", "blue barrel"),
        ("the barrel smells of vinegar", "blue barrel"),
        ("1 kg of rice in the hall bin", "village hall"),
        ("sealed the hall bucket", "village hall"),
        ("600 g of tea leaves, Myrtle", "Old Myrtle"),
        ("Myrtle 600 g of tea leaves", "Old Myrtle"),
        ("ines put 2 kg of plums in Myrtle tea time", "Old Myrtle"),
        ("600 g of tea leaves in Little Myrtle", "Little Myrtle"),
        ("drained Effie, 200 ml", "wee Effie"),
        ("how full is Effie?", "wee Effie"),
    ],
)
def test_a_word_that_only_one_bin_has_names_it(text: str, bin: str) -> None:
    assert bins_of(text) == [bin]


@pytest.mark.parametrize(
    "text",
    [
        "the rain barrel ran over, drained 40 litres onto the beans",
        "what a barrel of laughs that was",
        "choir in the hall at 8",
        "the hall smells of floor polish",
    ],
)
def test_such_a_word_may_be_another_thing(text: str) -> None:
    assert bins_of(text) == []


def test_a_new_one_is_none_that_is_there() -> None:
    (begun,) = acts("started a new barrel, 60 L", bins=BINS)
    assert isinstance(begun, Open)
    assert begun.bin is None
    (begun,) = acts("New bin by the gate, 20 litres. Name: Young Effie.", bins=BINS)
    assert isinstance(begun, Open)
    assert begun.bin == "Young Effie"


def test_a_member_is_not_the_bin_called_like_them() -> None:
    (layer,) = acts(
        "Effie has put 1 kg of neeps in the snug today.", bins=BINS, members=("effie", "kofi")
    )
    assert isinstance(layer, Layer)
    assert (layer.bin, layer.member) == ("snug", "effie")


def test_no_word_of_two_bins_names_one() -> None:
    (drain,) = acts("took 400 ml off the barrel", bins=("blue barrel", "green barrel"))
    assert isinstance(drain, Drain)
    assert drain.bin is None
    (ask,) = acts("how full is the barrel?", bins=("blue barrel", "green barrel"))
    assert isinstance(ask, Ask)
    assert ask.bin is None
