"""Reports of several bins in one breath: what is told of the first holds for those that follow."""

from collections.abc import Callable, Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Drain
from handlers.reading.buried import bury_from
from handlers.reading.figures import bare_volume_in
from handlers.reading.groups import Group, groups_of
from handlers.reading.liquid import drain_from, drawn, litres
from handlers.reading.message import Message
from handlers.reading.quantities import scrap_amounts
from handlers.reading.scraps import layer_from

_RULE = "and another bin"
_Reader = Callable[[Sequence[Group], int, str], Act]
_READERS: dict[str, _Reader] = {"layer": layer_from, "drain": drain_from, "bury": bury_from}
_TOLD = frozenset({"none", "did", "habit", "order"})


def enumerated(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, and one for each further bin that the message tells the same of.

    "Pantry: 2 lb rice. Grace: 3 lb lettuce gone slimy.", "hall 2 pt, cross nil, Bridie 1 pt".
    """
    told = _READERS.keys() & {act.act for act in acts}
    if not told or not message.bins:
        return list(acts)
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
                out.append(reader(groups, k, _RULE))
                named.add(names[0])
    return out


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


def _tells(kind: str, group: Group) -> bool:
    verb = group.verb
    if group.sense not in _TOLD or (verb is not None and kind not in verb.verb.classes):
        return False
    if kind == "bury":
        return verb is not None
    if kind == "drain":
        return bool(drawn(group)) and not group.solids()
    return bool(group.solids()) and bool(scrap_amounts(group))
