"""Layers: scraps that went into a bin, told with a verb ("added 2 kg") or without one."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Layer
from handlers.reading.deeds.notburied import is_inside
from handlers.reading.deeds.putting import is_building, put_in
from handlers.reading.deeds.told import bin_of
from handlers.reading.deeds.toldday import day_of, is_ahead
from handlers.reading.doubts.lookalikes import (
    NO_CARRYING,
    comes_out,
    has_scrap,
    is_between_bins,
    is_given_away,
    is_only_near,
    is_other_matter,
    is_other_talk,
    is_told_of_room,
    names_other_thing,
)
from handlers.reading.food.items import Item
from handlers.reading.food.makeups import Makeup
from handlers.reading.food.quantities import amount_sum, is_of_naught, makeup_of, scrap_amounts
from handlers.reading.groups import Group
from handlers.reading.people.doers import member_of
from handlers.reading.words.vocabulary import LEFTOVERS_RICH

WITHIN = "scraps were laid under others in a bin"


def layer_of(groups: Sequence[Group], k: int) -> Layer | None:
    """The layer that the k-th group tells of, if it does."""
    group = groups[k]
    if is_ahead(group) or not _is_told(group):
        return None
    if not group.message.context.in_room and group.is_naught():
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
    return put_in(groups, k) if group.verb is not None else _without_verb(groups, k)


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


def _without_verb(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    amounts = scrap_amounts(group)
    present = [i for i in group.items if not i.absent]
    if _same_again(group) and (group.bins or not present):
        return "same again"
    if comes_out(group) or is_other_matter(group) or _is_done_with(group):
        return None
    if group.bins and all(b.place and not b.plain for b in group.bins) and is_building(group):
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
