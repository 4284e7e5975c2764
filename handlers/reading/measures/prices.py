"""Pounds that are money: "2 kg of bran, he charged me twelve pounds"."""

from collections.abc import Sequence

from handlers.practice.units import POUND_KG
from handlers.reading.measures.amounts import Amount
from handlers.reading.words.vocabulary import words_in

_BEFORE = words_in("cost costs costing paid pay charged charge charges price priced spent")
_BEHIND = words_in("charge charged charges robbery cost paid ripoff rip-off")
CUES = _BEFORE | _BEHIND
"""Words without one of which no pounds are money."""
_NEAR = 3
"""Words between the pounds and what is said of the price, at most."""


def without_prices(norms: Sequence[str], amounts: Sequence[Amount]) -> list[Amount]:
    """The amounts, of which pounds told as a price beside another weight measure nothing."""
    weights = [a for a in amounts if a.quantity == "mass"]
    if len(weights) < 2:
        return list(amounts)
    return [a.of_nothing() if _is_price(norms, a) else a for a in amounts]


def _is_price(norms: Sequence[str], amount: Amount) -> bool:
    behind = norms[amount.end : amount.end + _NEAR]
    if amount.factor != POUND_KG or norms[amount.end - 1] not in _POUNDS or "of" in behind[:1]:
        return False
    before = norms[max(0, amount.start - _NEAR) : amount.start]
    return not (_BEFORE.isdisjoint(before) and _BEHIND.isdisjoint(behind))


_POUNDS = words_in("pound pounds")
