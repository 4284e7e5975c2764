"""How many bins a group wants, so that one is always open while the others ferment."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil

from handlers.practice.days import FERMENT, FILL
from handlers.practice.density import (
    PRESSED_MIXED,
    SETTLING,
    in_bin_l,
    in_bin_step,
    pressed_kg_l,
)
from handlers.practice.figure import Figure, Reckoning, Refused, number, positive, within
from handlers.practice.kinds import Shares
from handlers.practice.outlook import SEED_KG_WEEK

ORDINARY_BIN = Figure("capacity of an ordinary bin", 20, "L", "", "common practice", 15, 23)


@dataclass(frozen=True, slots=True)
class Otherwise:
    """How many bins it would be, if one filled in other days."""

    fill_days: float
    bins: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Bins(Reckoning):
    """Bins for uninterrupted use, and the days that one takes to fill."""

    bins: int
    fill_days: float
    ferment_days: float
    sensitivity: tuple[Otherwise, ...]
    """The same if it filled a quarter faster, or a quarter slower."""
    rate_kg_week: float | None = None
    capacity_kg: float | None = None
    """What one bin takes before it has settled."""
    filled_l: float | None = None
    filled_share: float | None = None
    """How full a bin is with so much in it, pressed and settled."""


def bins(
    *,
    fill_days: float | None = None,
    people: float | None = None,
    rate_kg_week: float | None = None,
    capacity_l: float | None = None,
    ferment_days: float | None = None,
    materials: Shares | None = None,
    holds_kg: float | None = None,
) -> Bins:
    """Bins for a group that fills one in so many days, or of so many people, or at such a rate.

    One is filled while the others stand: ceil((fill + ferment) / fill). With `holds_kg`, how full a
    bin is that has had so much.
    """
    stand = FERMENT.value if ferment_days is None else ferment_days
    within(stand, 0, 365, what="The ferment", unit="d", advice="two weeks is usual")
    capacity = ORDINARY_BIN.value if capacity_l is None else capacity_l
    positive(capacity, 1500, what="A bin", unit="L", advice="give what the bin holds")
    takes = capacity * pressed_kg_l(materials)
    figures: tuple[Figure, ...] = (FERMENT,)
    steps: tuple[str, ...] = ()
    rate = None
    if sum(said is not None for said in (fill_days, people, rate_kg_week)) > 1:
        raise Refused("Say one of these: the days a bin takes to fill, the people, or kg a week.")
    if fill_days is None:
        rate = _rate(people, rate_kg_week)
        fill_days = takes / rate * 7
        steps = (
            f"{number(capacity)} L hold {number(takes)} kg before they settle (to be on the safe "
            f"side); at {number(rate)} kg a week one bin fills in {number(fill_days)} days",
        )
        seed = () if people is None else (SEED_KG_WEEK,)
        figures += (*(() if capacity_l else (ORDINARY_BIN,)), PRESSED_MIXED, *seed)
    positive(fill_days, 3650, what="Filling", unit="d", advice="say in how many days a bin fills")
    if fill_days < 0.5:
        raise Refused("That fills a bin in less than half a day: reckon with larger bins.")
    figures += (FILL,) if fill_days > FILL.value else ()
    count = _count(fill_days, stand)
    others = tuple(
        Otherwise(fill_days * times, _count(fill_days * times, stand)) for times in (0.75, 1.25)
    )
    filled = None if holds_kg is None else _filled_l(holds_kg, capacity, materials)
    if holds_kg is not None:
        steps = (*steps, in_bin_step(holds_kg, materials))
        figures += (PRESSED_MIXED, SETTLING)
    return Bins(
        bins=count,
        fill_days=fill_days,
        ferment_days=stand,
        sensitivity=others,
        rate_kg_week=rate,
        capacity_kg=takes,
        filled_l=filled,
        filled_share=None if filled is None else filled / capacity,
        steps=(
            *steps,
            f"({number(fill_days)} + {number(stand)}) / {number(fill_days)}, rounded up = {count}",
        ),
        figures=figures,
        chosen=("ferment_days",),
        lines=_said(count, fill_days, others, None if filled is None else filled / capacity),
    )


def _count(fill_days: float, stand: float) -> int:
    # A rate in pounds must not want one bin more than the same in kilograms.
    return 1 + ceil(round(stand / fill_days, 9))


def _filled_l(kg: float, capacity_l: float, materials: Shares | None) -> float:
    within(kg, 0, 5000, what="The scraps", unit="kg", advice="say how much is in the bin")
    return min(in_bin_l(kg, materials), capacity_l)


def _said(
    count: int, fill_days: float, others: Sequence[Otherwise], filled: float | None
) -> tuple[str, ...]:
    lines = []
    if filled is not None:
        lines.append(f"A bin with that much in it is about {filled:.0%} full.")
    lines.append(f"{count} bins, if one fills in about {number(fill_days, 2)} days.")
    faster, slower = others
    if {faster.bins, slower.bins} != {count}:
        lines.append(
            f"In {number(faster.fill_days, 2)} days it would be {faster.bins}, in "
            f"{number(slower.fill_days, 2)} days {slower.bins}."
        )
    if fill_days > FILL.value:
        lines.append("That is over two weeks: use smaller bins, or share one with a neighbour.")
    return tuple(lines)


def _rate(people: float | None, rate_kg_week: float | None) -> float:
    if rate_kg_week is not None:
        return positive(rate_kg_week, 1e5, what="A week", unit="kg", advice="say kg a week")
    if people is None:
        raise Refused("Say in how many days a bin fills, or how many people feed it.")
    positive(people, 5000, what="The number", unit="people", advice="say how many feed the bins")
    return people * SEED_KG_WEEK.value
