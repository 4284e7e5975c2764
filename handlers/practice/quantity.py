"""Strict reading of one value with its unit: "9L", "1 lb 4 oz", "4x8ft", "2,5 kg", "68 F".

This is for values that stand alone, as on the command line; sentences are the reading's business.
Spellings are in the table here and factors in `units`; a unit that is not there is asked of pint
by its name (`rare_units`), and what is no unit of the right kind is refused.
"""

import re
from collections.abc import Mapping
from fractions import Fraction

from handlers.practice import rare_units
from handlers.practice.figure import Refused, quoted
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
    "hectolitre": "hl hectoliter hectoliters hectolitre hectolitres",
    "centilitre": "cl centiliter centiliters centilitre centilitres",
    "decilitre": "dl deciliter deciliters decilitre decilitres",
    "cubic_metre": "m3 m³ cubicmeter cubicmeters cubicmetre cubicmetres",
    "cubic_centimetre": "cm3 cm³",
    "cubic_foot": "ft3 ft³ cuft cubicfoot cubicfeet",
    "cubic_yard": "yd3 yd³ cuyd cubicyard cubicyards",
    "cubic_inch": "in3 in³ cuin cubicinch cubicinches",
    "gallon": "gal gals gallon gallons",
    "us_gallon": "usgal usgals usgallon usgallons usliquidgallon",
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
    "australian_tablespoon": "autbsp autablespoon autablespoons australiantbsp "
    "australiantablespoon australiantablespoons",
    "imperial_tablespoon": "imptbsp imperialtbsp imperialtablespoon imperialtablespoons",
    "teaspoon": "tsp tsps teaspoon teaspoons",
    "us_teaspoon": "ustsp usteaspoon usteaspoons",
    "metric_teaspoon": "metrictsp metricteaspoon metricteaspoons",
    "imperial_teaspoon": "imptsp imperialteaspoon imperialteaspoons",
    "dessertspoon": "dsp dessertspoon dessertspoons",
    "bushel": "bushel bushels",
    "us_bushel": "usbushel usbushels",
    "imperial_bushel": "ukbushel imperialbushel imperialbushels",
    "kilogram": "kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes",
    "gram": "g gr gram grams gramme grammes",
    "milligram": "mg milligram milligrams",
    "tonne": "t tonne tonnes",
    "pound": "lb lbs pound pounds",
    "ounce": "oz ounce ounces",
    "stone": "st stone stones",
    "hundredweight": "cwt cwts hundredweight hundredweights",
    "ton": "ton tons",
    "us_ton": "shortton shorttons uston ustons",
    "imperial_ton": "longton longtons",
    "metre": "m meter meters metre metres",
    "kilometre": "km kilometer kilometers kilometre kilometres",
    "decimetre": "dm decimetre decimetres",
    "centimetre": "cm centimeter centimeters centimetre centimetres",
    "millimetre": "mm millimeter millimeters millimetre millimetres",
    "inch": 'in inch inches " ″',
    "foot": "ft foot feet ' ′",
    "yard": "yd yds yard yards",
    "square_kilometre": "km2 km² sqkm",
    "square_metre": "m2 m² sqm sqmeter sqmeters sqmetre sqmetres squaremeter squaremeters "
    "squaremetre squaremetres",
    "square_centimetre": "cm2 cm² sqcm",
    "square_foot": "ft2 ft² sqft sqfoot sqfeet squareft squarefoot squarefeet",
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
_COUNTRY = re.compile(r"(?:(us|uk)|\((us|uk|imp|imperial|metric|au|australian)\))$")
_VULGAR = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅓": "1/3", "⅔": "2/3", "⅛": "1/8", "⅜": "3/8"}
_LONGEST = 60
_IN_PINT = {
    id(LITRES): "liter",
    id(KILOGRAMS): "kilogram",
    id(METRES): "meter",
    id(SQUARE_METRES): "meter ** 2",
}


def plain_number(text: str) -> float:
    """A number alone: "2", "2.5", "2,5", "1/2", "1½". Refuses anything else."""
    words = _plainly(text)
    if re.match(r"[-−–]\s*[\d.,]", words):
        raise Refused(f"{quoted(text)} is less than nothing: write a number like 2 or 2.5.")
    if len(words) > _LONGEST or not re.fullmatch(_NUMBER, words):
        raise Refused(f"{quoted(text)} is not a number I can read: write it like 2 or 2.5.")
    if re.fullmatch(r"[1-9][0-9]{0,2},[0-9]{3}", words):
        whole = words.replace(",", "")
        raise Refused(
            f"{quoted(words)} could be read two ways: write {whole} or {words.replace(',', '.')}."
        )
    try:
        return float(sum(Fraction(part) for part in words.replace(",", ".").split()))
    except (ZeroDivisionError, OverflowError):
        raise Refused(f"{quoted(text)} is not a number I can reckon with.") from None


def _plainly(text: str) -> str:
    """Lower case, plain blanks and fractions; a word for "roughly" changes no amount."""
    for sign, digits in _VULGAR.items():
        text = text.replace(sign, f" {digits}")
    words = " ".join(text.lower().split())
    words = re.sub(r"^(?:about|roughly|around|circa|ca\.?|[~≈])\s*(?=[0-9.,])", "", words)
    return re.sub(r"(?<=[a-z])\s?(?:\^|\*\*)\s?(?=[23]\b)", "", words)


def litres(text: str, units: System = "metric") -> float:
    """A volume in L; a bare gallon or spoon by the group's units, an ounce as one of fluid."""
    return _total(text, LITRES, units, what="a volume", example="9 L or 2 gal")


def kilograms(text: str, units: System = "metric") -> float:
    """A mass in kg."""
    return _total(text, KILOGRAMS, units, what="a weight", example="2 kg or 1 lb 4 oz")


def mass_or_volume(text: str, units: System = "metric") -> tuple[float | None, float | None]:
    """A mass in kg or a volume in L, whichever its unit says; an ounce is one of weight."""
    _need_amount(text, _added_up(text), what="a weight or a volume", example="2 kg or 5 L")
    try:
        return kilograms(text, units), None
    except Refused:
        try:
            return None, litres(text, units)
        except Refused:
            pass
    raise Refused(f"{quoted(text)} is no weight or volume I can read: write it like 2 kg or 5 L.")


def metres(text: str, units: System = "metric") -> float:
    """A length in m."""
    return _total(text, METRES, units, what="a length", example="30 cm or 12 in")


def square_metres(text: str, units: System = "metric") -> float:
    """An area in m², as "3 m2" or as two sides: "4x8ft", "1.2 m by 2.4 m"."""
    sides = _SIDES.split(_plainly(text))
    if len(sides) != 2 or not all(sides):
        return _total(text, SQUARE_METRES, units, what="an area", example="3 m2 or 4x8 ft")
    first, second = sides
    unit = re.sub(rf"^\s*(?:{_NUMBER})", "", second)
    if re.fullmatch(_NUMBER, first.strip()):
        if not unit.strip():
            raise Refused(f"{quoted(text)} has no unit: write an area like 3 m2 or 4x8 ft.")
        first += unit
    return metres(first, units) * metres(second, units)


def degrees_celsius(text: str) -> float:
    """A temperature in °C: "20", "20 C", "68F", "-5 °C"; a bare number is °C."""
    found = re.fullmatch(
        r"\s*([-−]?)\s*([\d.,/ ]+?)\s*(?:°|º|deg(?:rees)?)?\s*(c|f|celsius|fahrenheit|)\s*",
        text.lower(),
    )
    if not found:
        raise Refused(
            f"{quoted(text)} is not a temperature I can read: write it like 20 C or 68 F."
        )
    sign, digits, scale = found.groups()
    value = plain_number(digits) * (-1 if sign else 1)
    return celsius(value) if scale.startswith("f") else value


def share(text: str) -> float:
    """A share from 0 to 1: "0.7", "70%", "70 percent", "1/2"."""
    words = _plainly(text)
    digits = re.sub(r"\s*(?:%|per\s?cent)$", "", words)
    value = plain_number(digits) / (1 if digits == words else 100)
    if value > 1:
        raise Refused(f"{quoted(text)} is more than the whole: write a share like 0.7 or 70%.")
    return value


def _total(
    text: str, factors: Mapping[str, float], units: System, *, what: str, example: str
) -> float:
    lowered = _added_up(text)
    _need_amount(text, lowered, what=what, example=example)
    total, at = 0.0, 0
    while len(text) <= _LONGEST and (part := _PART.match(lowered, at)):
        factor = _factor(part["unit"], factors, units)
        if factor is None:
            raise Refused(
                f"{quoted(part['unit'])} in {quoted(text)} is no unit of {what} that I know: "
                f"write it like {example}."
            )
        total += plain_number(part["number"]) * factor
        at = part.end()
    if at == 0 or at < len(lowered):
        raise Refused(f"{quoted(text)} is not {what} I can read: write it like {example}.")
    return total


def _added_up(text: str) -> str:
    return re.sub(r"\s(?:and|\+|&)\s", " ", _plainly(text))


def _need_amount(text: str, lowered: str, *, what: str, example: str) -> None:
    """Refuse what is less than nothing, or a number without its unit."""
    if re.match(r"[-−–]\s*[\d.,]", lowered):
        raise Refused(f"{quoted(text)} is less than nothing: write {what} like {example}.")
    if re.fullmatch(_NUMBER, lowered):
        raise Refused(f"{quoted(text)} has no unit: write {what} like {example}.")


def _factor(word: str, factors: Mapping[str, float], units: System) -> float | None:
    unit = _named(word)
    if unit == "ounce" and factors is LITRES:
        unit = "fluid_ounce"
    unit = BARE[units].get(unit, unit)
    if unit in factors:
        return factors[unit]
    # What our table knows as a measure of something else is not looked for again.
    return None if unit else rare_units.factor(word.strip(), _IN_PINT[id(factors)], units)


def _named(word: str) -> str:
    """Our unit of that spelling, its country before or after it; "" if it has none."""
    spelling = re.sub(r"[\s_.]", "", word)
    if spelling not in _UNIT and (found := _COUNTRY.search(spelling)):
        spelling = f"{found[1] or found[2]}{spelling[: found.start()]}"
    return _UNIT.get(spelling, "")
