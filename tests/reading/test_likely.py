"""Acts of which only the scores speak: what is cooked, spilt or seen elsewhere is left alone."""

import pytest

from handlers.reading.acts import Layer, Seal
from tests.reading.context import acts


@pytest.mark.parametrize(
    "text",
    [
        "the wedding hall threw 60 kg of biryani last night, criminal",
        "just had a litre of soup, feel human again",
        "hotel throws 30 kg of food every night, shameful",
        "3 cups of coffee and nothing, brain still off",
        "done, see you at choir",
        "is there a bus today or is it that strike thing?",
    ],
)
def test_words_that_name_no_bin_need_more_than_a_likeness(text: str) -> None:
    assert acts(text) == ()


@pytest.mark.parametrize(
    ("text", "kilos"),
    [
        ("Ruth got 1.4 kg, leeks and rice", 1.4),
        ("first layer: 600 g of orange peel", 0.6),
        ("1.1 kg of pasta went in", 1.1),
    ],
)
def test_one_of_us_a_layer_or_that_it_went_in_is_enough(text: str, kilos: float) -> None:
    (layer,) = acts(text)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == kilos


def test_what_leans_on_a_layer_is_one_too() -> None:
    (peel,) = acts("put 2 kg of potato peel in the shed")
    (layer,) = acts("oh and 400 g of ham bones", in_room=True, last=peel)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == 0.4


def test_a_layer_alone_that_is_likely_and_no_more_is_not_written_down() -> None:
    told = acts("a kilo of chips between us at the yard", bins=("yard",))
    assert not any(isinstance(act, Layer) for act in told)


def test_a_lid_beside_a_layer_seals_nothing() -> None:
    told = acts("bin 3: 550 g of cauliflower leaves. lid barely shuts")
    assert [type(act) for act in told] == [Layer]
    told = acts("bin 3: 550 g of cauliflower leaves, and I've sealed it")
    assert any(isinstance(act, Seal) for act in told)


@pytest.mark.parametrize(
    "text",
    [
        "spread 12 kg of lawn seed over the yard",
        "Bought a kilo of ready-made bran off the man at the market",
    ],
)
def test_a_rule_alone_is_not_believed_of_what_is_carried_or_bought(text: str) -> None:
    assert not [act for act in acts(text, bins=("yard",)) if act.act in ("layer", "batch")]
