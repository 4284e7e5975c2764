"""A record put right by what went into each bin: "no, 2 kg in the shed and 1 kg in the hall".

Told as new layers beside the wrong one, the lot would count twice.
"""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Amend, Layer
from handlers.reading.completion.lots import lot_at, share_of
from handlers.reading.deeds.told import deeds
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in

_REFUSING = words_in("no nope nah")
_CUES = _REFUSING | words_in("actually sorry oops whoops correction wait")
_GONE = _CUES | words_in("went goes")
_MIXED = {"mixed": 1.0}
_LONGEST = 12
"""Words of a correction that moves a share of the last record."""


def split_right(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, with the first of the layers that put a record right told as its correction."""
    layers = [act for act in acts if isinstance(act, Layer)]
    if not layers or message.norms[0] not in _CUES or len(message.sentences) > 1 or deeds(message):
        return list(acts)
    if _tells_of_a_lack(message):
        return list(acts)
    last = message.context.last
    if isinstance(last, Layer) and last.member not in (None, message.context.sender):
        last = None  # another's record is not put right by what the sender did
    amends = [act for act in acts if isinstance(act, Amend)]
    split = len({layer.bin for layer in layers}) == len(layers) > 1
    if not (split or message.norms[0] in _REFUSING) or not (amends or isinstance(last, Layer)):
        return list(acts)
    if any(layer.bin is None or (layer.mass_kg or layer.volume_l) is None for layer in layers):
        return list(acts)
    if isinstance(last, Layer):
        layers = [_of_same(layer, last) for layer in layers]
        layers.sort(key=lambda layer: layer.bin != last.bin)  # its own bin keeps the record
    first = layers[0]
    amend = Amend(
        mass_kg=first.mass_kg,
        volume_l=first.volume_l,
        materials=None if first.materials == _MIXED else first.materials,
        rich=first.rich,
        bin=first.bin,
        member=first.member,
        on=None if first.on == message.today else first.on,
        rules=("put right, bin by bin",),
    )
    return [amend, *layers[1:], *(a for a in acts if not isinstance(a, Amend | Layer))]


def _tells_of_a_lack(message: Message) -> bool:
    """ "No time yesterday, 800 g today", "no meat, 2 kg in green": it refuses nothing."""
    if message.norms[0] != "no":
        return False
    food = any(item.start == 1 for item in message.items)
    at = 1 + (message.norms[1:2] == ["more"])
    return food or not _LACKED.isdisjoint(message.norms[at : at + 1])


_LACKED = words_in(
    "one time need idea clue doubt room space bran starter luck chance sign smell mould flies "
    "liquid juice wonder way reason energy car help thanks lid tap bones rain"
)


def _of_same(layer: Layer, last: Layer) -> Layer:
    """The layer on the day, and where no food is named of the make-up, of the one put right."""
    if layer.materials == _MIXED:
        layer = replace(layer, materials=last.materials, rich=last.rich)
    return replace(layer, on=last.on or layer.on)


def share_moved(message: Message) -> tuple[Act, ...]:
    """ "Half of it went to the hall": what stays of the last record, and what it was not."""
    last, norms = message.context.last, message.norms
    if not isinstance(last, Layer) or len(norms) > _LONGEST or not message.has(_GONE):
        return ()
    if not (last.mass_kg or last.volume_l) or message.measured() or len(message.bins) != 1:
        return ()
    [ref] = message.bins
    shares = [lot_at(message.words, norms, i, {ref.start}, ()) for i in range(ref.start)]
    lot = next((lot for lot in shares if lot is not None and lot.share), None)
    if (
        lot is None
        or (lot.start and norms[0] not in _CUES)
        or ref.name in (None, last.bin)
        or last.member not in (None, message.context.sender)
    ):
        return ()
    rules = ("a share went elsewhere",)
    stays = share_of(last, 1 - (lot.share or 0.0))
    moved = replace(share_of(last, lot.share or 0.0), bin=ref.name, rules=rules)
    return Amend(mass_kg=stays.mass_kg, volume_l=stays.volume_l, rules=rules), moved
