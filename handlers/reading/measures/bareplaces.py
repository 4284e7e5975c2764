"""A number without a unit: what stands round it, and the amount that a unit makes of it."""

from collections.abc import Sequence
from typing import NamedTuple

from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.unitwords import Quantity
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word


class Place(NamedTuple):
    """A bare number at words[i:end], between two words."""

    i: int
    end: int
    value: float
    before: str
    after: str
    beyond: str
    dated: bool = False
    """A day stands behind it."""

    @property
    def ends(self) -> bool:
        """Whether nothing that it could count follows."""
        out_of = self.after in ("from", "off") and self.before in LISTED
        return self.after in ENDINGS or out_of or self.dated

    def amount(self, quantity: Quantity, factor: float) -> Amount:
        """The number as an amount in a unit of so many kg or litres."""
        return Amount(self.i, self.end, quantity, self.value * factor, factor=factor)

    def in_unit_of(self, other: Amount) -> Amount:
        """The number as an amount in the unit of another."""
        return self.amount(other.quantity, other.factor)

    def is_like(self, other: Amount) -> bool:
        """Whether it is of the other's size in its unit: ten times as much or as little at most."""
        return 0.1 <= self.value * other.factor / (other.value or 1.0) <= 10


def is_decimal(word: Word) -> bool:
    """Whether figures stand before and behind a point, two behind it at most."""
    head, point, tail = word.norm.replace(",", ".").partition(".")
    return bool(point) and head.isdecimal() and tail.isdecimal() and len(tail) <= 2


def norm_at(words: Sequence[Word], i: int) -> str:
    """Word i, or "" where there is none."""
    return words[i].norm if 0 <= i < len(words) else ""


NEAR = 14
"""Words between a unit and a bare number that shares it, at most."""
LISTED = frozenset({",", "and", "&", "n", "plus", "+"})
LARGE = 0.4
"""kg or litres in a unit that decimals are told in."""
SMALL = 0.001
"""kg in a gram, litres in a millilitre."""
LEAST_GRAMS = 50
"""From here on a bare number beside kilos may be one of grams."""
ENDINGS = words_in(". , ; ! ? ) ☺ in into to and n & so then left remaining all both + — -") | {
    "\n",
    "",
}
STOPS = frozenset({"", ".", ",", ";", "\n", "!", "and", "&", "+"})
TO_BIN = words_in("in into to for from off")
"""Words between an amount and its bin."""
