"""What is told of a bin in the breath in which it was begun: its size and its first layer."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Amend, Layer, Open
from handlers.reading.deeds.scraps import layer_from
from handlers.reading.deeds.toldday import day_of
from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.spans import accounted
from handlers.reading.words.vocabulary import words_in

BEGUN_WITH = "a bin was begun with what was weighed"
"""The rule of `begun_with`, which holds whatever its score."""


def begun_with(groups: Sequence[Group]) -> tuple[Open, Layer] | None:
    """ "Started green over, 1 kg": one bin begun, with the weight of its first layer."""
    message = groups[0].message if groups else None
    if message is None or not message.has(_BEGUN) or len(message.bins) != 1:
        return None
    ref, weighed = message.bins[0], message.measured()
    if ref.name is None or groups[0].sense != "did" or any(a.quantity != "mass" for a in weighed):
        return None
    told = accounted(message.norms, message.days, message.items, weighed, [ref])
    called = {id(ref): "qbin", **dict.fromkeys(map(id, weighed), "qmass")}
    said = (x if isinstance(x, str) else called.get(id(x), "qheld") for x in told)
    if _WITH_WEIGHT.fullmatch(" ".join(said)) is None:
        return None
    k = next(k for k, group in enumerate(groups) if group.start <= weighed[0].start < group.end)
    opened = Open(bin=ref.name, on=day_of(groups, 0), rules=(BEGUN_WITH,))
    return opened, replace(layer_from(groups, k, BEGUN_WITH), bin=ref.name, on=opened.on)


_BEGUN = words_in("started opened")
_WITH_WEIGHT = Late(
    r"(?:(?:i|we|have|just|and|then|so|now|,|qheld) )*"
    r"(?:started|opened(?= .*\b(?:over|again|anew|afresh)\b)) "
    r"(?:up |off )?(?:the |our )?qbin "
    r"(?:(?:up|off|over|again|anew|afresh|with|qheld|[,:(—-]) )*qmass"
    r"(?: (?:qmass|qheld|of|in|and|so|far|scraps|[,.!)]))*"
)
""" "Opened green" alone may be its lid: it is begun where it is said to be "again"."""


def further_begun(acts: tuple[Act, ...], message: Message) -> tuple[Act, ...]:
    """ "And the garage bin, 20 L", behind the opening of another: one more, and no layer."""
    context = message.context
    layer = acts[0] if len(acts) == 1 and isinstance(acts[0], Layer) else None
    if layer is None or not isinstance(context.last, Open) or layer.volume_l is None:
        return acts
    if layer.bin is None or layer.bin in context.bins or message.items:
        return acts
    if any(clause.verb is not None for clause in message.clauses):
        return acts
    return (Open(bin=layer.bin, capacity_l=layer.volume_l, on=layer.on, rules=(_FURTHER,)),)


def without_size_asked(acts: tuple[Act, ...], message: Message) -> tuple[Act, ...]:
    """ "No wait, it's 80", behind a question with a figure: of the question, and no bin's size."""
    sized = len(acts) == 1 and isinstance(acts[0], Amend) and acts[0].capacity_l is not None
    return () if sized and message.context.asked and not message.bins else acts


_FURTHER = "one more bin, behind one that was opened"


def in_opened(acts: Sequence[Act], message: Message) -> list[Act]:
    """What was put into a bin that was just begun is in it, and its size is no layer."""
    if len(acts) < 2:
        return list(acts)
    opened = [act for act in acts if isinstance(act, Open)]
    if len(opened) != 1:
        return list(acts)
    new = opened[0]
    fed = message.has(_FED_WITH) or any(a.quantity == "mass" for a in message.amounts)
    alone = fed and sum(isinstance(act, Layer) for act in acts) == 1
    there = _there(message, new)
    return [
        replace(act, bin=new.bin if there else act.bin or new.bin)
        if isinstance(act, Layer)
        else act
        for act in acts
        if alone or not _has_size_of(act, new)
    ]


def _there(message: Message, new: Open) -> bool:
    """ "Opened one called Oak and put a quart in there": no other bin is named behind it."""
    name = words_in(new.bin.casefold()) if new.bin else frozenset[str]()
    at = max((i for i, norm in enumerate(message.norms) if norm in name), default=-1)
    if at < 0 or any(ref.start > at for ref in message.bins if ref.name):
        return False
    return _IN_THERE.search(" ".join(message.norms[at + 1 :])) is not None


_IN_THERE = Late(r"\b(?:in|into) (?:there|it|that)\b")


def _has_size_of(act: Act, new: Open) -> bool:
    """Whether what is told as a layer is only the new bin's size."""
    return isinstance(act, Layer) and bool(act.volume_l) and act.volume_l == new.capacity_l


def unsized(acts: Sequence[Act]) -> list[Act]:
    """The acts, no layer with the size of the bin that was begun with it; beside one that was
    weighed it is none ("3 gal, it's called Pickle, Pickle ate 1 lb of crusts")."""
    opened = [act for act in acts if isinstance(act, Open)]
    if not opened:
        return list(acts)
    sized = [act for act in acts if any(_has_size_of(act, new) for new in opened)]
    fed = {act.bin for act in acts if isinstance(act, Layer) and act not in sized}
    return [
        replace(act, volume_l=None) if isinstance(act, Layer) and act in sized else act
        for act in acts
        if not (isinstance(act, Layer) and act in sized and act.bin in fed)
    ]


_FED_WITH = words_in("with w")
