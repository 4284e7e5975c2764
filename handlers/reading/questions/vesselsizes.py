"""How much there is to bury, in a question about a trench: lots added up, a vessel's sides."""

from collections.abc import Sequence
from itertools import pairwise
from math import pi

from handlers.reading.measures.amounts import Amount
from handlers.reading.questions.question import Question
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_CM = {"cm": 1.0, "in": 2.54, "inch": 2.54, "inches": 2.54}
_NUMBER = r"\d{1,4}(?:\.\d+)?"
_UNIT = r"(?:cm|in|inch|inches)"
_BOX = Late(
    rf"\b(?P<a>{_NUMBER}) ?(?:{_UNIT} )?(?:x|by|×) ?(?P<b>{_NUMBER}) ?(?:{_UNIT} )?(?:x|by|×) ?"
    rf"(?P<c>{_NUMBER}) ?(?P<unit>{_UNIT})\b"
)
_ACROSS = rf"(?P<across>{_NUMBER})[ -]?(?P<unit>{_UNIT}) (?:across|wide|in diameter|diameter)\b"
_HIGH = rf"(?P<high>{_NUMBER})[ -]?(?P<other>{_UNIT}) (?:high|tall)\b"
_ROUND = (Late(rf"\b{_ACROSS}.{{0,20}}?\b{_HIGH}"), Late(rf"\b{_HIGH}.{{0,20}}?\b{_ACROSS}"))
_SIDED = words_in("high tall x by × cm inch inches")
_VESSEL = words_in("bin bucket tub pail box crate drum barrel caddy container dustbin")


def told_l(q: Question) -> float | None:
    """Litres of ferment told in one lot or several; None if there are none."""
    lots = [
        a
        for a in q.message.amounts
        if a.quantity == "volume" and not a.negative and q.start <= a.start < q.end
    ]
    told = [a for a in lots if not _is_where(q, a)]
    return _added(q, told) if told else None


def sides_l(q: Question) -> float | None:
    """Litres in the bin whose sides are told ("tub 40 x 30 x 25 cm"), box or round; else None."""
    if not (q.has(_SIDED) and q.has(_VESSEL)):
        return None
    text = q.message.text(q.start, q.end).casefold()
    if box := _BOX.search(text):
        cm3 = float(box["a"]) * float(box["b"]) * float(box["c"]) * _CM[box["unit"]] ** 3
        return cm3 / 1000
    found = next(filter(None, (sides.search(text) for sides in _ROUND)), None)
    if found is None:
        return None
    across = float(found["across"]) * _CM[found["unit"]]
    return pi / 4 * across**2 * float(found["high"]) * _CM[found["other"]] / 1000


def _is_where(q: Question, amount: Amount) -> bool:
    """ "If I do it in a tub": where, not how much."""
    norms = q.message.norms
    led = norms[max(0, amount.start - 1) : amount.start] == ["in"]
    return amount.vessel and led and norms[amount.start : amount.start + 1] == ["a"]


def _added(q: Question, lots: Sequence[Amount]) -> float:
    """ "10 L and 15 L" are 25 L; "80 L, half full" is 40 L."""
    norms, total = q.message.norms, lots[0].value
    for before, lot in pairwise(lots):
        if not _AND.issuperset(norms[before.end : lot.start]):
            break
        total += lot.value
    behind = [n for n in norms[lots[0].end : lots[0].end + 6] if n not in _FILLERS]
    return total / 2 if len(lots) == 1 and behind[:2] == ["half", "full"] else total


_AND = words_in("and + plus & ,")
_FILLERS = words_in(", is it only about")
