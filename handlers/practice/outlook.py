"""When a bin will be full: a day, and the range that holds it four times in five.

What goes in each day is taken as random around the household's own rate. Each day's pull on the
rate halves every two weeks back, and what people throw away on average stands in for days that
nobody has logged yet. The day is the first on which the sum is as likely as not to have reached
what is left; the range comes from the scatter of daily amounts, from how well the rate is known,
and from how densely the bin packs, added as variances. On simulated households whose true rate,
rhythm, size of portions and packing vary (`tests/practice/test_outlook.py`) the range holds the
true day, five layers in, in 80 % of cases, and in 83 % where nobody said how many people there are.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from math import sqrt

from handlers.practice import density
from handlers.practice.figure import Figure, Reckoning, Refused, number, positive
from handlers.practice.kinds import Shares

SEED_KG_WEEK = Figure(
    "food waste of one person in a week",
    1.5,
    "kg",
    "UNEP Food Waste Index 2024: 79 kg a person and year",
    "published",
    1.0,
    2.5,
)
HOUSEHOLD = Figure(
    "people in a household",
    2.5,
    "people",
    "US Census 2023: 2.51; OECD countries mostly 2.0 to 2.8",
    "published",
    2.0,
    2.8,
)
_FITTED = "set so that the range holds on simulated households"

SEED_SPREAD = Figure(
    "how far households of one size differ in their rate", 0.35, "of the rate", _FITTED, "derived"
)
HOUSEHOLD_SPREAD = Figure("the same, people not known", 0.5, "of the rate", _FITTED, "derived")
HALF_LIFE = Figure("days until a day counts half", 14, "d", "", "common practice", 7, 14)
SCATTER = Figure("scatter of one day's scraps", 0.95, "of the daily mean", _FITTED, "derived")
PACKING = Figure("how far bins differ in packing", 0.08, "of the capacity", _FITTED, "derived")
TEN_PERCENT = Figure(
    "standard deviations that leave out one in ten at each end",
    1.2816,
    "sd",
    "normal distribution",
    "published",
)
HORIZON = 366
"""Days beyond which no day is named."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Outlook(Reckoning):
    """The day a bin will be full, and the 80 % range; None where it lies beyond a year."""

    full_on: date | None
    earliest: date | None
    latest: date | None
    filled_l: float
    filled_share: float
    rate_kg_day: float
    days_logged: int


@dataclass(frozen=True, slots=True)
class _Seed:
    kg_day: float
    spread: Figure


@dataclass(frozen=True, slots=True)
class _Rate:
    mean: float
    """kg a day."""
    error: float
    """Standard error of the mean."""
    scatter: float
    """Standard deviation of one day's total."""
    layer: float
    """kg on a day that has a layer."""
    days: int
    seed_days: float
    """Days of log that the seed counts for."""


def full_forecast(
    layers: Sequence[tuple[date, float]],
    capacity_l: float,
    today: date,
    *,
    people: float | None = None,
    materials: Shares | None = None,
) -> Outlook:
    """When a bin of `capacity_l` is full, from its run's layers as (day, kg).

    A volume becomes kg by `density.mass_kg`. `people` who feed the bin (unknown: one household)
    set the seed rate; `materials` are the run's make-up so far. Days after `today` do not count.
    """
    positive(capacity_l, 1500, what="A bin", unit="L", advice="give what the bin holds in litres")
    eaters = HOUSEHOLD.value if people is None else people
    positive(eaters, 5000, what="The number", unit="people", advice="say how many feed the bin")
    logged = [(day, kg) for day, kg in layers if day <= today]
    if any(kg < 0 for _, kg in logged):
        raise Refused("A layer cannot weigh less than nothing: correct that layer first.")
    total = sum(kg for _, kg in logged)
    holds = density.capacity_kg(capacity_l, materials)
    seed = _Seed(
        eaters * SEED_KG_WEEK.value / 7, HOUSEHOLD_SPREAD if people is None else SEED_SPREAD
    )
    rate = _rate(logged, today, seed)
    left = holds - total
    spread = PACKING.value * holds
    earliest, middle, latest = (
        _crossing(left, spread, rate, z) for z in (-TEN_PERCENT.value, 0.0, TEN_PERCENT.value)
    )
    dates = [None if days is None else today + timedelta(days=days) for days in (middle, earliest)]
    last = None if latest is None else today + timedelta(days=latest)
    return Outlook(
        full_on=dates[0],
        earliest=dates[1],
        latest=last,
        filled_l=min(capacity_l, capacity_l * total / holds),
        filled_share=min(1.0, total / holds),
        rate_kg_day=rate.mean,
        days_logged=rate.days,
        steps=(
            f"{number(capacity_l)} L x {number(density.pressed_kg_l(materials))} kg/L, settled by "
            f"{number(density.SETTLING.value * 100)} %, holds {number(holds)} kg",
            f"{number(total)} kg are in, {number(max(left, 0))} kg are left",
            f"{number(rate.mean)} kg a day from {rate.days} days of log and "
            f"{number(rate.seed_days, 1)} days at the usual rate",
            f"the last {number(max(left, 0))} kg and half a layer over the brim, at that rate: "
            f"{'over a year' if middle is None else f'{middle} days'}",
        ),
        figures=(
            density.PRESSED_MIXED,
            SEED_KG_WEEK,
            *((HOUSEHOLD,) if people is None else ()),
        ),
        lines=(_said(dates[0], dates[1], last, left),),
    )


def _rate(logged: Iterable[tuple[date, float]], today: date, seed: _Seed) -> _Rate:
    """Daily mean, its error and the scatter: the log's days, weighted, with the seed's.

    The seed counts for as many days as would tell the rate no better than it does. A log begins
    and is asked about on days with a layer: half a gap on either side belongs to it, without
    which the rate would come out too high.
    """
    totals: dict[date, float] = {}
    for day, kg in logged:
        totals[day] = totals.get(day, 0.0) + kg
    first = min(totals, default=today)
    days = (today - first).days + 1 if totals else 0
    gap = (max(totals) - first).days / (len(totals) - 1) if len(totals) > 1 else 1.0
    empty = round(gap) - 1
    amounts = [totals.get(today - timedelta(days=n), 0.0) for n in range(days)] + [0.0] * empty
    weighted = [(0.5 ** (n / HALF_LIFE.value), kg) for n, kg in enumerate(amounts)]
    seed_days = (SCATTER.value / seed.spread.value) ** 2
    whole = seed_days + sum(weight for weight, _ in weighted)
    mean = (seed_days * seed.kg_day + sum(weight * kg for weight, kg in weighted)) / whole
    around = seed_days * (SCATTER.value * mean) ** 2
    around += sum(weight * (kg - mean) ** 2 for weight, kg in weighted)
    scatter = sqrt(around / whole)
    seed_error = seed_days / whole * seed.spread.value * seed.kg_day
    log_error = scatter * sqrt(sum(weight**2 for weight, _ in weighted)) / whole
    layer = sum(totals.values()) / len(totals) if totals else seed.kg_day
    return _Rate(mean, sqrt(seed_error**2 + log_error**2), scatter, layer, days, seed_days)


def _crossing(left: float, spread: float, rate: _Rate, z: float) -> int | None:
    """First day by which the sum has reached what is left, at so many standard deviations.

    The last layer reaches over the brim by half of itself; the rate is as likely above its median
    as below, and a rate that cannot fall under nought has its median under its mean.
    """
    wanted = left + rate.layer / 2 if left > 0 else left
    median = rate.mean / sqrt(1 + (rate.error / rate.mean) ** 2)
    for days in range(HORIZON):
        sd = sqrt(days * rate.scatter**2 + (days * rate.error) ** 2 + spread**2)
        if days * median - z * sd >= wanted:
            return days
    return None


def _said(day: date | None, earliest: date | None, latest: date | None, left: float) -> str:
    if left <= 0:
        return "By what was logged the bin is full: seal it."
    if day is None:
        return "At this rate it takes more than a year to fill: use a smaller bin."
    until = f"between {earliest} and {latest}" if latest else f"on {earliest} or later"
    return f"Full about {day}; four times in five {until}."
