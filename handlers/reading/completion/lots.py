"""A share of an amount, told with the bin that it went to: "a quarter of it in the shed"."""

from collections.abc import Collection, Sequence
from dataclasses import replace
from typing import NamedTuple, TypeVar

from handlers.reading.acts import Drain, Layer
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.digits import Number
from handlers.reading.measures.numbers import read_number
from handlers.reading.measures.proportions import MOST, PERCENT
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word

_REST = words_in("rest remainder remaining remains")
_TO = words_in("in into to for inside")
_THE = words_in("the my our")
_OF_IT = words_in("of it that them those these this lot scraps all which went goes the a an")
_AND = words_in("and & n , +")
_NEAR = 6
"""Words between a share, or an amount, and its bin, at most."""


MOST_OF_IT = Number(0, 0, 0.7, fraction=True)
"""What "most" of a lot is taken for, as of a layer."""

_Told = TypeVar("_Told", bound=Layer | Drain)


def share_of(act: _Told, share: float) -> _Told:
    """A layer or a draining of so much less."""
    part = replace(act, volume_l=None if act.volume_l is None else act.volume_l * share)
    if isinstance(part, Layer) and part.mass_kg is not None:
        return replace(part, mass_kg=part.mass_kg * share)
    return part


class Lot(NamedTuple):
    """A share of the whole, or what is left of it (no share), and where its bin is named."""

    start: int
    at: int
    share: float | None


def portions(
    words: Sequence[Word], starts: Sequence[int], whole: Amount, taken: Collection[int]
) -> frozenset[int]:
    """The words of those with which a share of the whole begins, and no amount of its own: "4 kg,
    a quarter in the shed", but "2 kg in the hall and a quarter in the shed".
    """
    norms = [word.norm for word in words]
    return frozenset(
        i
        for i in starts
        if whole.end <= i
        and lot_at(words, norms, i, taken, ()) is not None
        and not is_placed(norms, whole.end, i, taken)
    )


def lot_at(
    words: Sequence[Word],
    norms: Sequence[str],
    i: int,
    held: Collection[int],
    measured: Collection[int],
) -> Lot | None:
    """The share that begins at a word, if a bin stands behind it."""
    share: float | None = None
    if norms[i - 1 : i] in (["less"], ["minus"]):
        return None  # "2 kg less 10 % to the shed"
    end = i + 1
    if norms[i] not in _REST:
        number = MOST_OF_IT if norms[i] in MOST else read_number(words, i)
        if number is None:
            return None
        share, end = number.value, i + 1 if number is MOST_OF_IT else number.end
        if norms[end : end + 1] and norms[end] in PERCENT:
            share, end = share / 100, end + 1
        elif not number.fraction:
            return None
        if not 0 < share < 1:
            return None
    at = _bin_behind(norms, end, held, measured)
    return Lot(i, at, share) if at else None


def _bin_behind(
    norms: Sequence[str], end: int, held: Collection[int], measured: Collection[int]
) -> int:
    """Where the bin stands behind a share that ends at a word: "of it in the shed"; 0 if none."""
    if end in held:  # "half green, a third Rosie"
        return end
    for at in range(end, min(len(norms), end + _NEAR)):
        if norms[at] in _TO:
            bin = at + 1 + (norms[at + 1 : at + 2] != [] and norms[at + 1] in _THE)
            return bin if bin in held else 0
        if norms[at] not in _OF_IT and at not in measured:
            return 0
    return 0


def is_placed(norms: Sequence[str], end: int, before: int, held: Collection[int]) -> bool:
    """Whether an amount that ends at a word went into one bin, named before another word: "2 kg in
    the hall, a quarter".
    """
    for at in range(end, min(before, len(norms) - 1, end + _NEAR)):
        if norms[at] in _AND or norms[at] in (".", ";"):
            return False
        if norms[at] in _TO:
            bin = at + 1 + (norms[at + 1] in _THE)
            if bin not in held:
                return False
            behind = bin + 1 + (norms[bin + 1 : bin + 2] == ["bin"])
            other = behind + 1 + (norms[behind + 1 : behind + 2] in (["the"], ["in"]))
            return not (norms[behind : behind + 1] in (["and"], ["&"]) and other in held)
    return False
