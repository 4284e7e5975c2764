"""Numbers in words, of other tongues too: "twenty five", "one point two", "tres y medio kilos"."""

from collections.abc import Sequence

from handlers.reading.measures.digits import Number
from handlers.reading.measures.numberparts import and_part
from handlers.reading.measures.numberwords import (
    FOREIGN,
    FOREIGN_AND,
    FOREIGN_HALVES,
    MEASURES,
    PLUS_HALF,
    TEENS,
    TENS,
    UNITS,
)
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word


def spelled_at(words: Sequence[Word], i: int, carried: int | None = None) -> Number | None:
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
    if is_point(words, at):
        return _with_decimals(words, number)
    return and_part(words, number.start, number)


def _in_a_breath(words: Sequence[Word], start: int, at: int) -> Number:
    """ "Two three cups", "ten twelve kilos": a range; "five two kilo bags" are five of them."""
    first, second = UNITS[words[at - 1].norm], UNITS[words[at].norm]
    near = second == first + 1 or 5 <= first < second <= 2 * first
    if at - start > 1 or not near:
        return Number(start, at, first)
    return Number(start, at + 1, (first + second) / 2, True)


def is_point(words: Sequence[Word], i: int) -> bool:
    """ "One point two", and as others say it: "one comma two", "one dot two"."""
    return i < len(words) and words[i].norm in _POINTS


_POINTS = words_in("point comma dot")


def below_one(words: Sequence[Word], i: int) -> Number | None:
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
