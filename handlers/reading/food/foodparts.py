"""What a food grows into by the words behind it: its parts (peel, bones, fat) and its dishes."""

from collections.abc import Mapping, Sequence
from functools import lru_cache

from handlers.practice.kinds import Kind
from handlers.reading.food.items import ANIMALS, PLANTS, Item, is_generic, is_what_is_left
from handlers.reading.words.marks import Mark
from handlers.reading.words.vocabulary import Food, Head, words_in

_PARTS = words_in(
    "peel peels peeling peelings skin skins core cores rind rinds husk husks stalk stalks "
    "stem stems top tops tail tails end ends trimming trimmings offcut offcuts pulp seed "
    "seeds pit pits stone stones pip pips pod pods gut guts head heads gristle bit bits piece "
    "pieces leaf leaves cob cobs crust crusts heel heels flesh mush innards parings shavings "
    "hulls roots root scrapings outers slices slice skinz dregs crumbs peal peals pealings "
    "pelings peelins chunks cuttings remains carcass cascaras cascara schalen shells scraps "
    "leftovers leftover ends heel stubs wrappers bottoms remnants tips membranes zest fronds "
    "stumps paring ribs squeezed halves chhilka chilke butts quarters discards offal scrap waste "
    "mould stuff leavings"
)
_BONES = words_in("bone bones shell shells carcass carcase carcasses ribs rib frames frame knuckle")
_FAT = words_in("fat grease dripping drippings lard suet")
_GREEN = words_in(
    "top tops pod pods stalk stalks stem stems end ends leaf leaves trimmings tips shells"
)
_PLANT = words_in(
    "plant plants vine vines haulm haulms foliage pruning prunings clipping clippings"
)
_TREE = words_in("tree trees bush bushes cane canes")
_CUT = words_in("pruning prunings clipping clippings trimmings cuttings branches twigs leaves")
_LEAF = words_in("leaf leaves")
_GROWING = _BONES | _FAT | _PARTS | _PLANT
_PEEL = words_in("peel peels peeling peelings rind rinds husk husks core cores pods")
_STRONG_PARTS = _PARTS - words_in(
    "top tops end ends head heads stone stones slice slices pieces piece chunks bit bits root "
    "roots quarters leaf leaves halves"
)
# A part that stands alone tells the kind by itself.
_ALONE_BY_KIND: Mapping[Kind, str] = {
    "vegetable": "peel peels peelings peeling parings pealings pelings peelins husks cascaras "
    "cascara schalen peals stalks trimmings cobs",
    "fruit": "cores pits pips seeds",
    "grain": "crusts heels crumbs",
    "meat": "gristle innards rinds",
    "garden": "cuttings leaves",
    "mixed": "skins offcuts guts scrapings remains leavings",
    "coffee": "tea",
}
ALONE: Mapping[str, Kind] = {w: kind for kind, ws in _ALONE_BY_KIND.items() for w in ws.split()}
_SCRAP_NAMES = words_in("scrap scraps food kitchen leftover leftovers waste slops")


def part_alone(norms: Sequence[str], i: int, foods: Mapping[int, Mark]) -> Item:
    """ "Peels" by themselves, or "skins of mango"."""
    at = i + 1
    while at < min(len(norms), i + 4) and norms[at] in ("of", "from", "de", "the", "off"):
        at += 1
    if at > i + 1 and at in foods and not _is_only_cooked_in(norms[i:at], foods[at].value):
        mark = foods[at]
        return Item(i, mark.end, _part_of(mark.value, norms[i]), scrap=True)
    kind = ALONE[norms[i]]
    food = Food(((kind, 1.0),), 1.0 if kind == "meat" else 0.0, norms[i])
    return Item(i, i + 1, food, scrap=True, generic=kind == "mixed")


def _is_only_cooked_in(led: Sequence[str], food: Food) -> bool:
    """ "Peelings from the soup": a dish that they are left of, and no peel of it."""
    kind = ALONE[led[0]]
    dish = food.shares[0][0] in ("liquid", "cooked")
    return kind == "vegetable" and dish and not {"from", "off"}.isdisjoint(led)


def grown_food(
    norms: Sequence[str], mark: Mark, foods: Mapping[int, Mark], heads: Mapping[int, Mark]
) -> Item:
    """The food with the parts, dish names and scrap words that follow it."""
    food = _as_called(norms, mark)
    scrap = _is_scrap(food)
    generic = is_generic(food)
    end = mark.end
    while end < len(norms):
        head = heads.get(end)
        after = foods.get(end)
        if norms[end] in _TREE and norms[end + 1 : end + 2] and norms[end + 1] in _CUT:
            food, scrap, end = Food((("garden", 1.0),), 0.0, food.name), True, end + 2
        elif norms[end] in _GROWING:
            food = _part_of(food, norms[end])
            scrap = scrap or norms[end] in _STRONG_PARTS
            end += 1
        elif head is not None and _takes_head(food, norms[end - 1]) and not generic:
            food = food if _is_joint(food, norms[end]) else _dish(food, head.value)
            end = head.end
        elif after is not None and is_what_is_left(after.value) and not generic:
            scrap, end = True, after.end
        elif norms[end] == "oil" and after is not None and not generic:
            food, end = after.value, after.end  # "samosa oil": what it was fried in
        elif after is not None and _is_of_dish(norms, after) and not generic:
            food, end = _as_called(norms, after), after.end
        elif after is not None and generic and not is_generic(after.value):
            return Item(mark.start, end, food, scrap, generic=generic)
        else:
            break
    return Item(mark.start, end, food, scrap, generic=generic)


_MEATLESS = words_in("veggie vegie vegan vegetarian meatless")


def _as_called(norms: Sequence[str], mark: Mark) -> Food:
    """ "Veggie haggis", "vegan sausages": beans and the like for what else is meat or fish."""
    food: Food = mark.value
    meat = _meat_of(food)
    if not (meat and mark.start and norms[mark.start - 1] in _MEATLESS):
        return food
    rest = tuple(part for part in food.shares if part[0] not in {*ANIMALS, "pulse"})
    pulse = 1 - sum(share for _, share in rest)
    return Food((("pulse", pulse), *rest), max(0.0, food.rich - meat), food.name)


def _meat_of(food: Food) -> float:
    return sum(share for kind, share in food.shares if kind in ANIMALS)


def _is_joint(food: Food, norm: str) -> bool:
    """Whether a roast is the piece of meat itself ("pork roast"), not a meal with meat in it."""
    return norm in ("roast", "roasts") and food.shares == (("meat", 1.0),)


def _is_of_dish(norms: Sequence[str], after: Mark) -> bool:
    """Whether a food is called by the dish it comes from, "taco meat", "pho broth bones", or by
    what it has no meat for: "veggie haggis".
    """
    meatless = norms[after.start - 1] in _MEATLESS and _meat_of(after.value) > 0
    return meatless or norms[after.start] in OF_DISHES or after.value.shares[0][0] == "bone"


OF_DISHES = words_in("meat grease fat cheese dripping lard")


@lru_cache(maxsize=1024)
def _is_scrap(food: Food) -> bool:
    kind = food.shares[0][0]
    if food.name.rpartition(" ")[2] in _STRONG_PARTS and " " in food.name:
        return True
    return (
        kind in ("coffee", "bone")
        or food.name in _SCRAP_NAMES
        or "scrap" in food.name
        or (
            "leftover" in food.name
            or "waste" in food.name
            or food.name.endswith((" peel", " skin"))
        )
    )


def _takes_head(food: Food, last: str) -> bool:
    """Whether a dish may be named for it; "potato peel, pasta" without its comma is no dish."""
    kind = food.shares[0][0]
    return (
        len(food.shares) == 1
        and kind not in ("mixed", "cooked", "bone", "coffee")
        and last not in _PEEL
    )


def _part_of(food: Food, part: str) -> Food:
    kind = food.shares[0][0]
    if part in ("crust", "crusts") and (kind not in _OF_ANIMAL or len(food.shares) > 1):
        return Food((("grain", 1.0),), 0.0, food.name)
    animal = kind in ("meat", "fish", "bone") or (
        kind in ("cooked", "liquid") and part in ("bone", "bones")
    )
    if animal and part in _BONES:
        return Food((("bone", 1.0),), 1.0, part)
    if kind in ("vegetable", "fruit", "grain", "pulse") and (
        part in _PLANT or (kind == "fruit" and part in _LEAF)
    ):
        return Food((("garden", 1.0),), 0.0, food.name)
    if kind == "pulse" and part in _GREEN:
        return Food((("vegetable", 1.0),), 0.0, food.name)
    if kind in ("meat", "fish", "cooked") and part in _FAT:
        return Food((("oil", 1.0),), 1.0, part)
    return food


_OF_ANIMAL: frozenset[Kind] = frozenset({"meat", "fish", "oil"})


def _dish(food: Food, head: Head) -> Food:
    kind, named_rich = food.shares[0][0], food.rich
    share = head.share
    if named_rich == 0 and head.rest == "cooked":
        share = max(share, 0.5)
    rest: tuple[tuple[Kind, float], ...] = (
        ((kind, 1.0),) if head.rest == kind else ((kind, share), (head.rest, 1 - share))
    )
    plain = head.rich * (1 - share) if head.rest != kind else 0.0
    return Food(rest, named_rich * share if named_rich else plain, food.name)


def part_of_earlier(item: Item, part: str, before: Sequence[Item]) -> Item:
    """ "Peeled a mountain of clementines, 5 lb of peel": the peel of what was named before."""
    if item.end - item.start > 1 or part not in _OF_PLANTS | _OF_ANIMALS | {CHAFF}:
        return item
    named = [x for x in before if not x.generic and not x.absent]
    kind = named[-1].food.shares[0][0] if named else "mixed"
    if part in _OF_ANIMALS and (kind in ANIMALS or kind == "bone"):
        kind = "meat" if kind == "bone" else kind
        return item._replace(food=Food(((kind, 1.0),), 1.0, named[-1].food.name), generic=False)
    if part == CHAFF and kind in ("pulse", "grain"):
        return item._replace(food=named[-1].food)
    named = [x for x in named if x.food.shares[0][0] in PLANTS]
    if not named or part not in _OF_PLANTS:
        return item
    return item._replace(food=named[-1].food._replace(rich=0.0), generic=False)


def ends_of_earlier(norms: Sequence[str], i: int, before: Sequence[Item]) -> Item | None:
    """ "We ate nine gherkins, the stubs and the bread went in": what is left of what was named."""
    behind = norms[i + 1 : i + 2]
    if norms[i - 1 : i] != ["the"] or (behind and behind[0] not in _BEHIND_ENDS):
        return None
    named = [x for x in before if not x.generic]
    return Item(i, i + 1, named[-1].food, scrap=True) if named else None


ENDS = words_in("ends stubs stumps butts")
_BEHIND_ENDS = words_in("and n & , went are in into go")
CHAFF = "chaff"
"""What is left of roasted coffee, or of what was named before it."""
_OF_ANIMALS = words_in("trimmings skins guts innards offcuts gristle scrapings remains rinds")
_OF_PLANTS = words_in(
    "peel peels peelings peeling parings pealings pelings peelins husks peals stalks cores pits "
    "pips seeds rinds skins guts innards trimmings stones hulls"
)


def by_what_follows(norms: Sequence[str], items: list[Item]) -> list[Item]:
    """ "Trimmings and bones", "coconut husks and shells": what a part is of, told by the other."""
    out = list(items)
    for k in range(1, len(out)):
        first, second = out[k - 1], out[k]
        if norms[first.end : second.start] not in (["and"], ["n"], ["&"]):
            continue
        bones = second.food.shares == (("bone", 1.0),)
        if bones and norms[first.start : first.end] == ["trimmings"]:
            out[k - 1] = first._replace(food=Food((("meat", 1.0),), 1.0, "trimmings"))
        elif bones and norms[second.start] in _SHELLS and norms[first.start] in _NUTS:
            out[k] = second._replace(food=first.food)
    return out


_SHELLS = words_in("shell shells")
_NUTS = words_in(
    "coconut coconuts peanut peanuts walnut walnuts pistachio pistachios almond almonds hazelnut "
    "hazelnuts pecan pecans cashew cashews groundnut groundnuts nut nuts"
)


def named_again(norms: Sequence[str], item: Item, before: Sequence[Item]) -> int | None:
    """ "Fish skins and stalks, mostly the skins": the place of what a part speaks of again."""
    if norms[item.start - 1 : item.start] != ["the"]:
        return None
    part = norms[item.end - 1]
    return next((k for k, x in enumerate(before) if part in norms[x.start + 1 : x.end]), None)
