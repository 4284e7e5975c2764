"""Strict reading of one value with its unit: "9L", "1 lb 4 oz", "4x8ft", "2,5 kg", "68 F".

This is for values that stand alone, as on the command line; sentences are the reading's business.
Every spelling is in the table here and every factor in `units`; what is not there is refused.
"""

import re
from collections.abc import Mapping
from datetime import date
from fractions import Fraction

from handlers.practice.figure import Refused
from handlers.practice.units import (
    BARE,
    KILOGRAMS,
    LITRES,
    METRES,
    SQUARE_METRES,
    System,
    celsius,
)

SPELLINGS: Mapping[str, str] = {
    "litre": "l lt liter liters litre litres",
    "millilitre": "ml milliliter milliliters millilitre millilitres cc",
    "centilitre": "cl centiliter centiliters centilitre centilitres",
    "decilitre": "dl deciliter deciliters decilitre decilitres",
    "cubic_metre": "m3 m³",
    "cubic_centimetre": "cm3 cm³",
    "cubic_foot": "ft3 ft³ cuft cubicfoot cubicfeet",
    "cubic_yard": "yd3 yd³ cuyd cubicyard cubicyards",
    "cubic_inch": "in3 in³ cuin cubicinch cubicinches",
    "gallon": "gal gals gallon gallons",
    "us_gallon": "usgal usgallon usgallons",
    "imperial_gallon": "impgal ukgal impgallon imperialgallon imperialgallons ukgallons",
    "quart": "qt qts quart quarts",
    "us_quart": "usqt usquart usquarts",
    "imperial_quart": "impqt imperialquart imperialquarts",
    "pint": "pt pts pint pints",
    "us_pint": "uspt uspint uspints",
    "imperial_pint": "imppt imperialpint imperialpints ukpint ukpints",
    "fluid_ounce": "floz fl.oz fluidounce fluidounces",
    "us_fluid_ounce": "usfloz usfluidounce usfluidounces",
    "imperial_fluid_ounce": "impfloz imperialfluidounce imperialfluidounces",
    "cup": "cup cups",
    "us_cup": "uscup uscups",
    "metric_cup": "metriccup metriccups",
    "imperial_cup": "imperialcup imperialcups impcup",
    "tablespoon": "tbsp tbsps tbs tablespoon tablespoons",
    "us_tablespoon": "ustbsp ustablespoon ustablespoons",
    "metric_tablespoon": "metrictbsp metrictablespoon metrictablespoons",
    "australian_tablespoon": "autbsp australiantbsp australiantablespoon australiantablespoons",
    "imperial_tablespoon": "imptbsp imperialtbsp imperialtablespoon imperialtablespoons",
    "teaspoon": "tsp tsps teaspoon teaspoons",
    "us_teaspoon": "ustsp usteaspoon usteaspoons",
    "metric_teaspoon": "metrictsp metricteaspoon metricteaspoons",
    "imperial_teaspoon": "imptsp imperialteaspoon imperialteaspoons",
    "us_bushel": "bushel bushels",
    "kilogram": "kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes",
    "gram": "g gr gram grams gramme grammes",
    "milligram": "mg milligram milligrams",
    "tonne": "t tonne tonnes",
    "pound": "lb lbs pound pounds",
    "ounce": "oz ounce ounces",
    "stone": "st stone stones",
    "us_ton": "ton tons shortton",
    "metre": "m meter meters metre metres",
    "decimetre": "dm decimetre decimetres",
    "centimetre": "cm centimeter centimeters centimetre centimetres",
    "millimetre": "mm millimeter millimeters millimetre millimetres",
    "inch": 'in inch inches " ″',
    "foot": "ft foot feet ' ′",
    "yard": "yd yds yard yards",
    "square_metre": "m2 m² sqm squaremeter squaremeters squaremetre squaremetres",
    "square_centimetre": "cm2 cm² sqcm",
    "square_foot": "ft2 ft² sqft squarefoot squarefeet",
    "square_inch": "in2 in² sqin",
    "square_yard": "yd2 yd² sqyd squareyard squareyards",
    "are": "are ares",
    "hectare": "ha hectare hectares",
    "acre": "acre acres",
}
"""Unit of `units`, or the country-less name of its `BARE`, to its spellings without blanks."""

_UNIT = {spelling: unit for unit, words in SPELLINGS.items() for spelling in words.split()}

_NUMBER = r"[0-9]+\s+[0-9]+/[0-9]+|[0-9]+/[0-9]+|[0-9]*[.,][0-9]+|[0-9]+"
_PART = re.compile(rf"\s*(?P<number>{_NUMBER})\s*(?P<unit>[^\d\s+.,-][^\d+,-]*?[23²³]?)\s*(?=\d|$)")
_SIDES = re.compile(r"\s*[x×*]\s*|\s+by\s+")
_LONGEST = 60


def plain_number(text: str) -> float:
    """A number alone: "2", "2.5", "2,5", "1/2", "1 1/2". Refuses anything else."""
    text = text.strip()
    if len(text) > _LONGEST or not re.fullmatch(_NUMBER, text):
        raise Refused(f"“{_short(text)}” is not a number I can read: write it like 2 or 2.5.")
    if re.fullmatch(r"[1-9][0-9]{0,2},[0-9]{3}", text):
        whole = text.replace(",", "")
        raise Refused(
            f"“{text}” could be read two ways: write {whole} or {text.replace(',', '.')}."
        )
    try:
        return float(sum(Fraction(part) for part in text.replace(",", ".").split()))
    except (ZeroDivisionError, OverflowError):
        raise Refused(f"“{_short(text)}” is not a number I can reckon with.") from None


def litres(text: str, units: System = "metric") -> float:
    """A volume in L; a bare gallon or spoon by the group's units, an ounce as one of fluid."""
    return _total(text, LITRES, units, what="a volume", example="9 L or 2 gal")


def kilograms(text: str, units: System = "metric") -> float:
    """A mass in kg."""
    return _total(text, KILOGRAMS, units, what="a weight", example="2 kg or 1 lb 4 oz")


def metres(text: str, units: System = "metric") -> float:
    """A length in m."""
    return _total(text, METRES, units, what="a length", example="30 cm or 12 in")


def square_metres(text: str, units: System = "metric") -> float:
    """An area in m², as "3 m2" or as two sides: "4x8ft", "1.2 m by 2.4 m"."""
    sides = _SIDES.split(text.strip().lower())
    if len(sides) != 2 or not all(sides):
        return _total(text, SQUARE_METRES, units, what="an area", example="3 m2 or 4x8 ft")
    first, second = sides
    unit = re.sub(rf"^\s*(?:{_NUMBER})", "", second)
    if re.fullmatch(_NUMBER, first.strip()):
        first += unit
    return metres(first, units) * metres(second, units)


def degrees_celsius(text: str) -> float:
    """A temperature in °C: "20", "20 C", "68F", "-5 °C"; a bare number is °C."""
    found = re.fullmatch(
        r"\s*([-−]?)\s*([\d.,/ ]+?)\s*(?:°|deg(?:rees)?)?\s*([cf]?)\s*", text.lower()
    )
    if not found:
        raise Refused(
            f"“{_short(text)}” is not a temperature I can read: write it like 20 C or 68 F."
        )
    sign, digits, scale = found.groups()
    value = plain_number(digits) * (-1 if sign else 1)
    return celsius(value) if scale == "f" else value


def share(text: str) -> float:
    """A share from 0 to 1: "0.7", "70%", "1/2"."""
    text = text.strip()
    value = plain_number(text[:-1]) / 100 if text.endswith("%") else plain_number(text)
    if value > 1:
        raise Refused(f"“{_short(text)}” is more than the whole: write a share like 0.7 or 70%.")
    return value


def day(text: str) -> date:
    """A calendar day: YYYY-MM-DD."""
    try:
        return date.fromisoformat(text.strip())
    except ValueError:
        raise Refused(
            f"“{_short(text)}” is not a day I can read: write it like 2026-03-20."
        ) from None


def _total(
    text: str, factors: Mapping[str, float], units: System, *, what: str, example: str
) -> float:
    lowered = text.lower().replace(" and ", " ")
    total, at = 0.0, 0
    while len(text) <= _LONGEST and (part := _PART.match(lowered, at)):
        total += plain_number(part["number"]) * _factor(part["unit"], factors, units, text)
        at = part.end()
    if at == 0 or at < len(lowered):
        raise Refused(f"“{_short(text)}” is not {what} I can read: write it like {example}.")
    return total


def _factor(word: str, factors: Mapping[str, float], units: System, text: str) -> float:
    unit = _named(word)
    if unit == "ounce" and factors is LITRES:
        unit = "fluid_ounce"
    unit = BARE[units].get(unit, unit)
    if unit not in factors:
        raise Refused(f"I do not know “{_short(word.strip())}” as a unit in “{_short(text)}”.")
    return factors[unit]


def _named(word: str) -> str:
    return _UNIT.get(re.sub(r"[\s_]|\.$", "", word), "")


def _short(text: str) -> str:
    return text if len(text) <= _LONGEST else text[:_LONGEST] + "…"
