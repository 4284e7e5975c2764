"""Layers told in few words, read as though they had been told in full: "added 2 kg …"."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Amend, Drain, Layer, Unsure
from handlers.reading.bins.targetbins import FED_BY_NAME
from handlers.reading.corrections.joining import put_in_besides
from handlers.reading.corrections.partright import BY_PART
from handlers.reading.corrections.sametoo import AS_JUST_TOLD
from handlers.reading.deeds.barefigures import FIGURES, is_weighed_talk, with_unit
from handlers.reading.deeds.barelayers import (
    BARE,
    before_no_bran,
    behind_a_group,
    drained_glass,
    is_bare,
)
from handlers.reading.message import Message, read_message
from handlers.reading.weighed import told


def beside_the_last(message: Message) -> tuple[Act, ...]:
    """What comes to the layer that another has just told, in the same bin."""
    said = put_in_besides(message)
    if not said:
        return ()
    acts = _told_as_added(said, message)
    if not all(isinstance(act, Layer) and act.bin is None for act in acts):
        return ()
    bin = getattr(message.context.just_told, "bin", None)
    layers = [act for act in acts if isinstance(act, Layer)]
    return tuple(replace(act, bin=bin, rules=(*act.rules, AS_JUST_TOLD)) for act in layers)


def of_figures(message: Message) -> tuple[Act, ...]:
    """The layers that bare figures beside bins are: asked about, unless the talk is of weights."""
    said = with_unit(message) if message.context.in_room and message.bins else None
    if not said:
        return ()
    acts = told(read_message(said, message.context))
    layers = [act for act in acts if isinstance(act, Layer) and act.bin is not None]
    if not layers or len(layers) < len(acts):
        return ()
    return (
        tuple(layers)
        if is_weighed_talk(message)
        else (Unsure(guess=tuple(layers), rules=(FIGURES,)),)
    )


def rests_on(acts: Sequence[Act], message: Message) -> bool:
    """Whether something is told; what only puts another's record right is not."""
    if not acts or not all(isinstance(act, Amend) for act in acts):
        return bool(acts)
    context = message.context
    named = any(BY_PART in act.rules for act in acts)
    further = is_bare(message) and not named  # a further layer, behind others'
    earlier = None if further else context.earlier
    records = [record for record in (context.last, earlier) if record is not None]
    return any(getattr(one, "member", None) in (None, context.sender) for one in records)


def of_amount_alone(message: Message) -> tuple[Act, ...]:
    """The layer that an amount alone may be: asked about, unless the talk is of layers; or the
    liquid, which may be a drink."""
    if glass := drained_glass(message):
        return (Unsure(guess=(glass,), rules=(BARE,)),)
    if not is_bare(message):
        return ()
    said = message.text(0, len(message.words)).removeprefix("put ")
    acts = _told_as_added(said, message)
    layers = [act for act in acts if isinstance(act, Layer)]
    if not layers or len(layers) < len(acts):
        return ()
    return tuple(Unsure(guess=(layer,), rules=(BARE,)) for layer in layers)


def of_group(message: Message) -> tuple[Act, ...]:
    """The layer of a group or class: into which of several bins is asked."""
    said = behind_a_group(message)
    if not said or not is_bare(read_message(said, message.context)):
        return ()
    acts = _told_as_added(said, message)
    layers = [act for act in acts if isinstance(act, Layer)]
    return tuple(replace(act, each="either") for act in layers) if len(layers) == len(acts) else ()


def of_name(message: Message) -> tuple[Act, ...]:
    """The layer that by its form goes into what has the name of no bin, "Hector gets 2 kg of peel":
    asked about while the talk is of the bins, or there are none yet.
    """
    context = message.context
    if len(message.bins) != 1 or not (context.of_bins or not context.bins):
        return ()
    [ref] = message.bins
    if ref.known or not ref.name or message.norms[ref.end : ref.end + 1] not in _GETS:
        return ()
    acts = _told_as_added(message.text(ref.end + 1, len(message.words)), message)
    if len(acts) != 1 or not isinstance(acts[0], Layer):
        return ()
    layer = replace(acts[0], bin=ref.name)
    return (Unsure(guess=(layer,), rules=("by a name",)),)


_GETS = [[norm] for norm in FED_BY_NAME]


def without_bran(message: Message) -> tuple[Act, ...]:
    """The layer of which it is said that no starter was put on it."""
    said = before_no_bran(message) if message.context.in_room else None
    if said is None:
        return ()
    rest = read_message(said, message.context)
    acts = _told_as_added(said, message) if is_bare(rest) else told(rest)
    return acts if all(isinstance(act, Layer | Drain) for act in acts) else ()


def _told_as_added(said: str, message: Message) -> tuple[Act, ...]:
    """What the words would tell behind "added", in the place of the message."""
    return told(read_message(f"added {said}", message.context))
