"""Drinks that somebody has beside their work: "drained the shed while having a cup of tea"."""

from collections.abc import Iterator, Sequence

from handlers.reading.measures.amounts import Amount
from handlers.reading.words.vocabulary import words_in

DRINKS = words_in("tea coffee cocoa chocolate wine beer ale cider gin rum whisky squash juice")
_HAVING = words_in(
    "having have had drinking drank drink enjoying enjoyed sipping fancy making make made over"
)
_KINDS = words_in("of hot cold iced nice strong good quick little a my green mint")
_LEFT = words_in("grounds ground leaves leaf bags bag dregs from out off in into for")
"""Behind a drink: its leavings, or where it came from or went."""


def without_drinks(norms: Sequence[str], amounts: Sequence[Amount]) -> Iterator[Amount]:
    """The amounts without those that somebody drinks."""
    return (amount for amount in amounts if not _is_drunk(norms, amount))


def _is_drunk(norms: Sequence[str], amount: Amount) -> bool:
    if amount.quantity != "volume" or not amount.start:
        return False
    before = norms[amount.start - 1]
    if before in _KINDS and amount.start > 1:
        before = norms[amount.start - 2]
    if before not in _HAVING:
        return False
    behind = range(amount.end, len(norms))
    of = next((i for i in behind if norms[i] not in _KINDS), None)
    if of is None or norms[of] not in DRINKS:
        return False
    return _LEFT.isdisjoint(norms[of + 1 : of + 2])
