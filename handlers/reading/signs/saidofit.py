"""What a bin is said to be like right behind what was done to it: "buried the shed. It was rotten".

There "it" is the bin, or what lay in it; only behind scraps that went in could it be those.
"""

from collections.abc import Sequence

from handlers.practice.signs import Sign
from handlers.reading.message import Message
from handlers.reading.signs.seen import Seen
from handlers.reading.signs.smells import SMELLS
from handlers.reading.words.sentences import Clause
from handlers.reading.words.vocabulary import words_in

_IT = words_in("it its she he there")
_PARTS = words_in("bottom top middle inside rest half whole lot all most some")
_OF_IT = (["of", "it"], ["of", "him"], ["of", "her"])
_SMELLED = words_in("smelled smelt smells smelling stank stinks reeked reeks")
_INSIDE = words_in("inside there")
_GROWTHS: frozenset[Sign] = frozenset({"white_mould", "green_mould", "black_mould"})
_WITHIN: frozenset[Sign] = frozenset({"wet", "dry"})
_DONE = frozenset({"seal", "drain", "layer", "bury"})
_BEHIND = words_in("as like and but so when inside in at on too though tho again now today to")
"""What may follow a sign that is said of "it"; before a noun it is of that ("foul weather")."""


def is_said_of_it(message: Message, seen: Seen) -> bool:
    """Whether a sign is told of "it", right behind what was done to a bin that is named."""
    clause = message.clause_at(seen.start)
    if seen.absent or clause is None or clause.sense not in ("none", "did"):
        return False
    done = _done_before(message, clause)
    if done is None or not _is_of_it(message.norms, clause, seen):
        return False
    if seen.sign in _GROWTHS:
        return True
    if seen.sign in _WITHIN:
        return not _INSIDE.isdisjoint(message.norms[seen.end : clause.end])
    fed = done.verb is not None and "layer" in done.verb.verb.classes
    return seen.sign in SMELLS and not fed and _ends_there(message.norms, seen)


def _done_before(message: Message, clause: Clause) -> Clause | None:
    """The last clause before it that tells of a deed, where a bin is named in it."""
    before = [
        c
        for c in message.clauses
        if c.end <= clause.start
        and c.sense == "did"
        and c.verb is not None
        and not c.verb.verb.classes.isdisjoint(_DONE)
    ]
    named = [ref for ref in message.bins if ref.name and ref.start < clause.start]
    return before[-1] if before and named and named[-1].start >= before[-1].start else None


def _is_of_it(norms: Sequence[str], clause: Clause, seen: Seen) -> bool:
    """Whether the clause begins with "it", a part of it, or with how it smelled."""
    said = norms[clause.start : clause.end]
    if said[0] in _IT:
        return True
    part = said[1:] if said[0] in ("the", "a") else said
    if part[0] in _PARTS and list(part[1:3]) in _OF_IT:
        return True
    return said[0] in _SMELLED and seen.sign in SMELLS


def _ends_there(norms: Sequence[str], seen: Seen) -> bool:
    behind = norms[seen.end : seen.end + 1]
    return not behind or not behind[0][0].isalpha() or behind[0] in _BEHIND
