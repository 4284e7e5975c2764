"""What the scraps are: kinds and their shares, from the words for food in a stretch."""

from collections.abc import Collection, Mapping, Sequence
from functools import lru_cache
from typing import NamedTuple

from handlers.practice.kinds import Kind
from handlers.reading.marks import Mark
from handlers.reading.proportions import MOST, PERCENT, Said, is_not_much, share_of
from handlers.reading.vocabulary import Food, Head, words_in


class Item(NamedTuple):
    """One thing that words[start:end] name, with its make-up."""

    start: int
    end: int
    food: Food
    scrap: bool = False
    """The words say it is waste (peel, old, left over), not food to eat."""
    share: float | None = None
    """Its share of the whole, if said."""
    vague: bool = False
    """The share is a manner of speaking ("some", "a bit of"), and may be an amount as well."""
    absent: bool = False
    """It is said not to be among them ("without the crusts")."""
    generic: bool = False
    """Scraps or leftovers of no stated kind."""


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
_PLANT = words_in("plant plants vine vines haulm haulms foliage prunings")
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
    "cascara schalen peals stalks trimmings",
    "fruit": "cores pits pips seeds",
    "grain": "crusts heels crumbs",
    "meat": "gristle innards rinds",
    "garden": "cuttings",
    "mixed": "skins offcuts guts scrapings remains leavings",
}
_ALONE: Mapping[str, Kind] = {w: kind for kind, ws in _ALONE_BY_KIND.items() for w in ws.split()}
_STALE = words_in(
    "old stale mouldy moldy mouldering rotten rotting leftover spoiled spoilt expired wilted "
    "soggy dead burnt burned slimy limp sad uneaten spent used rancid bad mushy bruised "
    "squishy overripe unwanted forgotten withered shrivelled furry fuzzy manky gone-off "
    "half-eaten cooked bashed sour soft wrinkly squashed sprouted sprouting past-it scabby "
    "smelly off dodgy ancient frostbitten unsold gammy purani baasi"
)
_FREE_OF = words_in("meat fish dairy egg eggs bone bones oil fat")
_LIST_JOINTS = words_in("or nor")
_WITHOUT = words_in(
    "no not without minus except excluding skipped skip never zero sans nor isnt wasnt arent "
    "ohne sin avoiding saved none minusing"
)
_AFTER = words_in(
    "after like as than before for smells smell smelled smelling smelt taste tastes looks "
    "versus vs against hate love eating cooking stinking stinks reeking reeks whiff pong"
)


def find_items(
    words: Sequence[str], marks: Sequence[Mark], measures: Collection[int] = ()
) -> tuple[Item, ...]:
    """All things named in the words that may be scraps, in order.

    `measures` are indexes of the words of amounts: "half a kilo" is no half of a mixture.
    """
    named = [m for m in marks if m.tag == "food"]
    if not named and _ALONE.keys().isdisjoint(words):
        return ()
    foods = {m.start: m for m in _unmeasured(words, named, frozenset(measures))}
    norms = _without_measures(words, measures)
    heads = {m.start: m for m in marks if m.tag == "head"}
    out: list[Item] = []
    behind = 0
    for i in [i for i, norm in enumerate(norms) if i in foods or norm in _ALONE]:
        if i < behind:
            continue
        mark = foods.get(i)
        if mark is not None and _names_no_food(norms, mark):
            behind = mark.end
            continue
        if mark is not None:
            item = _grown(norms, mark, foods, heads)
        else:
            item = _alone(norms, i, foods)
            item = _part_of_earlier(item, norms[i], out)
        item = _described(norms, item, foods)
        again = _named_again(norms, item, out) if mark is None else None
        if again is not None and item.share is not None:
            out[again] = out[again]._replace(share=item.share, vague=item.vague)
            item = item._replace(absent=True)
        if out and _is_where_from(norms, out[-1], item):
            item = item._replace(absent=True)
        out.append(item)
        behind = item.end
    if len(out) < 2:
        return tuple(out)
    if not _PART.isdisjoint(norms):
        out = _in_parts(norms, out)
    out = [_as_pod(norms, item, out) for item in out]
    out = _without_dishes(norms, [_without_vessel(norms, item) for item in out])
    return tuple(_with_joint_shares(norms, _with_denied_lists(norms, out)))


def _is_where_from(norms: Sequence[str], last: Item, item: Item) -> bool:
    """Whether a thing says no more than where what was named last comes from."""
    between = norms[last.end : item.start]
    whence = _is_whence(item, between, norms[item.end : item.end + 1])
    return whence or _is_from_elsewhere(last, between)


def _is_origin(between: Sequence[str]) -> bool:
    """ "Bones from the stock", "off Sunday's chicken": where what stands before comes from."""
    named = 2 <= len(between) <= 4 and between[0] in ("from", "off") and between[1] != "my"
    return named and between[-1][0].isalpha()


def _is_whence(item: Item, between: Sequence[str], behind: Sequence[str]) -> bool:
    """Whether a thing only says where what stands before it is from: a meal, or "of the" dish."""
    if _is_origin(between):
        return True
    if item.generic or tuple(between) not in _WHENCE:
        return False
    made = item.food.shares[0][0] == "cooked" or len(item.food.shares) > 1
    return made or not _FEASTS.isdisjoint(behind)


_FEASTS = words_in("day night party supper evening feast weekend festival")


_WHENCE = frozenset(
    {("from",), ("off",), ("of", "the"), ("of", "that"), ("from", "our"), ("from", "my"),
     ("off", "the"), ("from", "the")}
)  # fmt: skip


def _without_dishes(norms: Sequence[str], items: list[Item]) -> list[Item]:
    """ "Crab boil: heads and shells", "jollof, the rice only": a dish whose parts are named.

    What is left of it then is those parts, and no more of the dish.
    """
    for k, item in enumerate(items[:-1]):
        if k and not items[k - 1].absent and not items[k - 1].generic:
            break  # a list, of which the dish is one
        rest = [x for x in items[k + 1 :] if not x.absent and not x.generic]
        if item.absent or item.generic or item.share is not None or not rest:
            continue
        between = norms[item.end : rest[0].start]
        if not _is_dish(item.food) or len(between) > _FAR:
            continue
        joined = not _JOINING.isdisjoint(between)
        told = not _ASHES.isdisjoint(between) or any(k in _ANIMALS for k, _ in item.food.shares)
        rice = _is_named_by_rice(item.food) and any(_is_rice(x) for x in rest)
        parts = told and _are_parts_of_animals(norms, rest) and (not joined or ":" in between)
        if (rice and (not joined or "#" in between)) or parts:
            return [*items[:k], item._replace(absent=True), *items[k + 1 :]]
    return items


_ASHES = words_in("aftermath leavings remains leftovers debris carnage fallout : lol")
"""Behind a feast, before what was left of it."""
_JOINING = words_in("and n & plus with also +")


def _is_dish(food: Food) -> bool:
    return any(kind == "cooked" for kind, _ in food.shares)


def _is_rice(item: Item) -> bool:
    return item.food.shares == (("grain", 1.0),) and item.food.name.rpartition(" ")[2] == "rice"


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
        if item.share is not None or (kind != "bone" and kind not in _ANIMALS):
            return False
        part = not _ANIMAL_PARTS.isdisjoint(norms[item.start : item.end])
        parts = parts or part or kind == "bone"
    return parts


_ANIMAL_PARTS = words_in("heads skins guts tails shells bones trimmings fins innards scales head")


def _as_pod(norms: Sequence[str], item: Item, items: Sequence[Item]) -> Item:
    """ "Drumstick and beans": the pod of a tree, among vegetables and in one number."""
    if norms[item.start : item.end] not in (["drumstick"], ["drumsticks"]):
        return item
    beside = [x for x in items if x is not item and not x.absent]
    plants = [x for x in beside if x.food.shares[0][0] in _WITH_PODS]
    sure = norms[item.start] == "drumstick" or not _WITH_PODS_TOLD.isdisjoint(norms)
    if not sure or not plants or len(plants) < len(beside):
        return item
    return item._replace(food=Food((("vegetable", 1.0),), 0.0, item.food.name))


def _without_vessel(norms: Sequence[str], item: Item) -> Item:
    """ "Onions in a bread bag", "the fish kettle": what something else was kept in."""
    before, behind = norms[item.start - 1 : item.start], norms[item.end : item.end + 1]
    named = bool(behind) and behind[0] in _VESSELS and bool(before) and before[0] in _ARTICLES
    return item._replace(absent=True) if named else item


_VESSELS = words_in("bag sack box carton kettle jug punnet basket wrapper")
_ARTICLES = words_in("a an the old empty my our")
_WITH_PODS: frozenset[Kind] = frozenset({"vegetable", "pulse", "garden"})
_WITH_PODS_TOLD = words_in("sambar sambhar brinjal okra bhindi gourd curry dal moringa sahjan")


def _is_from_elsewhere(last: Item, between: Sequence[str]) -> bool:
    """ "Mango skins in the hall from the smoothie stand": where what was named came from."""
    return not last.generic and len(between) < _FAR and list(between[-2:]) == ["from", "the"]


_FAR = 8
_NOT_FOOD = words_in(
    "dung manure poo wire coop run thermometer knife van truck shop tank hutch pen can tin board "
    "grinder cup mug jar pecked nibbled gnawed ate eats masher peeler ricer crusher press slicer "
    "scoop coloured colored colour color scale scales balance timer probe float frother warmer "
    "cooler crate crates urn"
)
"""Behind a food: "chicken wire", "a coffee can", "a potato masher" are other things."""
_BODY = words_in(
    "feet foot heart tongue brain brains legs leg blood cheek cheeks liver kidneys lung lungs"
)
_COLOURS = words_in(
    "orange lime peach plum olive aubergine salmon chestnut lemon coffee mint cream"
)
_COLOURED = words_in("one ones bin bins bucket barrel lid tub drum pail container")
_WHOSE = words_in("my your his her our their me ur")


def _names_no_food(norms: Sequence[str], mark: Mark) -> bool:
    """Whether a word for food is part of another thing's name, or of somebody's body."""
    behind = norms[mark.end : mark.end + 1]
    if behind and behind[0] in _NOT_FOOD:
        return True
    if mark.end - mark.start > 1:
        return False
    before = norms[mark.start - 1] if mark.start else ""
    if _is_verb_here(norms[mark.start], behind):
        return True
    if norms[mark.start] == "marge" and (before in _CALLED or not _DOING.isdisjoint(behind)):
        return True
    coloured = norms[mark.start] in _COLOURS and bool(behind) and behind[0] in _COLOURED
    return coloured or (norms[mark.start] in _BODY and before in _WHOSE)


def _is_verb_here(norm: str, behind: Sequence[str]) -> bool:
    """ "Don chop 2 kilo", "stock's zero": a word for food that is none before such a word."""
    if norm == "chop":
        return bool(behind) and (behind[0] in _CHOPPED or behind[0][0].isdigit())
    return norm == "stock" and bool(behind) and behind[0] in _OF_STOCK


_CALLED = words_in("before says said told asked thank thanks ask tell")
_DOING = words_in(
    "handed put puts gave brought added says said did has is was fed sealed drained 's dropped "
    "tipped chucked took will wants could saw"
)
"""Behind Marge, who is a person then and no margarine."""
_CHOPPED = words_in("# di my all am im it that dem everything")
_OF_STOCK = words_in("'s is left at level count sorted")
_PLANTS: frozenset[Kind] = frozenset({"vegetable", "fruit"})


def _in_parts(norms: Sequence[str], items: list[Item]) -> list[Item]:
    """ "3 parts veg to 1 part cheese": the shares that the numbers of parts give."""
    counts = [
        int(norms[i.start - 2])
        if i.start > 1 and norms[i.start - 1] in _PART and norms[i.start - 2].isdecimal()
        else 0
        for i in items
    ]
    total = sum(counts)
    if sum(count > 0 for count in counts) < 2 or total > _MOST_PARTS:
        return items
    return [
        item._replace(share=count / total, vague=False) if count else item
        for item, count in zip(items, counts, strict=True)
    ]


_PART = frozenset({"part", "parts"})
_MOST_PARTS = 100


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


def _named_again(norms: Sequence[str], item: Item, before: Sequence[Item]) -> int | None:
    """ "Fish skins and stalks, mostly the skins": the place of what a part speaks of again."""
    if norms[item.start - 1 : item.start] != ["the"]:
        return None
    part = norms[item.end - 1]
    return next((k for k, x in enumerate(before) if part in norms[x.start + 1 : x.end]), None)


def _part_of_earlier(item: Item, part: str, before: Sequence[Item]) -> Item:
    """ "Peeled a mountain of clementines, 5 lb of peel": the peel of what was named before."""
    if item.end - item.start > 1 or part not in _OF_PLANTS | _OF_ANIMALS:
        return item
    named = [x for x in before if not x.generic and not x.absent]
    kind = named[-1].food.shares[0][0] if named else "mixed"
    if part in _OF_ANIMALS and (kind in _ANIMALS or kind == "bone"):
        kind = "meat" if kind == "bone" else kind
        return item._replace(food=Food(((kind, 1.0),), 1.0, named[-1].food.name), generic=False)
    named = [x for x in named if x.food.shares[0][0] in _PLANTS]
    if not named or part not in _OF_PLANTS:
        return item
    return item._replace(food=named[-1].food._replace(rich=0.0), generic=False)


_ANIMALS: frozenset[Kind] = frozenset({"meat", "fish"})
_OF_ANIMALS = words_in("trimmings skins guts innards offcuts gristle scrapings remains rinds")


_OF_PLANTS = words_in(
    "peel peels peelings peeling parings pealings pelings peelins husks peals stalks cores pits "
    "pips seeds rinds skins guts innards trimmings stones hulls"
)


def _without_measures(words: Sequence[str], measures: Collection[int]) -> list[str]:
    """The words with "#" for those of amounts; a percentage is a share and no amount."""
    norms = list(words)
    for i in measures:
        if PERCENT.isdisjoint(words[i : i + 2]):
            norms[i] = "#"
    return norms


def _with_denied_lists(norms: Sequence[str], items: list[Item]) -> list[Item]:
    """ "No meat, fish or dairy": what is denied first is denied up to the thing behind "or"."""
    out = list(items)
    first = 0
    for k in range(1, len(out)):
        joint = norms[out[k - 1].end : out[k].start]
        if not joint or not set(joint) <= _LIST_JOINTS | {","}:
            first = k
        elif joint[-1] in _LIST_JOINTS and out[first].absent:
            out[first : k + 1] = [item._replace(absent=True) for item in out[first : k + 1]]
    return out


def _with_joint_shares(norms: Sequence[str], items: list[Item]) -> list[Item]:
    """ "Burgers and buns mainly", "a third of it meat and fat": one share for what "and" joins."""
    out = list(items)
    for k in range(1, len(out)):
        first, second = out[k - 1], out[k]
        if norms[first.end : first.end + 2] in _AND_ALL and (first.vague or first.share is None):
            # "the carcass and all the stuffing": as much of the one as of the other
            out[k - 1 : k + 1] = [first._replace(share=None), second._replace(share=None)]
        if norms[first.end : second.start] not in (["and"], ["n"], ["&"]):
            continue
        behind = norms[second.end : second.end + 1]
        if second.share is not None and behind and behind[0] in MOST and first.share is None:
            share = second.share
        elif first.share is not None and second.share is None and norms[first.start - 1] == "it":
            share = first.share
        else:
            continue
        out[k - 1 : k + 1] = [first._replace(share=share / 2), second._replace(share=share / 2)]
    return out


_AND_ALL = (["and", "all"], ["plus", "all"], ["&", "all"], ["n", "all"])


def _alone(norms: Sequence[str], i: int, foods: Mapping[int, Mark]) -> Item:
    """ "Peels" by themselves, or "skins of mango"."""
    at = i + 1
    while at < min(len(norms), i + 4) and norms[at] in ("of", "from", "de", "the", "off"):
        at += 1
    if at > i + 1 and at in foods:
        mark = foods[at]
        return Item(i, mark.end, _part_of(mark.value, norms[i]), scrap=True)
    kind = _ALONE[norms[i]]
    food = Food(((kind, 1.0),), 1.0 if kind == "meat" else 0.0, norms[i])
    return Item(i, i + 1, food, scrap=True, generic=kind == "mixed")


def _grown(
    norms: Sequence[str], mark: Mark, foods: Mapping[int, Mark], heads: Mapping[int, Mark]
) -> Item:
    """The food with the parts, dish names and scrap words that follow it."""
    food: Food = mark.value
    scrap = _is_scrap(food)
    generic = _is_generic(food)
    end = mark.end
    while end < len(norms):
        head = heads.get(end)
        after = foods.get(end)
        if norms[end] in _GROWING:
            food = _part_of(food, norms[end])
            scrap = scrap or norms[end] in _STRONG_PARTS
            end += 1
        elif head is not None and _takes_head(food, norms[end - 1]) and not generic:
            food, end = _dish(food, head.value), head.end
        elif after is not None and _is_what_is_left(after.value) and not generic:
            scrap, end = True, after.end
        elif norms[end] == "oil" and after is not None and not generic:
            food, end = after.value, after.end  # "samosa oil": what it was fried in
        elif after is not None and _is_of_dish(norms[end], after.value) and not generic:
            food, end = after.value, after.end
        elif after is not None and generic and not _is_generic(after.value):
            return Item(mark.start, end, food, scrap, generic=generic)
        else:
            break
    return Item(mark.start, end, food, scrap, generic=generic)


def _is_of_dish(norm: str, food: Food) -> bool:
    """Whether a food is called by the dish it comes from: "taco meat", "pho broth bones"."""
    return norm in OF_DISHES or food.shares[0][0] == "bone"


OF_DISHES = words_in("meat grease fat cheese dripping lard")


def _is_what_is_left(food: Food) -> bool:
    """ "Jollof party leftovers", "biryani pot scrapings": what was left of the dish before it."""
    named = "leftover" in food.name or "scraping" in food.name
    return _is_generic(food) or (named and food.shares == (("cooked", 1.0),))


@lru_cache(maxsize=1024)
def _is_generic(food: Food) -> bool:
    return food.shares[0][0] == "mixed" or (food.shares == (("cooked", 1.0),) and food.rich == 0.25
                                            and food.name in _LEFTOVER_WORDS)  # fmt: skip


_LEFTOVER_WORDS = frozenset({"leftover", "left over", "leftovers", "cooked", "cooked food"})
_SCRAP_NAMES = words_in("scrap scraps food kitchen leftover leftovers waste slops")


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
    if part in ("crust", "crusts"):
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


def _described(norms: Sequence[str], item: Item, foods: Collection[int]) -> Item:
    """The item with what stands before and behind it: staleness, share, absence."""
    start = max(0, item.start - 6)
    near = _near(norms[start : item.start])
    scrap = item.scrap or not _STALE.isdisjoint(near[-2:])
    absent = _is_denied(near) or _is_free_of(norms, item) or _is_gone(norms, item.end)
    said = (
        share_of(norms, near, item.end, foods)
        or _bones_beside(norms, near, item)
        or _spread_on(norms, near, item)
    )
    if (scrap, absent) != (item.scrap, item.absent):
        item = item._replace(scrap=scrap, absent=absent)
    return item if said is None else item._replace(share=said.share, vague=said.vague)


def _bones_beside(norms: Sequence[str], near: Sequence[str], item: Item) -> Said | None:
    """ "Curry goat with the bones", "wings, bones and all": they are not half of it."""
    if item.food.shares[0][0] != "bone":
        return None
    beside = list(near) in (["with"], ["with", "the"], ["with", "its"])
    beside = beside or norms[item.end : item.end + 2] == ["and", "all"]
    return Said(0.3, vague=True) if beside else None


def _spread_on(norms: Sequence[str], near: Sequence[str], item: Item) -> Said | None:
    """ "Teacakes with the butter still on": a spread is little of what it is on."""
    behind = norms[item.end : item.end + 2]
    on = behind[:1] == ["on"] or (behind[1:] == ["on"] and behind[0] in _STILL)
    spread = item.food.shares[0][0] in _SPREADS and "with" in near[-3:]
    return Said(0.1, vague=True) if on and spread else None


_STILL = words_in("still left scraped smeared spread already")
_SPREADS: frozenset[Kind] = frozenset({"dairy", "oil", "egg", "cooked", "fruit"})


def _is_denied(near: Sequence[str]) -> bool:
    if _DENYING.isdisjoint(near) or is_not_much(near):
        return False
    if "not" in near[-4:] and "scrap" in near:
        return True
    if not _WITHOUT.isdisjoint(near[-3:]) or not _AFTER.isdisjoint(near[-2:]) or _is_eaten(near):
        return True
    if near[-2:] == ["behind", "the"] and near[-3:-2] != ["left"]:
        return True
    lead = near[:-1] if near[-1:] and near[-1] in _ALL_OF else near
    return lead[-1:] == ["bar"] or tuple(lead[-2:]) in _LEFT_OUT


def _is_eaten(near: Sequence[str]) -> bool:
    """Whether people eat it, and not a bin, nor nobody ("we ate the fish")."""
    at = next((i for i in range(len(near) - 1, max(0, len(near) - 3), -1) if near[i] in EATING), 0)
    return at > 0 and near[at - 1] in EATERS


_ALL_OF = words_in("the any its their")
_LEFT_OUT = frozenset(
    {("apart", "from"), ("aside", "from"), ("but", "for"), ("everything", "but"), ("all", "but")}
)
"""Behind which all of a thing is left out, where no word says that some of it is there."""
EATING = words_in("eat ate eating eaten scoffed")
_DENYING = _WITHOUT | _AFTER | EATING | {"bar"} | {second for _, second in _LEFT_OUT}
"""Words before a thing without one of which it is not denied."""
EATERS = words_in(
    "i we he she they you kids everyone everybody all dog cat hens who folk just goat goats pig "
    "pigs cow cows rat rats mice fox foxes chooks hen birds puppy"
)


def _is_gone(norms: Sequence[str], end: int) -> bool:
    """ "The prawns had all gone": nothing of it was left to go in."""
    if end >= len(norms) or norms[end] not in _HAD:
        return False
    at = end
    while norms[at : at + 1] and norms[at] in _HAD:
        at += 1
    over = norms[at : at + 1] in (["gone"], ["eaten"], ["finished"])
    behind = norms[at + 1 : at + 2]
    return over and (not behind or not behind[0][0].isalpha() or behind[0] in _LONG)


_HAD = words_in("had was were is are all already long mostly been 's")
_LONG = words_in("long already ages yesterday earlier before by first hours days")


def _is_free_of(norms: Sequence[str], item: Item) -> bool:
    """ "Meat-free": named only to say that it is not there."""
    if norms[item.end - 1] not in _FREE_OF:
        return False
    after = list(norms[item.end : item.end + 2])
    return after[:1] == ["free"] and after[1:] != ["range"]


_PARTING = frozenset(",.;:()\n!?☺—+-→")
_JOINING = words_in("and n & but with y")


def _near(before: Sequence[str]) -> list[str]:
    """The words before an item, back to the last sign."""
    near: list[str] = []
    for norm in reversed(before):
        if norm in _PARTING:
            break
        near.append(norm)
        if norm in _JOINING and before[-len(near) - 1 :][:1] not in (
            ["everything"],
            ["all"],
        ):
            break
    near.reverse()
    return near
