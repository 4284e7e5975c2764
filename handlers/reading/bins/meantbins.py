"""Words round a bin's name that leave open whether it is the one meant, or say that it is not."""

from collections.abc import Sequence

from handlers.reading.words.binwords import BinRef
from handlers.reading.words.marks import Mark
from handlers.reading.words.vocabulary import words_in

_TO_BIN = words_in("to in into from the my our")


def is_either(between: Sequence[str]) -> bool:
    """Whether the words between two bins leave open which is meant: "or", "or in the"."""
    return between[:1] == ["or"] and _TO_BIN.issuperset(between[1:])


def is_denied(lead: Sequence[str]) -> bool:
    """Whether a bin is only named not to be the one: "not", "not to the"."""
    return "not" in lead and _TO_BIN.issuperset(lead[lead.index("not") + 1 :])


def tells_of(norms: Sequence[str], at: int) -> bool:
    """Whether something is told of a bin behind its name: "sorry, the hall is full"."""
    said = norms[at : at + 1] != [] and norms[at] in _TELLING
    return said and _MEANT.isdisjoint(norms[at + 1 : at + 3])


_TELLING = words_in("is 's has smells stinks needs looks")
_MEANT = words_in("right correct meant what where it the one")


def figures_of_speech(marks: list[Mark]) -> list[Mark]:
    """The signs of several words, in which a bin may be named and not meant."""
    return [
        m
        for m in marks
        if m.tag.startswith("sign") and m.end - m.start > (1 if m.tag in _LIKENED_TO else 2)
    ]


_LIKENED_TO = frozenset({"sign-smell", "sign-scent"})
"""What something smells like, which may be a vessel: "like a pickle barrel"."""


def no_figures_of_speech(bins: tuple[BinRef, ...], spoken: list[Mark]) -> tuple[BinRef, ...]:
    """The bins without the drum of "tight as a drum"."""
    return tuple(
        b
        for b in bins
        if b.name is not None or not any(m.start < b.start and b.end <= m.end for m in spoken)
    )
