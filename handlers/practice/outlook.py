"""When a bin will be full: a day, and the range that holds it four times in five.

A household's rate is taken as lognormal: what people throw away on average, and how far households
differ, is known before its first layer; each layer then tells more. What the log tells is trusted
the more, the steadier the layers are in weight and the oftener they come, and each day counts half
as much every two weeks back. The day is the first on which the sum is as likely as not to have
reached what is left; the range comes from the scatter of daily amounts, from how well the rate is
known, and from how densely the bin packs, added as variances. On simulated households whose true
rate, rhythm, size of portions and packing vary (`tests/practice/households.py`) the range holds the
true day, five layers in, in 81 % of cases, and in 80 % where nobody said how many people there are;
`python -m tests.bench.outlook` prints how far off the day is.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from math import copysign, exp, sqrt
from math import log as math_log

from handlers.practice import density
from handlers.practice.days import after
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
    "how far households of one size differ in their rate", 0.45, "of the rate", _FITTED, "derived"
)
HOUSEHOLD_SPREAD = Figure(
    "the same, people not known",
    0.70,
    "of the rate",
    "with sizes on top: US Census 2022 to 2024, 29 % of one, 35 % of two, mean 2.51",
    "derived",
)
HALF_LIFE = Figure("days until a day counts half", 14, "d", "", "common practice", 7, 14)
PORTIONS = Figure("scatter of layers in weight", 0.7, "of their mean", _FITTED, "derived")
RHYTHM = Figure("days from one layer to the next", 1.5, "d", _FITTED, "derived", 1, 3)
USUAL_LAYERS = Figure(
    "layers of its own as telling as what is usual of scatter", 1.5, "layers", _FITTED, "derived"
)
PACKING = Figure(
    "how far bins differ in what they hold",
    0.11,
    "of the capacity",
    "the ranges of pressed density (8.5 %) and of settling (7 %), as triangles, together",
    "derived",
)
TEN_PERCENT = Figure(
    "standard deviations that leave out one in ten at each end",
    1.2816,
    "sd",
    "normal distribution",
    "published",
)
ENOUGH_DAYS = Figure("days of a log that tell a rate", 7, "d", "", "common practice", 7, 14)
LONGEST_SILENCE = 56
"""Days without a layer that tell of a household; a longer silence tells that it was away."""
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
class _Log:
    kg_day: float
    told: float
    """Days that it tells of, each by its weight."""
    days: int
    gap: float
    """Days from one layer to the next."""
    layers: Sequence[float]
    """kg of each day that has a layer."""


@dataclass(frozen=True, slots=True)
class _Rate:
    median: float
    """kg a day; the true rate is as likely over as under it."""
    error: float
    """Standard error of it, in kg a day."""
    scatter: float
    """Standard deviation of one day's total, in kg."""
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
    explained: bool = True,
) -> Outlook:
    """When a bin of `capacity_l` is full, from its run's layers as (day, kg).

    A volume becomes kg by `density.mass_kg`. `people` who feed the bin (unknown: one household)
    set the seed rate; `materials` are the run's make-up so far. Days after `today` do not count.
    Unless it is to be `explained`, the working is left out.
    """
    positive(capacity_l, 1500, what="A bin", unit="L", advice="give what the bin holds in litres")
    rate = _rate(layers, today, people)
    total = sum(kg for day, kg in layers if day <= today)
    holds = density.capacity_kg(capacity_l, materials)
    left = holds - total
    spread = PACKING.value * holds
    middle = _crossing(left, spread, rate, 0.0)
    earliest = _crossing(left, spread, rate, -TEN_PERCENT.value)
    latest = None
    if middle is not None:
        latest = _crossing(left, spread, rate, TEN_PERCENT.value, since=middle)
    dates = [None if days is None else after(today, days) for days in (middle, earliest)]
    last = None if latest is None else after(today, latest)
    steps = (
        (
            f"{number(capacity_l)} L x {number(density.pressed_kg_l(materials))} kg/L, settled by "
            f"{number(density.SETTLING.value * 100)} %, holds {number(holds)} kg",
            f"{number(total)} kg are in, {number(max(left, 0))} kg are left",
            f"{number(rate.median)} kg a day from {_days(rate.days)} of log and "
            f"{number(rate.seed_days, 1)} at the usual rate",
            f"the last {number(max(left, 0))} kg and half a layer over the brim, at that rate: "
            f"{_days(middle)}",
            f"a day scatters by {number(rate.scatter, 2)} kg and the rate may be "
            f"{rate.error / rate.median:.0%} off: four times in five {_days(earliest)} to "
            f"{_days(latest)}",
        )
        if explained
        else ()
    )
    return Outlook(
        full_on=dates[0],
        earliest=dates[1],
        latest=last,
        filled_l=min(capacity_l, capacity_l * total / holds),
        filled_share=min(1.0, total / holds),
        rate_kg_day=rate.median,
        days_logged=rate.days,
        steps=steps,
        figures=(
            density.PRESSED_MIXED,
            density.SETTLING,
            PACKING,
            SEED_KG_WEEK,
            *((HOUSEHOLD,) if people is None else ()),
        ),
        lines=(_said(dates[0], dates[1], last, left),),
    )


def _days(count: int | None) -> str:
    if count is None:
        return "over a year"
    return f"{count} day{'' if count == 1 else 's'}"


def forecast_rate(
    layers: Iterable[tuple[date, float]], today: date, *, people: float | None = None
) -> float:
    """kg a day that go in, by the layers up to today and the usual rate of so many people."""
    return _rate(layers, today, people).median


def logged_rate(layers: Sequence[tuple[date, float]], today: date) -> float | None:
    """kg a day by the layers up to today alone; None before they tell of a week.

    Until a log is a week long, what households usually throw away tells more than it does.
    """
    log = _log(layers, today)
    return log.kg_day if log and log.days > ENOUGH_DAYS.value else None


def _seed(people: float | None) -> _Seed:
    eaters = HOUSEHOLD.value if people is None else people
    positive(eaters, 5000, what="The number", unit="people", advice="say how many feed the bin")
    spread = HOUSEHOLD_SPREAD if people is None else SEED_SPREAD
    return _Seed(eaters * SEED_KG_WEEK.value / 7, spread)


def _rate(layers: Iterable[tuple[date, float]], today: date, people: float | None) -> _Rate:
    """The rate and the scatter, from the days of the log and the seed, each as it is to be trusted.

    A log begins and is asked about on days with a layer: half a gap on either side belongs to it,
    without which the rate would come out too high.
    """
    seed, log = _seed(people), _log(layers, today)
    if log is None:
        sure = _scatter([], RHYTHM.value)
        return _Rate(
            seed.kg_day, seed.spread.value * seed.kg_day, sure * seed.kg_day, seed.kg_day, 0,
            (sure / seed.spread.value) ** 2,
        )  # fmt: skip
    scatter = _scatter(log.layers, log.gap)
    seed_weight, own_weight = seed.spread.value**-2, log.told / scatter**2
    sure = seed_weight + own_weight
    median = exp((seed_weight * math_log(seed.kg_day) + own_weight * math_log(log.kg_day)) / sure)
    layer = sum(log.layers) / len(log.layers)
    seed_days = seed_weight * scatter**2
    return _Rate(median, median / sqrt(sure), scatter * median, layer, log.days, seed_days)


def _log(layers: Iterable[tuple[date, float]], today: date) -> _Log | None:
    """What the layers up to today tell by themselves; None where nothing was weighed."""
    totals = dict[date, float]()
    for day, kg in layers:
        if kg < 0:
            raise Refused("A layer cannot weigh less than nothing: correct that layer first.")
        if day <= today:
            totals[day] = totals.get(day, 0.0) + kg
    if not sum(totals.values()):
        return None
    until = min(today, after(max(totals), LONGEST_SILENCE))
    days = (until - min(totals)).days + 1
    gap = (max(totals) - min(totals)).days / (len(totals) - 1) if len(totals) > 1 else RHYTHM.value
    weights = {day: 0.5 ** ((until - day).days / HALF_LIFE.value) for day in totals}
    told = sum(0.5 ** (ago / HALF_LIFE.value) for ago in range(days))
    told += (gap - 1) * 0.5 ** (days / HALF_LIFE.value)
    own = sum(weights[day] * kg for day, kg in totals.items()) / told
    return _Log(own, told, days, gap, list(totals.values()))


def _scatter(layers: Sequence[float], gap: float) -> float:
    """Scatter of one day's total relative to its mean: of layers in weight, and of days without.

    Layers on every g-th day by chance, of scatter c in weight: 1 + scatter² = (1 + c²) g. What is
    usual counts as some layers more.
    """
    usual = USUAL_LAYERS.value
    mean = sum(layers) / len(layers) if layers else 1.0
    squares = sum((kg / mean - 1) ** 2 for kg in layers)
    weights = (usual * PORTIONS.value**2 + squares) / (usual + len(layers))
    gaps = max(len(layers) - 1, 0)
    every = (usual * RHYTHM.value + gaps * gap) / (usual + gaps)
    return sqrt((1 + weights) * every - 1)


def _crossing(left: float, spread: float, rate: _Rate, z: float, since: int = 0) -> int | None:
    """First day by which the sum has reached what is left, at so many standard deviations.

    The last layer reaches over the brim by half of itself. The rate is lognormal: it may be further
    over its median than under it. On no day before `since` it can have reached it.
    """
    wanted = left + rate.layer / 2 if left > 0 else left
    off = abs(exp(-z * rate.error / rate.median) - 1) * rate.median
    for days in range(since, HORIZON):
        by_chance = z**2 * (days * rate.scatter**2 + spread**2)
        deviation = copysign(sqrt(by_chance + (days * off) ** 2), z)
        if days * rate.median - deviation >= wanted - 1e-9:
            return days
    return None


def _said(day: date | None, earliest: date | None, latest: date | None, left: float) -> str:
    if left <= 0:
        return "By what was logged the bin is full: seal it."
    if day is None:
        return "At this rate it takes more than a year to fill: use a smaller bin."
    until = f"between {earliest} and {latest}" if latest else f"on {earliest} or later"
    return f"Full about {day}; four times in five {until}."
