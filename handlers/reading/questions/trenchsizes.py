"""The sides of a trench in a question, its cover, who digs there, and the bins that go in.

"30 cm wide and 25 deep", "a hole 50 cm across", "1 m by 30 cm", "2 ft square", "with 30 cm of
cover", "for the shed and the yard together", "for 3 bins", "for half the shed bin", "we have
foxes".
"""

from dataclasses import replace

from handlers.reading.acts import Ask
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.digits import digits_value
from handlers.reading.message import Message
from handlers.reading.phrases import named_text
from handlers.reading.questions.bincounts import bins_counted
from handlers.reading.questions.question import Question
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in("wide deep long across width depth length square by x × cover top under")
_SIDES = {
    "long": "length_m", "length": "length_m", "wide": "width_m", "width": "width_m",
    "across": "width_m", "deep": "depth_m", "depth": "depth_m",
}  # fmt: skip
_COVER = frozenset({"cover"})
_METRES = {"c": 0.01, "m": 1.0, "f": 0.3048, "i": 0.0254}
"""Metres in a unit, by its first letter: centimetres, metres, feet, inches."""
_UNIT = r"(?:centim|cm|m|feet|foot|ft|in)[a-z]*"
_SIDE = rf"([\d.]+) ?({_UNIT})?"
_AND = r" ?(?:by|x|×) ?"
_SIDED = Late(rf"^{_SIDE}{_AND}{_SIDE}(?:{_AND}{_SIDE})?")
_EACH = words_in("both all")
_HALVES = frozenset({"half"})
_HALF_OF = Late(r"\bhalf (?:of )?(?:(?:the|my|our) )?qbin\b")
_FULL_BY_HALF = Late(r"\bhalf full\b")
_FULL = frozenset({"full"})
_NOT_FULL = Late(
    r"\b(?:not|isnt|isn't|never|how|half|quarters?|thirds?|percent|%|\d+)"
    r"(?: (?:yet|quite|all))? full\b|"
    r"\bwhen (?:is|are|will)\b|"
    r"\bfull (?:of|depth|length|width|sun|shade|cover|weeks?|days?|months?)\b"
)
_DIGGERS = words_in(
    "foxes fox dogs dog badgers badger rats raccoons raccoon racoons bears bear coyotes boar "
    "animals"
)
_NONE = words_in("no without not")
_BEFORE = 3
"""Words before a measure among which its side is named ("a depth of 30 cm")."""


def with_sides(act: Ask, message: Message) -> Ask:
    """The question about a trench with the sides that were said, in metres."""
    if not message.has(CUES):
        return act
    norms, sides = message.norms, dict[str, float]()
    lengths = [a for a in message.amounts if a.quantity == "length"]
    for amount in lengths:
        behind = norms[amount.end : amount.end + 1]
        before = [n for n in norms[max(0, amount.start - _BEFORE) : amount.start] if n in _NOUNS]
        name = behind[0] if behind and behind[0] in _SIDES else next(iter(before[-1:]), None)
        if (_COVER.issuperset(behind) and behind) or _is_of_cover(norms, amount):
            sides.setdefault("cover_m", amount.value)
        elif name is not None:
            sides.setdefault(_SIDES[name], amount.value)
    for i, norm in enumerate(norms[1:], 1):  # "30 cm wide and 25 deep"
        number = digits_value(norms[i - 1]) if norm in _SIDES else None
        shared = [a for a in lengths if a.end < i]
        said = digits_value(norms[shared[-1].start]) if shared else None
        if number and said:
            sides.setdefault(_SIDES[norm], shared[-1].value / said * number)
    if "across" in norms and "width_m" in sides:
        sides.setdefault("length_m", sides["width_m"])
    for side, value in _by_two(message).items():
        sides.setdefault(side, value)
    return replace(act, **sides) if sides else act  # type: ignore[arg-type]


def _is_of_cover(norms: list[str], amount: Amount) -> bool:
    """ "30 cm of cover", "30 cm of soil on top", "under 30 cm of soil"."""
    behind = norms[amount.end : amount.end + 4]
    under = norms[amount.start - 1 : amount.start] == ["under"]
    return behind[:1] == ["of"] and (behind[1:2] == ["cover"] or "top" in behind or under)


def _by_two(message: Message) -> dict[str, float]:
    """The sides of "1 m by 30 cm", "3 x 1 ft", "50 x 50 x 40 cm", "2 ft square"."""
    for amount in message.amounts:
        said = message.text(amount.start, amount.end + 1).casefold()
        if amount.quantity == "length" and said.endswith(" square"):
            return {"length_m": amount.value, "width_m": amount.value}
        if amount.quantity != "area":
            continue
        sides = _SIDED.search(message.text(amount.start, amount.end + _THIRD).casefold())
        if sides is None or not (unit := sides[2] or sides[4] or sides[6]):
            continue
        length_m = float(sides[1]) * _METRES[unit[0]]
        told = {"length_m": length_m, "width_m": amount.value / length_m}
        if sides[5]:
            told["depth_m"] = float(sides[5]) * _METRES[(sides[6] or sides[4] or unit)[0]]
        return told
    return {}


_THIRD = 3
"""Words behind two sides among which the depth may stand ("x 40 cm")."""


def bins_in(q: Question) -> tuple[str, ...]:
    """The names of the group's bins in a question, each once."""
    refs = sorted((*q.message.bins, *q.message.named), key=lambda ref: ref.start)
    said = [ref for ref in refs if ref.known and q.start <= ref.start < q.end]
    return tuple(dict.fromkeys(ref.name for ref in said if ref.name))


def with_bins(act: Ask, q: Question) -> Ask:
    """The question about a trench with all the bins that go in, or how much of one."""
    names = bins_in(q)
    measured = act.volume_l or act.mass_kg
    counted = None if names or measured else bins_counted(q.message, q.start, q.end)
    if counted:
        act = replace(act, count=counted.value)
    elif len(names) > 1 and not measured:
        act = replace(act, bins=names)
    elif not names and q.has(_EACH) and not measured:
        act = replace(act, each="both" if "both" in q.words else "all")
    if q.has(_HALVES) and act.bin:
        full = HALF_FULL if _FULL_BY_HALF.search(q.text) else None
        act = replace(act, what=full or (HALF if _HALF_OF.search(named_text(q.message)) else None))
    elif q.has(_FULL) and not _NOT_FULL.search(q.text):
        act = replace(act, what=FULL)
    return replace(act, animals=True) if q.has(_DIGGERS) and not q.has(_NONE) else act


HALF, HALF_FULL, FULL = "half of it", "half full", "full"
"""How much of a bin is meant."""
_NOUNS = words_in("width depth length")
