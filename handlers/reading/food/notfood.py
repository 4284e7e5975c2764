"""Words for food that mean something else here: other things, a body, a person, a tree's pod."""

from collections.abc import Sequence

from handlers.practice.kinds import Kind
from handlers.reading.food.items import Item
from handlers.reading.words.marks import Mark
from handlers.reading.words.verbs import has_begun
from handlers.reading.words.vocabulary import Food, words_in


def names_no_food(norms: Sequence[str], mark: Mark) -> bool:
    """Whether a word for food is part of another thing's name, or of somebody's body."""
    behind = norms[mark.end : mark.end + 1]
    if behind and (behind[0] in _NOT_FOOD or _is_who_or_shape(norms, mark)):
        return True
    if norms[mark.end - 1] in BITS and is_of_stuff(norms, mark.end):
        return True
    if norms[mark.end - 1] == "scale" and mark.end - mark.start > 1:
        lead = norms[max(0, mark.start - 1) : mark.start]  # "2 lb on the fish scale"
        return bool(lead) and lead[0] in _OF_A_SCALE
    if mark.value.name.endswith(" of tea") and behind != ["into"]:
        return True  # what was drunk, or what came out of a bin
    if mark.end - mark.start > 1:
        return False
    before = norms[mark.start - 1] if mark.start else ""
    if norms[mark.start] == "compost" and _is_composting(norms, mark.start, behind):
        return True
    if _is_verb_here(norms[mark.start], behind) or (norms[mark.start] == "mayo" and before == "de"):
        return True  # "stock is left", "cinco de mayo"
    if _is_called_so(norms, mark.start, before, behind):
        return True
    if norms[mark.start] in _LIVING and behind and behind[0] in _LOOKING_ON:
        return True
    coloured = norms[mark.start] in _COLOURS and bool(behind) and behind[0] in _COLOURED
    coloured = coloured or (norms[mark.start] == "orange" and before in _IS)
    whose = before in _WHOSE or (bool(behind) and behind[0] in _BROKE)
    return coloured or (norms[mark.start] in _BODY and whose)


_OF_A_SCALE = words_in("the a my our that this his her their your old on by from per off via")


def is_of_stuff(norms: Sequence[str], end: int) -> bool:
    """ "Scraps of wool": whether behind such bits stands what no kitchen has."""
    return norms[end : end + 1] in (["of"], ["o"]) and not STUFFS.isdisjoint(
        norms[end + 1 : end + 3]
    )


BITS = words_in("scrap scraps offcut offcuts trimmings bits")
STUFFS = words_in(
    "wool cloth fabric felt leather yarn ribbon lace silk cotton denim linen velvet tweed canvas "
    "string rope thread metal steel iron copper lead brass tin wood timber plywood lino carpet "
    "wallpaper foam plastic rubber vinyl tile tiles glass wire news information conversation"
)


def _is_composting(norms: Sequence[str], i: int, behind: Sequence[str]) -> bool:
    """ "Can we compost fish?", "on the compost heap": what people do, and where; no scraps."""
    if not behind or behind[0] in _HEAPS:
        return bool(behind)
    if behind[0] in _NO_OBJECT:
        return False
    before, asked = norms[i - 1 : i], norms[max(0, i - 4) : i]
    if before == ["to"]:
        return not _MAY_DO.isdisjoint(asked)
    return bool(before) and before[0] in _WE and not _MODALS.isdisjoint(asked)


_HEAPS = words_in("heap heaps pile piles")
_NO_OBJECT = words_in("in into to from on and or , . ? !")
_MAY_DO = words_in("ok okay legal safe halal kosher allowed possible able fine good alright how")
_WE = words_in("i we you one people they")
_MODALS = words_in("can could may should must do shall would cant")


def _is_who_or_shape(norms: Sequence[str], mark: Mark) -> bool:
    """ "The fish lady", "star-shaped": somebody or something called by a food."""
    at = mark.end + (norms[mark.end] == "-")
    if at >= len(norms):
        return False
    who = at == mark.end and norms[at] in _WHO and not _is_baked(norms, at)
    who = who and not norms[at - 1].endswith("s")  # "prawn heads, men"
    left = norms[at + 1 : at + 2]
    if who and norms[at] in _MANY and left and left[0] in _LEFT:
        return False  # "the rice people left"
    return who or norms[at] in _SHAPED


def _is_baked(norms: Sequence[str], i: int) -> bool:
    """Whether a man of dough stands at word i ("gingerbread men")."""
    return norms[i - 1] in _DOUGHS or norms[i - 1].endswith("bread")


_WHO = words_in(
    "man men lady ladies woman women guy guys bloke blokes fella fellow fellas chap wallah walla "
    "vendor seller sellers hawker monger uncle aunty auntie mama boys girls lads people folk folks "
    "farmer farmers"
)
_MANY = words_in("people folk folks lads men women boys girls ladies guys")
_LEFT = words_in(
    "left leave didnt dont wouldnt wont never hadnt havent had have refused ignored wasted bought "
    "brought bring threw throw dropped couldnt cant hate hated"
)
_DOUGHS = words_in("ginger dough biscuit cookie bread chocolate marzipan")
_SHAPED = words_in("shaped flavoured flavored scented patterned themed")


def is_vessel(words: Sequence[str], mark: Mark) -> bool:
    """ "A pie tin of grease", "an egg tray of peel": what something else is in."""
    end = mark.end + (words[mark.end - 1] not in _KEPT_IN)
    led = words[end : end + 1] == ["of"] and end > mark.start + 1
    return led and words[end - 1] in _KEPT_IN


_KEPT_IN = words_in(
    "tin tins dish pan plate pot cooker bowl tray jar bag box can mug cup tub carton basket sack "
    "punnet bucket packet kettle crate pail pails tubs buckets cartons crates trays sacks"
)
"""Behind a food and before "of" it is a vessel, and the food what it was once for."""
_NOT_FOOD = words_in(
    "dung manure poo wire coop run thermometer knife van truck shop tank hutch pen can tin board "
    "grinder cup mug jar pecked nibbled gnawed ate eats masher peeler ricer crusher press slicer "
    "scoop coloured colored colour color scale scales balance timer probe float frother warmer "
    "cooler crate crates urn hands fingers allergy apron hangover coma "
    "packet packets wrapper wrappers club clubs fair festival"
)
"""Behind a food: "chicken wire", "a coffee can", "a potato masher" are other things."""
_BODY = words_in(
    "feet foot heart tongue brain brains legs leg blood cheek cheeks liver kidneys lung lungs"
)
_BROKE = words_in("broke broken breaks aches ached sank hurts hurt")
_LIVING = words_in(
    "rabbit rabbits duck ducks goose hen hens chicken chickens pigeon pigeons goat pig"
)
_LOOKING_ON = words_in("outside watching watched staring stared hopped barked supervising waiting")
_COLOURS = words_in(
    "orange lime peach plum olive aubergine salmon chestnut lemon coffee mint cream"
)
_COLOURED = words_in("one ones bin bins bucket barrel lid tub drum pail container")
_IS = words_in("is are was were all turned went bright")
_WHOSE = words_in("my your his her our their me ur light heavy brave")


def _is_called_so(norms: Sequence[str], i: int, before: str, behind: Sequence[str]) -> bool:
    """Marge who did it, "B wing" and "the east wing" where people live, a bin that was begun."""
    if norms[i] == "marge":
        return before in _CALLED or not _DOING.isdisjoint(behind)
    if norms[i] == "wing":
        return len(before) == 1 or before in _SIDES
    return has_begun(norms, i)


_SIDES = words_in("east west north south left right new old guest school hospital maternity")


def _is_verb_here(norm: str, behind: Sequence[str]) -> bool:
    """ "Don chop 2 kilo", "stock's zero": a word for food that is none before such a word."""
    if norm == "chop":
        return bool(behind) and (behind[0] in _CHOPPED or behind[0][0].isdigit())
    if norm in _PUT_IN_HINDI:
        return bool(behind) and behind[0] in _HINDI_AUXILIARIES
    return norm == "stock" and bool(behind) and behind[0] in _OF_STOCK


_PUT_IN_HINDI = words_in("daal dal")
_HINDI_AUXILIARIES = words_in("diya diye di do dena denge raha rahi rahe deta dete")
""" "Daal diya": put in, and no lentils."""
_CALLED = words_in("before says said told asked thank thanks ask tell")
_DOING = words_in(
    "handed put puts gave brought added says said did has is was fed sealed drained 's dropped "
    "tipped chucked took will wants could saw"
)
"""Behind Marge, who is a person then and no margarine."""
_CHOPPED = words_in("# di my all am im it that dem everything")
_OF_STOCK = words_in("'s is left at level count sorted")


def as_pod(norms: Sequence[str], item: Item, items: Sequence[Item]) -> Item:
    """ "Drumstick and beans": the pod of a tree, among vegetables and in one number."""
    if norms[item.start : item.end] not in (["drumstick"], ["drumsticks"]):
        return item
    beside = [x for x in items if x is not item and not x.absent]
    plants = [x for x in beside if x.food.shares[0][0] in _WITH_PODS]
    sure = norms[item.start] == "drumstick" or not _WITH_PODS_TOLD.isdisjoint(norms)
    if not sure or not plants or len(plants) < len(beside):
        return item
    return item._replace(food=Food((("vegetable", 1.0),), 0.0, item.food.name))


_WITH_PODS: frozenset[Kind] = frozenset({"vegetable", "pulse", "garden"})
_WITH_PODS_TOLD = words_in("sambar sambhar brinjal okra bhindi gourd curry dal moringa sahjan")
