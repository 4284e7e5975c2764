"""Batches of starter against the recipes that go round."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.figure import Refused
from handlers.practice.recipes import RECIPE_NAMES, RECIPES, Recipe
from handlers.practice.starter import batch, mend
from handlers.practice.units import KILOGRAMS, LITRES

CUP_ML = LITRES["us_cup"] * 1000
SPOON_ML = LITRES["us_tablespoon"] * 1000
recipes = st.sampled_from(RECIPES)


def test_a_tablespoon_to_ten_cups_is_what_it_says() -> None:
    # NIST HB 44: a tablespoon is a 160th of ten cups; USDA SR28 20077: ten cups weigh 580 g.
    found = batch(volume_l=10 * CUP_ML / 1000, recipe="tablespoon")
    assert found.molasses_ml == pytest.approx(SPOON_ML)
    assert found.molasses_tablespoons == pytest.approx(1)
    assert found.bran_cups == pytest.approx(10)
    assert found.molasses_g == pytest.approx(337 / 16)
    assert found.bran_kg == pytest.approx(0.580)
    # USDA SR28 19304: a tablespoon weighs 20 to 21 g, so 1 to 28 or 29 by weight.
    assert 28 * 0.97 < 580 / (found.molasses_ml * 1.424) < 29


def test_ten_to_one_is_by_weight_and_about_three_times_as_much() -> None:
    # USDA SR28 19304: 337 g of molasses to the US cup; 58 g to ten cups of bran are 2.9 spoons of
    # 20 g, or 2.75 by the weight of the cup.
    found = batch(mass_kg=0.580, recipe="ten-to-one")
    assert found.molasses_ml / CUP_ML * 337 == pytest.approx(58)
    assert found.molasses_tablespoons == pytest.approx(2.75, abs=0.01)


def test_each_batch_offers_the_other_recipe_by_its_name() -> None:
    found = batch(mass_kg=1, recipe="tablespoon")
    (other,) = found.others
    assert other.recipe == "ten-to-one"
    assert other.molasses_ml == batch(mass_kg=1, recipe="ten-to-one").molasses_ml
    assert RECIPE_NAMES["ten-to-one"] in "\n".join(found.lines)
    assert RECIPE_NAMES["tablespoon"] in found.lines[0]
    assert len(batch(mass_kg=1, recipe="ten-pounds").others) == 2


def test_molasses_lies_within_what_printed_recipes_take() -> None:
    # Eight recipes compared: 2 to 35 mL to the kilogram; ten to one is beyond them all.
    per_kg = {recipe: batch(mass_kg=1, recipe=recipe).molasses_ml for recipe in RECIPES}
    assert all(2 <= per_kg[r] <= 35 for r in RECIPES if r != "ten-to-one")
    assert per_kg["ten-to-one"] == pytest.approx(2 * 35, rel=0.02)


@pytest.mark.parametrize("recipe", RECIPES)
def test_mass_and_water_balance(recipe: Recipe) -> None:
    # USDA SR28: bran holds 9.89 % water, molasses 21.87 %, and weighs 337 g to the cup.
    found = batch(mass_kg=20, recipe=recipe)
    syrup = found.molasses_ml / CUP_ML * 0.337
    whole = 20 + found.water_ml / 1000 + found.culture_ml / 1000 + syrup
    water = 20 * 0.0989 + found.water_ml / 1000 + found.culture_ml / 1000 + syrup * 0.2187
    assert found.wet_kg == pytest.approx(whole, rel=1e-9)
    assert found.moisture == pytest.approx(water / whole, rel=1e-9)
    assert found.yield_kg + found.water_lost_kg == pytest.approx(whole, rel=1e-9)
    # Only water leaves: what is dry in it stays.
    assert found.yield_kg * 0.9 == pytest.approx(whole - water, rel=1e-9)


def test_days_of_a_batch_on_the_calendar() -> None:
    # Two weeks and three days counted on a calendar; a year after Footer 2013 ch. 4.
    found = batch(mass_kg=5, mixed=date(2028, 2, 20))
    assert found.ferment_until == date(2028, 3, 5)
    assert found.dry_by == date(2028, 3, 8)
    assert found.keeps_until == date(2029, 3, 8)
    assert "2028-03-05" in found.lines[-1]
    assert batch(mass_kg=5, mixed=date(2028, 2, 20), ferment_days=30).dry_by == date(2028, 3, 24)
    assert "ferment_until" not in batch(mass_kg=5).results()


def test_a_batch_that_turned_out_wet_is_mended() -> None:
    found = batch(mass_kg=5, found=0.5)
    assert found.add_bran_kg is not None
    solids = 5 * (1 - 0.0989) + found.molasses_ml / CUP_ML * 0.337 * (1 - 0.2187)
    wet = solids / 0.5
    assert (wet * 0.5 + found.add_bran_kg * 0.0989) / (wet + found.add_bran_kg) == pytest.approx(
        0.35
    )
    assert "Too wet" in "\n".join(found.lines)
    with pytest.raises(Refused, match="Moisture"):
        batch(mass_kg=5, found=1.0)


@pytest.mark.parametrize(
    ("goal", "litres"),
    # 20 kg of bran at 9.89 % (USDA SR28 20077), water alone: B (m - m0) / (1 - m). A hundredth of
    # it is culture and molasses, which bring a little less.
    [(0.30, 5.746), (0.35, 7.726), (0.40, 10.037)],
)
def test_water_that_brings_bran_to_its_moisture(goal: float, litres: float) -> None:
    found = batch(mass_kg=20, goal=goal, recipe="one-to-a-hundred")
    assert found.water_ml / 1000 == pytest.approx(litres, rel=0.012)
    assert found.moisture == pytest.approx(goal)


def test_one_to_one_to_a_hundred() -> None:
    found = batch(mass_kg=20, recipe="one-to-a-hundred")
    assert found.water_ml / found.culture_ml == pytest.approx(100)
    assert found.molasses_ml == found.culture_ml


@pytest.mark.parametrize(
    ("pounds", "cups", "millilitres"), [(10, 10, 24), (25, 25, 60), (50, 50, 120)]
)
def test_the_recipe_for_ten_pounds_as_it_is_printed(
    pounds: float, cups: float, millilitres: float
) -> None:
    # An educational site, 2024: 10 lb, 10 cups, 24 mL; 25 lb, 25 cups, 2 fl oz; 50 lb, 4 fl oz.
    found = batch(mass_kg=pounds * KILOGRAMS["pound"], recipe="ten-pounds")
    assert found.water_ml == pytest.approx(cups * CUP_ML)
    assert found.culture_ml == pytest.approx(millilitres, rel=0.02)


def test_the_recipe_for_ten_pounds_gets_wetter_than_it_says() -> None:
    # (0.4486 + 2.3659) / 6.902 = 0.408, where the page says about 30 %.
    assert batch(mass_kg=10 * KILOGRAMS["pound"], recipe="ten-pounds").moisture == pytest.approx(
        0.408, abs=0.002
    )


def test_drying_yields_what_is_left_of_the_water() -> None:
    # 10 kg at 35 % dried to 10 % are 7.222 kg.
    found = batch(mass_kg=20)
    assert found.yield_kg == pytest.approx(found.wet_kg * 0.7222, rel=1e-3)


def test_bran_by_volume() -> None:
    # USDA SR28 20077: 58 g to the US cup.
    found = batch(volume_l=80 * LITRES["us_cup"])
    assert found.bran_kg == pytest.approx(4.64)
    assert found.bran_l == pytest.approx(80 * LITRES["us_cup"])


@pytest.mark.parametrize(
    ("moisture", "water_ml", "bran_kg"),
    # 10 kg from 25 to 35 %: 10 x 0.10 / 0.65; from 50 %: 10 x 0.15 / (0.35 - 0.0989).
    [(0.25, 1538.5, 0), (0.50, 0, 5.974), (0.35, 0, 0), (0.38, 0, 0), (0.31, 0, 0)],
)
def test_a_batch_that_is_too_dry_or_too_wet(
    moisture: float, water_ml: float, bran_kg: float
) -> None:
    found = mend(10, moisture)
    assert found.add_water_ml == pytest.approx(water_ml, abs=0.1)
    assert found.add_bran_kg == pytest.approx(bran_kg, abs=0.001)


def test_nonsense_is_refused() -> None:
    for mass in (0.0, -1.0, 1e6):
        with pytest.raises(Refused):
            batch(mass_kg=mass)
    for goal in (0.05, 0.9):
        with pytest.raises(Refused, match="35 % is usual"):
            batch(mass_kg=5, goal=goal)
    with pytest.raises(Refused, match="one of the two"):
        batch()
    with pytest.raises(Refused, match="before any water"):
        batch(mass_kg=5, recipe="ten-to-one", goal=0.10)
    with pytest.raises(Refused, match="two weeks"):
        batch(mass_kg=5, ferment_days=1)
    with pytest.raises(Refused):
        mend(10, 1.5)


@given(st.floats(0.1, 100), st.floats(0.15, 0.6))
def test_mending_reaches_the_goal(mass: float, goal: float) -> None:
    dry = mend(mass, 0.12, goal=goal)
    if dry.add_water_ml:
        water = mass * 0.12 + dry.add_water_ml / 1000
        assert water / (mass + dry.add_water_ml / 1000) == pytest.approx(goal)
    wet = mend(mass, 0.8, goal=goal)
    water = mass * 0.8 + wet.add_bran_kg * 0.0989
    assert water / (mass + wet.add_bran_kg) == pytest.approx(goal)


@given(st.floats(0.1, 100), st.floats(1.01, 10), recipes)
def test_a_bigger_batch_is_the_same_recipe(mass: float, times: float, recipe: Recipe) -> None:
    small, big = (batch(mass_kg=kg, recipe=recipe) for kg in (mass, mass * times))
    assert big.water_ml == pytest.approx(times * small.water_ml)
    assert big.molasses_ml == pytest.approx(times * small.molasses_ml)
    assert big.moisture == pytest.approx(small.moisture)


@given(recipes, st.floats(0.25, 0.6))
def test_water_brings_any_recipe_to_its_goal(recipe: Recipe, goal: float) -> None:
    if recipe != "ten-pounds":
        assert batch(mass_kg=3, recipe=recipe, goal=goal).moisture == pytest.approx(goal, rel=1e-9)


def test_a_printed_recipe_is_drier_than_it_says() -> None:
    # A recipe that goes round: 20 kg of bran, 4 L of water, 40 mL each of culture and molasses "for
    # 30 to 40 %". With bran at 9.89 % water (USDA SR28 20077) it reaches 24.9 %.
    found = batch(mass_kg=20, recipe="one-to-a-hundred", water_l=4)
    assert (found.culture_ml, found.molasses_ml) == pytest.approx((40, 40))
    assert found.moisture == pytest.approx(0.249, abs=0.002)
    assert found.add_water_ml
    # 30 % take 5.746 L to 20 kg by the water alone; 1.75 L more than the recipe has.
    to_thirty = batch(mass_kg=20, recipe="one-to-a-hundred", goal=0.3)
    assert to_thirty.water_ml / 1000 == pytest.approx(5.746, rel=0.02)


def test_a_batch_is_told_in_the_measures_of_a_kitchen() -> None:
    # 580 g of bran are ten US cups (USDA SR28 20077).
    said = batch(mass_kg=0.580).lines[1]
    assert "10 cups of bran, 1 tablespoon of molasses, 1 tablespoon of culture" in said
