"""What other sentences of a message say of its one layer: what it was, who put it in, and when."""

from collections.abc import Sequence
from dataclasses import replace
from math import isclose

from handlers.reading.acts import Act, Bury, Layer
from handlers.reading.deeds.toldday import said_day
from handlers.reading.food.items import Item
from handlers.reading.food.makeups import makeup
from handlers.reading.grouping import groups_of
from handlers.reading.groups import Group
from handlers.reading.measures.proportions import MOST
from handlers.reading.message import Message
from handlers.reading.people.doers import member_of
from handlers.reading.words.vocabulary import words_in

_EVERY = words_in("all both each")
_PRONOUNS = words_in("it they that those these this them")
_LOOSE = frozenset({"come", "leave", "have", "get", "find", "take"})
"""Verbs that tell of scraps but not of putting them in."""
_MIXED = {"mixed": 1.0}


def described(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, a layer of no stated kind, doer or day with those told elsewhere."""
    layers = [act for act in acts if isinstance(act, Layer)]
    if len(layers) > 1:
        told = [_alike(act, layers, message) if isinstance(act, Layer) else act for act in acts]
        doer = _by_all(layers, message)
        return [replace(a, member=doer) if doer and isinstance(a, Layer) else a for a in told]
    if any(isinstance(act, Bury) for act in acts):
        return list(acts)  # "in the rose bed"
    return [_said_of(act, message) if isinstance(act, Layer) else act for act in acts]


def _alike(layer: Layer, layers: Sequence[Layer], message: Message) -> Layer:
    """ "0.9 kg lodge, 0.4 kg Percy, both veg", "300 more of the same": the kind of every layer."""
    known = [one for one in layers if one.materials != _MIXED]
    if layer.materials == _MIXED and known and "same" in message.said:
        return replace(layer, materials=known[0].materials, rich=known[0].rich)
    said = [i for i in message.items if _is_said_of_each(message.norms, i)][-1:]
    if layer.materials != _MIXED or layer.mass_kg is None:
        return layer
    made = makeup(said or _behind_all(layers, message) or _before_all(layers, message))
    return layer if made is None else replace(layer, materials=made.shares, rich=made.rich)


def _behind_all(layers: Sequence[Layer], message: Message) -> list[Item]:
    """ "Annex 600 g, pantry 350 g, all of it trimmings": things in a clause behind all amounts."""
    last = max((x.end for span in (message.bins, message.amounts) for x in span), default=0)
    items = [i for i in message.items if not i.absent]
    if not items or items[0].start <= last or sum(x.materials != _MIXED for x in layers) > 1:
        return []
    between = message.norms[last : items[0].start]
    return items if not _APART.isdisjoint(between) else []


def _before_all(layers: Sequence[Layer], message: Message) -> list[Item]:
    """ "Plums from the fete, all soft. 2 kg to the hall, 1 kg to the shed": things in a sentence
    before the amounts of all, maybe with what these come to, and nothing else named."""
    items = [i for i in message.items if not i.absent]
    if not items or any(x.materials != _MIXED for x in layers):
        return []
    end = items[-1].end
    first = min((a.start for a in message.amounts if a.start >= end), default=end)
    stopped = not _STOPS.isdisjoint(message.norms[end:first])
    told = all(message.sense_at(i.start) in ("did", "none") for i in items)
    whole = sum(a.value for a in message.amounts if a.start < end)
    parts = sum(x.mass_kg or 0.0 for x in layers)
    return items if stopped and told and (not whole or isclose(whole, parts)) else []


_STOPS = words_in(". : ; - –") | {"\n"}
_APART = words_in("all both mostly mainly") | {",", ".", "-", ";", ":", "(", "\n"}


def _by_all(layers: Sequence[Layer], message: Message) -> str | None:
    """ "700 g in the hall, 200 g in the shed, both by Arun": the doer of every layer."""
    norms = message.norms
    for m in message.members:
        if norms[m.start - 1 : m.start] == ["by"] and norms[max(0, m.start - 2)] in _EVERY:
            return next((x.member for x in layers if x.member is not None), None)
    return None


def _is_said_of_each(norms: Sequence[str], item: Item) -> bool:
    at = item.start - (norms[item.start - 1 : item.start] != [] and norms[item.start - 1] in MOST)
    return at > 0 and norms[at - 1] in _EVERY


def _said_of(layer: Layer, message: Message) -> Layer:
    groups = groups_of(message)
    put = [k for k, g in enumerate(groups) if _puts_in(g)]
    layer = _by(_on(layer, groups, put), groups, put)
    if layer.materials != _MIXED or any(i.generic for i in message.items):
        return layer
    named = [i for g in groups if g.sense not in ("ask", "if") or _is_left(g) for i in g.items]
    if not named and not _THEM.isdisjoint(message.said):  # "were the shells right? I put them in"
        named = list(message.items)
    made = makeup(named)
    return layer if made is None else replace(layer, materials=made.shares, rich=made.rich)


def _is_left(group: Group) -> bool:
    """ "What was left of the loaf": no question."""
    return group.norms[:1] == ["what"] and not _LEFT.isdisjoint(group.norms[1:4])


_LEFT = words_in("left remained remains over")
_THEM = words_in("them em")


def _puts_in(group: Group) -> bool:
    verb = group.verb
    if group.sense != "did" or verb is None or verb.verb.plain in _LOOSE:
        return False
    return "layer" in verb.verb.classes


def _by(layer: Layer, groups: Sequence[Group], put: Sequence[int]) -> Layer:
    """ "We had ten pounds of hulls and Vernon dumped the sack in": who did the putting in."""
    if layer.member is not None or len(put) != 1:
        return layer
    member = member_of(groups, put[0])
    return layer if member is None else replace(layer, member=member)


def _on(layer: Layer, groups: Sequence[Group], put: Sequence[int]) -> Layer:
    """ "So that is where the milk came from. It went in yesterday.": the day it went in."""
    if layer.on != groups[0].message.today or len(put) != 1 or put[0] == 0:
        return layer
    group = groups[put[0]]
    day = said_day(group)
    return layer if day is None or group.norms[0] not in _PRONOUNS else replace(layer, on=day.past)
