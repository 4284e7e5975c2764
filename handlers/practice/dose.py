"""How much starter a layer of scraps wants.

Two habits are taught and differ by a factor of five. The spoon habit, our default, goes by the
layer's loose volume: so many level spoons on a layer so deep in an ordinary bucket. The weight
habit goes by a share of the scraps' mass.
"""

from dataclasses import dataclass
from math import pi
from typing import Literal, get_args

from handlers.practice import density
from handlers.practice.figure import (
    Figure,
    Reckoning,
    Refused,
    listed,
    number,
    positive,
    within,
)
from handlers.practice.kinds import KINDS, RICH, Shares, rich_share
from handlers.practice.tablespoons import SPOON_ML, Spoon, spoken

Habit = Literal["spoon", "weight"]

HABITS: tuple[Habit, ...] = get_args(Habit)

SPOONS = Figure(
    "level spoons on a layer of 5 to 7.5 cm", 2.5, "tablespoons", "", "common practice", 2, 3
)
LAYER_DEPTH = Figure("depth of that layer, loose", 6.25, "cm", "", "common practice", 5, 7.5)
BUCKET = Figure(
    "inner width of an ordinary household bucket", 29, "cm", "", "common practice", 26, 31
)
SPOON = Figure("the spoon it is taught with", 15, "mL", "21 CFR 101.9(b)(5)(viii)", "published")
SPRINKLE = Figure("least sprinkle on any layer", 7.5, "mL", "", "common practice", 5, 15)
RICH_MORE = Figure(
    "more if all of it is meat, fish, dairy, egg or fat",
    1.0,
    "of the plain dose",
    "guides say extra on meat; the size of the step is ours",
    "common practice",
    0.5,
    1.0,
)
TROUBLE_MORE = Figure(
    "more if the scraps are soaking or the bin is rotten or mouldy",
    0.5,
    "of the dose",
    "suppliers say more; the size of the step is ours",
    "common practice",
    0.5,
    1.0,
)
PLAIN_PERCENT = Figure(
    "starter on plain vegetables and fruit",
    1,
    "% of their weight",
    "hardly needed there (Matsukawa 2014), so half of the mixed dose",
    "common practice",
    0.5,
    2,
)
MIXED_PERCENT = Figure(
    "starter on mixed scraps",
    2,
    "% of their weight",
    "",
    "common practice",
    1.3,
    2.9,
)
RICH_PERCENT = Figure(
    "starter on mostly meat, fish or dairy",
    4,
    "% of their weight",
    "guides say extra on meat; the size of the step is ours",
    "common practice",
    3,
    5,
)
MOSTLY = Figure("share that counts as mostly", 0.7, "of the scraps", "plain speech", "derived")

MOST_LAYER_L = 100.0
MOST_LAYER_KG = 60.0
_PLAIN = frozenset({"vegetable", "fruit", "coffee", "garden", "paper"})
_MORE = (
    (1.15, "a little more"),
    (1.225, "a fifth more"),
    (1.29, "a quarter more"),
    (1.4, "a third more"),
    (1.6, "half as much again"),
    (1.85, "three quarters more"),
)
_SPLIT = "say one layer at a time, at most about 7.5 cm deep, and press it before the next"


@dataclass(frozen=True, slots=True)
class Part:
    """What one reason adds to a dose."""

    part: str
    ml: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Dose(Reckoning):
    """Starter for one layer; `volume_l` is the layer's loose volume, before it is pressed."""

    volume_l: float
    mass_kg: float
    starter_ml: float
    starter_g: float
    tablespoons: float
    tablespoon: Spoon
    habit: Habit
    reason: str
    parts: tuple[Part, ...]
    """What the dose is made of; they add up to `starter_ml`."""


@dataclass(frozen=True, slots=True)
class _Layer:
    volume_l: float
    mass_kg: float
    materials: Shares
    rich: float
    extra: float
    """What wetness or trouble multiplies the dose by."""


def dose(
    *,
    mass_kg: float | None = None,
    volume_l: float | None = None,
    depth_m: float | None = None,
    width_m: float | None = None,
    materials: Shares | None = None,
    rich: float | None = None,
    wetness: float = 0.5,
    trouble: bool = False,
    habit: Habit = "spoon",
    tablespoon: Spoon = "metric",
) -> Dose:
    """Starter for one layer, from its mass, its loose volume, or its depth in a round bucket.

    The bucket is `width_m` wide inside, an ordinary one if that is not known. `rich` overrides what
    the make-up says (a dish of no stated contents has its usual share); wetness goes from 0 (dry)
    over 0.5 (as scraps are) to 1 (dripping); `trouble` is a rotten smell or green or black growth.
    Refuses an amount that no single layer has.
    """
    make_up = density.shares(materials)
    richness = rich_share(make_up) if rich is None else rich
    within(richness, 0, 1, what="The rich share", unit="", advice="give a share from 0 to 1")
    within(wetness, 0, 1, what="Wetness", unit="", advice="give 0 for dry up to 1 for dripping")
    volume, mass, first = _amount(mass_kg, volume_l, depth_m, width_m, make_up)
    layer = _Layer(volume, mass, make_up, richness, _extra(wetness, trouble))
    parts, steps, used = _spoon(layer) if habit == "spoon" else _weight(layer)
    millilitres = sum(part.ml for part in parts)
    if millilitres < SPRINKLE.value:
        parts += (Part("up to a sprinkle", SPRINKLE.value - millilitres),)
        millilitres = SPRINKLE.value
        steps += (f"less than a sprinkle, so {number(millilitres)} mL",)
        used += (SPRINKLE,)
    grams, count = density.bran_g(millilitres), millilitres / SPOON_ML[tablespoon]
    reason = _reason(layer, trouble, habit)
    return Dose(
        volume_l=volume,
        mass_kg=mass,
        starter_ml=millilitres,
        starter_g=grams,
        tablespoons=count,
        tablespoon=tablespoon,
        habit=habit,
        reason=reason,
        parts=parts,
        chosen=("habit",),
        steps=(*first, *steps, weighed(millilitres, grams)),
        figures=(*used, *(density.loose_figures(make_up) if mass_kg is not None else ())),
        lines=(
            f"{spoken(count, tablespoon)} of starter ({number(millilitres, 2)} mL, "
            f"{number(grams, 2)} g) on this layer of about {number(volume, 2)} L, by the "
            f"{habit} habit: {reason}.",
        ),
    )


def spoon_ml_per_l() -> float:
    """mL of starter to a litre of loose plain scraps, by the spoon habit."""
    litres = pi * (BUCKET.value / 2) ** 2 * LAYER_DEPTH.value / 1000
    return SPOONS.value * SPOON.value / litres


def _amount(
    mass_kg: float | None,
    volume_l: float | None,
    depth_m: float | None,
    width_m: float | None,
    materials: Shares,
) -> tuple[float, float, tuple[str, ...]]:
    if sum(said is not None for said in (mass_kg, volume_l, depth_m)) != 1:
        raise Refused("Say how much went in, as a weight, a volume or a depth: one of them.")
    steps: tuple[str, ...] = ()
    if depth_m is not None:
        litres, steps = _in_bucket(depth_m, width_m)
    elif mass_kg is not None:
        positive(mass_kg, MOST_LAYER_KG, what="A layer", unit="kg", advice=_SPLIT)
        litres = density.loose_volume_l(mass_kg, materials)
        rate = number(density.loose_kg_l(materials))
        steps = (f"{number(mass_kg)} kg at {rate} kg/L, loose, is {number(litres)} L",)
    else:
        assert volume_l is not None
        positive(volume_l, MOST_LAYER_L, what="A layer", unit="L", advice=_SPLIT)
        litres = volume_l
    positive(litres, MOST_LAYER_L, what="A layer", unit="L", advice=_SPLIT)
    return litres, density.mass_kg(litres, materials), steps


def _in_bucket(depth_m: float, width_m: float | None) -> tuple[float, tuple[str, ...]]:
    """Litres of a layer so deep in a round bucket so wide."""
    width = BUCKET.value / 100 if width_m is None else width_m
    positive(depth_m * 100, 30, what="A layer's depth", unit="cm", advice=_SPLIT)
    within(width, 0.1, 1.5, what="A bucket", unit="m wide", advice="say how wide it is inside")
    litres = pi * (width / 2) ** 2 * depth_m * 1000
    return litres, (
        f"{number(depth_m * 100)} cm in a bucket {number(width * 100)} cm wide are "
        f"{number(litres)} L",
    )


def _extra(wetness: float, trouble: bool) -> float:
    # Wet scraps and a troubled bin are one reason, not two: either calls for the same step.
    soaked = max(0.0, (wetness - 0.5) / 0.5)
    return 1 + TROUBLE_MORE.value * (1.0 if trouble else soaked)


def _spoon(layer: _Layer) -> tuple[tuple[Part, ...], tuple[str, ...], tuple[Figure, ...]]:
    rate = spoon_ml_per_l()
    more = RICH_MORE.value * layer.rich
    plain = layer.volume_l * rate
    parts = _parts(plain, plain * more, layer.extra)
    steps = (
        f"{number(SPOONS.value)} spoons of {number(SPOON.value)} mL on {number(LAYER_DEPTH.value)} "
        f"cm in a {number(BUCKET.value)} cm bucket are {number(rate)} mL to the litre",
        f"{number(layer.volume_l)} L x {number(rate)} mL{_times(1 + more, layer.extra)} = "
        f"{number(sum(part.ml for part in parts))} mL",
    )
    return parts, steps, (SPOONS, SPOON, BUCKET, *_raised(layer, RICH_MORE), density.BRAN_LOOSE)


def _weight(layer: _Layer) -> tuple[tuple[Part, ...], tuple[str, ...], tuple[Figure, ...]]:
    poor = {kind: share for kind, share in layer.materials.items() if kind not in RICH}
    plain = sum(share for kind, share in poor.items() if kind in _PLAIN)
    plain_part = plain / sum(poor.values()) if poor else 0.0
    least = PLAIN_PERCENT.value * plain_part + MIXED_PERCENT.value * (1 - plain_part)
    more = (RICH_PERCENT.value - least) * min(1.0, layer.rich / MOSTLY.value)
    per_percent = density.bran_ml(layer.mass_kg * 10)
    steps = (
        f"{number(layer.mass_kg)} kg x {number(least + more)} %{_times(1, layer.extra)} = "
        f"{number(layer.mass_kg * 10 * (least + more) * layer.extra)} g",
    )
    # Only the rows of the table that this layer falls between.
    used = (PLAIN_PERCENT,) * (plain_part > 0) + (MIXED_PERCENT,) * (plain_part < 1)
    parts = _parts(per_percent * least, per_percent * more, layer.extra)
    return parts, steps, (*used, *_raised(layer, RICH_PERCENT), density.BRAN_LOOSE)


def _parts(plain: float, rich: float, extra: float) -> tuple[Part, ...]:
    parts = (
        Part("plain", plain),
        Part("for meat, fish, dairy, egg or fat", rich),
        Part("for wet scraps or trouble", (plain + rich) * (extra - 1)),
    )
    return tuple(part for part in parts if part.ml)


def _raised(layer: _Layer, *richer: Figure) -> tuple[Figure, ...]:
    return (richer if layer.rich else ()) + ((TROUBLE_MORE,) if layer.extra > 1 else ())


def _times(*factors: float) -> str:
    return "".join(f" x {number(factor)}" for factor in factors if factor != 1)


def weighed(millilitres: float, grams: float) -> str:
    """The step from a volume of bran to its mass."""
    rate = number(density.BRAN_LOOSE.value)
    return f"{number(millilitres)} mL of bran at {rate} g/mL weigh {number(grams)} g"


def _reason(layer: _Layer, trouble: bool, habit: Habit) -> str:
    parts = []
    if layer.rich >= 0.05:
        rich = [kind for kind in KINDS if kind in RICH and layer.materials.get(kind)]
        what = listed(rich) if rich else "meat, fish, dairy or fat"
        more = _more(1 + RICH_MORE.value * layer.rich) if habit == "spoon" else "more"
        parts.append(f"rich in {what}, so {more}")
    if layer.extra > 1:
        why = "the bin is in trouble" if trouble else "the scraps are wet"
        parts.append(f"{why}, so {_more(layer.extra)}{' on top' if parts else ''}")
    return "; ".join(parts) or "nothing rich in it, so the usual dose"


def _more(factor: float) -> str:
    return next((words for limit, words in _MORE if factor < limit), "twice as much")
