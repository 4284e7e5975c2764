"""Which words the stretches of a message hold: amounts, days, names and the like; and the walk that
accounts for every word.
"""

from collections.abc import Collection, Iterable, Sequence
from itertools import pairwise
from typing import Protocol, TypeVar


class Span(Protocol):
    """Something read from words[start:end]."""

    @property
    def start(self) -> int:
        """The index of its first word."""
        ...

    @property
    def end(self) -> int:
        """The index after its last word."""
        ...


_S = TypeVar("_S", bound=Span)


def accounted(norms: Sequence[str], *spans: Iterable[_S], end: int | None = None) -> list[_S | str]:
    """All of words[:end] in turn: the span that begins there, or else the word itself.

    Of two spans that begin at one word the later given counts; one that begins within another is
    passed over, so that no word counts twice.
    """
    by_start = {span.start: span for some in spans for span in some}
    found: list[_S | str] = []
    i, stop = 0, len(norms) if end is None else end
    while i < stop:
        span = by_start.get(i)
        found.append(norms[i] if span is None else span)
        i = i + 1 if span is None else max(span.end, i + 1)
    return found


def indexes(*spans: Iterable[Span]) -> frozenset[int]:
    """The indexes of all words that the spans hold."""
    if not any(spans):
        return frozenset()
    return frozenset([i for some in spans for span in some for i in range(span.start, span.end)])


def unheld(
    norms: Sequence[str], held: Collection[int], start: int = 0, end: int | None = None
) -> list[str]:
    """The words start to end of which no index is held (see `indexes`)."""
    stop = len(norms) if end is None else end
    return [norms[i] for i in range(start, stop) if i not in held]


def in_a_row(norms: Sequence[str], spans: Sequence[Span], joints: Collection[str]) -> bool:
    """Whether nothing but joints ("and", commas), and at least one, stands between them in turn."""
    return all(
        first.end < second.start and all(n in joints for n in norms[first.end : second.start])
        for first, second in pairwise(spans)
    )
