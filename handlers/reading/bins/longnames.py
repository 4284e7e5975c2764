"""Names of bins that run over several words: "the kids' garden bin", "the St. Mary's bin"."""

from collections.abc import Sequence

from handlers.reading.bins.writtenbins import written
from handlers.reading.words.binwords import GENERIC, PLACE_NAMES, TOLD_BY, BinRef
from handlers.reading.words.titles import (
    SAINTS,
)
from handlers.reading.words.vocabulary import verb_words, vocabulary, words_in
from handlers.reading.words.words import Word, joined

_ARTICLES = frozenset({"the", "our"})
_BEGUN = words_in("opened started began launched")
_BETWEEN = words_in("de la le du des del della di da der und y et")
"""Within a name in other tongues."""
_LONGEST = 9
"""Words of a name at most."""


def names_bin(word: Word, index: int, taken: frozenset[int]) -> bool:
    """Whether a word before "bin" is what it is called, and does not only describe it."""
    if index in taken or word.kind != "word" or word.norm in GENERIC:
        return False
    return word.norm not in vocabulary() or word.norm in PLACE_NAMES | TOLD_BY


def in_full(
    ref: BinRef, words: Sequence[Word], norms: Sequence[str], taken: frozenset[int]
) -> BinRef:
    """The bin with all of its name: from the article on where a bin is begun, or where others
    have it ("the kids' garden bin").
    """
    if ref.name is None:
        return ref
    start, lowest = ref.start, max(0, ref.start - _LONGEST)
    whose = False
    while start > lowest and norms[start - 1] not in _ARTICLES:
        if before_owner(words, norms, start):
            start, whose = start - 2, True
        elif before_saint(words, norms, start):
            start -= 2
        elif _goes_on(words[start - 1], start - 1, taken):
            start -= 1
        else:
            return ref
    if start == ref.start or start == 0 or norms[start - 1] not in _ARTICLES:
        return ref
    begun = start >= 2 and norms[start - 2] in _BEGUN
    if not (begun or whose or norms[start] in SAINTS):
        return ref
    end = ref.end - 1
    return BinRef(start, ref.end, written(words, start, end), plain=True)


def before_owner(words: Sequence[Word], norms: Sequence[str], i: int) -> bool:
    """Whether "kids'" stands before word i: several who have what it names."""
    if i < 2 or norms[i - 1] != "'" or words[i - 2].kind != "word":
        return False
    ends = i >= len(words) or not joined(words, i)
    return joined(words, i - 1) and ends and norms[i - 2].endswith("s")


def before_saint(words: Sequence[Word], norms: Sequence[str], i: int) -> bool:
    """Whether "St." stands before word i, a name."""
    if i < 2 or norms[i - 1] != "." or norms[i - 2] not in SAINTS:
        return False
    return joined(words, i - 1) and words[i].text[:1].isupper()


def _goes_on(word: Word, index: int, taken: frozenset[int]) -> bool:
    """Whether a longer name goes on with a word before it."""
    if index in taken or word.kind != "word":
        return False
    if word.norm in _BETWEEN or names_bin(word, index, taken):
        return True
    capital = word.text[:1].isupper() and word.norm not in GENERIC
    return capital and word.norm not in verb_words()
