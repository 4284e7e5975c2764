"""Reports that belong in the book, from the groups of a message."""

from collections.abc import Callable, Sequence
from dataclasses import fields, replace
from typing import Any, get_args

from handlers.reading.acts import Batch, Bury, Drain, Layer, Observe, Open, Seal, Stock
from handlers.reading.bins.introduced import introduced
from handlers.reading.completion.begun import begun_with
from handlers.reading.completion.binlists import is_denied
from handlers.reading.deeds.bran import batch_of, stock_of
from handlers.reading.deeds.buried import bury_of
from handlers.reading.deeds.liquid import drain_of
from handlers.reading.deeds.observations import merged, observe_of
from handlers.reading.deeds.opened import open_of
from handlers.reading.deeds.pooled import pooled
from handlers.reading.deeds.restarts import restart_of
from handlers.reading.deeds.scraps import layer_from, layer_of
from handlers.reading.deeds.sealed import seal_of
from handlers.reading.deeds.toldday import is_now
from handlers.reading.food.quantities import scrap_amounts
from handlers.reading.grouping import groups_of
from handlers.reading.groups import Group
from handlers.reading.message import BRAN, Message
from handlers.reading.people.namesakes import is_of_namesake

Record = Layer | Drain | Open | Seal | Bury | Batch | Stock | Observe

RECORD_KINDS = frozenset(cls.act for cls in get_args(Record))

_Reader = Callable[[Sequence[Group], int], Record | None]
# The first that fits a group is its record; an observation may stand beside any of them.
_READERS: tuple[_Reader, ...] = (open_of, batch_of, stock_of, drain_of, seal_of, bury_of, layer_of)
_WITHOUT_BRAN = tuple(reader for reader in _READERS if reader not in (batch_of, stock_of))
"""Those that find something where bran is not named."""


def records(message: Message) -> tuple[Record, ...]:
    """Acts of record that the message tells of, in order, observations of a bin joined."""
    if begun := introduced(message):
        return (begun,)
    groups = groups_of(message)
    if first := begun_with(groups):
        return first
    readers = _READERS if message.has(BRAN) else _WITHOUT_BRAN
    told: list[tuple[int, Record]] = []
    seen: list[tuple[int, Observe]] = []
    for k, group in enumerate(groups):
        act = _record(groups, k, readers)
        if act is not None:
            acts = (*_for_each_bin(act, group), *_begun_with(act, groups, k))
            told += [(group.start, each) for each in acts]
        observed = observe_of(groups, k)
        if observed is not None:
            seen.append((group.start, observed))
    if len(groups) > 1:
        told += pooled(groups, {group_sentence(message, at) for at, _ in told})
    if (anew := restart_of(groups)) and not any(isinstance(act, Open) for _, act in told):
        told.append(anew)
    if not seen and len(told) < 2:
        return tuple(act for _, act in told)
    joined = merged([act for _, act in seen])
    starts = [
        next(at for at, act in seen if (act.bin, act.on) == (one.bin, one.on)) for one in joined
    ]
    together: list[tuple[int, Record]] = [*told, *zip(starts, joined, strict=True)]
    return _once(_in_new_bin([act for _, act in sorted(together, key=lambda pair: pair[0])]))


def group_sentence(message: Message, at: int) -> int:
    """Number of the sentence that word `at` stands in."""
    return next(k for k, s in enumerate(message.sentences) if s.start <= at < s.end)


def _in_new_bin(acts: list[Record]) -> list[Record]:
    """What follows on a bin that was just named, and names none itself, is about that bin."""
    out: list[Record] = []
    name: str | None = None
    for act in acts:
        if (
            isinstance(act, Open)
            and "a bin was named" in act.rules
            and out
            and isinstance(out[-1], Open)
        ):
            act = _named(out.pop(), act.bin)  # "started a bin for the hall, we call it Dot"
        if isinstance(act, Open):
            name = act.bin
        elif name is not None and not isinstance(act, (Batch, Stock)) and act.bin is None:
            act = replace(act, bin=name)
        out.append(act)
    return out


def _named(opened: Record, name: str | None) -> Record:
    """The opening under the name that was given to the bin afterwards."""
    return replace(opened, bin=name) if isinstance(opened, Open) else opened


def _once(acts: list[Record]) -> tuple[Record, ...]:
    """Two acts of one kind that say one thing in two breaths are one."""
    out: list[Record] = []
    for act in acts:
        i = next((i for i, other in enumerate(out) if _says_same(other, act)), None)
        if i is None:
            out.append(act)
        else:
            out[i] = _completed(out[i], act)
    return tuple(out)


def _says_same(first: Record, second: Record) -> bool:
    """Whether nothing that the one says is said otherwise by the other."""
    if type(first) is not type(second) or isinstance(first, (Stock, Observe)):
        return False
    if isinstance(first, Batch):  # "bran made: 5 kg, culture mixed in"
        return replace(first, rules=()) == replace(second, rules=())
    one, other = _said(first), _said(second)
    amounts = {"mass_kg", "volume_l"}
    if amounts & one.keys() and amounts & other.keys():
        return False
    return all(one[name] == other[name] for name in one.keys() & other.keys() - {"on"})


def _said(act: Record) -> dict[str, Any]:
    values = {name: getattr(act, name) for name in _NAMES[type(act)]}
    if values.get("materials") == {"mixed": 1.0}:
        del values["materials"]
    return {name: value for name, value in values.items() if value is not None}


_NAMES = {
    kind: tuple(each.name for each in fields(kind) if each.name != "rules")
    for kind in get_args(Record)
}
"""The names of each act's fields, but for its rules."""


def _completed(first: Record, second: Record) -> Record:
    told = _said(first)
    more = {k: v for k, v in _said(second).items() if k not in told}
    days = [act.on for act in (first, second) if not isinstance(act, Stock) and act.on]
    if days:  # the later of two is only the day of the message
        more["on"] = min(days)
    return replace(first, **more)


def _record(groups: Sequence[Group], k: int, readers: Sequence[_Reader]) -> Record | None:
    if is_of_namesake(groups[k]):
        return None
    for reader in readers:
        act = reader(groups, k)
        if act is not None:
            return act
    return None


def _begun_with(act: Record, groups: Sequence[Group], k: int) -> list[Record]:
    """ "Started the school bin with a kilo of peel": its first layer is told with it."""
    group = groups[k]
    begun = isinstance(act, Open) and not _WITH.isdisjoint(group.norms)
    if not begun or not any(a.quantity == "mass" for a in scrap_amounts(group)):
        return []
    return [layer_from(groups, k, "a bin was started with scraps")]


_WITH = frozenset({"with", "w", "w/"})


def _for_each_bin(act: Record, group: Group) -> list[Record]:
    """One act for each bin: "drained shed and kitchen" is two, each on its own day if told so."""
    norms = group.message.norms
    denied = {ref.name for ref in group.bins[1:] if is_denied(ref, norms)}
    names = [name for name in group.names() if name not in denied]
    if len(names) < 2 or not isinstance(act, Drain | Seal) or getattr(act, "volume_l", None):
        return [act]
    if act.bin is None:
        return [act]  # "sealed the shed or the hall"
    days = [d for d in group.days if not d.aside and not is_now(group.message, d)]
    told = [d.past for d in days if d.past <= group.message.today]
    dates = told if len(told) == len(names) else [act.on] * len(names)
    return [replace(act, bin=name, on=day) for name, day in zip(names, dates, strict=True)]
