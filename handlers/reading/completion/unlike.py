"""Amounts that do not add up: "1 kg of bread and 2 L of salad" is a layer by weight and one by
volume, each with what was measured so.
"""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise
from typing import TypeVar

from handlers.reading.acts import Ask, Layer
from handlers.reading.food.items import Item
from handlers.reading.food.makeups import makeup
from handlers.reading.food.quantities import scrap_amounts
from handlers.reading.grouping import whole_of
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message

_NEAR = 4
"""Words behind an amount in which the thing stands that it measures."""


def parted(layer: Layer, message: Message) -> list[Layer]:
    """The layer, or two where some of it was weighed and the rest was measured by volume.

    A weight beside a volume of the same things ("a bucket of peel, 3 kg") says it only twice.
    """
    if layer.mass_kg is None:
        return [layer]
    whole = whole_of(message)
    amounts = [] if whole is None else scrap_amounts(whole)
    if len(amounts) < 2:
        return [layer]
    lots = things_of_each(amounts, message)
    weighed = [lot for lot in lots if lot[0].quantity == "mass"]
    poured = [lot for lot in lots if lot[0].quantity == "volume"]
    if not message.context.in_room:  # a bowl of it is seldom meant as a layer of its own
        poured = [lot for lot in poured if not lot[0].vessel]
    if not weighed or not poured:
        return [layer]
    if not all(items for _, items in lots) and not _are_added(message, amounts):
        return [layer]
    if abs(sum(amount.value for amount, _ in weighed) - layer.mass_kg) > _EXACT * layer.mass_kg:
        return [layer]
    by_volume = sum(amount.value for amount, _ in poured)
    return [
        made_of(layer, weighed),
        made_of(replace(layer, mass_kg=None, volume_l=by_volume), poured),
    ]


_EXACT = 0.01


def _are_added(message: Message, amounts: Sequence[Amount]) -> bool:
    """ "2 kg and 3 litres to the verge": one told beside the other, and no other name for it."""
    return all(
        message.norms[a.end : b.start] in (["and"], ["&"], ["+"], ["plus"], ["n"])
        for a, b in pairwise(sorted(amounts))
    )


def things_of_each(
    amounts: Sequence[Amount], message: Message, near: int = _NEAR
) -> list[tuple[Amount, list[Item]]]:
    """Each amount with the things that stand behind it, up to the next amount, or before it."""
    ordered = sorted(amounts)
    ends = [*(b.start for _, b in pairwise(ordered)), len(message.norms)] if ordered else []
    starts = [0, *(a.end for a in ordered)]
    there = [item for item in message.items if not item.absent]
    behind, before = [], []
    for amount, start, end in zip(ordered, starts, ends, strict=False):
        items = [item for item in there if amount.end <= item.start < end]
        behind.append(items if items and items[0].start - amount.end < near else [])
        items = [item for item in there if start <= item.start and item.end <= amount.start]
        before.append(items if items and amount.start - items[-1].end < near else [])
    led = all(before) and not behind[-1]
    held = before if led else behind
    if not led and before[0] and not behind[0]:
        held = [before[0], *behind[1:]]  # "fat and rind, 1 kg, yesterday, and 800 g of skins"
    return list(zip(ordered, held, strict=True))


_Act = TypeVar("_Act", Layer, Ask)


def made_of(act: _Act, lots: Sequence[tuple[Amount, list[Item]]]) -> _Act:
    """The act with the make-up of the things of each amount, by their amounts."""
    items = [item for _, each in lots for item in each]
    weights = [amount.value / len(each) for amount, each in lots for _ in each]
    made = makeup(items, weights)
    return act if made is None else replace(act, materials=made.shares, rich=made.rich)


def asked_of(act: Ask, lots: Sequence[tuple[Amount, list[Item]]]) -> list[Ask]:
    """The question once of what was weighed and once of what was measured by volume."""
    out: list[Ask] = []
    for quantity in ("mass", "volume"):
        own = [lot for lot in lots if lot[0].quantity == quantity]
        total = sum(amount.value for amount, _ in own)
        weight, litres = (total, None) if quantity == "mass" else (None, total)
        if own:
            asked = replace(act, mass_kg=weight, volume_l=litres)
            out.append(made_of(asked, own) if all(items for _, items in own) else asked)
    return out
