"""Amounts that hang together over a message, and lots that are shared out among bins."""

from datetime import date

import pytest

from handlers.reading.acts import Drain, Layer, Seal, Unsure
from tests.reading.context import acts


def layers(text: str) -> list[tuple[str | None, float | None]]:
    """Bin and kg of each layer."""
    return [
        (act.bin, None if act.mass_kg is None else round(act.mass_kg, 3))
        for act in acts(text)
        if isinstance(act, Layer)
    ]


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("two kilograms and three hundred grams of peelings into bin 3", 2.3),
        ("bin 3, 2 kg in all. Leek tops, and about 300 g of that is the ham we left", 2.0),
        ("two jars of grounds and a bun hard as a stone, 500 g for bin 3", 0.5),
        ("a bagel hard as a stone, 100 g in bin 3", 0.1),
        ("a stone of spuds in bin 3", 6.35),
        ("yam skin from the cooking, I have put it inside bin 3, it is up to 700 gram", 0.7),
        ("egg shells from the 24 tray, all of them, 100 g, bin 3", 0.1),
        ("added 700 g of fish skin, 300 of peppers to bin 3", 1.0),
        ("chicken bones 600 g and the bread 200, bin 3", 0.8),
        ("bin 3 +1.1 rice, +0.2 chicken skin. kg", 1.3),
        ("bin 3: potato peel .8 kg", 0.8),
        ("felt like 5 kg of peelings but it weighed 3.2 kg, bin 3", 3.2),
        ("2 stone of peelings by the feel, actual weight 20 lb, bin 3", 9.072),
        ("2 kg of peelings in bin 3. The bin now weighs 14 kg on the scale", 2.0),
        ("peelings from the hall 2 kg and the curry nobody claimed 300 g, both in bin 3", 2.3),
        ("sprats half a kilo, also rice left from lunch another half kilo, bin 3", 1.0),
        ("burnt beans, 1.5 kilo, dropped same in bin 3", 1.5),
        ("3 bags of leaves, each bag 2 kg, bin 3", 6.0),
        ("2 kg in bin 3, peel with maybe 200 g of bacon in it", 2.0),
        ("1.1 of leek tops, 0.4 of bacon rind, kg like, bin 3", 1.5),
        ("2.3 kg of peelings with the bucket, bucket alone 400 g, into bin 3", 1.9),
        ("2 kg of peelings in bin 3, but took 300 g back out", 1.7),
        ("3 kg in bin 3, took 500 g out of it", 2.5),
        ("added 2 kg of peelings to bin 3 and fished 400 g of foil out again", 1.6),
        ("2.5 kg of peelings to bin 3, minus 300 g I picked out", 2.2),
        ("2 kg in bin 3. Had to remove 300 g of it, somebody put string in", 1.7),
        ("2 kg of peelings in bin 3, 200 g of them came back out", 1.8),
        ("took 3 kg of ribs out of the freezer, 2 kg of it into bin 3", 2.0),
        ("took 2 kg out of the freezer and put 1 kg in bin 3", 1.0),
        ("added three bags of 2 kg of peelings to bin 3", 6.0),
        ("added 2 kg to bin 3 (total 14 kg now)", 2.0),
        ("added 5 kg to bin 3: rice 3 kg, beans 2 kg", 5.0),
        ("weighed the caddy at 4.2 kg, it's 600 g empty, all into bin 3", 3.6),
        ("gross 5.4 kg less 0.9 for the tub, into bin 3", 4.5),
        ("2.6 kg minus 400 g tub = 2.2 kg into bin 3", 2.2),
        ("put 3 kg in bin 3 but 1 kg of that was rind", 3.0),
        ("1 kg ish, maybe 1.2, into bin 3", 1.1),
        ("two kilos of bones and one of rice into bin 3", 3.0),
        ("4.4 kg with the pail, pail weighs 1.2, so bin 3 got 3.2", 3.2),
        ("weighed in at 2.75 kg, tub included (tub is 250 g), bin 3", 2.5),
        ("two kg, sorry three kg of peel into bin 3", 3.0),
        ("3 kg of ribs on the table at noon, now 3 kg of ribs in bin 3", 3.0),
        ("3 kg of ribs, exactly 3 kg, into bin 3", 3.0),
        ("podded 4 kg of peas, and the pods, 1.5 kg, went in bin 3", 1.5),
        ("4 kg of crabs for the party! The shells, just over 900 g, are in bin 3", 0.9),
        ("we got through 3 of the 4 kg, eaten to the bone: the bones, 1 kg, are in bin 3", 1.0),
        ("4 kg of boiled crabs and the shells, 1 kg, in bin 3", 5.0),
        ("4 kg of crabs and the shells, 1 kg, both into bin 3", 5.0),
        ("4 kg of pears. Well, 3, the goat had some. All in bin 3", 3.0),
        ("4 kg of kale in bin 3. Well, 1 kg of leeks too", 5.0),
        ("stale cake, 900 g minus what the dog ate, so 400 only, in bin 3", 0.4),
        ("not 4 kg, as Ines thought, but 3 of kale in bin 3", 3.0),
        ("600 g of hulls and one melon that was in with the 600, bin 3", 0.6),
        ("bin 3: 3 kg of leeks (I bought way too many) + 500 g of rice", 3.5),
        ("leeks and kale in bin 3, together will be one and half kilo", 1.5),
        ("leeks and kale in bin 3, 600 g each", 1.2),
        ("old leeks in bin 3, 600 g each", 0.6),
        (
            "two kilos of mince off since the freezer failed last night, and a tray of butter the "
            "same weight, all in bin 3",
            4.0,
        ),
        ("200 g of kale to bin 3 and then 150 more at noon", 0.35),
        ("2 kg of kale in bin 3, two more to come", 2.0),
        ("3 kg of ribs and just 3 kg of rice into bin 3", 6.0),
        ("put 5 kilos in bin 3, well 4.8 to be exact, all bread", 4.8),
        ("weighed 3.3 kg before and 1.1 kg after emptying it, bin 3", 2.2),
        ("added the bones from 2 kg of wings to bin 3, 600 g", 0.6),
        ("put the rolls in bin 3, it'd be a kilo and a half easy", 1.5),
        ("5 kilos, maybe 6, of pears into bin 3", 5.5),
        ("bin 3: 1.1 + 0.6 kg of crusts", 1.7),
        ("roughly half spuds half mince, a kilo, into bin 3", 1.0),
        ("added 2 x 2 kg bags of peelings to bin 3", 4.0),
        ("scraped the lamb, two kilos, into bin 3 and the naan another one in the same bin", 3.0),
        ("two kilos of cabbage and one of corned beef into bin 3", 3.0),
        ("plantain skin 1.6 for bin 3, plus 300 g of orange peel", 1.9),
        ("carrot tops 3 kg, apple cores 2, into bin 3", 5.0),
        ("bread two kilos, bones one, into bin 3", 3.0),
        ("400 g of rice + 300 g of that stew = bin 3", 0.7),
        ("1 kg no 2 kg of rind into bin 3", 2.0),
        ("a bucket of rice into bin 3. I'd say 6 kg", 6.0),
        ("half a tub of husks went into bin 3, about 2 kg I reckon", 2.0),
        ("2 kg of bread into bin 3 or thereabouts. OK, call it 2.5 kg", 2.5),
        ("bread 2 kg, rice 2 kg I think, into bin 3", 4.0),
        ("I made a pie of 2 kg of apples. The peels, 300 g, are in bin 3", 0.3),
        ("350 of paneer and 220 spinach into bin 3", 0.57),
        ("1.4 papaya + 0.6 gourd, that's 2, bin 3", 2.0),
        ("soup went off. 2 kg of it tipped in bin 3", 2.0),
        ("wings and celery, half n half, 3 kg, all in bin 3", 3.0),
    ],
)
def test_one_layer_told_in_pieces(text: str, kg: float) -> None:
    assert layers(text) == [("bin 3", round(kg, 3))]


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("12 kg of sprouts: 8 kg of that to the shed, the other 4 to bin 3",
         [("shed", 8), ("bin 3", 4)]),
        ("seven kilos of rind, shared between the shed (five) and bin 3 (two)",
         [("shed", 5), ("bin 3", 2)]),
        ("the shed and bin 3 got 2 and 3 kg of peel", [("shed", 2), ("bin 3", 3)]),
        ("shed 1.5 kg. bin 3 nil. big blue 3", [("shed", 1.5), ("big blue", 3)]),
        ("6 kg of bread split: 4 shed, 2 bin 3", [("shed", 4), ("bin 3", 2)]),
        ("the bread, 4,5 kg, divided: 3 in bin 3, 1,5 in big blue",
         [("bin 3", 3), ("big blue", 1.5)]),
        ("2 kg in the shed and same in bin 3", [("shed", 2), ("bin 3", 2)]),
        ("coffee grounds 3.5 kg, 2 kg into bin 3 and the rest into big blue",
         [("bin 3", 2), ("big blue", 1.5)]),
        ("added 3 kg of peelings, half into bin 3, half into big blue",
         [("bin 3", 1.5), ("big blue", 1.5)]),
        ("added 3 kg of peelings, half into bin 3, half to the neighbour's dog", [("bin 3", 1.5)]),
        ("put 4 kg of peel, three quarters in the shed and the rest in bin 3",
         [("shed", 3), ("bin 3", 1)]),
        ("put 3 kg, one third in big blue and two thirds in the shed",
         [("big blue", 1), ("shed", 2)]),
        ("put 4 kg in the shed and bin 3, three quarters in the shed", [("shed", 3), ("bin 3", 1)]),
        ("put 8 kg of rice, 25% in bin 3 and 75% in the shed", [("bin 3", 2), ("shed", 6)]),
        ("put three quarters of 4 kg in bin 3 and the rest in the shed",
         [("bin 3", 3), ("shed", 1)]),
        ("4 kg of peel: 1/4 in bin 3, the rest in the shed", [("bin 3", 1), ("shed", 3)]),
        ("added half of 4 kg to the shed", [("shed", 2)]),
        ("half a kilo of husks into the shed", [("shed", 0.5)]),
        ("2 and a half kilos in the shed", [("shed", 2.5)]),
        ("added 4 kg, half rice, half peel, to the shed", [("shed", 4)]),
        ("put 4 kg in the shed, a quarter of it rice", [("shed", 4)]),
        ("split 6 kg of peel 2:1 between the shed and bin 3", [("shed", 4), ("bin 3", 2)]),
        ("split 5 kg 60/40 between bin 3 and big blue", [("bin 3", 3), ("big blue", 2)]),
        ("put 3 kg of peel in bin 3 and drained the shed 200 ml, half of it went to my sister",
         [("bin 3", 3)]),
        ("put 2 kg of bread in bin 3, then drained the shed, 400 ml, gave half to the neighbour",
         [("bin 3", 2)]),
        ("poured 200 ml off the shed and put 3 kg in bin 3, half of the tea went to the roses",
         [("bin 3", 3)]),
        ("sealed the shed and put 2 kg in bin 3, half of it rice", [("bin 3", 2)]),
        ("the shed and bin 3 got 3 kg, half and half", [("shed", 1.5), ("bin 3", 1.5)]),
        ("5 kg of bread rolls, all stale. 3 in the shed, 2 in bin 3 with Ines's blessing",
         [("shed", 3.0), ("bin 3", 2.0)]),
        ("the shed got four kilos of leeks from my aunt's and bin 3 got the rest, about one",
         [("shed", 4.0), ("bin 3", 1.0)]),
        ("500 g of stew in the shed on Monday and another 300 tonight",
         [("shed", 0.5), ("shed", 0.3)]),
    ],
)  # fmt: skip
def test_one_lot_shared_out(text: str, parts: list[tuple[str, float]]) -> None:
    assert layers(text) == parts


@pytest.mark.parametrize(
    ("text", "amounts"),
    [
        ("added 1 kg bread, 500 g cheese, 2 L salad to the shed bin", [(1.5, None), (None, 2)]),
        ("put 300 g of chicken and 3 litres of peelings in the shed", [(0.3, None), (None, 3)]),
        ("added 2 L of peelings, about 1.2 kg, to the shed bin", [(1.2, None)]),
        ("added a 10 L bucket of peel (3 kg) to the shed", [(3, None)]),
        ("added 2 kg of peel in a 5 L bucket to the shed", [(2, None)]),
        ("added 1 kg bread and 500 g cheese to the shed", [(1.5, None)]),
    ],
)
def test_what_was_weighed_and_what_was_poured(
    text: str, amounts: list[tuple[float | None, float | None]]
) -> None:
    layers = [act for act in acts(text, in_room=True) if isinstance(act, Layer)]
    assert [(layer.mass_kg, layer.volume_l) for layer in layers] == amounts
    assert {layer.bin for layer in layers} == {"shed"}


@pytest.mark.parametrize(
    ("text", "bins"),
    [
        ("1 kg of peel. Big blue is full so shed", ["layer shed"]),
        ("1 kg of peel, the shed was sealed already so into bin 3", ["layer bin 3"]),
        ("1 kg of peel, big blue's closed innit so it went in the shed", ["layer shed"]),
        ("sealed big blue so 1 kg of peel went in the shed", ["seal big blue", "layer shed"]),
        ("1 kg of peel, marys closed so it went in the shed", ["layer shed"]),
        (
            "2 kg of peel in big blue, it is full so I sealed it",
            ["seal big blue", "layer big blue"],
        ),
    ],
)
def test_the_bin_that_was_full_did_not_get_it(text: str, bins: list[str]) -> None:
    told = acts(text, bins=("shed", "bin 3", "big blue", "Mary"))
    assert [f"{act.act} {act.bin}" for act in told if isinstance(act, Layer | Seal)] == bins


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("Plums from the fete, all gone soft. 2 kg to the shed, 1.5 to bin 3", {"fruit"}),
        ("5 kg of rolls, all stale. 3 in the shed, 2 in bin 3", {"grain"}),
        ("Are the plums ripe? 2 kg to the shed, 1.5 to bin 3", {"mixed"}),
        ("7 kg of plums still on the tree. 2 kg to the shed, 1.5 kg to bin 3", {"mixed"}),
    ],
)
def test_what_is_named_first_is_in_every_bin(text: str, kinds: set[str]) -> None:
    told = [act for act in acts(text) if isinstance(act, Layer)]
    assert [set(layer.materials or ()) for layer in told] == [kinds, kinds]


def test_a_weight_and_a_volume_do_not_add_up() -> None:
    layers = [act for act in acts("dal 1 L + roti 400 g, bin 3") if isinstance(act, Layer)]
    assert [(act.mass_kg, act.volume_l) for act in layers] == [(0.4, None), (None, 1)]
    assert [dict(act.materials or {}) for act in layers] == [{"grain": 1}, {"pulse": 1}]


def test_each_lot_of_two_days_is_made_of_its_own_things() -> None:
    text = "lamb fat and rind, 1.2 kg, yesterday, plus 800 g of today's mango skins: both bin 3"
    layers = [act for act in acts(text) if isinstance(act, Layer)]
    assert [(act.mass_kg, act.rich, act.on) for act in layers] == [
        (1.2, 1, date(2026, 6, 16)),
        (0.8, 0, date(2026, 6, 17)),
    ]


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("a litre and a bit out of bin 3, prob 1.2", 1.2),
        ("drained bin 3, about half a litre, 450 ml to be exact", 0.45),
        ("a cup off bin 3, literally one cup", 0.25),
        ("drained bin 3, like two glasses, 300 ml tops", 0.3),
        ("drew 200 ml off bin 3 and then 150 more at noon", 0.35),
        ("2 kg of peelings in bin 3. A cup or two came out, say three", 0.75),
    ],
)
def test_a_guess_at_the_liquid_is_settled_at_last(text: str, litres: float) -> None:
    (drained,) = [act for act in acts(text) if isinstance(act, Drain)]
    assert drained.volume_l == pytest.approx(litres)


def test_each_part_is_made_of_what_was_measured_so() -> None:
    text = "added a bowl of peelings and 300 g chicken to the shed bin"
    weighed, poured = acts(text, in_room=True)
    assert isinstance(weighed, Layer)
    assert isinstance(poured, Layer)
    assert weighed.materials == {"meat": 1}
    assert poured.materials == {"vegetable": 1}
    assert weighed.mass_kg == 0.3
    assert poured.volume_l


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("1.4 kg into bin 3, 600 g of it crusts", 1.4),
        ("2.6 kg with the bowl, bowl is 400 g, into bin 3", 2.2),
        ("tipped 2.6 kg into bin 3 minus 400 g for the bowl", 2.2),
        ("400 g each of carrots, leeks and rice into bin 3", 1.2),
        ("4 loaves, 600 g each, into bin 3", 2.4),
        ("nearly 600 g, say 550, of rice into bin 3", 0.55),
        ("700 grams, well 720, of rice into bin 3", 0.72),
        ("into bin 3: bread 500, peel 250 g", 0.75),
        ("point six of a kilo of rice into bin 3", 0.6),
        ("0.3 of a kilo of rice into bin 3", 0.3),
        ("2 kg into bin 3, of which 500 g lamb fat", 2.0),
        ("1.2 kg into bin 3 (rice 500 g, rest peels)", 1.2),
        ("2 lb of peel and half a loaf into bin 3, 2.5 lb the lot", 1.134),
        ("20 pupils each brought 100 g of peel, into bin 3", 2.0),
        ("each of the 3 classes brought 2 kg of peel, into bin 3", 6.0),
        ("added 3 kg minus 500 g to bin 3", 2.5),
        ("3 kg of rice less 200 g into bin 3", 2.8),
        ("2 kg less 10% into bin 3", 1.8),
        ("added 3 times 2 kg of peel to bin 3", 6.0),
        ("2 kg to bin 3 twice", 4.0),
        ("added 2 kg of peel to bin 3 three times today", 6.0),
        ("added 2 kg to bin 3, I checked it twice", 2.0),
        ("added 2 kg not to the shed but to bin 3", 2.0),
        ("added 2 kg to bin 3, not the shed", 2.0),
        ("1 kg each of ham, leeks and pumpernickel into bin 3", 3.0),
        ("flat 4 - 500 g, flat 11 - 700 g, peel, into bin 3", 1.2),
        ("5 kilos then another three hundred, into bin 3", 5.3),
        ("bin 3 is up to 11 kilos now, added 1.6 this morning", 1.6),
        ("put 900 grams into bin 3, it was supposed to be 1 kg", 0.9),
        ("20 kilos fell and we got 6 of it into bin 3", 6.0),
        ("the goat ate 2 kilos, so only 1 kilo of cabbage into bin 3", 1.0),
        ("bin 3: scraps 1.1, bran 35 g", 1.1),
        ("old curd, 700 g with the jar, the jar has 200 g, so 500 g. Bin 3.", 0.5),
        ("bin 3: 1.3 kg with the pan, pan 500 g, net 800 g of rice", 0.8),
        ("weighed 950 g with the lid on, lid 50 g, so 900 g of crusts in bin 3", 0.9),
        ("400 g of crusts with the box (box 50 g) into bin 3", 0.35),
        ("2 kg of mince that cost me 9 pounds into bin 3", 2.0),
        ("another kilo of the same to bin 3", 1.0),
        ("fish heads, kilo, bin 3", 1.0),
        ("half of 4 kg of spoiled plums went in bin 3", 2.0),
        ("a third of 3 kg of rice into bin 3", 1.0),
        ("goat bones, kilo na nusu, bin 3", 1.5),
        ("1.6 kg less 300 for the dish, trifle, bin 3", 1.3),
        ("with the pot it was 2.5 kg, pot is 900 g, soup veg, bin 3", 1.6),
        ("2 kg of ham we never ate is in bin 3", 2.0),
    ],
)
def test_parts_tares_counts_and_second_thoughts(text: str, kg: float) -> None:
    assert layers(text) == [("bin 3", kg)]


@pytest.mark.parametrize(
    "text",
    ["added 2 kg to the shed or bin 3", "drained 300 ml from the shed or from bin 3",
     "sealed bin 3 or the shed"],
)  # fmt: skip
def test_one_of_two_bins_is_to_be_asked(text: str) -> None:
    [act] = acts(text, in_room=True)
    assert isinstance(act, Layer | Drain | Seal)
    assert (act.bin, act.each) == (None, "either")


@pytest.mark.parametrize(
    ("text", "halves"),
    [
        ("put 1 kg of bread in shed and big blue", [("shed", 0.5), ("big blue", 0.5)]),
        (
            "added 3 kg to the shed, big blue and bin 3",
            [("shed", 1), ("big blue", 1), ("bin 3", 1)],
        ),
    ],
)
def test_one_amount_for_several_bins_is_asked_about(
    text: str, halves: list[tuple[str, float]]
) -> None:
    [unsure] = acts(text, in_room=True)
    assert isinstance(unsure, Unsure)
    told = [(act.bin, act.mass_kg) for act in unsure.guess if isinstance(act, Layer)]
    assert told == halves


@pytest.mark.parametrize(
    ("text", "kind", "each"),
    [
        ("put 1 kg in each bin", "layer", "all"),
        ("put a kilo in each", "layer", "all"),
        ("added 2 kg to both", "layer", "both"),
        ("drained all three", "drain", "3"),
    ],
)
def test_a_deed_on_each_bin(text: str, kind: str, each: str) -> None:
    [act] = acts(text, in_room=True)
    assert (act.act, getattr(act, "each", None)) == (kind, each)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        (
            "beet tops 4 kg, melon skins 3 kg, 1 kg of bones. Tops and skins in the shed, bones in "
            "bin 3",
            [("shed", 7.0), ("bin 3", 1.0)],
        ),
        (
            "4 kg of spuds and 1 kg of trout: trout to bin 3, spuds to the shed",
            [("bin 3", 1.0), ("shed", 4.0)],
        ),
        (
            "4 kg spuds, 1 kg duck. the shed gets the spuds and bin 3 the bird",
            [("shed", 4.0), ("bin 3", 1.0)],
        ),
        ("4 kg of spuds in the shed. 1 kg of trout in bin 3.", [("shed", 4.0), ("bin 3", 1.0)]),
    ],
)
def test_things_weighed_first_and_placed_later(text: str, told: list[tuple[str, float]]) -> None:
    found = [(act.bin, round(act.mass_kg or 0, 6)) for act in acts(text) if isinstance(act, Layer)]
    assert found == told


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("I and Ruth added 3 kg to bin 3, me 2 him 1", [(None, 2), ("ruth", 1)]),
        ("Ruth and I added 3 kg to bin 3, she did 2 and I did 1", [("ruth", 2), (None, 1)]),
        ("Ruth and me put 3 kg in bin 3, me 2, Ruth 1", [(None, 2), ("ruth", 1)]),
        ("Ruth and I put 3 kg in bin 3, me and him", [(None, 3)]),
        ("Ruth and I put 3 kg in bin 3, she has 2 dogs", [(None, 3)]),
        ("Ruth and I put 3 kg in bin 3, me 2 her 2", [(None, 3)]),
    ],
)
def test_each_ones_part(text: str, parts: list[tuple[str | None, float]]) -> None:
    told = [act for act in acts(text, in_room=True) if isinstance(act, Layer)]
    assert [(layer.member, layer.mass_kg) for layer in told] == parts
