"""Exact factors from the units people use to ours: litre, kilogram, metre, square metre, °C.

US units: NIST Handbook 44, Appendix C, and NIST SP 811, Appendix B (the US gallon is 231 cubic
inches, the inch 25.4 mm, the pound 0.45359237 kg). Imperial volumes: UK Weights and Measures Act
1985, Schedule 1 (the gallon is 4.54609 L). Kitchen measures: metric cup 250 mL and spoons of 15,
10 and 5 mL, Australian tablespoon of 20 mL (AS 1325); Japanese cup 200 mL and sho of 2401/1331 L.
All but the kitchen measures are exact by definition.
"""

from collections.abc import Mapping
from typing import Literal, get_args

System = Literal["metric", "us", "imperial"]
"""What a bare gallon, pint, cup, spoon or ounce of liquid means to a group."""

SYSTEMS: tuple[System, ...] = get_args(System)

INCH_M = 0.0254
FOOT_M = 0.3048
POUND_KG = 0.45359237
US_GALLON_L = 3.785411784
IMPERIAL_GALLON_L = 4.54609

LITRES: Mapping[str, float] = {
    "litre": 1.0,
    "hectolitre": 100.0,
    "decilitre": 0.1,
    "centilitre": 0.01,
    "millilitre": 0.001,
    "cubic_metre": 1000.0,
    "cubic_centimetre": 0.001,
    "cubic_inch": 0.016387064,
    "cubic_foot": 28.316846592,
    "cubic_yard": 764.554857984,
    "us_gallon": US_GALLON_L,
    "us_quart": US_GALLON_L / 4,
    "us_pint": US_GALLON_L / 8,
    "us_cup": US_GALLON_L / 16,
    "us_gill": US_GALLON_L / 32,
    "us_fluid_ounce": US_GALLON_L / 128,
    "us_tablespoon": US_GALLON_L / 256,
    "us_teaspoon": US_GALLON_L / 768,
    "us_bushel": 35.23907016688,
    "imperial_bushel": IMPERIAL_GALLON_L * 8,
    "imperial_gallon": IMPERIAL_GALLON_L,
    "imperial_quart": IMPERIAL_GALLON_L / 4,
    "imperial_pint": IMPERIAL_GALLON_L / 8,
    "imperial_gill": IMPERIAL_GALLON_L / 32,
    "imperial_fluid_ounce": IMPERIAL_GALLON_L / 160,
    "metric_cup": 0.25,
    "metric_tablespoon": 0.015,
    "metric_teaspoon": 0.005,
    "dessertspoon": 0.01,
    "australian_tablespoon": 0.02,
    "imperial_cup": IMPERIAL_GALLON_L / 16,
    "imperial_tablespoon": IMPERIAL_GALLON_L / 256,
    "imperial_teaspoon": IMPERIAL_GALLON_L / 768,
    "japanese_cup": 0.2,
    "sho": 2401 / 1331,
}
"""Litres in one of each unit of volume."""

KILOGRAMS: Mapping[str, float] = {
    "kilogram": 1.0,
    "gram": 0.001,
    "milligram": 0.000001,
    "tonne": 1000.0,
    "hectogram": 0.1,
    "decagram": 0.01,
    "metric_pound": 0.5,  # the German Pfund of the shops; common practice
    "pound": POUND_KG,
    "ounce": POUND_KG / 16,
    "stone": POUND_KG * 14,
    "us_hundredweight": POUND_KG * 100,
    "imperial_hundredweight": POUND_KG * 112,
    "us_ton": POUND_KG * 2000,
    "imperial_ton": POUND_KG * 2240,
}
"""Kilograms in one of each unit of mass."""

METRES: Mapping[str, float] = {
    "metre": 1.0,
    "kilometre": 1000.0,
    "decimetre": 0.1,
    "centimetre": 0.01,
    "millimetre": 0.001,
    "inch": INCH_M,
    "foot": FOOT_M,
    "yard": 0.9144,
}
"""Metres in one of each unit of length."""

SQUARE_METRES: Mapping[str, float] = {
    "square_metre": 1.0,
    "square_kilometre": 1e6,
    "square_centimetre": 0.0001,
    "square_inch": 0.00064516,
    "square_foot": 0.09290304,
    "square_yard": 0.83612736,
    "are": 100.0,
    "hectare": 10000.0,
    "acre": 4046.8564224,
}
"""Square metres in one of each unit of area."""

BARE: Mapping[System, Mapping[str, str]] = {
    "metric": {
        "gallon": "imperial_gallon",
        "quart": "imperial_quart",
        "pint": "imperial_pint",
        "gill": "imperial_gill",
        "fluid_ounce": "imperial_fluid_ounce",
        "cup": "metric_cup",
        "tablespoon": "metric_tablespoon",
        "teaspoon": "metric_teaspoon",
        "bushel": "imperial_bushel",
        "hundredweight": "imperial_hundredweight",
        "ton": "tonne",
    },
    "us": {
        "gallon": "us_gallon",
        "quart": "us_quart",
        "pint": "us_pint",
        "gill": "us_gill",
        "fluid_ounce": "us_fluid_ounce",
        "cup": "us_cup",
        "tablespoon": "us_tablespoon",
        "teaspoon": "us_teaspoon",
        "bushel": "us_bushel",
        "hundredweight": "us_hundredweight",
        "ton": "us_ton",
    },
    "imperial": {
        "gallon": "imperial_gallon",
        "quart": "imperial_quart",
        "pint": "imperial_pint",
        "gill": "imperial_gill",
        "fluid_ounce": "imperial_fluid_ounce",
        "cup": "imperial_cup",
        # The spoons sold in Britain hold 15 and 5 mL (BS 1348); the old one of 5/8 fl oz has
        # to be asked for by its name.
        "tablespoon": "metric_tablespoon",
        "teaspoon": "metric_teaspoon",
        "bushel": "imperial_bushel",
        "hundredweight": "imperial_hundredweight",
        "ton": "imperial_ton",
    },
}
"""What a unit named without its country means, by the group's system."""


def celsius(fahrenheit: float) -> float:
    """°C from °F, by the definition of the scale; 75.2 °F are 24 °C and not a hair more."""
    return round((fahrenheit - 32.0) / 1.8, 9)
