"""Parts of a number: "half a", "two thirds", "1 1/2", "two and a half"."""

from collections.abc import Sequence

from handlers.reading.measures.digits import Number, written_part
from handlers.reading.measures.numberwords import FEW, HALVES, PARTS, QUARTER, UNITS
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word

AND = frozenset({"and", "n", "&"})


def with_part(words: Sequence[Word], number: Number) -> Number | None:
    """ "1 1/2", "1-1/4", "2 and a half", "3 quarters of a kilo": a figure with a part behind it."""
    end = number.end
    after = words[end].norm if end < len(words) else ""
    if after in AND:
        return and_part(words, number.start, number)
    if after in PARTS and after.endswith("s") and number.value in _FEW_PARTS:
        return number._replace(end=end + 1, value=number.value * PARTS[after], fraction=True)
    part = written_part(words, end + (after == "-"))
    if part is None or part.value >= 1 or number.value != int(number.value):
        return None
    return number._replace(end=part.end, value=number.value + part.value)


_FEW_PARTS = (2, 3, 4)
PART_LEADS = AND | PARTS.keys() | {"-"}


def part_at(words: Sequence[Word], i: int) -> Number | None:
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


_SINGLE_PARTS = frozenset(
    {"cuarto", "third", "fourth", "fifth", "sixth", "eighth", "tenth", *QUARTER}
)
_QUARTERED = words_in(
    "litre liter pint kilo kg pound lb cup gallon quart kilogram stone bucket bag tub pail caddy "
    "pot jar bowl box crate sack barrel drum tin tray mug glass punnet carton basin jug bottle"
)


def and_part(words: Sequence[Word], start: int, number: Number) -> Number:
    """ "two and a half": the part joins the number if the words go on so."""
    i = number.end
    if i + 1 >= len(words):
        return number
    scots = words[i].norm == "an" and words[i + 1].norm == "a"  # "twa an a half"
    if words[i].norm not in AND and not scots:
        return number
    part = written_part(words, i + 1) or part_at(words, i + 1)
    if part is None or part.value >= 1:
        return number
    return Number(start, part.end, number.value + part.value)
