"""Masses and volumes in the forms that the public test suites of quantity readers hold.

The forms (not the sentences) are those of the corpora of Duckling (Quantity, Volume and Numeral,
in English and other languages), of the specifications of Recognizers-Text (Dimension and its
compound mode), of the tests of quantulum3, and of the tests of ingredient parsers
(strangetom/ingredient-parser and others): each group below names the suite whose forms it has.
Factors are those of `handlers.practice.units`, which are checked against pint and NIST.
"""

import pytest

from handlers.practice.units import KILOGRAMS, LITRES
from handlers.reading.acts import Layer, Units
from tests.reading.context import acts

LB, OZ, STONE = KILOGRAMS["pound"], KILOGRAMS["ounce"], KILOGRAMS["stone"]
GALLON, QUART, PINT = LITRES["us_gallon"], LITRES["us_quart"], LITRES["us_pint"]
CUP, FL_OZ = LITRES["us_cup"], LITRES["us_fluid_ounce"]
IMPERIAL_PINT, IMPERIAL_FL_OZ = LITRES["imperial_pint"], LITRES["imperial_fluid_ounce"]

Row = tuple[str, float]

DUCKLING_MASS: list[Row] = [
    ("two pounds", 2 * LB), ("2 grams", 0.002), ("0.002 kg", 0.002), ("2/1000 kilograms", 0.002),
    ("2000 milligrams", 0.002), ("a kilogram", 1), ("a kg", 1), ("a Pound", LB), ("1 lb", LB),
    ("a lb", LB), ("2 ounces", 2 * OZ), ("2oz", 2 * OZ), ("500 grams", 0.5), ("500g", 0.5),
    ("0.5 kilograms", 0.5), ("0.5 kg", 0.5), ("500000mg", 0.5), ("100-1000 gram", 0.55),
    ("between 100 and 1000 grams", 0.55), ("from 100 to 1000 g", 0.55), ("100 - 1000 g", 0.55),
    ("around 2 -7 kg", 4.5), ("~2-7 kilos", 4.5), ("from 2 to 7 kg", 4.5),
    ("between 2.0 kg and about 7.0 kg", 4.5), ("2 - ~7 kilograms", 4.5),
    ("between 0.2 kg and about 0.7 kg", 0.45), ("less than six pounds", 6 * LB),
    ("no more than 6 lbs", 6 * LB), ("below 6.0 pounds", 6 * LB), ("at most six pounds", 6 * LB),
    ("exceeding 4 oz", 4 * OZ), ("at least 4.0 oz", 4 * OZ), ("over four ounces", 4 * OZ),
    ("more than four ounces", 4 * OZ),
]  # fmt: skip
DUCKLING_VOLUME: list[Row] = [
    ("1 liter", 1), ("1 litre", 1), ("one liter", 1), ("a liter", 1), ("2 liters", 2), ("2l", 2),
    ("thousand liters", 1000), ("half liter", 0.5), ("half-litre", 0.5), ("half a liter", 0.5),
    ("quarter-litre", 0.25), ("a fourth of a liter", 0.25), ("250 milliliters", 0.25),
    ("250 millilitres", 0.25), ("250ml", 0.25), ("250mls", 0.25), ("250 ml", 0.25),
    ("3 gallons", 3 * GALLON), ("3 gal", 3 * GALLON), ("3gal", 3 * GALLON),
    ("around three gallons", 3 * GALLON), ("0.5 gals", GALLON / 2), ("1/2 gallon", GALLON / 2),
    ("half a gallon", GALLON / 2), ("0.1 gallons", GALLON / 10),
    ("a tenth of a gallon", GALLON / 10), ("3 hectoliters", 300), ("between 2l and about 7l", 4.5),
    ("3/4 cup", 0.75 * CUP), ("0.75 cup", 0.75 * CUP), (".75 cups", 0.75 * CUP),
    ("at least two Cups", 2 * CUP), ("under six gallon", 6 * GALLON),
]  # fmt: skip
DUCKLING_OTHER_LANGUAGES: list[Row] = [
    ("dos kilos", 2), ("tres kilos y medio", 3.5), ("medio kilo", 0.5), ("un kilo y medio", 1.5),
    ("quince kilos", 15), ("doscientos gramos", 0.2), ("dois quilos", 2), ("meio quilo", 0.5),
    ("dois quilos e meio", 2.5), ("deux kilos", 2), ("un demi-kilo", 0.5),
    ("trois kilos et demi", 3.5), ("cent grammes", 0.1), ("dix-sept kilos", 17),
    ("due chili", 2), ("mezzo chilo", 0.5), ("un chilo e mezzo", 1.5), ("tre etti", 0.3),
    ("zwei Kilo", 2), ("ein halbes Kilo", 0.5), ("anderthalb Kilo", 1.5),
    ("zweieinhalb Kilo", 2.5), ("fünf Pfund", 2.5), ("dreihundert Gramm", 0.3),
    ("twee kilo", 2), ("anderhalve kilo", 1.5), ("een halve kilo", 0.5), ("dwa kilo", 2),
    ("pół kilo", 0.5), ("półtora kilo", 1.5), ("pięć kilo", 5), ("do kilo", 2),
    ("aadha kilo", 0.5), ("dedh kilo", 1.5), ("dhai kilo", 2.5), ("sadhe teen kilo", 3.5),
    ("dalawang kilo", 2), ("kalahating kilo", 0.5), ("isang kilo at kalahati", 1.5),
]  # fmt: skip
RECOGNIZERS_MASS: list[Row] = [
    ("200lbs", 200 * LB), ("1,458 grams", 1.458), ("25 pounds", 25 * LB), ("over two pounds",
     2 * LB),
    ("3lb 4oz", 3.25 * LB), ("3lb 4oz and 2 lb", 5.25 * LB), ("6 kilos and 24 g", 6.024),
    ("2 kg and a half", 2.5), ("68-ounce", 68 * OZ), ("ten pounds", 10 * LB),
    ("10 1/2 pounds", 10.5 * LB), ("1/4 pound", LB / 4), ("a hundred kilos", 100),
    ("2.5-kilo", 2.5), ("two stone", 2 * STONE), ("2 stone 3 pounds", 2 * STONE + 3 * LB),
    ("0.9 metric tons", 900),
]  # fmt: skip
RECOGNIZERS_VOLUME: list[Row] = [
    ("75ml", 0.075), ("10 gallons", 10 * GALLON), ("20l 15cl and 5ml", 20.155),
    ("2 pints and a half", 2.5 * PINT), ("1.5 gallons", 1.5 * GALLON), ("2 dl", 0.2),
    ("3 cubic feet", 3 * LITRES["cubic_foot"]), ("half a pint", PINT / 2),
]  # fmt: skip
QUANTULUM: list[Row] = [
    ("two kilos", 2), ("a hundred and two grams", 0.102), ("one hundred two grams", 0.102),
    ("twenty-one pounds", 21 * LB), ("2 1/2 kg", 2.5), ("two and a half kilograms", 2.5),
    ("one-half kilogram", 0.5), ("approximately one-half kilograms", 0.5), ("1,500 g", 1.5),
    ("1 500 g", 1.5), ("8- to 16-kilogram", 12), ("3 to 4 kg", 3.5), ("3.5–4.0 kg", 3.75),
    ("two thirds of a pound", 2 / 3 * LB), ("three halves of a pound", 1.5 * LB),
    ("two thousand five hundred grams", 2.5), ("a couple of kilos", 2), ("half a dozen kilos", 6),
    ("3 kilograms (6.6 lb)", 3), ("a couple hundred grams", 0.2), ("two point five kilos", 2.5),
]  # fmt: skip
INGREDIENTS_MASS: list[Row] = [
    ("500g/1lb 2oz", 0.5), ("2 lb. 4 oz.", 2.25 * LB), ("1½ kg", 1.5), ("1 ½ kg", 1.5),
    ("2 and ½ pounds", 2.5 * LB), ("1 and 1/2 kg", 1.5), ("1-1 1/2 kg", 1.25), ("1 to 1 1/2 kg",
     1.25),
    ("1- 1 ½ kg", 1.25), ("1 -1½ kg", 1.25), ("2 x 400 g", 0.8), ("2 cups (226 grams)", 0.226),
    ("2 cups (226g)", 0.226), ("2 1/10 oz", 2.1 * OZ), ("2 bags of 750 g", 1.5),
    ("three 2 lb bags", 6 * LB), ("1kg-1.5kg", 1.25), ("1 kg to 1.5 kg", 1.25),
    ("2 pounds 3 ounces", 2 * LB + 3 * OZ), ("1 lb or 450 g", LB), ("⅓ pound", LB / 3),
    ("one and three quarter pounds", 1.75 * LB), ("quarter pound", LB / 4), ("1 kilo 200", 1.2),
    ("1.500 g", 1.5), ("1,25 kg", 1.25), ("3 (three) pounds", 3 * LB), ("2+ kg", 2),
]  # fmt: skip
INGREDIENTS_VOLUME: list[Row] = [
    ("1 cup", CUP), ("3.5 tbsp", 3.5 * LITRES["us_tablespoon"]), ("¾ cup", 0.75 * CUP),
    ("2 1/4 tsp.", 2.25 * LITRES["us_teaspoon"]), ("1 and 1/2 gallons", 1.5 * GALLON),
    ("2 and ½ cups", 2.5 * CUP), ("1 - 1.5 cups", 1.25 * CUP), ("1 -1½ cups", 1.25 * CUP),
    ("8 fl. oz.", 8 * FL_OZ), ("16 fluid ounces", 16 * FL_OZ), ("1 quart", QUART),
    ("1 quart and 1 cup", QUART + CUP), ("1.5 litres/3 pints 2¾ fl oz", 1.5),
    ("2 heaping cups", 2 * CUP), ("two table spoons", 2 * LITRES["us_tablespoon"]),
    ("1 cup plus 2 tablespoons", CUP + 2 * LITRES["us_tablespoon"]), ("a cup and a half",
     1.5 * CUP),
]  # fmt: skip


def layer(phrase: str, units: Units = "us") -> Layer:
    (act,) = acts(f"added {phrase} of peelings to bin 3", units=units)
    assert isinstance(act, Layer)
    return act


@pytest.mark.parametrize(
    ("phrase", "kg"),
    [*DUCKLING_MASS, *DUCKLING_OTHER_LANGUAGES, *RECOGNIZERS_MASS, *QUANTULUM, *INGREDIENTS_MASS],
)
def test_a_mass_in_a_published_form(phrase: str, kg: float) -> None:
    assert layer(phrase).mass_kg == pytest.approx(kg, rel=1e-3)


@pytest.mark.parametrize(
    ("phrase", "litres"), [*DUCKLING_VOLUME, *RECOGNIZERS_VOLUME, *INGREDIENTS_VOLUME]
)
def test_a_volume_in_a_published_form(phrase: str, litres: float) -> None:
    assert layer(phrase).volume_l == pytest.approx(litres, rel=1e-3)


@pytest.mark.parametrize(
    ("phrase", "litres"),
    [("2 pints 12¾ fl oz", 2 * IMPERIAL_PINT + 12.75 * IMPERIAL_FL_OZ), ("a pint", IMPERIAL_PINT)],
)
def test_a_pint_is_the_groups_own(phrase: str, litres: float) -> None:
    assert layer(phrase, "imperial").volume_l == pytest.approx(litres, rel=1e-3)
