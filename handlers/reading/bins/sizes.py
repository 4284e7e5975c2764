"""How big a bin is, said beside whatever else: "the blue bin is 30 L", "bin 3 holds 18 litres"."""

from collections.abc import Iterator

from handlers.reading.acts import Layer, Open, Units
from handlers.reading.corrections.vesselright import vessel_right
from handlers.reading.doubts.examples import is_example
from handlers.reading.found import Found
from handlers.reading.measures.amountlists import read_amounts
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.digits import digits_value
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import cleaned, norms_in, words_of

OF_SIZE = "the size of a bin"
"""The rule of what tells a bin's size and begins none."""
SMALLEST = 2.0
"""Litres; a smaller volume beside a bin is what went in, not its size."""

SMALLEST_BARE = 4.0
"""Litres; a smaller volume that is said beside no bin is no bin's size."""

_IS = ("is", "'s", "holds", "takes", "fits", "was")
_ABOUT = words_in("a about around only just the roughly actually really now also")
_LEADING = ("a", "about", "only", "just", "around", "actually", "really", "now", "also")
_BEHIND = words_in(
    "bin bucket pail one in size capacity tub drum barrel max total big when actually really "
    "not sorry too also as"
)

CUES = (
    *(f"{verb} {lead}" for verb in _IS for lead in "123456789"),
    *(f"{verb} {lead} " for verb in _IS for lead in _LEADING),
)


def sizes(message: Message) -> Iterator[Found]:
    """Each bin with the size that is said of it; its name stays for what else is told of it."""
    if any(c.verb is not None and "open" in c.verb.verb.classes for c in message.clauses):
        return
    if is_example(message) or vessel_right(message):
        return
    for clause in message.clauses:
        if clause.sense not in ("none", "did", "habit"):
            continue
        if any(clause.start <= item.start < clause.end for item in message.items):
            continue
        for ref in message.bins:
            size = size_of(message, ref, clause.end) if clause.start <= ref.start else None
            asks = message.asked
            name = ref.name or (None if asks else getattr(message.context.last, "bin", None))
            if size is not None and name is not None:
                opened = Open(
                    bin=name,
                    capacity_l=size.value,
                    shared=is_shared_behind(message, size),
                    on=message.today,
                    rules=(OF_SIZE,),
                )
                yield _found(message, ref, size, opened)


def sizes_of_all(message: Message) -> tuple[Open, ...]:
    """ "Both 15 litres", right behind the bins that were told of: the size of each."""
    context, norms = message.context, message.norms
    bins = [name for name in context.bins if name not in context.retired]
    both = "both" in norms and len(bins) == 2
    if not isinstance(context.last, Open) or not (both or not _EACH.isdisjoint(norms)):
        return ()
    size = size_of_each(message)
    if size is None:
        return ()
    return tuple(
        Open(bin=name, capacity_l=size, on=message.today, rules=(OF_SIZE,)) for name in bins
    )


def size_of_each(message: Message) -> float | None:
    """ "They're 18 litres each", "all 20 L", "20 L": litres, if that is all it says."""
    if message.bins or message.asked or len(message.measured()) != 1:
        return None
    [size] = message.measured()
    if size.quantity != "volume" or size.vessel or size.value < SMALLEST_BARE:
        return None
    return size.value if _OF_ALL.issuperset(unheld(message.norms, indexes([size]))) else None


_EACH = words_in("all each")
_OF_ALL = words_in(
    "both all each of them they they're are 're is hold holds take takes about around bins buckets "
    "two three four five six the and , . ! in size big"
)


def is_shared_behind(message: Message, size: Amount) -> bool | None:
    """Whose a bin is, in the words right behind its size; None if they do not say."""
    behind = message.norms[size.end : size.end + 4]
    if behind[:1] == ["and"]:  # "the yard is 30 L and shared"
        behind = behind[1:2]
    end = next((i for i, norm in enumerate(behind) if norm in _ENDING), len(behind))
    if not _SHARED.isdisjoint(behind[:end]) or "for all" in " ".join(behind[:end]):
        return True
    return False if not _OWN.isdisjoint(behind[:end]) else None


_ENDING = words_in("and . ; \n")
_SHARED = words_in("shared communal everyone everybody anyone anybody ours public")
_OWN = words_in("mine private own")


def _found(message: Message, ref: BinRef, size: Amount, opened: Open) -> Found:
    """The words of a size: all of them where the message tells nothing else, and so corrects none
    of the records.
    """
    norms, end = message.norms, _refused(message, size.end)
    if _AROUND.issuperset((*norms[: ref.start], *norms[end:])):
        return Found(0, len(norms), opened)
    return Found(ref.end, end, opened)


_AROUND = words_in("no oh sorry oops wait actually really and so the our my that by way , . ! -")


def _refused(message: Message, at: int) -> int:
    """Where ", not 30 L" ends behind a size; where it would begin, if it does not stand there."""
    norms = message.norms
    start = at + (norms[at : at + 1] == [","])
    number = read_number(message.words, start + 1) if norms[start : start + 1] == ["not"] else None
    if number is None:
        return at
    amount = next((a for a in message.amounts if a.start == number.start), None)
    return amount.end if amount else number.end


def size_of(message: Message, ref: BinRef, end: int) -> Amount | None:
    """The volume that is said to be a bin's, in the words behind its name up to `end`."""
    norms, at = message.norms, ref.end
    if norms[at : at + 1] and norms[at] in _IS:
        at += 1
        while at < end and norms[at] in _ABOUT:
            at += 1
        for amount in message.amounts:
            exact = amount.quantity == "volume" and not amount.vessel and amount.value >= SMALLEST
            refused = _refused(message, amount.end)
            behind = [word for word in norms[refused:end] if word[:1].isalpha()]
            if exact and amount.start == at and (not behind or behind[0] in _BEHIND):
                return amount if refused == amount.end or not _is_layer(message, ref) else None
    return None


def _is_layer(message: Message, ref: BinRef) -> bool:
    """Whether the last record is of so many litres in that bin: they may be put right."""
    last = message.context.last
    return isinstance(last, Layer) and bool(last.volume_l) and ref.name in (None, last.bin)


def bare_amounts(message: Message) -> list[Amount]:
    """ "About 2 kg", "2 kg peel and a bucket of rice": the amounts, if it says no more."""
    measured = message.measured()
    held = indexes(measured, message.items)
    rest = {w.norm for i, w in enumerate(message.words) if i not in held and w.kind != "sign"}
    asked = message.asked
    joints = _AND if len(measured) > 1 else frozenset[str]()
    if asked or not rest <= _BARE | _LEFT | _SLIPS | joints:
        return []
    return measured if all(a.value > 0 and not a.negative for a in measured) else []


def bare_volume(text: str, units: Units) -> float | None:
    """ "20 L", "it's about 20 litres", in a metric group "20": litres, if that is all it says."""
    words = words_of(cleaned(text))
    amounts = read_amounts(words, norms_in(words), units)
    held = indexes(amounts)
    numbers = [word for i, word in enumerate(words) if word.kind == "number" and i not in held]
    rest = {w.norm for i, w in enumerate(words) if i not in held and w.kind == "word"}
    if not rest <= _BARE or len(amounts) + len(numbers) != 1:
        return None
    litres: float | None = None
    if numbers and units == "metric":
        litres = digits_value(numbers[0].norm)
    elif amounts and amounts[0].quantity == "volume" and not amounts[0].negative:
        litres = amounts[0].value
    return litres if litres and litres >= SMALLEST_BARE else None


_SLIPS = words_in("no nope nah sorry oops typo mistake meant should be was actually course make")
_LEFT = words_in("left we have there are still of bran starter maybe roughly please say full")
_AND = words_in("and plus with")
_BARE = _ABOUT | words_in("it that one is 's holds size bin litre think i its in all")
