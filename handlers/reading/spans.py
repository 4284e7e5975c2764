"""Which words the stretches of a message hold: amounts, days, names and the like."""

from collections.abc import Collection, Iterable, Sequence
from itertools import pairwise
from typing import Protocol


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


def indexes(*spans: Iterable[Span]) -> frozenset[int]:
    """The indexes of all words that the spans hold."""
    if not any(spans):
        return frozenset()
    return frozenset([i for some in spans for span in some for i in range(span.start, span.end)])


def in_a_row(norms: Sequence[str], spans: Sequence[Span], joints: Collection[str]) -> bool:
    """Whether nothing but joints ("and", commas), and at least one, stands between them in turn."""
    return all(
        first.end < second.start and all(n in joints for n in norms[first.end : second.start])
        for first, second in pairwise(spans)
    )
