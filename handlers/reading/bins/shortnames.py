"""Short forms of a bin's name of several words: "the hall bin", "the barrel", "Bertha"."""

from collections import Counter
from collections.abc import Iterator, Sequence

from handlers.reading.words.binwords import BIN_WORDS, GENERIC, INTO, PLACE_NAMES, TOLD_BY
from handlers.reading.words.vocabulary import verb_words, vocabulary, words_in
from handlers.reading.words.words import norms_of

SHARED_WORDS = BIN_WORDS | words_in(
    "big old new wee little small tall fat the and one two three four five six seven eight "
    "nine ten plot room door side house number flat level front back top bottom end "
    "box pot wing block unit tower ward bay"
)
"""Words of many names, by which no bin is called alone; nor is one by its place."""


def short_names(bins: tuple[str, ...]) -> Iterator[tuple[str, str]]:
    """What else bins are called by, where no other one has the word."""
    parts = own_words(bins)
    for name in bins:
        words = norms_of(name).split()
        if len(words) < 2 or words[-1].isdecimal():
            continue
        called = [word for word in words if parts[word] == 1 and _tells_apart(word)]
        yield from ((f"{word} {vessel}", name) for word in called for vessel in _VESSELS)
        if len(words) == 2 and _stands_alone(*words) and _is_first_of(words, parts, bins):
            yield words[1], name


def own_words(bins: tuple[str, ...]) -> Counter[str]:
    """In how many names each word stands."""
    return Counter(word for name in bins for word in set(norms_of(name).split()))


def _tells_apart(word: str) -> bool:
    """Whether a bin may be called by the word and "bin"."""
    common = word in SHARED_WORDS or word in TOLD_BY or word in GENERIC
    return len(word) > 2 and word.isalpha() and not common


def _stands_alone(lead: str, word: str) -> bool:
    """ "Green barrel" is the barrel, "big Bertha" is Bertha; "big kitchen" is not the kitchen."""
    if word in _RARE_VESSELS:
        return True
    known = word in vocabulary() or word in verb_words() or word in PLACE_NAMES | SHARED_WORDS
    return lead in _EPITHETS and len(word) > 2 and word.isalpha() and not known


def _is_first_of(words: Sequence[str], parts: Counter[str], bins: tuple[str, ...]) -> bool:
    """Whether no other bin is called so, but for a smaller one: beside little Bertha, Bertha is
    the big one."""
    lead, word = words
    smaller = {f"{small} {word}" for small in _SMALL} if lead not in _SMALL else set()
    return parts[word] - sum(norms_of(name) in smaller for name in bins) == 1


def is_of_another(norms: Sequence[str], start: int) -> bool:
    """ "Little Bertha" beside big Bertha, "the black barrel", "the town hall bin" beside the green
    barrel and the parish hall: one that the group has not.
    """
    before = norms[start - 1] if start else ""
    if norms[start] in _RARE_VESSELS or norms[start + 1 : start + 2] in _VESSEL_BEHIND:
        return before[:1].isalpha() and before not in _BEFORE_SHORT
    return before in _OTHERS


_VESSELS = sorted(BIN_WORDS)
_VESSEL_BEHIND = [[vessel] for vessel in _VESSELS]
_RARE_VESSELS = words_in("tub drum barrel keg crock tote churn cask crate trug urn")
"""Vessels of which a group has one or two; any of its bins may be a bucket."""
_EPITHETS = words_in("big little old auld wee fat tiny mini long tall young daft")
_SMALL = words_in("little wee tiny mini young")
_BEFORE_SHORT = INTO | words_in(
    "the our this that and & n out is was has shut drained sealed buried fed closed opened topped "
    "filled emptied handing passing take keep"
)
"""What stands before a name of which only one word is said."""
_OTHERS = _EPITHETS | words_in("a an new another second other next spare")
