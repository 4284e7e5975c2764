"""Layers: scraps that went into a bin, told with a verb ("added 2 kg") or without one."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Layer
from handlers.reading.buried import is_inside
from handlers.reading.doers import member_of
from handlers.reading.groups import Group
from handlers.reading.lookalikes import (
    ANIMALS,
    GIVEAWAY,
    NO_CARRYING,
    comes_out,
    has_other_target,
    has_scrap,
    is_between_bins,
    is_gift,
    is_given_away,
    is_only_near,
    is_other_matter,
    is_other_talk,
    is_told_of_room,
    leaves_bin,
    names_other_thing,
)
from handlers.reading.materials import Item, Makeup
from handlers.reading.names import BinRef
from handlers.reading.quantities import amount_sum, is_of_naught, makeup_of, scrap_amounts
from handlers.reading.spans import indexes
from handlers.reading.told import bin_of, day_of, is_ahead
from handlers.reading.vocabulary import LEFTOVERS_RICH, words_in

_STRONG = frozenset(
    {"add", "chuck", "toss", "dump", "throw", "bung", "lob", "sling", "fling", "scrape", "deposit",
     "contribute", "put", "tip", "pour", "shove", "stuff", "hoy", "lash", "top up", "tip in",
     "pile",
     "log", "record", "plonk", "layer", "donate", "echar", "feed"}
)  # fmt: skip
WITHIN = "scraps were laid under others in a bin"
_ADDING = frozenset({"add", "feed", "top up", "top", "tip in"})
_NEEDS_BIN = frozenset({"feed", "give", "come", "leave", "do", "bring", "go", "top"})
_INTO = words_in("in into to onto inside at for from")


def layer_of(groups: Sequence[Group], k: int) -> Layer | None:
    """The layer that the k-th group tells of, if it does."""
    group = groups[k]
    if is_ahead(group) or not _is_told(group):
        return None
    if group.is_naught() and not group.message.context.in_room:
        return None
    if is_of_naught(group) or is_between_bins(group):
        return None
    rule = _rule(groups, k)
    if rule is None:
        return None
    act = layer_from(groups, k, rule)
    if act.mass_kg is None and act.volume_l is None:
        if _is_of_signs(group):
            return None
        if makeup_of(group) is None and not _without_amount(rule) and not group.is_naught():
            return None
    if rule == "plates were scraped" and makeup_of(group) is None:
        return replace(act, materials={"cooked": 1.0}, rich=LEFTOVERS_RICH)
    return act


def layer_from(groups: Sequence[Group], k: int, rule: str) -> Layer:
    """The layer with what the k-th group and its neighbours say of it."""
    mass, volume = amount_sum(scrap_amounts(groups[k]))
    made = makeup_of(groups[k]) or _same_things(groups, k)
    return Layer(
        mass_kg=mass,
        volume_l=volume,
        materials={"mixed": 1.0} if made is None else made.shares,
        rich=None if made is None else made.rich,
        bin=bin_of(groups, k),
        member=member_of(groups, k),
        on=day_of(groups, k),
        rules=(rule,),
    )


def _same_things(groups: Sequence[Group], k: int) -> Makeup | None:
    """ "Niall put 3 lb of plums in plot 9 and I put 2 lb in the shed": plums again."""
    group = groups[k]
    if not k or group.items or group.verb is None or not scrap_amounts(group):
        return None
    before, joint = groups[k - 1], group.clauses[0].joint
    same = before.verb is not None and before.verb.verb.plain == group.verb.verb.plain
    return makeup_of(before) if same and joint == "and" and scrap_amounts(before) else None


def _is_of_signs(group: Group) -> bool:
    """ "Got fuzzy blue stuff in bin 3": what is in there grew there."""
    seen = any(s.plain and group.start <= s.start < group.end for s in group.message.signs)
    return seen and all(item.generic for item in group.items)


def _rule(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    if group.inherited is not None and scrap_amounts(group):
        before = next((j for j in range(k) if groups[j] is group.inherited), None)
        if before is not None and not comes_out(group) and layer_of(groups, before) is not None:
            return "and another amount"
    if is_inside(group):
        return WITHIN
    return _by_verb(groups, k) if group.verb is not None else _without_verb(groups, k)


def _without_amount(rule: str) -> bool:
    return rule in ("a bin was fed", "same again", "plates were scraped")


def _is_told(group: Group) -> bool:
    if group.verb is None:
        return group.sense == "none"
    if group.sense == "order":
        return _is_dictated(group)
    return group.sense == "did"


def _is_dictated(group: Group) -> bool:
    """ "Bot, add 2 kg to the shed", "log 2 kg meat shed": the bot is told to write it down."""
    assert group.verb is not None
    asked = not {"please", "pls", "kindly", "plz"}.isdisjoint(group.norms)
    writes = group.verb.verb.plain in ("log", "record", "note") or (
        asked and group.verb.verb.plain == "add" and not group.message.members
    )
    return writes or bool(group.message.bot) or group.message.context.after_bot


def _by_verb(groups: Sequence[Group], k: int) -> str | None:
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
    if room and _is_building(group):
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
    between = {group.message.norms[i] for i in range(group.verb.end, first) if i not in held}
    return between <= _TO_BIN


_TO_BIN = words_in("to in into the our up it some more stuff a bit again another lot layer with")


def _is_building(group: Group) -> bool:
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
    if is_gift(group):
        return True
    norms = group.message.norms
    room = all(b.place and not b.plain for b in group.bins)
    definite = any(norms[a.start - 1 : a.start] == ["the"] for a in scrap_amounts(group))
    if room and definite and group.solids() and not has_scrap(group):
        return True  # "put the 5 lb of chicken in the larder"
    floor = not {"floor", "table", "door", "wall", "worktop", "counter", "steps"}.isdisjoint(
        group.norms
    )
    if floor and not any(b.plain for b in group.bins):
        return True
    if any(b.plain for b in group.bins) or scrap_amounts(group) or has_scrap(group):
        return not GIVEAWAY.isdisjoint(group.norms) and not any(b.plain for b in group.bins)
    norms = group.message.norms
    return any(norms[b.start - 1 : b.start] in (["the"], ["our"]) for b in group.bins)


def _strong_without_bin(groups: Sequence[Group], k: int, plain: str) -> str | None:
    group = groups[k]
    if plain not in _STRONG and group.message.bins == ():
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


def _without_verb(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    amounts = scrap_amounts(group)
    present = [i for i in group.items if not i.absent]
    if _same_again(group) and (group.bins or not present):
        return "same again"
    if comes_out(group) or is_other_matter(group) or _is_done_with(group):
        return None
    if group.bins and all(b.place and not b.plain for b in group.bins) and _is_building(group):
        return None
    if group.bins and amounts:
        return _amount_and_bin(group, present)
    if group.bins and present:
        return _things_and_bin(group, present)
    if amounts and has_scrap(group) and not is_other_talk(group):
        return "an amount of scraps" if not is_given_away(group) else None
    goes_in = group.norms[-1:] == ["in"] and any(g.bins for g in groups[:k])
    if amounts and goes_in:
        return "so much in"
    if amounts and present and _bin_is_near(groups, k) and not is_other_talk(group):
        return "an amount for the bin named before"
    return None


def _is_done_with(group: Group) -> bool:
    """ "Cooked 2 kg of rice": a verb of other things, though the word also describes food."""
    at = group.start + 1
    return group.norms[0] in NO_CARRYING and any(a.start == at for a in group.amounts)


def _same_again(group: Group) -> bool:
    text = " ".join(group.norms)
    return text.startswith(
        ("same again", "same for", "ditto", "same amount", "another lot")
    ) and bool(group.bins)


def _amount_and_bin(group: Group, present: Sequence[Item]) -> str | None:
    plain = any(b.plain or b.known for b in group.bins)
    norms = group.message.norms
    into = any(
        norms[max(0, b.start - 2) : b.start][:1] == ["into"] or norms[b.start - 1] == "into"
        for b in group.bins
    )
    if not plain or (is_other_talk(group) and not has_scrap(group) and not into):
        return None
    if (is_only_near(group) or is_told_of_room(group)) and not has_scrap(group):
        return None
    if present:
        return "an amount of scraps and a bin"
    return None if names_other_thing(group) else "an amount and a bin"


def _things_and_bin(group: Group, present: Sequence[Item]) -> str | None:
    norms = group.message.norms
    if is_other_talk(group) or is_given_away(group):
        return None
    into = any(
        (
            norms[b.start - 1 : b.start]
            and norms[b.start - 1] in ("in", "into", "to", "→", "inside", "for")
        )
        or norms[max(0, b.start - 2) : b.start][:1] == ["into"]
        for b in group.bins
    )
    if all(item.food.name in ("stuff", "mix", "food", "gunk") for item in present):
        return None
    thing = has_scrap(group)
    if thing and (into or any(b.known for b in group.bins)):
        return "scraps and a bin"
    into_the = any({"into", "→"} & set(norms[max(0, b.start - 2) : b.start]) for b in group.bins)
    return "things into a bin" if into_the else None


def _bin_is_near(groups: Sequence[Group], k: int) -> bool:
    """Whether the group just before named nothing but a bin ("Shed:") or told of a layer."""
    if k == 0:
        return False
    before = groups[k - 1]
    return bool(before.names()) and len(before.norms) <= 4
