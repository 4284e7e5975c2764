"""A few spoons of nothing that is named: they are of starter, and no scraps weigh so little."""

from handlers.reading.acts import Batch, Drain, Stock
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in

CUES = words_in(
    "tbsp tbsps tbs tbls tablespoon tablespoons tablespoonful tablespoonfuls tsp tsps teaspoon "
    "teaspoons spoon spoons spoonful spoonfuls"
)
_SCRAPS = words_in("scraps leftovers waste peelings peels grounds food")
_MOST_L = 0.2
"""Litres; more is no dose of one layer."""


def is_of_spoons(message: Message) -> bool:
    """Whether all that was measured is a few spoons, of starter or of nothing named."""
    if not message.has(CUES) or isinstance(message.context.last, Drain | Batch | Stock):
        return False
    measured = message.measured()
    spooned = all(
        a.quantity == "volume" and a.value <= _MOST_L and message.has(CUES, a.start, a.end)
        for a in measured
    )
    return bool(measured) and spooned and not message.items and not message.has(_SCRAPS)
