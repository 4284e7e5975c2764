"""A bin told by where it stands: "the blue bin in the yard"."""

from collections.abc import Sequence

from handlers.reading.words.binwords import BIN_WORDS, TOLD_BY, BinRef
from handlers.reading.words.vocabulary import words_in

STANDS = words_in("in by at near on under beside outside behind")
_ARTICLES = words_in("the our")
_OUT_OF = words_in("from of off")
"""Before a bin whose scraps went elsewhere: "from the blue bin in the shed"."""


def by_where(
    norms: Sequence[str], refs: tuple[BinRef, ...], bins: tuple[str, ...]
) -> tuple[BinRef, ...]:
    """The bins, each that is told by a place with it: the one that is called by both, or by the
    place where none is called by the colour. A place behind another bin is no bin of its own.
    """
    out: list[BinRef] = []
    behind = 0
    for ref in refs:
        if ref.start < behind:
            continue
        at = _place_at(norms, ref)
        if at:
            name = _called(ref, norms[at], bins)
            if name is not None or any(other.start == at for other in refs):
                behind = at + 1
                ref = ref._replace(end=at + 1, name=name or ref.name, known=ref.known or bool(name))
        out.append(ref)
    return tuple(out)


def _place_at(norms: Sequence[str], ref: BinRef) -> int:
    """Where the place stands that a bin is told by; 0 if none is."""
    if ref.name is None or not ref.plain:
        return 0
    lead = ref.start - 1 - (norms[ref.start - 1 : ref.start] == ["the"])
    at = ref.end + 1
    if norms[ref.end : at] == [] or norms[ref.end] not in STANDS or norms[max(lead, 0)] in _OUT_OF:
        return 0
    if norms[at : at + 1] == [] or norms[at] not in _ARTICLES:
        return 0
    further = norms[at + 2 : at + 3]
    return 0 if not norms[at + 1 : at + 2] or BIN_WORDS.intersection(further) else at + 1


def _called(ref: BinRef, place: str, bins: tuple[str, ...]) -> str | None:
    """The group's bin that a colour and a place mean together."""
    said = (ref.name or "").casefold()
    both = next((b for b in bins if {*b.casefold().split()} == {said, place}), None)
    if both is not None or ref.known or said not in TOLD_BY:
        return both
    return next((b for b in bins if b.casefold() == place), None)
