"""Making the starter: bran moistened with culture, molasses and water, fermented airtight.

Water to bring B kg of bran from moisture m0 to m, when each litre of it carries a litre/r of
culture and of molasses (density d, water share w):

    water = B (m - m0) / ((1 + 1/r + w d/r) - m (1 + 1/r + d/r))
"""

from dataclasses import dataclass
from typing import Literal, get_args

from handlers.practice.composition import FOODS
from handlers.practice.density import BRAN_LOOSE, bran_g, bran_ml
from handlers.practice.figure import Figure, Reckoning, Refused, number, positive, within
from handlers.practice.units import KILOGRAMS, LITRES

Recipe = Literal["moisture", "cups"]

RECIPES: tuple[Recipe, ...] = get_args(Recipe)

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
    "trade recipes: 30 to 40 %; a squeezed ball holds, crumbles and does not drip",
    "common practice",
    0.30,
    0.40,
)
WATER_TO_CULTURE = Figure(
    "water to one part of culture and one of molasses",
    100,
    "parts by volume",
    "the stated norm, 1:1:100; recipes run from 1:30 to 1:128",
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
CUPS_WATER = Figure(
    "water in the recipe by cups",
    10 * LITRES["us_cup"] / (10 * KILOGRAMS["pound"]),
    "L to 1 kg of bran",
    "an educational site, 2024: 10 US cups to 10 lb; it says 30 % and reaches 41 %",
    "common practice",
)
CUPS_CULTURE = Figure(
    "culture, and molasses, in the recipe by cups",
    0.024 / (10 * KILOGRAMS["pound"]),
    "L to 1 kg of bran",
    "the same: 24 mL of each to 10 lb",
    "common practice",
)
DRIED = Figure(
    "moisture when dried for keeping",
    0.10,
    "of the mass",
    "IRRI on grain: 13 % or less for 8 to 12 months, 9 % for years; between the two",
    "published",
    0.09,
    0.13,
)
FERMENT_DAYS = Figure(
    "airtight ferment of a batch",
    14,
    "d",
    "recipes: two weeks at least, up to a month",
    "common practice",
    14,
    30,
)
KEEPS_DRY = Figure(
    "dried starter keeps",
    12,
    "months",
    "Footer, Bokashi Composting, 2013, ch. 4; a leaflet says two years",
    "published",
    12,
    24,
)
KEEPS_MOIST = Figure(
    "moist starter keeps airtight",
    12,
    "months",
    "Footer, Bokashi Composting, 2013, ch. 4: more than a year",
    "published",
)
HOTTEST = Figure(
    "warmest liquid that the culture bears", 43, "°C", "a US grower's recipe: 110 °F", "published"
)

_SAY = "say how much bran there is, such as mass=4.5kg"
_ADVICE = (
    "Use water that has stood open for a day, no warmer than your hand bears; seal it airtight."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Batch(Reckoning):
    """One batch: what goes in, how moist it gets, and what it comes to when dried."""

    recipe: Recipe
    bran_kg: float
    bran_l: float
    water_ml: float
    culture_ml: float
    molasses_ml: float
    moisture: float
    wet_kg: float
    yield_kg: float
    ferment_days: float
    keeps_months: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Mended(Reckoning):
    """What brings a batch to the moisture for packing: water, or dry bran; one of them is 0."""

    add_water_ml: float
    add_bran_kg: float
    moisture: float


def batch(
    *,
    mass_kg: float | None = None,
    volume_l: float | None = None,
    recipe: Recipe = "moisture",
    goal: float | None = None,
) -> Batch:
    """A batch from so much dry bran, by the recipe; `goal` is the moisture to reach (a share)."""
    bran = _bran_kg(mass_kg, volume_l)
    goal = PACKED.value if goal is None else goal
    if recipe == "cups":
        water, culture = bran * CUPS_WATER.value, bran * CUPS_CULTURE.value
        used: tuple[Figure, ...] = (CUPS_WATER, CUPS_CULTURE)
    else:
        water = _water_l(bran, goal)
        culture = water / WATER_TO_CULTURE.value
        used = (PACKED, WATER_TO_CULTURE)
    wet, moisture = _mixed(bran, water, culture)
    dry = wet * (1 - moisture) / (1 - DRIED.value)
    millilitres = culture * 1000
    return Batch(
        recipe=recipe,
        bran_kg=bran,
        bran_l=bran_ml(bran * 1000) / 1000,
        water_ml=water * 1000,
        culture_ml=millilitres,
        molasses_ml=millilitres,
        moisture=moisture,
        wet_kg=wet,
        yield_kg=dry,
        ferment_days=FERMENT_DAYS.value,
        keeps_months=KEEPS_DRY.value,
        steps=(
            f"{number(bran)} kg of bran hold {number(BRAN_MOISTURE.value * 100)} % water",
            f"with {number(water)} L of water and {number(millilitres)} mL each of culture and "
            f"molasses: {number(wet)} kg at {number(moisture * 100)} %",
            f"dried to {number(DRIED.value * 100)} %: {number(dry)} kg",
        ),
        figures=(
            BRAN_MOISTURE,
            BRAN_LOOSE,
            *used,
            MOLASSES_DENSITY,
            MOLASSES_WATER,
            DRIED,
            FERMENT_DAYS,
            KEEPS_DRY,
            KEEPS_MOIST,
            HOTTEST,
        ),
        lines=(
            f"{number(bran, 2)} kg of bran, {number(water, 2)} L of water, "
            f"{number(millilitres, 2)} mL of culture and as much molasses "
            f"(moisture {moisture * 100:.0f} %).",
            _ADVICE,
            f"After {FERMENT_DAYS.value:.0f} days at least, dry it: about {number(dry, 2)} kg, "
            f"good for {KEEPS_DRY.value:.0f} months dry, dark and cool.",
        ),
    )


def mend(mass_kg: float, moisture: float, *, goal: float | None = None) -> Mended:
    """What a moist batch of that mass and moisture wants to be right for packing."""
    positive(mass_kg, 5000, what="A batch", unit="kg", advice=_SAY)
    goal = PACKED.value if goal is None else goal
    within(moisture, 0, 0.95, what="Moisture", unit="", advice="give it as a share or in %")
    _reachable(goal)
    water = bran = 0.0
    if moisture < min(PACKED.low or goal, goal):
        water = mass_kg * (goal - moisture) / (1 - goal)
        said = f"Too dry: work in {number(water * 1000, 2)} mL of water."
    elif moisture > max(PACKED.high or goal, goal):
        bran = mass_kg * (moisture - goal) / (goal - BRAN_MOISTURE.value)
        said = f"Too wet: work in {number(bran, 2)} kg of dry bran."
    else:
        said = "It is right as it is."
    return Mended(
        add_water_ml=water * 1000,
        add_bran_kg=bran,
        moisture=goal if water or bran else moisture,
        steps=(
            f"{number(mass_kg)} kg from {number(moisture * 100)} % to {number(goal * 100)} %: "
            f"{number(water)} L of water, or {number(bran)} kg of bran",
        ),
        figures=(PACKED, BRAN_MOISTURE),
        lines=(said, "It should hold when squeezed, crumble when poked, and not drip."),
    )


def _bran_kg(mass_kg: float | None, volume_l: float | None) -> float:
    if (mass_kg is None) == (volume_l is None):
        raise Refused("Say how much bran there is, as a weight or as a volume: one of the two.")
    kilograms = bran_g((volume_l or 0) * 1000) / 1000 if mass_kg is None else mass_kg
    return positive(kilograms, 5000, what="A batch", unit="kg", advice=_SAY)


def _reachable(goal: float) -> None:
    if not BRAN_MOISTURE.value < goal <= 0.7:
        raise Refused(
            "The moisture to reach lies between that of dry bran and 70 %: 35 % is usual."
        )


def _water_l(bran_kg: float, goal: float) -> float:
    _reachable(goal)
    share, thick = 1 / WATER_TO_CULTURE.value, MOLASSES_DENSITY.value
    wet = 1 + share + MOLASSES_WATER.value * thick * share
    return bran_kg * (goal - BRAN_MOISTURE.value) / (wet - goal * (1 + share + thick * share))


def _mixed(bran_kg: float, water_l: float, culture_l: float) -> tuple[float, float]:
    """Mass in kg and moisture of the mix; culture counts as water, molasses as itself."""
    molasses = culture_l * MOLASSES_DENSITY.value
    wet = bran_kg + water_l + culture_l + molasses
    water = bran_kg * BRAN_MOISTURE.value + water_l + culture_l + molasses * MOLASSES_WATER.value
    return wet, water / wet
