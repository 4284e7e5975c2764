"""Food that is kept, served, brewed in a room named like a bin, or that another mouth had."""

import pytest

from handlers.reading.acts import Layer
from handlers.reading.records import RECORD_KINDS
from tests.reading.context import acts

_BINS = ("shed", "back hall", "number 7", "Hettie")


@pytest.mark.parametrize(
    "text",
    [
        "3 kg of carrots in the shed in sand, the good ones",
        "two hams hung in the shed, 5 kg each",
        "4 kg of pears laid out in the back hall to ripen",
        "2 kg of beetroot for the winter in the shed",
        "shepherd's pie in the back hall, about 2 kg, help yourselves",
        "5 kg of beetroot in the shed if you want some",
        "the salmon's in the back hall on ice, 3 kg",
        "Ines's stew is in the shed, 2 kg, dig in",
        "I left you 2 kg of figs in the back hall Ruth",
        "6 kg of onions strung up in the shed",
        "bread's in the back hall, 2 kg, first come first served",
        "3 kg of plums in the shed, bring your own bag",
        "goose in the shed fridge, 4 kg",
        "8 kg of rice in the back hall for the wedding",
        "2 kg of leeks in the shed for whoever cooks",
        "left 3 kg of apples in the shed for Ines's crumble",
        "12 kg pasta and 4 kg beans in the shed for the food bank",
    ],
)
def test_food_that_waits_for_a_mouth_is_no_layer(text: str) -> None:
    assert not any(isinstance(act, Layer) for act in acts(text, bins=_BINS))


@pytest.mark.parametrize(
    "text",
    [
        "the carrots I kept in sand in the cellar rotted, 3 kg, into the shed bin",
        "2 kg of pears that never ripened went in number 7",
        "old ham that hung too long, 2 kg, to Hettie",
        "3 kg of lasagne from the back hall fridge, mouldy, now in the shed",
        "help-yourself beans had gone slimy, 4 kg in number 7",
        "2 kg of peel in the shed, and Ruth if you want her from Friday she's yours",
        "leftovers from the wedding, 5 kg, scraped into Hettie",
    ],
)
def test_food_past_its_time_is_a_layer(text: str) -> None:
    assert any(isinstance(act, Layer) for act in acts(text, bins=_BINS))


@pytest.mark.parametrize(
    "text",
    [
        "3 kg of stale rolls for the swans, not number 7",
        "2 kg of crusts to the ducks, none for Hettie",
        "the hens got 3 kg of peelings, not number 7",
        "Instead of number 7 the pigs had 4 kg of windfalls",
        "gave the goats 2 kg of tops, Hettie went hungry",
        "Kofi gave the old rolls to his geese, 900 g",
        "the dog finished the stew, a kilo of it",
        "Hettie's full, shed's full, so the 2 kg of rice went to the pigs",
    ],
)
def test_what_another_mouth_had_is_no_layer(text: str) -> None:
    assert not any(isinstance(act, Layer) for act in acts(text, bins=_BINS))


@pytest.mark.parametrize(
    "text",
    [
        "3 kg to Hettie, none for the ducks today",
        "the hens refused it so 2 kg of bran mash in number 7",
        "some went to the pigs and 2 kg of peel to Hettie",
        "the dog had half, number 7 got the rest, 1 kg",
        "meant to feed the ducks but 600 g of bread went to Hettie",
        "fed Hettie 2 kg of chicken skins, not the cat",
    ],
)
def test_what_a_bin_had_in_their_place_is_a_layer(text: str) -> None:
    assert any(isinstance(act, Layer) for act in acts(text, bins=_BINS))


def test_a_bin_that_is_named_like_an_animal() -> None:
    assert any(isinstance(act, Layer) for act in acts("2 kg of peel to the goose", bins=("Goose",)))


@pytest.mark.parametrize(
    "text",
    [
        "elderflower champagne fizzing in the shed, 6 litres",
        "cider in the demijohn in the back hall, 5 litres, airlock going",
        "comfrey steeping in the shed, 10 litres",
        "kimchi's in the crock in the shed, 3 kg of cabbage",
    ],
)
def test_what_is_brewed_beside_the_bins_is_no_record(text: str) -> None:
    assert RECORD_KINDS.isdisjoint(act.act for act in acts(text, bins=_BINS))


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("old kimchi from the crock, 2 kg, into number 7", "layer"),
        ("number 7 is bubbling and smells of cider", "observe"),
        ("2 kg of comfrey leaves in number 7", "layer"),
        ("drained 400 ml off Hettie, smells like wine, fizzy", "drain"),
    ],
)
def test_a_bin_that_smells_of_a_brew_is_observed(text: str, kind: str) -> None:
    assert kind in {act.act for act in acts(text, bins=_BINS)}
