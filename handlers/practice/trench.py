"""How much ground a bin of ferment wants: a trench, or a tub of soil where there is no garden.

All the soil that was dug goes back: two parts of it or more to one of ferment, one part stirred
in and the rest on top as cover. The ferment alone would lie `bed` deep in the trench:

    bed = the lesser of depth / 2 and depth - cover        length = V / (width x bed)

What it takes up stands above the ground, as high as that bed, until it settles.
"""

from dataclasses import dataclass

from handlers.practice import density
from handlers.practice.figure import Figure, Reckoning, Refused, number, positive, within
from handlers.practice.kinds import Shares

SOIL_PARTS = Figure(
    "soil to one part of ferment",
    2,
    "parts by volume",
    "a Canadian supplier and a practitioner say 2; a Norwegian leaflet (NORUT) 1",
    "published",
    1,
    2,
)
STIRRED_IN = Figure(
    "soil stirred in with one part of ferment",
    1,
    "parts by volume",
    "a Norwegian leaflet (NORUT) says half and half; stronger is not advised",
    "published",
    1,
    2,
)
DEPTH = Figure(
    "depth of the trench",
    0.25,
    "m",
    "",
    "common practice",
    0.20,
    0.30,
)
DEPTH_ANIMALS = Figure(
    "depth of the trench where animals dig",
    0.45,
    "m",
    "",
    "common practice",
    0.40,
    0.45,
)
WIDTH = Figure(
    "width of the trench",
    0.20,
    "m",
    "Footer 2013 ch. 7: one shovel width, 8 in",
    "published",
    0.20,
    0.30,
)
COVER = Figure(
    "soil over the mix",
    0.125,
    "m",
    "a US firm says 4 to 6 in, a practitioner at least 15 cm",
    "published",
    0.10,
    0.20,
)
COVER_ANIMALS = Figure(
    "soil over the mix where animals dig", 0.30, "m", "a supplier: 12 in", "published", 0.25, 0.35
)
COVER_UNFERMENTED = Figure(
    "soil over scraps that did not ferment or grew mould",
    0.20,
    "m",
    "",
    "common practice",
    0.20,
    0.30,
)
DEPTH_SPOILT = Figure("depth at which what is given up is buried", 0.30, "m", "", "common practice")
TUB_COVER = Figure("soil on top in a tub", 0.25, "of the mix", "", "common practice", 0.15, 0.35)
TUB_DAYS = Figure(
    "days in a tub before planting",
    28,
    "d",
    "a flat dweller: 4 weeks, 6 the first time; a Canadian supplier: 2 to 4",
    "published",
    14,
    42,
)

LEAST_BED_M = 0.1
"""How deep the mix lies under its cover at least, where nobody said how deep to dig."""

LONGEST_M = 200.0
"""No garden has a longer trench."""

_SAY = "say how much ferment there is, at most a few bins at a time"


@dataclass(frozen=True, slots=True, kw_only=True)
class Trench(Reckoning):
    """A trench; `soil_l` is all that was dug, `stirred_l` of it goes in and the rest on top."""

    volume_l: float
    length_m: float
    depth_m: float
    width_m: float
    soil_l: float
    stirred_l: float
    mix_l: float
    """Ferment and all the soil together, before it settles."""
    cover_m: float
    mound_m: float
    soil_parts: float
    """Parts of soil to one of ferment, as it comes out."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Tub(Reckoning):
    """A tub in which ferment turns to soil; `cover_l` of plain soil goes on top of the mix."""

    volume_l: float
    soil_l: float
    mix_l: float
    cover_l: float
    cover_share: float
    """Soil on top as a share of the mix's depth."""
    tub_l: float
    ready_days: float


@dataclass(frozen=True, slots=True)
class Ferment:
    """So many litres of ferment, and how that was reckoned."""

    litres: float
    steps: tuple[str, ...] = ()
    figures: tuple[Figure, ...] = ()


def ferment(
    *,
    volume_l: float | None = None,
    mass_kg: float | None = None,
    bins: float = 1,
    materials: Shares | None = None,
) -> Ferment:
    """The ferment in so many bins, each of that volume, or of that mass, settled."""
    if (volume_l is None) == (mass_kg is None):
        raise Refused("Say how much ferment there is, as a weight or as a volume: one of the two.")
    positive(bins, 100, what="The number", unit="bins", advice="say how many bins are buried")
    steps: tuple[str, ...] = ()
    figures: tuple[Figure, ...] = ()
    if mass_kg is not None:
        positive(mass_kg, 5000, what="A bin's contents", unit="kg", advice=_SAY)
        volume_l = density.in_bin_l(mass_kg, materials)
        steps = (density.in_bin_step(mass_kg, materials),)
        figures = (density.PRESSED_MIXED, density.SETTLING)
    assert volume_l is not None
    litres = positive(volume_l * bins, 5000, what="The ferment", unit="L", advice=_SAY)
    if bins != 1:
        steps += (f"{number(bins)} bins x {number(volume_l)} L = {number(litres)} L",)
    return Ferment(litres, steps, figures)


def trench(
    volume_l: float,
    *,
    depth_m: float | None = None,
    width_m: float | None = None,
    cover_m: float | None = None,
    animals: bool = False,
    soil_parts: float | None = None,
    usual_depth_m: float | None = None,
) -> Trench:
    """The trench for so many litres of ferment; deeper and better covered where animals dig.

    `soil_parts` and `usual_depth_m` are what a group takes instead of two parts of soil to one of
    ferment, and of 25 cm.
    """
    positive(volume_l, 5000, what="The ferment", unit="L", advice=_SAY)
    deep, covered = (DEPTH_ANIMALS, COVER_ANIMALS) if animals else (DEPTH, COVER)
    width = WIDTH.value if width_m is None else width_m
    cover = covered.value if cover_m is None else cover_m
    usual = deep.value if usual_depth_m is None or animals else usual_depth_m
    depth = max(usual, cover + LEAST_BED_M) if depth_m is None else depth_m
    within(width, 0.05, 5, what="A trench", unit="m wide", advice="say how wide a spade digs")
    within(cover, 0.05, 1, what="A cover", unit="m", advice="say how much soil goes on top")
    within(depth, 0.1, 1.5, what="A trench", unit="m deep", advice="dig 20 to 45 cm deep")
    if depth - cover < 0.02 - 1e-9:
        raise Refused(
            f"A trench {number(depth * 100)} cm deep has no room under {number(cover * 100)} cm of "
            "cover: dig deeper."
        )
    parts = _soil_parts(soil_parts)
    bed = _bed_m(depth, cover, parts)
    length = volume_l / 1000 / (width * bed)
    if length > LONGEST_M:
        raise Refused(
            f"That takes a trench of {number(length)} m: dig wider or deeper, or bury less at once."
        )
    soil = depth * width * length * 1000
    stirred = volume_l * STIRRED_IN.value
    return Trench(
        volume_l=volume_l,
        length_m=length,
        depth_m=depth,
        width_m=width,
        soil_l=soil,
        stirred_l=stirred,
        mix_l=volume_l + soil,
        cover_m=depth - bed,
        mound_m=bed,
        soil_parts=soil / volume_l,
        caution="digging",
        chosen=("soil_parts", *(() if depth_m or animals else ("depth_cm",))),
        steps=(
            f"{number(depth)} m deep, {number(parts)} parts of soil to 1 of ferment, cover of "
            f"{number(cover)} m at least: room for {number(bed)} m of ferment",
            f"{number(volume_l)} L / ({number(width)} m x {number(bed)} m) = {number(length)} m",
            f"{number(depth)} x {number(width)} x {number(length)} m of soil = {number(soil)} L",
        ),
        figures=(
            SOIL_PARTS,
            STIRRED_IN,
            *(() if depth_m else (deep,)),
            *(() if width_m else (WIDTH,)),
            *(() if cover_m else (covered,)),
        ),
        lines=(
            f"Dig {_dug(length, width)} and {number(depth * 100, 2)} cm deep for "
            f"{number(volume_l, 2)} L of ferment.",
            f"Stir in {number(stirred, 2)} L of the {number(soil, 2)} L you dug and put all the "
            f"rest on top, {number((depth - bed) * 100, 2)} cm of cover; the mound of "
            f"{number(bed * 100, 2)} cm settles.",
        ),
    )


def trench_holds_l(
    length_m: float,
    width_m: float,
    depth_m: float,
    *,
    cover_m: float = COVER.value,
    soil_parts: float | None = None,
) -> float:
    """Litres of ferment that a trench of these sides takes, under its cover."""
    positive(length_m, LONGEST_M, what="A trench", unit="m long", advice="say how long it is")
    within(width_m, 0.05, 5, what="A trench", unit="m wide", advice="say how wide a spade digs")
    within(depth_m, 0.1, 1.5, what="A trench", unit="m deep", advice="dig 20 to 45 cm deep")
    bed = _bed_m(depth_m, cover_m, _soil_parts(soil_parts))
    return max(0.0, length_m * width_m * bed * 1000)


def depth_for_m(
    volume_l: float, area_m2: float, *, cover_m: float, soil_parts: float | None = None
) -> float:
    """The depth in which a trench of so many square metres takes so many litres of ferment."""
    positive(area_m2, LONGEST_M * 5, what="A trench", unit="m²", advice="say how long and wide")
    bed = volume_l / 1000 / area_m2
    return max(bed * _soil_parts(soil_parts), bed + cover_m, DEPTH.low or 0.0)


def _bed_m(depth_m: float, cover_m: float, parts: float) -> float:
    """How deep the ferment may lie by itself."""
    return min(depth_m / parts, depth_m - cover_m)


def tub_holds_l(tub_l: float, soil_parts: float | None = None) -> float:
    """Litres of ferment that a tub of so many litres takes."""
    positive(tub_l, 3000, what="A tub", unit="L", advice="say what the tub holds")
    return tub_l / (1 + TUB_COVER.value) / (1 + _soil_parts(soil_parts))


def tub(volume_l: float, *, soil_parts: float | None = None, tub_l: float | None = None) -> Tub:
    """A tub of soil for so many litres of ferment; a tub of `tub_l` has to hold it all."""
    positive(volume_l, 1000, what="The ferment", unit="L", advice="use a trench for more")
    parts = _soil_parts(soil_parts)
    soil = volume_l * parts
    mix = volume_l + soil
    cover = mix * TUB_COVER.value
    if tub_l is not None and mix + cover > tub_l:
        raise Refused(
            f"A tub of {number(tub_l)} L takes {number(tub_holds_l(tub_l, parts), 2)} L of ferment "
            "with its soil: use two, or a larger one."
        )
    return Tub(
        volume_l=volume_l,
        soil_l=soil,
        mix_l=mix,
        cover_l=cover,
        cover_share=TUB_COVER.value,
        tub_l=mix + cover,
        ready_days=TUB_DAYS.value,
        chosen=("soil_parts",),
        steps=(
            f"1 part ferment to {number(parts)} parts soil: {number(mix)} L of mix",
            f"{number(TUB_COVER.value * 100)} % more soil on top: {number(cover)} L",
        ),
        figures=(SOIL_PARTS, TUB_COVER, TUB_DAYS),
        lines=(
            f"A tub of {number(mix + cover, 2)} L: {number(volume_l, 2)} L of ferment mixed with "
            f"{number(soil, 2)} L of soil, {number(cover, 2)} L of soil on top.",
            f"Leave it about {TUB_DAYS.value:.0f} days, two weeks longer the first time. Fill it "
            "where it is to stand: soil is heavy.",
        ),
    )


def _dug(length_m: float, width_m: float) -> str:
    if length_m <= width_m:
        return f"one hole {number(width_m * 100, 2)} cm square"
    return f"{number(length_m, 2)} m long, {number(width_m * 100, 2)} cm wide"


def _soil_parts(parts: float | None) -> float:
    advice = "1 to 2 parts of soil are usual"
    usual = SOIL_PARTS.value if parts is None else parts
    return within(usual, 1, 20, what="Soil", unit="parts", advice=advice)
