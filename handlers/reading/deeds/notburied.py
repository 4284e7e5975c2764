"""What is put into the ground or under other things, and is no burial of a bin."""

from handlers.reading.deeds.placewords import GROUND
from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.once import once
from handlers.reading.words.vocabulary import words_in


def is_planting(message: Message) -> bool:
    """ "Planted out the leeks in the bed behind the shed", "popped the tomatoes in the bed": what
    grows was planted, and no bin is what was buried."""
    if not message.has(PLANTED) or not message.items or message.has(_CONTENTS):
        return False
    starts = {item.start for item in message.items if not item.generic}
    norms = message.norms
    for i, norm in enumerate(norms):
        if norm not in PLANTED:
            continue
        at = i + 1
        while at < len(norms) and norms[at] in _BEFORE_PLANT:
            at += 1
        if at in starts and (norm in _SOWN or not _BEDS.isdisjoint(norms[at:])):
            return True
    return False


_SOWN = words_in("planted sowed sown transplanted potted")
PLANTED = _SOWN | words_in("put popped set got")
_BEFORE_PLANT = words_in("out in up on the some our my a few more two three all")
_BEDS = words_in("bed beds")
_CONTENTS = words_in("contents ferment bokashi scraps peel peels peelings trench buried dug")


@once
def is_inside(group: Group) -> bool:
    """ "Buried the fish heads deep under the bread in bin 14": scraps laid within a bin."""
    message, verb = group.message, group.verb
    if verb is None or verb.verb.plain not in _HIDING:
        return False
    first = min((item.start for item in message.items if not item.generic), default=verb.end)
    held = [
        ref
        for ref in group.bins
        if ref.start > first and (ref.plain or (ref.name or "").lower() not in GROUND)
    ]
    norms = message.norms
    return (
        bool(held)
        and any(item.start < ref.start for item in group.items for ref in held)
        and any(
            not _WITHIN.isdisjoint(norms[max(group.start, ref.start - 3) : ref.start])
            for ref in held
        )
    )


def is_only_a_hole(group: Group) -> bool:
    """ "Dug a trench for Birch": ground made ready, and no bin in it yet."""
    verb, norms = group.verb, group.message.norms
    if verb is None or verb.verb.plain not in _MADE_READY or not group.bins:
        return False
    waits = [_FOR in norms[max(verb.start, ref.start - 3) : ref.start] for ref in group.bins]
    return all(waits) and not HOLES.isdisjoint(norms[verb.start : group.end])


def is_hole_alone(message: Message) -> bool:
    """ "Zoe dug a hole by the fence": made ready, and nothing is said to lie in it yet."""
    if message.bins or not message.has(HOLES) or message.has(_LIES_IN_IT):
        return False
    return _HOLE_DUG.search(" ".join(message.norms)) is not None


_MADE_READY = frozenset({"dig", "make", "trench", "lay"})
IT = words_in("it them everything lot")
HOLES = words_in("hole holes trench trenches pit pits")
_HOLE_DUG = Late(rf"\b(?:dug|made|dig|digging) (?:\S+ ){{1,3}}?(?:{'|'.join(sorted(HOLES))})\b")
_LIES_IN_IT = IT | words_in(
    "buried bury burying filled covered emptied tipped put went gone goes contents bokashi ferment "
    "fermented scraps bin bins bucket buckets them everyone's batch"
)
_FOR = "for"
_HIDING = frozenset({"bury", "inter"})
_WITHIN = frozenset({"in", "into", "inside", "within"})


def is_of_member(group: Group) -> bool:
    """ "Buried Ana in the shed": a member is no bin."""
    verb = group.verb
    if verb is None or verb.verb.form == "ing":
        return False
    held = {b.start for b in group.bins}
    return any(
        ref.start == verb.end and ref.start not in held and not ref.owner
        for ref in group.message.members
    )
