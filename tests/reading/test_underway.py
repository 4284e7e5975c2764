"""Scraps still carried, kept ready or commended to others are no layer yet."""

import pytest

from handlers.reading.acts import Layer
from tests.reading.context import acts


@pytest.mark.parametrize(
    "text",
    [
        "on my way over with 2 kg of leek tops for bin 3",
        "heading down to the shed bin with a kilo of crusts",
        "1 kg of rind in my rucksack for bin 3, bus is late",
        "bagged up 3 kg of cabbage for bin 3, doing it later",
        "got as far as the gate with 2 kg of peel for bin 3 and it was locked",
        "took 3 kg up to bin 3, padlocked, brought it back down again",
        "ines love tip my rice in bin 3 would you",
        "somebody put 2 kg of peel in bin 3 please, it's on the step",
        "ruth, chuck the bones in bin 3, they're in the blue tub",
        "pop the fish heads in bin 3 when you are down there",
    ],
)
def test_nothing_has_gone_in_yet(text: str) -> None:
    assert not any(isinstance(act, Layer) for act in acts(text))


@pytest.mark.parametrize(
    "text",
    [
        "dropped 2 kg of peel in bin 3 on my way to work",
        "weighed out 2 kg of cabbage for bin 3 and in it went",
        "carried 2 kg of peel over the road and tipped it in bin 3",
        "ines put 2 kg of peel in bin 3",
        "added 2 kg of peel to bin 3, heading home now with the bucket",
    ],
)
def test_what_has_gone_in_is_a_layer(text: str) -> None:
    assert [act.mass_kg for act in acts(text) if isinstance(act, Layer)] == [2]


@pytest.mark.parametrize(
    "text",
    [
        "gave the ducks 2 kg of bread, none for bin 3",
        "Tall Paul fed the pigs 3 kg of potatoes",
        "the hens had 2 kg of peel that bin 3 was waiting for",
        "Tall Paul ate two kilos of plums and had to lie down",
    ],
)
def test_what_animals_and_people_had_is_no_layer(text: str) -> None:
    assert not any(isinstance(act, Layer) for act in acts(text))


@pytest.mark.parametrize(
    "text",
    [
        "2 kg of crusts to bin 3, none for the ducks",
        "Tall Paul ate well tonight, 2 kg of peel",
        "the dog had a bone, the other 2 kg of peel went into bin 3",
    ],
)
def test_what_the_bin_had_is_a_layer(text: str) -> None:
    assert [act.mass_kg for act in acts(text) if isinstance(act, Layer)] == [2]


@pytest.mark.parametrize(
    "text",
    [
        "2 kg of peelings waiting for the shed bin",
        "got 2 kg of peelings for the shed bin, who is nearest",
        "someone left 2 kg of peelings by the shed bin, no idea who",
    ],
)
def test_what_waits_beside_a_bin_is_not_in_it(text: str) -> None:
    assert not any(isinstance(act, Layer) for act in acts(text, in_room=True))
