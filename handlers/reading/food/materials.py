"""What the scraps are: all things named in a stretch that may be scraps, in order."""

from collections.abc import Collection, Mapping, Sequence

from handlers.reading.food.foodparts import (
    ALONE,
    CHAFF,
    ENDS,
    by_what_follows,
    ends_of_earlier,
    grown_food,
    named_again,
    part_alone,
    part_of_earlier,
)
from handlers.reading.food.items import Item
from handlers.reading.food.notfood import as_pod, is_vessel, names_no_food
from handlers.reading.food.saidof import (
    JOINING,
    as_described,
    in_parts,
    with_denied_lists,
    with_joint_shares,
)
from handlers.reading.food.whence import (
    is_where_from,
    with_bones_whole,
    without_dishes,
    without_loaves,
    without_occasions,
    without_vessel,
)
from handlers.reading.measures.proportions import PERCENT
from handlers.reading.words.marks import Mark


def find_items(
    words: Sequence[str], marks: Sequence[Mark], measures: Collection[int] = ()
) -> tuple[Item, ...]:
    """All things named in the words that may be scraps, in order.

    `measures` are indexes of the words of amounts: "half a kilo" is no half of a mixture.
    """
    named = [m for m in marks if m.tag == "food"]
    if not named and ALONE.keys().isdisjoint(words):
        return ()
    foods = {m.start: m for m in _unmeasured(words, named, frozenset(measures))}
    norms = _without_measures(words, measures)
    heads = {m.start: m for m in marks if m.tag == "head"}
    out: list[Item] = []
    behind = 0
    for i in [i for i in range(len(norms)) if i in foods or _stands_alone(norms, i, foods)]:
        if i < behind:
            continue
        mark = foods.get(i)
        if mark is None and norms[i] in ENDS:
            out += [end] if (end := ends_of_earlier(norms, i, out)) else []
            continue
        if mark is not None and (names_no_food(norms, mark) or is_vessel(words, mark)):
            behind = mark.end
            continue
        if mark is not None:
            item = grown_food(norms, mark, foods, heads)
            item = part_of_earlier(item, CHAFF, out) if norms[i] == CHAFF else item
        else:
            item = part_alone(norms, i, foods)
            item = part_of_earlier(item, norms[i], out)
        item = as_described(norms, item, foods)
        again = named_again(norms, item, out) if mark is None else None
        if again is not None and item.share is not None:
            out[again] = out[again]._replace(share=item.share, vague=item.vague)
            item = item._replace(absent=True)
        if out and is_where_from(norms, out[-1], item):
            item = item._replace(absent=True)
        out.append(item)
        behind = item.end
    if len(out) < 2:
        return tuple(out)
    out = by_what_follows(norms, in_parts(norms, without_loaves(norms, out)))
    out = [as_pod(norms, item, out) for item in out]
    out = without_dishes(norms, [without_vessel(norms, item) for item in out])
    out = without_occasions(norms, out)
    out = with_joint_shares(norms, with_denied_lists(norms, out))
    return tuple(with_bones_whole(norms, out))


LEAVES = "leaves"
_TEA = "tea"
_LONGEST = 4
"""Words in the name of a food, at most."""


def is_loose(item: Item) -> bool:
    """Whether it is only garden work where no bin is named ("raked 3 bags of leaves")."""
    return item.food.name == LEAVES


def _stands_alone(norms: Sequence[str], i: int, foods: Mapping[int, Mark]) -> bool:
    """Whether a part stands there that tells its kind by itself; "leaves", a verb too, only behind
    an amount ("a gallon of leaves"), "tea", a drink, only beside a food ("egg shells and tea").
    """
    if norms[i] not in ALONE:
        return norms[i] in ENDS
    if norms[i] == _TEA:
        before = [foods[k] for k in range(max(0, i - 1 - _LONGEST), i - 1) if k in foods]
        behind = i > 1 and norms[i - 1] in JOINING and any(m.end == i - 1 for m in before)
        return behind or (i + 2 in foods and norms[i + 1] in JOINING)
    return norms[i] != LEAVES or norms[max(0, i - 2) : i] == ["#", "of"]


def _unmeasured(words: Sequence[str], marks: list[Mark], measures: frozenset[int]) -> list[Mark]:
    """The marks without what measures them: of "a tin of sardines" the sardines."""
    if measures.isdisjoint([mark.start for mark in marks]):
        return marks
    out = []
    for mark in marks:
        start = mark.start
        while start < mark.end - 1 and start in measures:
            start += 1
        start += start > mark.start and start < mark.end - 1 and words[start] == "of"
        out.append(mark if start == mark.start else mark._replace(start=start))
    return out


def _without_measures(words: Sequence[str], measures: Collection[int]) -> list[str]:
    """The words with "#" for those of amounts; a percentage is a share and no amount."""
    norms = list(words)
    for i in measures:
        if PERCENT.isdisjoint(words[i : i + 2]):
            norms[i] = "#"
    return norms
