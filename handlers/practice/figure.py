"""What the craft's arithmetic is made of: a figure with its source, and an answer that can say why.

Every figure stands once, in the module whose formula uses it. A figure that we could only recall
says so, and a rule of thumb is never called published.
"""

from collections.abc import Iterable
from dataclasses import dataclass, fields
from datetime import date
from math import floor, isfinite, log10
from typing import Literal, get_args

Standing = Literal["published", "common practice", "from memory", "derived"]

STANDINGS: tuple[Standing, ...] = get_args(Standing)


class Refused(ValueError):
    """What was asked cannot be reckoned; the message is one sentence that says what to do."""


@dataclass(frozen=True, slots=True)
class Figure:
    """One figure of the craft: its value in its unit, how far it ranges, and where it is from."""

    name: str
    value: float
    unit: str
    source: str
    standing: Standing
    low: float | None = None
    high: float | None = None
    note: str = ""

    def line(self) -> str:
        """The figure as "why?" prints it."""
        words = f"{self.name}: {number(self.value)} {self.unit}"
        if self.low is not None and self.high is not None:
            words += f" ({number(self.low)} to {number(self.high)})"
        words += f"; {self.standing}: {self.source}"
        return f"{words} ({self.note})" if self.note else words


@dataclass(frozen=True, slots=True, kw_only=True)
class Reckoning:
    """What every topic answers with: its own results, and how they came about."""

    steps: tuple[str, ...]
    """The arithmetic, as a teacher would write it on a board."""
    figures: tuple[Figure, ...]
    """The figures that went into it."""
    lines: tuple[str, ...]
    """The answer in plain sentences."""

    def why(self) -> tuple[str, ...]:
        """The steps, then each figure with its source and how sure it is."""
        return (*self.steps, *(figure.line() for figure in self.figures))

    def results(self) -> dict[str, object]:
        """The results by name, ready for JSON; dates as YYYY-MM-DD, what is not known left out."""
        own = (f.name for f in fields(self) if f.name not in _WORKING)
        return {name: _plain(value) for name in own if (value := getattr(self, name)) is not None}


_WORKING = frozenset(f.name for f in fields(Reckoning))


def _plain(value: object) -> object:
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, float):
        return round(value, 6)
    if isinstance(value, tuple):
        return [_plain(item) for item in value]
    if hasattr(value, "__dataclass_fields__"):
        return {name: _plain(getattr(value, name)) for name in value.__dataclass_fields__}
    return value


def number(value: float, digits: int = 3) -> str:
    """The number to so many significant digits, without needless noughts or an exponent."""
    if value == 0:
        return "0"
    places = digits - 1 - floor(log10(abs(value)))
    text = f"{round(value, places):.{max(places, 0)}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


_QUARTERS = ("", "¼", "½", "¾")


def spoons(value: float) -> str:
    """A count of spoons as people measure: quarters up to two, halves up to ten, then whole."""
    step = 0.25 if value < 2 else 0.5 if value < 10 else 1.0
    quarters = max(1, round(value / step) * round(step * 4))
    whole, rest = divmod(quarters, 4)
    return f"{whole or ''}{_QUARTERS[rest]}"


def listed(words: Iterable[str], last: str = "and") -> str:
    """The words as a list in a sentence: "a, b and c"."""
    *first, end = words
    return f"{', '.join(first)} {last} {end}" if first else end


def within(value: float, low: float, high: float, *, what: str, unit: str, advice: str) -> float:
    """The value, if it lies from `low` to `high`; else Refused, ending in the advice."""
    if not isfinite(value):
        raise Refused(f"{what} has to be a plain number: {advice}.")
    if value < low:
        raise Refused(f"{what} cannot be {number(value)} {unit}: {advice}.")
    if value > high:
        raise Refused(
            f"{what} of {number(value)} {unit} is beyond what I reckon with "
            f"({number(high)} {unit}): {advice}."
        )
    return value


def positive(value: float, high: float, *, what: str, unit: str, advice: str) -> float:
    """The value, if it is above nought and at most `high`; else Refused, ending in the advice."""
    if value == 0:
        raise Refused(f"{what} cannot be nought: {advice}.")
    return within(value, 0, high, what=what, unit=unit, advice=advice)
