"""How much ferment a bed takes in a year: the usual dressing, held against nitrogen.

Load in kg N/ha = kg/m² x nitrogen % / 100 x 10 000. The ceilings are those of manure law, which
binds no home bed and is a sensible bound all the same. Only a part of the nitrogen is free in the
first year, so that within the bound no more is free than vegetables need.
"""

from dataclasses import dataclass

from handlers.practice.composition import CONTENT, NITROGEN_MIXED, Content, content
from handlers.practice.days import PLANT, high_days, low_days
from handlers.practice.figure import Figure, Reckoning, Refused, number, positive, within
from handlers.practice.kinds import Shares
from handlers.practice.units import KILOGRAMS, SQUARE_METRES

_HECTARE = SQUARE_METRES["hectare"]
_PER_1000_FT2 = KILOGRAMS["pound"] / (1000 * SQUARE_METRES["square_foot"]) * _HECTARE

DRESSING = Figure(
    "dressing of a bed",
    5 / (32 * SQUARE_METRES["square_foot"]),
    "kg/m²",
    "5 kg on 4 by 8 ft",
    "common practice",
)
TOPSOIL = Figure("depth that it is worked into", 0.15, "m", "", "common practice")
SOIL_DENSITY = Figure(
    "density of garden soil",
    1330,
    "kg/m³",
    "an acre furrow slice of 2 000 000 lb is 1324; NRCS: 1100 in clay to 1600 in sand",
    "derived",
    1100,
    1600,
)
LIMIT = Figure(
    "nitrogen in manure a year, at most",
    170,
    "kg N/ha",
    "Directive 91/676/EEC, Annex III",
    "published",
)
LIMIT_FIELD = Figure(
    "the same in all organic manures on one field",
    250,
    "kg N/ha",
    "UK nitrate vulnerable zones (Farming & Water Scotland)",
    "published",
)
GARDEN_NEED = Figure(
    "nitrogen that a vegetable garden needs in a year",
    2 * _PER_1000_FT2,
    "kg N/ha",
    "2 lb per 1000 ft²: Colorado State GardenNotes 711; University of Maryland Extension",
    "published",
    0.5 * _PER_1000_FT2,
    3 * _PER_1000_FT2,
)
FREE = Figure(
    "share of the nitrogen that is free in the first year",
    0.39,
    "of the nitrogen",
    "Ebid et al. 2007, compost of kitchen garbage; biowaste in the field 5 to 15 %",
    "published",
    0.05,
    0.5,
)

_SAY = "say the bed's area, such as 4x8ft or 3 m2"


@dataclass(frozen=True, slots=True, kw_only=True)
class Bed(Reckoning):
    """What a bed takes; shares and loads count what it already had this year."""

    area_m2: float
    mass_kg: float
    """What to give now: as asked, or the usual dressing as far as the limit lets it."""
    most_kg: float
    """What the limit still lets it take."""
    nitrogen_g: float
    nitrogen_kg_ha: float
    limit_kg_ha: float
    used_share: float
    field_limit_kg_ha: float
    """The limit for all organic manures on one field."""
    free_kg_ha: float
    """Nitrogen that plants can take up in the first year."""
    wait_days: float
    """Usual days before planting there."""
    soil_share: float
    """Ferment as a share of the topsoil's mass."""


def bed(
    area_m2: float,
    *,
    mass_kg: float | None = None,
    had_kg: float = 0.0,
    had_nitrogen_g: float = 0.0,
    materials: Shares | None = None,
    depth_m: float | None = None,
    limit_kg_ha: float | None = None,
) -> Bed:
    """Ferment for a bed of that area, which already had `had_kg` of the same in twelve months.

    `had_nitrogen_g` is what it had besides, of another make-up; `limit_kg_ha` is what a group takes
    instead of the limit for manure.
    """
    positive(area_m2, 10 * _HECTARE, what="A bed", unit="m²", advice=_SAY)
    within(had_kg, 0, 1e6, what="What it had", unit="kg", advice="give what it had this year")
    within(had_nitrogen_g, 0, 1e9, what="What it had", unit="g", advice="give grams of nitrogen")
    depth = TOPSOIL.value if depth_m is None else depth_m
    positive(depth, 1, what="Working in", unit="m deep", advice="15 cm is usual")
    limit = LIMIT.value if limit_kg_ha is None else limit_kg_ha
    positive(limit, 500, what="The limit", unit="kg N/ha", advice="170 and 250 are published")
    made = content(materials)
    percent = made.nitrogen
    had_g = had_kg * percent * 10 + had_nitrogen_g
    most = max(0.0, limit * area_m2 / _HECTARE * 1000 - had_g) / (percent * 10)
    usual = DRESSING.value * area_m2
    mass = min(usual, most) if mass_kg is None else mass_kg
    if mass_kg is not None:
        positive(mass_kg, 1e6, what="The ferment", unit="kg", advice="give what goes on this bed")
    soil = area_m2 * depth * SOIL_DENSITY.value
    if mass + had_kg > soil:
        raise Refused("That is more ferment than the bed has soil: check its area and the weights.")
    grams = mass * percent * 10 + had_g
    load = grams / 1000 / area_m2 * _HECTARE
    given = f"({number(mass)} + {number(had_kg)} kg it had)" if had_kg else f"{number(mass)} kg"
    besides = f" + {number(had_nitrogen_g)} g that it had" if had_nitrogen_g else ""
    return Bed(
        area_m2=area_m2,
        mass_kg=mass,
        most_kg=most,
        nitrogen_g=grams,
        nitrogen_kg_ha=load,
        limit_kg_ha=limit,
        used_share=load / limit,
        field_limit_kg_ha=LIMIT_FIELD.value,
        free_kg_ha=load * FREE.value,
        wait_days=PLANT.value,
        soil_share=(mass + had_kg) / soil,
        caution="rules",
        chosen=("limit_kg_ha",),
        steps=(
            f"{number(area_m2)} m² x {number(DRESSING.value)} kg/m² = {number(usual)} kg",
            f"{given} x {number(percent)} % nitrogen{besides} = {number(grams)} g",
            f"{number(grams)} g on {number(area_m2)} m² = {number(load)} kg N/ha, "
            f"{load / limit:.0%} of {number(limit)}",
            f"about {number(load * FREE.value, 2)} are free in the first year; vegetables need "
            f"{number(GARDEN_NEED.value, 2)} (2 lb per 1000 ft²)",
        ),
        figures=(DRESSING, _nitrogen(made), LIMIT, LIMIT_FIELD, FREE, GARDEN_NEED, PLANT),
        lines=_said(mass, most, load, limit, depth, given=mass_kg is not None),
    )


def _nitrogen(made: Content) -> Figure:
    if made == CONTENT["mixed"]:
        return NITROGEN_MIXED
    return Figure(
        "nitrogen in these scraps", made.nitrogen, "% of wet mass", made.source, made.standing
    )


def _said(  # each figure of the answer once
    mass: float, most: float, load: float, limit: float, depth: float, *, given: bool
) -> tuple[str, ...]:
    share = f"{load:.0f} kg N/ha in twelve months, {load / limit:.0%} of the limit for manure"
    if mass == 0:
        return (f"This bed has had enough for the year: {share}.",)
    lines = [f"{number(mass, 2)} kg, worked into the top {number(depth * 100, 2)} cm: {share}."]
    if given and mass > most * (1 + 1e-9):
        lines.append(f"That is too much: give it at most {number(most, 2)} kg this year.")
    return (*lines, f"Wait {low_days(PLANT)} to {high_days(PLANT)} days before planting.")
