"""What is told of a bin in the breath in which it was begun: its size and its first layer."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Layer, Open
from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in


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
    return [
        replace(act, bin=act.bin or new.bin) if isinstance(act, Layer) else act
        for act in acts
        if alone or not _has_size_of(act, new)
    ]


def _has_size_of(act: Act, new: Open) -> bool:
    """Whether what is told as a layer is only the new bin's size."""
    return isinstance(act, Layer) and bool(act.volume_l) and act.volume_l == new.capacity_l


def unsized(acts: Sequence[Act]) -> list[Act]:
    """The acts, no layer with the size of the bin that was begun with it."""
    opened = [act for act in acts if isinstance(act, Open)]
    if not opened:
        return list(acts)
    return [
        replace(act, volume_l=None)
        if isinstance(act, Layer) and any(_has_size_of(act, new) for new in opened)
        else act
        for act in acts
    ]


_FED_WITH = words_in("with w")
