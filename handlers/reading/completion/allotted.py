"""One lot of scraps shared out among bins: "6 kg to the shed, the rest to the hall"."""

from collections.abc import Sequence
from dataclasses import replace
from typing import NamedTuple

from handlers.reading.acts import Layer
from handlers.reading.completion.lots import share_of
from handlers.reading.food.makeups import makeup
from handlers.reading.food.ofwhat import is_drawn, of_what
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_REST = words_in("rest remainder remaining remains others")
_HALF = words_in("half mitad")
_UNTOLD = ("if", "ask")
_NEAR = 5
"""Words between an amount and the bin that it went to, at most."""
_EXACT = 0.05


class _Part(NamedTuple):
    """What went into one bin; no amount if it was the rest."""

    ref: BinRef
    amount: Amount | None
    start: int = 0
    """The words among which its things are named."""
    end: int = 0


def allotted(layers: Sequence[Layer], message: Message) -> list[Layer]:
    """The layers with each bin's own part, if the message shares one lot out; else none."""
    if len(message.bins) + len(message.named) < 2:
        return []
    refs = _refs(message)
    if len({ref.name for ref in refs}) < 2:
        return []
    masses = [
        a
        for a in message.amounts
        if a.quantity == "mass" and not of_what(message, a) and not is_drawn(message, a)
    ]
    if any(message.sense_at(a.start) in _UNTOLD for a in masses):
        return []
    parts = _parts(message, refs, masses)
    if len({part.ref.name for part in parts}) < 2 or len(parts) != len(refs):
        return []
    used = [part.amount for part in parts if part.amount is not None]
    given = sum(a.value for a in used)
    told = sum(a.value for a in masses if a not in used)
    rests = len(parts) - len(used)
    if rests == 1 and used and told > given:
        rest = told - given
    elif rests == 0 and (not told or abs(told - given) <= _EXACT * told):
        rest = 0.0
    else:
        return []
    values = [rest if part.amount is None else part.amount.value for part in parts]
    return [
        _layer(layers[0], message, parts, k, value) for k, value in enumerate(values) if value > 0
    ]


def halved(layer: Layer, message: Message) -> Layer:
    """ "Half into the shed, half to the dog": the one bin named has half of it."""
    if not message.has(_HALF):
        return layer
    names = {ref.name for ref in _refs(message)}
    halves = [i for i, norm in enumerate(message.norms) if norm in _HALF]
    held = indexes(message.amounts)
    free = [i for i in halves if i not in held and not _is_share(message, i)]
    if not free:
        return layer
    rest = len(free) > 1 or (len(free) == 1 and message.has_in(_REST, free[0]))
    near = any(0 < ref.start - i <= _NEAR for ref in _refs(message) for i in free)
    told_after = any(a.start > free[-1] for a in message.amounts if a.quantity in _MEASURED)
    if len(names) != 1 or not rest or not near or told_after:
        return layer
    return share_of(layer, 0.5)


def _is_share(message: Message, i: int) -> bool:
    """Whether a half is a share of what went in: "half rice", "cabbage half", "half half"."""
    norms = message.norms
    behind, before = norms[i + 1 : i + 3], norms[max(0, i - 2) : i]
    if "half" in (*before[-1:], *behind[:1]):
        return True
    for joint, other in ((behind[:1], behind[1:]), (before[1:], before[:1])):
        if other == ["half"] and not _AND.isdisjoint(joint):
            return True  # "half and half", "half n half"
    ends = i + 1 == len(norms) or norms[i + 1] in _STOPS
    return any(item.start == i + 1 or (ends and item.end == i) for item in message.items)


_AND = words_in("and n & an")
_STOPS = frozenset({",", ".", ";", "\n", ")"})
_MEASURED = ("mass", "volume")
_NOUGHT = words_in("nil nothing nowt zero none 0 zilch nada")
"""Behind a bin's name: nothing went into it."""


def _refs(message: Message) -> list[BinRef]:
    """Where a bin is named, each stretch once."""
    measures = indexes(message.amounts)
    found: list[BinRef] = []
    for ref in sorted((*message.bins, *message.named)):
        after = message.norms[ref.end : ref.end + 2]
        free = _NOUGHT.isdisjoint(after[after[:1] == [":"] :][:1])
        free = free and ref.start not in measures and (not found or ref.start >= found[-1].end)
        if ref.name is not None and free:
            found.append(ref)
    return found


def _parts(message: Message, refs: Sequence[BinRef], masses: Sequence[Amount]) -> list[_Part]:
    bracketed = {a.start - 1: a for a in masses if message.norms[a.start - 1 : a.start] == ["("]}
    own = [bracketed.get(ref.end) for ref in refs]
    if all(own):  # "7 lb, shared by the shed (five) and the hall (two)"
        return [_Part(ref, amount) for ref, amount in zip(refs, own, strict=True)]
    behind = bool(masses) and refs[0].end <= masses[0].start
    parts = _parts_behind(message, refs, masses) if behind else _parts_before(message, refs, masses)
    return parts if len(parts) == len(refs) else _parts_in_order(message, refs, masses)


def _parts_before(
    message: Message, refs: Sequence[BinRef], masses: Sequence[Amount]
) -> list[_Part]:
    """ "6 kg to the shed, the rest to the hall": each bin's part stands before its name."""
    out: list[_Part] = []
    start = 0
    for ref in refs:
        near = [a for a in masses if start <= a.start and 0 <= ref.start - a.end <= _NEAR]
        lead = max(start, ref.start - _NEAR)
        if message.has_in(_REST, lead, ref.start):
            out.append(_Part(ref, None, start, ref.start))
        elif near:
            out.append(_Part(ref, near[-1], start, ref.start))
        start = ref.end
    return out


def _parts_behind(
    message: Message, refs: Sequence[BinRef], masses: Sequence[Amount]
) -> list[_Part]:
    """ "Bothy 1 kg, cream 600 g, bin 25 another kilo": each bin's part stands behind its name."""
    ends = [*(ref.start for ref in refs[1:]), len(message.norms)]
    leads = any(item.end <= refs[0].start for item in message.items)
    out: list[_Part] = []
    start = 0
    for ref, end in zip(refs, ends, strict=True):
        own = [a for a in masses if ref.end <= a.start < end and a.start - ref.end < _NEAR]
        if len(own) == 1:  # "egg boxes in the hall, half a pound": its things stand before it
            window = (start, own[0].end) if leads else (ref.end, end)
            out.append(_Part(ref, own[0], *window))
            start = own[0].end
    return out


def _parts_in_order(
    message: Message, refs: Sequence[BinRef], masses: Sequence[Amount]
) -> list[_Part]:
    """ "The halves are in the shed (1.1 kg) and the tea, 300 g, is in the hall": one beside one."""
    if len(refs) != len(masses):
        return []
    out: list[_Part] = []
    start = 0
    for ref, amount in zip(refs, masses, strict=True):
        first, second = sorted(((ref.start, ref.end), (amount.start, amount.end)))
        between = message.norms[first[1] : second[0]]
        others = {a.start for a in masses} | {other.start for other in refs}
        alone = others.isdisjoint(range(first[1], second[0]))
        if alone and len(between) <= _NEAR + 2 and "." not in between:
            end = max(ref.end, amount.end)
            out.append(_Part(ref, amount, start, end))
            start = end
    return out


def _layer(first: Layer, message: Message, parts: Sequence[_Part], k: int, value: float) -> Layer:
    """The k-th part, made of the things named with it or, if there are none, of the whole lot."""
    part = parts[k]
    items = [i for i in message.items if part.start <= i.start < part.end and not i.absent]
    own = makeup(items, None) if items and all(part.amount for part in parts) else None
    layer = replace(first, bin=part.ref.name, mass_kg=value, volume_l=None)
    return layer if own is None else replace(layer, materials=own.shares, rich=own.rich)
