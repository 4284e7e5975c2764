"""Numbers as people write and say them: "1,250", "1½", "two and a half", "a couple of"."""

from collections.abc import Sequence
from functools import lru_cache
from math import isfinite
from typing import NamedTuple

from handlers.reading.numberwords import (
    ARTICLES,
    FEW,
    FOREIGN,
    FOREIGN_AND,
    FOREIGN_HALVES,
    HALVES,
    MEASURE_NUMBERS,
    MEASURES,
    NOUGHTS,
    PARTS,
    PLUS_HALF,
    QUARTER,
    TEENS,
    TENS,
    UNITS,
)
from handlers.reading.vocabulary import words_in
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


_RANGE_WORDS = frozenset({"to", "or", "-", "till"})
_AND = frozenset({"and", "n", "&"})
_LARGEST = 12
"""Digits in the longest number that is read; longer ones are serial numbers, not amounts."""


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


def read_number(words: Sequence[Word], i: int) -> Number | None:
    """The number or range that starts at word i, or None."""
    if words[i].kind != "number" and words[i].norm not in BEGINNINGS:
        return None
    first = _between(words, i) if words[i].norm == "between" else None
    first = first or _single(words, i)
    if first is None:
        return None
    end = first.end
    if end < len(words) and words[end].norm in _RANGE_WORDS:
        hyphened = words[end].norm == "-" and end + 1 < len(words) and words[end + 1].norm == "to"
        second = _single(words, _skip_about(words, end + 1 + hyphened))  # "8- to 16-kilo"
    elif end + 1 < len(words) and words[end].norm == "," and words[end + 1].norm in _MAYBE:
        second = _single(words, end + 2)  # "two, maybe three kilos"
    else:
        return first
    if second is not None and _ranges(first, second):
        middle = (first.value + second.value) / 2
        return Number(i, second.end, middle, True)
    return first


BEGINNINGS = MEASURE_NUMBERS | TEENS
"""Words, beside figures, that a number may begin with."""
_WEIGHED = words_in(
    "kg kgs kilo kilos lb lbs g oz l lt ltr litre litres liter liters gallon gallons gal ml pint "
    "pints"
)
_MAYBE = frozenset({"maybe", "mebbe", "perhaps", "possibly", "or"})


def _ranges(first: Number, second: Number) -> bool:
    plain = not (first.word or second.word)
    return plain and first.value < second.value <= 20 * max(first.value, 0.1)


def _skip_about(words: Sequence[Word], i: int) -> int:
    """ "2 - ~7", "between 2 and about 7"."""
    return (
        i + 1
        if i < len(words) and words[i].norm in ("~", "about", "maybe", "mebbe", "perhaps")
        else i
    )


def _between(words: Sequence[Word], i: int) -> Number | None:
    if i + 1 >= len(words):
        return None
    first = _single(words, i + 1)
    if first is None or first.end >= len(words) or words[first.end].norm not in _AND:
        return None
    second = _single(words, _skip_about(words, first.end + 1))
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
    if word.norm == "point":
        return _below_one(words, i)
    if word.norm in NOUGHTS:
        led = _is_point(words, i + 1)
        below = _below_one(words, i + 1) if led else None
        return None if below is None else below._replace(start=i)
    return _part(words, i) or _article(words, i) or _spelled(words, i) or read_foreign(words, i)


def _digits(words: Sequence[Word], i: int) -> Number | None:
    after = words[i + 1].norm if i + 1 < len(words) else ""
    written, end = words[i].norm, i + 1
    if "," in written:
        value = digits_value(written, large_is_decimal=after in ("kg", "kgs", "l", "kilos"))
    else:
        value = digits_value(written)
    if value is None:
        return None
    figures = after != "" and words[end].kind == "number"
    if figures or after in _PART_LEADS:
        part = _with_part(words, Number(i, end, value))
        if part is not None:
            return part
    if after in ("hundred", "thousand") and value < 100:
        return Number(i, end + 1, value * (100 if after == "hundred" else 1000))
    if figures and _is_thousands(words, i):
        return Number(i, end + 1, value * 1000 + float(words[end].norm))
    if after == "x" and end + 1 < len(words) and words[end + 1].kind == "number":
        times = digits_value(words[end + 1].norm)
        unit = words[end + 2].norm if end + 2 < len(words) else ""
        if times is not None and (times >= 100 or unit in _WEIGHED):  # and not "4 x 8 ft"
            return Number(i, end + 2, value * times)
    return Number(i, end, value, fraction="/" in written and value < 1)


def _with_part(words: Sequence[Word], number: Number) -> Number | None:
    """ "1 1/2", "1-1/4", "2 and a half", "3 quarters of a kilo": a figure with a part behind it."""
    end = number.end
    after = words[end].norm if end < len(words) else ""
    if after in _AND:
        return _and_part(words, number.start, number)
    if after in PARTS and after.endswith("s") and number.value in _FEW_PARTS:
        return number._replace(end=end + 1, value=number.value * PARTS[after], fraction=True)
    part = _written_part(words, end + (after == "-"))
    if part is None or part.value >= 1 or number.value != int(number.value):
        return None
    return number._replace(end=part.end, value=number.value + part.value)


_FEW_PARTS = (2, 3, 4)
_PART_LEADS = _AND | PARTS.keys() | {"-"}


def _part(words: Sequence[Word], i: int) -> Number | None:
    """ "half a", "a third of", "two thirds", "three quarters of a"."""
    norm = words[i].norm
    if norm in HALVES:
        end = i + 1
        if end < len(words) and words[end].norm in ("a", "an"):
            end += 1
        if end < len(words) and words[end].norm == "dozen":
            return Number(i, end + 1, FEW["dozen"] / 2)
        return Number(i, end, 0.5, fraction=True)
    if i + 1 >= len(words):
        return None
    after = words[i + 1].norm
    if norm in _SINGLE_PARTS and after in ("of", "o", "de"):
        return Number(i, i + 1, PARTS[norm], fraction=True)
    if norm in QUARTER and after in _QUARTERED:
        return Number(i, i + 1, 0.25, fraction=True)
    part = PARTS.get(after)
    if norm in ("a", "one", "another") and part is not None:
        return Number(i, i + 2, part, fraction=True)
    count = UNITS.get(norm)
    if count is not None and part is not None and count > 1:
        return Number(i, i + 2, count * part, fraction=True)
    return None


def _is_thousands(words: Sequence[Word], i: int) -> bool:
    """ "1 500 g": thousands set off by a space, and not two packets of 500 g."""
    if len(words[i].norm) > 3 or not words[i].norm.isdecimal() or i + 2 >= len(words):
        return False
    group = words[i + 1].norm
    small = words[i + 2].norm in ("g", "gr", "gm", "grams", "grammes", "ml", "mls")
    packets = i + 3 < len(words) and words[i + 3].norm.endswith("s")
    return len(group) == 3 and group.isdecimal() and small and not packets


_SINGLE_PARTS = frozenset(
    {"cuarto", "third", "fourth", "fifth", "sixth", "eighth", "tenth", *QUARTER}
)
_QUARTERED = words_in(
    "litre liter pint kilo kg pound lb cup gallon quart kilogram stone bucket bag tub"
)


def _article(words: Sequence[Word], i: int) -> Number | None:
    norm = words[i].norm
    if norm not in ARTICLES:
        return _few(words, i, i) if norm in ("couple", "few", "several", "dozen") else None
    after = words[i + 1].norm if i + 1 < len(words) else ""
    at = i + 1 + (after == "good")
    if at < len(words) and words[at].norm in FEW:
        return _few(words, i, at)
    if after in ("hundred", "thousand"):
        return _spelled(words, i + 1, carried=i)
    if after and words[i + 1].kind == "number":  # "a 20 L bucket" is the size of one
        return None
    return Number(i, i + 1, 1.0, word=True)


def _few(words: Sequence[Word], start: int, at: int) -> Number:
    """ "A couple of", "a good few", "a couple of hundred"; the word for few stands at `at`."""
    value, end = FEW[words[at].norm], _skip_of(words, at + 1)
    if end < len(words) and words[end].norm == "hundred":
        value, end = value * 100, end + 1
    return Number(start, end, value, words[at].norm != "dozen" or at == start)


def _skip_of(words: Sequence[Word], i: int) -> int:
    return i + 1 if i < len(words) and words[i].norm in ("of", "o") else i


def _spelled(words: Sequence[Word], i: int, carried: int | None = None) -> Number | None:
    """ "twenty five", "three fifty", "two point two five", "one and a half"."""
    total, current, at = 0.0, 0.0, i
    while at < len(words) and at < i + 8:
        norm = words[at].norm
        if norm in UNITS and at > i and words[at - 1].norm in UNITS:
            return _in_a_breath(words, i if carried is None else carried, at)
        if norm in UNITS:
            current += UNITS[norm]
        elif norm in TENS:
            current = current * (100 if 0 < current < 10 else 1) + TENS[norm]
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
    if _is_point(words, at):
        return _with_decimals(words, number)
    return _and_part(words, number.start, number)


def _in_a_breath(words: Sequence[Word], start: int, at: int) -> Number:
    """ "Two three cups", "ten twelve kilos": a range; "five two kilo bags" are five of them."""
    first, second = UNITS[words[at - 1].norm], UNITS[words[at].norm]
    near = second == first + 1 or 5 <= first < second <= 2 * first
    if at - start > 1 or not near:
        return Number(start, at, first)
    return Number(start, at + 1, (first + second) / 2, True)


def _is_point(words: Sequence[Word], i: int) -> bool:
    """ "One point two", and as others say it: "one comma two", "one dot two"."""
    return i < len(words) and words[i].norm in _POINTS


_POINTS = words_in("point comma dot")


def _below_one(words: Sequence[Word], i: int) -> Number | None:
    """ "Point eight", "point 8"."""
    after = words[i + 1] if i + 1 < len(words) else None
    if after is not None and after.kind == "number" and after.norm.isdecimal():
        return Number(i, i + 2, float(f"0.{after.norm}")) if len(after.norm) < 4 else None
    number = _with_decimals(words, Number(i, i, 0.0))
    return number if number.end > i else None


def _with_decimals(words: Sequence[Word], number: Number) -> Number:
    """ "One point two five", digit by digit, or "one point twenty five"."""
    digits, at = "", number.end + 1
    while at < len(words) and (digit := UNITS.get(words[at].norm, 10)) < 10:
        digits, at = digits + str(int(digit)), at + 1
    if at < len(words) and not digits and words[at].norm in TENS:
        digits, at = str(int(TENS[words[at].norm])), at + 1
        if at < len(words) and 0 < (digit := UNITS.get(words[at].norm, 10)) < 10:
            digits, at = digits[0] + str(int(digit)), at + 1
    return number._replace(end=at, value=number.value + float(f"0.{digits}")) if digits else number


def _is_small(words: Sequence[Word], i: int) -> bool:
    return i < len(words) and (words[i].norm in UNITS or words[i].norm in TENS)


def _and_part(words: Sequence[Word], start: int, number: Number) -> Number:
    """ "two and a half": the part joins the number if the words go on so."""
    i = number.end
    if i + 1 >= len(words):
        return number
    scots = words[i].norm == "an" and words[i + 1].norm == "a"  # "twa an a half"
    if words[i].norm not in _AND and not scots:
        return number
    part = _written_part(words, i + 1) or _part(words, i + 1)
    if part is None or part.value >= 1:
        return number
    return Number(start, part.end, number.value + part.value)


def _written_part(words: Sequence[Word], i: int) -> Number | None:
    """The "1/2" of "1 and 1/2"."""
    if i >= len(words) or words[i].kind != "number" or "/" not in words[i].norm:
        return None
    value = digits_value(words[i].norm)
    return None if value is None else Number(i, i + 1, value, fraction=True)


def read_foreign(words: Sequence[Word], i: int) -> Number | None:
    """ "due chili", "tres y medio kilos", "dhai kilo": a foreign number in front of a measure."""
    norm = words[i].norm
    if norm in FOREIGN_HALVES:
        return _before_measure(words, Number(i, i + 1, 0.5, fraction=True))
    if norm in PLUS_HALF and i + 1 < len(words) and words[i + 1].norm in FOREIGN:
        return _before_measure(words, Number(i, i + 2, FOREIGN[words[i + 1].norm] + 0.5))
    value = FOREIGN.get(norm, 10.0 if norm in TEENS else None)
    if value is None or i + 1 >= len(words):
        return None
    end = i + 1
    after = words[end].norm
    if after in _HUNDREDS:
        return _before_measure(words, Number(i, end + 1, value * 100))  # "teen sau gram"
    if norm in TEENS and after in FOREIGN:
        value, end = value + FOREIGN[after], end + 1
    elif after in FOREIGN_HALVES and value == 1:
        value, end = 0.5, end + 1  # "un demi litre", "ein halbes Kilo"
    elif after in FOREIGN_AND and end + 1 < len(words) and words[end + 1].norm in FOREIGN_HALVES:
        value, end = value + 0.5, end + 2
    return _before_measure(words, Number(i, end, value))


_HUNDREDS = frozenset({"sau", "cent", "cents", "hundert"})


def _before_measure(words: Sequence[Word], number: Number) -> Number | None:
    if number.end < len(words) and words[number.end].norm in MEASURES:
        return number
    return None
