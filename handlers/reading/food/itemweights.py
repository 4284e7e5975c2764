"""Each thing with the amount that it has of its own ("rice 2 kg, beans 300 g")."""

from bisect import bisect_left
from collections import Counter
from collections.abc import Sequence

from handlers.reading.food.items import Item
from handlers.reading.groups import Group
from handlers.reading.measures.amounts import Amount
from handlers.reading.words.vocabulary import words_in


def item_weights(
    group: Group, items: Sequence[Item], amounts: Sequence[Amount]
) -> list[float] | None:
    """Amounts of the single items, where each has one: said before it or behind it."""
    kind = "mass" if any(a.quantity == "mass" for a in amounts) else "volume"
    own = [a for a in amounts if a.quantity == kind]
    if not items:
        return None
    if len(own) < len(amounts) == len(items):  # "a mugful of fat and 2 kg of peel"
        led = all(a.end <= i.start for a, i in zip(sorted(amounts), items, strict=True))
        mixed = _one_each(group.message.norms, items, sorted(amounts)) if led else None
        if mixed is not None:  # a litre stands for a kilo, where only the shares are asked
            return mixed
    if len(own) < 2:
        return None
    beside = _one_each(group.message.norms, items, own)
    if beside is not None:
        return beside
    headed = _behind_heading(group.message.norms, items, own)
    if headed is not None:
        return headed
    near = _nearest(items, sorted(own), before=own[0].start < items[0].start)
    shared = Counter(amount.start for amount in near if amount)
    weights = [amount.value / shared[amount.start] for amount in near if amount]
    return weights if len(weights) == len(items) else None


def _one_each(
    norms: Sequence[str], items: Sequence[Item], own: Sequence[Amount]
) -> list[float] | None:
    """ "A kilo of leeks and the bones, about 300 g": each thing has the amount it touches."""
    if len(items) != len(own):
        return None
    weights: list[float] = []
    ends = [max(i.end, a.end) for i, a in zip(items, own, strict=True)]
    starts = [min(i.start, a.start) for i, a in zip(items, own, strict=True)]
    apart = all(end <= start for end, start in zip(ends, starts[1:], strict=False))
    for item, amount in zip(items, own, strict=True):
        first, second = (item.end, amount.start), (amount.end, item.start)
        between = norms[slice(*(first if first[0] <= first[1] else second))]
        beside = len(between) <= _NEAR and _BETWEEN.issuperset(between)
        if not beside and not (apart and len(between) <= _ASIDE and "," not in between):
            return None
        weights.append(amount.value)
    return weights


_NEAR = 3
_ASIDE = 6
"""Words between a thing and its amount, where each pair stands apart from the next, at most."""
_BETWEEN = words_in(
    "of the o a some old about abt around roughly maybe approx say nearly almost , ( : - = is was "
    "were weighed weighing at good"
)


def _behind_heading(
    norms: Sequence[str], items: Sequence[Item], own: Sequence[Amount]
) -> list[float] | None:
    """ "Canteen waste for the shed: rice 3 kg, dal 2 kg": what heads them weighs naught."""
    heading = len(items) - len(own)
    listed = items[heading:]
    weights = _one_each(norms, listed, own) if heading > 0 else None
    if weights is None:
        return None
    first = min(listed[0].start, own[0].start)
    own_things = (
        _JOINTS.issuperset(norms[i.end : first]) or i.food.rich > _RICH for i in items[:heading]
    )
    return None if any(own_things) else [*[0.0] * heading, *weights]


_RICH = 0.5
"""Rich share from which a thing without a weight is never passed over."""
_JOINTS = words_in(", and n & + plus with or the some a of old also then")


def _nearest(items: Sequence[Item], own: Sequence[Amount], *, before: bool) -> list[Amount | None]:
    """Of each thing the last amount before it, or the first one behind it."""
    starts = [amount.start for amount in own]
    if before:
        places = [bisect_left(starts, item.start) - 1 for item in items]
    else:
        places = [bisect_left(starts, item.end) for item in items]
    return [own[place] if 0 <= place < len(own) else None for place in places]
