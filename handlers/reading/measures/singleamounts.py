"""All single amounts of a message: "a third of a 10L bucket", "4 by 8 feet", prices and pH too."""

from collections.abc import Collection, Sequence
from functools import cache

from handlers.reading.acts import Units
from handlers.reading.measures.amounts import BEFORE_UNIT, Amount, Measuring
from handlers.reading.measures.digits import Number, digits_value
from handlers.reading.measures.numbers import read_number
from handlers.reading.measures.numberwords import (
    ARTICLES,
    FEW,
    MEASURE_NUMBERS,
    NUMBER_WORDS,
    PARTS,
)
from handlers.reading.measures.tails import AND_HALF
from handlers.reading.measures.unitwords import (
    VESSEL_WORDS,
    Unit,
    unit_starts,
)
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word

_PH = words_in(
    "the in for measured tested test level value liquid juice leachate brew "
    "stuff it just 's of is was at about around reads between "
    "reading = : now"
)
MOST_PH = 14
_TO = frozenset({"-", "–", "—", "to", "or", "/"})
_WIDEST = 2.0
"""pH; a wider range is none."""
_ENDED: tuple[list[str], ...] = ([], ["."], [","], ["!"])
_OF_A = frozenset({"of", "de", "a", "an", "the", "my", "our", "that", "o"})
_MEASURES = words_in("pint quart gallon litre liter gal qt kilo pound pund")
"""A measure that stands for one of it between two stops."""
_ARE = words_in("'s is are was were 're the those them these")
_ONE_OF = words_in(
    "kilo kilogram pound pund lb litre liter pint quart gallon cup cupful tablespoon stone"
)
_FOR_EACH = ("per", "each", "every")
_BEFORE_ONE = words_in(
    "added add put dropped tipped chucked tossed fed got gave threw poured binned brought and plus "
    "final first last whole full odd extra"
)
_BEHIND_ONE = words_in("in of o or into off from aff to")
_ONLY_ONE = words_in("last final first whole full")
_OWNED = words_in("my his her our their your the its 's")
_REST = words_in("half halves third thirds quarter quarters rest other remainder remaining both")
_OF_SO_MANY = words_in("tray box pack carton bag")
"""Behind "the" and a number one of these holds so many: nobody has thirty of it."""
_LIKENED = words_in("became become becoming like as into than turned")
_FILLED = frozenset({"full", "whole", "heaped"})
_DETERMINED = frozenset({"the", "my", "that", "this", "your", "our", "last"})
_NUMBERED = words_in("flat house no number apartment unit room plot block door ward floor gate")
_MONEY_SIGNS = frozenset({"£", "$", "€", "rs", "ksh"})
_FOOT_MARKS = frozenset({"'", "′"})
_BY = frozenset({"x", "by", "*"})
_SIDES = _FOOT_MARKS | _BY | {"("}
"""Signs and words with which "a" is a length, or said anew in brackets."""


class _Reader(Measuring):
    """One pass over the words of a message."""

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
        so_many = not _OF_SO_MANY.isdisjoint(self.norms[number.end : number.end + 1])
        if so_many and number.value > 1 and self.norms[i - 1 : i] == ["the"]:
            return None  # "egg shells from the 30 tray"
        if self.norms[number.end : number.end + 1] == ["ph"] and number.value <= MOST_PH:
            return Amount(i, number.end + 1, "ph", number.value)
        unit = self.unit(number)
        return self.area(number, unit) or self.measured(number, unit) or self.nested(number)

    def is_only_an_article(self, i: int) -> bool:
        """Whether the word behind an article makes no amount of it."""
        if i + 1 == len(self.words):
            return True
        if self.norms[i + 1] == "stone" and i and self.norms[i - 1] in _LIKENED:
            return True  # "a loaf hard as a stone"
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
        if value is None or (value > MOST_PH and self.norms[at + 1 : at + 2] not in _ENDED):
            return None  # "pH strips, 100 of them"; "the pH is 22" was told all the same
        high = self.upper_ph(at + 1, value)
        return Amount(i, at + 1, "ph", value) if high is None else high._replace(start=i)

    def upper_ph(self, at: int, low: float) -> Amount | None:
        """ "3.5-4", "4 to 4.5": the middle of a range that begins before a word."""
        if at + 1 >= len(self.words):
            return None
        between = self.norms[at] == "and" and self.norms[at - 2] == "between"
        if not between and self.norms[at] not in _TO:
            return None
        high = digits_value(self.norms[at + 1]) if self.words[at + 1].kind == "number" else None
        if high is None or not low < high <= min(MOST_PH, low + _WIDEST):
            return None
        return Amount(at, at + 2, "ph", (low + high) / 2, vague=True)

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
        inner = self.inner_at(at)
        if inner is not None and self.is_part_of(number, inner):
            return inner._replace(start=number.start, value=inner.value * number.value)
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

    def inner_at(self, at: int) -> Amount | None:
        """The vessel at a word, or the amount with a number of its own."""
        inner = self.vessel_at(at) if self.words[at].kind == "word" else None
        size = read_number(self.words, at) if inner is None else None
        return inner if size is None else self.measured(size, self.unit(size))

    def is_part_of(self, number: Number, inner: Amount) -> bool:
        """ "Half of 3 kg of tomatoes", where nobody says what became of the rest."""
        if not number.fraction or number.value >= 1 or inner.size or inner.vessel:
            return False
        others = [*self.norms[: number.start], *self.norms[inner.end :]]
        return inner.quantity in ("mass", "volume") and _REST.isdisjoint(others)

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
        if unit is not None and self.sizes(at):
            return Amount(at, at + 2, unit.quantity, unit.factor, size=True)
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

    def sizes(self, at: int) -> bool:
        """ "They're gallon buckets", "(litre jars)": the size of vessels, without a number."""
        norms = self.norms
        if norms[at] not in _MEASURES or norms[at + 1 : at + 2] == []:
            return False
        before = self.words[at - 1] if at else None
        led = before is None or before.kind == "sign" or before.norm in _ARE
        return led and norms[at + 1] in VESSEL_WORDS

    def _is_to_the(self, at: int) -> bool:
        """ "A tablespoon to the gallon"."""
        lead, behind = self.norms[max(0, at - 2) : at], self.norms[at + 1 : at + 2]
        to_the = lead == ["to", "the"] and self.norms[at] in _MEASURES
        return to_the and VESSEL_WORDS.isdisjoint(behind)

    def stands_for_one(self, at: int, unit: Unit) -> bool:
        """ "Kilo in the shed", "per gallon of water": a unit without its number."""
        before = self.words[at - 1] if at else None
        norm = self.words[at].norm
        if norm not in _ONE_OF or unit.vessel:
            return False
        if before is not None and (before.norm in _FOR_EACH or self._is_to_the(at)):
            return True
        after = self.words[at + 1].norm if at + 1 < len(self.words) else ""
        if (after in AND_HALF or after == "an") and self.tails.added(1.0, at + 1, unit)[0] > 1:
            return before is None or before.norm not in _DETERMINED
        if before is not None and before.norm in _ONLY_ONE:
            return True  # "the last kilo", "my final pound"
        if after in ("of", "o") and before is not None and before.kind == "word":
            return before.norm in _BEFORE_ONE or before.norm in _OWNED  # "my pound of squash"
        if before is not None and before.norm in _OWNED:
            return norm == "cupful"
        if before is not None and before.kind != "sign":
            return False
        if before is not None and not after[:1].isalnum():
            return norm in _MEASURES  # "drained it. Pint."
        if after in AND_HALF and self.words[at + 2 : at + 3]:  # "quart and a cup", "kilo and a bit"
            joined = self.tails.and_a_bit(at + 1) or self.unit(Number(at, at + 3, 1.0)) is not None
            return self.words[at + 2].norm == "a" and joined
        return after in _BEHIND_ONE or self._came_off(at + 1)

    def _came_off(self, at: int) -> bool:
        """ "Pint came off it"."""
        return [word.norm for word in self.words[at : at + 2]] in (["came", "off"], ["came", "out"])

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
        shared = second or self._depth_after(other) or side
        if shared is None:
            return None
        factor = shared[0]
        first = number.value * (side[0] if side else factor)
        end = second[1] if second else other.end
        return Amount(number.start, end, "area", first * other.value * factor)

    def _depth_after(self, number: Number) -> tuple[float, int] | None:
        """ "1.5 m x 30 x 40 cm": the unit of a third side, which the one before it shares."""
        if number.end >= len(self.norms) or self.norms[number.end] not in _BY:
            return None
        third = read_number(self.words, number.end + 1)
        return None if third is None else self.length_after(third, self.unit(third))

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


def _is_price_of(words: Sequence[Word], last: Amount, i: int) -> bool:
    """ "50 shillings a kilo", "120 rupees per kg": what the money buys, and no amount."""
    per = words[i - 1].norm == "per" and last.end == i - 1
    return last.quantity == "money" and (per or (last.end == i and words[i].norm in ("a", "an")))


@cache
def _one_leads(units: Units) -> frozenset[str]:
    """The words, other than figures, with which an amount may go on behind an article."""
    numbers = NUMBER_WORDS | PARTS.keys() | FEW.keys()
    return numbers | unit_starts(units).keys() | BEFORE_UNIT | _SIDES


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
