"""What several things make up together: kinds to shares, and the rich share."""

from collections.abc import Mapping, Sequence
from typing import NamedTuple

from handlers.practice.kinds import Kind
from handlers.reading.food.foodparts import OF_DISHES
from handlers.reading.food.items import Item, is_made_of
from handlers.reading.words.vocabulary import Food


class Makeup(NamedTuple):
    """Kinds to shares adding up to 1, and the rich share if any kind was stated."""

    shares: Mapping[Kind, float]
    rich: float | None


def makeup(items: Sequence[Item], weights: Sequence[float] | None = None) -> Makeup | None:
    """What the items make up together; `weights` are their amounts, where each has its own."""
    if len(items) == 1 and weights is None and items[0].share is None:
        return None if items[0].absent else _mixed_by([(items[0], 1.0)])
    present = [item for item in items if not item.absent]
    if not present:
        return None
    if len(present) < len(items) and (denied := _denied_of_dishes(items)):
        present = [_freed(item, denied) for item in present]
        items = [item if item.absent else _freed(item, denied) for item in items]
    if weights is not None:
        return _mixed_by([(i, w) for i, w in zip(items, weights, strict=True) if not i.absent])
    specific = [item for item in present if not item.generic]
    generic = [item for item in present if item.generic]
    if not specific:
        return _mixed_by([(generic[0], 1.0)])
    return _mixed_by(_shared(specific, generic[:1]))


def _denied_of_dishes(items: Sequence[Item]) -> frozenset[Kind]:
    """The kinds that are said to be left out, where something else that is there may hold them."""
    return frozenset(i.food.shares[0][0] for i in items if i.absent) & {"meat", "fish", "dairy"}


def _freed(item: Item, denied: frozenset[Kind]) -> Item:
    """ "Pupusas, no meat": a dish without what it usually has of the kinds that were left out."""
    shares = tuple((kind, share) for kind, share in item.food.shares if kind not in denied)
    left = sum(share for _, share in shares)
    if not shares or (left > _WHOLE_DISH and shares[0][0] != "cooked"):
        return item
    rich = max(0.0, (item.food.rich - 1 + left) / left)
    rich = min(rich, LEAN) if "meat" in denied and shares[0][0] == "cooked" else rich
    whole = tuple((kind, share / left) for kind, share in shares)
    return item._replace(food=Food(whole, rich, item.food.name))


_WHOLE_DISH = 0.999
"""Share from which nothing was left out of a dish."""
LEAN = 0.1
"""Rich share of a cooked dish without its meat, for its fat and cheese."""


def _shared(specific: list[Item], generic: list[Item]) -> list[tuple[Item, float]]:
    rest = generic[0] if generic else Item(0, 0, Food((("mixed", 1.0),), 0.0), generic=True)
    if len(specific) == 1:
        only = specific[0]
        if only.share is None or only.share >= 1 or (only.vague and not generic):
            return [(only, 1.0)]
        return [(only, only.share), (rest, 1 - only.share)]
    specific = _without_described(_without_twins(specific))
    whole = [item for item in specific if item.share is not None and item.share >= 1]
    if whole:
        return [(item, 1.0) for item in whole]
    stated = sum(item.share or 0.0 for item in specific)
    open_ones = [item for item in specific if item.share is None]
    if not open_ones:
        vague = all(item.vague for item in specific) and not generic  # "a bit of suet, some lard"
        left = [(rest, 1 - stated)] if stated < 0.75 and not vague else []
        return [(item, item.share or 0.0) for item in specific] + left
    told = [item for item in specific if item.share is not None and not item.vague]
    if len(told) > 1 and stated > _WHOLE_DISH and open_ones == specific[: len(open_ones)]:
        # "wedding food, half of it rice, half of it lamb"
        return [(item, item.share or 0.0) for item in told]
    if any(x.share is not None and not x.vague and x.food.rich == 1 for x in specific):
        specific = [_lean(x) for x in specific]
    each = max(1 - stated, 0.15) / len(open_ones)
    return [(item, each if item.share is None else item.share) for item in specific]


def _lean(item: Item) -> Item:
    """ "Sandwiches, a third of it ham": a dish beside the share of it that is said to be rich."""
    cooked = sum(share for kind, share in item.food.shares if kind == "cooked")
    if item.share is not None or not cooked:
        return item
    return item._replace(food=item.food._replace(rich=min(item.food.rich, LEAN)))


def _without_twins(specific: list[Item]) -> list[Item]:
    """ "Pasta and cheese, but like 70 % pasta": what is named again with its share counts once."""
    told = [x.food for x in specific if x.share is not None and not x.vague]
    left = [
        x for x in specific if x.share is not None or not any(is_made_of(x.food, f) for f in told)
    ]
    return left if len(left) > 1 else specific


def _without_described(specific: list[Item]) -> list[Item]:
    """ "Burgers, buns and slaw, 40 % was meat": the share is said of the burgers by their kind."""
    kinds = {
        item.food.shares[0][0]
        for item in specific
        if item.share is not None and item.food.name in OF_DISHES and not item.vague
    }
    left = [x for x in specific if x.share is not None or x.food.shares[0][0] not in kinds]
    return left if len(left) > 1 else specific


def _mixed_by(parts: Sequence[tuple[Item, float]]) -> Makeup | None:
    total = sum(weight for _, weight in parts)
    if total <= 0:
        return None
    shares: dict[Kind, float] = {}
    rich = 0.0
    for item, weight in parts:
        if not weight:
            continue
        rich += item.food.rich * weight / total
        for kind, share in item.food.shares:
            shares[kind] = shares.get(kind, 0.0) + share * weight / total
    return Makeup(shares, None if set(shares) == {"mixed"} else min(1.0, rich))
