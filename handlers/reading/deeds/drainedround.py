"""What was drawn off each of several bins, told in a row: "drained red, 3 cups, and the shed, one
cup", "tap round: red 250 ml, the shed 400 ml, nothing out of the yard", "juice: red 250, yard 80".
"""

from collections.abc import Iterable, Iterator

from handlers.reading.acts import Drain, Observe
from handlers.reading.calendar.days import Day
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.bareplaces import SMALL
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.late import Late
from handlers.reading.words.spans import Span, accounted
from handlers.reading.words.vocabulary import words_in

RULE = "drained one after the other"


def drained_round(message: Message) -> tuple[Drain | Observe, ...]:
    """A draining for each bin that stands beside its amount, where every word is of such a round;
    none if anything else is said.
    """
    if len(message.bins) < 2 or not message.has(_CUES):
        return ()
    amounts = message.amounts or _bare(message)
    pieces: list[Span | str] = [*accounted(message.norms, message.days, amounts, message.bins)]
    if _ROUND.fullmatch(" ".join(map(_word, pieces))) is None:
        return ()
    days = {piece.past for piece in pieces if isinstance(piece, Day) and not piece.aside}
    on = days.pop() if len(days) == 1 else message.today
    if days or on > message.today:
        return ()
    return tuple(
        Drain(volume_l=amount.value, bin=ref.name, on=on, rules=(RULE,))
        if amount is not None
        else Observe(signs=("no_liquid",), bin=ref.name, on=on, rules=(RULE,))
        for ref, amount in _of_each(pieces)
    )


def _bare(message: Message) -> list[Amount]:
    """Figures that can only be millilitres: in a metric group a tap gives some hundred of them."""
    if message.context.units != "metric":
        return []
    return [
        Amount(i, i + 1, "volume", int(norm) * SMALL, factor=SMALL)
        for i, norm in enumerate(message.norms)
        if norm.isdecimal() and _LEAST_ML <= int(norm) <= _MOST_ML and int(norm) % 10 == 0
    ]


_LEAST_ML, _MOST_ML = 50, 3000
"""mL that a bare figure may be of a draining, by judgement."""


def _word(piece: Span | str) -> str:
    match piece:
        case BinRef(name=str()):
            return "qbin"
        case Amount(quantity="volume", negative=False, size=False):
            return "qvol"
        case Day():
            return "qday"
        case str():
            return piece
    return "qother"


def _of_each(pieces: Iterable[Span | str]) -> Iterator[tuple[BinRef, Amount | None]]:
    """Each bin with what came out of it; None where nothing did."""
    last: BinRef | None = None
    for piece in pieces:
        if isinstance(piece, BinRef):
            if last is not None:
                yield last, None
            last = piece
        elif isinstance(piece, Amount) and last is not None:
            yield last, piece
            last = None
    if last is not None:
        yield last, None


_LIQUID = "tea|juice|juices|liquid|leachate"
_CUES = words_in("drained tapped tap taps drew ran drain drains") | set(_LIQUID.split("|"))
_NOUGHT = r"(?:nothing|none|nowt|nil|nada)"
_EACH = (
    r"(?:(?:the |our )?qbin (?:[,:(=-] )?"
    r"(?:(?:about|gave|got|took|had|only|just|maybe|barely|around) )*qvol(?: [)])?"
    rf"|(?:the |our )?qbin (?:[,:=-] )?(?:(?:gave|got|was) )?(?:{_NOUGHT}|dry)"
    rf"|{_NOUGHT} (?:out of|out|from|off|in) (?:the |our )?qbin)"
)
_ROUND = Late(
    r"(?:(?:(?:i|we|have|just|ok|qday|,) )*(?:drained|tapped|(?:drew|ran) off) "
    rf"|(?:did (?:the |a )?)?(?:taps?|drains?|{_LIQUID}) "
    r"(?:(?:round|rounds|run|done|duty|qday) )*[:,–—-] )"
    rf"{_EACH}(?:(?: (?:[,;.&+]|and|n|then|but))+ {_EACH})+(?: (?:[.!,]|qday))*"
)
