"""A record struck out, and what is to stand in its place: "scratch that, 4 kg to the shed"."""

from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in

CUES = words_in("scratch strike delete undo remove cancel disregard scrap erase forget ignore")
"""Words that strike something out."""
_BEFORE = words_in("sorry oops no nope ok wait bot pls please , ! .")
_STRUCK = words_in("that this it the my last one entry record out please pls sorry")
_WHICH = words_in("that this it last")
_JOINTS = words_in(", . ; : - — and then & instead") | {"\n"}


def behind_striking(message: Message) -> int:
    """Index of the word with which something else is told behind a striking out; 0 if none is."""
    norms = message.norms
    at = next((i for i, norm in enumerate(norms) if norm not in _BEFORE), len(norms))
    if at == len(norms) or norms[at] not in CUES:
        return 0
    end = next((i for i in range(at + 1, len(norms)) if norms[i] not in _STRUCK), len(norms))
    if _WHICH.isdisjoint(norms[at + 1 : end]) or (end < len(norms) and norms[end] not in _JOINTS):
        return 0
    return next((i for i in range(end, len(norms)) if norms[i] not in _JOINTS), 0)


def is_only_a_bin(rest: Message) -> bool:
    """Whether what is told behind it names a bin of the group and nothing else."""
    refs = [ref for ref in (*rest.bins, *rest.named) if ref.known]
    held = {i for ref in refs for i in range(ref.start, ref.end)}
    left = [norm for i, norm in enumerate(rest.norms) if i not in held]
    return len(refs) == 1 and _BEFORE_BIN.issuperset(left)


_BEFORE_BIN = words_in("it that was is went into in to the for meant i . ! please sorry 's")
