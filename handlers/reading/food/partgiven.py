"""What was cooked or picked, and the part of it that went in: "5 lb of corn; the husks, 1 lb"."""

from collections.abc import Sequence

from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.words.once import once
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in


def without_wholes(message: Message, amounts: list[Amount]) -> list[Amount]:
    """The amounts without the one that a whole weighed, where the part given is weighed too."""
    wholes = whole_before(message)
    return [a for a in amounts if a.start not in wholes] or amounts


@once
def whole_before(message: Message) -> range:
    """The words that tell of the whole, up to the part that went in; none if no part is told.

    "Sixteen pounds of plums! ... and the stones, a pound of them, went in the shed".
    """
    masses = [a for a in message.amounts if a.quantity == "mass" and not a.negative]
    if len(masses) < 2 or not message.has(PARTS) or message.has(_TOGETHER):
        return _NONE
    whole, part = masses[0], masses[-1]
    if len(masses) != 2 or part.value >= whole.value or part.end - whole.end > _FAR:
        return _NONE
    at = _named(message, whole.end, part)
    if not at or not _is_used(message, whole, at) or _is_in_bin(message, whole.end, at):
        return _NONE
    return range(_sentence_start(message, whole.start), at)


_NONE = range(0)
_FAR = 40
"""Words between the whole and its part, at most."""


def _named(message: Message, start: int, part: Amount) -> int:
    """Where the part is named, just before its amount or just behind: "the stones, a pound"."""
    norms = message.norms
    for i in range(part.start - 1, max(start, part.start - _NEAR) - 1, -1):
        if norms[i] in PARTS:
            return _lead_of(norms, start, i)
    behind = norms[part.end : part.end + 3]
    of = behind[:1] == ["of"] and any(norm in PARTS for norm in behind[1:])
    return part.start - (norms[part.start - 1] in _THE) if of else 0


_NEAR = 5
"""Words between a part's name and its amount, at most."""


def _lead_of(norms: Sequence[str], start: int, i: int) -> int:
    """Where "the rotten ones" begins, whose last word is word i."""
    for at in range(i - 1, max(start, i - 3) - 1, -1):
        if norms[at] in _THE:
            return at
        if not norms[at].isalpha():
            break
    return i


def _is_used(message: Message, whole: Amount, end: int) -> bool:
    """Whether the whole was cooked, eaten, picked or weighed, and did not go in; "boiled rice" and
    "dinner scraps" tell of no use.
    """
    norms, start = message.norms, _sentence_start(message, whole.start)
    if not message.has_in(_USED | _MEALS | _PLANTS, start, end):
        return False
    held = indexes(message.items)
    for i in range(start, end):
        if norms[i] in _USED and i not in held and i + 1 not in held:
            return True
        if norms[i] in _MEALS and "for" in norms[max(start, i - 3) : i]:
            return True
        if norms[i] in _PLANTS and "off" in norms[max(start, i - 4) : i]:
            return True
    return False


def _is_in_bin(message: Message, start: int, end: int) -> bool:
    """Whether a bin or a deed with one is told between the whole and its part."""
    inside = any(start <= ref.start < end for ref in message.bins)
    return inside or message.has_in(_PUT, start, end)


def _sentence_start(message: Message, i: int) -> int:
    return next((s.start for s in message.sentences if s.start <= i < s.end), 0)


_THE = words_in("the their its his her my our")
PARTS = words_in(
    "bones bone shells shell husks husk cores core stones stone pits peels peel peelings skins "
    "skin rinds rind heads tails guts carcass carcase carcasses scraps trimmings leaves stalks "
    "stems tops ends crusts crumbs ones remains leftovers leftover pulp pods seeds scales offcuts "
    "outsides hulls cobs fins claws feet gristle rest spoiled spoilt"
)
_USED = words_in(
    "cooked boiled roasted baked made picked harvested caught sorted peeled shelled cleaned gutted "
    "filleted trimmed bought brewed juiced jarred pickled bottled eaten ate eat served grew dug "
    "weighed weigh weighs podded stripped carved smoked steamed fried grilled stewed"
)
_MEALS = words_in(
    "dinner supper lunch brunch breakfast tea party feast barbecue bbq braai fete wedding jam wine"
)
_PLANTS = words_in("tree trees bush bushes vine vines allotment plot orchard hedge")
_PUT = words_in("put added threw chucked tipped dumped went gone binned fed tossed dropped into")
_TOGETHER = words_in("both all total altogether everything together whole lot plus")
