"""Lots that have each its own day or its own doer, and amounts told by another amount."""

import pytest

from handlers.reading.acts import Amend, Batch, Drain, Layer, Seal, Stock
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "lots"),
    [
        ("six kilos of peelings yesterday and three today, all bin 3", [("16", 6), ("17", 3)]),
        ("Sat 1.1 kg, Sun 900 g, both in the shed bin", [("13", 1.1), ("14", 0.9)]),
        ("2 kg on Monday and 3 kg on Tuesday, bin 3", [("15", 2), ("16", 3)]),
        ("Sunday, Monday and Tuesday 2 kg each into bin 3", [("14", 2), ("15", 2), ("16", 2)]),
        ("500 g each on Sunday and Tuesday in bin 3", [("14", 0.5), ("16", 0.5)]),
        ("1 kg a day from Sunday to Tuesday in bin 3", [("14", 1), ("15", 1), ("16", 1)]),
        ("put 500 g in bin 3 on both Sunday and Tuesday", [("14", 0.5), ("16", 0.5)]),
        ("half a stone of peel went in bin 3 yesterday, that is 7 lb", [("16", 3.175)]),
        ("14 oz of skins in bin 3, so 400 g", [("17", 0.4)]),
        ("12 June 700 g, 13 June 1.2 kg, bin 3", [("12", 0.7), ("13", 1.2)]),
        ("added 2 kg of rice and 1 kg of beans to bin 3 yesterday", [("16", 3)]),
    ],
)
def test_lots_of_several_days(text: str, lots: list[tuple[str, float]]) -> None:
    found = [act for act in acts(text) if isinstance(act, Layer)]
    assert [(f"{act.on:%d}", round(act.mass_kg or 0, 3)) for act in found] == lots


@pytest.mark.parametrize(
    ("text", "lots"),
    [
        ("2 kg from me and 1 kg from Ruth, all into bin 3", [(None, 2), ("ruth", 1)]),
        ("shed bin: Ines 1.4 kg, Ruth 600 g", [("ines", 1.4), ("ruth", 0.6)]),
        ("Ruth and Ines put 2 kg each in bin 3", [("ruth", 2), ("ines", 2)]),
        ("Ruth put 2.2 kg in bin 3 on the 9th, on the 11th Ines put 1.8", [("ruth", 2.2),
                                                                           ("ines", 1.8)]),
        ("Ruth and I put 2 kg in bin 3", [(None, 2)]),
        ("Ruth and Ines each put a kilo of peel in bin 3", [("ruth", 1), ("ines", 1)]),
        ("bin 3, Ruth, 800 g", [("ruth", 0.8)]),
        ("log for the shed bin: Ruth, 1.2 kg", [("ruth", 1.2)]),
        ("Ruth asked me to log her 3 kg, bin 3", [("ruth", 3)]),
        ("Ruth's 2 kg of crusts went into bin 3", [("ruth", 2)]),
        ("ruths share was 1.5 kg, into bin 3", [("ruth", 1.5)]),
        ("it was Ruth who put 2 kg in bin 3", [("ruth", 2)]),
        ("Ruth passed me 2 kg of peelings, I put them in bin 3", [(None, 2)]),
    ],
)  # fmt: skip
def test_lots_of_several_people(text: str, lots: list[tuple[str | None, float]]) -> None:
    found = [act for act in acts(text) if isinstance(act, Layer)]
    assert [(act.member, round(act.mass_kg or 0, 3)) for act in found] == lots


@pytest.mark.parametrize(
    ("text", "lots"),
    [
        ("bin 3 got 4 kilos, the shed bin half that", [("bin 3", 4), ("shed", 2)]),
        ("put 500 g in bin 3, twice as much in the shed", [("bin 3", 0.5), ("shed", 1)]),
        ("2 kg of crusts into bin 3 and the same into the shed", [("bin 3", 2), ("shed", 2)]),
    ],
)
def test_an_amount_told_by_another(text: str, lots: list[tuple[str, float]]) -> None:
    found = [act for act in acts(text) if isinstance(act, Layer)]
    assert sorted((act.bin, round(act.mass_kg or 0, 3)) for act in found) == sorted(lots)


def test_as_much_drained_on_each_of_several_days() -> None:
    found = acts("drained bin 3 on Sunday, Monday and Tuesday, 200 ml each time")
    told = [(f"{act.on:%d}", act.volume_l) for act in found if isinstance(act, Drain)]
    assert told == [("14", 0.2), ("15", 0.2), ("16", 0.2)]


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("drained bin 3 twice this week, 200 ml each time", 0.4),
        ("tipped 1 kg of rice in the shed, then drained bin 3, it gave maybe 300 ml", 0.3),
    ],
)
def test_what_a_drain_gave(text: str, litres: float) -> None:
    assert [act.volume_l for act in acts(text) if isinstance(act, Drain)] == [litres]


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("bin 3. Crusts. 350.", 0.35),
        ("Bin 3: rendang mostly. 1.4", 1.4),
        ("bin 3 got rice mainly, 2.25", 2.25),
        ("about 700 of plantain skins went in bin 3", 0.7),
        ("2.2k of rhubarb into bin 3", 2.2),
        ("bin 3 just had my pound of oatmeal", 0.454),
        ("the last kilo of leeks went into bin 3", 1.0),
        ("put the cabbage in bin 3, four pound of em, and had a pint off it", 1.814),
        ("put 100 tea bags in bin 3", None),
        ("layer 2 of peelings went in bin 3", None),
    ],
)
def test_figures_and_units_alone(text: str, kg: float | None) -> None:
    masses = [act.mass_kg for act in acts(text) if isinstance(act, Layer)]
    assert masses == [kg if kg is None else pytest.approx(kg, abs=0.001)]


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("160 out of bin 3", 0.16),
        ("took a litre off bin 3, 900 ml", 0.9),
        ("bin 3 sealed, jug emptied, 410", 0.41),
        ("put 1.2 kg of leeks in the shed bin and drained bin 3, 300 off it", 0.3),
        ("put 2 kg of crumble in bin 3, and 400 ml of brown water out of it", 0.4),
        ("an eggcup's worth from bin 3", 0.05),
    ],
)
def test_figures_of_a_drain(text: str, litres: float) -> None:
    assert [act.volume_l for act in acts(text) if isinstance(act, Drain)] == [litres]


def test_drains_of_several_days() -> None:
    found = acts("took 200 ml from bin 3 on Sunday and another 150 today")
    told = [(f"{act.on:%d}", act.volume_l) for act in found if isinstance(act, Drain)]
    assert told == [("14", 0.2), ("17", 0.15)]


def test_one_day_for_every_report() -> None:
    found = acts("Ruth sealed bin 3, I sealed the shed, both yesterday")
    assert [f"{act.on:%d}" for act in found if isinstance(act, Seal)] == ["16", "16"]


def test_what_was_mixed_is_not_on_hand_besides() -> None:
    (batch,) = acts("got 10 lb of bran fermenting in the garage as of this morning")
    assert isinstance(batch, Batch)


def test_a_dribble_is_no_layer() -> None:
    (drain,) = acts("bin 3 had a wee dribble for me, 30 ml")
    assert isinstance(drain, Drain)


def test_a_unit_told_apart_is_that_of_every_figure() -> None:
    found = [a for a in acts("500 in bin 3. 300 in the shed. grams") if isinstance(a, Layer)]
    assert [(act.bin, act.mass_kg) for act in found] == [("bin 3", 0.5), ("shed", 0.3)]


def test_each_drain_has_the_figure_beside_it() -> None:
    found = [a for a in acts("drained bin 3, 250, drained the shed, 140") if isinstance(a, Drain)]
    assert [(act.bin, act.volume_l) for act in found] == [("bin 3", 0.25), ("shed", 0.14)]


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("we have made starter, Ruth stirred, I poured, 4 kg in total", 4.0),
        ("5 kilos of bran steeped and bagged in the hot press", 5.0),
    ],
)
def test_a_batch_measured_beside_its_verb(text: str, kg: float) -> None:
    assert [act.mass_kg for act in acts(text) if isinstance(act, Batch)] == [kg]


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("a jar of starter left, about a pound", 0.454),
        ("starter check: 1 jar, maybe 12 oz", 0.34),
    ],
)
def test_a_vessel_of_starter_weighed(text: str, kg: float) -> None:
    stocks = [act.mass_kg for act in acts(text) if isinstance(act, Stock)]
    assert stocks == [pytest.approx(kg, abs=0.001)]


@pytest.mark.parametrize(
    ("text", "lots"),
    [
        ("bin 3 1 kg, shed 600, big blue another kilo", [("bin 3", 1), ("shed", 0.6),
                                                         ("big blue", 1)]),
        ("bin 3, 2 kg, big blue, 1.5 kg", [("bin 3", 2), ("big blue", 1.5)]),
        ("2 kg in bin 3 and 3 in big blue", [("bin 3", 2), ("big blue", 3)]),
        ("two kilos in bin 3, one in the shed", [("bin 3", 2), ("shed", 1)]),
        ("a kilo into bin 3, ditto into the shed", [("bin 3", 1), ("shed", 1)]),
        ("big blue 600 shed 450 grams, all coffee", [("big blue", 0.6), ("shed", 0.45)]),
        ("put 1 kg in bin 3. wait no, 1 kg in the shed and half a kilo in bin 3",
         [("shed", 1), ("bin 3", 0.5)]),
        ("1 kg for bin 3, 400 for big blue, 600 for the shed", [("bin 3", 1), ("big blue", 0.4),
                                                               ("shed", 0.6)]),
        ("lemon halves are in bin 3 (1.1 kg) and the teabags, 300 g, are in big blue",
         [("bin 3", 1.1), ("big blue", 0.3)]),
        ("put 2 kg of rice in bin 3, we're down to 500 g of bran", [("bin 3", 2)]),
        ("started bin 9, 12 litres, and 700 g of leeks went in", [("bin 9", 0.7)]),
    ],
)  # fmt: skip
def test_lots_of_several_bins(text: str, lots: list[tuple[str, float]]) -> None:
    found = [act for act in acts(text) if isinstance(act, Layer)]
    assert [(act.bin, round(act.mass_kg or 0, 3)) for act in found] == lots


@pytest.mark.parametrize(
    ("text", "main"),
    [
        ("bin 3 600 g, shed bin 350 g, all of it sprouts", ["vegetable", "vegetable"]),
        ("three pounds in bin 3 and one pound in the shed, mostly spuds", ["vegetable"] * 2),
        ("2 lb of rice to bin 3 and then 6 oz of juice out of it", ["grain"]),
        ("bin 3 had a tin of sardines", ["fish"]),
        ("mostly greens but a fair bit of egg, 1 kg, bin 3", ["vegetable"]),
        ("3 parts veg to 1 part cheese, 800 g, bin 3", ["vegetable"]),
        (
            "a kilo of leeks and the bones from the chicken about 300 grams into bin 3",
            ["vegetable"],
        ),
        ("supper remains: haggis 2.8 kg, swede 1.9 kg, both in bin 3", ["meat"]),
        ("bin 3 ate all the rice from lunch, 2 kg", ["grain"]),
        ("what was left of the harvest loaf ended up in bin 3, 700 g", ["grain"]),
        ("5 lb of mango skins in bin 3 from the smoothie stand", ["fruit"]),
        ("were the mussel shells right? I put half a pound of them in bin 3", ["bone"]),
        ("600 g of cockles in bin 3, it is stinking of eggs", ["fish"]),
        ("3.1 kg in bin 3, 2.5 of it meat, the rest veg", ["meat"]),
        ("1.9 kg of pigeon-pecked cabbage in bin 3", ["vegetable"]),
        ("put half a loaf in bin 3", ["grain"]),
    ],
)
def test_what_the_lots_were(text: str, main: list[str]) -> None:
    found = [act.materials or {} for act in acts(text) if isinstance(act, Layer)]
    assert [max(made, key=lambda kind: made[kind]) for made in found] == main


def test_both_by_one() -> None:
    found = acts("700 g of veg in bin 3, 200 g of egg shells in the shed, both by Ruth")
    assert [act.member for act in found if isinstance(act, Layer)] == ["ruth", "ruth"]


@pytest.mark.parametrize(
    ("text", "amended", "layer"),
    [
        ("sorry 2.5 kg not 25 kg. And bin 3 had 300 g of coffee too", 2.5, 0.3),
        ("that should be 4 lb, not 5, and today another 2 lb of crusts in bin 3", 1.814, 0.907),
        ("2 lb of banana peel in bin 3. also that last one was 1 lb not 10", 0.454, 0.907),
    ],
)
def test_a_correction_beside_a_report(text: str, amended: float, layer: float) -> None:
    found = acts(text)
    assert [a.mass_kg for a in found if isinstance(a, Amend)] == [pytest.approx(amended, abs=1e-3)]
    assert [a.mass_kg for a in found if isinstance(a, Layer)] == [pytest.approx(layer, abs=1e-3)]


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("4 bags of starter left, 500 g a bag", 2.0),
        ("got 6 bags of bran from the mill. 1 kg each", 6.0),
        ("starter count: 2 bags x 1 kg", 2.0),
        ("bran is down to 750 g", 0.75),
        ("2.5 kg of bran. Used 300 g of it, so 2.2 left", 2.2),
        ("got 500 g of bran in the tin and another kilo in the sack", 1.5),
        ("had given 2 kg of bran to Ines, 1 kg is with me", 1.0),
    ],
)
def test_packs_of_starter(text: str, kg: float) -> None:
    assert [act.mass_kg for act in acts(text) if isinstance(act, Stock)] == [kg]


def test_a_second_lot_in_the_same_words_is_of_the_same_things() -> None:
    first, second = acts("Ruth put 2 kg of plums in bin 3 and I put 3 kg in the shed")
    assert isinstance(first, Layer)
    assert isinstance(second, Layer)
    assert first.materials == second.materials == {"fruit": 1.0}


def test_who_put_in_what_stands_behind_the_name_alone() -> None:
    text = "Ruth put in 1 kg of rice yesterday, and Ines 2 kg of bones this morning"
    told = [(act.member, act.mass_kg) for act in acts(text) if isinstance(act, Layer)]
    assert told == [("ruth", 1), ("ines", 2)]


def test_what_goes_in_there_is_in_the_bin_just_opened() -> None:
    text = (
        "bin 3 is full so I sealed it and opened a new one called Oak, 20 L, and put 2 kg in there"
    )
    assert [(act.act, getattr(act, "bin", None)) for act in acts(text)] == [
        ("seal", "bin 3"),
        ("open", "Oak"),
        ("layer", "Oak"),
    ]
