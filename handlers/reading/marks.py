"""Marks: stretches of words that the word lists know, found in one pass."""

from collections.abc import Iterable, Iterator, Sequence
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


class Phrasebook:
    """Phrases by their first word, the longest first."""

    def __init__(self, entries: Iterable[Entry]) -> None:
        rows: dict[str, list[tuple[tuple[str, ...], str, Any]]] = {}
        for phrase, tag, value in entries:
            words = tuple(phrase.split())
            rows.setdefault(words[0], []).append((words[1:], tag, value))
        for known in rows.values():
            known.sort(key=lambda row: -len(row[0]))
        self._rows = rows

    def __contains__(self, word: str) -> bool:
        return word in self._rows

    def __iter__(self) -> Iterator[str]:
        return iter(self._rows)

    def find(self, norms: Sequence[str]) -> list[Mark]:
        """All marks: the longest phrase of a tag at each place, none inside another of its tag."""
        found: list[Mark] = []
        rows = self._rows
        taken: dict[str, int] = {}
        for i, norm in enumerate(norms):
            known = rows.get(norm)
            if known is None:
                continue
            for rest, tag, value in known:
                if taken.get(tag, 0) > i:
                    continue
                end = i + 1 + len(rest)
                if not rest or tuple(norms[i + 1 : end]) == rest:
                    found.append(Mark(i, end, tag, value))
                    taken[tag] = end
        return found
