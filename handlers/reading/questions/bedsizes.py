"""Which bed a question is about and how big: "per square metre", "a 4 x 8 bed", "two beds of …"."""

from dataclasses import replace

from handlers.practice.units import SQUARE_METRES
from handlers.reading.acts import Ask
from handlers.reading.questions.howmany import COUNTED
from handlers.reading.questions.question import Question
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_CUES = words_in("square sq m2 m² ft2 ft² bed beds plots borders")
_PER = Late(
    r"\b(?:per|a|an|each|every|to the|1|one) (?:(?:square|sq) "
    r"(?P<of>m(?:et(?:re|er))?|f(?:oo)?t|yard|yd)\b|(?P<short>m2|m²|ft2|ft²))"
)
_BARE = Late(r"\b(?P<one>\d{1,2}(?:\.\d)?) ?(?:x|by|×) ?(?P<two>\d{1,2}(?:\.\d)?) (?:\w+ )?beds?\b")
_SEVERAL = Late(
    rf"\b(?P<count>\d{{1,2}}|both|{'|'.join(COUNTED)}) (?:\w+ )?(?:beds|plots|borders) "
    r"(?:of|,|each)"
)
_UNITS = {"m": "square_metre", "f": "square_foot", "y": "square_yard"}


def with_size(act: Ask, q: Question) -> Ask:
    """The question about a bed with its area, however it was said, in square metres."""
    if not q.has(_CUES):
        return act
    area = act.area_m2 or _one(q) or _bare(q)
    several = _SEVERAL.search(q.text) if area else None
    if area and several:
        area *= COUNTED.get(several["count"]) or _number(several["count"])
    return replace(act, area_m2=area)


def _number(count: str) -> int:
    return 2 if count == "both" else int(count)


def _one(q: Question) -> float | None:
    """The one square metre or foot that it is asked for."""
    unit = _PER.search(q.text)
    return SQUARE_METRES[_UNITS[(unit["of"] or unit["short"])[0]]] if unit else None


def _bare(q: Question) -> float | None:
    """ "A 4 x 8 bed", in feet where beds are measured so."""
    sides = _BARE.search(q.text) if q.message.context.units != "metric" else None
    if sides is None:
        return None
    return float(sides["one"]) * float(sides["two"]) * SQUARE_METRES["square_foot"]
