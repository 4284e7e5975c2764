"""Unit factors against NIST's and the UK Act's definitions, and against pint's."""

from collections.abc import Mapping
from itertools import chain

import pint
import pytest

from handlers.practice.units import (
    BARE,
    KILOGRAMS,
    LITRES,
    METRES,
    SQUARE_METRES,
    SYSTEMS,
    celsius,
)

# pint (default_en.txt) as the reference library; the spoons and cups that it has no name for
# are tested against their definitions below.
PINT_NAMES: Mapping[str, str] = {
    "litre": "liter",
    "hectolitre": "hectoliter",
    "decilitre": "deciliter",
    "centilitre": "centiliter",
    "millilitre": "milliliter",
    "cubic_metre": "meter**3",
    "cubic_centimetre": "centimeter**3",
    "cubic_inch": "inch**3",
    "cubic_foot": "foot**3",
    "cubic_yard": "yard**3",
    "us_gallon": "gallon",
    "us_quart": "quart",
    "us_pint": "pint",
    "us_gill": "gill",
    "us_cup": "cup",
    "us_fluid_ounce": "fluid_ounce",
    "us_tablespoon": "tablespoon",
    "us_teaspoon": "teaspoon",
    "us_bushel": "bushel",
    "imperial_bushel": "imperial_bushel",
    "imperial_gallon": "imperial_gallon",
    "imperial_quart": "imperial_quart",
    "imperial_pint": "imperial_pint",
    "imperial_gill": "imperial_gill",
    "imperial_cup": "imperial_cup",
    "imperial_fluid_ounce": "imperial_fluid_ounce",
    "kilogram": "kilogram",
    "gram": "gram",
    "milligram": "milligram",
    "tonne": "metric_ton",
    "pound": "pound",
    "ounce": "ounce",
    "stone": "stone",
    "us_ton": "short_ton",
    "imperial_ton": "long_ton",
    "us_hundredweight": "hundredweight",
    "imperial_hundredweight": "UK_hundredweight",
    "metre": "meter",
    "kilometre": "kilometer",
    "decimetre": "decimeter",
    "centimetre": "centimeter",
    "millimetre": "millimeter",
    "inch": "inch",
    "foot": "foot",
    "hectogram": "hectogram",
    "decagram": "decagram",
    "yard": "yard",
    "square_metre": "meter**2",
    "square_kilometre": "kilometer**2",
    "square_centimetre": "centimeter**2",
    "square_inch": "inch**2",
    "square_foot": "foot**2",
    "square_yard": "yard**2",
    "are": "are",
    "hectare": "hectare",
}
TABLES = (
    (LITRES, "liter"),
    (KILOGRAMS, "kilogram"),
    (METRES, "meter"),
    (SQUARE_METRES, "meter**2"),
)


@pytest.mark.parametrize("unit", PINT_NAMES)
def test_a_factor_is_pints_to_six_digits(unit: str, registry: pint.UnitRegistry[float]) -> None:
    table, ours = next((t, name) for t, name in TABLES if unit in t)
    reference = registry.Quantity(1.0, PINT_NAMES[unit]).to(ours).magnitude
    assert table[unit] == pytest.approx(reference, rel=1e-6)


@pytest.fixture(scope="module")
def registry() -> pint.UnitRegistry[float]:
    return pint.UnitRegistry()


DEFINITIONS = [
    # NIST Handbook 44, Appendix C.
    ("us_gallon", LITRES, 3.785411784),
    ("us_cup", LITRES, 0.2365882365),
    ("us_tablespoon", LITRES, 0.01478676478125),
    ("us_teaspoon", LITRES, 0.00492892159375),
    ("us_fluid_ounce", LITRES, 0.0295735295625),
    ("us_quart", LITRES, 0.946352946),
    # NIST SP 811, Appendix B.
    ("cubic_foot", LITRES, 28.316846592),
    ("pound", KILOGRAMS, 0.45359237),
    ("ounce", KILOGRAMS, 0.028349523125),
    ("us_ton", KILOGRAMS, 907.18474),
    # The Pfund of the German customs union was set at 500 g (1858); common practice since.
    ("metric_pound", KILOGRAMS, 0.5),
    ("square_foot", SQUARE_METRES, 0.09290304),
    # The acre of the international foot (NIST SP 811 also has the US survey acre, 4 ppm larger).
    ("acre", SQUARE_METRES, 4046.8564224),
    # UK Weights and Measures Act 1985, Schedule 1.
    ("imperial_gallon", LITRES, 4.54609),
    ("imperial_fluid_ounce", LITRES, 0.0284130625),
    # AS 1325: cup 250 mL, tablespoon 20 mL, teaspoon 5 mL; BS 1348: tablespoon 15 mL.
    ("metric_cup", LITRES, 0.25),
    ("australian_tablespoon", LITRES, 0.020),
    ("metric_teaspoon", LITRES, 0.005),
    ("metric_tablespoon", LITRES, 0.015),
    ("dessertspoon", LITRES, 0.010),
    # Five eighths of an imperial fluid ounce, and a third of that.
    ("imperial_tablespoon", LITRES, 0.0284130625 * 5 / 8),
    ("imperial_teaspoon", LITRES, 0.0284130625 * 5 / 24),
    # 1 sho = 2401/1331 L (Japanese law of 1891), 1.8039 L.
    ("sho", LITRES, 1.80391),
    ("japanese_cup", LITRES, 0.2),
]


@pytest.mark.parametrize(("unit", "table", "value"), DEFINITIONS)
def test_a_factor_is_its_definition(unit: str, table: Mapping[str, float], value: float) -> None:
    assert table[unit] == pytest.approx(value, rel=1e-5 if unit == "sho" else 1e-12)


def test_every_factor_is_checked_against_something_outside() -> None:
    checked = {*PINT_NAMES, *(unit for unit, _, _ in DEFINITIONS)}
    assert {unit for table, _ in TABLES for unit in table} <= checked


@pytest.mark.parametrize(
    ("more", "less", "ratio"),
    [
        # NIST Handbook 44: 256 tablespoons and 768 teaspoons to the US gallon.
        ("us_gallon", "us_tablespoon", 256),
        ("us_gallon", "us_teaspoon", 768),
        ("imperial_gallon", "metric_tablespoon", 303.07),
        ("imperial_gallon", "australian_tablespoon", 227.30),
        ("imperial_gallon", "us_tablespoon", 307.44),
        ("imperial_gallon", "us_gallon", 1.20095),
        ("imperial_gallon", "imperial_fluid_ounce", 160),
    ],
)
def test_units_stand_in_their_published_ratios(more: str, less: str, ratio: float) -> None:
    assert LITRES[more] / LITRES[less] == pytest.approx(ratio, rel=2e-5)


def test_a_bare_unit_always_means_one_of_the_table() -> None:
    meant = chain.from_iterable(BARE[system].values() for system in SYSTEMS)
    assert set(meant) <= {**LITRES, **KILOGRAMS}.keys()
    assert BARE["metric"].keys() == BARE["us"].keys() == BARE["imperial"].keys()


# NIST SP 811, B.9: water freezes at 32 °F and boils at 212 °F; -40 is the same on both.
@pytest.mark.parametrize(("fahrenheit", "degrees"), [(32, 0), (212, 100), (-40, -40), (68, 20)])
def test_fahrenheit(fahrenheit: float, degrees: float) -> None:
    assert celsius(fahrenheit) == pytest.approx(degrees)
