"""Marks: stretches of words that the word lists know, found in one pass."""

from collections.abc import Callable, Iterable, Iterator
from functools import partial
from typing import Any, NamedTuple


class Mark(NamedTuple):
    """A stretch of words that means something to us."""

    start: int
    """Index of its first word."""
    end: int
    """Index after its last word."""
    tag: str
    """Which list it is from: `food`, `part`, `verb`, `sign`, `bin` ..."""
    value: Any


Entry = tuple[str, str, Any]
"""A phrase in lower case, its tag, its value."""


_Row = tuple[list[str], str, Any]
"""The words of a phrase behind its first, its tag, its value."""


class Phrasebook:
    """Phrases by their first two words, the longest first; one word alone stands under each."""

    def __init__(self, entries: Iterable[Entry]) -> None:
        by_first: dict[str, list[_Row]] = {}
        for phrase, tag, value in entries:
            first, *rest = phrase.split()
            by_first.setdefault(first, []).append((rest, tag, value))
        self._rows = {first: _by_second(rows) for first, rows in by_first.items()}
        self.firsts = frozenset(self._rows)
        """The words that phrases begin with."""

    def __contains__(self, word: str) -> bool:
        return word in self._rows

    def __iter__(self) -> Iterator[str]:
        return iter(self._rows)

    def find(self, norms: list[str]) -> list[Mark]:
        """All marks: the longest phrase of a tag at each place, none inside another of its tag."""
        found: list[Mark] = []
        if self.firsts.isdisjoint(norms):
            return found
        rows, last = self._rows, len(norms) - 1
        taken: dict[str, int] = {}
        for i in [i for i, norm in enumerate(norms) if norm in rows]:
            known = rows[norms[i]]
            for rest, tag, value in (i < last and known.get(norms[i + 1])) or known[""]:
                if tag in taken and taken[tag] > i:
                    continue
                end = i + 1
                if rest:
                    end += len(rest)
                    if norms[i + 1 : end] != rest:
                        continue
                found.append(_mark((i, end, tag, value)))
                taken[tag] = end
        return found


_mark: Callable[[tuple[int, int, str, Any]], Mark] = partial(tuple.__new__, Mark)
"""Makes a mark in half the time that its own constructor takes."""


def _by_second(rows: list[_Row]) -> dict[str, list[_Row]]:
    alone = [row for row in rows if not row[0]]
    found: dict[str, list[_Row]] = {"": alone}
    for row in sorted(rows, key=lambda row: -len(row[0])):
        if row[0]:
            found.setdefault(row[0][0], []).append(row)
    return {second: [*longer, *alone] if second else alone for second, longer in found.items()}
