"""A few spoons of nothing that is named: they are of starter, and no scraps weigh so little; put
on, they are no liquid either.
"""

from handlers.reading.acts import Batch, Drain, Stock
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in

CUES = words_in(
    "tbsp tbsps tbs tbls tablespoon tablespoons tablespoonful tablespoonfuls tsp tsps teaspoon "
    "teaspoons spoon spoons spoonful spoonfuls"
)
HANDFULS = words_in("handful handfuls fistful fistfuls")
_SCRAPS = words_in("scraps leftovers waste peelings peels grounds food")
_MOST_L = 0.2
"""Litres; more is no dose of one layer."""


def is_of_spoons(message: Message) -> bool:
    """Whether all that was measured is a few spoons, of starter or of nothing named."""
    if not message.has(CUES) or isinstance(message.context.last, Drain | Batch | Stock):
        return False
    measured = message.measured()
    spooned = all(
        a.quantity == "volume" and a.value <= _MOST_L and message.has_in(CUES, a.start, a.end)
        for a in measured
    )
    return bool(measured) and spooned and not message.items and not message.has(_SCRAPS)


_PUT_ON = words_in("did gave used put added strewed sprinkled threw chucked")
_CAME_OFF = words_in("drained drain draining out off from tap spigot came got")


def is_put_on(message: Message) -> bool:
    """ "Did 3 spoons", "gave it 2 handfuls": starter, where no word says that it came off."""
    if message.has(_CAME_OFF) or message.bins or message.liquid() or not message.has(_PUT_ON):
        return False
    handfuls = not message.items and bool(message.measured())
    handfuls = handfuls and all(
        message.has_in(HANDFULS, a.start, a.end) for a in message.measured()
    )
    return handfuls or is_of_spoons(message)
