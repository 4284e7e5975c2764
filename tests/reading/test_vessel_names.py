"""A bin whose name is given with its vessel, and what it is called from then on."""

import pytest

from handlers.reading.acts import Layer, Open
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("so i started mine today, its called blue tub, 15 litres, by the sink", "blue tub"),
        ("made one out of a paint bucket, 20 litres, we will call it the red pail", "red pail"),
        ("New bin, 15 litres, called silver bucket", "silver bucket"),
        ("shed is full and sealed, started the old green tub instead", "old green tub"),
        ("started th'old green tub", "old green tub"),
        # its vessel only tells what it is
        ("new bin called the green bin, 20 L", "green"),
        ("opened the blue tub, 15 L", "blue"),
        ("Started a 30 litre red tub today. We'll call you when it's full.", "red"),
        ("Started a 30 litre red tub today. We will call him Hector.", "Hector"),
    ],
)
def test_a_name_is_kept_whole_where_it_is_given_as_one(text: str, name: str) -> None:
    assert [act.bin for act in acts(text) if isinstance(act, Open)] == [name]


def test_what_went_in_is_in_the_bin_of_that_name() -> None:
    text = "started mine today, its called blue tub, first thing in was 400 g of toast"
    assert {act.bin for act in acts(text) if isinstance(act, Open | Layer)} == {"blue tub"}


@pytest.mark.parametrize("said", ["blue", "blue tub", "the tub", "the blue bin", "the blue bucket"])
def test_it_is_understood_by_part_of_its_name(said: str) -> None:
    [layer] = acts(f"added 1 kg of leek tops to {said}", bins=("shed", "blue tub"))
    assert isinstance(layer, Layer)
    assert layer.bin == "blue tub"


def test_a_colour_that_two_bins_have_is_neither() -> None:
    [layer] = acts("added 1 kg of leeks to the blue bin", bins=("blue tub", "blue pail"))
    assert isinstance(layer, Layer)
    assert layer.bin not in ("blue tub", "blue pail")


def test_its_colour_alone_is_still_a_colour() -> None:
    told = acts("1 kg of peel in the shed, blue, green, the lot", bins=("shed", "blue tub"))
    assert [getattr(act, "bin", None) for act in told] == ["shed"]
