"""Fermented contents went into the ground, and where."""

from collections.abc import Sequence

from handlers.reading.acts import Bury, Each
from handlers.reading.deeds.notburied import HOLES, IT, is_inside, is_of_member, is_only_a_hole
from handlers.reading.deeds.places import place_of
from handlers.reading.deeds.placewords import GREEN, GROUND, PLACE, UNDER
from handlers.reading.deeds.told import bin_of
from handlers.reading.deeds.toldday import day_of, is_ahead
from handlers.reading.deeds.unnamed import is_of_unnamed_bin
from handlers.reading.grouping import groups_of
from handlers.reading.groups import Group
from handlers.reading.message import Message, read_message
from handlers.reading.people.doers import member_of
from handlers.reading.plaintext import plain_text
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_SURELY = frozenset({"bury", "berry", "trench", "inter", "enterrar", "vergraben"})
_DIGGING = frozenset({"dig", "dig in", "fork", "turn", "lay", "plant"})
_OTHER_THINGS = words_in(
    "cat dog hamster goldfish rabbit grandad granny uncle aunt face head treasure papaw papa "
    "grandma guinea work paperwork phone sand news hatchet nan toy toys pond lede myself "
    "budgie gerbil fish-tank tortoise father mother dad mum mam parrot capsule past "
    "differences"
)
_IN_THE_GROUND = Late(r"\bin(?:to)? (?:the )?(?:ground|soil|earth)\b")
_LIES = Late(
    r"\bqbin(?: 's)?(?: contents| lot| stuff)?(?: (?:is|are|'s|was|were|has been|have been|now|"
    r"all|finally|safely|already|"
    r"went|gone|has|have|got|been|worm food|food|feeding))* (?:under|beneath|below|in|into|"
    r"underneath|beside|behind) "
)
_SIX_FEET = Late(r"\b(?:six|6) feet under\b")


THE_REST = (
    r"\bburied (?:the )?(?:rest|remainder|(?:other|second) half|last)(?: of (?:it|that))?"
    r"(?: (?:too|now|today|qday|as well))*(?= ?[.!]?$| (?:in|under|by|beside|near|behind|at|on) )"
)
"""Behind "buried half of the shed bin", which is in no record."""
_REST = Late(THE_REST)


def bury_of(groups: Sequence[Group], k: int) -> Bury | None:
    """The burial that the k-th group tells of, if it does."""
    group = groups[k]
    rule = _without_verb(group) if group.verb is None else _by_verb(groups, k)
    if rule is None or is_ahead(group) or is_inside(group) or is_only_a_hole(group):
        return None
    if not _OTHER_THINGS.isdisjoint(group.free) or is_of_member(group):
        return None
    return bury_from(groups, k, rule)


def bury_from(groups: Sequence[Group], k: int, rule: str) -> Bury:
    """The burial with what the k-th group and its neighbours say of it."""
    group = groups[k]
    target = _target(group)
    return Bury(
        bin=_named_elsewhere(groups, k) if target is None else target.name,
        member=member_of(groups, k),
        on=day_of(groups, k, since=True),
        place=place_of(group, target),
        part=(group.message.context.in_room and _is_part(group)) or None,
        rules=(rule,),
    )


_ALL_IN = Late(
    r"^(?:(?:ok|right|well|so|and|that|they|there|is|are|'s|got|we|i|have|them|,) )*"
    r"(?:both|all (?:two|three|four|of them)|the two)(?: of)?(?: (?:them|the bins|our bins|bins))?"
    r"(?: (?:are|is|now|safely|finally|well|,))* in(?:to)? the (?:ground|soil|earth)"
    r"(?: (?:now|today|at last|too|finally))*(?: ,)?(?P<where>(?: \w+){1,6})?$"
)
IN_GROUND = words_in("ground soil earth")


ALL_LIE = "all are in the ground"


def all_in_the_ground(message: Message) -> Bury | None:
    """ "That's both of them in the ground, back corner": asked first, since they may be plants."""
    if message.bins or message.amounts or message.items or "?" in message.said:
        return None
    text = " ".join(message.norms).strip(" .!")
    match = _ALL_IN.match(text)
    if match is None:
        return None
    each: Each = "both" if "both" in message.said or "two" in message.said else "all"
    place = _place_said(match["where"], message)
    return Bury(each=each, place=place, on=message.today, rules=(ALL_LIE,))


def _place_said(where: str | None, message: Message) -> str | None:
    """The place in words that stand behind "in the ground"."""
    if not where:
        return None
    leads = "" if where.split()[0] in _LEADING else "in the "
    told = groups_of(read_message(f"buried it {leads}{where.strip()}", message.context))
    return place_of(told[0], None) if told else None


_DONE_IN = Late(
    r"^(?:(?:ok|right|so|all|just|i|we|have|'ve|,) )*(?:(?:done|did|finished|sorted) (?:with )?"
    r"(?:the )?qbin|(?:the )?qbin (?:(?:is|'s) )?(?:done|finished|sorted))"
    r"(?: (?:,|\.|;|and|-|:))* (?:it|that) (?:is|'s) (?:(?:now|all|safely) )*in the "
    r"(?:ground|soil|earth)(?: (?:now|at last))*(?: ,)?(?P<where>(?: \w+){1,6})?[ .!]*$"
)


def done_in_the_ground(message: Message) -> Bury | None:
    """ "Done the hall, it's in the ground behind the swings": what is done is the burial."""
    if len(message.bins) != 1 or message.amounts or message.asked:
        return None
    match = _DONE_IN.match(plain_text(message))
    if match is None:
        return None
    place = _place_said(match["where"], message)
    return Bury(bin=message.bins[0].name, place=place, on=message.today, rules=("a job done",))


_LEADING = words_in("in by under beneath near behind beside at along below next")


def _is_part(group: Group) -> bool:
    """ "Buried half of the shed bin", "buried 1 kg from the shed": the rest is in there still."""
    if not _TO_THE_LAST.isdisjoint(group.norms):
        return False
    text = group.text()
    some = not _PARTS.isdisjoint(group.norms) and _PART.search(text)
    return bool(some or (group.measured() and _FROM_BIN.search(text)))


_PARTS = words_in("half third thirds quarter quarters part parts some most bit bits")
_PART = Late(
    rf"\b(?:half|(?:{'|'.join(sorted(_PARTS))}) (?:of|from|out of)) "
    r"(?:what was in |the contents of )?(?:(?:the|my|our) )?qbin\b"
)
_TO_THE_LAST = words_in("last rest remaining other second final all everything whole")
_FROM_BIN = Late(r"\b(?:from|out of|off) (?:(?:the|my|our) )?qbin\b")


def _target(group: Group) -> BinRef | None:
    """The bin that was buried: rather what the verb is said of than where it went."""
    named = [b for b in group.bins if b.name and not _is_only_near(group, b)]
    norms = group.message.norms
    free = [b for b in named if _INTO.isdisjoint(norms[max(group.start, b.start - 2) : b.start])]
    behind = [b for b in free if group.verb is not None and b.start >= group.verb.end]
    return next(iter(behind or free or named), None)


_INTO = words_in("in into under to at by near behind beside for")


def _named_elsewhere(groups: Sequence[Group], k: int) -> str | None:
    """The bin of another group; the group's own names only say where."""
    return None if groups[k].bins and len(groups) == 1 else bin_of(groups, k)


def _without_verb(group: Group) -> str | None:
    if group.sense != "none" or not group.bins or _scraps(group):
        return None
    text = group.text()
    if _IN_THE_GROUND.search(text) or _SIX_FEET.search(text):
        return "a bin is in the ground"
    return "a bin lies in the ground" if _LIES.search(text) and _names_ground(group) else None


def _scraps(group: Group) -> bool:
    return any(a.quantity in ("mass", "volume") for a in group.amounts)


def _names_ground(group: Group) -> bool:
    """Whether ground, or a plant behind "under", is named outside of the bin's own name."""
    norms = group.message.norms
    named = indexes(group.bins)
    named |= {i for i in range(group.start, group.end) if norms[i - 1 : i + 1] in _TO_SLEEP}
    words = {norms[i] for i in range(group.start, group.end) if i not in named}
    if not words.isdisjoint(GROUND):
        return True
    return not words.isdisjoint(UNDER) and not words.isdisjoint(GREEN)


_TO_SLEEP = (["in", "bed"], ["to", "bed"])


def _by_verb(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    assert group.verb is not None
    if group.sense != "did":
        return None
    verb = group.verb.verb
    if verb.plain in _SURELY:
        return _surely(groups, k, set(group.norms))
    if _into_hole(groups, k):
        return "a bin went into the hole"
    if not group.bins or (group.items and group.measured()) or _is_ground_itself(group):
        return None
    if is_dug_up(group):
        return None
    norms = set(group.norms)
    leads = group.bins[0].end <= group.verb.start
    if verb.plain in _DIGGING and (
        _names_ground(group) or not norms.isdisjoint({"in", "into", "rest"})
    ):
        return "a bin was dug in"
    if verb.plain == "dig":
        return "a bin was dug in"
    moved = "bury" in verb.classes or "layer" in verb.classes
    if (
        moved
        and (leads or _is_object(group))
        and _names_ground(group)
        and (not norms.isdisjoint({"in", "into", "under", "beneath", "below", "underneath", "to"}))
    ):
        return "a bin was emptied into the ground"
    return "a bin is in the ground" if _IN_THE_GROUND.search(group.text()) else None


def is_dug_up(group: Group) -> bool:
    """ "Dug up the shed bin", "dug the shed out again": what comes out of the ground once more."""
    return "dug" in group.norms and _DUG_UP.search(group.text()) is not None


_DUG_UP = Late(
    r"\bdug (?:(?:up|out) (?:the |my |our )?qbin|(?:the |my |our )?qbin (?:back )?(?:up|out))\b"
    r"(?! (?:in|into|onto|on|under|over|to)\b)"
)


def _into_hole(groups: Sequence[Group], k: int) -> bool:
    """ "Dug a hole and tipped Gertie in": the hole is dug in the clause before."""
    group = groups[k]
    before = groups[k - 1] if k else None
    if before is None or before.verb is None or before.sense != "did" or group.verb is None:
        return False
    hole = not HOLES.isdisjoint(before.norms)
    dug = before.verb.verb.plain in ("dig", "make")
    it = bool(before.bins) and not IT.isdisjoint(group.norms)  # "for Birch and tipped it in"
    return dug and hole and group.norms[-1] in ("in", "it", "there") and (it or _is_object(group))


def _is_ground_itself(group: Group) -> bool:
    """ "Dug the garden over": the name is that of the ground."""
    return (
        all(b.place and not b.plain and (b.name or "").lower() in GROUND for b in group.bins)
        and "contents" not in group.norms
    )


def _is_object(group: Group) -> bool:
    """Whether the verb is done to the bin itself ("emptied the shed into ...")."""
    assert group.verb is not None
    norms, at = group.message.norms, group.verb.end
    while at < group.end and norms[at] in (
        "the",
        "our",
        "my",
        "out",
        "whole",
        "in",
        "contents",
        "of",
        "up",
        "all",
    ):
        at += 1
    return any(b.start <= at < b.end for b in group.bins)


def _surely(groups: Sequence[Group], k: int, norms: set[str]) -> str | None:
    group = groups[k]
    if any(not _is_only_near(group, b) for b in group.bins):
        return "a bin was buried"
    means_it = not norms.isdisjoint(
        {"it", "that", "contents", "lot", "them", "stuff", "batch", "everything", "this"}
    )
    known = any(g.bins for g in groups) or group.message.context.after_bot
    if means_it and known:
        return "it was buried"
    if groups[k].message.context.in_room and _REST.search(groups[k].text()):
        return "the rest of a bin was buried"
    place = _words_of_place(group)
    if (means_it or place) and is_of_unnamed_bin(groups, k, place):
        return "a bin not named was buried"
    return None


def _is_only_near(group: Group, ref: BinRef) -> bool:
    """ "Buried it behind the garage": a room that only says where."""
    if group.verb is None or ref.plain or not ref.place or ref.start < group.verb.end:
        return False
    norms = group.message.norms
    before = norms[max(group.verb.end, ref.start - 3) : ref.start]
    return not _BESIDE.isdisjoint(before) and before[-1:] != ["of"]


_BESIDE = UNDER | words_in("by next along against beside beyond outside")


def _words_of_place(group: Group) -> frozenset[int]:
    """Indexes of the words from the first word of place on, where they name ground or a plant."""
    assert group.verb is not None
    norms = group.message.norms
    for i in range(group.verb.end, group.end):
        if norms[i] not in PLACE:
            continue
        words = set(norms[i : group.end])
        near = any(b.start > i for b in group.bins)
        found = near or not words.isdisjoint(GROUND | GREEN)
        return frozenset(range(i, group.end)) if found else frozenset()
    return frozenset()
