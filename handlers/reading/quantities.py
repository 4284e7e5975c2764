"""How much of what a report tells: the amounts that are of scraps, added up, and their make-up."""

from collections.abc import Sequence
from math import isclose

from handlers.reading.amounts import Amount
from handlers.reading.groups import Group
from handlers.reading.intangible import is_intangible
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
        and a.start not in _weighings(group.message)
        and norms[max(0, a.start - 2) : a.start] != ["down", "to"]
        and not (a.size and not {"in", "into"}.isdisjoint(norms[max(0, a.start - 2) : a.start]))
    ]
    if any(not a.size for a in out):
        out = [a for a in out if not a.size]
    out = [_of_each(group, a) for a in out]
    if len(out) > 1:  # "the bones from 2 kg of wings"
        out = [a for a in out if norms[max(0, a.start - 1)] != "from"] or out
        out = _result(norms, without_restated(norms, out))
    out = _without_parts(group, out)
    if len(out) < 2:
        return out
    out = [a for a in out if not is_intangible(norms, a.end)] or out
    return _without_tare(group, _without_total(group, out))


def _without_parts(group: Group, amounts: list[Amount]) -> list[Amount]:
    """The amounts without those that are parts of another told before in the sentence."""
    norms = group.message.norms
    if not any(_is_part(norms, a.end) for a in amounts):
        return amounts
    first = group.message.sentences[group.clauses[0].sentence].start if group.clauses else 0
    known = [a for a in group.message.amounts if first <= a.start < group.end and a.factor]
    wholes = {a.quantity for a in known if not _is_part(norms, a.end)}
    return [a for a in amounts if a.quantity not in wholes or not _is_part(norms, a.end)]


def _result(norms: Sequence[str], amounts: list[Amount]) -> list[Amount]:
    """ "2.6 kg minus 400 g = 2.2 kg": what a sum comes to counts alone."""
    for a in reversed(amounts[1:]):
        if a.start and norms[a.start - 1] in ("=", "net", "nett"):
            return [b for b in amounts if b.start >= a.start]
    return amounts


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
            exact = norms[amount.end : amount.end + 2] == ["to", "be"]  # "well, 4.8 to be exact"
            again = again and not _INSTEAD.isdisjoint(between)
            if again or exact or _is_repair(between) or _is_same(between, last, amount):
                out.pop()
            elif _is_second_guess(between, last, amount):
                amount = amount._replace(start=last.start, value=(last.value + amount.value) / 2)
                out.pop()
        out.append(amount)
    return out


def _is_repair(between: Sequence[str]) -> bool:
    """ "Two kg, sorry three kg": what is said last counts."""
    return len(between) <= _AGAIN_WORDS and is_repair(between)


def is_repair(between: Sequence[str]) -> bool:
    """Whether nothing but words of taking back stands between two names or amounts."""
    return _REPAIRING.issuperset(between) and not _REPAIRS.isdisjoint(between)


_REPAIRS = words_in("sorry wait oops mean scratch")
_REPAIRING = _REPAIRS | words_in(", no i that make actually its - — ... into in the to")


def _is_second_guess(between: Sequence[str], last: Amount, amount: Amount) -> bool:
    """ "1 kg ish, maybe 1.2": two guesses at one amount."""
    guessed = _PERHAPS_SAID.issuperset(between) and not _PERHAPS.isdisjoint(between)
    return guessed and max(last.value, amount.value) <= _ALIKE * min(last.value, amount.value)


def _is_same(between: Sequence[str], last: Amount, amount: Amount) -> bool:
    """ "A stone of potatoes, that's 14 lb": the same once more, by another unit."""
    other = last.factor and amount.factor and last.factor != amount.factor
    told = not _THAT_IS.isdisjoint(between[-2:])
    return bool(other) and told and isclose(last.value, amount.value, rel_tol=_AS_GOOD_AS)


_THAT_IS = words_in("thats 's is ie = so or")
_AS_GOOD_AS = 0.06
"""Share of an amount by which its rounded value in another unit may differ."""
_AGAIN_WORDS = 4
_INSTEAD = words_in("say well actually rather call like")
_AGAIN = _INSTEAD | words_in(", it more maybe or no - — about")
_PERHAPS = words_in("maybe perhaps possibly or may might could")
_PERHAPS_SAID = _PERHAPS | words_in(", ish even may might could have been be")
_ALIKE = 1.5
"""Times the less that the greater of two guesses at one amount may be."""


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


@once
def _weighings(message: Message) -> frozenset[int]:
    """ "4.4 kg with the pail, pail weighs 1.2, so 3.2": the first words of gross and tare."""
    masses = [a for a in message.amounts if a.quantity == "mass"]
    if len(masses) != _NET_OF or not message.has(_VESSEL):
        return frozenset()
    gross = max(masses, key=lambda a: a.value)
    tare, net = (a for a in masses if a is not gross)
    if abs(tare.value + net.value - gross.value) > 0.02 * gross.value:
        return frozenset()
    named = message.norms[max(0, net.start - 3) : net.end + 3]
    if not _VESSEL.isdisjoint(named) and _VESSEL.isdisjoint(
        message.norms[max(0, tare.start - 3) : tare.end + 3]
    ):
        tare, net = net, tare
    with_it = not _INCLUDING.isdisjoint(message.norms[gross.end : gross.end + 3])
    return frozenset({gross.start, tare.start}) if with_it else frozenset()


_NET_OF = 3
"""Masses told where gross, tare and net are all named."""


def _without_tare(group: Group, amounts: list[Amount]) -> list[Amount]:
    """ "2.3 kg with the bucket, bucket alone 400 g" is 1.9 kg."""
    masses = [a for a in amounts if a.quantity == "mass"]
    norms = group.message.norms
    if len(masses) != 2 or (_VESSEL.isdisjoint(group.norms) and "before" not in group.norms):
        return amounts
    gross, tare = sorted(masses, key=lambda a: -a.value)
    near = set(norms[max(group.start, tare.start - 4) : min(group.end, tare.end + 3)])
    with_it = not _INCLUDING.isdisjoint(norms[gross.end : gross.end + 4])
    if norms[gross.end : gross.end + 1] == ["before"] and "after" in norms[tare.end : tare.end + 1]:
        return [gross._replace(value=gross.value - tare.value)]
    emptied = not _EMPTY.isdisjoint(norms[tare.end : tare.end + 2])
    if (near.isdisjoint(_ALONE) and not with_it) or (near.isdisjoint(_VESSEL) and not emptied):
        return amounts
    return [gross._replace(value=gross.value - tare.value)]


_VESSEL = words_in(
    "bucket tub pot bowl tin box dish pan tray crate container basin bag jar pail caddy sack "
    "bin basket jug tupperware lunchbox saucepan colander"
)
_EMPTY = words_in("empty bare tare")
_INCLUDING = words_in("with including included incl inc gross")
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
            return "liquid" if _is_bin_water(norms, i) else "water"
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
    if message.norms[max(0, amount.start - 2) : amount.start] == ["down", "to"]:
        return message.bran(max(0, amount.start - _BACK), amount.start)
    first = max(0, amount.start - _BACK + 1)
    if not message.bran(first, amount.start):
        return False
    spans = [(x.start, x.end) for x in message.items if not x.generic]  # "bran remains 600 g"
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


def _is_bin_water(norms: Sequence[str], i: int) -> bool:
    """ "400 ml of brown water", "250 ml water removed": what came out of a bin, so called."""
    if norms[i] != "water":
        return False
    return norms[i - 1] in _MURKY or not _REMOVED.isdisjoint(norms[i + 1 : i + 3])


_MURKY = words_in("brown dirty black smelly yellow murky stinky manky brownish yellowish amber")
_REMOVED = words_in("removed out off drained came taken")


def is_of_naught(group: Group) -> bool:
    """Whether all that was measured is what no scale weighs, and no food is named beside it."""
    measured, norms = group.measured(), group.message.norms
    jest = bool(measured) and all(is_intangible(norms, a.end) for a in measured)
    return jest and not any(not item.generic for item in group.message.items)


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
    items = [i for i in group.items if not i.absent and not _came_out(group, i)]
    specific = [i for i in items if not i.generic]
    weights = _weights(group, specific, amounts) if specific else None
    if weights is not None:  # "supper remains: haggis 2.8 kg, neeps 1.9 kg"
        items = specific
    else:
        weights = _weights(group, items, amounts)
    if weights is None and items:
        items = _with_parts(group, items, amounts)
    absent = [i for i in group.items if i.absent]
    if weights is not None:
        weights = [*weights, *(0.0 for _ in absent)]
    own = makeup([*items, *absent], weights) if items else None
    if own is None and group.inherited is not None:
        return makeup_of(group.inherited)
    return own


def _with_parts(group: Group, items: Sequence[Item], amounts: Sequence[Amount]) -> list[Item]:
    """ "3 kg, 1 kg of it meat": the share of a thing whose part was weighed."""
    norms = group.message.norms
    parts = [a for a in group.measured() if _is_part(norms, a.end)]
    out = list(items)
    for part in parts:
        whole = sum(a.value for a in amounts if a.quantity == part.quantity)
        at = part.end + 2
        while norms[at : at + 1] and norms[at] in _IS:
            at += 1
        if part.value < whole:
            share = part.value / whole
            out = [i._replace(share=share, vague=False) if i.start == at else i for i in out]
    return out


_IS = words_in("was were is being the just old")


def _came_out(group: Group, item: Item) -> bool:
    """Whether an item is the liquid drawn off ("and 6 oz of juice out of it")."""
    if not group.message.liquid_at(item.start):
        return False
    ends = {a.end for a in group.amounts if a.quantity == "volume" or a.liquid_l is not None}
    starts = {a.start for a in group.amounts if a.quantity == "volume" or a.liquid_l is not None}
    before = not ends.isdisjoint((item.start, item.start - 1, item.start - 2))
    return before or item.end in starts or item.end + 1 in starts


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
    ends = [max(i.end, a.end) for i, a in zip(items, own, strict=True)]
    starts = [min(i.start, a.start) for i, a in zip(items, own, strict=True)]
    apart = all(end <= start for end, start in zip(ends, starts[1:], strict=False))
    for item, amount in zip(items, own, strict=True):
        first, second = (item.end, amount.start), (amount.end, item.start)
        between = norms[slice(*(first if first[0] <= first[1] else second))]
        beside = len(between) <= _NEAR and _BETWEEN.issuperset(between)
        if not beside and not (apart and len(between) <= _ASIDE and "," not in between):
            return None
        weights.append(amount.value)
    return weights


_NEAR = 3
_ASIDE = 6
"""Words between a thing and its amount, where each pair stands apart from the next, at most."""
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
