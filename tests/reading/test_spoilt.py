"""What is wrong with the food thrown in is no sign of the bin it went into."""

import pytest

from tests.reading.context import acts

_BINS = ("shed", "kitchen", "bin 3", "gen house", "plot 22")


def _kinds(text: str) -> list[str]:
    return sorted(act.act for act in acts(text, bins=_BINS))


@pytest.mark.parametrize(
    "text",
    [
        "2 kg of rice gone bad in the shed, all in",
        "the cheese had gone off so 400 g of it went into bin 3",
        "weevils in the flour, 3 kg of it now in bin 3",
        "fed bin 3 two kilos of rotten pears",
        "1 kg of fruit fly ridden bananas to the shed",
        "the milk was sour so 1 litre into bin 3",
        "moth eaten oats 900 g into bin 3",
        "a sack of wheat full of weevil, 4 kg into the gen house bin",
        "500g yogurt with green fuzz on, in the shed bin it went",
        "the freezer died so 3 kg of warm fish went into the shed bin",
        "4 lb of pasty gone rank, shed",
        "weevils moved into the oats. 1.2 kg out of the cupboard, into the shed",
        "the dal was walking with weevils so 2 kg went to gen house",
        "paneer gone slimy, 250 g, plot 22",
        "yams gone soft and weepy, 3 kg for bin 3",
        "pantry moths in the semolina!! 2 kg chucked in bin 3",
        "the coleslaw was fizzing, 700 g, bin 3",
        "fish don spoil, 1 kg, bin 3",
        "ants in the sugar, 900 g in bin 3",
        "rats had a go at the bread, 2 kg of what they left in bin 3",
        "the lettuce went to slime, 300 g in kitchen",
        "cream went sour on me, 300 ml, bin 3",
        "put in 1 kg of stinking kale, shed",
        "bin 3 - 1 kg strawberries (furry)",
        "grandma's biscuits from 1998, musty, 500 g to plot 22",
        "yoghurts past their date with blown lids, 1 kg, to bin 3",
        "cat food tins gone rank, 600g into bin 3",
        "crate of tomatoes collapsed into goo, 4 kg in the shed bin",
        "warm milk left in the car, 1 litre into bin 3",
        "potatoes sprouting like triffids and a bit green, 2 kg to bin 3",
        "500 g of prawns that had begun to hum, bin 3",
    ],
)
def test_food_that_had_spoilt_is_only_a_layer(text: str) -> None:
    assert _kinds(text) == ["layer"]


@pytest.mark.parametrize(
    "text",
    [
        "added 1 kg peelings to the shed, white mould under the lid",
        "2 kg of bread in bin 3. it smells of vinegar",
        "shed got 800 g of rice, lid had green fuzz on it",
        "put 1 kg mouldy bread in bin 3 and noticed maggots round the rim",
        "500 g veg into the shed, smells rotten when you open it",
        "1 kg peelings to bin 3, bit of white fluff on top of the old layer",
        "700g scraps in the kitchen bin, it has gone mouldy inside, white stuff",
        "fed the shed bin 2 kg leftovers, flies came out when i opened it",
        "added 600 g rice to bin 3, it has black mould on top",
        "1 kg of stew in the shed bin; whole thing stinks of ammonia",
        "400 g bread to bin 3, the surface is dry",
        "layer of 900 g in the shed, white mould all over the last one",
        "bin 3: 1.5 kg peel, smells sour and good",
        "2kg chicken bones in the shed. bin is bulging",
        "300 g coffee in bin 3, contents look slimy and green mould on the side",
        "3 lb salad into the shed, maggots in there",
        "1 kg bread into bin 3 and there was fuzz, white, on what was already there",
        "500 g cabbage in bin 3, smell is foul today",
        "put 2 kg in the shed, found white furry spots inside",
        "600 g pasta to kitchen bin. opened it and got a whiff of pear drops",
        "1 kg of rice in bin 3, weevils crawling up the sides already",
        "bin 3: 2 kg veg. bin smells rotten",
        "emptied 2 kg of curry in the shed. it has white fur now",
        "1.2 kg in bin 3, and there were maggots under the plate",
        "2 kg potatoes to the shed bin. whole bin reeks of vinegar",
        "put 500 g of cheese in bin 3 and saw the last lot had gone green",
        "800g in the shed bin, when i opened it there was black mould",
        "shed bin 1 kg peel, looks slimy and rotten in there",
        "gave bin 3 1 kg of bread, lots of white mould on the old stuff",
        "700 g leeks, shed bin. smell of ammonia",
    ],
)
def test_what_is_seen_in_the_bin_stands_beside_its_layer(text: str) -> None:
    assert _kinds(text) == ["layer", "observe"]
