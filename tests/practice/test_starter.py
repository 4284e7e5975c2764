"""Batches of starter against the recipes that go round."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.figure import Refused
from handlers.practice.starter import batch, mend
from handlers.practice.units import KILOGRAMS, LITRES

CUP_ML = LITRES["us_cup"] * 1000


@pytest.mark.parametrize(
    ("goal", "litres"),
    # 20 kg of bran at 9.89 % (USDA SR28 20077), water alone: B (m - m0) / (1 - m). A hundredth of
    # it is culture and molasses, which bring a little less.
    [(0.30, 5.746), (0.35, 7.726), (0.40, 10.037)],
)
def test_water_that_brings_bran_to_its_moisture(goal: float, litres: float) -> None:
    found = batch(mass_kg=20, goal=goal)
    assert found.water_ml / 1000 == pytest.approx(litres, rel=0.012)
    assert found.moisture == pytest.approx(goal)


def test_one_to_one_to_a_hundred() -> None:
    found = batch(mass_kg=20)
    assert found.water_ml / found.culture_ml == pytest.approx(100)
    assert found.molasses_ml == found.culture_ml


@pytest.mark.parametrize(
    ("pounds", "cups", "millilitres"), [(10, 10, 24), (25, 25, 60), (50, 50, 120)]
)
def test_the_recipe_by_cups_as_it_is_printed(
    pounds: float, cups: float, millilitres: float
) -> None:
    # An educational site, 2024: 10 lb, 10 cups, 24 mL; 25 lb, 25 cups, 2 fl oz; 50 lb, 4 fl oz.
    found = batch(mass_kg=pounds * KILOGRAMS["pound"], recipe="cups")
    assert found.water_ml == pytest.approx(cups * CUP_ML)
    assert found.culture_ml == pytest.approx(millilitres, rel=0.02)


def test_the_recipe_by_cups_gets_wetter_than_it_says() -> None:
    # (0.4486 + 2.3659) / 6.902 = 0.408, where the page says about 30 %.
    assert batch(mass_kg=10 * KILOGRAMS["pound"], recipe="cups").moisture == pytest.approx(
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


@given(st.floats(0.1, 100), st.floats(1.01, 10))
def test_a_bigger_batch_is_the_same_recipe(mass: float, times: float) -> None:
    for recipe in ("moisture", "cups"):
        small = batch(mass_kg=mass, recipe="cups" if recipe == "cups" else "moisture")
        big = batch(mass_kg=mass * times, recipe="cups" if recipe == "cups" else "moisture")
        assert big.water_ml == pytest.approx(times * small.water_ml)
        assert big.moisture == pytest.approx(small.moisture)
