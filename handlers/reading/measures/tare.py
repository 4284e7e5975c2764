"""Gross, tare and net: "2.3 kg with the bucket, bucket alone 400 g" is 1.9 kg."""

from handlers.reading.groups import Group
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.words.once import once
from handlers.reading.words.vocabulary import words_in


@once
def weighings(message: Message) -> frozenset[int]:
    """ "4.4 kg with the pail, pail weighs 1.2, so 3.2": the first words of gross and tare."""
    if len(message.amounts) < _NET_OF:
        return frozenset()
    masses = [a for a in message.amounts if a.quantity == "mass"]
    if len(masses) != _NET_OF or not message.has(_VESSEL):
        return frozenset()
    gross = max(masses, key=lambda a: a.value)
    tare, net = (a for a in masses if a is not gross)
    if abs(tare.value + net.value - gross.value) > 0.02 * gross.value:
        return frozenset()
    named = message.norms[max(0, net.start - 3) : net.end + 3]
    if not _VESSEL.isdisjoint(named) and _VESSEL.isdisjoint(
        message.norms[max(0, tare.start - 3) : tare.end + 3]
    ):
        tare, net = net, tare
    with_it = not _INCLUDING.isdisjoint(message.norms[gross.end : gross.end + 3])
    bare = not _ALONE.isdisjoint(message.norms[max(0, tare.start - 2) : tare.end + 2])
    return frozenset({gross.start, tare.start}) if with_it or bare else frozenset()


_NET_OF = 3
"""Masses told where gross, tare and net are all named."""


def without_tare(group: Group, amounts: list[Amount]) -> list[Amount]:
    """ "2.3 kg with the bucket, bucket alone 400 g" is 1.9 kg."""
    masses = [a for a in amounts if a.quantity == "mass"]
    norms = group.message.norms
    if len(masses) != 2 or (_VESSEL.isdisjoint(group.norms) and "before" not in group.norms):
        return amounts
    gross, tare = sorted(masses, key=lambda a: -a.value)
    near = set(norms[max(group.start, tare.start - 4) : min(group.end, tare.end + 3)])
    with_it = not _INCLUDING.isdisjoint(norms[gross.end : gross.end + 4])
    if norms[gross.end : gross.end + 1] == ["before"] and "after" in norms[tare.end : tare.end + 1]:
        return [gross._replace(value=gross.value - tare.value)]
    emptied = not _EMPTY.isdisjoint(norms[tare.end : tare.end + 2])
    if (near.isdisjoint(_ALONE) and not with_it) or (near.isdisjoint(_VESSEL) and not emptied):
        return amounts
    return [gross._replace(value=gross.value - tare.value)]


_VESSEL = words_in(
    "bucket tub pot bowl tin box dish pan tray crate container basin bag jar pail caddy sack "
    "bin basket jug tupperware lunchbox saucepan colander"
)
_EMPTY = words_in("empty bare tare")
_INCLUDING = words_in("with w including included incl inc gross")
_ALONE = words_in("alone empty itself tare own weighs bare less minus off deduct subtract")
