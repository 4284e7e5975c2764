"""Where the scraps are from: a meal, a dish whose parts are named, what they were kept in."""

from collections.abc import Sequence
from itertools import pairwise

from handlers.reading.food.items import ANIMALS, Item, is_dish, is_rice
from handlers.reading.food.saidof import JOINING
from handlers.reading.measures.numberwords import NUMBER_WORDS
from handlers.reading.words.vocabulary import Food, words_in


def is_where_from(norms: Sequence[str], last: Item, item: Item) -> bool:
    """Whether a thing says no more than where what was named last comes from."""
    between = norms[last.end : item.start]
    bones = last.food.shares == (("bone", 1.0),)
    if _are_bones_of(norms, last, item):
        return True
    whence = _is_whence(item, between, norms[item.end : item.end + 1], bones=bones)
    return whence or _is_from_elsewhere(last, between) or _is_meal(norms, last, item, between)


def _are_bones_of(norms: Sequence[str], last: Item, item: Item) -> bool:
    """ "Bones of duck", "the shells of nine eggs": one thing, and what had it."""
    between = norms[last.end : item.start]
    bones = last.food.shares == (("bone", 1.0),) and item.food.shares[0][0] in ANIMALS | {"egg"}
    return bones and between[:1] == ["of"] and _is_count(between[1:])


def with_bones_whole(norms: Sequence[str], items: list[Item]) -> list[Item]:
    """ "The shells of nine eggs, 60 g": an amount behind it is of the shells."""
    out = list(items)
    for k, (bones, whose) in enumerate(pairwise(items)):
        if "#" in norms[whose.end : whose.end + 2] and _are_bones_of(norms, bones, whose):
            out[k] = bones._replace(end=whose.end)
    return out


def _is_count(words: Sequence[str]) -> bool:
    return all(word in _COUNTED or word.isdecimal() for word in words)


_COUNTED = NUMBER_WORDS | words_in("an my the our those these some all about # several few odd")
"""Between bones or shells and what had them: however many those were."""


def _is_meal(norms: Sequence[str], last: Item, item: Item, between: Sequence[str]) -> bool:
    """ "Prawn heads, a full kilo from Sunday lunch": the meal that what was named is from."""
    meal = not _MEALS.isdisjoint(norms[item.start : item.end]) and is_dish(item.food)
    led = [norm for norm in between if norm not in _OURS][-1:]
    return meal and led in _FROM and not last.generic and len(between) <= _FAR


_OURS = words_in("our my the your their")
_FROM = (["from"], ["off"], ["fae"], ["frae"])


_MEALS = words_in("lunch dinner supper breakfast tea brunch roast barbecue bbq braai")


def _is_origin(between: Sequence[str]) -> bool:
    """ "Bones from the stock", "off Sunday's chicken": where what stands before comes from."""
    named = 2 <= len(between) <= 4 and between[0] in ("from", "off") and between[1] != "my"
    return named and (between[-1][0].isalpha() or between[-1] == "'s")


def _is_whence(item: Item, between: Sequence[str], behind: Sequence[str], *, bones: bool) -> bool:
    """Whether a thing only says where what stands before it is from: a meal, or "of the" dish."""
    if _is_origin(between):
        return True
    if item.generic or tuple(between) not in _WHENCE:
        return False
    if bones and item.food.shares[0][0] in ANIMALS:
        return True  # "the bones of the duck"
    made = item.food.shares[0][0] == "cooked" or len(item.food.shares) > 1
    return made or not _FEASTS.isdisjoint(behind)


_FEASTS = words_in("day night party supper evening feast weekend festival")
_WHENCE = frozenset(
    {("from",), ("off",), ("of", "the"), ("of", "that"), ("from", "our"), ("from", "my"),
     ("off", "the"), ("from", "the")}
)  # fmt: skip


def _is_from_elsewhere(last: Item, between: Sequence[str]) -> bool:
    """ "Mango skins in the hall from the smoothie stand": where what was named came from."""
    return not last.generic and len(between) < _FAR and list(between[-2:]) == ["from", "the"]


_FAR = 8


def without_dishes(norms: Sequence[str], items: list[Item]) -> list[Item]:
    """ "Crab boil: heads and shells", "jollof, the rice only": a dish whose parts are named.

    What is left of it then is those parts, and no more of the dish.
    """
    for k, item in enumerate(items[:-1]):
        if k and not items[k - 1].absent and not items[k - 1].generic:
            break  # a list, of which the dish is one
        rest = [x for x in items[k + 1 :] if not x.absent and not x.generic]
        if item.absent or item.generic or item.share is not None or not rest:
            continue
        led = "from" in norms[max(0, item.start - 2) : item.start]
        if led and is_dish(item.food) and not _OCCASIONS.isdisjoint(norms[item.start : item.end]):
            return [*items[:k], item._replace(absent=True), *items[k + 1 :]]  # "from lunch stayed"
        between = norms[item.end : rest[0].start]
        far = _FAR if _ASHES.isdisjoint(between) else 2 * _FAR
        if not is_dish(item.food) or len(between) > far:
            continue
        if _is_heading(between):
            return [*items[:k], item._replace(absent=True), *items[k + 1 :]]
        joined = not JOINING.isdisjoint(between)
        if between == ["'s"]:  # "Sunday dinner's rolls"
            return [*items[:k], item._replace(absent=True), *items[k + 1 :]]
        left = norms[item.end - 1] in _ASHES
        same = left and rest[0].food.shares[0][0] == item.food.shares[0][0]  # "fish fry: catfish"
        told = not between or not _ASHES.isdisjoint(between)  # "curry fish head bones"
        told = told or any(k in ANIMALS for k, _ in item.food.shares)
        rice = _is_named_by_rice(item.food) and any(is_rice(x) for x in rest)
        parts = told and _are_parts_of_animals(norms, rest) and (not joined or ":" in between)
        if (rice and (not joined or "#" in between)) or parts or (same and not joined):
            return [*items[:k], item._replace(absent=True), *items[k + 1 :]]
    return items


def _is_heading(between: Sequence[str]) -> bool:
    """ "Roast leftovers yesterday: 2 kg of carrots": what was left of it stands with its amount."""
    if ":" not in between:
        return False
    at = between.index(":")
    measured = between[at + 1 : at + 2] == ["#"] and {*between[at + 1 :]} <= {"#", "of"}
    return measured and "#" not in between[:at]


def without_occasions(norms: Sequence[str], items: list[Item]) -> list[Item]:
    """ "We had the fish fry, and 2 kg of coleslaw went in": a feast that was held and that no
    amount is of, before what else was weighed."""
    out = list(items)
    for k, item in enumerate(items[:-1]):
        if item.absent or item.share is not None or not _is_held(norms, item):
            continue
        ahead = next((x for x in items[k + 1 :] if not x.absent), None)
        between = norms[item.end : ahead.start] if ahead else []
        if "#" in between and not JOINING.isdisjoint(between[: between.index("#")]):
            out[k] = item._replace(absent=True)
    return out


def _is_held(norms: Sequence[str], item: Item) -> bool:
    """ "Had the fish fry", "hosted our big Sunday roast"."""
    if norms[item.end - 1] not in _OCCASIONS:
        return False
    before = [norm for norm in norms[max(0, item.start - 4) : item.start] if norm not in _BIG]
    return before[-1:] != [] and before[-1] in _HELD


_OCCASIONS = _MEALS | words_in("fry boil bake cookout potluck feast party social picnic clambake")
_HELD = words_in("had have held hosted threw holding hosting having")
_BIG = words_in("a an the our my big annual parish church club street family monthly weekly")
_ASHES = words_in("aftermath leavings remains leftovers debris carnage fallout : lol")
"""Behind a feast, before what was left of it."""


def _is_named_by_rice(food: Food) -> bool:
    return food.name in _RICE_DISHES or "rice" in food.name or "biryani" in food.name


_RICE_DISHES = words_in(
    "biryani biriyani briyani jollof paella jambalaya pilau pulao plov kedgeree risotto donburi"
)


def _are_parts_of_animals(norms: Sequence[str], items: Sequence[Item]) -> bool:
    """Whether they are bones, shells, heads or guts, named as such, maybe with their animal."""
    parts = False
    for item in items:
        kind = item.food.shares[0][0]
        if item.share is not None or (kind not in ("bone", "oil") and kind not in ANIMALS):
            return False
        part = not _ANIMAL_PARTS.isdisjoint(norms[item.start : item.end])
        parts = parts or part or kind == "bone"
    return parts


_ANIMAL_PARTS = words_in("heads skins guts tails shells bones trimmings fins innards scales head")


def without_vessel(norms: Sequence[str], item: Item) -> Item:
    """ "Onions in a bread bag", "the fish kettle": what something else was kept in."""
    before, behind = norms[item.start - 1 : item.start], norms[item.end : item.end + 1]
    named = bool(behind) and behind[0] in _VESSELS and bool(before) and before[0] in _ARTICLES
    return item._replace(absent=True) if named else item


def without_loaves(norms: Sequence[str], items: list[Item]) -> list[Item]:
    """ "Peel and a half loaf of sliced pan": the loaf and its bread are one thing."""
    if _LOAVES.isdisjoint(norms):
        return items
    starts = {item.start for item in items}
    return [
        item
        for item in items
        if not (
            norms[item.end - 1] in _LOAVES
            and norms[item.end : item.end + 1] == ["of"]
            and item.end + 1 in starts
        )
    ]


_LOAVES = words_in("loaf loaves")
_VESSELS = words_in("bag sack box carton kettle jug punnet basket wrapper")
_ARTICLES = words_in("a an the old empty my our")
