"""Where a food is said to have spoiled or gone cold: "stew that turned", "puddings gone cold"."""

from collections.abc import Iterable, Sequence

from handlers.reading.food.items import Item
from handlers.reading.words.vocabulary import words_in

_CUES = words_in("turned gone went got gotten")
_THAT = words_in("that which what")
_HELPERS = words_in("has had have 's 'd was were")
_MORE = words_in("all a bit very rather quite too slightly completely totally right")
_STATES = words_in(
    "off bad cold stale hard soft slimy soggy sour mouldy moldy limp rotten rancid manky green "
    "black brown blue grey white wrong over funny mushy wilted dry damp furry fuzzy floppy squishy "
    "wet smelly rubbery lumpy curdled woody wrinkly brick"
)
_ENDS = words_in(", . ; : - — ! ( ) and & + in into")


def turned(norms: Sequence[str], items: Iterable[Item]) -> frozenset[int]:
    """The words that say so right behind a food: their verb tells of no deed, nor they of a bin."""
    out: set[int] = set()
    if _CUES.isdisjoint(norms):
        return frozenset()
    for item in [item for item in items if not item.generic]:
        end = _said_to(norms, item.end)
        out.update(range(item.end, end))
    return frozenset(out)


def _said_to(norms: Sequence[str], start: int) -> int:
    """How far it goes; `start` if nothing of it is said."""
    at = start
    related = norms[at : at + 1] != [] and norms[at] in _THAT
    if related:
        at = _past(norms, at + 1, _HELPERS)
    if norms[at : at + 1] == [] or norms[at] not in _CUES:
        return start
    verb = norms[at]
    if not related and verb != "gone":
        return start  # "the bread went mouldy in the shed" may be seen there
    at += 1
    state = _past(norms, at, _MORE)
    if state < len(norms) and norms[state] in _STATES:
        return state + 1
    ends = at == len(norms) or norms[at] in _ENDS
    return at if related and verb == "turned" and ends else start


def _past(norms: Sequence[str], at: int, words: frozenset[str]) -> int:
    while at < len(norms) and norms[at] in words:
        at += 1
    return at
