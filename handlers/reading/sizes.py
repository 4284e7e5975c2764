"""How big a bin is, said beside whatever else: "the blue bin is 30 L", "bin 3 holds 18 litres"."""

from collections.abc import Iterator

from handlers.reading.acts import Open, Units
from handlers.reading.amountlists import read_amounts
from handlers.reading.amounts import Amount
from handlers.reading.binwords import BinRef
from handlers.reading.digits import digits_value
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.spans import indexes
from handlers.reading.vocabulary import words_in
from handlers.reading.words import cleaned, norms_in, words_of

OF_SIZE = "the size of a bin"
"""The rule of what tells a bin's size and begins none."""
SMALLEST = 2.0
"""Litres; a smaller volume beside a bin is what went in, not its size."""

SMALLEST_BARE = 4.0
"""Litres; a smaller volume that is said beside no bin is no bin's size."""

_IS = ("is", "'s", "holds", "takes", "fits", "was")
_ABOUT = words_in("a about around only just the roughly actually really now")
_LEADING = ("a", "about", "only", "just", "around", "actually", "really", "now")
_BEHIND = words_in("bin bucket pail one in size capacity tub drum barrel max total big when not")

CUES = (
    *(f"{verb} {lead}" for verb in _IS for lead in "123456789"),
    *(f"{verb} {lead} " for verb in _IS for lead in _LEADING),
)


def sizes(message: Message) -> Iterator[Found]:
    """Each bin with the size that is said of it; its name stays for what else is told of it."""
    if any(c.verb is not None and "open" in c.verb.verb.classes for c in message.clauses):
        return
    for clause in message.clauses:
        if clause.sense not in ("none", "did", "habit"):
            continue
        if any(clause.start <= item.start < clause.end for item in message.items):
            continue
        for ref in message.bins:
            size = size_of(message, ref, clause.end) if clause.start <= ref.start else None
            if size is not None and ref.name is not None:
                opened = Open(
                    bin=ref.name,
                    capacity_l=size.value,
                    on=message.today,
                    rules=(OF_SIZE,),
                )
                yield Found(ref.end, _behind_denied(message, size.end), opened)


def _behind_denied(message: Message, at: int) -> int:
    """Where the words go on behind "not 20 L", the size that was thought before."""
    norms = message.norms
    denied = at + (norms[at : at + 1] == [","])
    if norms[denied : denied + 1] != ["not"]:
        return at
    ends = [amount.end for amount in message.amounts if amount.start == denied + 1]
    number = denied + 1 < len(norms) and message.words[denied + 1].kind == "number"
    return ends[0] if ends else denied + 2 if number else at


def size_of(message: Message, ref: BinRef, end: int) -> Amount | None:
    """The volume that is said to be a bin's, in the words behind its name up to `end`."""
    norms, at = message.norms, ref.end
    if norms[at : at + 1] and norms[at] in _IS:
        at += 1
        while at < end and norms[at] in _ABOUT:
            at += 1
        for amount in message.amounts:
            exact = amount.quantity == "volume" and not amount.vessel and amount.value >= SMALLEST
            behind = [word for word in norms[amount.end : end] if word[:1].isalpha()]
            if exact and amount.start == at and (not behind or behind[0] in _BEHIND):
                return amount
    return None


def bare_amount(message: Message) -> Amount | None:
    """ "About 2 kg", "1 kg left", "a bucket of rice": an amount, if that is all it says."""
    measured = message.measured()
    held = indexes(measured, message.items)
    rest = {w.norm for i, w in enumerate(message.words) if i not in held and w.kind != "sign"}
    asked = any(sentence.asked for sentence in message.sentences)
    if asked or not rest <= _BARE | _LEFT or len(measured) != 1:
        return None
    return measured[0] if measured[0].value > 0 and not measured[0].negative else None


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


_LEFT = words_in("left we have there are still of bran starter maybe roughly please say full")
_BARE = _ABOUT | words_in("it that one is 's holds size bin litre think i its in all")
