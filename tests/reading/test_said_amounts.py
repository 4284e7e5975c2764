"""The amount that was plainly said, beside a second number or a vessel, and who put it in."""

import pytest

from handlers.reading.acts import Act, Drain, Layer, Observe, Unsure
from tests.reading.context import WEDNESDAY, acts

BINS = ("shed", "green", "bin 3", "Mabel")


def read(text: str) -> tuple[Act, ...]:
    return acts(text, bins=BINS, in_room=True)


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("drained Mabel, one cup of 200 ml", 0.2),
        ("drained Mabel, half a cup of 300 ml", 0.15),
        ("barley in the shed, one cup of 180 ml", 0.18),
        ("turnip tops to bin 3, one bucket of 6 litres", 6),
        ("leaves in bin 3, one bag of 4 litres", 4),
        ("3 jars of 400 ml of soup in green", 1.2),
    ],
)
def test_a_vessel_with_its_size_holds_so_much(text: str, litres: float) -> None:
    [act] = read(text)
    assert isinstance(act, Drain | Layer)
    assert act.volume_l == pytest.approx(litres)


@pytest.mark.parametrize(
    ("text", "kg", "shares"),
    [
        (
            "200g ham, 300g bread, 1.5kg veg all in green",
            2,
            {"meat": 0.1, "grain": 0.15, "vegetable": 0.75},
        ),
        (
            "quarter of a kilo brie, rest veg, 1 kg all in, green",
            1,
            {"dairy": 0.25, "vegetable": 0.75},
        ),
        ("400 g fish, rest peels, 2 kg altogether in Mabel", 2, {"fish": 0.2, "vegetable": 0.8}),
        ("2 kg all in: 500 g brie, rest veg, green", 2, {"dairy": 0.25, "vegetable": 0.75}),
    ],
)
def test_amounts_of_each_kind_and_the_rest(text: str, kg: float, shares: dict[str, float]) -> None:
    [layer] = read(text)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == pytest.approx(kg)
    assert layer.materials == pytest.approx(shares)


@pytest.mark.parametrize(
    ("text", "kg", "litres"),
    [
        ("Ruth brought 2 kg of plums and I put them in green", 2, None),
        ("Ruth came round with 3 kg of bread, which I put in green", 3, None),
        ("Ruth left a box of pears, 4 kg. I tipped them into green", 4, None),
        ("Ruth turned up with a bucket of windfalls and we chucked the lot in the shed", None, 10),
        ("Ruth brought round a bucket of chard and I put it all into bin 3", None, 10),
        ("Ruth brought a bucket of chard and I put the lot into bin 3, about 4 litres", None, 4),
    ],
)
def test_what_another_brought_is_of_whoever_put_it_in(
    text: str, kg: float | None, litres: float | None
) -> None:
    [layer] = read(text)
    assert isinstance(layer, Layer)
    assert (layer.mass_kg, layer.volume_l, layer.member) == (kg, litres, None)


def test_what_another_brought_and_put_in_is_theirs() -> None:
    [layer] = read("Ruth brought 2 kg of plums and put them in green")
    assert isinstance(layer, Layer)
    assert layer.member == "ruth"


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("6 kg, most in the shed, rest in green", {"shed": 4.2, "green": 1.8}),
        ("6 kg mostly in the shed", {"shed": 6}),
    ],
)
def test_most_of_a_lot(text: str, parts: dict[str, float]) -> None:
    layers = [act for act in read(text) if isinstance(act, Layer)]
    assert {layer.bin: layer.mass_kg for layer in layers} == pytest.approx(parts)


def test_one_amount_drained_from_several_is_asked_about() -> None:
    [asked] = read("drained shed and green, 400 ml in total")
    assert isinstance(asked, Unsure)
    drained = [(d.bin, d.volume_l) for d in asked.guess if isinstance(d, Drain)]
    assert drained == [("shed", 0.2), ("green", 0.2)]


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("drained all of them, about 300 ml each", 0.3),
        ("drained the lot, a cup from each", 0.25),
    ],
)
def test_so_much_from_each(text: str, litres: float) -> None:
    assert read(text) == (Drain(volume_l=litres, on=WEDNESDAY.date(), each="all"),)


@pytest.mark.parametrize(
    "text",
    ["800 g of melon skins and 6 eggshells in green", "800 g melon skins, egg shells 6, green"],
)
def test_some_egg_shells_weigh_next_to_nothing(text: str) -> None:
    [layer] = read(text)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == pytest.approx(0.8)
    assert layer.materials == pytest.approx({"fruit": 0.96, "bone": 0.04})


@pytest.mark.parametrize(
    ("text", "litres"),
    [("drained bin 3, 450 mll", 0.45), ("drained the shed 4oo ml", 0.4)],
)
def test_a_slip_in_a_unit_or_a_nought_is_forgiven(text: str, litres: float) -> None:
    assert read(text) == (
        Drain(volume_l=litres, bin="bin 3" if "bin 3" in text else "shed", on=WEDNESDAY.date()),
    )


def test_a_unit_that_cannot_be_read_is_asked_about() -> None:
    [asked] = read("drained bin 3, 450 zz")
    assert isinstance(asked, Unsure)


@pytest.mark.parametrize(
    ("text", "sign"),
    [
        ("wite mould on bin 3", "white_mould"),
        ("greem mould in the shed", "green_mould"),
        ("blak mould on Mabel", "black_mould"),
        ("pale mould on Mabel", "other_mould"),
    ],
)
def test_a_slip_in_a_colour_is_forgiven(text: str, sign: str) -> None:
    [seen] = read(text)
    assert isinstance(seen, Observe)
    assert seen.signs == (sign,)


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("two pots of yoghurt in green", 0.9),
        ("half a pot of cream in Mabel", 0.225),
        ("3 small pots of yogurt in bin 3", 0.36),
        ("a pot of stew in green", 3),
        ("one small bowl of pasta in bin 3", 0.4),
        ("one bowl of pasta in bin 3", 0.75),
        ("two katoris of dal in the shed", 0.3),
    ],
)
def test_small_vessels_and_the_pots_that_things_are_sold_in(text: str, litres: float) -> None:
    [layer] = read(text)
    assert isinstance(layer, Layer)
    assert layer.volume_l == pytest.approx(litres)


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("a kilo and a bit of leaves in green", 1),
        ("kilo and a bit of leaves in green", 1),
        ("leaves in green, a kilo and a bit", 1.1),
    ],
)
def test_a_kilo_and_a_bit(text: str, kg: float) -> None:
    [layer] = read(text)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == pytest.approx(kg)


def test_the_other_day_is_asked_for() -> None:
    [asked] = read("1 kg in green the other day")
    assert isinstance(asked, Unsure)
    assert asked.some_day
    [layer] = read("1 kg in green. Saw Ruth the other day")
    assert isinstance(layer, Layer)
