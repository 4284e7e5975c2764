"""Marks: stretches of words that the word lists know, found in one pass."""

from collections.abc import Iterable, Iterator
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

    def __contains__(self, word: str) -> bool:
        return word in self._rows

    def __iter__(self) -> Iterator[str]:
        return iter(self._rows)

    def find(self, norms: list[str]) -> list[Mark]:
        """All marks: the longest phrase of a tag at each place, none inside another of its tag."""
        found: list[Mark] = []
        rows = self._rows
        if rows.keys().isdisjoint(norms):
            return found
        taken: dict[str, int] = {}
        behind = [*norms[1:], ""]
        for i in [i for i, norm in enumerate(norms) if norm in rows]:
            known, after = rows[norms[i]], behind[i]
            for rest, tag, value in known.get(after) or known[""]:
                if taken.get(tag, 0) > i:
                    continue
                end = i + 1 + len(rest)
                if not rest or norms[i + 1 : end] == rest:
                    found.append(Mark(i, end, tag, value))
                    taken[tag] = end
        return found


def _by_second(rows: list[_Row]) -> dict[str, list[_Row]]:
    alone = [row for row in rows if not row[0]]
    found: dict[str, list[_Row]] = {"": alone}
    for row in sorted(rows, key=lambda row: -len(row[0])):
        if row[0]:
            found.setdefault(row[0][0], []).append(row)
    return {second: [*longer, *alone] if second else alone for second, longer in found.items()}
