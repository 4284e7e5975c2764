"""Figures of the benches: each beside a peer or a limit that was met in the same run."""

import json
import statistics
import time
from collections.abc import Sequence
from dataclasses import asdict, dataclass
from typing import Any

from bot import hearing


@dataclass(frozen=True, slots=True, kw_only=True)
class Measured:
    """One figure and what it is held against.

    With a `peer`, the ratio of the two is what counts, and `bar` is the most it should be; without
    one, `bar` is the most (or, where `more_is_better`, the least) that the figure itself should be.
    """

    what: str
    value: float
    unit: str
    peer: str = ""
    beside: float | None = None
    bar: float | None = None
    more_is_better: bool = False
    note: str = ""

    @property
    def ratio(self) -> float | None:
        """The figure by its peer's."""
        return self.value / self.beside if self.beside else None

    @property
    def is_reached(self) -> bool | None:
        """Whether the bar is reached; None where none is set."""
        if self.bar is None:
            return None
        counts = self.value if self.ratio is None else self.ratio
        return counts >= self.bar if self.more_is_better else counts <= self.bar


def median(values: Sequence[float]) -> float:
    """The middle one."""
    return statistics.median(values)


def p95(values: Sequence[float]) -> float:
    """What 95 in 100 do not pass."""
    return sorted(values)[min(len(values) - 1, int(len(values) * 0.95))]


def table(rows: Sequence[tuple[str, Measured]]) -> str:
    """The figures as lines, each with its bench, peer, bar and whether that is reached."""
    lines = [("bench", "figure", "value", "beside", "ratio", "bar", "")]
    for bench, one in rows:
        beside = "" if one.beside is None else f"{number(one.beside)} {one.unit} {one.peer}"
        ratio = "" if one.ratio is None else f"{one.ratio:.2f}"
        sign = "≥" if one.more_is_better else "≤"
        bar = "" if one.bar is None else f"{sign} {number(one.bar)}"
        reached = {None: "", True: "reached", False: "SHORT"}[one.is_reached]
        value = f"{number(one.value)} {one.unit}"
        lines.append((bench, one.what, value, beside, ratio, bar, reached))
    widths = [max(len(line[n]) for line in lines) for n in range(7)]
    text = [
        "  ".join(cell.ljust(width) for cell, width in zip(line, widths, strict=True)).rstrip()
        for line in lines
    ]
    notes = [f"  {one.what}: {one.note}" for _, one in rows if one.note]
    return "\n".join([*text, *notes])


def as_json(rows: Sequence[tuple[str, Measured]]) -> str:
    """The same for programs."""
    return json.dumps(
        [
            {"bench": bench, **asdict(one), "ratio": one.ratio, "is_reached": one.is_reached}
            for bench, one in rows
        ],
        ensure_ascii=False,
        indent=1,
    )


def number(value: float) -> str:
    """Three figures that count."""
    return f"{value:,.0f}" if value >= 1000 else f"{value:.3g}"


class Reading:
    """Takes the time that reading takes, while inside."""

    def __enter__(self) -> "Reading":
        self.spent: list[float] = []
        self._reading = vars(hearing)["Reading"]

        def read(*given: Any) -> Any:
            began = time.perf_counter()
            reading = self._reading(*given)
            assert reading.acts is not None  # it is read once its acts are asked for
            self.spent.append(time.perf_counter() - began)
            return reading

        vars(hearing)["Reading"] = read
        return self

    def __exit__(self, *_: object) -> None:
        vars(hearing)["Reading"] = self._reading
