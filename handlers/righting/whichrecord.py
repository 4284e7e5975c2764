"""Which of the records that one message told a correction is of."""

from collections.abc import Sequence
from dataclasses import fields, replace
from datetime import timedelta

from handlers.answer import Turn
from handlers.people import is_same
from handlers.practice.kinds import Shares
from handlers.reading.acts import Act, Amend, OnBins, Retract
from handlers.reading.arranged import Plan
from handlers.reading.corrections.partright import BY_PART
from storage.book import Book
from storage.rows import Entry

_NAMING = frozenset({"bin", "materials", "rich", "was", "of", "whose", "rules"})
"""Fields by which a record can be known; the others tell only what is right."""
_DEEDS = frozenset({"layer", "drain", "seal", "bury"})
_TOLD = _DEEDS | {"observe"}
_REMEMBERED = timedelta(days=60)
"""For so long before a day may be told of."""
ONE_SITTING = timedelta(minutes=30)
"""For so long several messages are told in one go: "both" is said of them."""
_OF_ALL = frozenset({"on", "member"})
"""What is true of all that one message told, unless it told them apart."""


def named_by(act: Amend, entries: Sequence[Entry]) -> tuple[Sequence[Entry], Amend]:
    """The entries called by their scraps or their bin, and what is to be put right of them."""
    of_part = BY_PART in act.rules
    if act.whose:
        return [entry for entry in entries if entry.member == act.whose], act
    if len(entries) < 2 and not of_part:
        return entries, act
    tells = not said(act) <= _NAMING
    if act.materials and (tells or act.bin):
        shared = [_in_common(act, entry) for entry in entries]
        such = [e for e, much in zip(entries, shared, strict=True) if much and much == max(shared)]
        if such:
            return such, _of_lot(act, such[-1], max(shared))
        return ([] if of_part and not any(map(_is_of_no_kind, entries)) else entries), act
    if act.bin and tells:
        there = [e for e in entries if e.bin and is_same(e.bin.name, act.bin)]
        return there or ([] if of_part else entries), act
    return entries, act


async def told_in_sitting(turn: Turn) -> list[Entry]:
    """What the sender told of deeds just now, in several messages, in order of writing."""
    written = await turn.book.written_by(turn.sender, turn.today - _REMEMBERED, turn.today)
    lately = [e for e in written if turn.now - e.written_at <= ONE_SITTING and e.act in _TOLD]
    return sorted(lately, key=lambda entry: entry.id)


def of_sender(entries: Sequence[Entry], sender: str) -> Sequence[Entry]:
    """Where another told what several did: what they told of the sender, if they did."""
    own = [entry for entry in entries if entry.member == sender != entry.writer]
    return own or entries


async def alone_of_day(act: Amend, turn: Turn) -> list[Entry]:
    """The only record that the sender told of the wrong day, however long ago; else none."""
    if act.was is None or turn.refers_to:
        return []
    told = await turn.book.written_by(turn.sender, act.was, act.was)
    named, _ = named_by(act, [entry for entry in told if entry.act in _DEEDS])
    if len(named) != 1:
        return []
    other = act.materials and not (_is_of_no_kind(named[0]) or _in_common(act, named[0]))
    return [] if other else list(named)


async def with_bin_told(
    acts: Sequence[Act | Plan], former: Sequence[Entry], message: str, book: Book
) -> list[Act | Plan]:
    """The one act of an edit that names no bin, in the bin that was told of it in an answer."""
    unplaced = [act for act in acts if isinstance(act, OnBins) and act.bin is None]
    such = [e for e in former if e.bin and unplaced and e.act == unplaced[0].act]
    if len(unplaced) != 1 or len(such) != 1:
        return list(acts)
    [told], [act] = such, unplaced
    if told.bin is None or told.cause in {message, *await book.edits_of(message)}:
        return list(acts)  # an edit has taken the bin away
    placed = replace(act, bin=told.bin.name)
    return [placed if one is act else one for one in acts]


def is_of_all(act: Amend, entries: Sequence[Entry]) -> bool:
    """Whether a day or a member is put right that all the entries have in common."""
    told = said(act) - {"was", "of", "whose", "rules"}
    return (
        len(entries) > 1
        and bool(told)
        and told <= _OF_ALL
        and len({(e.act, *(getattr(e, name) for name in told)) for e in entries}) == 1
    )


def names_none(act: Amend | Retract) -> bool:
    """Whether the record is called by nothing that it is known by."""
    return said(act).isdisjoint(_NAMING - {"rules"} | {"which", "what", "of_bin", "anew"})


def said(act: Amend | Retract) -> set[str]:
    """The names of the fields that were said."""
    return {item.name for item in fields(act) if getattr(act, item.name) not in (None, ())}


def _in_common(act: Amend, entry: Entry) -> float:
    shares = entry.facts.materials or {}
    return sum(shares.get(kind, 0.0) for kind in act.materials or {})


def _of_lot(act: Amend, entry: Entry, share: float) -> Amend:
    """The correction of a share of an entry as one of all of it: "the bread was 2" of bread and
    peelings that one record holds.
    """
    mass, right, kinds = entry.facts.mass_kg, act.mass_kg, act.materials or {}
    if share > _ALL or mass is None or right is None:
        return replace(act, materials=None, rich=None)
    whole = mass * (1 - share) + right
    grown = right / (share * mass)
    shares = entry.facts.materials or {}
    made = {k: much * mass / whole * (grown if k in kinds else 1) for k, much in shares.items()}
    return replace(act, mass_kg=whole, materials=made, rich=None)


def left_without(kinds: Shares, entry: Entry) -> Amend | None:
    """What is right of a layer that these scraps did not go into; None if it is of them alone."""
    shares = entry.facts.materials or {}
    left = {kind: much for kind, much in shares.items() if kind not in kinds}
    share = sum(left.values())
    if entry.act != "layer" or share < 1 - _ALL:
        return None
    weighed = share if share < 1 - _TRIFLE else 1.0
    mass, volume = entry.facts.mass_kg, entry.facts.volume_l
    return Amend(
        mass_kg=mass and mass * weighed,
        volume_l=volume and volume * weighed,
        materials={kind: much / share for kind, much in left.items()},
    )


_TRIFLE = 0.101
"""A share up to which scraps were hardly weighed with the rest: "700 g of peel and an eggshell"."""
_ALL = 0.95
"""A share from which scraps are all that a layer is made of."""


def _is_of_no_kind(entry: Entry) -> bool:
    return entry.act == "layer" and "mixed" in (entry.facts.materials or {"mixed": 1.0})
