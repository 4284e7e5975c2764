"""Amounts straight into bins: "2 tubs in green and 1 in bin 2", "kitchen: 700 g, tank: 2 quarts",
"put 2 kg of peel in the shed bin".

Every word is accounted for, so that no score is asked: an amount stands beside each bin, its
things behind it, and what carries them in between.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from itertools import pairwise

from handlers.reading.acts import Drain, Layer, Unsure
from handlers.reading.calendar.days import Day
from handlers.reading.completion.lots import share_of
from handlers.reading.food.items import Item
from handlers.reading.food.makeups import makeup
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.people.doers import is_sender
from handlers.reading.people.members import MemberRef
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.spans import accounted
from handlers.reading.words.vocabulary import words_in

RULE = "amounts straight into bins"
_PUT = words_in("put added chucked threw tossed tipped popped dumped bunged lobbed shoved slung")
_WENT = words_in("went gone")
_MOVED = _PUT | _WENT
_JOINTS = _MOVED | words_in(
    "and & n + , . : ; - – in into to the our of about roughly just only we i ive then also a all "
    "mostly mainly"
)
_LED = words_in("in into to")
_INWARDS = _MOVED | _LED
_EACH, _SAME, _NOUGHT = words_in("each"), words_in("ditto same"), words_in("nowt nil nothing none")
_SAID = _EACH | _SAME | _NOUGHT
_WORDS = _JOINTS | _SAID
_OF_LIQUID = words_in("ml mls mil mils millilitre millilitres cl floz")
_POURED = words_in("cup cups mug mugs jug jugs bottle bottles glass glasses spoon spoons tbsp tsp")
"""Vessels that liquid is drawn into as well."""
_OF_SCRAPS = words_in("caddy caddies handful handfuls bowlful bowlfuls")
"""Measures of what goes into a bin, in whatever room it stands."""
_UNTOLD = frozenset({"not", "will", "if", "ask", "said"})
_LONGEST = 40
_ALIKE = 12
"""Times as much as the amount before it that a number may be in the same unit."""


@dataclass(slots=True)
class _Share:
    """One amount, and where it went."""

    amount: Amount | None = None
    bins: list[BinRef] = field(default_factory=list)
    items: list[Item] = field(default_factory=list)
    days: list[Day] = field(default_factory=list)
    each: bool = False
    nought: bool = False


_Piece = Amount | BinRef | Item | Day | str


def straight(message: Message) -> tuple[Layer | Drain | Unsure, ...]:
    """A layer for each bin that an amount stands beside, or a draining where all of them are in a
    unit of liquids; none if anything else is said.
    """
    if not message.bins or not message.amounts or len(message.norms) > _LONGEST:
        return ()
    doers = _doers(message)
    if message.members and not doers:
        return ()
    if any(c.sense in _UNTOLD for c in message.clauses) or message.asked:
        return ()
    pieces = _pieces(message, doers)
    shares = [] if pieces is None else _shares(pieces)
    _go_on(shares, message)
    if not shares or not (doers or _tell_themselves(shares, message)):
        return ()
    days = _days(shares, message)
    if drained := _drained(shares, days, message):
        return drained
    if not _are_scraps(shares, message):
        return ()
    layers = [
        layer
        for share, day in zip(shares, days, strict=False)
        if share.amount
        for layer in _layers(share, share.amount, day)
    ]
    if len(days) < len(shares) or not layers:
        return ()
    if doers:
        other = doers.name
        halves = [share_of(layer, 0.5) for layer in layers]
        return tuple(part for half in halves for part in (half, replace(half, member=other)))
    [first, *further] = layers
    if not further and _may_be_other(shares[0]):
        return (Unsure(guess=(first,), rules=(RULE,)),)
    return tuple(layers)


def _doers(message: Message) -> MemberRef | None:
    """ "Me and Jo", "Jo and I": the other of the two, with the words that name both."""
    norms = message.norms
    if len(message.members) != 1:
        return None
    [other] = message.members
    if is_sender(message, other.name):
        return None
    if norms[other.start - 2 : other.start] in (["me", "and"], ["me", "&"]):
        return other._replace(start=other.start - 2)
    if norms[other.end : other.end + 2] in (["and", "me"], ["and", "i"], ["&", "me"], ["&", "i"]):
        return other._replace(end=other.end + 2)
    return None


def _pieces(message: Message, doers: MemberRef | None) -> list[_Piece] | None:
    """What stands in a row; None if any word says something else."""
    norms = message.norms
    marks = (message.items, message.days, message.amounts, message.named, message.bins)
    spans = [span for some in marks for span in some if norms[span.start] not in _SAID]
    if not (norms[0] in _WORDS or doers or any(span.start == 0 for span in spans)):
        return None  # as most that tell something else: "drained the shed bin, got 300 ml"
    told = accounted(norms, _numbers(message), spans, _doing(doers, norms))
    if any(isinstance(piece, str) and piece not in _WORDS for piece in told):
        return None
    return [p for p in told if not isinstance(p, MemberRef) and p not in _JOINTS]


def _doing(doers: MemberRef | None, norms: Sequence[str]) -> list[MemberRef]:
    """The words that say who did it, and that they did "half each"."""
    if doers is None:
        return []
    halves = [i for i in range(len(norms) - 1) if norms[i : i + 2] == ["half", "each"]]
    return [*(doers._replace(start=i, end=i + 2) for i in halves), doers]


def _numbers(message: Message) -> Iterator[Amount]:
    """The numbers that are in the unit of the amount before them."""
    ends = [*(amount.start for amount in message.amounts[1:]), len(message.words)]
    for last, end in zip(message.amounts, ends, strict=True):
        for i in range(last.end, end):
            if message.norms[i] not in _SAID and (number := _in_unit_of(last, message, i)):
                yield number


def _in_unit_of(last: Amount, message: Message, i: int) -> Amount | None:
    """The number at word i in the unit of the amount before it: "2 tubs in green, 1 in bin 2"."""
    number = read_number(message.words, i)
    if number is None or number.value <= 0 or last.size or last.counted:
        return None
    told = read_number(message.words, last.start)
    one = last.value / told.value if told and told.value else last.value
    value = number.value * one
    alike = last.value / _ALIKE <= value <= last.value * _ALIKE
    return last._replace(start=i, end=number.end, value=value) if alike else None


def _shares(pieces: Sequence[_Piece]) -> list[_Share]:
    """The amounts with their bins, in whichever order all of them stand; none if they do not."""
    told = [p for p in pieces if isinstance(p, Amount | BinRef) or p in _SAME or p in _NOUGHT]
    bin_first = isinstance(told[0], BinRef)
    one = sum(map(_is_amount, told)) == 1 and isinstance(told[-1], Amount)
    if bin_first and one and "each" in pieces:  # "white and black 300 g each"
        pieces = [told[-1], *(piece for piece in pieces if piece is not told[-1])]
        bin_first = False
    shares: list[_Share] = []
    for piece in pieces:
        begins = isinstance(piece, BinRef) if bin_first else _is_amount(piece)
        if begins or not shares:
            shares.append(_Share())
        if not _add(piece, shares):
            return []
    return shares if all(_is_whole(share, bin_first) for share in shares) else []


def _go_on(shares: Sequence[_Share], message: Message) -> None:
    """ "2 caddies of peel in green, one in bin 2", "put 1 kg of peel in green, 500 g in bin 2": of
    the same things, where a number stands alone or one verb leads all."""
    led = message.norms[0] in _PUT
    for before, share in pairwise(shares):
        number = share.amount and read_number(message.words, share.amount.start)
        alone = number and share.amount and number.end == share.amount.end
        if (led or alone) and not share.items:
            share.items = before.items


def _is_amount(piece: _Piece) -> bool:
    return isinstance(piece, Amount) or piece in _SAME


def _add(piece: _Piece, shares: Sequence[_Share]) -> bool:
    """Take a piece into the last share; False if it has no place there."""
    share = shares[-1]
    match piece:
        case Amount():
            free = share.amount is None and not share.nought
            share.amount = piece
            return free
        case BinRef():
            share.bins.append(piece)
            return piece.name is not None and (piece.known or _is_number(piece))
        case Item():
            share.items.append(piece)
            return not piece.absent and piece.food.shares[0][0] != "liquid"
        case Day():
            share.days.append(piece)
            return not piece.aside
    if piece in _SAME and len(shares) > 1 and share.amount is None:
        share.amount, share.items = shares[-2].amount, list(shares[-2].items)
        return share.amount is not None
    share.each = share.each or piece in _EACH
    share.nought = share.nought or piece in _NOUGHT
    return piece not in _SAME


def _is_number(ref: BinRef) -> bool:
    """ "4: 500 g", "bin 4: 500 g": a further bin that is called by its number."""
    return ref.plain and ref.name is not None and ref.name.split()[-1].isdecimal()


def _is_whole(share: _Share, bin_first: bool) -> bool:
    """Whether it says how much went into which bin: into several only if each had so much."""
    several = len(share.bins) > 1 and share.each and not bin_first
    one = len(share.bins) == 1 and not share.each
    return (several or one) and (share.amount is None) == share.nought


def _tell_themselves(shares: Sequence[_Share], message: Message) -> bool:
    """Whether there is more than a weight in one bin, or that is told to its last word."""
    volumes = any(share.amount and share.amount.quantity == "volume" for share in shares)
    several = len({ref.name for share in shares for ref in share.bins}) > 1
    return volumes or several or (len(shares) == 1 and _is_led(shares[0], message))


def _is_led(share: _Share, message: Message) -> bool:
    """ "Put 2 kg of peel in the shed bin": the deed, the things, and what is called a bin."""
    [ref], norms = share.bins, message.norms
    if not share.items or not ref.plain:
        return False
    before = norms[max(0, ref.start - 2) : ref.start]
    told = message.has(_MOVED) or "into" in before
    return told and not _LED.isdisjoint(before)


def _drained(
    shares: Sequence[_Share], days: Sequence[date], message: Message
) -> tuple[Layer | Drain, ...]:
    """ "1: 50 ml, 2: none, 3: 120 ml": what came out of each of several bins, with what is weighed
    of others beside it.
    """
    if len(shares) < 2 or len(days) < len(shares) or message.has(_INWARDS):
        return ()
    drawn = [share for share in shares if _is_drawn(share, message)]
    others = [share for share in shares if share.amount and share not in drawn]
    weighed = all(share.amount and share.amount.quantity == "mass" for share in others)
    if not drawn or not weighed or not all(share.nought or share.bins for share in shares):
        return ()
    found: list[Layer | Drain] = []
    for share, day in zip(shares, days, strict=False):
        if share.amount is not None and share in drawn:
            litres = share.amount.value
            found += (
                Drain(volume_l=litres, bin=ref.name, on=day, rules=(RULE,)) for ref in share.bins
            )
        elif share.amount is not None:
            found += _layers(share, share.amount, day)
    return tuple(found)


def _is_drawn(share: _Share, message: Message) -> bool:
    """Whether it is in a unit of liquids, its own or that of another number before it."""
    amount = share.amount
    if amount is None or amount.quantity != "volume" or share.items:
        return False
    own = message.norms[amount.start : amount.end]
    fluid = not _OF_LIQUID.isdisjoint(own) or (len(own) == 1 and message.has(_OF_LIQUID))
    return fluid and amount.value > 0 and not amount.negative


def _are_scraps(shares: Sequence[_Share], message: Message) -> bool:
    """Whether what was measured went in: a volume alone may have come out."""
    amounts = [share.amount for share in shares if share.amount]
    if any(a.quantity not in ("mass", "volume") or a.negative or a.value <= 0 for a in amounts):
        return False
    volumes = [share for share in shares if share.amount and share.amount.quantity == "volume"]
    if not volumes or message.has(_OF_LIQUID):
        return not volumes
    if len(volumes) < len(amounts) or message.has(_PUT):
        return True
    refs = [ref for share in shares for ref in share.bins]
    if all(ref.place and not ref.plain for ref in refs):  # "3 bags in the kitchen, 2 in the shed"
        return all(share.items or message.has(_OF_SCRAPS) for share in volumes)
    several = len({ref.name for ref in refs}) > 1
    return all(share.items or _goes_in(share, several, message) for share in volumes)


def _goes_in(share: _Share, several: bool, message: Message) -> bool:
    """ "2 tubs in green", "half a caddy green, half a caddy bin 2": it is led in, or measured by a
    vessel that nobody draws liquid into."""
    amount, at = share.amount, share.bins[0].start
    assert amount is not None
    if amount.vessel and not _POURED.isdisjoint(message.norms[amount.start : amount.end]):
        return False
    led = not _LED.isdisjoint(message.norms[max(0, at - 2) : at])
    return led or (amount.vessel and several)


def _may_be_other(share: _Share) -> bool:
    """ "Put 3 litres in the tank": a tank that is no bin may be filled as well."""
    amount, [ref] = share.amount, share.bins
    exact = amount is not None and amount.quantity == "volume" and not amount.vessel
    return exact and ref.place and not ref.plain and not share.items


def _days(shares: Sequence[_Share], message: Message) -> list[date]:
    """The day of each share: its own, or the only one told; none if they cannot be told apart."""
    told = [day.past for share in shares for day in share.days]
    if any(day > message.today for day in told):
        return []
    if all(len(share.days) == 1 for share in shares):
        return told
    return [told[0] if told else message.today] * len(shares) if len(told) < 2 else []


def _layers(share: _Share, amount: Amount, on: date) -> list[Layer]:
    made = makeup(share.items) if share.items else None
    mass = amount.value if amount.quantity == "mass" else None
    return [
        Layer(
            mass_kg=mass,
            volume_l=None if mass is not None else amount.value,
            materials={"mixed": 1.0} if made is None else made.shares,
            rich=None if made is None else made.rich,
            bin=ref.name,
            on=on,
            rules=(RULE,),
        )
        for ref in share.bins
    ]
