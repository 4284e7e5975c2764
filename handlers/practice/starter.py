"""Making the starter: a batch by a recipe, fermented airtight, then dried; and mending a made."""

from dataclasses import dataclass
from datetime import date

from handlers.practice.days import after
from handlers.practice.density import bran_g, bran_ml
from handlers.practice.figure import (
    Figure,
    Reckoning,
    Refused,
    number,
    positive,
    spoons,
    within,
)
from handlers.practice.recipes import (
    BRAN_MOISTURE,
    FIGURES,
    MOLASSES_DENSITY,
    PACKED,
    RECIPE_NAMES,
    RECIPES,
    Mix,
    Recipe,
    mix,
    reachable,
)
from handlers.practice.units import LITRES

DRIED = Figure(
    "moisture when dried for keeping",
    0.10,
    "of the mass",
    "IRRI on grain: 13 % or less for 8 to 12 months, 9 % for longer",
    "published",
    0.09,
    0.13,
)
FERMENT_DAYS = Figure(
    "airtight ferment of a batch",
    14,
    "d",
    "",
    "common practice",
    14,
    30,
)
DRY_DAYS = Figure(
    "drying in a thin layer, turned daily",
    3,
    "d",
    "Footer, Bokashi Composting, 2013, ch. 4: a few days",
    "published",
    2,
    5,
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

_SAY = "say how much bran there is, such as 4.5 kg"
_SQUEEZE = "it should hold when squeezed, crumble when poked, and not drip"


@dataclass(frozen=True, slots=True)
class OtherRecipe:
    """What another recipe takes for the same bran."""

    recipe: Recipe
    says: str
    molasses_ml: float
    culture_ml: float
    water_ml: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Mended(Reckoning):
    """What brings a batch to the moisture for packing: water, or dry bran; one of them is 0."""

    add_water_ml: float
    add_bran_kg: float
    moisture: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Batch(Reckoning):
    """One batch: what goes in, how moist it gets, and what it comes to when dried."""

    recipe: Recipe
    says: str
    bran_kg: float
    bran_l: float
    water_ml: float
    culture_ml: float
    molasses_ml: float
    culture_g: float
    molasses_g: float
    bran_cups: float
    water_cups: float
    culture_tablespoons: float
    molasses_tablespoons: float
    """US cups and tablespoons."""
    moisture: float
    moisture_low: float
    moisture_high: float
    """The range of the squeeze test."""
    wet_kg: float
    water_lost_kg: float
    """Water that drying drives off."""
    yield_kg: float
    ferment_days: float
    dry_days: float
    keeps_months: float
    ferment_until: date | None = None
    dry_by: date | None = None
    keeps_until: date | None = None
    add_water_ml: float | None = None
    add_bran_kg: float | None = None
    """What mends it, where it turned out drier or wetter than it should be."""
    others: tuple[OtherRecipe, ...] = ()


def batch(
    *,
    mass_kg: float | None = None,
    volume_l: float | None = None,
    recipe: Recipe = "tablespoon",
    goal: float | None = None,
    mixed: date | None = None,
    ferment_days: int | None = None,
    found: float | None = None,
    water_l: float | None = None,
) -> Batch:
    """A batch from so much dry bran, by the recipe; `goal` is the moisture to reach (a share).

    With the day it is `mixed` it says when it is ripe, dry, and too old; with the moisture that
    was `found` in it, or the water that went into it, what mends it.
    """
    bran = _bran_kg(mass_kg, volume_l)
    goal = PACKED.value if goal is None else goal
    made = mix(bran, recipe, goal, water_l)
    if water_l is not None and found is None:
        found = made.moisture
    dry = made.wet_kg * (1 - made.moisture) / (1 - DRIED.value)
    others = tuple(_other(bran, each, goal) for each in RECIPES[:2] if each != recipe)
    mended = None if found is None else _mended(made, found, goal)
    sealed = FERMENT_DAYS.value if ferment_days is None else ferment_days
    within(sealed, 7, 120, what="The ferment", unit="days", advice="two weeks are usual")
    ripe = after(mixed, int(sealed)) if mixed else None
    dried = after(ripe, int(DRY_DAYS.value)) if ripe else None
    return Batch(
        recipe=recipe,
        says=RECIPE_NAMES[recipe],
        bran_kg=bran,
        bran_l=bran_ml(bran * 1000) / 1000,
        water_ml=made.water * 1000,
        culture_ml=made.culture * 1000,
        molasses_ml=made.molasses * 1000,
        culture_g=made.culture * 1000,
        molasses_g=made.molasses * 1000 * MOLASSES_DENSITY.value,
        bran_cups=bran_ml(bran * 1000) / 1000 / LITRES["us_cup"],
        water_cups=made.water / LITRES["us_cup"],
        culture_tablespoons=made.culture / LITRES["us_tablespoon"],
        molasses_tablespoons=made.molasses / LITRES["us_tablespoon"],
        moisture=made.moisture,
        moisture_low=PACKED.low or 0.0,
        moisture_high=PACKED.high or 1.0,
        wet_kg=made.wet_kg,
        water_lost_kg=made.wet_kg - dry,
        yield_kg=dry,
        ferment_days=sealed,
        dry_days=DRY_DAYS.value,
        keeps_months=KEEPS_DRY.value,
        ferment_until=ripe,
        dry_by=dried,
        keeps_until=after(dried, round(KEEPS_DRY.value * 365 / 12)) if dried else None,
        add_water_ml=mended.add_water_ml if mended else None,
        add_bran_kg=mended.add_bran_kg if mended else None,
        others=others,
        caution="mould",
        chosen=("recipe",),
        steps=(
            f"{number(bran)} kg of bran hold {number(BRAN_MOISTURE.value * 100)} % water",
            f"+ {number(made.water)} L of water, {number(made.culture * 1000)} mL of culture, "
            f"{number(made.molasses * 1000)} mL of molasses = {number(made.wet_kg)} kg at "
            f"{number(made.moisture * 100)} %",
            f"dried to {number(DRIED.value * 100)} %: {number(dry)} kg",
        ),
        figures=(PACKED, BRAN_MOISTURE, *FIGURES[recipe], DRIED, FERMENT_DAYS, KEEPS_DRY),
        lines=(
            f"By {RECIPE_NAMES[recipe]}: {number(bran, 2)} kg of bran, {_ml(made.molasses)} of "
            f"molasses, {_ml(made.culture)} of culture and {_litres(made.water)} of water "
            f"({made.moisture:.0%} moist).",
            _household(made),
            *(
                f"Or by {o.says}: {number(o.molasses_ml, 2)} mL of molasses, "
                f"{number(o.culture_ml, 2)} mL of culture."
                for o in others
            ),
            *(mended.lines if mended else (f"Squeeze it: {_SQUEEZE}.",)),
            _seasoned(sealed, ripe, dry),
        ),
    )


def mend(mass_kg: float, moisture: float, *, goal: float | None = None) -> Mended:
    """What a moist batch of that mass and moisture wants to be right for packing."""
    positive(mass_kg, 5000, what="A batch", unit="kg", advice=_SAY)
    goal = PACKED.value if goal is None else goal
    within(moisture, 0, 0.95, what="Moisture", unit="", advice="give it as a share or in %")
    reachable(goal)
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
        caution="mould",
        steps=(
            f"{number(mass_kg)} kg from {number(moisture * 100)} % to {number(goal * 100)} %: "
            f"{number(water)} L of water, or {number(bran)} kg of bran",
        ),
        figures=(PACKED, BRAN_MOISTURE),
        lines=(said, f"Squeeze it: {_SQUEEZE}."),
    )


def _mended(made: Mix, found: float, goal: float) -> Mended:
    within(found, 0, 0.95, what="Moisture", unit="", advice="give it as a share or in %")
    return mend(made.wet_kg * (1 - made.moisture) / (1 - found), found, goal=goal)


def _other(bran_kg: float, recipe: Recipe, goal: float) -> OtherRecipe:
    made = mix(bran_kg, recipe, goal)
    said = RECIPE_NAMES[recipe]
    return OtherRecipe(recipe, said, made.molasses * 1000, made.culture * 1000, made.water * 1000)


def _seasoned(sealed: float, ripe: date | None, dry_kg: float) -> str:
    until = f"until {ripe}" if ripe else f"{sealed:.0f} days at least"
    return (
        f"Keep it airtight {until}, then dry it: about {number(dry_kg, 2)} kg, good for "
        f"{KEEPS_DRY.value:.0f} months dry, dark and cool."
    )


def _ml(litres: float) -> str:
    return f"{number(litres * 1000, 2)} mL"


def _litres(litres: float) -> str:
    return _ml(litres) if litres < 1 else f"{number(litres, 2)} L"


def _household(made: Mix) -> str:
    """The same in the measures of a kitchen."""
    cups = number(bran_ml(made.bran * 1000) / 1000 / LITRES["us_cup"], 2)
    water = number(made.water / LITRES["us_cup"], 2)
    molasses, culture = (_spoonfuls(litres) for litres in (made.molasses, made.culture))
    return (
        f"In US measures: {cups} cups of bran, {molasses} of molasses, {culture} of culture, "
        f"{water} cups of water."
    )


def _spoonfuls(litres: float) -> str:
    cups, spoonfuls = litres / LITRES["us_cup"], litres / LITRES["us_tablespoon"]
    if spoonfuls >= 12:
        return f"{number(cups, 2)} cups"
    word, count = "tablespoon", spoonfuls
    if spoonfuls < 0.75:
        word, count = "teaspoon", litres / LITRES["us_teaspoon"]
    return f"{spoons(count)} {word}{'s' if count > 1.1 else ''}"


def _bran_kg(mass_kg: float | None, volume_l: float | None) -> float:
    if (mass_kg is None) == (volume_l is None):
        raise Refused("Say how much bran there is, as a weight or as a volume: one of the two.")
    kilograms = bran_g((volume_l or 0) * 1000) / 1000 if mass_kg is None else mass_kg
    return positive(kilograms, 5000, what="A batch", unit="kg", advice=_SAY)
