"""Observations: what was seen, smelt or measured in a bin."""

from collections.abc import Sequence

from handlers.reading.acts import Observe, Sign
from handlers.reading.amounts import Amount
from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.signs import Seen
from handlers.reading.told import bin_of, day_of, is_ahead
from handlers.reading.vocabulary import words_in

_TOLD = frozenset({"none", "did", "habit"})
_CRAFT = words_in(
    "lid lids scraps bran tap spigot leachate bokashi mould mold ferment fermenting contents layer"
)
_THERMOMETER = words_in("temp temperature temps thermometer probe core inside ph reading centre center "
                        "middle")  # fmt: skip
_PLACE_SIGNS: frozenset[Sign] = frozenset(
    {"insects", "rodents", "gas", "warm", "cold", "wet", "dry"}
)
_CHANGED = words_in("gone cleared stopped anymore sorted")


def observe_of(groups: Sequence[Group], k: int) -> Observe | None:
    """What the k-th group says of a bin, if it does."""
    group = groups[k]
    if group.sense not in _TOLD or is_ahead(group):
        return None
    context = _bin_context(groups, k)
    if context is None:
        return None
    signs = _signs(group, context)
    celsius, ph = _measures(group, context)
    if not signs and celsius is None and ph is None:
        return None
    return Observe(
        signs=tuple(dict.fromkeys(signs)),
        celsius=celsius,
        ph=ph,
        bin=bin_of(groups, k),
        on=day_of(groups, k),
        rules=("signs in a bin",),
    )


def _bin_context(groups: Sequence[Group], k: int) -> str | None:
    """`plain` if a bin is plainly meant, `place` if its name may be a room's, else None."""
    group = groups[k]
    near = [group] if group.bins else _beside(groups, k)
    refs = [b for g in near for b in g.bins]
    if not refs:
        words = set(group.message.norms)
        return "craft" if len(words & _CRAFT) >= 2 and k == 0 else None
    if any(b.plain for b in refs):
        return "plain"
    norms = group.message.norms
    articled = all(norms[b.start - 1 : b.start] in (["the"], ["our"]) for b in refs)
    return "place" if articled else "name"


def _beside(groups: Sequence[Group], k: int) -> list[Group]:
    earlier = [g for g in reversed(groups[:k]) if g.bins][:1]
    return earlier or [g for g in groups[k + 1 :] if g.bins][:1]


def _signs(group: Group, context: str) -> list[Sign]:
    out: list[Sign] = []
    for seen in group.message.signs:
        inside = any(c.start <= seen.start < c.end for c in group.clauses)
        if not inside or seen.absent or not _counts(group, seen, context):
            continue
        out.append(seen.sign)
    return out


def _counts(group: Group, seen: Seen, context: str) -> bool:
    if any(b.start <= seen.start < b.end for b in group.bins):
        return False
    if context in ("place", "craft") and seen.sign in _PLACE_SIGNS:
        return False
    if not seen.plain and context == "name" and not group.bins:
        return False
    return not _of_something_else(group.message, seen)


def _of_something_else(message: Message, seen: Seen) -> bool:
    """ "Hot soup", "a cold day", "dry rice": the word stands before the thing it describes."""
    if seen.plain:
        return False
    if any(item.start == seen.end for item in message.items):
        return True
    after = message.norms[seen.end] if seen.end < len(message.norms) else ""
    before = message.norms[seen.start - 1] if seen.start else ""
    return after in (
        "day",
        "weather",
        "morning",
        "night",
        "water",
        "today",
        "outside",
        "season",
        "week",
    ) or (before in ("something", "anything", "nice", "am"))


def _measures(group: Group, context: str) -> tuple[float | None, float | None]:
    warm = [a for a in group.amounts if a.quantity == "celsius"]
    acid = [a for a in group.amounts if a.quantity == "ph"]
    celsius = warm[0].value if warm and _is_of_bin(group, context, warm[0]) else None
    return celsius, acid[0].value if acid else None


def _is_of_bin(group: Group, context: str, amount: Amount) -> bool:
    if not _THERMOMETER.isdisjoint(group.norms):
        return True
    norms = group.message.norms
    if not {"outside", "oven", "weather", "forecast", "bake"}.isdisjoint(norms):
        return False
    subject = any(b.start == group.start or norms[group.start : b.start] in (["the"], ["checked", "the"],
                  ["checked"]) for b in group.bins)  # fmt: skip
    return context == "plain" or subject


def merged(acts: Sequence[Observe]) -> list[Observe]:
    """Observations of one bin on one day are one act."""
    out: list[Observe] = []
    for act in acts:
        for i, other in enumerate(out):
            if other.bin == act.bin and other.on == act.on:
                out[i] = _join(other, act)
                break
        else:
            out.append(act)
    return out


def _join(first: Observe, second: Observe) -> Observe:
    return Observe(
        signs=tuple(dict.fromkeys((*first.signs, *second.signs))),
        celsius=first.celsius if first.celsius is not None else second.celsius,
        ph=first.ph if first.ph is not None else second.ph,
        bin=first.bin,
        on=first.on,
        rules=first.rules,
    )
