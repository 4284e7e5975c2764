"""What follows an amount and belongs to it: "and a half", "three fifty", "x 4", "or two"."""

from collections.abc import Mapping, Sequence

from handlers.practice.units import POUND_KG
from handlers.reading.measures.digits import Number
from handlers.reading.measures.numbers import BEGINNINGS, read_number
from handlers.reading.measures.numberwords import FOREIGN_AND, FOREIGN_HALVES, UNITS
from handlers.reading.measures.unitwords import Unit
from handlers.reading.words.vocabulary import vocabulary, words_in
from handlers.reading.words.words import Word

MASSY = ("mass", "volume")
LEAST_GRAMS = 50
"""From here on a bare number behind kilos or litres is one of grams or millilitres."""
AND_HALF = frozenset({"and", "n", "&"}) | FOREIGN_AND
ENDINGS = words_in(
    ". , ; ! ? ) ☺ in into to from off out of today this now later and n then so after on "
    "at yesterday before for"
) | {"\n"}
_TIMES = frozenset({"x", "*", "×", "times"})
_STARTS = _TIMES | AND_HALF | BEGINNINGS | {"twice", "half"}
"""Words that may go on with an amount; a number may, too."""
_COUNTS = range(2, 51)
A_BIT_MORE = 1.1
"""Times what stands before "and a bit"."""
_LEAST_JOINED = 100
"""From here on a bare number behind "and" is one of grams or millilitres."""


class Tails:
    """What stands behind the units of one message."""

    def __init__(self, words: Sequence[Word], table: Mapping[str, Unit]) -> None:
        self.words = words
        self.table = table

    def added(self, value: float, end: int, unit: Unit) -> tuple[float, int]:
        """The value with what stands from word `end` on and belongs to it, and where that ends."""
        words = self.words
        if end >= len(words):
            return value, end
        if words[end].norm not in _STARTS and words[end].kind != "number":
            return value, end
        if words[end].norm == "twice":
            return value * 2, end + 1
        if (times := self.times(end)) and unit.quantity in MASSY:
            return value * times.value, times.end
        if unit.quantity in MASSY and self.and_a_bit(end):
            if end + 3 < len(words) and words[end + 3].norm == "of":
                figure = end > 1 and words[end - 2].kind == "number"
                return (value, end) if figure else (value, end + 3)  # "1 kg and a bit of meat"
            return value * A_BIT_MORE, end + 3
        smaller = _SMALLER.get((unit.quantity, unit.factor))
        if smaller and (part := self.smaller_part(end, *smaller)):
            return value + part.value / smaller[1], part.end
        if smaller and unit.factor == 1 and (tenths := self.tenths(end)):
            return value + tenths / 10, end + 1
        if unit.quantity in MASSY and self.bare_half(end):
            return value + 0.5, end + 1
        half = self.half(end)
        return (value, end) if half is None else (value + half.value, half.end)

    def times(self, end: int) -> Number | None:
        """ "250 g x 4 packets"."""
        if end + 1 >= len(self.words) or self.words[end].norm not in _TIMES:
            return None
        times = read_number(self.words, end + 1)
        counts = times is not None and times.value in _COUNTS and self.bare(times)
        return times if counts else None

    def and_a_bit(self, end: int) -> bool:
        """ "A kilo and a bit of leaves": a little more of the same, and no second thing."""
        words = self.words[end : end + 3]
        return words[0].norm in AND_HALF and [word.norm for word in words[1:]] == ["a", "bit"]

    def smaller_part(self, end: int, least: float, parts: float) -> Number | None:
        """ "2 lb 4", "two kilos three fifty", "one kilo and two hundred": in the smaller unit."""
        words = self.words
        joined = words[end].norm in AND_HALF and least >= LEAST_GRAMS
        at = end + joined
        if at >= len(words) or words[at].kind == "sign":
            return None
        part = read_number(words, at)
        if part is None or part.word or not self.bare(part) or (joined and part.fraction):
            return None
        if not (_LEAST_JOINED if joined else least) <= part.value < parts:
            return None
        large = least > 1 and not joined  # "1 kg 200 beetroot", but not "2 lb 4 onions"
        return part if _ends_amount(words, part.end, large=large) else None

    def tenths(self, end: int) -> float:
        """ "One kilo nine", "2 kg 4 of peel": a digit, spelled or written as the number before the
        unit is, that ends what is told.
        """
        norm, before = self.words[end].norm, self.words[end - 2].norm
        spelled = _DIGITS.get(norm, 0.0) if before in _DIGITS else 0.0
        written = float(norm) if norm in _FIGURES and before in _FIGURES else 0.0
        after = self.words[end + 1].norm if end + 1 < len(self.words) else "."
        return spelled or written if after in ENDINGS or after in _OF else 0.0

    def bare_half(self, end: int) -> bool:
        """ "One kilo half", "two litres half of tea": a half more, where no other share is told."""
        if self.words[end].norm != "half":
            return False
        norms = [word.norm for word in self.words]
        if norms.count("half") > 1 or not _OTHERS.isdisjoint(norms):
            return False
        if norms[end + 1 : end + 2] == ["of"]:
            return norms[end + 2 : end + 3] != [] and norms[end + 2] not in _IT
        return norms[end + 1 : end + 2] == [] or norms[end + 1] in ENDINGS - _TO

    def half(self, end: int) -> Number | None:
        """ "A pint and a half", "kilo y medio", "a pint an a half"."""
        words = self.words
        if end + 1 >= len(words):
            return None
        scots = words[end].norm == "an" and words[end + 1].norm == "a"
        if not scots and words[end].norm not in AND_HALF:
            return None
        part = _half(words, end + 1) or read_number(words, end + 1)
        if part is None or not part.fraction or part.value >= 1 or not self.bare(part):
            return None
        behind = [word.norm for word in words[part.end : part.end + 2]]
        if behind[:1] == ["full"]:
            return None  # "it holds 20 L and is half full"
        return None if behind in (["of", "a"], ["of", "an"]) else part

    def or_more(self, one: float, end: int) -> tuple[float, int]:
        """ "A cup or two": the middle of one and what stands behind "or"."""
        words, more = self.words, None
        if words[end].norm == "or" and end + 1 < len(words):
            more = read_number(words, end + 1)
        if more is None or more.word or not one < more.value <= 4 or not self.bare(more):
            return one, end
        return (one + more.value) / 2, more.end

    def bare(self, part: Number) -> bool:
        """Whether no unit of its own stands right behind the part."""
        at = part.end
        return at >= len(self.words) or self.words[at].norm not in self.table


_SMALLER = {
    ("mass", 1.0): (50, 1000), ("volume", 1.0): (50, 1000),
    ("mass", POUND_KG): (1, 16), ("mass", POUND_KG * 14): (1, 14),
}  # fmt: skip
"""By quantity and factor of a unit: the least bare number behind it that counts in the next
smaller unit, and how many of those make one ("1 kg 200", "2 lb 4")."""


_DIGITS = {word: value for word, value in UNITS.items() if 1 <= value <= 9}
_FIGURES = frozenset("123456789")
_OF = words_in("of o worth")
_TO = words_in("in into to")
_OTHERS = words_in("rest other remainder remaining quarter third mostly")
_IT = words_in("it that them this those these which the a an my our each")


def _ends_amount(words: Sequence[Word], i: int, *, large: bool) -> bool:
    """Whether nothing that a bare number could count stands at word i; a large one counts none."""
    if i >= len(words) or words[i].norm in ENDINGS or words[i].norm in _OF:
        return True
    return large and words[i].norm in vocabulary()


def _half(words: Sequence[Word], i: int) -> Number | None:
    """A half in another language, behind the unit ("kilo y medio")."""
    foreign = words[i].norm in FOREIGN_HALVES and words[i - 1].norm in FOREIGN_AND
    return Number(i, i + 1, 0.5, fraction=True) if foreign else None
