"""Observations: what was seen, smelt or measured in a bin."""

from collections.abc import Sequence
from datetime import date
from itertools import pairwise

from handlers.practice.signs import Sign
from handlers.reading.acts import Observe
from handlers.reading.deeds.told import bin_of
from handlers.reading.deeds.toldday import day_of, is_ahead
from handlers.reading.deeds.unnamed import is_seen_in_unnamed_bin
from handlers.reading.groups import Group
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.dials import (
    STRIPS,
    THERMOMETERS,
    acidity,
    is_fever,
    is_read_off,
    warmth,
)
from handlers.reading.message import Message
from handlers.reading.signs.otherthings import is_of_other_things
from handlers.reading.signs.saidofit import is_said_of_it
from handlers.reading.signs.seen import Seen
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_TOLD = frozenset({"none", "did", "habit"})
_CRAFT = words_in(
    "lid lids scraps bran tap spigot leachate bokashi mould mold ferment fermenting contents layer"
)
_THERMOMETER = words_in(
    "temp temperature temps thermometer probe core inside ph reading centre center middle"
)
_PLACE_SIGNS: frozenset[Sign] = frozenset(
    {"insects", "rodents", "gas", "warm", "cold", "wet", "dry"}
)
_ABOUT_ELSE = frozenset(
    {"while", "whilst", "when", "before", "after", "because", "cos", "as", "since"}
)


def observe_of(groups: Sequence[Group], k: int) -> Observe | None:
    """What the k-th group says of a bin, if it does."""
    group = groups[k]
    if not _may_be_seen(group) or is_of_other_things(group.message):
        return None
    nothing_came = _nothing_came(group)
    untold = group.sense not in _TOLD and not _leaves_out_its_subject(group)
    if (is_ahead(group) or untold) and not nothing_came:
        return None
    waited = nothing_came and is_ahead(group)  # "not a drop in ten days": how long, not when
    context = _bin_context(groups, k)
    if context is None:
        return None
    signs = _signs(group, context)
    celsius, ph = _measures(group, context)
    if not signs and celsius is None and ph is None:
        return None
    if signs and _is_asked_about(group):
        return None
    return Observe(
        signs=tuple(dict.fromkeys(signs)),
        celsius=celsius,
        ph=ph,
        bin=bin_of(groups, k),
        on=group.message.today if waited else _seen_on(group) or day_of(groups, k),
        rules=("signs in a bin", ON_IT) if _is_said_of_it(groups, k) else ("signs in a bin",),
    )


def _leaves_out_its_subject(group: Group) -> bool:
    """ "Shed today: smell like pickles": what it does, and nothing that is ordered."""
    said = group.norms
    return group.sense == "order" and said[0] in _SMELL and said[1:2] in (["like"], ["of"])


_SMELL = words_in("smell stink reek")


def _seen_on(group: Group) -> date | None:
    """ "Flies on Sunday, so I sealed it today": the day of the clause that tells the sign, where
    the deed beside it has its own.
    """
    if len(group.days) < 2:
        return None
    signs = [s.start for s in group.message.signs]
    seen = [c for c in group.clauses if any(c.start <= i < c.end for i in signs)]
    days = [d for d in group.days if not d.aside and any(c.start <= d.start < c.end for c in seen)]
    return days[0].past if len(seen) == len(days) == 1 else None


ON_IT = "what the bin just told of is like"
"""The rule whose form is told whatever its score: "sealed the shed, it has a white mould"."""


def _is_said_of_it(groups: Sequence[Group], k: int) -> bool:
    """Whether what is seen is told of "it", right behind what was done to a bin that is named."""
    group = groups[k]
    return group.sense in _TOLD and any(
        is_said_of_it(group.message, s)
        for s in group.message.signs
        if any(c.start <= s.start < c.end for c in group.clauses)
    )


def _may_be_seen(group: Group) -> bool:
    """Whether any sign or measure is told at all."""
    message = group.message
    if message.signs or message.has(_DIALS):
        return True
    return any(a.quantity in ("celsius", "ph") for a in group.amounts)


_DIALS = THERMOMETERS | STRIPS


def observe_from(groups: Sequence[Group], k: int, rule: str) -> Observe | None:
    """What the whole message says was seen or measured, told of the bin of the k-th group."""
    message = groups[k].message
    if is_of_other_things(message):
        return None
    names = indexes(message.bins)
    signs = [s.sign for s in message.signs if not s.absent and s.start not in names]
    told = [a for a in message.amounts if a.quantity == "celsius"]
    warm = [a.value for a in [a for a in told if is_in_bin(message, a)] or told] or warmth(message)
    warm = [value for value in warm if not is_fever(message, value)]
    acid = [a.value for a in message.amounts if a.quantity == "ph"] or acidity(message)
    if not (signs or warm or acid):
        return None
    return Observe(
        signs=tuple(dict.fromkeys(signs)),
        celsius=warm[0] if warm else None,
        ph=acid[0] if acid else None,
        bin=bin_of(groups, k),
        on=day_of(groups, k),
        rules=(rule,),
    )


def _nothing_came(group: Group) -> bool:
    """ "Nothing came out": a denial that is itself what was seen."""
    return group.sense == "not" and any(
        s.sign == "no_liquid" and group.start <= s.start < group.end for s in group.message.signs
    )


def _is_asked_about(group: Group) -> bool:
    """ "Green mould in the shed, is that bad?" asks about what it tells."""
    if group.bins and any(b.name for b in group.bins):
        return False
    number = group.clauses[0].sentence
    return any(c.sense == "ask" for c in group.message.clauses if c.sentence == number)


def _bin_context(groups: Sequence[Group], k: int) -> str | None:
    """`plain` if a bin is plainly meant, `place` if its name may be a room's, else None."""
    group = groups[k]
    near = [group] if group.bins else _beside(groups, k)
    refs = [b for g in near for b in g.bins]
    if not refs:
        words = set(group.message.norms)
        mine = "mine" in words or "ours" in words
        if len(words & _CRAFT) >= (1 if mine else 2) or is_seen_in_unnamed_bin(groups, k):
            return "craft"
        return None
    if not _PARTS.isdisjoint(group.norms) or any(b.plain for b in refs) or _is_filled(near, group):
        return "plain"
    return "place" if any(b.place for b in refs) and not _is_surely_seen(group) else "name"


_GOES_ON = words_in("is was feels felt looks seems")
"""Words of a clause that leaves out its subject: "the shed smells of beer and is warm"."""
_PARTS = words_in("inside lid lids rim spigot contents grid leachate")
"""What only a bin has."""


def _is_surely_seen(group: Group) -> bool:
    """Whether the message tells of rot or mould, so that flies beside it are those of the bin."""
    return any(
        s.plain and not s.absent and s.sign not in _PLACE_SIGNS and s.sign != "much_liquid"
        for s in group.message.signs
    )


def _is_filled(near: Sequence[Group], group: Group) -> bool:
    """Whether scraps just went into what "it" stands for, or liquid came out of it, so that it must
    be a bin."""
    if {"it", "its"}.isdisjoint(group.norms) and ["in", "there"] not in map(
        list, pairwise(group.norms)
    ):
        return False
    return any(g.measured() and (g is not group or bool(g.solids()) or _is_drawn(g)) for g in near)


def _is_drawn(group: Group) -> bool:
    """ "Got a cup off the cube, it's wet in there"."""
    deed = group.verb is not None and "drain" in group.verb.verb.classes
    return deed and all(a.quantity == "volume" for a in group.measured())


def _beside(groups: Sequence[Group], k: int) -> list[Group]:
    earlier = [g for g in reversed(groups[:k]) if g.bins][:1]
    return earlier or [g for g in groups[k + 1 :] if g.bins][:1]


def _signs(group: Group, context: str) -> list[Sign]:
    out: list[Sign] = []
    for seen in group.message.signs:
        inside = any(c.start <= seen.start < c.end for c in group.clauses)
        if not inside or seen.absent or not _counts(group, seen, context):
            continue
        out.append(seen.sign)
    return out


_BURSTS = words_in("firework fireworks rocket rockets balloon balloons tyre tyres boiler bomb")
"""What bursts or hisses and is no bin."""


_DRINKS = words_in(
    "fizz champagne prosecco cava bubbly lemonade cola coke pop beer cider soda stout lager wine "
    "kombucha kefir squash perry mead"
)


_BOTTLES = words_in("bottle bottles can cans magnum keg glass pint crate case demijohn flagon")


def _is_uncorked(message: Message) -> bool:
    """ "Opened a bottle of fizz": what bursts out is a drink, unless it is only likened to."""
    norms = message.norms
    return message.has(_DRINKS) and any(
        norms[i] in _DRINKS
        and norms[i - 1] == "of"
        and norms[i - 2] in _BOTTLES
        and "like" not in norms[max(0, i - 6) : i]
        for i in range(2, len(norms))
    )


def _counts(group: Group, seen: Seen, context: str) -> bool:
    if any(b.start <= seen.start < b.end for b in group.bins):
        return False
    if seen.sign == "gas" and (group.message.has(_BURSTS) or _is_uncorked(group.message)):
        return False
    clause = next(c for c in group.clauses if c.start <= seen.start < c.end)
    if not seen.plain and clause.joint in _ABOUT_ELSE:
        return False  # "buried it while it was dry": the weather
    felt = context != "craft" and _is_felt(group, seen)
    beside = context == "craft" and seen.plain and _is_surely_seen(group)  # flies beside mould
    if context in ("place", "craft") and seen.sign in _PLACE_SIGNS and not (felt or beside):
        # a room may be dry or full of flies, but only a bin hisses
        return seen.sign == "gas" and seen.plain and any(b.end <= seen.start for b in group.bins)
    unsaid = not group.bins and group.norms[0] not in _GOES_ON
    if not (seen.plain or felt) and (context == "place" or (context == "name" and unsaid)):
        return False
    return not _of_something_else(group.message, seen)


def _is_felt(group: Group, seen: Seen) -> bool:
    """ "Shed is warm. 41 degrees", "pH 3.9, dry on top": where that is measured, a bin is meant."""
    measured = {a.quantity for a in group.message.amounts}
    if "ph" in measured:
        return seen.sign in _FELT
    warm = "celsius" in measured and seen.sign in ("warm", "cold")
    return warm and any(b.end <= seen.start for b in group.bins)


_FELT: frozenset[Sign] = frozenset({"warm", "cold", "dry", "wet"})


def _of_something_else(message: Message, seen: Seen) -> bool:
    """ "Hot soup", "a cold day", "dry rice": the word stands before the thing it describes."""
    if seen.plain:
        return False
    if any(item.start == seen.end for item in message.items):
        return True
    after = message.norms[seen.end] if seen.end < len(message.norms) else ""
    before = message.norms[seen.start - 1] if seen.start else ""
    return after in (
        "day",
        "weather",
        "morning",
        "night",
        "water",
        "today",
        "outside",
        "season",
        "week",
    ) or (before in ("something", "anything", "nice", "am"))


def _measures(group: Group, context: str) -> tuple[float | None, float | None]:
    warm = [a for a in group.amounts if a.quantity == "celsius"]
    warm = [a for a in warm if is_in_bin(group.message, a)] or warm
    acid = [a for a in group.amounts if a.quantity == "ph"]
    celsius = warm[0].value if warm and _is_of_bin(group, context) else None
    if celsius is None and not warm and context != "craft":
        celsius = _bare_reading(group)
    if celsius is not None and is_fever(group.message, celsius):
        celsius = None
    read = acidity(group.message) if is_read_off(group.message) and context != "craft" else []
    return celsius, next(iter([*(a.value for a in acid), *read]), None)


def _bare_reading(group: Group) -> float | None:
    """ "The thermometer says 18.5": °C without its sign, where a thermometer is named."""
    if THERMOMETERS.isdisjoint(group.norms):
        return None
    read = warmth(group.message, group.start, group.end)
    return read[0] if read else None


def _is_of_bin(group: Group, context: str) -> bool:
    if not _THERMOMETER.isdisjoint(group.norms):
        return True
    norms = group.message.norms
    if not {"outside", "oven", "weather", "forecast", "bake"}.isdisjoint(norms):
        return False
    subject = any(b.start == group.start or norms[group.start : b.start] in (["the"], ["checked",
                  "the"],
                  ["checked"]) for b in group.bins)  # fmt: skip
    return context == "plain" or (subject and context != "place")


def is_in_bin(message: Message, amount: Amount) -> bool:
    """Whether a measure is not said to be of the air, an oven or the like."""
    return _NOT_IN_BIN.isdisjoint(message.norms[max(0, amount.start - 2) : amount.end + 3])


_NOT_IN_BIN = words_in(
    "outside outdoors oven weather forecast air fridge freezer outdoor room kitchen water sun shade"
)


def merged(acts: Sequence[Observe]) -> list[Observe]:
    """Observations of one bin on one day are one act."""
    out: list[Observe] = []
    for act in acts:
        for i, other in enumerate(out):
            if other.bin == act.bin and other.on == act.on:
                out[i] = _join(other, act)
                break
        else:
            out.append(act)
    return out


def _join(first: Observe, second: Observe) -> Observe:
    return Observe(
        signs=tuple(dict.fromkeys((*first.signs, *second.signs))),
        celsius=first.celsius if first.celsius is not None else second.celsius,
        ph=first.ph if first.ph is not None else second.ph,
        bin=first.bin,
        on=first.on,
        rules=first.rules,
    )
