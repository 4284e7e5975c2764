"""Letters and words without which a reader finds nothing, looked for for all readers at once."""

from collections.abc import Iterable, Mapping, Sequence
from functools import lru_cache
from typing import Generic, TypeVar

_Reader = TypeVar("_Reader")
_LETTERS = 3
"""Letters of a cue's longest word by which it is looked up; few cues of all have those of any one
word."""
_WORDS = 4096
"""Words whose cues are remembered; a group says the same few thousand over and over."""


class Cues(Generic[_Reader]):
    """The cues of several readers, in lower case; each may stand anywhere, also inside a word."""

    def __init__(self, cues: Mapping[_Reader, Iterable[str]]) -> None:
        self._by_start: dict[str, list[tuple[str, str, _Reader]]] = {}
        for reader, each in cues.items():
            for cue in each:
                longest = max(cue.split(" "), key=len)
                self._by_start.setdefault(longest[:_LETTERS], []).append(
                    (_with_gaps(longest, cue), cue, reader)
                )
        self._short = [start for start in self._by_start if len(start) < _LETTERS]
        self._near = lru_cache(_WORDS)(self._of_word)

    def heard(self, text: str) -> set[_Reader]:
        """The readers of which a cue stands in a text of lower case."""
        words = set(text.split(" "))
        return {reader for word in words for cue, reader in self._near(word) if cue in text}

    def _of_word(self, word: str) -> Sequence[tuple[str, _Reader]]:
        """The cues whose longest word stands in a word, at its ends where the cue goes on there."""
        apart = f" {word} "
        starts = {word[i : i + _LETTERS] for i in range(len(word) - _LETTERS + 1)}
        starts &= self._by_start.keys()
        starts.update(self._short)
        return [
            (cue, reader)
            for start in starts
            for longest, cue, reader in self._by_start[start]
            if longest in apart
        ]


def _with_gaps(word: str, cue: str) -> str:
    """A word of a cue with the spaces that stand beside it there."""
    start = cue.index(word)
    end = start + len(word)
    return cue[max(0, start - 1) : start] + word + cue[end : end + 1]


class WordCues(Generic[_Reader]):
    """The words of several readers without one of which each finds nothing."""

    def __init__(self, cues: Mapping[_Reader, Iterable[str]]) -> None:
        self._of: dict[str, set[_Reader]] = {}
        for reader, words in cues.items():
            for word in words:
                self._of.setdefault(word, set()).add(reader)

    def heard(self, words: Iterable[str]) -> set[_Reader]:
        """The readers of which a cue is among the words."""
        found: set[_Reader] = set()
        for word in words:
            if word in self._of:
                found |= self._of[word]
        return found
