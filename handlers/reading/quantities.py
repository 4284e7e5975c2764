"""How much of what a report tells: the amounts that are of scraps, added up, and their make-up."""

from collections.abc import Sequence

from handlers.reading.amounts import Amount
from handlers.reading.groups import Group
from handlers.reading.materials import Item, Makeup, makeup
from handlers.reading.message import BRAN, LIQUID, Message
from handlers.reading.numbers import read_number
from handlers.reading.once import once
from handlers.reading.vocabulary import words_in

_TOTAL = words_in("total together altogether all combined totals totalling sum")


@once
def scrap_amounts(group: Group) -> list[Amount]:
    """Amounts in the group that are of scraps: not of bran, water or liquid, nor a bin's size."""
    norms = group.message.norms
    out = [
        a
        for a in group.measured()
        if not a.negative
        and of_what(group.message, a) == ""
        and not is_drawn(group.message, a)
        and not _is_rate(norms, a.end)
        and not (a.size and norms[max(0, a.start - 2) : a.start][-1:] != []
                 and not {"in", "into"}.isdisjoint(norms[max(0, a.start - 2) : a.start]))
    ]  # fmt: skip
    if any(not a.size for a in out):
        out = [a for a in out if not a.size]
    out = [_of_each(group, a) for a in out]
    if len(out) < 2:
        return out
    out = without_restated(norms, out)
    if len(out) > 1:
        out = [a for a in out if not _is_part(norms, a.end)] or out
    return _without_tare(group, _without_total(group, out))


def _is_part(norms: Sequence[str], i: int) -> bool:
    """ "1.2 kg, 800 g of it bread": a part of what was told."""
    return norms[i : i + 1] == ["of"] and not _WHOLE.isdisjoint(norms[i + 1 : i + 2])


_WHOLE = words_in("it that which them those this")


def without_restated(norms: Sequence[str], amounts: Sequence[Amount]) -> list[Amount]:
    """ "Nearly 700 g, say 650": what is said again counts once, as it was said last."""
    out: list[Amount] = []
    for amount in amounts:
        last = out[-1] if out else None
        if last is not None and last.quantity == amount.quantity:
            between = norms[last.end : amount.start]
            again = len(between) <= _AGAIN_WORDS and _AGAIN.issuperset(between)
            if again and not _INSTEAD.isdisjoint(between):
                out.pop()
        out.append(amount)
    return out


_AGAIN_WORDS = 4
_INSTEAD = words_in("say well actually rather call like")
_AGAIN = _INSTEAD | words_in(", it more maybe or no - — about")


def _of_each(group: Group, amount: Amount) -> Amount:
    """ "500 g each of leeks and rice", "3 loaves, 800 g each": as often as there are things."""
    norms = group.message.norms
    if norms[amount.end : amount.end + 1] not in (["each"], ["apiece"]):
        return amount
    if norms[amount.end + 1 : amount.end + 2] == ["of"]:
        times = _listed_from(group, amount.end + 2)
    else:
        times = _counted_before(group, amount.start)
    return amount._replace(value=amount.value * times) if times > 1 else amount


def _listed_from(group: Group, start: int) -> int:
    """How many things stand in the list that begins at a word."""
    count, end = 0, start
    for item in group.items:
        if item.start >= end and set(group.message.norms[end : item.start]) <= _LIST:
            count, end = count + 1, item.end
    return count


def _counted_before(group: Group, end: int) -> int:
    """The count of things just before an amount of each ("3 loaves, 800 g each")."""
    words = group.message.words
    for i in range(end - 1, max(group.start, end - 5) - 1, -1):
        number = read_number(words, i) if words[i].kind in ("number", "word") else None
        if number is not None and not number.word and number.end < end:
            whole = number.value == int(number.value) and 1 < number.value <= _MOST_THINGS
            return int(number.value) if whole else 1
    return 1


_LIST = words_in(", and n & the a some of old")
_MOST_THINGS = 50


def is_drawn(message: Message, amount: Amount) -> bool:
    """Whether the words round a volume say that it came out ("poured off 10 oz", "2 pints out")."""
    if amount.quantity != "volume" and amount.liquid_l is None:
        return False
    if any(amount.end <= x.start <= amount.end + 2 for x in message.items):
        return False
    before = message.norms[max(0, amount.start - 3) : amount.start]
    behind = message.norms[amount.end : amount.end + 1]
    return not _DRAWN.isdisjoint(before) or behind in (["off"], ["out"])


_DRAWN = words_in("drained drew drawn tapped bled siphoned released off out")


def _without_tare(group: Group, amounts: list[Amount]) -> list[Amount]:
    """ "2.3 kg with the bucket, bucket alone 400 g" is 1.9 kg."""
    masses = [a for a in amounts if a.quantity == "mass"]
    if len(masses) != 2 or _VESSEL.isdisjoint(group.norms):
        return amounts
    norms = group.message.norms
    gross, tare = sorted(masses, key=lambda a: -a.value)
    near = set(norms[max(group.start, tare.start - 4) : min(group.end, tare.end + 3)])
    with_it = not _INCLUDING.isdisjoint(norms[gross.end : gross.end + 2])
    if (near.isdisjoint(_ALONE) and not with_it) or near.isdisjoint(_VESSEL):
        return amounts
    return [gross._replace(value=gross.value - tare.value)]


_VESSEL = words_in("bucket tub pot bowl tin box dish pan tray crate container basin bag jar pail")
_INCLUDING = words_in("with including incl inc gross")
_ALONE = words_in("alone empty itself tare own weighs bare less minus")


def _is_rate(norms: Sequence[str], i: int) -> bool:
    """ "200 pounds a month", "2 kg per head": what an amount is each time, not what went in."""
    if i + 1 >= len(norms) or norms[i] not in ("a", "per", "each", "every"):
        return False
    return norms[i + 1] in _EACH or norms[i] == "per"


_EACH = words_in("day week month year head person time night hour go session household")


def of_what(message: Message, amount: Amount) -> str:
    """`bran`, `liquid`, `water`, or nothing if the amount is not said to be of these."""
    if not _names_others(message):
        return ""
    norms = message.norms
    at = amount.end
    for i in range(at, min(len(norms), at + 4)):
        if message.bran_at(i):
            return "bran"
        if message.liquid_at(i):
            return "liquid"
        if norms[i] in _WATER:
            return "water"
        if norms[i] not in _OF_BETWEEN and any(x.start <= i < x.end for x in message.items):
            break
        if norms[i] in _OF_ENDS:
            break
    if amount.start and message.bran_at(amount.start - 1) and amount.end < len(norms):
        return "bran"
    return "bran" if _is_said_of_bran(message, amount) else ""


_WATER = words_in("water molasses jaggery treacle")
_OTHERS = BRAN | LIQUID | _WATER


@once
def _names_others(message: Message) -> bool:
    return message.has(_OTHERS)


def _is_said_of_bran(message: Message, amount: Amount) -> bool:
    """ "The starter tin's about half full, call it 800 g": bran is what was named last before."""
    if any(amount.end <= x.start <= amount.end + 2 for x in message.items):
        return False
    first = max(0, amount.start - _BACK + 1)
    if not message.bran(first, amount.start):
        return False
    spans = [(x.start, x.end) for x in message.items]
    spans += [(x.start, x.end) for x in message.bins]
    spans += [(x.start, x.end) for x in message.amounts]
    named = {i for start, end in spans for i in range(start, end)}
    for i in range(amount.start - 1, first - 1, -1):
        if i in named or message.norms[i] in _ENDING:
            return False
        if message.bran_at(i):
            return True
    return False


_BACK = 12
"""Words back to which an amount may be said of what was named."""
_ENDING = words_in(". ! ? on over then to into in for per with and goes need needs want wants") | {
    "\n"
}


_OF_ENDS = words_in(
    ", . in into and to ( ) ; for from + n how what is are do should can : → off out"
)


_OF_BETWEEN = words_in(
    "of the o fresh old dry more good new wheat rice oat our that extra fermented"
)


def _without_total(group: Group, amounts: list[Amount]) -> list[Amount]:
    """Drops a total given beside its parts, or the parts that do not add up to it."""
    norms = group.message.norms
    for a in amounts if len(amounts) > 1 else ():
        behind = norms[a.end : a.end + 2]
        near = {*norms[max(0, a.start - 2) : a.start], *(behind if behind[:1] != ["."] else ())}
        told = not near.isdisjoint(_TOTAL)
        if not told and a is not amounts[0]:
            continue
        parts = [b for b in amounts if b is not a and b.quantity == a.quantity]
        if parts and told and not _RUNNING.isdisjoint(norms[a.end : a.end + 3]):
            return parts  # "2 kg, total 14 kg now"
        first = len(parts) > 1 and a is amounts[0]
        first = first and not {":", "("}.isdisjoint(norms[a.end : amounts[1].start])
        if parts and (told or first):
            summed = sum(b.value for b in parts)
            if abs(summed - a.value) <= (0.05 if told else 0.01) * a.value:
                return [b for b in amounts if b is not a]
    return amounts


_RUNNING = words_in("now far already inside")


def amount_sum(amounts: Sequence[Amount]) -> tuple[float | None, float | None]:
    """Mass in kg or volume in litres, added up: mass if any was said, vessels last."""
    mass = [a.value for a in amounts if a.quantity == "mass"]
    if mass:
        return sum(mass), None
    exact = [a.value for a in amounts if a.quantity == "volume" and not a.vessel]
    loose = [a.value for a in amounts if a.quantity == "volume" and a.vessel]
    if exact or loose:
        return None, sum(exact or loose)
    return None, None


@once
def makeup_of(group: Group) -> Makeup | None:
    """Make-up of what the group names, or of the group it goes on from if it names none."""
    amounts = scrap_amounts(group)
    items = [i for i in group.items if not i.absent]
    weights = _weights(group, items, amounts)
    own = makeup(items, weights) if items else None
    if own is None and group.inherited is not None:
        return makeup_of(group.inherited)
    return own


def _weights(group: Group, items: Sequence[Item], amounts: Sequence[Amount]) -> list[float] | None:
    """Amounts of the single items, where each has one: said before it or behind it."""
    kind = "mass" if any(a.quantity == "mass" for a in amounts) else "volume"
    own = [a for a in amounts if a.quantity == kind]
    if len(own) < 2 or not items:
        return None
    beside = _one_each(group.message.norms, items, own)
    if beside is not None:
        return beside
    before = own[0].start < items[0].start
    weights: list[float] = []
    for item in items:
        if before:
            near = [a for a in own if a.start < item.start][-1:]
        else:
            near = [a for a in own if a.start >= item.end][:1]
        if not near:
            return None
        sharing = [x for x in items if _nearest(x, own, before) is near[0]]
        weights.append(near[0].value / max(1, len(sharing)))
    return weights


def _one_each(
    norms: Sequence[str], items: Sequence[Item], own: Sequence[Amount]
) -> list[float] | None:
    """ "A kilo of leeks and the bones, about 300 g": each thing has the amount it touches."""
    if len(items) != len(own):
        return None
    weights: list[float] = []
    for item, amount in zip(items, own, strict=True):
        first, second = (item.end, amount.start), (amount.end, item.start)
        between = norms[slice(*(first if first[0] <= first[1] else second))]
        if len(between) > _NEAR or not _BETWEEN.issuperset(between):
            return None
        weights.append(amount.value)
    return weights


_NEAR = 3
_BETWEEN = words_in(
    "of the o a some old about abt around roughly maybe approx say nearly almost , ( : - = is was "
    "were weighed weighing at good"
)


def _nearest(item: Item, own: Sequence[Amount], before: bool) -> Amount | None:
    near = (
        [a for a in own if a.start < item.start][-1:]
        if before
        else [a for a in own if a.start >= item.end][:1]
    )
    return near[0] if near else None
