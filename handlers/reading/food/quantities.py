"""How much of what a report tells: the amounts that are of scraps, added up, and their make-up."""

from collections.abc import Sequence
from itertools import pairwise

from handlers.reading.doubts.intangible import is_intangible
from handlers.reading.food.items import Item
from handlers.reading.food.itemweights import item_weights
from handlers.reading.food.makeups import Makeup, makeup
from handlers.reading.food.ofwhat import is_drawn, is_level, of_what
from handlers.reading.food.partgiven import PARTS, whole_before, without_wholes
from handlers.reading.food.saidof import EATERS, EATING
from handlers.reading.groups import Group
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.numbers import read_number
from handlers.reading.measures.retold import REST, result_of, without_restated, without_total
from handlers.reading.message import Message
from handlers.reading.words.once import once
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import Food, words_in


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
        and not _is_eaten(group, a)
        and _SUPPOSED.isdisjoint(norms[max(0, a.start - 4) : a.start])
        and not is_level(group.message, a)
        and not (a.size and _is_size_of_bin(group, a))
    ]
    if any(not a.size for a in out):
        out = [a for a in out if not a.size]
    if "each" in norms or "apiece" in norms:
        out = [_of_each(group, a) for a in out]
    if len(out) > 1:
        out = [a for a in out if not _is_source(norms, a.start)] or out
        out = result_of(norms, without_restated(norms, out))
        out = without_wholes(group.message, out)
    out = _without_parts(group, out)
    if len(out) < 2:
        return out
    out = [a for a in out if not is_intangible(norms, a.end)] or out
    return without_total(group, out)


_SUPPOSED = words_in("supposed why")
"""Before an amount that was only meant to be, or is only wondered at."""


def _is_eaten(group: Group, amount: Amount) -> bool:
    """ "The goat ate 2 kilos": what somebody ate, and no bin."""
    norms, ate = group.message.norms, amount.start - 1
    return ate > 0 and norms[ate] in EATING and norms[ate - 1] in EATERS


def _is_source(norms: Sequence[str], start: int) -> bool:
    """ "The bones from 2 kg of wings", "tops of five stone of turnips": what they came off."""
    while start > 0 and norms[start - 1] in _BEFORE_SOURCE:
        start -= 1
    led = norms[max(0, start - 2) : start]
    if led[-1:] == ["from"]:
        return True
    return led[:1] != [] and led[0] in PARTS - _WHAT_IS_LEFT and led[1:] in (["of"], ["off"])


_BEFORE_SOURCE = words_in("about around roughly some nearly over almost a the our that")
_WHAT_IS_LEFT = words_in("leftovers leftover remains scraps rest")


def _is_size_of_bin(group: Group, amount: Amount) -> bool:
    """ "Into a 20 L bucket", but not "brought in a 20 L bucket of peel"."""
    norms, start = group.message.norms, amount.start
    particle = group.verb is not None and norms[start - 1 : start] == ["in"]
    if particle and group.verb is not None and group.verb.end >= start - 1:
        return False
    return not {"in", "into"}.isdisjoint(norms[max(0, start - 2) : start])


def _without_parts(group: Group, amounts: list[Amount]) -> list[Amount]:
    """The amounts without those that are parts of another told before in the sentence."""
    message = group.message
    parts = [a for a in amounts if part_at(message, a)]
    if not parts:
        return amounts
    inside = [a for a in parts if message.has_in(_INTO, a.end + 2, a.end + 3)]
    inside = [a for a in inside if not _lies_in_it(message, a.end + 1)]
    if len(inside) == 1 and len(parts) == 1:
        return inside  # "dropped 10 kilos, and 6 of it went into the shed"
    first = message.sentences[group.clauses[0].sentence].start if group.clauses else 0
    if any(_is_of_that(message.norms, a.end) for a in parts):
        first = 0  # "1.4 kg in the shed. Tops, and 200 g of that is chicken"
    known = [a for a in message.amounts if first <= a.start < group.end and a.factor]
    wholes = {a.quantity for a in known if not part_at(message, a)}
    return [a for a in amounts if a.quantity not in wholes or not part_at(message, a)]


def part_at(message: Message, amount: Amount) -> int:
    """Where the thing stands of which the amount is a part ("1.2 kg, 800 g of it bread", "of which
    800 g bread", "including 800 g of bread"); 0 if it is no part of what was told.
    """
    norms, start, end = message.norms, amount.start, amount.end
    of = norms[end : end + 1] == ["of"]
    if norms[start] == "another":
        return 0  # "and another pound of them"
    if of and norms[end + 1 : end + 2] and norms[end + 1] in _WHOLE:
        added = norms[start - 1 : start] in (["+"], ["plus"])
        other = added and any(i.start == end + 2 for i in message.items)
        return 0 if other else end + 2  # "500 g of rice + 250 g of that stew" are two things
    lead = norms[max(0, start - 2) : start]
    if lead[:1] == ["of"] and lead[-1] in _WHOLE:
        return end + of
    included = (lead[-1:] and lead[-1] in _INCLUDING) or (
        "with" in lead and _lies_in_it(message, end)
    )
    return end + of if included and any(i.start == end + of for i in message.items) else 0


def _is_of_that(norms: Sequence[str], end: int) -> bool:
    """Whether "of that is" follows an amount, which is part of what was told before."""
    of_that = norms[end : end + 1] == ["of"] and norms[end + 1] in _WHOLE
    return of_that and norms[end + 2 : end + 3] != [] and norms[end + 2] in _IS


def _lies_in_it(message: Message, end: int) -> bool:
    """ "2 kg of peel with maybe 200 g of bacon in it": whether "in it" follows the thing."""
    ends = [i.end for i in message.items if end <= i.start <= end + 1]
    return bool(ends) and tuple(message.norms[ends[0] : ends[0] + 2]) in _IN_IT


_IN_IT = {(a, b) for a in ("in", "among", "through") for b in ("it", "there", "them")}
_INTO = words_in("into in went to")
_INCLUDING = words_in("including incl inc includes included")
_WHOLE = words_in("it that which them those this")


def _of_each(group: Group, amount: Amount) -> Amount:
    """ "500 g each of leeks and rice", "3 loaves, 800 g each": as often as there are things."""
    norms = group.message.norms
    if amount.counted:
        return amount
    if norms[amount.end : amount.end + 1] in (["each"], ["apiece"]):
        if norms[amount.end + 1 : amount.end + 2] == ["of"]:
            times = _listed_from(group, amount.end + 2)
        else:
            times = _vessels_before(group, amount) or _counted_before(group, amount.start)
            if times == 1:
                times = _things_before(group, amount)
    else:
        times = _counted_by_each(group, amount.start)
    return amount._replace(value=amount.value * times) if times > 1 else amount


def _vessels_before(group: Group, amount: Amount) -> int:
    """The count in "2 buckets of grass and peel, 5 kg each"; 0 if no vessels were counted."""
    message = group.message
    vessels = [a for a in message.amounts if a.vessel and 0 < amount.start - a.end <= _LONGEST_LIST]
    number = read_number(message.words, vessels[-1].start) if vessels else None
    whole = number is not None and number.value in range(2, _MOST_THINGS + 1)
    return int(number.value) if number is not None and whole else 0


def _things_before(group: Group, amount: Amount) -> int:
    """How many things are listed right before an amount of each ("ham and rice, a pound each")."""
    norms = group.message.norms
    things = [i for i in group.items if i.end <= amount.start and not i.absent]
    count, start = 0, amount.start
    for item in reversed(things):
        between = norms[item.end : start]
        near = len(between) <= _NEAR and (count or (_JOINTS - {","}).isdisjoint(between))
        if not near or (count and _JOINTS.isdisjoint(between)) or "." in between:
            break
        count, start = count + 1, item.start
    return max(1, count)


_NEAR = 4
"""Words between two things of a list, at most."""


def _counted_by_each(group: Group, end: int) -> int:
    """The count in "20 pupils each brought 100 g", "each of the 3 classes brought 2 kg"."""
    norms = group.message.norms
    for i in range(end - 1, max(group.start, end - 7) - 1, -1):
        if norms[i] == "each":
            of = norms[i + 1 : i + 3] == ["of", "the"]
            return _counted_before(group, min(end, i + 5) if of else i)
    return 1


def _listed_from(group: Group, start: int) -> int:
    """How many things stand in the list that begins at a word ("ham, swiss and rye in")."""
    norms = group.message.norms
    stretch = norms[start : min(group.end, start + _LONGEST_LIST)]
    end = next((i for i, norm in enumerate(stretch) if norm in _BEHIND_LIST), len(stretch))
    parts = [norm in _JOINTS for norm in stretch[:end]]
    joints = sum(joint and not before for before, joint in pairwise(parts))
    return 1 + joints - (parts[-1:] == [True])


_LONGEST_LIST = 16
_JOINTS = words_in(", and n & plus")
_BEHIND_LIST = words_in("in into to for from went going all . ( : - ;") | {"\n"}


def _counted_before(group: Group, end: int) -> int:
    """The count of things just before an amount of each ("3 loaves, 800 g each")."""
    words, named = group.message.words, indexes(group.message.bins)
    for i in range(end - 1, max(group.start, end - 5) - 1, -1):
        free = words[i].kind in ("number", "word") and i not in named
        number = read_number(words, i) if free else None
        if number is not None and not number.word and number.end < end:
            whole = number.value == int(number.value) and 1 < number.value <= _MOST_THINGS
            return int(number.value) if whole else 1
    return 1


_MOST_THINGS = 50


def _is_rate(norms: Sequence[str], i: int) -> bool:
    """ "200 pounds a month", "2 kg per head": what an amount is each time, not what went in."""
    if i + 1 >= len(norms) or norms[i] not in ("a", "per", "each", "every"):
        return False
    return norms[i + 1] in _EACH or norms[i] == "per"


_EACH = words_in("day week month year head person time night hour go session household")


def is_of_naught(group: Group) -> bool:
    """Whether all that was measured is what no scale weighs, and no food is named beside it."""
    if any(not item.generic for item in group.message.items):
        return False
    measured, norms = group.measured(), group.message.norms
    return bool(measured) and all(is_intangible(norms, a.end) for a in measured)


def amount_sum(amounts: Sequence[Amount]) -> tuple[float | None, float | None]:
    """Mass in kg or volume in litres, added up: mass if any was said, vessels last."""
    if not amounts:
        return None, None
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
    items = [i for i in items if i.start not in whole_before(group.message)] or items
    items = [*_of_the_rest(group, items), *items]
    specific = [i for i in items if not i.generic]
    several = len(amounts) > 1
    weights = item_weights(group, specific, amounts) if specific and several else None
    if weights is not None:  # "supper remains: haggis 2.8 kg, neeps 1.9 kg"
        items = specific
    elif several:
        weights = item_weights(group, items, amounts)
    if weights is None and items and group.measured() != amounts[:1]:
        items = _with_parts(group, items, amounts)
    if weights and (rest := _of_no_kind(group, items, amounts)):
        items, weights = [*items, _MIXED], [*weights, rest]
    absent = [i for i in group.items if i.absent]
    if weights is not None:
        weights = [*weights, *(0.0 for _ in absent)]
    own = makeup([*items, *absent], weights) if items else None
    if own is None and group.inherited is not None:
        return makeup_of(group.inherited)
    return own


def _of_the_rest(group: Group, items: Sequence[Item]) -> list[Item]:
    """ "The rice was too much, I put the rest in with a bit of fish": what the rest is of, where
    its own words name but a little of something else."""
    little = bool(items) and all(i.vague and i.share is not None and i.share < 0.5 for i in items)
    if not little or _THE_REST.isdisjoint(group.norms[: items[0].start - group.start]):
        return []
    return [i for i in group.message.items if i.end <= group.start and not i.absent][-1:]


_THE_REST = words_in("rest remainder remaining it them")


def _of_no_kind(group: Group, items: Sequence[Item], amounts: Sequence[Amount]) -> float:
    """ "4 kg laneway, a kilo of prawn heads": the amount before them, of which a bin is named."""
    first, second, *_ = sorted(amounts)
    if min(i.start for i in items) < second.start or first.quantity != second.quantity:
        return 0.0
    message = group.message
    at = first.end
    while message.norms[at : at + 1] and message.norms[at] in _TO_BIN:
        at += 1
    named = any(ref.start == at for ref in (*message.bins, *message.named))
    return first.value if named else 0.0


_MIXED = Item(0, 0, Food((("mixed", 1.0),), 0.0), generic=True)
_TO_BIN = words_in("in into to the our")


def _with_parts(group: Group, items: Sequence[Item], amounts: Sequence[Amount]) -> list[Item]:
    """ "3 kg, 1 kg of it meat": the share of a thing whose part was weighed."""
    norms = group.message.norms
    out = list(items)
    kept = {a.start for a in amounts}
    for part in group.measured():
        at = part_at(group.message, part)
        if not at and part.start not in kept and not of_what(group.message, part):
            gaps = (0, 1) if group.message.has(REST) else ()  # "250 g cheese, rest veg"
            at = next(
                (
                    i.start
                    for i in items
                    if part.start - i.end in (0, 1) or i.start - part.end in gaps
                ),
                0,
            )
        whole = sum(a.value for a in amounts if a.quantity == part.quantity)
        while at and norms[at : at + 1] and norms[at] in _IS:
            at += 1
        if at and part.value < whole:
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
