"""When to drain, seal, bury and plant, in whole calendar days.

A window is the days from `start` to `end`, both included. The dates are those of the group's own
zone; nothing here knows of hours.
"""

from dataclasses import dataclass
from datetime import date, timedelta
from math import ceil

from handlers.practice.figure import Figure, Reckoning, Refused, number, within
from handlers.practice.growth import FIGURES as GROWTH
from handlers.practice.growth import RANGE, slowness

DRAIN = Figure(
    "days between drainings",
    2,
    "d",
    "suppliers: every other day, or every 2 to 3 days",
    "common practice",
    2,
    3,
)
FILL = Figure(
    "longest filling, from first layer to sealing",
    14,
    "d",
    "Footer, Bokashi Composting, 2013, ch. 6",
    "published",
    1,
    14,
)
FERMENT = Figure(
    "days sealed, at room temperature",
    14,
    "d",
    "Footer 2013 ch. 7; a community booklet (New York, 2012-15); a US retailer says 10 to 12",
    "published",
    10,
    14,
)
LATE = Figure(
    "days sealed after which a bin is late, at room temperature",
    21,
    "d",
    "two to three weeks is the longest that a source names (a US supplier)",
    "common practice",
    14,
    21,
)
FERMENT_MOST = Figure(
    "longest ferment that is forecast", 42, "d", "bound on the growth model's ratio", "derived"
)
ROOM = Figure(
    "temperature at which the usual days hold",
    20,
    "°C",
    "trade: best 20 to 25 °C; within it the model's change is under three days",
    "common practice",
    18,
    24,
)
WARM_LEAST = Figure(
    "shortest ferment to the usual day, however warm",
    12,
    "d",
    "a US garden retailer's guide: 10 to 12 days",
    "published",
    10,
    14,
)
PLANT = Figure(
    "days in warm soil before roots",
    21,
    "d",
    "two weeks (a New York booklet), two to three (a UK master composter)",
    "published",
    14,
    21,
)
PLANT_COOL = Figure(
    "days in soil of 10 to 15 °C before roots",
    28,
    "d",
    "band fitted to two to six weeks by temperature (a UK master composter)",
    "derived",
    21,
    28,
)
PLANT_COLD = Figure(
    "days in soil of 5 to 10 °C before roots",
    56,
    "d",
    "halving of decay for each 10 °C, nearly none below 5 °C",
    "derived",
    42,
    56,
)
SOIL_BANDS = (
    Figure("soil warm enough for the usual wait", 15, "°C", "band of the rows above", "derived"),
    Figure("soil cool but alive", 10, "°C", "band of the rows above", "derived"),
    Figure("soil in which little happens below", 5, "°C", "soil respiration", "from memory"),
)

_WARMEST, _COLDEST = 60.0, -40.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Window(Reckoning):
    """From the first day on which to do it to the last by which it should be done."""

    start: date
    end: date


@dataclass(frozen=True, slots=True, kw_only=True)
class BuryWindow(Window):
    """When a sealed bin is ready to bury, and after which day it is late."""

    late_after: date


def drain_window(last: date) -> Window:
    """Days on which to drain next, after the last draining (or the first layer)."""
    start, end = after(last, _low(DRAIN)), after(last, _high(DRAIN))
    return Window(
        start=start,
        end=end,
        steps=(f"{last} + {_low(DRAIN)} to {_high(DRAIN)} days = {start} to {end}",),
        figures=(DRAIN,),
        lines=(f"Drain between {start} and {end}.",),
    )


def seal_by(first_layer: date) -> Window:
    """The last day to seal a bin, however full, after its first layer."""
    end = after(first_layer, _high(FILL))
    return Window(
        start=first_layer,
        end=end,
        steps=(f"{first_layer} + {_high(FILL)} days = {end}",),
        figures=(FILL,),
        lines=(f"Seal by {end}, full or not.",),
    )


def bury_window(sealed: date, celsius: float | None = None) -> BuryWindow:
    """When to bury a bin sealed on that day and kept at that temperature (unknown: a room's)."""
    if celsius is not None:
        _believable(celsius, "The bin")
    first, last, late = (
        _stretched(days, celsius) for days in (_low(FERMENT), _high(FERMENT), _high(LATE))
    )
    last = max(last, int(WARM_LEAST.value))
    late = max(late, last + _high(LATE) - _high(FERMENT))
    start, end = after(sealed, first), after(sealed, last)
    steps, used = _why_stretched(celsius)
    return BuryWindow(
        start=start,
        end=end,
        late_after=after(sealed, late),
        steps=(*steps, f"{sealed} + {first} to {last} days = {start} to {end}"),
        figures=(FERMENT, LATE, *used),
        lines=(
            f"Bury between {start} and {end}; it is late after {after(sealed, late)}.",
            *_temperature_word(celsius),
        ),
    )


def plant_window(buried: date, celsius: float | None = None) -> Window:
    """From the first day for roots, to the day by which it is usually ready; soil temperature."""
    if celsius is not None:
        _believable(celsius, "The soil")
    band = _soil_band(celsius)
    start, end = after(buried, _low(band)), after(buried, _high(band))
    lines = [f"Plant from {start}, more surely from {end}."]
    if celsius is not None and celsius < SOIL_BANDS[2].value:
        lines.append("In soil this cold little happens: count from the day it is over 5 °C.")
    return Window(
        start=start,
        end=end,
        steps=(f"{buried} + {_low(band)} to {_high(band)} days = {start} to {end}",),
        figures=(band, *SOIL_BANDS),
        lines=tuple(lines),
    )


def after(day: date, days: int) -> date:
    """So many calendar days later; Refused where the calendar ends."""
    try:
        return day + timedelta(days=days)
    except OverflowError:
        raise Refused(f"{day} is too near the end of the calendar: check the year.") from None


def is_room(celsius: float | None) -> bool:
    """Whether the usual days hold: nothing known, or about a room's temperature."""
    return celsius is None or (ROOM.low or 0) <= celsius <= (ROOM.high or 0)


def _stretched(days: int, celsius: float | None) -> int:
    if celsius is None or is_room(celsius):
        return days
    # The first day is never earlier than the usual one; the estimate is rounded up.
    stretched = ceil(days * slowness(celsius) - 1e-9)
    return min(max(stretched, _low(FERMENT)), int(FERMENT_MOST.value))


def _why_stretched(celsius: float | None) -> tuple[tuple[str, ...], tuple[Figure, ...]]:
    if celsius is None or is_room(celsius):
        return (), (ROOM,)
    factor = number(slowness(celsius))
    steps = (
        f"at {number(celsius)} °C growth takes {factor} times as long as at 20 °C",
        f"{_low(FERMENT)} and {_high(FERMENT)} days x {factor}, kept to "
        f"{_low(FERMENT)} to {int(FERMENT_MOST.value)} days",
    )
    return steps, (ROOM, *GROWTH, FERMENT_MOST, WARM_LEAST)


def _temperature_word(celsius: float | None) -> tuple[str, ...]:
    if celsius is None or is_room(celsius):
        return ()
    if celsius < (RANGE.low or 0):
        return ("Below 6 °C it hardly ferments: bring the bin indoors. The days are a guess.",)
    if celsius > (RANGE.high or 0):
        return ("Above 31 °C is hotter than the estimate knows: keep the bin cooler.",)
    return ("The days are an estimate from the temperature, not a promise.",)


def _soil_band(celsius: float | None) -> Figure:
    warm, cool, _ = (figure.value for figure in SOIL_BANDS)
    if celsius is None or celsius >= warm:
        return PLANT
    return PLANT_COOL if celsius >= cool else PLANT_COLD


def _believable(celsius: float, what: str) -> None:
    within(
        celsius, _COLDEST, _WARMEST, what=what, unit="°C", advice="give its temperature in °C or °F"
    )


def _low(figure: Figure) -> int:
    return int(figure.low if figure.low is not None else figure.value)


def _high(figure: Figure) -> int:
    return int(figure.high if figure.high is not None else figure.value)
