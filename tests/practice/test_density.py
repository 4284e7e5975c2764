"""Densities against EPA's and USDA's published weights."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice import density
from handlers.practice.kinds import KINDS, Kind
from handlers.practice.units import KILOGRAMS, LITRES


@pytest.mark.parametrize(
    ("kind", "value", "source"),
    [
        # US EPA ORCR, Volume-to-Weight Conversion Factors, 2016.
        ("mixed", 3.8 * KILOGRAMS["pound"] / LITRES["us_gallon"], "food waste, university"),
        ("oil", 7.5 * KILOGRAMS["pound"] / LITRES["us_gallon"], "fats, oils, grease"),
        ("garden", 250 * KILOGRAMS["pound"] / LITRES["cubic_yard"], "yard trimmings"),
        # USDA SR28, weight of one US cup.
        ("pulse", 0.177 / LITRES["us_cup"], "kidney beans, boiled"),
        ("meat", 0.140 / LITRES["us_cup"], "chicken breast, roasted, diced"),
        ("fish", 0.136 / LITRES["us_cup"], "salmon, pieces"),
        ("egg", 0.136 / LITRES["us_cup"], "egg, hard-boiled, chopped"),
        ("dairy", 0.132 / LITRES["us_cup"], "cheddar, diced"),
        ("liquid", 0.237 / LITRES["us_cup"], "brewed coffee"),
    ],
)
def test_loose_density_is_the_published_weight(kind: Kind, value: float, source: str) -> None:
    assert density.LOOSE[kind].value == pytest.approx(value, rel=0.01), source


@pytest.mark.parametrize(
    ("kind", "grams_per_cup"),
    [
        # USDA SR28: lettuce chopped, cabbage, carrot, potato, onion, tomato.
        ("vegetable", (57, 89, 128, 150, 160, 180)),
        # Apple, banana, watermelon, orange with peel.
        ("fruit", (109, 150, 152, 170)),
        # Bread cubes, pasta, spaghetti packed, rice.
        ("grain", (35, 107, 151, 186)),
    ],
)
def test_a_wide_kind_covers_its_foods(kind: Kind, grams_per_cup: tuple[float, ...]) -> None:
    figure = density.LOOSE[kind]
    assert figure.low is not None
    assert figure.high is not None
    for grams in grams_per_cup:
        assert figure.low - 0.01 <= grams / 1000 / LITRES["us_cup"] <= figure.high + 0.01


def test_the_restaurant_figure_is_the_low_end_of_mixed_scraps() -> None:
    # US EPA ORCR 2016: 396 lb/yd³, half of the university figure.
    low = 396 * KILOGRAMS["pound"] / LITRES["cubic_yard"]
    assert density.LOOSE["mixed"].low == pytest.approx(low, abs=0.0005)


@pytest.mark.parametrize(
    ("grams", "millilitres", "tablespoons"),
    # USDA SR28 20077: wheat bran 58 g to the US cup; 40 g are 0.690 cup or 11.03 US tablespoons.
    [(40, 163.2, 11.03), (80, 326.3, 22.07), (58, 236.588, 16)],
)
def test_bran_by_weight_and_by_spoon(grams: float, millilitres: float, tablespoons: float) -> None:
    assert density.bran_ml(grams) == pytest.approx(millilitres, rel=1e-3)
    assert density.bran_ml(grams) / LITRES["us_tablespoon"] / 1000 == pytest.approx(
        tablespoons, rel=1e-3
    )


def test_a_full_pail_weighs_what_a_community_garden_weighed() -> None:
    # A Long Island community project: 24 full pails of 5 US gal, 720 lb in all.
    pail = 5 * LITRES["us_gallon"]
    weighed = 720 / 24 * KILOGRAMS["pound"]
    assert pail * density.pressed_kg_l(None) == pytest.approx(weighed, rel=0.05)


@given(st.sampled_from(KINDS), st.floats(min_value=0.01, max_value=50))
def test_a_volume_and_its_mass_are_one_amount(kind: Kind, volume_l: float) -> None:
    mass = density.mass_kg(volume_l, {kind: 1.0})
    assert density.loose_volume_l(mass, {kind: 1.0}) == pytest.approx(volume_l)


@given(st.sampled_from(KINDS))
def test_pressing_makes_scraps_denser_but_no_denser_than_water(kind: Kind) -> None:
    assert density.loose_kg_l({kind: 1}) <= density.pressed_kg_l({kind: 1}) <= 1.05


@given(st.sampled_from(KINDS), st.sampled_from(KINDS), st.floats(min_value=0.01, max_value=0.99))
def test_a_blend_lies_between_its_kinds(one: Kind, other: Kind, share: float) -> None:
    if one == other:
        return
    ends = sorted(density.LOOSE[kind].value for kind in (one, other))
    blended = density.loose_kg_l({one: share, other: 1 - share})
    assert ends[0] - 1e-9 <= blended <= ends[1] + 1e-9


def test_scraps_of_no_stated_kind_are_mixed() -> None:
    assert density.shares(None) == density.shares({}) == density.shares({"meat": 0}) == {"mixed": 1}
    assert density.shares({"meat": 2, "mixed": 2}) == {"meat": 0.5, "mixed": 0.5}


def test_a_bin_holds_what_its_scraps_take_up() -> None:
    assert density.in_bin_l(density.capacity_kg(20)) == pytest.approx(20)
