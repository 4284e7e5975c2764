"""Bins called by who keeps them: "drained Dev's", "sealed Ines' bin", "did mine and Bram's"."""

from collections.abc import Iterator, Sequence

from handlers.reading.people.members import MemberRef
from handlers.reading.words.binwords import BIN_WORDS, PLAIN_FOLLOWERS, BinRef
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

Kept = tuple[tuple[str, str], ...]
"""Members, each with a bin that they keep."""


def may_own(body: str, members: Sequence[str]) -> bool:
    """Whether somebody may be said to own something there; asked before keepers are looked up."""
    if "'" in body or "’" in body:
        return True
    words = body.casefold()
    return "mine" in words or "my " in words or any(f"{m.casefold()}s" in words for m in members)


def kept_bins(
    norms: Sequence[str],
    members: Sequence[MemberRef],
    kept: Kept,
    sender: str | None,
    known: tuple[BinRef, ...],
) -> tuple[BinRef, ...]:
    """The bins that are called by their keepers, under their own names; one that may be any of
    several that somebody keeps is called "Dev's".
    """
    out: list[BinRef] = []
    taken = indexes(known)
    for start, end, owner in sorted(_owners(norms, members, sender)):
        its = [bin for keeper, bin in kept if keeper == owner]
        if not its or (owner == sender and len(its) > 1) or start in taken:
            continue
        name = its[0] if len(its) == 1 else f"{owner}'s"
        has_noun = norms[end : end + 1] != [] and norms[end] in _VESSELS and end not in taken
        end += has_noun
        named = has_noun and norms[start] != "my"  # "they had my bin over, the wheelie one"
        if named or (
            (has_noun or _is_alone(norms, end)) and _is_placed(norms, start, end, (*known, *out))
        ):
            out.append(BinRef(start, end, name, known=True, plain=True))
    return tuple(out)


def without_owners(members: tuple[MemberRef, ...], bins: Sequence[BinRef]) -> tuple[MemberRef, ...]:
    """The members that are not only named as the keeper of a bin."""
    taken = indexes(bins)
    return tuple(ref for ref in members if ref.start not in taken)


def only_mine(bins: Sequence[BinRef], norms: Sequence[str]) -> bool:
    """Whether a bin is called by no more than "mine", which may be anything of the sender's."""
    return bool(bins) and all(norms[ref.start] == "mine" for ref in bins)


def _owners(
    norms: Sequence[str], members: Sequence[MemberRef], sender: str | None
) -> Iterator[tuple[int, int, str]]:
    """Where an owner is said, and who it is."""
    for ref in members:
        behind = norms[ref.end : ref.end + 1]
        if behind == ["'s"] or (behind == ["'"] and norms[ref.end - 1].endswith("s")):
            yield ref.start, ref.end + 1, ref.name
        elif ref.owner:
            yield ref.start, ref.end, ref.name
    if sender is None or _BEGUN.intersection(norms):
        return
    for i, norm in enumerate(norms):
        if norm == "mine" or (norm == "my" and norms[i + 1 : i + 2] and norms[i + 1] in _VESSELS):
            yield i, i + 1, sender


def _is_alone(norms: Sequence[str], end: int) -> bool:
    """Whether no thing of the owner's follows: "Dev's, 400 ml", and not "Dev's peelings"."""
    after = norms[end] if end < len(norms) else ""
    if norms[end - 1] == "mine":
        over = after == "last" and norms[end + 1 : end + 2] not in (["year"], ["month"], ["summer"])
        return not after[:1].isalpha() or after in _BEHIND_MINE or over
    return not after[:1].isalpha() or after in _FOLLOWERS


def _is_placed(norms: Sequence[str], start: int, end: int, before: Sequence[BinRef]) -> bool:
    """Whether it stands where a bin does: it had something done to it, or is done itself."""
    at = start - 1
    while at >= 0 and norms[at] in _BETWEEN:
        at -= 1
    if at >= 0 and (norms[at] in _DONE_TO or norms[start - 1] in _INTO):
        return True
    if norms[start - 1 : start] == ["off"] or norms[max(0, start - 2) : start] == ["out", "of"]:
        return not _LIQUID.isdisjoint(norms)
    if at >= 0 and norms[at] in _JOINTS and any(ref.end == at for ref in before):
        return True
    behind = end
    while behind < len(norms) and norms[behind] in _IS:
        behind += 1
    return behind > end and norms[behind : behind + 1] != [] and norms[behind] in _STATES


_VESSELS = BIN_WORDS - {"caddy", "container", "tonne", "bokashi"} | {"one"}
"""Behind an owner; a caddy is what stands in their kitchen."""
_BEGUN = words_in("opened started began begun new")
_FOLLOWERS = PLAIN_FOLLOWERS | words_in(
    "done did drained emptied sealed closed buried earlier thursday monday tuesday wednesday "
    "friday saturday sunday first next both as instead myself hes shes theyre im sorry off"
)
_BEHIND_MINE = words_in(
    "and & n plus but too also as already now just today tonight yesterday this again earlier on "
    "at is was 's monday tuesday wednesday thursday friday saturday sunday first myself for out it "
    "about"
)
_DONE_TO = words_in(
    "drained emptied sealed closed shut buried done did tapped checked topped fed filled"
)
_BETWEEN = words_in("up off out also just both even down")
_INTO = words_in("in into")
_LIQUID = words_in("drained drew emptied liquid juice leachate came got tapped took ml l")
_JOINTS = words_in("and & n , plus +")
_IS = words_in("is was 's are all now just been got has too , already")
_STATES = words_in("done drained sealed closed shut buried dry")
