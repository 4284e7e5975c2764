"""Amounts that went into no bin, and layers told in near words."""

import pytest

from handlers.reading.acts import Layer
from handlers.reading.doubts.notscraps import is_no_scraps
from handlers.reading.message import read_message
from tests.reading.context import acts, group

_BINS = ("shed", "kitchen", "bin 3", "gen house", "plot 22")


def _kinds(text: str) -> list[str]:
    return sorted(act.act for act in acts(text, bins=_BINS))


@pytest.mark.parametrize(
    "text",
    [
        "weighed in at 82 kg this morning, blame the shed bacon",
        "lost 3 kg since i joined the allotment",
        "the recipe wants 500 g flour and 2 eggs, goes in the kitchen oven for an hour",
        "made 2 kg of marmalade in the kitchen today",
        "roasted 3 kg of potatoes for the gen house lunch",
        "spilled 2 litres of milk all over the kitchen floor",
        "dropped a kilo of rice on the kitchen floor, still finding it",
        "landed a 5 lb trout this morning",
        "picked 6 kg of plums at plot 22",
        "hypothetically if i put 2 kg of meat in the shed",
        "had every intention of putting 2 kg into the shed, then the rain came",
        "consigned that theory to the bin of history",
        "carried 10 kg of spuds over to mum's",
        "took 5 kg of apples to the food bank",
        "baked 1 kg of bread in the gen house oven",
        "dug up 8 kg of potatoes from plot 22",
        "batch cooked 4 litres of soup, frozen in the kitchen freezer",
        "bought 20 kg of onions for the gen house dinner",
        "the baby is 4.2 kg now",
        "my backpack weighs 12 kg with the tins in",
        "knocked a 2 kg bag of flour over in the kitchen",
        "we got through 5 kg of sausages at the gen house barbecue",
        "harvested 3 kg tomatoes from the shed window boxes",
        "add 300 g sugar to the kitchen scales then stir in the butter",
        "the dog put on 2 kg over christmas",
        "deadlifted 100 kg in the shed",
        "in theory 2 kg would have gone in the shed by now",
        "nearly put 2 kg of bread in the shed but it was locked",
        "was going to add 1 kg of peel to bin 3 but never got round to it",
        "meant to chuck 2 kg of rice in bin 3",
        "supposed to have put 3 kg in the shed last week, did not",
        "the kids spilled 1 kg of lentils in the shed",
        "reeled in 3 kg of bass",
        "hauled in 12 kg of crab, sold the lot",
        "baked a 2 kg fruit cake for the gen house raffle",
        "put 2 kg of mince in the freezer",
        "topped up the oil in the car, 1 litre",
        "added 2 litres of water in the boiler",
        "added a kilo since Christmas",
        "threw out 2 kg of old flour",
        "threw away 3 kg of mouldy bread",
        "tossed 2 kg of bread out",
    ],
)
def test_what_went_into_no_bin_is_no_record(text: str) -> None:
    assert _kinds(text) == []


@pytest.mark.parametrize(
    "text",
    [
        "weighed in at 2.1 kg, the peel i put in the shed",
        "the bucket of peel weighed 3 kg, all into bin 3",
        "lost count but about 2 kg into the shed since monday",
        "4 kg of scraps heavier, the shed bin is",
        "bin 3 is 2 kg heavier after my rice",
        "my backpack had 3 kg of peel in, now in bin 3",
        "rucksack weighed 5 kg, all spud peel, emptied in the shed",
        "caught the bus with 2 kg of peel and put it in the shed",
        "guts off 3 kg of mackerel i caught, half a kilo, in bin 3",
        "shed bin, 1 kg of fish heads from this morning's catch",
        "catch of the day for bin 3: 2 kg of crab shells",
        "landed another kilo of bread in bin 3",
        "netted 2 kg of pond weed and put it in bin 3",
        "spilled half but 1 kg made it into the shed",
        "spilt 2 kg of rice, swept it up, shed bin",
        "dropped 1 kg of salad into the shed",
        "knocked over the fruit bowl so 800 g of bruised apples into bin 3",
        "meant to say, 2 kg into bin 3 yesterday",
        "meant to log this earlier: 2 kg peel, shed",
        "i meant to eat it but 500 g of yogurt went in bin 3",
        "supposed to be tom's turn but i put 2 kg in the shed",
        "was supposed to save it for soup, 1 kg bones, into bin 3",
        "nearly forgot: 1.5 kg to the shed",
        "almost 2 kg of peel to bin 3",
        "nearly 3 kg of potato skins in the shed",
        "nearly put it in the trash but 1 kg of bread went to bin 3",
        "with every good intention i bought kale and 700 g of it is now in bin 3",
        "in theory it is only 2 kg but the scales are old: shed, peel",
        "recipe needed only the whites so 300 g egg yolks to bin 3",
        "the recipe was a disaster, 2 kg of stew into the shed",
        "preheat disaster, 1 kg of burnt pizza in bin 3",
        "baked and burnt: 900 g bread into bin 3",
        "made jam, 1 kg of stones and skins into the shed",
        "marmalade day so 2 kg orange peel in bin 3",
        "soup for the food bank left 3 kg peel, bin 3",
        "the church lunch left us 4 kg of cooked rice, into bin 3",
        "work canteen sent 2 kg of coffee grounds, tipped in bin 3",
        "took 2 kg of peel to work by mistake, brought back, in bin 3 now",
        "brought mum's peel round: 3 kg in the shed",
        "3 kg from the market went into the shed",
        "dad's birthday cake, 700 g that nobody wanted, bin 3",
        "school sent 5 kg apple cores for bin 3",
        "a shameful 2 kg of salad into bin 3",
        "haul of windfalls from the gym car park, 4 kg, in bin 3",
        "the puppy was sick so 1 kg of his food into the shed bin",
        "foraged too much, 1 kg of nettles to bin 3",
        "hauled 6 kg of peel up to plot 22 and into bin 3",
        "cooked 2 kg of pasta nobody ate, into the shed bin",
        "spilled rice, 500 g swept up off the kitchen floor and into bin 3",
        "1 kg of fish guts from the catch into bin 3",
        "guts of 4 kg mackerel, call it 800 g, to the shed bin",
        "burnt the loaf, 700 g of it in bin 3",
        "made soup, 600 g of peelings went to the shed",
        "baking day: 300 g of egg shells and butter papers in bin 3",
        "roast leftovers 1 kg in the shed bin",
        "brought 2 kg of peel over and put it in bin 3",
        "plum stones from jam making, 900 g, shed bin",
        "carried 3 kg of scraps to plot 22 and tipped them in bin 3",
        "dropped the casserole, 2 kg, into bin 3 with it",
        "the cake sank so 800 g cake to bin 3",
        "after the barbecue 2 kg of sausages into the shed bin",
        "harvest trimmings 3 kg into bin 3",
        "put aside too long, 1 kg leftover curry into bin 3",
        "had intended the soup for lunch, but 1 kg went to bin 3",
        "i weighed it, 2 kg into the shed",
        "bin 3, 4.2 kg, carried it down myself",
        "recipe failed, 1 kg dough in the shed bin",
        "threw out the rest, 2 kg in",
        "threw in 2 kg of bread",
        "threw 2 kg of bread out into the bin",
    ],
)
def test_a_layer_in_near_words_stands(text: str) -> None:
    assert _kinds(text) == ["layer"]


@pytest.mark.parametrize(
    "text",
    [
        "two bikes, a 15 kg kettlebell and a chicken in the shed, whose are they",
        "the shed got a birthday, 12 kg of goat curry, what a smell",
        "the kitchen had 4 kg of prawns delivered",
        "kitchen got 20 litres of paint, magnolia",
        "she brought me two kilos of stale bread and I made croutons",
        "put the leftovers in the freezer, 1.2 kg",
        "supper: 12 lb of ham, all gone by one",
        "added 3 litres of screenwash",
        "we demolished 2 kg of prawns in the kitchen",
        "weighing my new nephew, 3.9 kg",
        "20 kg of sand by the shed",
    ],
)
def test_other_things_of_weight_and_meals_are_no_scraps(text: str) -> None:
    assert is_no_scraps(read_message(text, group(bins=_BINS)))
    assert _kinds(text) == []


@pytest.mark.parametrize(
    "text",
    [
        "weighed the pig's head before it went in: 4.5 kg, shed",
        "7 kg of barbecue leftovers, mostly chicken, in the shed",
        "2 kg of plums and I made jam; 600 g of stones and skins in the shed",
        "the shed got wedding leftovers, 12 kg of rice and curry",
        "the shed had a party of 3 kg of fish heads",
        "the kitchen ate 2 kg of rice",
        "kids ate 1 kg of melon and the rinds, 700 g, are in bin 3",
        "put half in the freezer and the rest, 1.2 kg, in the shed",
        "cleared out the freezer, 3 kg in bin 3",
        "kitchen had 4 kg of peel delivered to it by Tom",
        "we finished cleaning the fridge, 3 kg in the kitchen",
        "lunch: 2 kg of peel, lovely stuff, into the kitchen",
        "took 3 kg of leftovers from the party to the shed",
    ],
)
def test_scraps_beside_such_things_stand(text: str) -> None:
    assert _kinds(text) == ["layer"]


@pytest.mark.parametrize(
    "text",
    [
        "weighed the shed bin, 9 kg all in",
        "the shed bin weighs about 8 kg now",
        "Zuri: I weighed the shed, 13 kilos bucket and all",
        "stood the shed bin on the bathroom scales, 11 kg",
        "the shed is 12 kg on the scales",
        "the scales said 14 kg for bin 3",
        "bin 3 came to 9 kilos including the lid",
        "Tall Paul 14 kg on the bathroom scales",
        "the shed bin is 9 kg on our luggage scale now",
        "tipped bin 3 into the shed bin, 10 kg",
        "emptied Tall Paul into the shed bin",
        "poured bin 3 over into the shed bin",
    ],
)
def test_a_whole_bin_weighed_or_poured_over_is_no_new_layer(text: str) -> None:
    assert acts(text, in_room=True) == ()


@pytest.mark.parametrize(
    "text", ["tipped 2 kg of peel into the shed bin", "emptied the caddy into bin 3, 2 kg of peel"]
)
def test_scraps_poured_into_a_bin_are_one(text: str) -> None:
    [layer] = acts(text, in_room=True)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == 2


@pytest.mark.parametrize(
    ("text", "layers"),
    [
        ("took 2 kg of fish out of the shed bin", 0),
        ("fished a kilo of foil-wrapped bread out of bin 3", 0),
        ("took 2 kg of fish out of the freezer and put it in the shed bin", 1),
        ("2 kg of fish went into the shed bin, out of the freezer", 1),
    ],
)
def test_what_was_taken_out_of_a_bin_is_no_layer(text: str, layers: int) -> None:
    assert sum(isinstance(act, Layer) for act in acts(text, in_room=True)) == layers
