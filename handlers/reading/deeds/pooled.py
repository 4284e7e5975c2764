"""A record told over several clauses: "I weighed it, 2.4 kg it was, and into the shed it went".

Looked for only in sentences that told of no record by themselves.
"""

from collections.abc import Collection, Sequence

from handlers.reading.acts import Drain, Layer
from handlers.reading.deeds.liquid import drain_of_whole
from handlers.reading.deeds.told import bin_of
from handlers.reading.deeds.toldday import day_of, is_ahead
from handlers.reading.doubts.lookalikes import (
    NO_CARRYING,
    comes_out,
    has_scrap,
    is_gift,
    is_other_matter,
    is_other_talk,
    is_told_of_room,
    names_other_thing,
)
from handlers.reading.food.quantities import amount_sum, makeup_of, scrap_amounts
from handlers.reading.groups import Group
from handlers.reading.people.doers import member_of

_HAPPENED = frozenset({"did", "none"})
_SHORT = 14
"""Words in a report that may do without any word of putting in."""


def pooled(groups: Sequence[Group], told: Collection[int]) -> list[tuple[int, Layer | Drain]]:
    """Layers and drainings told over the clauses of a sentence, or of two in a row.

    `told` are the numbers of the sentences that already gave a record.
    """
    out: list[tuple[int, Layer | Drain]] = []
    numbers = list(dict.fromkeys(g.clauses[0].sentence for g in groups))
    used = set(told)
    for width in (1, 2):
        for i in range(len(numbers) - width + 1):
            window = numbers[i : i + width]
            if not used.isdisjoint(window):
                continue
            act = _of_window([g for g in groups if g.clauses[0].sentence in window], groups)
            if act is not None:
                used.update(window)
                start = next(g.start for g in groups if g.clauses[0].sentence == window[0])
                out.append((start, act))
    return out


def _of_window(window: Sequence[Group], groups: Sequence[Group]) -> Layer | Drain | None:
    happened = [g for g in window if g.sense in _HAPPENED]
    others = [g for g in window if g.sense not in _HAPPENED]
    if len(window) < 2 or not happened or any(g.bins or g.measured() for g in others):
        return None
    message = happened[0].message
    if any(g.names() and g.measured() and g.verb for g in happened):
        return None  # such a clause tells by itself, and was found not to
    if any(g.verb and message.norms[g.verb.start] in NO_CARRYING for g in happened):
        return None
    whole = Group(message, list(happened[0].clauses), happened[0].verb, happened[0].sense)
    for group in happened:
        for clause in group.clauses:
            whole.take(clause)
    if is_ahead(whole) or len(whole.names()) > 1:
        return None
    k = groups.index(happened[0])
    drained = drain_of_whole(whole)
    if drained is not None:
        return Drain(
            volume_l=drained,
            bin=_bin(whole, groups, k),
            member=member_of(groups, k),
            on=day_of([whole], 0),
            rules=("a draining told in several clauses",),
        )
    return _layer(whole, groups, k)


def _bin(whole: Group, groups: Sequence[Group], k: int) -> str | None:
    names = whole.names()
    return names[0] if names else bin_of(groups, k)


def _layer(whole: Group, groups: Sequence[Group], k: int) -> Layer | None:
    amounts = scrap_amounts(whole)
    if not amounts or not whole.names() or not _is_of_scraps(whole):
        return None
    made = makeup_of(whole)
    mass, volume = amount_sum(amounts)
    return Layer(
        mass_kg=mass,
        volume_l=volume,
        materials={"mixed": 1.0} if made is None else made.shares,
        rich=None if made is None else made.rich,
        bin=_bin(whole, groups, k),
        member=member_of(groups, k),
        on=day_of([whole], 0),
        rules=("a layer told in several clauses",),
    )


def _is_of_scraps(whole: Group) -> bool:
    if is_gift(whole) or comes_out(whole) or is_other_matter(whole) or names_other_thing(whole):
        return False
    plain = any(b.plain for b in whole.bins)
    if is_other_talk(whole) and not (has_scrap(whole) or plain):
        return False
    if is_told_of_room(whole) and not has_scrap(whole):
        return False
    if _went_in(whole):
        return True
    room = all(b.place and not b.plain for b in whole.bins)
    if room:
        return has_scrap(whole)
    return bool(whole.solids()) or len(whole.norms) <= _SHORT


def _went_in(whole: Group) -> bool:
    """Whether some words say that it went in: "in they went", "it's in the shed"."""
    norms = whole.message.norms
    into = any(
        norms[b.start - 1 : b.start] in (["into"], ["in"], ["→"], ["to"])
        or norms[max(0, b.start - 2) : b.start]
        in (["into", "the"], ["in", "the"], ["to", "the"], ["for", "the"])
        for b in whole.bins
    )
    return into or ("in" in norms and any(b.plain for b in whole.bins))
