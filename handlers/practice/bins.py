"""How many bins a group wants, so that one is always open while the others ferment."""

from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from handlers.practice.days import FERMENT, FILL
from handlers.practice.density import PRESSED_MIXED, pressed_kg_l
from handlers.practice.figure import Figure, Reckoning, Refused, number, positive, within
from handlers.practice.kinds import Shares
from handlers.practice.outlook import SEED_KG_WEEK

ORDINARY_BIN = Figure(
    "capacity of an ordinary bin", 20, "L", "usual pails and bins", "common practice", 15, 23
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Bins(Reckoning):
    """Bins for uninterrupted use, and the days that one takes to fill."""

    bins: int
    fill_days: float
    rate_kg_week: float | None = None


def bins(
    *,
    fill_days: float | None = None,
    people: float | None = None,
    rate_kg_week: float | None = None,
    capacity_l: float | None = None,
    ferment_days: float | None = None,
    materials: Shares | None = None,
) -> Bins:
    """Bins for a group that fills one in so many days, or of so many people, or at such a rate.

    One is filled while the others stand: ceil((fill + ferment) / fill), in exact fractions.
    """
    stand = FERMENT.value if ferment_days is None else ferment_days
    within(stand, 0, 365, what="The ferment", unit="d", advice="two weeks is usual")
    figures: tuple[Figure, ...] = (FERMENT, FILL)
    steps: tuple[str, ...] = ()
    rate = None
    if fill_days is None:
        rate = _rate(people, rate_kg_week)
        capacity = ORDINARY_BIN.value if capacity_l is None else capacity_l
        positive(capacity, 1500, what="A bin", unit="L", advice="give what the bin holds")
        holds = capacity * pressed_kg_l(materials)
        fill_days = holds / rate * 7
        steps = (
            f"{number(capacity)} L hold {number(holds)} kg; at {number(rate)} kg a week one bin "
            f"fills in {number(fill_days)} days",
        )
        figures += (ORDINARY_BIN, PRESSED_MIXED, SEED_KG_WEEK)
    positive(fill_days, 3650, what="Filling", unit="d", advice="say in how many days a bin fills")
    if fill_days < 0.05:
        raise Refused("That fills a bin within the hour: use far larger bins and ask again.")
    count = ceil((Fraction(fill_days) + Fraction(stand)) / Fraction(fill_days))
    lines = [f"{count} bins, if one fills in about {number(fill_days, 2)} days."]
    if fill_days > FILL.value:
        lines.append("That is over two weeks: use smaller bins, or share one with a neighbour.")
    return Bins(
        bins=count,
        fill_days=fill_days,
        rate_kg_week=rate,
        steps=(
            *steps,
            f"({number(fill_days)} + {number(stand)}) / {number(fill_days)}, rounded up = {count}",
        ),
        figures=figures,
        lines=tuple(lines),
    )


def _rate(people: float | None, rate_kg_week: float | None) -> float:
    if rate_kg_week is not None:
        return positive(rate_kg_week, 1e5, what="A week", unit="kg", advice="say kg a week")
    if people is None:
        raise Refused("Say in how many days a bin fills, or how many people feed it.")
    positive(people, 5000, what="The number", unit="people", advice="say how many feed the bins")
    return people * SEED_KG_WEEK.value
