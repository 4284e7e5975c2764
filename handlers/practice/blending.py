"""Moisture and C:N of scraps together, and what to add where they are out of range.

Sums as Cornell Composting gives them (Getting the Right Mix; C/N Ratio), on the wet mass:

    moisture = sum(m w) / sum(m)                     C:N = sum(m C) / sum(m N)
    second material for a moisture g:                m2 = m1 (g - w1) / (w2 - g)
    second material for a C:N of r:                  m2 = m1 (r N1 - C1) / (C2 - r N2)
"""

from collections.abc import Mapping
from dataclasses import dataclass
from math import isinf
from typing import Literal

from handlers.practice.composition import (
    CONTENT,
    Content,
    blend_of,
    content_named,
    ratio,
    water_in,
)
from handlers.practice.figure import Figure, Reckoning, Refused, number, positive, within

MOISTURE = Figure(
    "water in a bin that runs well", 0.70, "of the mass", "", "common practice", 0.60, 0.85
)
HEAP_CN = Figure(
    "C:N for a hot heap",
    27.5,
    "to 1",
    "LSU AgCenter 3838-D, from NRAES-54: 20 to 40, better 25 to 30",
    "published",
    20,
    40,
)
HEAP_CN_BETTER = Figure(
    "C:N that a heap likes best", 27.5, "to 1", "LSU AgCenter 3838-D", "published", 25, 30
)

Purpose = Literal["moisture", "carbon"]
MOST_KG = 10000.0


@dataclass(frozen=True, slots=True)
class Addition:
    """What to add, and how much of it."""

    what: str
    kg: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Blend(Reckoning):
    """A blend: water, nitrogen and carbon as shares of its wet mass, its C:N, what it lacks."""

    moisture: float
    nitrogen_share: float
    carbon_share: float
    cn: float | None
    """None where there is no nitrogen at all."""
    mass_kg: float
    add: tuple[Addition, ...] = ()
    """To bring it into the range, or to the goal; empty if nothing is wanted."""


def blend(
    parts: Mapping[str, float] | None,
    *,
    mass_kg: float | None = None,
    purpose: Purpose = "moisture",
    goal: float | None = None,
) -> Blend:
    """Moisture, nitrogen and C:N of foods or kinds by their shares; mixed scraps if none is named.

    For so many kg (unknown: one) it says what to add: for a moisture outside the range of a bin,
    or, where the purpose is carbon, for a C:N outside that of a hot heap; a goal (a share of
    water, or a C:N) replaces the range.
    """
    named = {name: share for name, share in (parts or {}).items() if share > 0} or {"mixed": 1.0}
    known = [(share, _known(name)) for name, share in named.items()]
    made = blend_of(known)
    mass = 1.0 if mass_kg is None else mass_kg
    positive(mass, MOST_KG, what="The scraps", unit="kg", advice="say how much there is")
    wanted = _for_water if purpose == "moisture" else _for_carbon
    add, working = wanted(mass, made, goal)
    cn = ratio(made)
    return Blend(
        moisture=made.water / 100,
        nitrogen_share=made.nitrogen / 100,
        carbon_share=made.carbon / 100,
        cn=None if isinf(cn) else cn,
        mass_kg=mass,
        add=add,
        steps=(
            *(
                f"{number(share * 100)} % {name}: {number(part.water)} % water, "
                f"{number(part.nitrogen)} % N, {number(part.carbon)} % C"
                for name, (share, part) in zip(named, known, strict=True)
            ),
            f"together {number(made.water)} % water, C:N {_cn(cn)}",
            *working,
        ),
        figures=(
            MOISTURE if purpose == "moisture" else HEAP_CN,
            water_in(made),
        ),
        lines=(
            f"About {made.water:.0f} % water and {number(made.nitrogen, 2)} % nitrogen; "
            f"{_cn_words(cn)}.",
            *_said(made, purpose, goal, add, stated=mass_kg is not None),
        ),
    )


def kg_for_moisture(kg: float, moisture: float, other: float, goal: float) -> float:
    """kg of a second material that brings the first to the goal (Cornell Composting)."""
    for value in (moisture, other, goal):
        within(value, 0, 1, what="Moisture", unit="", advice="give a share from 0 to 1")
    if not min(moisture, other) < goal < max(moisture, other):
        raise Refused("The moisture you want has to lie between those of the two materials.")
    return kg * (goal - moisture) / (other - goal)


def kg_for_cn(kg: float, made: Content, other: Content, goal: float) -> float:
    """kg of a second material that brings the first to the C:N wanted."""
    own, others = ratio(made), ratio(other)
    if not min(own, others) < goal < max(own, others):
        raise Refused("The C:N you want has to lie between those of the two materials.")
    return kg * (goal * made.nitrogen - made.carbon) / (other.carbon - goal * other.nitrogen)


def _known(name: str) -> Content:
    part = content_named(name)
    if part is None:
        raise Refused(f"I do not know what {name} is made of: name a kind of scraps.")
    return part


_Added = tuple[tuple[Addition, ...], tuple[str, ...]]
"""What to add, and the working of how much."""


def _for_water(kg: float, made: Content, goal: float | None) -> _Added:
    water = made.water / 100
    low, high = MOISTURE.low or 0.0, MOISTURE.high or 1.0
    wanted = min(max(water, low), high) if goal is None else goal
    if abs(wanted - water) < 1e-9:
        return (), ()
    what, other = ("torn paper", CONTENT["paper"].water / 100) if wanted < water else ("water", 1.0)
    more = kg_for_moisture(kg, water, other, wanted)
    step = (
        f"{what}, {number(other * 100)} % water: {number(kg)} kg x ({number(water * 100)} - "
        f"{number(wanted * 100)}) / ({number(wanted * 100)} - {number(other * 100)}) = "
        f"{number(more)} kg"
    )
    return (Addition(what, more),), (step,)


def _for_carbon(kg: float, made: Content, goal: float | None) -> _Added:
    cn = ratio(made)
    if goal is None:
        if (HEAP_CN.low or 0) <= cn <= (HEAP_CN.high or 0):
            return (), ()
        goal = HEAP_CN_BETTER.low if cn < HEAP_CN.value else HEAP_CN_BETTER.high
    assert goal is not None
    within(goal, 5, 200, what="A C:N", unit="to 1", advice="25 to 30 suits a heap")
    if abs(goal - cn) < 1e-9:
        return (), ()
    kind: Literal["paper", "coffee"] = "paper" if goal > cn else "coffee"
    what = "torn paper or cardboard" if kind == "paper" else "coffee grounds or grass"
    other = CONTENT[kind]
    more = kg_for_cn(kg, made, other, goal)
    steps = (
        f"{what}: {number(other.water)} % water, {number(other.nitrogen)} % N, "
        f"{number(other.carbon)} % C",
        f"to a C:N of {number(goal)}: {number(kg)} kg x ({number(goal)} x "
        f"{number(made.nitrogen)} - {number(made.carbon)}) / ({number(other.carbon)} - "
        f"{number(goal)} x {number(other.nitrogen)}) = {number(more)} kg",
    )
    return (Addition(what, more),), steps


def _said(
    made: Content, purpose: Purpose, goal: float | None, add: tuple[Addition, ...], *, stated: bool
) -> tuple[str, ...]:
    to = "" if stated else " to each kg"
    lines = [f"Add {number(part.kg, 2)} kg of {part.what}{to}." for part in add]
    if purpose == "carbon":
        return (*lines, "C:N matters for a hot heap, not for a sealed bin.")
    if goal is None and made.water / 100 > (MOISTURE.high or 1):
        lines.append("That is very wet: drain it often too.")
    return tuple(lines) if lines else ("That is right for a sealed bin.",)


def _cn_words(cn: float) -> str:
    if isinf(cn):
        return "no nitrogen, so no C:N"
    return f"C:N about {number(cn, 2)}"


def _cn(cn: float) -> str:
    return "without end" if isinf(cn) else number(cn)
