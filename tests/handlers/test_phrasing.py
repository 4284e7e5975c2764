"""Amounts and days as people say them."""

from datetime import date

import pytest

from handlers import phrasing
from handlers.planning.planting import well_covered
from handlers.practice.units import KILOGRAMS, LITRES
from handlers.recording.layers import unmeasured
from storage.rows import Units

TODAY = date(2026, 3, 4)  # a Wednesday, ISO 8601 2026-W10-3


@pytest.mark.parametrize(
    ("kg", "units", "said"),
    [
        (0.8, "metric", "800 g"),
        (2.0, "metric", "2 kg"),
        (1.25, "metric", "1.25 kg"),
        (0.013, "metric", "13 g"),
        (0.0129, "us", "13 g"),
        (KILOGRAMS["pound"], "us", "1 lb"),
        (2.5 * KILOGRAMS["pound"], "us", "2 lb 8 oz"),
        (5 * KILOGRAMS["ounce"], "imperial", "5 oz"),
    ],
)
def test_a_mass(kg: float, units: Units, said: str) -> None:
    assert phrasing.mass(kg, units) == said


@pytest.mark.parametrize(("count", "said"), [(0, "0 days"), (1, "1 day"), (9, "9 days")])
def test_whole_days(count: int, said: str) -> None:
    assert phrasing.whole_days(count) == said


@pytest.mark.parametrize(
    ("litres", "units", "said"),
    [
        (0.25, "metric", "250 mL"),
        (9.0, "metric", "9 L"),
        (LITRES["us_gallon"] * 2.5, "us", "2½ gallons"),
        (LITRES["us_gallon"], "us", "1 gallon"),
        (16.53, "us", "4⅜ gallons"),  # 30 lb in the ground, and twice that of soil
        (33.07, "us", "8¾ gallons"),
        (LITRES["us_gallon"] * 12.4, "us", "12½ gallons"),
        (LITRES["us_cup"] * 1.5, "us", "1½ cups"),
        (LITRES["us_fluid_ounce"] * 4, "us", "4 fl oz"),
        (0.01, "imperial", "10 mL"),
        (LITRES["imperial_pint"], "imperial", "1 pint"),
        (LITRES["imperial_gallon"] * 2, "imperial", "2 gallons"),
    ],
)
def test_a_volume(litres: float, units: Units, said: str) -> None:
    assert phrasing.volume(litres, units) == said


@pytest.mark.parametrize(
    ("day", "said"),
    [
        (TODAY, "today"),
        (date(2026, 3, 5), "tomorrow"),
        (date(2026, 3, 3), "yesterday"),
        (date(2026, 3, 13), "Friday 13 March"),
        (date(2027, 3, 13), "Saturday 13 March 2027"),
    ],
)
def test_a_day(day: date, said: str) -> None:
    assert phrasing.day(day, TODAY) == said


@pytest.mark.parametrize(
    ("start", "end", "said"),
    [
        (date(2026, 3, 13), date(2026, 3, 17), "Friday 13 to Tuesday 17 March"),
        (date(2026, 3, 30), date(2026, 4, 3), "Monday 30 March to Friday 3 April"),
        (date(2026, 3, 4), date(2026, 3, 5), "today or tomorrow"),
        (date(2026, 3, 9), date(2026, 3, 9), "Monday 9 March"),
    ],
)
def test_a_stretch_of_days(start: date, end: date, said: str) -> None:
    assert phrasing.span(start, end, TODAY) == said


@pytest.mark.parametrize(
    ("tablespoons", "said"),
    [
        (0.3, "¼ tablespoon (about 3 g)"),
        (1.0, "1 tablespoon (about 3 g)"),
        (3.4, "3½ tablespoons (about 3 g)"),
        (14.2, "14 tablespoons (about 3 g)"),
        # Of 15 mL; a metric cup holds 250 mL.
        (22.0, "1¼ cups (about 3 g)"),
    ],
)
def test_starter_is_measured_with_a_spoon(tablespoons: float, said: str) -> None:
    assert phrasing.starter(tablespoons, 3.0, "metric") == said


@pytest.mark.parametrize(
    ("bin", "said"),
    [
        ("shed", "the shed bin"),
        ("big blue", "the big blue bin"),
        ("bin 3", "bin 3"),
        ("green bucket", "the green bucket"),
        ("Rosemary", "Rosemary"),
        ("wee bin", "the wee bin"),
        ("bucket C", "bucket C"),
        ("tub A", "tub A"),
    ],
)
def test_a_bin_in_a_sentence(bin: str, said: str) -> None:
    assert phrasing.the(bin) == said


@pytest.mark.parametrize(("who", "said"), [("bram", "Bram keeps"), ("you", "You keep")])
def test_the_person_at_the_prompt_is_called_you(who: str, said: str) -> None:
    assert phrasing.does(who, "keep") == said


@pytest.mark.parametrize(
    ("units", "deep"),
    [("metric", "5 to 7.5 cm deep"), ("us", "2 to 3 in deep"), ("imperial", "2 to 3 in deep")],
)
def test_the_usual_dose_is_told_in_the_groups_measures(units: Units, deep: str) -> None:
    assert f"2 to 3 tablespoons of starter on a layer {deep}" in unmeasured(units)


@pytest.mark.parametrize(("units", "deep"), [("metric", "20 cm"), ("us", "8 in")])
def test_what_did_not_ferment_is_well_covered(units: Units, deep: str) -> None:
    assert f"({deep} or more)" in well_covered(units)
