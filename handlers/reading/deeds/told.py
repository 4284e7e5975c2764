"""Which bin a report tells of, said or carried over, and how often something was put in."""

from collections.abc import Sequence
from itertools import pairwise

from handlers.reading.bins.meantbins import is_denied, is_either, tells_of
from handlers.reading.groups import Group
from handlers.reading.measures.retold import is_repair
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef


def deeds(message: Message) -> int:
    """How often the message says that something was put in: each time is a layer of its own."""
    return sum(
        c.sense == "did" and c.verb is not None and "layer" in c.verb.verb.classes
        for c in message.clauses
    )


def bin_of(groups: Sequence[Group], k: int) -> str | None:
    """Name of the bin the k-th group means: its own, else the last named, else the next."""
    group = groups[k]
    own = group.names()
    if len(own) > 1:
        return _meant(group)
    if own:
        instead = groups[k + 1].names() if k + 1 < len(groups) and _names_none(group) else []
        return instead[0] if len(instead) == 1 else own[0]
    for other in reversed(groups[:k]):
        names = other.names()
        if names:
            return names[-1]
    after = [name for other in groups[k + 1 :] for name in other.names()]
    return after[0] if len(set(after)) == 1 else None


def _meant(group: Group) -> str | None:
    """ "Into the shed, no wait, into the hall": the bin named last counts; "not the shed but the
    hall" is the hall, and "the shed or the hall" is to be asked.
    """
    refs = [b for b in group.bins if b.name is not None]
    norms = group.message.norms
    if any(
        is_repair(norms[a.end : b.start]) and not tells_of(norms, b.end) for a, b in pairwise(refs)
    ):
        return refs[-1].name
    if any(is_either(norms[a.end : b.start]) for a, b in pairwise(refs)):
        return None
    free = [b for b in refs if not is_denied(norms[max(0, b.start - 3) : b.start])]
    led = [b for b in free if _lead(norms, b) in _INSIDE]
    if led and any(not b.known or _lead(norms, b) in _NOT_INTO for b in free if b not in led):
        return led[0].name  # "the second crock went into the hall"
    return (free or refs)[0].name


def _lead(norms: Sequence[str], ref: BinRef) -> str:
    """The word before a bin and its article."""
    at = ref.start - 1
    at -= at > 0 and norms[at] in ("the", "our")
    return norms[at] if at >= 0 else ""


_INSIDE = frozenset({"in", "into", "inside", "to"})
_NOT_INTO = frozenset({"for", "from", "off", "by", "beside"})


def _names_none(group: Group) -> bool:
    """ "To not the shed but the hall": the only bin named is the one that is not meant."""
    norms = group.message.norms
    return all(is_denied(norms[max(0, b.start - 3) : b.start]) for b in group.bins)
