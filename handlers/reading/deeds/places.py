"""Where a bin was buried: the free words for the place, said with a preposition or alone."""

from collections.abc import Sequence

from handlers.reading.deeds.placeclauses import BY, ENDS_OF, THE, WAYS, place_alone
from handlers.reading.deeds.placewords import (
    BEDS,
    GREEN,
    PLACE,
    UNDER,
    WEATHER,
    WHEN,
    is_somebody,
    place_from,
)
from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in


def place_of(group: Group, target: BinRef | None) -> str | None:
    """The free words for where it went; the ground itself if nothing more is said."""
    said = _said(group, target) or _before(group, target) or _behind_arrow(group, target)
    said = said or _put_bare(group, target) or _given_to(group)
    if said is None or said.lower() in _DUG:
        return place_alone(group, target) or _dug_at(group) or said
    return said


def _given_to(group: Group) -> str | None:
    """ "The shed bin was given to the bean bed": what in a garden was fed with it."""
    message, verb = group.message, group.verb
    if verb is None or verb.verb.plain not in _GIVING:
        return None
    norms = message.norms
    for i in range(verb.end, group.end - 1):
        if norms[i] == "to" and not _GARDEN.isdisjoint(norms[i + 1 : i + _NEAR]):
            return place_from(message, i + 1, group.end, indexes(message.days))
    return None


_GIVING = ("give", "go", "feed")
_GARDEN = BEDS | GREEN
_NEAR = 5
"""Words behind "to" among which the bed is named."""
_DUG = words_in("ground hole trench pit dirt soil earth grun garden")
"""What anything is buried in: a place that is told besides says more."""


def _dug_at(group: Group) -> str | None:
    """ "Dug a hole behind the fuchsia", "into the hole the lads left": where the hole is."""
    message = group.message
    norms = message.norms
    for i in range(group.start, min(group.end, len(norms) - 2)):
        if norms[i] not in _HOLES or norms[i + 1] not in UNDER | BY:
            continue
        at = i + 2 + (norms[i + 1 : i + 3] == ["next", "to"])
        return place_from(message, at, group.end, indexes(message.days))
    return None


_HOLES = words_in("hole holes trench pit")


def _said(group: Group, target: BinRef | None) -> str | None:
    """Behind the first word of place after the bin or the verb."""
    message = group.message
    norms = message.norms
    start = group.verb.end if group.verb is not None else group.start
    if target is not None:
        start = max(start, target.end)
    sentence = message.sentences[group.clauses[0].sentence]
    if target is not None and target.start >= sentence.end:
        sentence = next(x for x in message.sentences if target.start < x.end)
    held = indexes(message.days)
    when = sentence.end
    for i in range(start, sentence.end - 1):
        if i > when and norms[i] == ",":
            break  # "at lunch, raised bed 2"
        if norms[i] not in PLACE or i + 1 in held or norms[i + 1] in PLACE | WEATHER:
            continue
        if norms[i + 1] in WHEN:
            when = min(when, i)
            continue
        if _leads_to_no_place(message, i):
            continue
        place = place_from(message, i + 1, sentence.end, held)
        if place and not _is_when(place.lower().split()):
            return place
        when = min(when, i)
    return None


def _leads_to_no_place(message: Message, i: int) -> bool:
    """ "By me", "on her own", "14 in deep": a word of place that tells something else."""
    norms = message.norms
    if norms[i] == "by" and is_somebody(message, i + 1):
        return True
    number = i > 0 and message.words[i - 1].kind == "number"
    inches = norms[i] == "in" and number and not _names_bin(message, i - 1)
    return inches or norms[i + 2 : i + 3] == ["own"]


def _is_when(said: Sequence[str]) -> bool:
    """ "On the long weekend", "in the rain": when it was, or in what weather."""
    return said[0] in WEATHER or (len(said) == 1 and said[0] in WHEN) or said[-1] in _HOLIDAYS


_HOLIDAYS = words_in("weekend holiday holidays break lunch dinner tea")


def _put_bare(group: Group, target: BinRef | None) -> str | None:
    """ "Down the back of the polytunnel", "buried the shed, bed 3": no word of place before it."""
    message = group.message
    norms = message.norms
    start = group.verb.end if group.verb is not None else group.start
    start = start if target is None else max(start, target.end)
    end, held = message.sentences[group.clauses[0].sentence].end, indexes(message.days)
    for i in range(max(start - 1, group.start), end - 2):
        way = norms[i] in WAYS and norms[i + 2] in ENDS_OF
        if norms[i + 1] in THE and (way or norms[i] == "joined"):
            return place_from(message, i + 1, end, held)
    if target is None or start != target.end or start >= end or start in held:
        return None
    place = place_from(message, start, end, held)
    bare = place is not None and place != "ground" and len(place.split()) <= _BARE
    return place if bare and not _PLOTS.isdisjoint(norms[start : start + _BARE]) else None


_PLOTS = words_in("bed beds patch border trench plot row allotment")
_BARE = 3
"""Words of a place that stands behind the bin with nothing between, at most."""


def _names_bin(message: Message, i: int) -> bool:
    return any(ref.start <= i < ref.end for ref in message.bins)


def _before(group: Group, target: BinRef | None) -> str | None:
    """ "Have the bin under the cherry tree buried": the place stands before the verb."""
    if group.verb is not None and group.norms[0] in UNDER and group.verb.start > group.start:
        held = indexes(group.message.days)  # "under the fig he goes"
        return place_from(group.message, group.start + 1, group.verb.start, held)
    if target is None:
        return None
    if group.verb is None:  # "6 inches down under the sweetcorn, Doris"
        held = indexes(group.message.days)
        for i in range(group.start, target.start - 1):
            after = group.message.norms[i + 1]
            if group.message.norms[i] in PLACE and i + 1 not in held and after not in WHEN:
                return place_from(group.message, i + 1, target.start, held)
        return None
    if target.end > group.verb.start:
        if said := _between(group.message, group.verb.end, target.start):
            return said
        other = [b for b in group.bins if b.name != target.name and b.end <= group.verb.start]
        return next((b.name for b in other if b.name is not None), None)
    message = group.message
    held = indexes(message.days)
    for i in range(target.end, group.verb.start - 1):
        if message.norms[i] in PLACE and i + 1 not in held:
            return place_from(message, i + 1, group.verb.start, held)
    return None


def _between(message: Message, start: int, end: int) -> str | None:
    """ "Emptied into the bed by the wall was bin 3": the place stands before the bin."""
    norms = message.norms
    copula = end - 1 - (norms[end - 1] in ("the", "our"))
    led = copula > start + 1 and norms[start] in PLACE and norms[copula] in _WENT
    return place_from(message, start + 1, copula, indexes(message.days)) if led else None


_WENT = words_in("was is went goes")


def _behind_arrow(group: Group, target: BinRef | None) -> str | None:
    """ "Shed → pit no. 3"."""
    message = group.message
    at = group.end if target is None else target.end
    if message.norms[at : at + 2] == ["-", ">"]:
        at += 1
    if message.norms[at : at + 1] not in (["→"], [">"]):
        return None
    sentence = message.sentences[group.clauses[0].sentence]
    return place_from(message, at + 1, max(sentence.end, at + 2), indexes(message.days))
