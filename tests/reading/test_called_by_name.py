"""A bin called by a name that none has: the one that gets an amount, and the one agreed on."""

import pytest

from handlers.reading.acts import Act, Layer, Open, Unsure, meant
from handlers.reading.plans import read
from tests.reading.context import group


def told(text: str, **changes: object) -> list[Act]:
    context = group(**{"bins": ("shed",), "in_room": True, **changes})
    return [act for act in read(text, context) if isinstance(act, Act)]


@pytest.mark.parametrize(
    ("text", "kilos"),
    [
        ("Hector got 1.4 kg, leeks and rice", 1.4),
        ("ok, Hector got another 600 g of crusts", 0.6),
        ("Hector has had 900 g of bean pods", 0.9),
    ],
)
@pytest.mark.parametrize("bins", [(), ("shed",)])
def test_what_a_name_got_is_asked_for_that_bin(
    text: str, kilos: float, bins: tuple[str, ...]
) -> None:
    [act] = told(text, bins=bins)
    assert isinstance(act, Unsure)
    layer = meant(act)
    assert isinstance(layer, Layer)
    assert (layer.bin, layer.mass_kg) == ("Hector", kilos)


def test_what_a_name_gets_is_asked_in_the_talk_of_the_bins() -> None:
    [act] = told("Hector gets 2 kg of leeks", of_bins=True)
    layer = meant(act)
    assert isinstance(act, Unsure)
    assert isinstance(layer, Layer)
    assert layer.bin == "Hector"
    assert told("Hector gets 2 kg of leeks") == []


@pytest.mark.parametrize(
    "text",
    [
        "Hector got 2 kg of chicken for his dinner",
        "Hector got 2 kg of pears from the farm",
        "Hector got 4 kg heavier over the holidays",
        "Mum got 2 kg of pears",
        "Did Hector get 2 kg?",
    ],
)
def test_what_a_person_got_is_none_of_ours(text: str) -> None:
    assert told(text) == []


def test_what_a_member_got_is_theirs() -> None:
    [layer] = told("Ruth got 1.4 kg, leeks and rice")
    assert isinstance(layer, Layer)
    assert (layer.member, layer.bin) == ("ruth", None)


@pytest.mark.parametrize(
    "text",
    [
        "haha Hector it is, 20 litres",
        "Right, let's call him Hector. 20 L",
        "Lol ok Hector it is. He is 20 L",
    ],
)
def test_a_name_that_is_agreed_with_its_size_is_asked(text: str) -> None:
    [act] = told(text)
    opened = meant(act)
    assert isinstance(act, Unsure)
    assert isinstance(opened, Open)
    assert (opened.bin, opened.capacity_l) == ("Hector", 20)


def test_a_bin_that_is_given_its_name_is_opened() -> None:
    [opened] = told("we'll call the new bin Hector, 20 L")
    assert isinstance(opened, Open)
    assert (opened.bin, opened.capacity_l) == ("Hector", 20)


@pytest.mark.parametrize(
    "text",
    ["Hector it is", "Friday it is. 20 litres", "Ruth it is, 20 litres", "Rioja it is. 1.5 litres"],
)
def test_what_else_is_agreed_opens_none(text: str) -> None:
    assert not any(isinstance(meant(act), Open) for act in told(text))
