"""Amounts that cannot be taken at their word: in a unit nobody knows, or below nought.

Such a record is not written down as if nothing had been measured: it is asked about.
"""

from collections.abc import Sequence

from handlers.reading.acts import Act, Drain, Layer, Unsure
from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in

_PORTIONS = words_in(
    "slice slices piece pieces bit bits lot lots load loads head heads bunch bunches stick sticks "
    "leaf leaves chunk chunks rasher rashers clove cloves sprig sprigs stalk stalks loaf loaves "
    "kinds sorts types days weeks months layers rounds quarters halves thirds us them"
)
"""Words that count things, if they do not measure them."""


def asked_first(acts: Sequence[Act], message: Message) -> tuple[Act, ...]:
    """The acts, with a record whose amount could not be read turned into a question."""
    if all(_is_measured(act) for act in acts):
        return tuple(acts)
    if any(amount.negative for amount in message.amounts):
        return tuple(act for act in acts if _is_measured(act))
    if not _has_strange_unit(message):
        return tuple(acts)
    rules = ("a unit nobody knows",)
    return tuple(act if _is_measured(act) else Unsure(guess=(act,), rules=rules) for act in acts)


def _is_measured(act: Act) -> bool:
    if not isinstance(act, Layer | Drain):
        return True
    amounts = (act.volume_l, act.mass_kg if isinstance(act, Layer) else None)
    return any(amount is not None for amount in amounts)


def _has_strange_unit(message: Message) -> bool:
    """ "2 flurbs of veg": a number, a word that is no food, and "of"."""
    things = {i for item in message.items for i in range(item.start, item.end)}
    things |= {i for amount in message.amounts for i in range(amount.start, amount.end)}
    words = message.words
    return any(
        words[i].kind == "number"
        and words[i + 1].kind == "word"
        and words[i + 1].norm not in _PORTIONS
        and i + 1 not in things
        and words[i + 2].norm == "of"
        for i in range(len(words) - 2)
    )
