"""Numbers as people write and say them: "1,250", "1½", "two and a half", "a couple of"."""

from collections.abc import Sequence
from typing import NamedTuple

from handlers.reading.words import Word


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


_UNITS = dict(
    zip(
        [
            "zero",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen",
        ],
        range(20),
        strict=True,
    )
) | {"un": 1, "una": 1, "uno": 1, "dos": 2, "tres": 3, "cinco": 5, "wan": 1, "tow": 2}
_TENS = dict(
    zip(
        ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"],
        range(20, 100, 10),
        strict=True,
    )
) | {"fourty": 40}
_PARTS = {
    "half": 1 / 2, "halves": 1 / 2, "third": 1 / 3, "thirds": 1 / 3, "quarter": 1 / 4,
    "quarters": 1 / 4, "fourth": 1 / 4, "fourths": 1 / 4, "fifth": 1 / 5, "fifths": 1 / 5,
    "eighth": 1 / 8, "eighths": 1 / 8, "tenth": 1 / 10, "haf": 1 / 2, "media": 1 / 2,
    "medio": 1 / 2,
}  # fmt: skip
_ARTICLES = frozenset({"a", "an", "another"})
_FEW = {"couple": 2.0, "few": 3.0, "several": 4.0, "dozen": 12.0, "pair": 2.0}
NUMBER_WORDS = frozenset(
    {*_UNITS, *_TENS, *_FEW, *_ARTICLES, "hundred", "thousand", "half", "haf", "media", "medio",
     "quarter", "third", "between"}
)  # fmt: skip
"""Words that a number can begin with."""
_RANGE_WORDS = frozenset({"to", "or", "-", "till"})
_LARGEST = 12
"""Digits in the longest number that is read; longer ones are serial numbers, not amounts."""


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
        return float(written)
    except ValueError:
        return None


def read_number(words: Sequence[Word], i: int) -> Number | None:
    """The number or range that starts at word i, or None."""
    first = _between(words, i) or _single(words, i)
    if first is None:
        return None
    end = first.end
    if end < len(words) and words[end].norm in _RANGE_WORDS:
        second = _single(words, end + 1)
        if second is not None and _ranges(first, second):
            middle = (first.value + second.value) / 2
            return Number(i, second.end, middle, True)
    return first


def _ranges(first: Number, second: Number) -> bool:
    plain = not (first.word or second.word)
    return plain and first.value < second.value <= 20 * max(first.value, 0.1)


def _between(words: Sequence[Word], i: int) -> Number | None:
    if words[i].norm != "between" or i + 1 >= len(words):
        return None
    first = _single(words, i + 1)
    if first is None or first.end >= len(words) or words[first.end].norm not in ("and", "n", "&"):
        return None
    second = _single(words, first.end + 1)
    if second is None or not _ranges(first, second):
        return None
    return Number(i, second.end, (first.value + second.value) / 2, True)


def _single(words: Sequence[Word], i: int) -> Number | None:
    if i >= len(words):
        return None
    word = words[i]
    if word.kind == "number":
        return _digits(words, i)
    if word.kind != "word":
        return None
    return _part(words, i) or _article(words, i) or _spelled(words, i)


def _digits(words: Sequence[Word], i: int) -> Number | None:
    after = words[i + 1].norm if i + 1 < len(words) else ""
    value = digits_value(words[i].norm, large_is_decimal=after in ("kg", "kgs", "l", "kilos"))
    if value is None:
        return None
    end = i + 1
    if end < len(words) and words[end].kind == "number" and "/" in words[end].norm:
        part = digits_value(words[end].norm)
        if part is not None and part < 1 and value == int(value):
            return Number(i, end + 1, value + part)
    if after in ("and", "n", "&"):
        return _and_part(words, i, Number(i, end, value))
    if after == "x" and end + 1 < len(words) and words[end + 1].kind == "number":
        times = digits_value(words[end + 1].norm)
        if times is not None and times >= 100:  # "2 x 500 g", but not "4 x 8 ft"
            return Number(i, end + 2, value * times)
    return Number(i, end, value, fraction="/" in words[i].norm and value < 1)


def _part(words: Sequence[Word], i: int) -> Number | None:
    """ "half a", "a third of", "two thirds", "three quarters of a"."""
    norm = words[i].norm
    if norm in ("half", "haf", "media", "medio"):
        end = i + 1
        if end < len(words) and words[end].norm in ("a", "an"):
            end += 1
        return Number(i, end, 0.5, fraction=True)
    if i + 1 >= len(words):
        return None
    if norm in ("quarter", "third") and words[i + 1].norm in ("of", "o"):
        return Number(i, i + 1, _PARTS[norm], fraction=True)
    if norm == "quarter" and words[i + 1].norm in (
        "litre",
        "liter",
        "pint",
        "kilo",
        "pound",
        "cup",
    ):
        return Number(i, i + 1, 0.25, fraction=True)
    part = _PARTS.get(words[i + 1].norm)
    if norm in ("a", "one", "another") and part is not None:
        return Number(i, i + 2, part, fraction=True)
    count = _UNITS.get(norm)
    if count is not None and part is not None and count > 1:
        return Number(i, i + 2, count * part, fraction=True)
    return None


def _article(words: Sequence[Word], i: int) -> Number | None:
    norm = words[i].norm
    if norm not in _ARTICLES:
        if norm in ("couple", "few", "several") or (norm == "dozen"):
            return Number(i, _skip_of(words, i + 1), _FEW[norm], True)
        return None
    after = words[i + 1].norm if i + 1 < len(words) else ""
    if after == "good" and i + 2 < len(words):
        after = words[i + 2].norm
        if after in _FEW:
            return Number(i, _skip_of(words, i + 3), _FEW[after], True)
    if after in _FEW:
        return Number(i, _skip_of(words, i + 2), _FEW[after], after != "dozen")
    if after in ("hundred", "thousand"):
        return _spelled(words, i + 1, carried=i)
    if after and words[i + 1].kind == "number":  # "a 20 L bucket" is the size of one
        return None
    return Number(i, i + 1, 1.0, word=True)


def _skip_of(words: Sequence[Word], i: int) -> int:
    return i + 1 if i < len(words) and words[i].norm in ("of", "o") else i


def _spelled(words: Sequence[Word], i: int, carried: int | None = None) -> Number | None:
    """ "twenty five", "a hundred and fifty", "two point five", "one and a half"."""
    total, current, at = 0.0, 0.0, i
    while at < len(words) and at < i + 8:
        norm = words[at].norm
        if norm in _UNITS:
            current += _UNITS[norm]
        elif norm in _TENS:
            current += _TENS[norm]
        elif norm == "hundred":
            current = (current or 1) * 100
        elif norm == "thousand":
            total, current = total + (current or 1) * 1000, 0.0
        elif norm == "and" and current >= 100 and _is_small(words, at + 1):
            pass
        else:
            break
        at += 1
    if at == i:
        return None
    number = Number(i if carried is None else carried, at, total + current)
    if at + 1 < len(words) and words[at].norm == "point" and words[at + 1].norm in _UNITS:
        return number._replace(end=at + 2, value=number.value + _UNITS[words[at + 1].norm] / 10)
    return _and_part(words, number.start, number)


def _is_small(words: Sequence[Word], i: int) -> bool:
    return i < len(words) and (words[i].norm in _UNITS or words[i].norm in _TENS)


def _and_part(words: Sequence[Word], start: int, number: Number) -> Number:
    """ "two and a half": the part joins the number if the words go on so."""
    i = number.end
    if i + 1 >= len(words) or words[i].norm not in ("and", "n", "&"):
        return number
    part = _part(words, i + 1)
    if part is None or part.value >= 1:
        return number
    return Number(start, part.end, number.value + part.value)
