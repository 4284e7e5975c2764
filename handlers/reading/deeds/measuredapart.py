"""Warmth and acidity told of several bins in a row: "shed 19 °C, hall 24", "pH 4 in both"."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from handlers.practice.units import celsius
from handlers.reading.acts import Act, Observe
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.vocabulary import words_in


def measured_apart(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, what was measured in each of several bins as one observation of each."""
    told = [act for act in acts if isinstance(act, Observe)]
    if not told or all(act.celsius is None and act.ph is None for act in told):
        return list(acts)
    refs = _named(message)
    if len(refs) < 2:
        return list(acts)
    found = {ref.name: measures for ref in refs if (measures := _of_bin(message, refs, ref))}
    if len(found) < 2 or len(found) != len(refs):
        return list(acts)
    seen = tuple(dict.fromkeys(sign for act in told for sign in act.signs))
    shared = seen if message.has(_BOTH) else ()
    first, known = told[0], {act.bin: act for act in told}
    parts: list[Act] = []
    for name, (warm, acid) in found.items():
        own = known.get(name, first)
        signs = shared or (own.signs if name in known else ())
        parts.append(replace(own, bin=name, celsius=warm, ph=acid, signs=signs))
    return [*parts, *(act for act in acts if act not in told)]


_BOTH = words_in("both all each")


def _named(message: Message) -> list[BinRef]:
    """The bins of the message, each where it is first named."""
    refs = {ref.name: ref for ref in sorted(message.bins, reverse=True) if ref.name is not None}
    return sorted(refs.values())


def _of_bin(
    message: Message, refs: Sequence[BinRef], ref: BinRef
) -> tuple[float | None, float | None] | None:
    """°C and pH told of a bin, behind its name and before the next; None if there is neither."""
    ends = [b.start for a, b in pairwise(refs) if a is ref]
    end = ends[0] if ends else len(message.norms)
    own = [a for a in message.amounts if ref.end <= a.start < end and a.start - ref.end <= _NEAR]
    warm = next((a.value for a in own if a.quantity == "celsius"), None)
    acid = next((a.value for a in own if a.quantity == "ph"), None)
    if warm is None and acid is None:
        before = [a for a in message.amounts if a.quantity in ("celsius", "ph")]
        return _bare(message, ref, before[0]) if before else None
    return warm, acid


_NEAR = 6
"""Words between a bin and what was measured in it, at most."""


def _bare(message: Message, ref: BinRef, like: Amount) -> tuple[float | None, float | None] | None:
    """ "Shed 19 degrees, hall 24": a number right behind a bin, in the measure of another."""
    at = ref.end
    while message.norms[at : at + 1] and message.norms[at] in _IS:
        at += 1
    number = read_number(message.words, at) if at < len(message.words) else None
    ended = number is not None and (
        number.end >= len(message.norms) or message.norms[number.end] in _ENDS
    )
    if number is None or not ended or number.word or not number.value:
        return None
    if like.quantity == "ph":
        return (None, number.value) if number.value <= _MOST_PH else None
    if number.value > _HOTTEST:
        return None
    own = read_number(message.words, like.start)
    same = own is None or abs(abs(own.value) - abs(like.value)) < _EXACT
    return (number.value if same else celsius(number.value)), None


_IS = words_in("is was at : 's reads - — about now")
_ENDS = words_in(", . ; ! and & inside today now both all") | {"\n"}
_MOST_PH, _HOTTEST = 14, 160
_EXACT = 1e-6
