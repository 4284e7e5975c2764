"""What is said of the things named: stale, not there, a share; of each, then of several at once."""

from collections.abc import Collection, Sequence

from handlers.practice.kinds import Kind
from handlers.reading.food.items import Item
from handlers.reading.measures.numberwords import UNITS
from handlers.reading.measures.proportions import MOST, Said, is_not_much, share_of
from handlers.reading.words.vocabulary import words_in


def as_described(norms: Sequence[str], item: Item, foods: Collection[int]) -> Item:
    """The item with what stands before and behind it: staleness, share, absence."""
    start = max(0, item.start - 6)
    near = _near(norms[start : item.start])
    if norms[item.start - 5 : item.start] == ["#", "and", "a", "bit", "of"]:
        near = []  # "2 kilos and a bit of rice"
    scrap = item.scrap or not _STALE.isdisjoint(near[-2:])
    absent = _is_denied(near) or _is_free_of(norms, item) or _is_gone(norms, item.end)
    absent = absent or _is_had_instead(norms, item.end)
    said = (
        share_of(norms, near, item.end, foods)
        or _bones_beside(norms, near, item)
        or _and_all(norms, item, foods)
        or _shells_counted(norms, near, item, foods)
        or _spread_on(norms, near, item)
        or _dressed_with(norms, item)
    )
    if (scrap, absent) != (item.scrap, item.absent):
        item = item._replace(scrap=scrap, absent=absent)
    return item if said is None else item._replace(share=said.share, vague=said.vague)


_PARTING = frozenset(",.;:()\n!?☺—+-→")
_STALE = words_in(
    "old stale mouldy moldy mouldering rotten rotting leftover spoiled spoilt expired wilted "
    "soggy dead burnt burned slimy limp sad uneaten spent used rancid bad mushy bruised "
    "squishy overripe unwanted forgotten withered shrivelled furry fuzzy manky gone-off "
    "half-eaten cooked bashed sour soft wrinkly squashed sprouted sprouting past-it scabby "
    "smelly off dodgy ancient frostbitten unsold gammy purani baasi"
)


def _shells_counted(
    norms: Sequence[str], near: Sequence[str], item: Item, foods: Collection[int]
) -> Said | None:
    """ "15 egg shells and 1 lb rice", "egg shells 5": a shell weighs but some grams."""
    behind = norms[item.end : item.end + 2]
    count = near[-1] if near and (near[-1].isdecimal() or near[-1] in _FEW) else ""
    if behind[:1] and behind[0].isdecimal() and behind[1:] in _STOPS:
        count = behind[0]
    few = count != "dozen" and not count[1:].isdecimal()
    shells = item.food.name.replace(" ", "").startswith("eggshell")
    if not (count and shells and len(foods) > 1):
        return None
    return Said(0.04 if few else 0.1, vague=True)


_STOPS: tuple[list[str], ...] = ([], [","], ["."], ["and"], ["in"])
_FEW = words_in("two three four five six eight ten dozen few")


def _bones_beside(norms: Sequence[str], near: Sequence[str], item: Item) -> Said | None:
    """ "Curry goat with the bones", "wings, bones and all": they are not half of it."""
    if item.food.shares[0][0] != "bone":
        return None
    beside = list(near) in (["with"], ["with", "the"], ["with", "its"])
    beside = beside or norms[item.end : item.end + 2] == ["and", "all"]
    return Said(0.3, vague=True) if beside else None


def _and_all(norms: Sequence[str], item: Item, foods: Collection[int]) -> Said | None:
    """ "The stew, bits of lamb and all": what is told last, behind the dish that it was in."""
    last = norms[item.end : item.end + 2] == ["and", "all"]
    ended = norms[item.end + 2 : item.end + 3] == [] or norms[item.end + 2] in _PARTING
    dressing = norms[item.end - 1] in _DRESSINGS
    behind = any(start < item.start for start in foods)
    return Said(0.3, vague=True) if last and ended and behind and not dressing else None


def _spread_on(norms: Sequence[str], near: Sequence[str], item: Item) -> Said | None:
    """ "Teacakes with the butter still on": a spread is little of what it is on."""
    behind = norms[item.end : item.end + 2]
    on = behind[:1] == ["on"] or (behind[1:] == ["on"] and behind[0] in _STILL)
    spread = item.food.shares[0][0] in _SPREADS and "with" in near[-3:]
    return Said(0.1, vague=True) if on and spread else None


_STILL = words_in("still left scraped smeared spread already")
_SPREADS: frozenset[Kind] = frozenset({"dairy", "oil", "egg", "cooked", "fruit"})


def _dressed_with(norms: Sequence[str], item: Item) -> Said | None:
    """ "The potato salad, and the mayonnaise with it": a dressing is little of what it is on."""
    with_it = norms[item.end : item.end + 2] in _WITH_IT
    dressing = norms[item.end - 1] in _DRESSINGS
    return Said(0.1, vague=True) if with_it and dressing else None


_WITH_IT = (["with", "it"], ["with", "them"], ["on", "it"], ["over", "it"], ["and", "all"])
_DRESSINGS = words_in(
    "mayo mayonnaise dressing vinaigrette gravy custard sauce cream aioli butter ketchup"
)


def _is_denied(near: Sequence[str]) -> bool:
    if _DENYING.isdisjoint(near) or is_not_much(near):
        return False
    if "not" in near[-4:] and "scrap" in near:
        return True
    if [norm for norm in near if norm not in ("#", "of")][-1:] == ["not"]:
        return True  # "not 2 kg of meat"
    if not _WITHOUT.isdisjoint(near[-3:]) or not _AFTER.isdisjoint(near[-2:]) or _is_eaten(near):
        return True
    if near[-2:] == ["behind", "the"] and near[-3:-2] != ["left"]:
        return True
    lead = near[:-1] if near[-1:] and near[-1] in _ALL_OF else near
    return lead[-1:] == ["bar"] or tuple(lead[-2:]) in _LEFT_OUT


_WITHOUT = words_in(
    "no not without minus except excluding skipped skip never zero 0 sans nor isnt wasnt arent "
    "ohne sin avoiding saved none minusing"
)
_AFTER = words_in(
    "after like as than before for smells smell smelled smelling smelt taste tastes looks "
    "versus vs against hate love eating cooking stinking stinks reeking reeks whiff pong"
)
_ALL_OF = words_in("the any its their")
_LEFT_OUT = frozenset(
    {("apart", "from"), ("aside", "from"), ("but", "for"), ("everything", "but"), ("all", "but")}
)
"""Behind which all of a thing is left out, where no word says that some of it is there."""
EATING = words_in("eat ate eating eaten scoffed")
_DENYING = _WITHOUT | _AFTER | EATING | {"bar"} | {second for _, second in _LEFT_OUT}
"""Words before a thing without one of which it is not denied."""


def _is_eaten(near: Sequence[str]) -> bool:
    """Whether people eat it, and not a bin, nor nobody ("we ate the fish")."""
    at = next((i for i in range(len(near) - 1, max(0, len(near) - 3), -1) if near[i] in EATING), 0)
    return at > 0 and near[at - 1] in EATERS


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


def _is_had_instead(norms: Sequence[str], end: int) -> bool:
    """ "Burnt the rice. Toast it is": what is eaten in the place of what was spoilt."""
    if norms[end : end + 2] not in (["it", "is"], ["it", "was"]):
        return False
    return norms[end + 2 : end + 3] == [] or norms[end + 2] in _BEHIND_INSTEAD


_BEHIND_INSTEAD = _PARTING | words_in("then tonight again now instead for lol i")
_HAD = words_in("had was were is are all already long mostly been 's")
_LONG = words_in("long already ages yesterday earlier before by first hours days")


def _is_free_of(norms: Sequence[str], item: Item) -> bool:
    """ "Meat-free": named only to say that it is not there."""
    if norms[item.end - 1] not in _FREE_OF:
        return False
    after = list(norms[item.end : item.end + 2])
    return after[:1] == ["free"] and after[1:] != ["range"]


_FREE_OF = words_in("meat fish dairy egg eggs bone bones oil fat")


def _near(before: Sequence[str]) -> list[str]:
    """The words before an item, back to the last sign."""
    near: list[str] = []
    for norm in reversed(before):
        if norm in _PARTING:
            break
        near.append(norm)
        if norm in _THE_REST:
            break
        if norm in JOINING and before[-len(near) - 1 :][:1] not in (
            ["everything"],
            ["all"],
        ):
            break
    near.reverse()
    return near


_THE_REST = words_in("rest remainder remaining")
JOINING = words_in("and n & but with y")


def in_parts(norms: Sequence[str], items: list[Item]) -> list[Item]:
    """ "3 parts veg to 1 part cheese": the shares that the numbers of parts give."""
    if _PART.isdisjoint(norms):
        return items
    counts = [
        _count(norms[i.start - 2]) if i.start > 1 and norms[i.start - 1] in _PART else 0
        for i in items
    ]
    total = sum(counts)
    if sum(count > 0 for count in counts) < 2 or total > _MOST_PARTS:
        return items
    return [
        item._replace(share=count / total, vague=False) if count else item
        for item, count in zip(items, counts, strict=True)
    ]


def _count(norm: str) -> int:
    """ "3" and "three"; 0 if the word is no number."""
    return int(norm) if norm.isdecimal() else int(UNITS.get(norm, 0))


_PART = frozenset({"part", "parts"})
_MOST_PARTS = 100


def with_denied_lists(norms: Sequence[str], items: list[Item]) -> list[Item]:
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


_LIST_JOINTS = words_in("or nor")


def with_joint_shares(norms: Sequence[str], items: list[Item]) -> list[Item]:
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
        elif (
            first.share is not None and second.share is None and norms[first.start - 1] in _SHARING
        ):
            share = first.share
        else:
            continue
        out[k - 1 : k + 1] = [first._replace(share=share / 2), second._replace(share=share / 2)]
    return out


_SHARING = words_in("it incl including")
_AND_ALL = (["and", "all"], ["plus", "all"], ["&", "all"], ["n", "all"])
