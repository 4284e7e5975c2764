"""A place that is a clause of its own behind a burial: "Trenched the shed. North bed."."""

from collections.abc import Mapping, Sequence

from handlers.reading.deeds.placewords import BEDS, LONGEST, PLACE, SOIL, UNDER, place_from
from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.sentences import Clause
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_AFTER = 3
"""Clauses behind the burial in which the place is looked for."""
WAYS = words_in("down up out over round through off")
THE = words_in("the at our my his her their")
ENDS_OF = words_in("back front top bottom end far side foot edge corner middle back garden yard")


def place_alone(group: Group, target: BinRef | None) -> str | None:
    """ "Trenched the shed. North bed.": a clause behind it that only names a place."""
    message = group.message
    first = message.clauses.index(group.clauses[0])
    behind = 0 if group.verb is None and target is None else first + 1
    bins = {b.start: b.end for b in message.bins} if target is None else {}
    for clause in message.clauses[behind : first + 1 + _AFTER + len(group.clauses)]:
        named = clause.verb is None or clause.verb.end == clause.end  # "runner bean trench"
        named = named or message.norms[clause.start] == "top"  # "top terrace"
        said = _said_before(message, clause, bins)
        if not behind and not said and not _is_title(message, clause):
            continue
        if named and clause.sense in ("none", "order", "did") and _is_place(message, clause, said):
            start = clause.start + said
            place = place_from(message, start, clause.end, indexes(message.days))
            if place:
                return place
    return None


def _said_before(message: Message, clause: Clause, bins: Mapping[int, int]) -> int:
    """How many words stand before the place in "he's under the plum", "2 feet down by the pond"."""
    norms = message.norms[clause.start : clause.end]
    if norms[:1] and (norms[0] in _IT_IS or clause.start in bins):
        at = bins.get(clause.start, clause.start + 1) - clause.start
        at += norms[at : at + 1] != [] and norms[at] in _BEING
        while norms[at : at + 1] and norms[at] in _ABOUT:
            at += 1
    elif norms[2:3] and norms[0] in _ADVERBS and norms[1] in _ALONG:
        return 1 if norms[1] != "next" or norms[2] == "to" else 0
    elif "down" in norms[1:LONGEST]:
        at = norms.index("down", 1) + 1
    else:
        return 0
    if not norms[at : at + 1] or norms[at] not in UNDER | BY:
        return 0
    return at + 1 + (norms[at : at + 2] == ["next", "to"])


_IT_IS = words_in("he she it they hes shes its theyre")
_BEING = words_in("'s is 're are lies lie sits rests sleeps")
BY = words_in("by next against between among along alang")
_ADVERBS = words_in("down right just up over out way back round straight there")
_ALONG = UNDER | BY | words_in("alongside opposite")
"""Behind an adverb, a place: "right along the fence", but not "right in time"."""
_ABOUT = WAYS | THE | ENDS_OF | words_in("there right just")
"""Between "it's" and the place: "it's down the bottom by the rhubarb"."""


def _is_place(message: Message, clause: Clause, skipped: int) -> bool:
    """Whether a clause has ground or a plant in it, or begins with a word of place."""
    norms = message.norms[clause.start : clause.end]
    start = clause.start + skipped
    held = any(start <= b.start < clause.end and not b.place for b in message.bins)
    measured = any(start <= a.start < clause.end for a in message.amounts)
    if held or measured or (len(norms) > LONGEST and not skipped):
        return False
    if len(norms) <= skipped or not norms[skipped][:1].isalpha():
        return False
    leads = norms[0] in PLACE or norms[:1] == ["out"] or skipped > 0 or _is_end_of(norms)
    titled = norms[0] not in SOIL and not BEDS.isdisjoint(norms) and norms[-1] != "down"
    titled = titled and norms[1:2] != ["'s"] and {"in", "into"}.isdisjoint(norms[1:])
    return len(norms) > 1 and (leads or titled)


def _is_end_of(norms: Sequence[str]) -> bool:
    """ "Back of the fig", "the far end of the plot"."""
    at = next((k for k in range(1, min(4, len(norms) - 1)) if norms[k] == "of"), 0)
    told = at > 0 and norms[at - 1] in ENDS_OF and _TIMES.isdisjoint(norms[at:])
    return told and (norms[at - 1] != "end" or at > 1 or norms[at + 1] in THE)


_TIMES = words_in("day week month year season summer winter story discussion shift april mind")


def _is_title(message: Message, clause: Clause) -> bool:
    """ "Strawberry rows": a few words of which the last is ground, and no bin among them."""
    told = clause.end - clause.start <= _TITLE and message.norms[clause.end - 1] in BEDS
    return told and not any(clause.start <= b.start < clause.end for b in message.bins)


_TITLE = 4
"""Words of a clause that only names ground, at most."""
