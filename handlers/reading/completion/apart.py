"""Lots told apart by day or by doer: "10 kg yesterday and 2 today", "1 kg from Tom, 2 from me"."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta
from itertools import pairwise
from math import isclose
from typing import Generic, NamedTuple, TypeVar

from handlers.reading.acts import Drain, Layer
from handlers.reading.completion.dayshares import shares_of_days
from handlers.reading.completion.lots import share_of
from handlers.reading.completion.unlike import things_of_each
from handlers.reading.deeds.liquid import drawn, litres
from handlers.reading.food.makeups import makeup
from handlers.reading.food.ofwhat import of_what
from handlers.reading.food.quantities import scrap_amounts
from handlers.reading.grouping import whole_of
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.people.doers import is_sender
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_T = TypeVar("_T")


def drained_apart(drain: Drain, message: Message) -> list[Drain]:
    """A draining for each amount, where each has its own day ("200 ml on Sunday, 150 today")."""
    if shares := shares_of_days(message):
        return [replace(share_of(drain, share), on=day) for share, day in shares]
    days = _days(message)
    whole = whole_of(message) if len(days) > 1 else None
    amounts = [] if whole is None or len(set(whole.names())) > 1 else sorted(drawn(whole))
    if len(amounts) == 1:  # "drained on Monday and Friday, 200 ml each time"
        return [replace(drain, on=day) for day in _on_each(message, amounts[0])]
    dates = _of_each(amounts, days) if len(amounts) > 1 else []
    if len(set(dates)) < 2:
        return []
    names = _of_each(amounts, _doers(message)) or [drain.member] * len(amounts)
    return [
        replace(drain, volume_l=litres([amount]), on=day, member=name)
        for amount, day, name in zip(amounts, dates, names, strict=True)
    ]


class _Mark(NamedTuple, Generic[_T]):
    """A day or a doer, at words[start:end]."""

    start: int
    end: int
    value: _T


def told_apart(layer: Layer, message: Message) -> list[Layer]:
    """A layer for each amount of the one told, where each has its own day or doer; else none."""
    if len({ref.name for ref in message.bins if ref.name is not None}) > 1:
        return []
    if dated := _each_of_its_days(layer, message):
        return [replace(layer, on=day) for day in dated]
    days, doers = _days(message), _doers(message)
    if len(days) < 2 and len(doers) < 2:
        return []
    if parts := _by_share(layer, message) or _rest_of(layer, message, days):
        return parts
    amounts = _amounts(message, rates=len(days) > 1)
    if len(amounts) == 1:
        return _by_doer(layer, message, amounts[0]) or _as_much_of_each(
            layer, message, amounts[0], days, doers
        )
    if len({a.quantity for a in amounts}) != 1:
        return []
    dates, names = _of_each(amounts, days), _of_each(amounts, doers)
    if len(set(dates)) < 2 and len(set(names)) < 2:
        return []
    parts = [_part(layer, message, amounts, k) for k in range(len(amounts))]
    if dates:
        parts = [replace(part, on=day) for part, day in zip(parts, dates, strict=True)]
    if names:
        parts = [replace(part, member=name) for part, name in zip(parts, names, strict=True)]
    return parts


def _by_share(layer: Layer, message: Message) -> list[Layer]:
    """ "6 kg, half of it on Monday, the rest today": a layer of each share."""
    shares = shares_of_days(message)
    return [replace(share_of(layer, share), on=day) for share, day in shares]


def _as_much_of_each(
    layer: Layer,
    message: Message,
    amount: Amount,
    days: Sequence[_Mark[date]],
    doers: Sequence[_Mark[str | None]],
) -> list[Layer]:
    """ "1 kg each on Monday and Tuesday", "Tom and I put 2 kg each in"."""
    if dated := _together(message, days, amount) or _again(message, days):
        return [replace(layer, on=day) for day in dated]
    return [replace(layer, member=name) for name in _together(message, doers, amount)]


def _by_doer(layer: Layer, message: Message, whole: Amount) -> list[Layer]:
    """ "Tom and I added 3 kg, me 2 him 1": each one's part, where they come to the whole."""
    others = {m.name for m in message.members if not is_sender(message, m.name)}
    if len(others) != 1 or whole.quantity != "mass" or not whole.factor:
        return []
    named = {m.start: m.name for m in message.members}
    parts: dict[str | None, float] = {}
    for i in range(whole.end, len(message.norms) - 1):
        norm = message.norms[i]
        if not (norm in _ME or norm in _OTHER or i in named):
            continue
        at = i + 1 + (message.norms[i + 1] in _DID)
        number = read_number(message.words, at)
        if number is not None and not number.word:
            parts[None if norm in _ME else next(iter(others))] = number.value * whole.factor
    if len(parts) < 2 or not isclose(sum(parts.values()), whole.value, rel_tol=_EXACT):
        return []
    return [replace(layer, mass_kg=kg, volume_l=None, member=who) for who, kg in parts.items()]


_OTHER = words_in("he him she her they them his hers")
_DID = words_in("did put had was added gave : -")
_EXACT = 0.01


def _amounts(message: Message, *, rates: bool) -> list[Amount]:
    """The amounts of scraps; with `rates` those of each time, where there is no other ("Monday +
    Friday, 2 lb each time")."""
    whole = whole_of(message)
    if whole is None:
        return []
    told = sorted(scrap_amounts(whole))
    return told or [a for a in whole.measured() if rates and a.quantity == "mass"]


def _rest_of(layer: Layer, message: Message, days: Sequence[_Mark[date]]) -> list[Layer]:
    """ "2.6 kg this week: 1.1 on Monday, the rest today": a layer for the part and for the rest."""
    masses = [a for a in message.amounts if a.quantity == "mass" and not of_what(message, a)]
    if len(masses) != 2 or not message.has_in(_REST, masses[1].end) or len(days) < 2:
        return []
    total, part = masses
    dates = [m.value for m in days if m.start >= total.end][-2:]
    if part.value >= total.value or len(dates) < 2:
        return []
    return [
        replace(layer, mass_kg=value, volume_l=None, on=day)
        for value, day in zip((part.value, total.value - part.value), dates, strict=True)
    ]


_REST = words_in("rest remainder balance remaining")


def _days(message: Message) -> list[_Mark[date]]:
    told = [d for d in message.days if not d.aside and d.past <= message.today]
    return [_Mark(d.start, d.end, d.past) for d in told]


def _doers(message: Message) -> list[_Mark[str | None]]:
    """Members named and the sender's "from me", "mine"; none where no member but one is named."""
    if not message.members:
        return []
    found = [
        _Mark(m.start, m.end, None if is_sender(message, m.name) else m.name)
        for m in message.members
    ]
    return sorted(found + [_Mark(i, i + 1, None) for i, n in enumerate(message.norms) if n in _ME])


_ME = words_in("me mine i my myself self")


def _together(message: Message, marks: Sequence[_Mark[_T]], amount: Amount) -> list[_T]:
    """ "Tom and Priya put 2 kg each in", "Monday and Tuesday 1 kg a day": the doers or days in a
    row before an amount of each."""
    before = [m for m in marks if m.end <= amount.start]
    behind = message.norms[amount.end : amount.end + 2]
    each = behind[:1] in (["each"], ["apiece"], ["both"]) or behind in _EACH_DAY
    last = before[-1].end if before else amount.start
    each = each or message.norms[last : last + 1] in (["each"], ["both"])  # "each put a kilo"
    if not each or len(before) < 2:
        return []
    joined = _joined([message.norms[a.end : b.start] for a, b in pairwise(before)])
    return [m.value for m in before] if joined else []


def _each_of_its_days(layer: Layer, message: Message) -> list[date | None]:
    if len(message.days) < 2:
        return [layer.on, layer.on] if _at_another_hour(message) else []
    amounts = _amounts(message, rates=True)
    return [*_on_each(message, amounts[0])] if len(amounts) == 1 else []


def _on_each(message: Message, amount: Amount) -> list[date]:
    """ "500 g each on Monday and Tuesday", "on Monday and Friday, 200 ml each time", "1 kg a day
    from Monday to Wednesday": all of the days, where so much of each is told."""
    norms, days = message.norms, message.days
    between = [norms[a.end : b.start] for a, b in pairwise(days)]
    past = [day.past for day in days]
    if any(a.start <= amount.start < b.end for a, b in pairwise(days)):
        return []
    if max(past) > message.today or len(past) < 2:
        return []
    behind, before = norms[amount.end : amount.end + 2], norms[days[0].start - 1 : days[0].start]
    if between in _SPANS and behind in _EACH_DAY:
        count = (past[1] - past[0]).days + 1
        return [past[0] + timedelta(k) for k in range(count)] if 1 < count <= _WEEK else []
    each = behind in _EACH_DAY or behind[:1] in (["each"], ["apiece"]) or before == ["both"]
    free = before not in (["from"], ["since"], ["of"])
    return past if each and free and _joined(between) else []


def _joined(between: Sequence[Sequence[str]]) -> bool:
    return all(_JOINTS.issuperset(words) and words for words in between)


_SPANS = ([["to"]], [["-"]], [["–"]], [["till"]], [["until"]], [["through"]])
_WEEK = 7


def _again(message: Message, days: Sequence[_Mark[date]]) -> list[date]:
    """ "2 kg on Sunday and again today", "a pound Tuesday and another today": as much on either
    day."""
    if len(days) != 2:
        return []
    between = message.norms[days[0].end : days[1].start]
    told = not _ANEW.isdisjoint(between) and _AGAIN.issuperset(between)
    return [day.value for day in days] if told else []


def _at_another_hour(message: Message) -> bool:
    """ "2 kg in the shed at 10, and again at 4": as much twice on one day."""
    if "again" not in message.said or message.asked or len(message.sentences) > 1:
        return False
    return len(message.measured()) == 1 and _LATER.search(" ".join(message.norms)) is not None


_LATER = Late(
    r"(?<!same )\b(?:and|&|,|then) again (?:just |right |later |about |around )*"
    r"(?:(?:at|by|around|about) (?:noon|midday|lunch|lunchtime|teatime|night|[\d:.]+)"
    r"(?: (?:am|pm|o'clock|oclock))?|now|later|tonight|"
    r"(?:this|in the) (?:morning|afternoon|evening)|"
    r"(?:before|after) (?:work|lunch|dinner|tea|supper|school|breakfast|bed)|afterwards|after)"
    r"(?: ,? ?today)?[ .!]*$"
)
_ANEW = words_in("again another same")
_AGAIN = _ANEW | words_in("and then , the on one more")
_EACH_DAY = (
    ["a", "day"],
    ["every", "day"],
    ["every", "time"],
    ["a", "time"],
    ["per", "day"],
    ["each", "day"],
    ["each", "time"],
)
_JOINTS = words_in("and & n , + on")


def _of_each(amounts: Sequence[Amount], marks: Sequence[_Mark[_T]]) -> list[_T]:
    """What each amount is marked with, right behind it or right before it; empty if not all are."""
    if len(marks) < len(amounts):
        return []
    led = [[m for m in marks if m.end == a.start] for a in amounts]
    if all(led):
        return [found[0].value for found in led]  # "me 1.2 kg, Tom 800 g"
    ends = [*(a.start for a in amounts[1:]), amounts[-1].end + _NEAR]
    behind = [
        [m for m in marks if a.end <= m.start < end and m.start - a.end < _NEAR]
        for a, end in zip(amounts, ends, strict=True)
    ]
    if all(behind):
        return [found[0].value for found in behind]
    starts = [0, *(a.end for a in amounts)]
    before = [
        [m for m in marks if start <= m.start and 0 <= a.start - m.end < _NEAR]
        for start, a in zip(starts, amounts, strict=False)
    ]
    if all(before):
        return [found[-1].value for found in before]
    if len(marks) != len(amounts):
        return []
    pairs = list(zip(marks, amounts, strict=True))
    if all(m.end <= a.start for m, a in pairs) and all(
        a.end <= m.start for (_, a), (m, _) in pairwise(pairs)
    ):
        return [mark.value for mark in marks]  # a day, its amount, a day, its amount
    if all(a.end <= m.start for m, a in pairs) and all(
        m.end <= a.start for (m, _), (_, a) in pairwise(pairs)
    ):
        return [mark.value for mark in marks]  # "a pound of beans in red Tuesday, another today"
    apart = (max(m.start - a.end, a.start - m.end) for m, a in zip(marks, amounts, strict=True))
    near = all(distance < _NEAR for distance in apart)
    return [mark.value for mark in marks] if near else []  # "7 kg yesterday, today 9 kg"


_SAID_NEAR = 9
"""Words between an amount and the things that it is of, at most."""
_NEAR = 5
"""Words between an amount and its day or doer, at most."""


def _part(layer: Layer, message: Message, amounts: Sequence[Amount], k: int) -> Layer:
    """The layer with the k-th amount, and with the things that stand beside it."""
    amount, items = things_of_each(amounts, message, _SAID_NEAR)[k]
    made = makeup(items) if items else None
    mass = amount.value if amount.quantity == "mass" else None
    volume = None if mass is not None else amount.value
    layer = replace(layer, mass_kg=mass, volume_l=volume)
    return layer if made is None else replace(layer, materials=made.shares, rich=made.rich)
