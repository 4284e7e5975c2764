"""Amounts in kg, litres, °C, m²: a number with the unit behind it: "2 kg", "about 3 odd litres"."""

from collections.abc import Collection, Sequence
from typing import NamedTuple

from handlers.practice.units import celsius
from handlers.reading.acts import Units
from handlers.reading.measures.digits import Number
from handlers.reading.measures.numbers import read_number
from handlers.reading.measures.tails import ENDINGS, LEAST_GRAMS, MASSY, Tails
from handlers.reading.measures.unitwords import (
    VESSEL_WORDS,
    Quantity,
    Unit,
    unit_starts,
    unit_table,
)
from handlers.reading.words.vocabulary import vocabulary, words_in
from handlers.reading.words.words import Word


class Amount(NamedTuple):
    """A number with its unit, read from words[start:end]."""

    start: int
    end: int
    quantity: Quantity
    value: float
    """kg, litres, °C, metres, square metres or days."""
    vague: bool = False
    vessel: bool = False
    """Measured by a vessel of loose size, such as a handful."""
    size: bool = False
    """It is the size of a vessel ("a 20 L bucket")."""
    liquid_l: float | None = None
    """Litres, where an ounce may be one of liquid."""
    negative: bool = False
    factor: float = 0.0
    """kg or litres in one of its unit; 0 if it has none that another number could share."""
    counted: bool = False
    """It is that of all packs, told by the amount of one ("three bags of 2 kg")."""

    def of_nothing(self) -> "Amount":
        """The amount where it measures nothing: it tells what another one is less, or a price."""
        return self._replace(quantity="difference", factor=0.0)


_BETWEEN = words_in(
    "good big small large little wee heaped heaping level full scant more whole extra rounded "
    "massive decent generous huge tiny wholesome overflowing packed size sized of fat solid hefty "
    "tidy nice round further extra takeout takeaway deli imperial metric us american english "
    "british proper standard measuring kitchen cooking regular normal generous heavy light modest "
    "mere bare measly paltry lousy sad sorry pathetic miserable stingy meagre meager respectable "
    "honest handsome healthy lovely glorious bloody flipping damn whopping cracking straight"
)
_ABOUT = words_in(
    "about abt bout around round roughly approx approximately like maybe ~ nearly almost "
    "circa ca guess guessing probably say"
)
_ISH = frozenset({"ish", "or so", "approx", "roughly", "maybe", "probably", "ishish"})
_HEDGES = (
    ("and", "a", "bit"), ("and", "something"), ("or", "so"), ("ish",), ("odd",), ("plus",), ("+",),
)  # fmt: skip
_HEDGE_STARTS = frozenset(hedge[0] for hedge in _HEDGES)
_PEEL = words_in("peel peels peelings crusts trimmings cores skins rinds")
_MOST_KILOS = 50
"""Kilograms up to which "5k" of a thing is no sum of money."""
_SMALL = 0.001
"""kg in a gram, litres in a millilitre."""
_LEAST_SPELLED = 20
"""From here on a number spelled out takes the last unit ("another three hundred")."""
_DEGREES = ("celsius", "fahrenheit", "degrees")
"""Quantities that may well be below nought."""
_COUNTED = frozenset({"last", "first", "next", "other", "same", "whole", "full", "usual"})
_POTTED = words_in("yoghurt yoghurts yogurt yogurts cream skyr kefir quark hummus houmous custard")
"""What is sold in pots."""
BEFORE_UNIT = _BETWEEN | _HEDGE_STARTS
"""Words that may stand between a number and its unit."""


class Measuring:
    """Numbers and units in the words of a message; keeps the last unit for "and another 150"."""

    def __init__(
        self, words: Sequence[Word], norms: Sequence[str], units: Units, taken: Collection[int]
    ) -> None:
        self.words = words
        self.norms = norms
        self.units = units
        self.taken = frozenset(taken)
        self.table = unit_table(units)
        self.starts = unit_starts(units)
        self.tails = Tails(words, self.table)
        self.last: Unit | None = None

    def measured(self, number: Number, found: tuple[Unit, int] | None) -> Amount | None:
        """The number with the unit found behind it."""
        if found is None:
            return self._repeated(number)
        unit, end = found
        value, end = self.tails.added(self._meant(number, unit), end, unit)
        if number.word and unit.quantity in MASSY and end < len(self.words):
            value, end = self.tails.or_more(value, end)
        negative = self._is_negative(number.start)
        if negative and self.last is not None and unit.quantity in MASSY:
            negative = False  # "2.3 kg minus 300 g for the bowl"
        if negative and unit.quantity in _DEGREES:
            value, negative = -value, False
        if unit.quantity in MASSY:
            self.last = unit
        size = (
            unit.quantity == "volume"
            and not unit.vessel
            and end < len(self.words)
            and self.words[end].norm in VESSEL_WORDS
        )
        liquid = None if unit.liquid is None else value * unit.liquid
        return Amount(
            number.start,
            end + size,
            _quantity(unit.quantity),
            _in_our_unit(unit, value, self.units),
            number.vague or unit.vessel or self._is_about(number.start, end),
            unit.vessel,
            size,
            liquid,
            negative,
            unit.factor if unit.quantity in MASSY and not unit.vessel else 0.0,
        )

    def _repeated(self, number: Number) -> Amount | None:
        """ "200 ml and then another 150": a bare number that takes the last unit."""
        words, start = self.words, number.start
        if self.last is None or number.word or number.fraction or start == 0:
            return None
        spelled = words[start].kind != "number" and number.value < _LEAST_SPELLED
        end, before = self._after_hedge(number.end), words[start - 1].norm
        more = self.norms[end : end + 1] == ["more"]  # "and 150 more at noon"
        if not (more or before == "another" or (before in ("plus", "+") and not spelled)):
            return None
        end += more
        after = words[end].norm if end < len(words) else "."
        if after not in ENDINGS:
            return None
        if spelled and after == "to":
            return None  # "2 kg, and another two to come"
        grams = self.last.factor == 1 and number.value >= LEAST_GRAMS  # "3 kilos, another 300"
        vague = end > number.end + more
        value = number.value * (_SMALL if grams else self.last.factor)
        liquid = None if self.last.liquid is None else number.value * self.last.liquid
        return Amount(start, end, self.last.quantity, value, vague, liquid_l=liquid)

    def _meant(self, number: Number, unit: Unit) -> float:
        """The number, its point read as one of thousands where it would be a crumb ("1.500 g")."""
        head, _, group = self.words[number.start].norm.partition(".")
        crumb = unit.quantity in MASSY and unit.factor == _SMALL and head != "0"
        return number.value * 1000 if crumb and len(group) == 3 else number.value

    def unit(self, number: Number) -> tuple[Unit, int] | None:
        """The unit of a number, and where it ends."""
        norms = self.norms
        at = self._after_hedge(self._after_repeat(number))
        if number.value < 1 and norms[at : at + 2] == ["of", "a"]:
            at += 2  # "0.4 of a kilo"
        for _ in range(3):
            if at >= len(norms):
                return None
            longest = self.starts.get(norms[at], 0)
            for length in range(min(longest, len(norms) - at), 0, -1):
                spelling = "_".join(norms[at : at + length])
                unit = self.table.get(spelling)
                if unit is not None:
                    unit = self._as_sold(unit, spelling, at + length)
                    return (unit, at + length) if self._fits(number, unit, spelling) else None
            if norms[at] not in _BETWEEN or at in self.taken:
                return None
            at += 1
        return None

    def _as_sold(self, unit: Unit, spelling: str, end: int) -> Unit:
        """ "Two pots of yoghurt": a pot that it is sold in, and none to cook in."""
        sold = spelling.endswith(("pot", "pots")) and self.norms[end : end + 1] == ["of"]
        if not (sold and unit.vessel and not _POTTED.isdisjoint(self.norms[end + 1 : end + 3])):
            return unit
        small = spelling.startswith(("small", "wee"))
        return self.table["small_yoghurt_pot" if small else "yoghurt_pot"]

    def _after_repeat(self, number: Number) -> int:
        """Index behind the number; "3 (three)" says it twice."""
        words, at = self.words, number.end
        if at + 2 < len(words) and words[at].norm == "(" and words[at + 2].norm == ")":
            again = read_number(words, at + 1)
            if again is not None and again.value == number.value:
                return at + 3
        return at

    def _after_hedge(self, at: int) -> int:
        """Index behind "odd", "or so", "and a bit" and the like between a number and its unit."""
        if at >= len(self.norms) or self.norms[at] not in _HEDGE_STARTS:
            return at
        for hedge in _HEDGES:
            end = at + len(hedge)
            if tuple(self.norms[at:end]) == hedge:
                return end
        return at

    def _fits(self, number: Number, unit: Unit, spelling: str) -> bool:
        digits = self.words[number.start].kind == "number"
        if len(spelling) == 1 and spelling not in ("%", "k") and not digits:
            return False
        if spelling in ("c", "f") and number.value < 8:
            return False
        if spelling == "#":
            return self.units == "us"
        if spelling == "k":
            return self._is_kilo(number)
        if unit.vessel and digits and number.value > 1 and not spelling.endswith("s"):
            return not self._is_of_name(number.start)
        return not number.word or unit.quantity in ("mass", "volume", "days")

    def _is_of_name(self, start: int) -> bool:
        """ "The room 12 pail": the number of a room, behind its word, counts no pails."""
        led = start > 1 and self.norms[start - 2] in ("the", "our", "my")
        return led and self.norms[start - 1].isalpha() and self.norms[start - 1] not in _COUNTED

    def _is_kilo(self, number: Number) -> bool:
        """ "1.8k", "2k of skins": k is a kilo where a thousand makes no sense."""
        words, at = self.words, number.end + 1
        after = words[at].norm if at < len(words) else ""
        if number.word:
            return False
        decimal = "." in words[number.start].norm and number.value < 30
        free = not after[:1].isalpha() or after in ("in", "into", "to", "of")
        food = after in _PEEL or any(m.tag == "food" for m in vocabulary().find([after]))
        return (decimal and free) or ((after == "of" or food) and number.value <= _MOST_KILOS)

    def _is_about(self, start: int, end: int) -> bool:
        before, after = self.norms[max(0, start - 2) : start], self.norms[end : end + 2]
        return not (_ABOUT.isdisjoint(before) and _ISH.isdisjoint(after))

    def _is_negative(self, start: int) -> bool:
        words = self.words
        if start == 0:
            return False
        sign = words[start - 1]
        if sign.norm == "minus":
            return start < 2 or words[start - 2].norm not in ("plus", "+")  # "plus minus 2 kg"
        free = start == 1 or words[start - 2].end < sign.start
        return sign.norm == "-" and sign.end == words[start].start and free


def _quantity(quantity: Quantity) -> Quantity:
    return "celsius" if quantity in ("fahrenheit", "degrees") else quantity


def _in_our_unit(unit: Unit, value: float, units: Units) -> float:
    warm = 50  # no bin stands at 50 °C: a bare "68 degrees" is Fahrenheit
    if unit.quantity == "fahrenheit":
        return celsius(value)
    if unit.quantity == "degrees" and (units == "us" or value > warm):
        return celsius(value)
    return value * unit.factor
