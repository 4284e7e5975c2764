"""Numbers as people write and say them: "1,250", "1½", "two to three", "a couple of"."""

from collections.abc import Sequence

from handlers.reading.measures.digits import Number, digits_value, is_thousands
from handlers.reading.measures.numberparts import AND, PART_LEADS, part_at, with_part
from handlers.reading.measures.numberwords import ARTICLES, FEW, MEASURE_NUMBERS, NOUGHTS, TEENS
from handlers.reading.measures.spelled import below_one, is_point, read_foreign, spelled_at
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word

_RANGE_WORDS = frozenset({"to", "or", "-", "till"})


def read_number(words: Sequence[Word], i: int) -> Number | None:
    """The number or range that starts at word i, or None."""
    if i >= len(words) or (words[i].kind != "number" and words[i].norm not in BEGINNINGS):
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
    if first is None or first.end >= len(words) or words[first.end].norm not in AND:
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
        of_time = i > 0 and words[i - 1].norm in ("that", "this", "which", "some", "the")
        return None if of_time else below_one(words, i)
    if word.norm in NOUGHTS:
        led = is_point(words, i + 1)
        below = below_one(words, i + 1) if led else None
        return None if below is None else below._replace(start=i)
    return part_at(words, i) or _article(words, i) or spelled_at(words, i) or read_foreign(words, i)


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
    if figures or after in PART_LEADS:
        part = with_part(words, Number(i, end, value))
        if part is not None:
            return part
    if after in ("hundred", "thousand") and value < 100:
        return Number(i, end + 1, value * (100 if after == "hundred" else 1000))
    if figures and is_thousands(words, i):
        return Number(i, end + 1, value * 1000 + float(words[end].norm))
    if after == "x" and end + 1 < len(words) and words[end + 1].kind == "number":
        times = digits_value(words[end + 1].norm)
        unit = words[end + 2].norm if end + 2 < len(words) else ""
        if times is not None and (times >= 100 or unit in _WEIGHED):  # and not "4 x 8 ft"
            return Number(i, end + 2, value * times)
    return Number(i, end, value, fraction="/" in written and value < 1)


def _article(words: Sequence[Word], i: int) -> Number | None:
    norm = words[i].norm
    if norm not in ARTICLES:
        return _few(words, i, i) if norm in ("couple", "few", "several", "dozen") else None
    after = words[i + 1].norm if i + 1 < len(words) else ""
    at = i + 1 + (after == "good")
    if at < len(words) and words[at].norm in FEW:
        return _few(words, i, at)
    if after in ("hundred", "thousand"):
        return spelled_at(words, i + 1, carried=i)
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
