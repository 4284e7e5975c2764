"""Recipes for starter: bran with culture, molasses and water.

People quote two recipes for the molasses that differ by three, and both are here under what they
say; so are two more that go round. Water is what brings the mix to the moisture for packing, from
the balance of water and mass:

    moisture = (bran x m0 + water + culture + w x molasses) / (bran + water + culture + molasses)
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal, get_args

from handlers.practice.composition import FOODS
from handlers.practice.density import BRAN_LOOSE
from handlers.practice.figure import Figure, Refused
from handlers.practice.units import KILOGRAMS, LITRES

Recipe = Literal["tablespoon", "ten-to-one", "one-to-a-hundred", "ten-pounds"]

RECIPES: tuple[Recipe, ...] = get_args(Recipe)

RECIPE_NAMES: Mapping[Recipe, str] = {
    "tablespoon": "a tablespoon of molasses to ten cups of bran",
    "ten-to-one": "ten parts of bran to one of molasses by weight",
    "one-to-a-hundred": "one part each of culture and molasses to a hundred of water",
    "ten-pounds": "ten cups of water to ten pounds of bran",
}
"""What each recipe says."""

BRAN_MOISTURE = Figure(
    "water in bran as bought",
    FOODS["wheat bran"].water / 100,
    "of its mass",
    "USDA SR28 20077",
    "published",
    0.06,
    0.14,
)
PACKED = Figure(
    "moisture when packed",
    0.35,
    "of the mass",
    "",
    "common practice",
    0.30,
    0.40,
)
WATER_TO_CULTURE = Figure(
    "water to one part of culture and one of molasses",
    100,
    "parts by volume",
    "recipes come to 1:30 to 1:128",
    "common practice",
    30,
    128,
)
MOLASSES_DENSITY = Figure(
    "density of molasses",
    0.337 / 0.2365882365,
    "kg/L",
    "USDA SR28 19304: 337 g in a US cup",
    "derived",
    1.40,
    1.43,
)
MOLASSES_WATER = Figure(
    "water in molasses",
    FOODS["molasses"].water / 100,
    "of its mass",
    "USDA SR28 19304",
    "published",
)
TABLESPOON = Figure(
    "molasses, and culture, to ten cups of bran",
    1000 / 160,
    "mL to 1 L of bran",
    "",
    "common practice",
)
TEN_TO_ONE = Figure(
    "molasses to ten parts of bran",
    0.1,
    "kg to 1 kg of bran",
    "",
    "common practice",
)
POUNDS_WATER = Figure(
    "water in the recipe for ten pounds",
    10 * LITRES["us_cup"] / (10 * KILOGRAMS["pound"]),
    "L to 1 kg of bran",
    "an educational site, 2024; it says 30 % and reaches 41 %",
    "common practice",
)
POUNDS_CULTURE = Figure(
    "culture, and molasses, in the recipe for ten pounds",
    24 / (10 * KILOGRAMS["pound"]),
    "mL to 1 kg of bran",
    "an educational site, 2024; it says 30 % and reaches 41 %",
    "common practice",
)


@dataclass(frozen=True, slots=True)
class Mix:
    """What goes into a batch."""

    bran: float
    water: float
    culture: float
    molasses: float
    """L; the bran in kg."""

    @property
    def wet_kg(self) -> float:
        """Mass of it all: culture weighs as water does, molasses its own."""
        return self.bran + self.water + self.culture + self.molasses * MOLASSES_DENSITY.value

    @property
    def moisture(self) -> float:
        """Share of it that is water."""
        syrup = self.molasses * MOLASSES_DENSITY.value * MOLASSES_WATER.value
        held = self.bran * BRAN_MOISTURE.value
        return (held + self.water + self.culture + syrup) / self.wet_kg


FIGURES: Mapping[Recipe, tuple[Figure, ...]] = {
    "tablespoon": (TABLESPOON,),
    "ten-to-one": (TEN_TO_ONE, WATER_TO_CULTURE),
    "one-to-a-hundred": (WATER_TO_CULTURE,),
    "ten-pounds": (POUNDS_WATER, POUNDS_CULTURE),
}
"""The figures of each recipe."""


def mix(bran: float, recipe: Recipe, goal: float, water: float | None = None) -> Mix:
    """The recipe for so many kg of bran, with so many litres of water.

    Where the water is not given, it brings the mix to the goal, or is what the recipe says.
    """
    if recipe == "ten-pounds":
        culture = bran * POUNDS_CULTURE.value / 1000
        return Mix(bran, bran * POUNDS_WATER.value if water is None else water, culture, culture)
    if water is not None:
        return _with_water(bran, recipe, water)
    reachable(goal)
    # Water in the mix less water wanted rises in a straight line with the water added.
    dry, wet = _with_water(bran, recipe, 0.0), _with_water(bran, recipe, 1.0)
    lack, gain = (made.moisture * made.wet_kg - goal * made.wet_kg for made in (dry, wet))
    water = lack / (lack - gain)
    if water < 0:
        raise Refused(
            "With this recipe the mix is moister than that before any water: ask for more."
        )
    return _with_water(bran, recipe, water)


def bran_for(
    recipe: Recipe, goal: float, culture_l: float | None = None, molasses_l: float | None = None
) -> float:
    """Bran (kg) for which so many litres of each are enough: all of a recipe grows with it."""
    each = mix(1.0, recipe, goal)
    stocks = ((culture_l, each.culture), (molasses_l, each.molasses))
    return min(litres / need for litres, need in stocks if litres is not None)


def _with_water(bran: float, recipe: Recipe, water: float) -> Mix:
    share = water / WATER_TO_CULTURE.value
    if recipe == "tablespoon":
        spoons = bran / BRAN_LOOSE.value * TABLESPOON.value / 1000
        return Mix(bran, water, spoons, spoons)
    if recipe == "ten-to-one":
        return Mix(bran, water, share, bran * TEN_TO_ONE.value / MOLASSES_DENSITY.value)
    return Mix(bran, water, share, share)


def reachable(goal: float) -> None:
    """Refuse a moisture that no mix can or should have."""
    if not BRAN_MOISTURE.value < goal <= 0.7:
        raise Refused(
            "The moisture to reach lies between that of dry bran and 70 %: 35 % is usual."
        )
