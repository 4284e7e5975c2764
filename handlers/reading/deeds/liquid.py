"""Liquid drawn off a bin, told with a verb ("drained 200 ml") or without ("0.3 L out")."""

from collections.abc import Sequence

from handlers.reading.acts import Drain
from handlers.reading.deeds.told import bin_of
from handlers.reading.deeds.toldday import day_of, is_ahead
from handlers.reading.deeds.unnamed import is_of_unnamed_bin, names_nothing_else
from handlers.reading.food.ofwhat import is_drawn, of_what
from handlers.reading.food.quantities import scrap_amounts
from handlers.reading.groups import Group
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.retold import result_of, without_restated
from handlers.reading.message import Message
from handlers.reading.people.doers import member_of
from handlers.reading.words.once import once
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_STRONG = frozenset({"drain", "drian", "drain off", "draw off", "run off", "pour off", "siphon",
                     "syphon", "tap", "bleed", "drenar", "na drain", "sacar", "ablassen",
    "decant", "take off"})  # fmt: skip
_OTHER_LIQUIDS = words_in(
    "pasta rice beans chickpeas tuna radiator radiators boiler tank pond pool bath sink "
    "battery wallet account swamp field pipes pipe gutter gutters water-butt beer beers ale "
    "lager darts pub fridge freezer washing dishwasher oil engine potatoes spaghetti noodles "
    "diesel petrol knee blister wound lung chest rain rainwater "
    "tin tins paddling wine squad energy heating system hot-tub lake phone brakes fat milk "
    "blood"
)
_OFF = words_in("from off out of")
_IN = words_in("in into")
_MEANT = frozenset({"it", "its", "them", "mine", "everything"})


def drain_of(groups: Sequence[Group], k: int) -> Drain | None:
    """The draining that the k-th group tells of, if it does."""
    group = groups[k]
    if is_ahead(group):
        return None
    rule = _by_verb(groups, k) if group.verb is not None else _without_verb(groups, k)
    return None if rule is None else drain_from(groups, k, rule)


def drain_from(groups: Sequence[Group], k: int, rule: str) -> Drain:
    """The draining with what the k-th group and its neighbours say of it."""
    return Drain(
        volume_l=litres(drawn(groups[k])),
        bin=bin_of(groups, k),
        member=member_of(groups, k),
        on=day_of(groups, k),
        rules=(rule,),
    )


def drain_of_whole(whole: Group) -> float | None:
    """Litres drawn off, where a report over several clauses is one of draining; else None."""
    amounts = drawn(whole)
    if not amounts or whole.solids() or not _OTHER_LIQUIDS.isdisjoint(whole.free):
        return None
    if not any(b.name is not None or b.plain for b in whole.bins):
        return None
    if _names_liquid(whole) or _off_bin(whole) or _at_the_tap(whole) or "drained" in whole.norms:
        return litres(amounts)
    return None


@once
def drawn(group: Group) -> list[Amount]:
    """Amounts of liquid in the group; an ounce of liquid is one of volume."""
    out = [
        a
        for a in group.measured()
        if (not a.negative or len(group.norms) <= _LEDGER)  # "shed -1 qt"
        and (a.quantity == "volume" or a.liquid_l is not None)
        and of_what(group.message, a) not in ("bran", "water")
        and not _sizes_new_bin(group, a)
        and not _thins(group.message.norms, a)
        and not _is_set_under(group.message.norms, a)
    ]
    if len(out) < 2:
        return out
    if any(not a.size for a in out):
        out = [a for a in out if not a.size]
    norms = group.message.norms
    out = [a for a in out if not a.start or norms[a.start - 1] not in ("into", "in")] or out
    out = result_of(norms, without_restated(norms, out))
    exact = _said_twice([a for a in out if not a.vessel])
    out = [a for a in out if a.vessel or a in exact]
    came_out = [a for a in out if is_drawn(group.message, a)]
    came_out = [a for a in out if a in came_out or _goes_on(group, came_out, a)]
    return [a for a in came_out if not a.vessel] or exact or came_out or out


def is_only_set_under(message: Message) -> bool:
    """ "The tap leaks, I put a bowl under": nothing is measured but what is to catch the drips."""
    measured = message.measured()
    return bool(measured) and all(_is_set_under(message.norms, a) for a in measured)


def _is_set_under(norms: Sequence[str], amount: Amount) -> bool:
    """ "Put a bowl under": what is to catch the drips, and nothing drawn off as yet."""
    return amount.vessel and not _BENEATH.isdisjoint(norms[amount.end : amount.end + 1])


_BENEATH = words_in("under underneath below beneath")
_LEDGER = 5
"""Words in an entry as of a ledger, where a minus says that it came out, at most."""


def _goes_on(group: Group, drawn_off: Sequence[Amount], amount: Amount) -> bool:
    """ "3 cups off the shed on Sunday and another today": told behind one that was drawn off."""
    held, norms = indexes(group.bins, group.days, group.message.members), group.message.norms
    return any(
        before.end < amount.start
        and _AND.issuperset(norms[i] for i in range(before.end, amount.start) if i not in held)
        for before in drawn_off
    )


_AND = words_in("and + & plus then another again only just n , off from the out of on i we me")


def _thins(norms: Sequence[str], amount: Amount) -> bool:
    """ "Mixed with 20 gallons": what the liquid was thinned with."""
    lead = norms[max(0, amount.start - 4) : amount.start]
    return not {"with", "in", "into", "to"}.isdisjoint(lead) and not _THINNED.isdisjoint(lead)


_THINNED = words_in("mixed diluted thinned dilute mix cut watered")


def _said_twice(amounts: list[Amount]) -> list[Amount]:
    """ "Half a litre off the shed, 500 ml": one amount in two units counts as it was said last."""
    if len(amounts) != 2:
        return amounts
    first, second = amounts
    other_unit = first.factor != second.factor and bool(first.factor and second.factor)
    alike = abs(first.value - second.value) <= _SAME * first.value
    return [second] if other_unit and alike else amounts


_SAME = 0.12
"""Two figures of one amount, rounded, differ by no more."""


def _sizes_new_bin(group: Group, amount: Amount) -> bool:
    """ "Into the new green bin, 30 L": the size of a bin, not what came out of one."""
    norms = group.message.norms
    return any(
        b.end <= amount.start <= b.end + 1 and "new" in norms[max(0, b.start - 1) : b.end]
        for b in group.bins
    )


def litres(amounts: Sequence[Amount]) -> float | None:
    """The amounts of liquid added up, in litres; None if there is none."""
    if not amounts:
        return None
    return sum(a.value if a.liquid_l is None else a.liquid_l for a in amounts)


def _by_verb(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    assert group.verb is not None
    verb = group.verb.verb
    if group.sense != "did":
        return None
    if "drain" in verb.classes and verb.plain in _STRONG:
        return _drained(groups, k)
    return _taken(groups, k)


def _drained(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    if not _OTHER_LIQUIDS.isdisjoint(group.free):
        return None
    if group.inherited is not None and not drawn(group) and scrap_amounts(group):
        return None  # "drained blue half a litre, 2 kg of veg to the shed"
    if group.bins or _names_liquid(group):
        return "a bin was drained"
    before = any(g.bins for g in groups[:k])
    close = not group.solids() and len(group.norms) <= 12
    plain = group.verb is not None and group.verb.verb.plain in ("drain", "drain off", "draw off")
    first = group.verb is not None and any(a.start > group.verb.start for a in drawn(group))
    if (
        drawn(group)
        and plain
        and (before or (close and first))
        and (group.bins or before or names_nothing_else(group))
    ):
        return "an amount was drained"
    if before and plain and not group.solids():
        return "it was drained"
    if plain and _shares_its_bin(groups, k):
        return "drained, and what was done next"
    if plain and not _MEANT.isdisjoint(group.norms) and is_of_unnamed_bin(groups, k):
        return "a bin not named was drained"
    return None


def _shares_its_bin(groups: Sequence[Group], k: int) -> bool:
    """ "Drained and sealed the shed": nothing stands between the two verbs of one bin."""
    group, after = groups[k], groups[k + 1 : k + 2]
    bare = group.verb is not None and group.norms[-1:] == ["drained"]
    return bare and bool(after) and bool(after[0].bins) and after[0].clauses[0].joint in _SHARING


_SHARING = words_in("and & n then +") | {","}


def _names_liquid(group: Group) -> bool:
    return group.message.liquid(group.start, group.end)


def _taken(groups: Sequence[Group], k: int) -> str | None:
    """ "Got 750 ml of juice out of big blue", "took off a quart of liquid"."""
    group = groups[k]
    amounts = drawn(group)
    if not amounts:
        return None
    liquid = any(of_what(group.message, a) == "liquid" for a in amounts) or _names_liquid(group)
    off = _off_bin(group)
    if _is_given_by_bin(group):
        return "a bin gave liquid"
    norms, start = group.message.norms, group.start
    if not liquid and "water" in norms[max(0, start - 1) : start + 1]:
        return None
    if off and (liquid or not group.solids()):
        return "liquid came out of a bin"
    if liquid and (group.bins or any(g.bins for g in groups[:k])) and not _goes_in(group):
        return "liquid was taken"
    if k > 0 and _at_the_tap(groups[k - 1]) and not group.solids() and groups[k - 1].sense == "did":
        return "the tap was opened"
    if _verb_plain(group) == "run" and _at_the_tap(group) and group.bins:
        return "the tap ran"
    if _at_the_tap(group) and group.bins and not group.solids():
        return "the tray was emptied"
    before = k > 0 and groups[k - 1].sense == "did" and _drains(groups[k - 1])
    if before and not group.solids() and not group.bins:
        return "the liquid that was drained"
    return None


def _verb_plain(group: Group) -> str:
    """The plain form of the group's verb, or nothing."""
    return "" if group.verb is None else group.verb.verb.plain


def _drains(group: Group) -> bool:
    return bool(group.bins) and group.verb is not None and group.verb.verb.plain in _STRONG


def _at_the_tap(group: Group) -> bool:
    return not {"tap", "spigot", "tray", "valve", "spout"}.isdisjoint(group.norms)


def _is_given_by_bin(group: Group) -> bool:
    """ "Tall Paul gave up 900 ml"."""
    assert group.verb is not None
    gives = group.verb.verb.plain in ("give", "give up", "yield", "produce", "release")
    return gives and not group.solids() and any(b.end <= group.verb.start for b in group.bins)


_FLUID = words_in(
    "ml mls mil mils millilitre millilitres milliliter milliliters cl floz oz mililitros"
)


def _is_fluid(group: Group) -> bool:
    """Whether the amount is in a unit that people keep for liquids, and nothing says "in"."""
    norms = group.message.norms
    fluid = all(norms[a.end - 1] in _FLUID and a.quantity == "volume" for a in drawn(group))
    return fluid and {"in", "into", "to", "+", "→", "added"}.isdisjoint(group.norms)


def _goes_in(group: Group) -> bool:
    norms = group.message.norms
    return any(
        norms[i] in ("in", "into", "to", "on")
        for b in group.bins
        for i in range(max(0, b.start - 2), b.start)
    )


def _off_bin(group: Group) -> bool:
    norms = group.message.norms
    leads = [norms[max(group.start, b.start - 3) : b.start] for b in group.bins]
    return any(not _OFF.isdisjoint(lead) and _IN.isdisjoint(lead) for lead in leads)


def _without_verb(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    amounts = drawn(group)
    if not amounts or group.sense != "none":
        return None
    liquid = any(of_what(group.message, a) == "liquid" for a in amounts) or _names_liquid(group)
    bins = bool(group.bins) or any(g.bins for g in groups)
    if not bins or not _OTHER_LIQUIDS.isdisjoint(group.free):
        return None
    if group.inherited is not None and group.inherited.sense == "did":
        return None
    if _off_bin(group) and (liquid or not group.solids()):
        return "liquid from a bin"
    if group.norms[-1:] == ["out"] or "drained" in group.norms:
        return "so much out"
    if group.bins and _is_fluid(group) and not group.solids() and not _goes_in(group):
        return "so many millilitres"
    if liquid and group.bins and not _goes_in(group) and not group.solids():
        return "liquid and a bin"
    return None


def is_of_fat(message: Message) -> bool:
    """ "8 oz of bacon grease in the shed, drained off": said of the fat, and not of the bin."""
    if not message.has(DRAINED) or not message.items or message.liquid():
        return False
    behind = [c for c in message.clauses if message.norms[c.start] in DRAINED]
    bare = all(c.end - c.start == 1 or message.norms[c.start + 1] == "off" for c in behind)
    return bool(behind) and bare and all(i.food.shares[0][0] == "oil" for i in message.items)


DRAINED = words_in("drained")
