"""How much room scraps take: loose, as people say them, and pressed, as the bin holds them.

Loose density is the one a said volume has and a fresh layer has before it is pressed; the spoon
habit of `dose` goes by it. Pressed density says how full a bin is. Shares are by volume, since
people judge "mostly" by eye, so densities of a blend add up by share.
"""

from collections.abc import Mapping

from handlers.practice.figure import Figure, number
from handlers.practice.kinds import KINDS, Kind, Shares

_CUPS = "USDA SR28, weight of one US cup"


def _loose(
    kind: str, value: float, low: float, high: float, source: str, published: bool = True
) -> Figure:
    return Figure(
        f"loose density, {kind}",
        value,
        "kg/L",
        source,
        "derived" if published else "common practice",
        low,
        high,
    )


LOOSE: Mapping[Kind, Figure] = {
    "vegetable": _loose("vegetable", 0.45, 0.24, 0.76, f"{_CUPS}: 57 g to 180 g"),
    "fruit": _loose("fruit", 0.60, 0.46, 0.72, f"{_CUPS}: 109 to 170 g"),
    "grain": _loose("grain", 0.45, 0.15, 0.79, f"{_CUPS}: 35 to 186 g"),
    "pulse": _loose("pulse", 0.75, 0.60, 0.80, f"{_CUPS}: beans 177 g"),
    "meat": _loose("meat", 0.59, 0.50, 0.90, f"{_CUPS}: chicken 140 g"),
    "fish": _loose("fish", 0.575, 0.50, 0.90, f"{_CUPS}: salmon 136 g"),
    "dairy": _loose("dairy", 0.56, 0.47, 1.04, f"{_CUPS}: cheddar 132 g, yogurt 245 g"),
    "egg": _loose("egg", 0.575, 0.50, 0.70, f"{_CUPS}: egg 136 g"),
    "oil": _loose(
        "oil",
        0.899,
        0.89,
        0.96,
        "US EPA volume-to-weight factors, 2016: 7.5 lb/US gal",
    ),
    "bone": _loose("bone", 0.46, 0.25, 0.60, "", published=False),
    "cooked": _loose("cooked", 0.60, 0.45, 0.90, "", published=False),
    "coffee": _loose("coffee", 0.45, 0.40, 0.55, "", published=False),
    "garden": _loose(
        "garden",
        0.148,
        0.10,
        0.30,
        "US EPA volume-to-weight factors, 2016: 250 lb/yd³",
    ),
    "paper": _loose("paper", 0.08, 0.04, 0.15, "", published=False),
    "liquid": _loose("liquid", 1.0, 0.98, 1.05, f"{_CUPS}: coffee 237 g, milk 244 g"),
    "mixed": _loose(
        "mixed scraps",
        0.455,
        0.235,
        0.60,
        "US EPA volume-to-weight factors, 2016: 3.8 lb/US gal, 396 lb/yd³",
    ),
}
"""Loose density by kind, in kg/L."""

PRESSED_MIXED = Figure(
    "pressed density, mixed scraps in the bin",
    0.70,
    "kg/L",
    "a community garden's full pails come to 0.72",
    "common practice",
    0.60,
    0.90,
)
DENSEST = Figure(
    "density that pressing cannot pass",
    1.0,
    "kg/L",
    "scraps are mostly water; USDA SR28: milk 1.03, butter 0.96, oil 0.91",
    "derived",
    0.9,
    1.05,
)
SETTLING = Figure(
    "loss of volume as a layer settles and drains",
    0.15,
    "of its pressed volume",
    "",
    "common practice",
    0.0,
    0.30,
)
BRAN_LOOSE = Figure(
    "loose density of starter bran",
    0.058 / 0.2365882365,
    "kg/L",
    "USDA SR28 20077: wheat bran, 58 g to the US cup",
    "derived",
    0.20,
    0.50,
)

MIXED: Shares = {"mixed": 1.0}


def shares(materials: Shares | None) -> dict[Kind, float]:
    """The make-up with shares that add up to 1; scraps of no stated kind are mixed."""
    if not materials:
        return dict(MIXED)
    known = {kind: share for kind, share in materials.items() if share > 0}
    total = sum(known.values())
    return {kind: share / total for kind, share in known.items()} if total else dict(MIXED)


def loose_figures(materials: Shares | None) -> tuple[Figure, ...]:
    """The densities that a blend is made of."""
    made_of = shares(materials)
    return tuple(LOOSE[kind] for kind in KINDS if kind in made_of)


def loose_kg_l(materials: Shares | None) -> float:
    """Density of a blend as it is said and freshly laid, in kg/L."""
    return sum([LOOSE[kind].value * share for kind, share in shares(materials).items()])


def pressed_kg_l(materials: Shares | None) -> float:
    """Density of a blend as the bin holds it, in kg/L: pressed by as much as mixed scraps are."""
    loose = loose_kg_l(materials)
    pressing = PRESSED_MIXED.value / LOOSE["mixed"].value
    return min(loose * pressing, max(DENSEST.value, loose))


def mass_kg(volume_l: float, materials: Shares | None = None) -> float:
    """Mass in kg of scraps whose loose volume was said."""
    return volume_l * loose_kg_l(materials)


def loose_volume_l(mass_kg: float, materials: Shares | None = None) -> float:
    """Loose volume in L of scraps whose mass was said."""
    return mass_kg / loose_kg_l(materials)


def in_bin_l(mass_kg: float, materials: Shares | None = None) -> float:
    """Room in L that scraps take in the bin, pressed and settled."""
    return mass_kg / pressed_kg_l(materials) * (1 - SETTLING.value)


def in_bin_step(mass_kg: float, materials: Shares | None = None) -> str:
    """The step from a mass to the room that it takes in the bin."""
    return (
        f"{number(mass_kg)} kg at {number(pressed_kg_l(materials))} kg/L, settled by "
        f"{number(SETTLING.value * 100)} %, are {number(in_bin_l(mass_kg, materials))} L"
    )


def capacity_kg(capacity_l: float, materials: Shares | None = None) -> float:
    """Mass in kg of scraps that a bin of so many litres takes, pressed and settled."""
    return capacity_l * pressed_kg_l(materials) / (1 - SETTLING.value)


def bran_g(volume_ml: float) -> float:
    """Mass in g of a volume of loose starter bran."""
    return volume_ml * BRAN_LOOSE.value


def bran_ml(mass_g: float) -> float:
    """Volume in mL of a mass of loose starter bran."""
    return mass_g / BRAN_LOOSE.value
