from datetime import date

import pytest

from handlers.reading.acts import Layer, Unsure
from tests.reading.context import acts

TODAY, YESTERDAY = date(2026, 6, 17), date(2026, 6, 16)


def layers(text: str, **changes: object) -> list[Layer]:
    return [act for act in acts(text, **changes) if isinstance(act, Layer)]


@pytest.mark.parametrize(
    ("text", "kg", "name"),
    [
        ("added 2 kg scraps to the shed", 2, "shed"),
        ("2.2 kg in bin 3", 2.2, "bin 3"),
        ("big blue got 850 g of gristle", 0.85, "big blue"),
        ("fed the shed bin 3 kg", 3, "shed"),
        ("500 g haddock skins, shed", 0.5, "shed"),
        ("I weighed it and it was 2.4 kg, into the shed it went", 2.4, "shed"),
        ("shed: 1.5 kg", 1.5, "shed"),
        ("bot note down: 3 kg kitchen waste bin 3", 3, "bin 3"),
        ("carried 2 kg of peelings up to the shed", 2, "shed"),
        ("put 1.2 kg into bin 9", 1.2, "bin 9"),
        ("1.5 kg of coffee grounds from the shed social into bin 3", 1.5, "bin 3"),
        ("2 kg of bread from the shed into bin 3", 2, "bin 3"),
        ("5 kg of corn husks off the shed into bin 3", 5, "bin 3"),
        ("I emptied the fridge into the shed bin and would put it at 2 kg", 2, "shed"),
        ("scraped the plates into bin 3, I should put it at about 2.5 kg", 2.5, "bin 3"),
    ],
)
def test_scraps_that_went_into_a_bin(text: str, kg: float, name: str) -> None:
    (layer,) = layers(text)
    assert layer.mass_kg == pytest.approx(kg)
    assert (layer.bin, layer.on) == (name, TODAY)


def test_each_bin_and_each_day_is_a_layer_of_its_own() -> None:
    two = layers("2 kg in the shed and 1 kg in bin 3")
    assert [(a.mass_kg, a.bin) for a in two] == [(2, "shed"), (1, "bin 3")]
    days = layers("yesterday 1.2 kg into the shed, today another 800 g")
    assert [(a.mass_kg, a.on) for a in days] == [(1.2, YESTERDAY), (pytest.approx(0.8), TODAY)]


def test_amounts_of_one_layer_add_up_and_give_the_shares() -> None:
    (layer,) = layers("800 g veg plus 200 g bacon in the shed")
    assert layer.mass_kg == pytest.approx(1)
    assert layer.materials == pytest.approx({"vegetable": 0.8, "meat": 0.2})
    assert layer.rich == pytest.approx(0.2)


def test_the_bran_that_went_with_it_is_no_scrap() -> None:
    (layer,) = layers("3 kg scraps in the shed with 2 tbsp of bran")
    assert (layer.mass_kg, layer.volume_l) == (3, None)


def test_another_members_doing_names_the_member() -> None:
    assert layers("Ines put 2 kg in the shed")[0].member == "ines"
    assert layers("Kofi put 2 kg in the shed")[0].member is None
    assert layers("Ruth, I put 2 kg in the shed")[0].member is None


def test_no_kind_stated_is_mixed_and_says_nothing_of_richness() -> None:
    (layer,) = layers("2 kg in the shed")
    assert (layer.materials, layer.rich) == ({"mixed": 1.0}, None)


def test_same_again_is_a_layer_without_its_amount() -> None:
    (layer,) = layers("same again in the shed")
    assert (layer.bin, layer.mass_kg) == ("shed", None)


def test_a_huge_amount_is_read_as_said() -> None:
    assert layers("added 2000 kg to the shed")[0].mass_kg == 2000


@pytest.mark.parametrize(
    "text",
    ["added -3 kg to the shed", "added 0 kg to the shed", "I'll add 2 kg to the shed tomorrow",
     "I didn't put 2 kg in the shed", "if I add 2 kg to the shed it bursts",
     "should I put 2 kg in the shed?", "she says he put 2 kg in the shed", "added the recipe to "
                                                                           "the wiki",
     "put 2 kg on over Christmas", "2 kg of potatoes at the shed shop", "put the ladder in the "
                                                                        "shed",
     '"added 2 kg to the shed" is what I like to read', "left two bags of apples in the shed, "
                                                        "help yourselves",
     "moved 2 kg of bread from the shed into bin 3", "2 kg of scraps from the shed into bin 3",
     "2 kg of bread from the shed bin into bin 3", "2 kg of bread off the shed bin into bin 3",
     "I'd put it at the back of the shed",
     "bought 3 kg of spuds", "200 g flour, 2 eggs, bake for an hour"],
)  # fmt: skip
def test_what_is_no_layer(text: str) -> None:
    assert [act for act in acts(text) if isinstance(act, (Layer, Unsure))] == []


def test_a_group_without_bins_may_name_one_by_its_place() -> None:
    (layer,) = layers("added 2 kg scraps to the shed", bins=())
    assert layer.bin == "shed"


@pytest.mark.parametrize(
    ("text", "litres", "rich"),
    [
        ("Lamb curry that turned, 2 litres, bin 3. Daft of me, leaving it on the hob", 2, 0.5),
        ("beef stew gone off, 2 litres, bin 3. I blame whoever left it on the stove", 2, 0.5),
        ("Broth that went off, 4 litres, bin 3", 4, 0),
        ("milk that had gone sour, 1 litre, shed", 1, 0),
        ("soup gone off, 3 litres, shed", 3, 0),
    ],
)
def test_liquid_food_that_turned_is_put_in_with_its_litres(
    text: str, litres: float, rich: float
) -> None:
    (layer,) = acts(text)
    assert isinstance(layer, Layer)
    assert layer.volume_l == pytest.approx(litres)
    assert layer.rich == pytest.approx(rich, abs=0.2)


@pytest.mark.parametrize(
    "text",
    [
        "the liquid that came off was 3 litres, shed",
        "2 litres drawn off, shed",
        "drained the shed, 1 litre, it had turned brown",
    ],
)
def test_what_came_off_is_no_food_that_went_off(text: str) -> None:
    assert [act.act for act in acts(text)][:1] == ["drain"]


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("Put a kilo of pancakes gone cold and a spoon of jam in bin 3", 1),
        ("Put 2 kg of spinach gone slimy and half a quiche in the shed", 2),
        ("chucked 3 kg of bread that had gone stale and some ham into bin 3", 3),
        ("Put 2 kg of bread which went mouldy and a few plums in the shed", 2),
        ("Put 500 g of rice gone hard and a lump of cheese in bin 3", 0.5),
    ],
)
def test_what_has_gone_cold_or_stale_is_one_layer_with_the_rest(text: str, kg: float) -> None:
    (layer,) = acts(text)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == pytest.approx(kg)
    assert layer.materials is not None
    assert len(layer.materials) > 1


@pytest.mark.parametrize(
    "text",
    [
        "the milk has turned again, annoying",
        "milk that turned is fine for pancakes",
        "the bread that went mouldy in the shed is growing fur",
    ],
)
def test_food_that_turned_is_put_nowhere_by_that(text: str) -> None:
    assert layers(text) == []


@pytest.mark.parametrize(
    ("text", "rich"),
    [
        (
            "tonight's leftovers five sausages and a load of beans maybe 400 grams gone in bin 3",
            0.5,
        ),
        ("two burgers and a heap of chips about 400 g gone in bin 3", 0.5),
        ("3 chops and some carrots maybe 400 grams went in bin 3", 0.6),
        ("four sausages and 400 g of peas gone into bin 3", 0.5),
        ("five carrots and a load of peas maybe 400 grams gone in bin 3", 0),
    ],
)
def test_counted_food_before_the_rest_is_of_the_layer(text: str, rich: float) -> None:
    (layer,) = layers(text)
    assert (layer.mass_kg, layer.bin) == (0.4, "bin 3")
    assert layer.rich == pytest.approx(rich, abs=0.2)
