"""Letters without which a reader finds nothing, looked for in a text for all readers at once."""

from collections.abc import Iterable, Mapping
from typing import Generic, TypeVar

_Reader = TypeVar("_Reader")
_LETTERS = 3
"""Letters of a cue by which it is looked up; few cues of all begin with those of any one text."""


class Cues(Generic[_Reader]):
    """The cues of several readers, in lower case; each may stand anywhere, also inside a word."""

    def __init__(self, cues: Mapping[_Reader, Iterable[str]]) -> None:
        self._by_start: dict[str, list[tuple[str, _Reader]]] = {}
        for reader, each in cues.items():
            for cue in each:
                self._by_start.setdefault(cue[:_LETTERS], []).append((cue, reader))
        self._short = [start for start in self._by_start if len(start) < _LETTERS]

    def heard(self, text: str) -> set[_Reader]:
        """The readers of which a cue stands in a text of lower case."""
        starts = {text[i : i + _LETTERS] for i in range(len(text) - _LETTERS + 1)}
        starts &= self._by_start.keys()
        starts.update(self._short)
        return {
            reader
            for start in starts
            for cue, reader in self._by_start[start]
            if len(cue) == _LETTERS or cue in text
        }
