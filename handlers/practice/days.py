"""When to drain, seal, bury and plant, in whole calendar days.

A window is the days from `start` to `end`, both included. The dates are those of the group's own
zone; nothing here knows of hours.
"""

from dataclasses import dataclass
from datetime import date, timedelta
from math import ceil

from handlers.practice.figure import Figure, Reckoning, Refused, number, within
from handlers.practice.growth import RANGE, slowness

DRAIN = Figure(
    "days between drainings",
    2,
    "d",
    "suppliers say every other day, or every 2 to 3 days",
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
    "Footer 2013 ch. 7; a US retailer says 10 to 12",
    "published",
    10,
    14,
)
LATE = Figure(
    "days sealed after which a bin is late, at room temperature",
    21,
    "d",
    "a US supplier: two to three weeks",
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
    "",
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
    "a New York booklet: two weeks; a UK master composter: two to three",
    "published",
    14,
    21,
)
PLANT_COOL = Figure(
    "days in soil of 10 to 15 °C before roots",
    28,
    "d",
    "a UK master composter: two to six weeks by temperature",
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
    Figure(
        "soil in which little happens below",
        5,
        "°C",
        "“biologic zero” of soil science (Rabenhorst, Wetlands 25:616-621, 2005)",
        "published",
        5,
        10,
    ),
)

COLDEST, HOTTEST = -40.0, 60.0
"""°C: a bin or a garden's soil beyond these was not measured but mistyped."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Window(Reckoning):
    """From the first day on which to do it to the last by which it should be done."""

    start: date
    end: date


@dataclass(frozen=True, slots=True, kw_only=True)
class BuryWindow(Window):
    """When a sealed bin is ready to bury, and after which day it is late."""

    late_after: date


def drained_every() -> str:
    """How often a bin is drained, in words."""
    return f"every {low_days(DRAIN)} or {high_days(DRAIN)} days"


def drain_window(last: date) -> Window:
    """Days on which to drain next, after the last draining (or the first layer)."""
    start, end = after(last, low_days(DRAIN)), after(last, high_days(DRAIN))
    return Window(
        start=start,
        end=end,
        steps=(f"{last} + {low_days(DRAIN)} to {high_days(DRAIN)} days = {start} to {end}",),
        figures=(DRAIN,),
        lines=(f"Drain between {start} and {end}.",),
    )


def seal_by(first_layer: date) -> Window:
    """The last day to seal a bin, however full, after its first layer."""
    end = after(first_layer, high_days(FILL))
    return Window(
        start=first_layer,
        end=end,
        steps=(f"{first_layer} + {high_days(FILL)} days = {end}",),
        figures=(FILL,),
        lines=(f"Seal by {end}, full or not.",),
    )


def bury_window(
    sealed: date, celsius: float | None = None, *, ferment_days: int | None = None
) -> BuryWindow:
    """When to bury a bin sealed on that day and kept at that temperature (unknown: a room's).

    `ferment_days` is what a group takes at room temperature instead of 10 days to two weeks: its
    bins are never ready before, however warm.
    """
    if celsius is not None:
        believable(celsius, "A bin")
    usual = high_days(FERMENT) if ferment_days is None else ferment_days
    within(usual, 5, 60, what="The ferment", unit="days", advice="two weeks are usual")
    earliest = low_days(FERMENT) if usual == high_days(FERMENT) else usual
    first, last = (_stretched(days, celsius, earliest) for days in (earliest, usual))
    if not is_room(celsius):
        last = max(last, min(usual, int(WARM_LEAST.value)))
    late = last + max(
        _stretched(high_days(LATE), celsius, earliest) - last, high_days(LATE) - high_days(FERMENT)
    )
    start, end, late_after = (after(sealed, days) for days in (first, last, late))
    steps, used = _why_stretched(celsius, earliest)
    return BuryWindow(
        start=start,
        end=end,
        late_after=late_after,
        steps=(*steps, f"{sealed} + {first} to {last} days = {start} to {end}"),
        figures=(FERMENT, LATE, *used),
        chosen=("ferment_days",),
        lines=(
            f"Bury {_between(start, end)}; it is late after {late_after}.",
            *_temperature_word(celsius),
        ),
    )


def plant_window(
    buried: date, celsius: float | None = None, *, plant_days: int | None = None
) -> Window:
    """From the first day for roots, to the day by which it is usually ready; soil temperature.

    `plant_days` is the wait that a group takes in warm soil instead of two to three weeks: nothing
    is planted before.
    """
    if celsius is not None:
        believable(celsius, "Soil")
    usual = high_days(PLANT) if plant_days is None else plant_days
    within(usual, 7, 120, what="The wait", unit="days", advice="three weeks are usual")
    band = _soil_band(celsius)
    more = usual - high_days(PLANT)
    first, last = low_days(band) + more, high_days(band) + more
    first = max(first, usual) if more else first
    start, end = after(buried, first), after(buried, last)
    surely = f", more surely from {end}" if start < end else ""
    lines = [f"Plant from {start}{surely}."]
    if celsius is not None and celsius < SOIL_BANDS[2].value:
        lines.append("In soil this cold little happens: count from the day it is over 5 °C.")
    return Window(
        start=start,
        end=end,
        steps=(f"{buried} + {first} to {last} days = {start} to {end}",),
        figures=(band,),
        chosen=("plant_days",),
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


def _stretched(days: int, celsius: float | None, earliest: int) -> int:
    if celsius is None or is_room(celsius):
        return days
    # The first day is never earlier than the usual one; the estimate is rounded up.
    stretched = ceil(days * slowness(celsius) - 1e-9)
    return min(max(stretched, earliest), max(days, int(FERMENT_MOST.value)))


def _why_stretched(
    celsius: float | None, earliest: int
) -> tuple[tuple[str, ...], tuple[Figure, ...]]:
    if celsius is None or is_room(celsius):
        return (), ()
    factor = number(slowness(celsius))
    steps = (
        f"at {number(celsius)} °C growth takes {factor} times as long as at 20 °C; never under "
        f"{earliest} days nor over {max(earliest, int(FERMENT_MOST.value))}",
    )
    return steps, (RANGE,)


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


def believable(celsius: float, what: str) -> float:
    """The temperature, if a bin or soil can have it; else Refused."""
    advice = "give its temperature in °C or °F"
    return within(celsius, COLDEST, HOTTEST, what=what, unit="°C", advice=advice)


def held(celsius: float) -> float:
    """The nearest temperature that a bin can have."""
    return min(max(celsius, COLDEST), HOTTEST)


def _between(start: date, end: date) -> str:
    return f"about {start}" if start == end else f"between {start} and {end}"


def low_days(figure: Figure) -> int:
    """The least of a figure in days."""
    return int(figure.low if figure.low is not None else figure.value)


def high_days(figure: Figure) -> int:
    """The most of a figure in days."""
    return int(figure.high if figure.high is not None else figure.value)
