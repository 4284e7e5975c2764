"""What the whole message adds to its acts: a bin named in passing, one layer shared by two bins."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Batch, Layer, Stock
from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in

_SHARED_OUT = words_in("split divided divide shared half halves evenly equally halved mitad moitie")
_EACH = words_in("each both apiece")


def completed(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, each in the bin that the message names, a shared layer as one for each bin."""
    out: list[Act] = []
    layers = sum(isinstance(act, Layer) for act in acts)
    for act in acts:
        shares = _shares(act, message) if isinstance(act, Layer) and layers == 1 else []
        out += shares or [_in_bin(act, message)]
    return out


def _in_bin(act: Act, message: Message) -> Act:
    """An act without a bin is of the one whose name stands somewhere in the message."""
    if isinstance(act, Batch | Stock) or getattr(act, "bin", "") is not None:
        return act
    names = {ref.name for ref in message.named}
    return replace(act, bin=names.pop()) if len(names) == 1 else act  # type: ignore[arg-type]


def _shares(layer: Layer, message: Message) -> list[Layer]:
    """ "Split between the shed and the hall" is half for each, "1 kg to each bin" one for each."""
    refs = sorted((*message.bins, *message.named))
    names = list(dict.fromkeys(ref.name for ref in refs if ref.name is not None))
    if len(names) < 2:
        return []
    if message.has(_SHARED_OUT):
        part = 1 / len(names)
    elif message.has(_EACH):
        part = 1.0
    else:
        return []
    mass = None if layer.mass_kg is None else layer.mass_kg * part
    volume = None if layer.volume_l is None else layer.volume_l * part
    return [replace(layer, bin=name, mass_kg=mass, volume_l=volume) for name in names]
