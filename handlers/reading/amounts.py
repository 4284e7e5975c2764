"""Amounts: "2 kg", "a pint and a half", "a third of a 10L bucket", in kg, litres, °C, m²."""

from collections.abc import Collection, Sequence
from functools import cache
from typing import NamedTuple

from handlers.practice.units import celsius
from handlers.reading.acts import Units
from handlers.reading.digits import Number, digits_value
from handlers.reading.numbers import read_number
from handlers.reading.numberwords import ARTICLES, FEW, MEASURE_NUMBERS, NUMBER_WORDS, PARTS
from handlers.reading.tails import AND_HALF, ENDINGS, LEAST_GRAMS, MASSY, Tails
from handlers.reading.unitwords import (
    VESSEL_WORDS,
    Quantity,
    Unit,
    unit_starts,
    unit_table,
)
from handlers.reading.vocabulary import words_in
from handlers.reading.words import Word


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
_PH = words_in(
    "the in for measured tested test level value liquid juice leachate brew "
    "stuff it just 's of is was at about around reads "
    "reading = : now"
)
_ISH = frozenset({"ish", "or so", "approx", "roughly", "maybe", "probably", "ishish"})
_HEDGES = (
    ("and", "a", "bit"), ("and", "something"), ("or", "so"), ("ish",), ("odd",), ("plus",), ("+",),
)  # fmt: skip
_HEDGE_STARTS = frozenset(hedge[0] for hedge in _HEDGES)
_SMALL = 0.001
"""kg in a gram, litres in a millilitre."""
_LEAST_SPELLED = 20
"""From here on a number spelled out takes the last unit ("another three hundred")."""
_DEGREES = ("celsius", "fahrenheit", "degrees")
"""Quantities that may well be below nought."""
_OF_A = frozenset({"of", "de", "a", "an", "the", "my", "our", "that", "o"})
_ONE_OF = words_in(
    "kilo kilogram pound lb litre liter pint quart gallon cup cupful tablespoon stone"
)
_BEFORE_ONE = words_in(
    "added add put dropped tipped chucked tossed fed got gave threw poured binned brought and plus "
    "final first last whole full odd extra"
)
_ONLY_ONE = words_in("last final first whole full")
_OWNED = words_in("my his her our their your the its 's")
_FILLED = frozenset({"full", "whole", "heaped"})
_DETERMINED = frozenset({"the", "my", "that", "this", "your", "our", "last"})
_NUMBERED = words_in("flat house no number apartment unit room plot block door ward floor gate")
_MONEY_SIGNS = frozenset({"£", "$", "€", "rs", "ksh"})
_FOOT_MARKS = frozenset({"'", "′"})
_BY = frozenset({"x", "by", "*"})
_SIDES = _FOOT_MARKS | _BY | {"("}
"""Signs and words with which "a" is a length, or said anew in brackets."""


class _Reader:
    """One pass over the words of a message; keeps the last unit for "and another 150"."""

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

    def read(self, leads: Sequence[int]) -> tuple[Amount, ...]:
        """The amounts that begin at these words."""
        out: list[Amount] = []
        for i in leads:
            if i in self.taken:
                continue
            if out and (i < out[-1].end or _is_price_of(self.words, out[-1], i)):
                continue
            amount = self.at(i)
            if amount is not None:
                out.append(amount)
        return tuple(out)

    def at(self, i: int) -> Amount | None:
        norm = self.norms[i]
        if norm in ARTICLES and self.is_only_an_article(i):
            return None
        if norm == "ph":
            return self.acidity(i)
        if norm in _MONEY_SIGNS:
            return self.price(i)
        if self.is_label(i):
            return None
        number = read_number(self.words, i)
        if number is None:
            return self.vessel_of(i)
        if not self.taken.isdisjoint(range(i, number.end)):
            return None
        unit = self.unit(number)
        return self.area(number, unit) or self.measured(number, unit) or self.nested(number)

    def is_only_an_article(self, i: int) -> bool:
        """Whether the word behind an article makes no amount of it."""
        if i + 1 == len(self.words):
            return True
        return self.norms[i + 1] not in _one_leads(self.units) and (
            self.words[i + 1].kind != "number"
        )

    def is_label(self, i: int) -> bool:
        """ "Flat 101 - 500 g": a number that names a household and begins no range."""
        return i > 0 and self.norms[i - 1] in _NUMBERED and self.norms[i + 1 : i + 2] == ["-"]

    def acidity(self, i: int) -> Amount | None:
        at = i + 1
        while at < min(len(self.words), i + 8) and (self.words[at].norm in _PH or at in self.taken):
            at += 1
        if at >= len(self.words) or self.words[at].kind != "number":
            at = self.reading_of_strip(i)
        value = digits_value(self.words[at].norm) if at else None
        if value is None or not 0 <= value <= 14:
            return None
        return Amount(i, at + 1, "ph", value)

    def reading_of_strip(self, i: int) -> int:
        """ "A pH strip on the shed, came out at 4": index of the number, 0 if there is none."""
        if self.words[i + 1 : i + 2] and self.words[i + 1].norm in (
            "strip",
            "paper",
            "test",
            "tested",
            "meter",
        ):
            for at in range(i + 2, min(len(self.words), i + 14)):
                if self.words[at].kind == "number" and at not in self.taken:
                    return at
        return 0

    def price(self, i: int) -> Amount | None:
        number = read_number(self.words, i + 1) if i + 1 < len(self.words) else None
        return None if number is None else Amount(i, number.end, "money", number.value)

    def measured(self, number: Number, found: tuple[Unit, int] | None) -> Amount | None:
        """The number with the unit found behind it."""
        if found is None:
            return self.repeated(number)
        unit, end = found
        value, end = self.tails.added(self.meant(number, unit), end, unit)
        if number.word and unit.quantity in MASSY and end < len(self.words):
            value, end = self.tails.or_more(value, end)
        negative = self.is_negative(number.start)
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
            number.vague or unit.vessel or self.is_about(number.start, end),
            unit.vessel,
            size,
            liquid,
            negative,
            unit.factor if unit.quantity in MASSY and not unit.vessel else 0.0,
        )

    def meant(self, number: Number, unit: Unit) -> float:
        """The number, its point read as one of thousands where it would be a crumb ("1.500 g")."""
        head, _, group = self.words[number.start].norm.partition(".")
        crumb = unit.quantity in MASSY and unit.factor == _SMALL and head != "0"
        return number.value * 1000 if crumb and len(group) == 3 else number.value

    def unit(self, number: Number) -> tuple[Unit, int] | None:
        norms = self.norms
        at = self.after_hedge(self.after_repeat(number))
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
                    return (unit, at + length) if self.fits(number, unit, spelling) else None
            if norms[at] not in _BETWEEN or at in self.taken:
                return None
            at += 1
        return None

    def after_repeat(self, number: Number) -> int:
        """Index behind the number; "3 (three)" says it twice."""
        words, at = self.words, number.end
        if at + 2 < len(words) and words[at].norm == "(" and words[at + 2].norm == ")":
            again = read_number(words, at + 1)
            if again is not None and again.value == number.value:
                return at + 3
        return at

    def after_hedge(self, at: int) -> int:
        """Index behind "odd", "or so", "and a bit" and the like between a number and its unit."""
        if at >= len(self.norms) or self.norms[at] not in _HEDGE_STARTS:
            return at
        for hedge in _HEDGES:
            end = at + len(hedge)
            if tuple(self.norms[at:end]) == hedge:
                return end
        return at

    def fits(self, number: Number, unit: Unit, spelling: str) -> bool:
        digits = self.words[number.start].kind == "number"
        if len(spelling) == 1 and spelling not in ("%", "k") and not digits:
            return False
        if spelling in ("c", "f") and number.value < 8:
            return False
        if spelling == "#":
            return self.units == "us"
        if spelling == "k":
            return self.is_kilo(number)
        return not number.word or unit.quantity in ("mass", "volume", "days")

    def is_kilo(self, number: Number) -> bool:
        """ "1.8k", "2k of skins": k is a kilo where a thousand makes no sense."""
        words, at = self.words, number.end + 1
        after = words[at].norm if at < len(words) else ""
        if number.word:
            return False
        decimal = "." in words[number.start].norm and number.value < 30
        free = not after[:1].isalpha() or after in ("in", "into", "to", "of")
        return (decimal and free) or (after == "of" and number.value <= 50)

    def repeated(self, number: Number) -> Amount | None:
        """ "200 ml and then another 150": a bare number that takes the last unit."""
        words, start = self.words, number.start
        if self.last is None or number.word or number.fraction or start == 0:
            return None
        spelled = words[start].kind != "number" and number.value < _LEAST_SPELLED
        if spelled and words[start - 1].norm != "another":
            return None
        end = self.after_hedge(number.end)
        after = words[end].norm if end < len(words) else "."
        if words[start - 1].norm not in ("another", "plus", "+") or after not in ENDINGS:
            return None
        if spelled and after == "to":
            return None  # "2 kg, and another two to come"
        grams = self.last.factor == 1 and number.value >= LEAST_GRAMS  # "3 kilos, another 300"
        vague = end > number.end
        value = number.value * (_SMALL if grams else self.last.factor)
        liquid = None if self.last.liquid is None else number.value * self.last.liquid
        return Amount(start, end, self.last.quantity, value, vague, liquid_l=liquid)

    def nested(self, number: Number) -> Amount | None:
        """ "a third of a 10L bucket", "two 5 gallon pails", "half the bucket"."""
        words, at = self.words, number.end
        if number.word or at >= len(words):
            return None
        if number.fraction:
            while at < min(len(words), number.end + 3) and words[at].norm in _OF_A:
                at += 1
        at = self.after_filled(at)
        if at in self.taken or at >= len(words):
            return None
        if number.fraction and words[at].kind == "word":
            further = number._replace(end=at)
            exact = self.measured(further, self.unit(further))
            if exact is not None and not exact.vessel:
                return exact
        inner = self.vessel_at(at) if words[at].kind == "word" else None
        if inner is None:
            size = read_number(words, at)
            inner = None if size is None else self.measured(size, self.unit(size))
        if inner is None or not (inner.size or inner.vessel):
            return None
        if not number.fraction and not inner.size:
            return None
        return inner._replace(
            start=number.start,
            value=inner.value * number.value,
            vague=True,
            vessel=True,
            size=inner.size and not number.fraction,
        )

    def after_filled(self, at: int) -> int:
        """Index behind "full" and the like ("2 full 5 L caddies")."""
        while at + 1 < len(self.words) and self.words[at].norm in _FILLED:
            at += 1
        return at

    def vessel_at(self, at: int) -> Amount | None:
        unit_there = self.unit(Number(at, at, 1.0))
        if unit_there is None or not unit_there[0].vessel:
            return None
        unit, end = unit_there
        return Amount(at, end, unit.quantity, unit.factor, True, True)

    def vessel_of(self, at: int) -> Amount | None:
        """ "Jam jar of bacon grease": one vessel, without its article."""
        if self.words[at].kind != "word":
            return None
        unit = self.table.get(self.words[at].norm)
        if unit is not None and self.stands_for_one(at, unit):
            value, end = self.tails.added(1.0, at + 1, unit)
            return Amount(at, end, unit.quantity, unit.factor * value)
        vessel = None
        if not at or self.words[at - 1].norm not in ("the", "my", "that"):
            vessel = self.vessel_at(at)
        if vessel is None or self.words[vessel.end : vessel.end + 1] == []:
            return None
        after = self.words[vessel.end].norm
        before = self.words[at - 1] if at else None
        alone = before is None or before.kind == "sign" or before.norm == "full"
        goes = after in ("to", "into", "in") and alone
        return vessel if after in ("of", "o", "full") or goes else None

    def stands_for_one(self, at: int, unit: Unit) -> bool:
        """ "Kilo in the shed", "per gallon of water": a unit without its number."""
        before = self.words[at - 1] if at else None
        norm = self.words[at].norm
        if norm not in _ONE_OF or unit.vessel:
            return False
        if before is not None and before.norm in ("per", "each", "every"):
            return True
        after = self.words[at + 1].norm if at + 1 < len(self.words) else ""
        if after in AND_HALF and self.tails.added(1.0, at + 1, unit)[0] > 1:
            return before is None or before.norm not in _DETERMINED
        if before is not None and before.norm in _ONLY_ONE:
            return True  # "the last kilo", "my final pound"
        if after in ("of", "o") and before is not None and before.kind == "word":
            return before.norm in _BEFORE_ONE or before.norm in _OWNED  # "my pound of squash"
        if before is not None and before.norm in _OWNED:
            return norm == "cupful"
        if before is not None and before.kind != "sign":
            return False
        if after in AND_HALF and self.words[at + 2 : at + 3]:  # "quart and a cup"
            return self.words[at + 2].norm == "a" and self.unit(Number(at, at + 3, 1.0)) is not None
        return after in (
            "in",
            "of",
            "o",
            "or",
            "into",
            "off",
            "from",
            "aff",
            "to",
        )

    def area(self, number: Number, unit: tuple[Unit, int] | None) -> Amount | None:
        """ "4 by 8 feet", "1.2 x 2.4 m"."""
        words = self.words
        side = self.length_after(number, unit)
        at = side[1] if side else number.end
        if at + 1 >= len(words) or self.norms[at] not in _BY:
            return None
        other = read_number(words, at + 1)
        if other is None:
            return None
        second = self.length_after(other, self.unit(other))
        factor = (second or side or (None,))[0]
        if factor is None:
            return None
        first = number.value * (side[0] if side else factor)
        end = second[1] if second else other.end
        return Amount(number.start, end, "area", first * other.value * factor)

    def length_after(
        self, number: Number, found: tuple[Unit, int] | None
    ) -> tuple[float, int] | None:
        if found is None and number.end < len(self.words):
            mark = self.words[number.end].norm
            if mark in _FOOT_MARKS:
                return self.table["ft"].factor, number.end + 1
        if found is None or found[0].quantity != "length":
            return None
        return found[0].factor, found[1]

    def is_about(self, start: int, end: int) -> bool:
        before, after = self.norms[max(0, start - 2) : start], self.norms[end : end + 2]
        return not (_ABOUT.isdisjoint(before) and _ISH.isdisjoint(after))

    def is_negative(self, start: int) -> bool:
        words = self.words
        if start == 0:
            return False
        sign = words[start - 1]
        if sign.norm == "minus":
            return start < 2 or words[start - 2].norm not in ("plus", "+")  # "plus minus 2 kg"
        free = start == 1 or words[start - 2].end < sign.start
        return sign.norm == "-" and sign.end == words[start].start and free


def _is_price_of(words: Sequence[Word], last: Amount, i: int) -> bool:
    """ "50 shillings a kilo", "120 rupees per kg": what the money buys, and no amount."""
    per = words[i - 1].norm == "per" and last.end == i - 1
    return last.quantity == "money" and (per or (last.end == i and words[i].norm in ("a", "an")))


@cache
def _one_leads(units: Units) -> frozenset[str]:
    """The words, other than figures, with which an amount may go on behind an article."""
    numbers = NUMBER_WORDS | PARTS.keys() | FEW.keys()
    return numbers | unit_starts(units).keys() | _BETWEEN | _HEDGE_STARTS | _SIDES


@cache
def _leads(units: Units) -> frozenset[str]:
    """The words, other than figures, that an amount may begin with."""
    return MEASURE_NUMBERS | unit_starts(units).keys() | _MONEY_SIGNS | {"ph"}


def leads_of(words: Sequence[Word], norms: Sequence[str], units: Units) -> list[int]:
    """Where amounts may begin, and all numbers."""
    known = _leads(units)
    return [i for i, norm in enumerate(norms) if norm in known or words[i].kind == "number"]


def single_amounts(
    words: Sequence[Word],
    norms: Sequence[str],
    units: Units,
    taken: Collection[int],
    leads: Sequence[int],
) -> tuple[Amount, ...]:
    """Each number with its unit, in order; words whose index is in `taken` are not looked at."""
    return _Reader(words, norms, units, taken).read(leads)


def _quantity(quantity: Quantity) -> Quantity:
    return "celsius" if quantity in ("fahrenheit", "degrees") else quantity


def _in_our_unit(unit: Unit, value: float, units: Units) -> float:
    warm = 50  # no bin stands at 50 °C: a bare "68 degrees" is Fahrenheit
    if unit.quantity == "fahrenheit":
        return celsius(value)
    if unit.quantity == "degrees" and (units == "us" or value > warm):
        return celsius(value)
    return value * unit.factor
