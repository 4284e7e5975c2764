"""Amounts that do not add up: "1 kg of bread and 2 L of salad" is a layer by weight and one by
volume, each with what was measured so.
"""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from handlers.reading.acts import Layer
from handlers.reading.amounts import Amount
from handlers.reading.grouping import whole_of
from handlers.reading.items import Item
from handlers.reading.makeups import makeup
from handlers.reading.message import Message
from handlers.reading.quantities import scrap_amounts

_NEAR = 4
"""Words behind an amount in which the thing stands that it measures."""


def parted(layer: Layer, message: Message) -> list[Layer]:
    """The layer, or two where some of it was weighed and the rest was measured by volume.

    A weight beside a volume of the same things ("a bucket of peel, 3 kg") says it only twice.
    """
    if not message.context.in_room or layer.mass_kg is None:
        return [layer]
    whole = whole_of(message)
    amounts = [] if whole is None else scrap_amounts(whole)
    if len(amounts) < 2:
        return [layer]
    lots = _lots(amounts, message)
    weighed = [lot for lot in lots if lot[0].quantity == "mass"]
    poured = [lot for lot in lots if lot[0].quantity == "volume"]
    if not weighed or not poured:
        return [layer]
    if not all(items for _, items in lots) and not _are_added(message, amounts):
        return [layer]
    if abs(sum(amount.value for amount, _ in weighed) - layer.mass_kg) > _EXACT * layer.mass_kg:
        return [layer]
    by_volume = sum(amount.value for amount, _ in poured)
    return [
        _made_of(layer, weighed),
        _made_of(replace(layer, mass_kg=None, volume_l=by_volume), poured),
    ]


_EXACT = 0.01


def _are_added(message: Message, amounts: Sequence[Amount]) -> bool:
    """ "2 kg and 3 litres to the verge": one told beside the other, and no other name for it."""
    return all(
        message.norms[a.end : b.start] in (["and"], ["&"], ["+"], ["plus"], ["n"])
        for a, b in pairwise(sorted(amounts))
    )


def _lots(amounts: Sequence[Amount], message: Message) -> list[tuple[Amount, list[Item]]]:
    """Each amount with the things that stand behind it, up to the next amount."""
    ordered = sorted(amounts)
    ends = [*(b.start for _, b in pairwise(ordered)), len(message.norms)] if ordered else []
    lots = []
    for amount, end in zip(ordered, ends, strict=True):
        items = [
            item for item in message.items if amount.end <= item.start < end and not item.absent
        ]
        near = items and items[0].start - amount.end < _NEAR
        lots.append((amount, items if near else []))
    return lots


def _made_of(layer: Layer, lots: Sequence[tuple[Amount, list[Item]]]) -> Layer:
    items = [item for _, each in lots for item in each]
    weights = [amount.value / len(each) for amount, each in lots for _ in each]
    made = makeup(items, weights)
    return layer if made is None else replace(layer, materials=made.shares, rich=made.rich)
