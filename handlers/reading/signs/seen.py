"""One sign told in some words, and whether it is said to be there."""

from collections.abc import Sequence
from typing import NamedTuple

from handlers.practice.signs import Sign
from handlers.reading.words.vocabulary import words_in


class Seen(NamedTuple):
    """A sign told by words[start:end]."""

    start: int
    end: int
    sign: Sign
    plain: bool
    """It is a sign by itself; else only where a bin is plainly meant."""
    absent: bool = False
    """It is said not to be there ("no flies")."""


_NOT = words_in(
    "no not isnt wasnt without never nor neither arent werent aint dont doesnt didnt hasnt "
    "havent zero none cant hardly barely nae nowt kein keine"
)
_SAVE = words_in("bar except save besides beyond")
_STRAY = words_in("though but , . ; : ! ? ( ) - — \n ☺ so and with".replace("\n", "")) | {"\n"}


def denied(norms: Sequence[str], at: int) -> bool:
    """Whether what stands at word `at` is said not to be there."""
    if norms[max(0, at - 1) : at] in (["nothing"], ["nowt"]):
        return True
    for k in range(at - 1, max(-1, at - 5), -1):
        if norms[k] in _SAVE and k > at - 4:
            return False  # "no smell bar the vinegar"
        if norms[k] in _NOT:
            return norms[k + 1 : k + 2] != ["only"]
        if norms[k] in _STRAY and norms[k] not in ("and",):
            return False
    return False
