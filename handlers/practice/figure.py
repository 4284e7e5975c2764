"""What the craft's arithmetic is made of: a figure with its source, and an answer that can say why.

Every figure stands once, in the module whose formula uses it. A figure that we could only recall
says so, and a rule of thumb is never called published.
"""

from collections.abc import Iterable
from dataclasses import dataclass, fields, replace
from datetime import date
from functools import lru_cache
from math import floor, isfinite, log10
from typing import Literal, Self, get_args

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
    """Who says so; common practice needs no name."""
    standing: Standing
    low: float | None = None
    high: float | None = None

    def line(self, *, cited: bool = False) -> str:
        """The figure as "why?" prints it; `cited`: its source was named just before."""
        # A share "of the mass" reads as a percentage of it.
        times, unit = (100, f"% {self.unit}") if self.unit.startswith("of ") else (1, self.unit)
        words = f"{self.name}: {number(self.value * times)} {unit}"
        if self.low is not None and self.high is not None:
            words += f" ({ranging(self, times)})"
        words += f", {self.standing}"
        if not self.source:
            return words
        return f"{words}: same source" if cited else f"{words}: {self.source}"


@dataclass(frozen=True, slots=True, kw_only=True)
class Reckoning:
    """What every topic answers with: its own results, and how they came about."""

    steps: tuple[str, ...]
    """The arithmetic, as a teacher would write it on a board."""
    figures: tuple[Figure, ...]
    """The figures that decide it."""
    lines: tuple[str, ...]
    """The answer in plain sentences."""
    chosen: tuple[str, ...] = ()
    """What decided it that a group may settle for itself, by its name in `choices`."""
    caution: str = ""
    """The name of the caution that goes with it, where harm is possible; empty if none."""

    def why(self) -> tuple[str, ...]:
        """The steps, then each figure with how sure it is and its source, each named once."""
        lines, cited = list(self.steps), set[str]()
        for figure in dict.fromkeys(self.figures):
            lines.append(figure.line(cited=figure.source in cited))
            cited.add(figure.source)
        return tuple(lines)

    def led_by(self, steps: Iterable[str], figures: Iterable["Figure"] = ()) -> Self:
        """The same with steps before its own, and the figures that those took."""
        return replace(self, steps=(*steps, *self.steps), figures=(*self.figures, *figures))

    def results(self) -> dict[str, object]:
        """The results by name, ready for JSON; dates as YYYY-MM-DD, what is not known left out."""
        own = (f.name for f in fields(self) if f.name not in _WORKING)
        return {name: _plain(value) for name in own if (value := getattr(self, name)) is not None}


_WORKING = frozenset(f.name for f in fields(Reckoning))


def _plain(value: object) -> object:
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, float):
        return float(f"{value:.12g}")
    if isinstance(value, tuple):
        return [_plain(item) for item in value]
    if hasattr(value, "__dataclass_fields__"):
        return {name: _plain(getattr(value, name)) for name in value.__dataclass_fields__}
    return value


@lru_cache(maxsize=1000)  # the same figures are named again and again
def number(value: float, digits: int = 3) -> str:
    """The number to so many significant digits, without needless noughts.

    An exponent only where no garden reaches.
    """
    if value == 0:
        return "0"
    if not 1e-9 < abs(value) < 1e15:
        return f"{value:.{digits}g}"
    places = digits - 1 - floor(log10(abs(value)))
    text = f"{round(value, places):.{max(places, 0)}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def ranging(figure: Figure, times: float = 1) -> str:
    """A figure from its lowest to its highest, `times` over: "10 to 14"."""
    if figure.low is None or figure.high is None:
        return number(figure.value * times)
    return f"{number(figure.low * times)} to {number(figure.high * times)}"


def fahrenheit(celsius: float | None) -> str:
    """Degrees Celsius in degrees Fahrenheit, to two digits."""
    return number((celsius or 0) * 1.8 + 32, 2)


def quoted(text: str) -> str:
    """Somebody's words to be named in a sentence: one line, short, nothing that cannot be seen."""
    seen = "".join(sign if sign.isprintable() else " " for sign in text)
    words = " ".join(seen.split())
    return f"“{words[:40]}…”" if len(words) > 40 else f"“{words}”"


_QUARTERS = ("", "¼", "½", "¾")


def in_spoons(value: float) -> float:
    """A count of spoons that people measure: quarters up to two, halves up to ten, then whole."""
    step = 0.25 if value < 2 else 0.5 if value < 10 else 1.0
    return max(0.25, round(value / step) * step)


def spoons(value: float) -> str:
    """A count of spoons as people measure it: "1¾"."""
    whole, rest = divmod(round(in_spoons(value) * 4), 4)
    return f"{whole or ''}{_QUARTERS[rest]}"


def listed(words: Iterable[str], last: str = "and") -> str:
    """The words as a list in a sentence: "a, b and c"."""
    *first, end = words
    return f"{', '.join(first)} {last} {end}" if first else end


def within(value: float, low: float, high: float, *, what: str, unit: str, advice: str) -> float:
    """The value, if it lies from `low` to `high`; else Refused, ending in the advice."""
    if not isfinite(value):
        raise Refused(f"{what} has to be a plain number: {advice}.")
    hair = 1e-9 * max(abs(low), abs(high))  # a limit in pounds is the same as in kilograms
    if value < low - hair:
        raise Refused(f"{what} cannot be {number(value)} {unit}: {advice}.")
    if value > high + hair:
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
