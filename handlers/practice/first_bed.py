"""The first bed of starter, strewn on the floor of an empty bin before any scraps."""

from dataclasses import dataclass, fields

from handlers.practice import density
from handlers.practice.dose import SPOON, Dose, weighed
from handlers.practice.figure import Figure, Reckoning, number, positive
from handlers.practice.tablespoons import SPOON_ML, Spoon, spoken

FIRST_BED = Figure(
    "starter on the floor of an empty bucket",
    2,
    "tablespoon",
    "a US restaurant-scrap programme: one spoon; a US firm: half a cup",
    "common practice",
    1,
    8,
)
FIRST_BED_BIN = Figure("size of that bucket", 18.9, "L", "5 US gal", "derived", 15, 23)


@dataclass(frozen=True, slots=True, kw_only=True)
class FirstBed(Reckoning):
    """Starter strewn on the floor of an empty bin."""

    starter_ml: float
    starter_g: float
    tablespoons: float
    tablespoon: Spoon


def first_bed(*, capacity_l: float | None = None, tablespoon: Spoon = "metric") -> FirstBed:
    """Starter for the floor of an empty bin; the floor grows as capacity to the power of 2/3."""
    capacity = FIRST_BED_BIN.value if capacity_l is None else capacity_l
    positive(capacity, 1500, what="A bin", unit="L", advice="give what the bin holds in litres")
    ordinary = FIRST_BED.value * SPOON.value
    millilitres = ordinary * (capacity / FIRST_BED_BIN.value) ** (2 / 3)
    grams, count = density.bran_g(millilitres), millilitres / SPOON_ML[tablespoon]
    said = f"{spoken(count, tablespoon)} of starter ({number(millilitres, 2)} mL)"
    return FirstBed(
        starter_ml=millilitres,
        starter_g=grams,
        tablespoons=count,
        tablespoon=tablespoon,
        steps=(
            f"{number(ordinary)} mL for a bin of {number(FIRST_BED_BIN.value)} L, and for "
            f"{number(capacity)} L by its floor: {number(millilitres)} mL",
            weighed(millilitres, grams),
        ),
        figures=(FIRST_BED, FIRST_BED_BIN, density.BRAN_LOOSE),
        lines=(f"Strew {said} on the floor of the empty bin.",),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class BedAndDose(Dose):
    """The first layer of an empty bin, and the bed of starter under it."""

    first_bed_ml: float
    first_bed_g: float
    first_bed_tablespoons: float


def with_bed(layer: Dose, capacity_l: float | None = None) -> BedAndDose:
    """A layer's dose with the bed that goes under it in an empty bin."""
    bed = first_bed(capacity_l=capacity_l, tablespoon=layer.tablespoon)
    own = {field.name: getattr(layer, field.name) for field in fields(layer)}
    own |= {name: getattr(bed, name) + own[name] for name in ("steps", "figures", "lines")}
    return BedAndDose(
        **own,
        first_bed_ml=bed.starter_ml,
        first_bed_g=bed.starter_g,
        first_bed_tablespoons=bed.tablespoons,
    )
