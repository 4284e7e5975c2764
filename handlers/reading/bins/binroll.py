"""Bins that a group tells it has, each with what is said of it: "four bins: the green one is 30 L,
two white ones of 12 L each, and a red caddy that Bram keeps". Every word has to be of such a list.
"""

from collections.abc import Iterator, Sequence
from datetime import date
from itertools import pairwise

from handlers.reading.acts import Act, Layer, Open, Seal, Unsure
from handlers.reading.bins.onebin import only_bin
from handlers.reading.bins.rollread import Roll, stands_alone
from handlers.reading.bins.rolltold import Told, Unlike
from handlers.reading.bins.rollwords import VESSELS, Piece, pieces_of
from handlers.reading.bins.sizes import SMALLEST, SMALLEST_BARE
from handlers.reading.deeds.openings import INTRODUCED
from handlers.reading.food.makeups import makeup
from handlers.reading.message import Message
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.once import once
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

CUES = (
    BIN_WORDS
    | VESSELS
    | words_in("more another opened set add register registered mine ours floor")
)
"""Words without one of which no bins are listed."""
_ONE = frozenset({"one"})
""" "The hall one is 10 L, the attic one 20", where a group has no bins as yet."""
_LONGEST = 90
"""Words and signs of such a list at most."""
_MOST_ALIKE = 6


def _names_several(message: Message) -> bool:
    refs = (*message.bins, *message.named)
    return len(refs) > 1 and sum(ref.known for ref in refs) > 1


@once
def bins_told(message: Message) -> tuple[Act, ...]:
    """The bins that a message lists, each opened with its size, its keeper and for whom it is; what
    is in one by now, and that it is sealed.
    """
    first = message.context.in_room and not message.context.bins and message.has(_ONE)
    if not (first or message.has(CUES) or _names_several(message)):
        return ()
    if len(message.words) > _LONGEST:
        return ()
    if one := only_bin(message):
        return (one,)
    if message.asked or not _may_be_sized(message):
        return ()
    roll = Roll(message, _from_bins_on(pieces_of(message)))
    try:
        roll.read()
    except Unlike:
        return ()
    days = {day.past for day in message.days}
    on = days.pop() if days else message.today
    if days or on > message.today or not (_sized(roll) and _is_sound(roll)):
        return ()
    if roll.sealed and (len(roll.bins) > 1 or not message.days):
        return ()
    return tuple(act for one in roll.bins for act in _told_of(one, roll, on))


def _may_be_sized(message: Message) -> bool:
    """Whether a size, a number or several vessels are named, without which no bins are listed, and
    nothing is told that was done to one.
    """
    if any(c.verb is not None and c.verb.verb.plain in _DEEDS for c in message.clauses):
        return False
    if _is_of_food(message) and not _may_hold(message):
        return False  # "about 2 L of peelings went into the shed"
    if message.has(VESSELS) or any(a.quantity == "volume" for a in message.amounts):
        return True
    if sum(norm in BIN_WORDS for norm in message.norms) > 1:
        return True
    weighed = indexes(message.amounts)
    return any(word.kind == "number" and i not in weighed for i, word in enumerate(message.words))


def _is_of_food(message: Message) -> bool:
    """Whether an amount is of a food, in the one sentence."""
    ends = {a.end for a in message.amounts}
    of_amount = any(not ends.isdisjoint((i.start, i.start - 1)) for i in message.items)
    return of_amount and len(message.sentences) == 1


def _may_hold(message: Message) -> bool:
    """Whether what is in a bin may be told: without that no food stands in such a list."""
    return "full" in message.said or any(a.quantity == "mass" for a in message.amounts)


_DEEDS = frozenset({"drain", "bury", "put", "chuck", "tip", "throw", "toss", "dump", "scrape"})


def _from_bins_on(pieces: Sequence[Piece]) -> Sequence[Piece]:
    """The pieces without the sentences before the first bin, and without a heading that tells of no
    bin alone: "Hi, I have just moved in. …", "one bin per floor: …".
    """
    start = 0
    colon = next((i for i, piece in enumerate(pieces) if piece.said == ":"), 0)
    if any(piece.said in _PER_HEAD for piece in pieces[:colon]):
        return pieces[colon + 1 :]
    for i, piece in enumerate(pieces):
        if piece.kind in _OF_BINS:
            break
        if piece.kind == "stop":
            start = i + 1
    return pieces[start:]


_PER_HEAD = words_in("per every")
_OF_BINS = frozenset({"vessel", "vessels", "size", "member", "one", "open", "mass"})


def _told_of(one: Told, roll: Roll, on: date) -> Iterator[Act]:
    """What is written down of one bin."""
    today, rules = roll.message.today, (INTRODUCED,)
    for name in _names(one, roll.bins):
        yield Open(
            bin=name,
            capacity_l=one.litres,
            shared=one.shared,
            member=one.keeper,
            on=on,
            rules=rules,
        )
        if one.holds_kg or one.part_full:
            told = makeup(
                [item for item in roll.message.items if item.start > roll.pieces[0].start]
            )
            held = Layer(
                bin=name,
                mass_kg=one.holds_kg,
                materials=told.shares if told else {"mixed": 1.0},
                rich=told.rich if told else None,
                on=on if roll.sealed else today,
                rules=rules,
            )
            yield held if one.holds_kg else Unsure(guess=(held,), rules=rules)
        if roll.sealed:
            yield Seal(bin=name, on=on, rules=rules)


def _sized(roll: Roll) -> bool:
    """Gives each bin its litres; whether they can be sizes of bins.

    A bare number is in the unit of the sizes beside it, in a metric group else in litres.
    """
    units = [a.factor for a in roll.message.amounts if a.quantity == "volume" and a.factor]
    metric = 1.0 if roll.message.context.units == "metric" else 0.0
    unit = units[0] if units else metric
    for one in roll.bins:
        if one.number is not None:
            one.litres = one.number * unit
    told = [one.litres for one in roll.bins if one.litres is not None]
    least = SMALLEST if "open" in roll.kinds else SMALLEST_BARE
    return all(litres >= least for litres in told)


def _is_sound(roll: Roll) -> bool:
    """Whether bins are told of that somebody has or begins, as many of them as are counted."""
    bins, known = roll.bins, roll.message.context.bins
    anew = "open" in roll.kinds
    if not bins or (roll.count is not None and roll.count != sum(one.many for one in bins)):
        return False
    if not all(1 <= one.many <= _MOST_ALIKE for one in bins):
        return False
    if any(one.litres is None and not _is_called(one.name, known, roll.count) for one in bins):
        return False
    old = [one for one in bins if one.name in known]
    if len(old) == len(bins) and not (anew or "is" in roll.kinds):
        return False
    if all(one.litres is None for one in bins):
        told = len(bins) > 1 and ("vessels" in roll.kinds or _is_each_a_bin(roll))
        had = all(_is_numbered_name(one.name) for one in bins) or _is_each_a_bin(roll)
        return told and (roll.count is not None or anew or (had and _is_ours(roll)))
    if len(bins) > 1:
        named = roll.message.has(BIN_WORDS | VESSELS) or _is_each_one(roll)
        return anew or len(old) == len(bins) or named
    one = bins[0]
    more = (
        one.keeper is not None
        or one.shared is not None
        or bool(one.holds_kg)
        or one.part_full
        or one.like is not None
        or roll.sealed
        or _is_numbered_name(one.name)
        or bool(one.shared)
        or one.by_place
    )
    asked = any(piece.said in _ORDERS for piece in roll.pieces if piece.kind == "open")
    return bool(more) or one.many > 1 or asked or _is_had(roll)


_ORDERS = words_in("add register registered")


def _is_each_a_bin(roll: Roll) -> bool:
    """ "A front bin and a back bin": the word for a bin stands with each name."""
    pairs = sum(a.kind == "name" and b.kind == "vessel" for a, b in pairwise(roll.pieces))
    return pairs == len(roll.bins)


def _is_each_one(roll: Roll) -> bool:
    """ "Ours is the green one, 18 L, Bram's is the black one, 12 L", "first floor 15 L, top floor
    20 L": each with its size, and told as one of several or by its floor.
    """
    ones = sum(piece.kind == "one" for piece in roll.pieces)
    floors = all(one.name.endswith(" floor") for one in roll.bins)
    each = floors or ones >= len(roll.bins)
    return each and all(one.litres is not None for one in roll.bins)


def _is_ours(roll: Roll) -> bool:
    """ "We've got …", "our bins are …", where the group has none as yet."""
    led = roll.message.norms[:4]
    return not roll.message.context.bins and not {"have", "got", "our", "use"}.isdisjoint(led)


def _is_called(name: str, known: Sequence[str], count: float | None) -> bool:
    """Whether a bin may be called so where no size says that it is one."""
    sure = count is not None or all(map(stands_alone, name.split())) or _is_numbered_name(name)
    return name not in known and sure


def _is_numbered_name(name: str) -> bool:
    """ "4th floor", "white 2", "bin A"."""
    lettered = name[-2:-1] == " " and name[-1:].isupper()
    return lettered or name.endswith(" floor") or any(letter.isdigit() for letter in name)


def _is_had(roll: Roll) -> bool:
    """ "We have a bin", "one more", "our third bin", "my bin is"."""
    norms = roll.message.norms
    if "sealed" in roll.kinds or not {"have", "got"}.isdisjoint(norms[:4]):
        return roll.message.has(BIN_WORDS)
    pairs = pairwise(roll.pieces)
    return any(a.said in _FURTHER and b.kind in ("one", "vessel") for a, b in pairs) or any(
        a.kind == "one" and b.said == "more" for a, b in pairwise(roll.pieces)
    )


_FURTHER = words_in("second third fourth fifth sixth another my our new")


def _names(one: Told, bins: Sequence[Told]) -> list[str]:
    """The name of a bin; of several alike a number with it, of two of one colour their looks."""
    if one.many > 1:
        return [f"{one.name} {k}" for k in range(1, one.many + 1)]
    alike = [other for other in bins if other.name == one.name and other is not one]
    return [" ".join((*reversed(one.looks), one.name)) if alike else one.name]
