"""Reports of several bins in one breath: what is told of the first holds for those that follow."""

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import NamedTuple

from handlers.reading.acts import Act, Drain, Layer, Seal
from handlers.reading.completion.figures import bare_volume_in
from handlers.reading.completion.unlike import made_of, things_of_each
from handlers.reading.deeds.buried import bury_from
from handlers.reading.deeds.liquid import drain_from, drawn, litres
from handlers.reading.deeds.scraps import layer_from
from handlers.reading.deeds.sealed import seal_from
from handlers.reading.food.items import Item
from handlers.reading.food.quantities import scrap_amounts
from handlers.reading.grouping import groups_of
from handlers.reading.groups import Group
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.words.spans import in_a_row
from handlers.reading.words.vocabulary import words_in

_RULE = "and another bin"
_Reader = Callable[[Sequence[Group], int, str], Act]
_READERS: dict[str, _Reader] = {
    "layer": layer_from,
    "drain": drain_from,
    "bury": bury_from,
    "seal": seal_from,
}
_TOLD = frozenset({"none", "did", "habit", "order"})


def enumerated(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, and one for each further bin that the message tells the same of.

    "Pantry: 2 lb rice. Grace: 3 lb lettuce gone slimy.", "hall 2 pt, cross nil, Bridie 1 pt".
    """
    told = _READERS.keys() & {act.act for act in acts}
    if not told or not message.bins:
        return list(acts)
    if in_order := _in_order(acts, message):
        return in_order
    groups = groups_of(message)
    out = [_measured(act, groups) for act in acts]
    for kind, reader in _READERS.items():
        if kind not in told:
            continue
        named = {getattr(act, "bin", None) for act in acts if act.act == kind}
        if None in named:
            continue
        for k, group in enumerate(groups):
            names = group.names()
            if len(names) == 1 and names[0] not in named and _tells(kind, group):
                further = reader(groups, k, _RULE)
                out.append(_dated(further, acts, group) if isinstance(further, Seal) else further)
                named.add(names[0])
    return out


def _in_order(acts: Sequence[Act], message: Message) -> list[Act]:
    """ "Drained shed and hall, 300 and 550 ml", "2 kg of veg, 1 kg of meat: shed and hall
    respectively": an amount in a row for each bin in one.
    """
    kinds = {type(act) for act in acts if isinstance(act, Layer | Drain)}
    refs = sorted({r.start: r for r in (*message.named, *message.bins) if r.name}.values())
    amounts = message.measured()
    if len(kinds) != 1 or len(refs) < 2 or len(refs) != len(amounts):
        return []
    lots: Sequence[_Lot] = [(amount, []) for amount in amounts]
    if message.has(_IN_TURN) and message.items:
        lots = things_of_each(amounts, message)
    rows = (refs, [_Row(a.start, max([a.end, *(i.end for i in items)])) for a, items in lots])
    if not all(in_a_row(message.norms, row, _JOINTS) for row in rows):
        return []
    first = next(act for act in acts if isinstance(act, Layer | Drain))
    parts = [_of_bin(first, ref.name, lot) for ref, lot in zip(refs, lots, strict=True)]
    return [*parts, *(act for act in acts if type(act) not in kinds)]


_Lot = tuple[Amount, list[Item]]


class _Row(NamedTuple):
    """The words of an amount and of what it is of."""

    start: int
    end: int


_JOINTS = words_in("and & n , + the then")
_IN_TURN = words_in("respectively")


def _of_bin(first: Layer | Drain, name: str | None, lot: _Lot) -> Act:
    amount = lot[0]
    mass = amount.value if amount.quantity == "mass" else None
    volume = None if mass is not None else amount.value
    if isinstance(first, Layer):
        layer = replace(first, bin=name, mass_kg=mass, volume_l=volume)
        return made_of(layer, [lot]) if lot[1] else layer
    return replace(first, bin=name, volume_l=litres([amount]))


def _measured(act: Act, groups: Sequence[Group]) -> Act:
    """A drain without an amount, with the one that stands beside its bin."""
    if not isinstance(act, Drain) or act.volume_l is not None or act.bin is None:
        return act
    own = [g for g in groups if g.names() == [act.bin]]
    beside = [g for g in own if g.verb is None and drawn(g)]
    if len(beside) == 1:
        return replace(act, volume_l=litres(drawn(beside[0])))
    if len(own) == 1 and len({name for g in groups for name in g.names()}) > 1:
        return replace(act, volume_l=bare_volume_in(own[0].message, own[0].start, own[0].end))
    return act


def _dated(seal: Seal, acts: Sequence[Act], group: Group) -> Seal:
    """ "Also, but on Thursday": on its own day, or on that of the bin told before it."""
    at = group.bins[0].end
    own = [d.past for d in group.message.days if at < d.start <= at + _BESIDE and not d.aside]
    before = [act.on for act in acts if isinstance(act, Seal)]
    return replace(seal, on=own[0] if own else before[-1])


_BESIDE = 5


def _likewise(group: Group) -> bool:
    ref = group.bins[0]
    behind = group.message.norms[ref.end : ref.end + 2]
    return behind[:1] in (["also"], ["too"], ["likewise"], ["ditto"], ["same"]) or behind == [
        "as",
        "well",
    ]


def _tells(kind: str, group: Group) -> bool:
    verb = group.verb
    beside = any(a.start == b.end for a in group.measured() for b in group.bins)
    if kind == "drain" and beside and group.sense in _TOLD:  # "gulley 250 ml. Both smell fine"
        return bool(drawn(group)) and not group.solids()
    if group.sense not in _TOLD or (verb is not None and kind not in verb.verb.classes):
        return False
    if kind == "bury":  # "emptied the shed in the bed, put 2 kg in the hall" is no second burial
        return verb is not None and not ("layer" in verb.verb.classes and scrap_amounts(group))
    if kind == "seal":  # "Hall is shut today. Number 4 also, but on Thursday"
        return verb is None and group.sense == "none" and _likewise(group)
    if kind == "drain":
        return bool(drawn(group)) and not group.solids()
    return bool(group.solids()) and bool(scrap_amounts(group))
