"""One more bin of a known one's name: "opened yard 2", "started the second yard bin"."""

from collections.abc import Sequence

from handlers.reading.calendar.daywords import ORDINALS
from handlers.reading.words.binwords import INTO, BinRef
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word

_BEGUN = words_in("opened started begun began open start begin new set")
_TOLD_OF = words_in("is 's got gets has had was holds takes")
_BEHIND = words_in("today yesterday now just too also and & with at as")
_MOST = 9
"""The highest number of a bin that is told so."""


def beside_known(
    words: Sequence[Word],
    norms: Sequence[str],
    refs: Sequence[BinRef],
    bins: Sequence[str],
    held: frozenset[int],
) -> tuple[BinRef, ...]:
    """The bins found, with one more of a known one's name in its place: "opened yard 2", "the
    second yard bin".
    """
    begun = not _BEGUN.isdisjoint(norms)
    return tuple([_next(words, norms, ref, bins, held, begun=begun) for ref in refs])


def _next(
    words: Sequence[Word],
    norms: Sequence[str],
    ref: BinRef,
    bins: Sequence[str],
    held: frozenset[int],
    *,
    begun: bool,
) -> BinRef:
    if not ref.known or ref.name is None or ref.name[-1:].isdecimal():
        return ref
    before, number = norms[ref.start - 1 : ref.start], 0
    start, end = ref.start, ref.end
    if begun and before and 1 < ORDINALS.get(before[0], 0) <= _MOST:
        start, number = start - 1, ORDINALS[before[0]]
    elif ref.end < len(norms) and words[ref.end].kind == "number" and ref.end not in held:
        behind = norms[ref.end + 1 : ref.end + 2]
        ends = not behind or not behind[0][:1].isalnum() or behind[0] in _BEHIND
        led = begun or not INTO.isdisjoint(norms[max(0, start - 2) : start])
        told = bool(behind) and behind[0] in _TOLD_OF
        if norms[ref.end].isdecimal() and (told or (led and ends)):
            number, end = int(norms[ref.end]), ref.end + 1
    if not 1 < number <= _MOST or any(bin.endswith(f" {number}") for bin in bins):
        return ref  # it is had already, or another bin may be meant by that number
    name = f"{ref.name} {number}"
    return BinRef(start, end, name, plain=True)
