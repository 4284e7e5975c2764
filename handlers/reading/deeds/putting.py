"""Whether a verb tells that scraps went into a bin: "added 2 kg", "the shed got 850 g of peel"."""

from collections.abc import Sequence

from handlers.reading.doubts.lookalikes import (
    ANIMALS,
    GIVEAWAY,
    NO_CARRYING,
    has_other_target,
    has_scrap,
    is_gift,
    is_other_talk,
    leaves_bin,
    names_other_thing,
)
from handlers.reading.food.quantities import scrap_amounts
from handlers.reading.groups import Group
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

_STRONG = frozenset(
    {"add", "chuck", "toss", "dump", "throw", "bung", "lob", "sling", "fling", "scrape", "deposit",
     "contribute", "put", "tip", "pour", "shove", "stuff", "hoy", "lash", "top up", "tip in",
     "pile",
     "log", "record", "plonk", "layer", "donate", "echar", "feed"}
)  # fmt: skip
_ADDING = frozenset({"add", "feed", "top up", "top", "tip in"})
_NEEDS_BIN = frozenset({"feed", "give", "come", "leave", "do", "bring", "go", "top"})


def put_in(groups: Sequence[Group], k: int) -> str | None:
    """The rule by which the verb of the k-th group tells of a layer; None if it does not."""
    group = groups[k]
    assert group.verb is not None
    verb = group.verb.verb
    if leaves_bin(group) or ("layer" not in verb.classes and not _carried_to_bin(group)):
        return None
    said = bool(scrap_amounts(group)) or any(not i.absent for i in group.items)
    if verb.plain in _GETTING and _bin_got(group):
        if names_other_thing(group) and not any(b.plain for b in group.bins):
            return None
        return "a bin got scraps" if said else None
    if verb.plain in _GETTING and not _is_goal(group):
        return None
    if group.bins:
        return _into_bin(group, verb.plain, said)
    behind = group.message.norms[group.verb.end : group.verb.end + 1]
    if verb.plain in ("feed", "give") and behind == ["it"] and scrap_amounts(group):
        return "it was fed" if any(g.bins for g in groups[:k]) else None
    if has_other_target(group) or not said:
        return None
    if any(other.inherited is group and other.bins for other in groups[k + 1 :]):
        return "its bin is named behind"
    return None if verb.plain in _NEEDS_BIN else _strong_without_bin(groups, k, verb.plain)


_GETTING = frozenset({"get", "take", "receive", "have", "eat"})


def _leads(group: Group) -> bool:
    """Whether a bin stands as the one that does what the verb says."""
    assert group.verb is not None
    norms, start = group.message.norms, group.verb.start
    return any(
        b.end <= start
        and all(w in _HELPING for w in norms[b.end : start])
        and norms[b.start - 1 : b.start] not in (["in"], ["to"], ["into"], ["from"])
        for b in group.bins
        if b.name is not None or b.plain
    )


_HELPING = words_in(
    "has had just also already now only today yesterday 's have again and finally been is was"
)


def _is_goal(group: Group) -> bool:
    """Whether a bin is where the thing went: "in", "into" or "to" it."""
    norms = group.message.norms
    return any(
        not _GOAL.isdisjoint(norms[max(group.start, b.start - 2) : b.start])
        and norms[b.start - 1 : b.start] != ["of"]
        for b in group.bins
    )


_GOAL = words_in("in into to inside onto → en dans sa via")


def _carried_to_bin(group: Group) -> bool:
    """A verb that is no word of putting, but whose amount of scraps went to a bin."""
    assert group.verb is not None
    word = group.message.norms[group.verb.start]
    if group.verb.verb.plain in _MAKING and not has_scrap(group):
        return False
    if (
        word in NO_CARRYING
        or "bury" in group.verb.verb.classes
        or not _is_goal(group)
        or not (scrap_amounts(group) or has_scrap(group))
    ):
        return False
    return any(b.plain or not b.place for b in group.bins) or has_scrap(group)


_MAKING = frozenset({"make", "mix up", "brew", "prepare", "prep", "ferment"})


def _bin_got(group: Group) -> bool:
    """ "Old green got 850 g of gristle": the bin itself is what the verb is said of."""
    liquid = group.message.liquid(group.start, group.end)
    return _leads(group) and bool(scrap_amounts(group)) and not liquid


def _into_bin(group: Group, plain: str, said: bool) -> str | None:
    room = all(b.place and not b.plain for b in group.bins)
    dictated = plain in ("log", "record", "note")
    if room and is_building(group):
        return None
    if room and not (dictated or _is_goal(group) or _is_fed(group) or _lies_behind(group)):
        return None
    if said:
        if _is_only_moved(group, plain):
            return None
        if _is_storage(group) or (plain in _NEEDS_BIN and not _enough(group)):
            return None
        if plain in ("feed", "give") and not ANIMALS.isdisjoint(group.norms):
            return None
        return "scraps went into a bin"
    if plain in _ADDING and not _lid(group) and _names_only_bin(group):
        return "a bin was fed"
    if plain == "scrape" and not {"plates", "plate", "dishes", "dish", "pans"}.isdisjoint(
        group.norms
    ):
        return "plates were scraped"
    return None


def _names_only_bin(group: Group) -> bool:
    """ "Added to the shed": between the verb and a room there is no other thing."""
    assert group.verb is not None
    if any(b.plain for b in group.bins):
        return True
    first = min((b.start for b in group.bins if b.start >= group.verb.end), default=group.verb.end)
    held = indexes(group.days)
    between = {*unheld(group.message.norms, held, group.verb.end, first)}
    return between <= _TO_BIN


_TO_BIN = words_in("to in into the our up it some more stuff a bit again another lot layer with")


def is_building(group: Group) -> bool:
    """ "Dumped 30 kg of gravel in the yard": stuff that is never scraps."""
    return not _STUFF.isdisjoint(group.norms) and not has_scrap(group)


_STUFF = words_in(
    "gravel sand cement concrete mortar plaster topsoil turf tarmac bricks rubble paint varnish "
    "bitumen resin tiles timber firewood diesel petrol clothes books blankets furniture "
    "batteries fertiliser fertilizer detergent luggage parcels"
)


def _is_fed(group: Group) -> bool:
    """Whether the bin stands right behind the verb ("fed the shed", "gave the shed 2 kg")."""
    assert group.verb is not None
    norms, at = group.message.norms, group.verb.end
    return any(
        b.start == at or (b.start == at + 1 and norms[at] in ("the", "our", "up"))
        for b in group.bins
    )


def _lies_behind(group: Group) -> bool:
    """Whether the bin is named in a clause of its own, as in a list ("added 2 kg, shed")."""
    return any(_is_listed(group, b) for b in group.bins)


def _is_listed(group: Group, ref: BinRef) -> bool:
    norms = group.message.norms
    before = norms[ref.start - 1] if ref.start > group.start else ""
    after = norms[ref.end] if ref.end < len(norms) else ""
    if not before:
        return after in ("", ",", ":", "-", "(")
    if before in (",", ":", "(", "-") or after == ":":
        return True
    if norms[ref.start - 2 : ref.start] in ([",", "the"], ["on", "the"], ["at", "the"]):
        return True
    return ref.end == group.end and before not in _BEFORE_A_PLACE


_BEFORE_A_PLACE = words_in("for the of from my near by behind outside")


_MOVERS = frozenset(
    {"take", "bring", "carry", "send", "move", "transfer", "come", "have", "get", "go"}
)
_KEEPERS = frozenset({"keep", "leave"})


def _is_only_moved(group: Group, plain: str) -> bool:
    """ "Took 5 kg of rice to the school": food that was carried to a place, not scraps to a bin."""
    if has_scrap(group) or any(b.plain or not b.place for b in group.bins):
        return False
    norms = group.message.norms
    within = any(
        not {"in", "into", "inside"}.isdisjoint(norms[max(group.start, b.start - 2) : b.start])
        for b in group.bins
    )
    if plain == "give":
        return bool(group.solids()) or names_other_thing(group)
    exact = any(a.quantity == "mass" for a in scrap_amounts(group))
    return (plain in _MOVERS and not within) or (plain in _KEEPERS and not (within and exact))


def _enough(group: Group) -> bool:
    """Whether a weak verb ("left 2 kg of peel in the shed") is borne out by scraps or a bin."""
    return bool(scrap_amounts(group)) or has_scrap(group) or any(b.plain for b in group.bins)


def _lid(group: Group) -> bool:
    return not {"lid", "lids", "bran", "water", "weight", "plate", "label", "sticker"}.isdisjoint(
        group.norms
    )


def _is_storage(group: Group) -> bool:
    """Food set down in a place that shares a bin's name ("left a loaf in the kitchen")."""
    if any(b.plain for b in group.bins):
        return False
    if is_gift(group) or not _FURNITURE.isdisjoint(group.norms):
        return True
    norms = group.message.norms
    room = all(b.place for b in group.bins)
    definite = any(norms[a.start - 1 : a.start] == ["the"] for a in scrap_amounts(group))
    if room and definite and group.solids() and not has_scrap(group):
        return True  # "put the 5 lb of chicken in the larder"
    if scrap_amounts(group) or has_scrap(group):
        return not GIVEAWAY.isdisjoint(group.norms)
    return any(norms[b.start - 1 : b.start] in (["the"], ["our"]) for b in group.bins)


_FURNITURE = words_in("floor table door wall worktop counter steps")


def _strong_without_bin(groups: Sequence[Group], k: int, plain: str) -> str | None:
    group = groups[k]
    if (plain not in _STRONG and group.message.bins == ()) or _is_as_it_was(group):
        return None
    context = group.message.bins or group.message.bot
    if is_other_talk(group) and not (context and has_scrap(group)):
        return None
    if group.norms[:1] and "on" in group.norms and plain == "put" and not has_scrap(group):
        return None
    if has_scrap(group):
        return "scraps were put in"
    if plain in ("add", "log", "top up", "record", "deposit") and scrap_amounts(group):
        if names_other_thing(group) and not context:
            return None
        return "an amount was added"
    again = plain in _STRONG and _goes_on(groups[:k]) and not names_other_thing(group)
    if scrap_amounts(group) and ((group.items and context) or _in_particle(group) or again):
        return "an amount was put in"
    return None


def _is_as_it_was(group: Group) -> bool:
    """ "About 2 litres, mixed cooked stuff": the word tells what they were, and no deed."""
    verb = group.verb
    mixed = verb is not None and group.message.norms[verb.start] == "mixed"
    return mixed and verb is not None and any(i.start == verb.end for i in group.items)


def _goes_on(before: Sequence[Group]) -> bool:
    """ "Tom put 2 kg in blue on the 9th, on the 11th Priya put 1.8": the bin was named before."""
    return any(
        g.sense == "did" and g.bins and g.verb is not None and "layer" in g.verb.verb.classes
        for g in before
    )


def _in_particle(group: Group) -> bool:
    """ "Put 2 kg in": the word for into stands with nothing behind it."""
    norms = group.message.norms
    for i in range(group.start, group.end):
        if norms[i] in ("in", "into"):
            after = norms[i + 1] if i + 1 < group.end else ""
            if (
                not after
                or not after[0].isalpha()
                or after in ("there", "it", "today", "this", "last")
            ):
                return True
            if any(a.start == i + 1 for a in group.amounts):
                return True
    return False
