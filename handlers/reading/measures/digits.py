"""A number, and what its figures say: thousands in commas, decimals, fractions."""

from collections.abc import Sequence
from functools import lru_cache
from math import isfinite
from typing import NamedTuple

from handlers.reading.words.words import Word


class Number(NamedTuple):
    """A number read from words[start:end]; a range gives its middle."""

    start: int
    end: int
    value: float
    vague: bool = False
    fraction: bool = False
    """It is a part ("a third"), so that "of a bucket" may follow."""
    word: bool = False
    """Nothing but "a" or "an" stood there."""


@lru_cache(maxsize=1024)
def digits_value(written: str, *, large_is_decimal: bool = False) -> float | None:
    """Value of digits with their signs: thousands in commas, decimal comma or point, fraction."""
    if len(written) > _LARGEST or ":" in written:
        return None
    if "/" in written or "⁄" in written:
        top, _, bottom = written.replace("⁄", "/").partition("/")
        if top.isdecimal() and bottom.isdecimal() and int(bottom) > 0:
            return int(top) / int(bottom)
        return None
    if "," in written:
        head, *groups = written.split(",")
        thousands = all(len(g) == 3 for g in groups) and head[:1] != "0" and len(head) <= 3
        if thousands and not (large_is_decimal and len(groups) == 1):
            written = written.replace(",", "")
        else:
            written = written.replace(",", ".", 1)
    try:
        value = float(written)
    except ValueError:
        return None
    return value if isfinite(value) else None


_LARGEST = 12
"""Digits in the longest number that is read; longer ones are serial numbers, not amounts."""


def written_part(words: Sequence[Word], i: int) -> Number | None:
    """The "1/2" of "1 and 1/2"."""
    if i >= len(words) or words[i].kind != "number" or "/" not in words[i].norm:
        return None
    value = digits_value(words[i].norm)
    return None if value is None else Number(i, i + 1, value, fraction=True)


def is_thousands(words: Sequence[Word], i: int) -> bool:
    """ "1 500 g": thousands set off by a space, and not two packets of 500 g."""
    if len(words[i].norm) > 3 or not words[i].norm.isdecimal() or i + 2 >= len(words):
        return False
    group = words[i + 1].norm
    small = words[i + 2].norm in ("g", "gr", "gm", "grams", "grammes", "ml", "mls")
    packets = i + 3 < len(words) and words[i + 3].norm.endswith("s")
    return len(group) == 3 and group.isdecimal() and small and not packets
