"""Things weighed first and placed later: "Husks 5 lb, bones 2 lb. Husks in the shed, bones in the
hall".
"""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Layer
from handlers.reading.food.items import Item
from handlers.reading.food.makeups import makeup
from handlers.reading.food.ofwhat import of_what
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.vocabulary import Food, words_in

_Lot = tuple[Amount, Item]


def placed_later(layers: Sequence[Layer], message: Message) -> list[Layer]:
    """A layer for each bin, of the things that go there by their names; none if not all do."""
    refs = _named(message)
    masses = [a for a in message.measured() if a.quantity == "mass"]
    if len(refs) != len({ref.name for ref in refs}) or not _are_apart(masses, refs, message):
        return []
    lots = [(a, item) for a in masses if (item := _thing_of(message, a)) is not None]
    if len(lots) != len(masses):
        return []
    held = _held(lots, refs, message)
    if any(not each for each in held) or sum(map(len, held)) != len(lots):
        return []
    return [_layer(layers[0], ref, each) for ref, each in zip(refs, held, strict=True)]


def _thing_of(message: Message, amount: Amount) -> Item | None:
    """The thing that an amount touches: "5 lb of husks", "5 lb husks", "husks 5 lb", "husks: 5"."""
    norms, start, end = message.norms, amount.start, amount.end
    end += norms[end : end + 1] != [] and norms[end] in _OF
    behind = next((i for i in message.items if i.start == end and not i.absent), None)
    start -= norms[start - 1 : start] == [":"]
    return behind or next((i for i in message.items if i.end == start and not i.absent), None)


_OF = words_in("of o worth")


def _named(message: Message) -> list[BinRef]:
    """The bins, each once where a name stands twice on the same words."""
    refs = {ref.start: ref for ref in sorted(message.bins) if ref.name is not None}
    return list(refs.values())


def _are_apart(masses: Sequence[Amount], refs: Sequence[BinRef], message: Message) -> bool:
    """Whether two things and more were weighed, all before the sentence that places them."""
    if len(masses) < 2 or len(refs) < 2 or any(of_what(message, a) for a in masses):
        return False
    last = max(a.end for a in masses)
    return any(last <= i < refs[0].start for i, norm in enumerate(message.norms) if norm in _STOPS)


_STOPS = words_in(". ; ! : —") | {"\n"}


def _held(lots: Sequence[_Lot], refs: Sequence[BinRef], message: Message) -> list[list[_Lot]]:
    """The lots of each bin, by the words that stand with it; the one bin that names none has the
    one lot that is left.
    """
    begin = max(a.end for a, _ in lots)
    stretches = _stretches(refs, message, begin)
    held: list[list[_Lot]] = []
    free = list(lots)
    for start, end in stretches:
        said = {_stem(norm) for norm in message.norms[start:end]}
        foods = {i.food for i in message.items if start <= i.start < end}
        own = [lot for lot in free if _is_named(message, lot, said, foods)]
        free = [lot for lot in free if lot not in own]
        held.append(own)
    without = [k for k, each in enumerate(held) if not each]
    if len(without) == len(free) == 1:
        held[without[0]] = free
    return held


def _stretches(refs: Sequence[BinRef], message: Message, begin: int) -> list[tuple[int, int]]:
    """The words that stand with each bin: before it ("husks in the shed"), or behind it ("the shed
    gets the husks").
    """
    stops = [i for i in range(begin, refs[0].start) if message.norms[i] in _STOPS]
    begin = stops[-1] if stops else begin
    led = message.norms[refs[0].start - 1] in _TO or message.norms[refs[0].start - 2] in _TO
    if led:
        return list(zip([begin, *(r.end for r in refs)], [r.start for r in refs], strict=False))
    ends = [*(r.start for r in refs[1:]), len(message.norms)]
    return list(zip([r.end for r in refs], ends, strict=True))


_TO = words_in("in into to for inside")


def _is_named(message: Message, lot: _Lot, said: set[str], foods: set[Food]) -> bool:
    """Whether the thing of a lot is among the words said, by its last word or as the same food."""
    item = lot[1]
    return _stem(message.norms[item.end - 1]) in said or item.food in foods


def _stem(norm: str) -> str:
    return norm.removesuffix("es") if norm.endswith("oes") else norm.removesuffix("s")


def _layer(first: Layer, ref: BinRef, lots: Sequence[_Lot]) -> Layer:
    made = makeup([item for _, item in lots], [amount.value for amount, _ in lots])
    mass = sum(amount.value for amount, _ in lots)
    layer = replace(first, bin=ref.name, mass_kg=mass, volume_l=None)
    return layer if made is None else replace(layer, materials=made.shares, rich=made.rich)
