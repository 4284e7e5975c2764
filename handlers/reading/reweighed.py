"""Corrections told only by their circumstance: weighed again, the tub taken off, a unit misread."""

import re
from dataclasses import replace
from math import log10

from handlers.reading.acts import Amend, Layer
from handlers.reading.amending import amend_from, is_asking, word_count
from handlers.reading.leaning import number_meant
from handlers.reading.message import Message
from handlers.reading.numbers import read_number
from handlers.reading.restated import BY_FORM, WEIGHED, converted
from handlers.reading.unitwords import Unit, unit_table
from handlers.reading.vocabulary import words_in

CUES = words_in(
    "weighed weighing scale scales weight comma point decimal ounces pounds grams grammes kilos "
    "litres liters millilitres ml pints quarts gallons cups cooked nearer closer knock less minus "
    "figure amount without take subtract deduct reweighed"
)
"""Words without one of which nothing here is found."""
_MOST_WORDS = 18
_OTHER_SCALES = words_in(
    "euros dollars quid price diet baby midwife doctor vet dog cat suitcase luggage parcel stone "
    "him her me myself recipe flour heavier lighter year map"
)
"""What is weighed or counted in these words and is no scraps."""
_FARTHEST = 20
"""Times as much or as little as was last written down that a correction may say."""

_TUB = (
    r"(?:(?:the|its|my|a) )?(?:qunit|tub|bucket|bowl|bag|pan|lid|jar|crate|tin|box|dish"
    r"|basin|pot|caddy|container|plate|tray|pail)(?: on it)?"
)
_LEAD = r"(?:(?:ah|oh|ok|so|and|but|hmm|wait|sorry|right|no|actually|,|\.|we|i|turns out) )*"
_IS = (
    r"(?:(?:,|:|;|-|and|it|that|which|is|was|'s|only|just|about|comes|came|to|got|gives|gave|say|says"
    r"|said|reads|read|shows|showed|makes|made|at|now|really|actually|in fact) )*"
)
_WHY = r"(?: [,.;!(-]+(?: [^\n]{0,70})?)?"
_REASON = rf"(?:{_WHY}| (?:without|with|less|minus|not) [^\n]{{0,40}})"
_RIGHT = tuple(
    re.compile(_LEAD + form + _REASON)
    for form in (
        rf"(?:(?:re )?weighed|reweighed|weighing) (?:it|them|that|this|the lot|mine)? ?"
        rf"(?:again|once more|twice|properly|a second time|on [a-z ]{{3,25}}) {_IS}qfig",
        rf"reweighed (?:it|them|that)? ?{_IS}qfig",
        rf"(?:checked|tried) (?:it )?on (?:the|a) (?:[a-z]+ )?scales? {_IS}qfig",
        rf"(?:the )?(?:[a-z]+ )?scales? {_IS}qfig",
        rf"(?:the |a )?(?:second|third|other|proper|another) weighing {_IS}qfig",
        rf"(?:less|minus|without|not counting|allowing for) {_TUB} {_IS}qfig",
        rf"{_IS}qfig (?:without|less|minus|net of|not counting) {_TUB}",
        rf"(?:the |my )?(?:true|correct|right|real|actual|proper|exact) (?:weight|figure|amount"
        rf"|number|reading|measure)(?: (?:for|of) (?:that|it|this)| there)? {_IS}qfig",
        r"(?:had|got|put|moved|misplaced|missed) the (?:comma|point|decimal|decimal point)"
        rf"(?: [a-z]+){{0,4}} (?:[,:;-] )?{_IS}qfig(?: (?:and )?not qfig)?",
        rf"(?:that|the) (?:figure|weight|amount|number) was with {_TUB} (?:, )?{_IS}qfig"
        r"(?: without(?: it)?)?",
        rf"looks like {_IS}qfig (?:would be|is) (?:nearer|closer)(?: to the (?:truth|mark))?",
    )
)
_UNIT = re.compile(
    _LEAD + r"(?:qunit not qunit|sorry ,? ?qunit"
    r"|(?:that is|thats|that 's|it is|it 's|it was|in) qunit(?: i measured)?(?: ,? ?not qunit)?"
    r"|read qunit (?:where|for) (?:i (?:wrote|put|said|typed) )?qunit"
    r"|(?:wrong unit(?: there)? , )?i (?:meant|mean) qunit)" + _WHY
)
_OFF = re.compile(
    _LEAD + rf"(?:take|knock|subtract|deduct) qfig (?:off|from)(?: (?:that|it))? for {_TUB}" + _WHY
)
_COOKED = re.compile(
    _LEAD + r"(?:it |that |they )(?:was|were|is) cooked(?: (?:stuff|food|scraps))? ?,? not raw"
    r"(?: ,? ?(?:if that matters|sorry|my mistake|on that (?:last )?one|in that (?:last )?one"
    r"|that last (?:lot|one)))*"
)


def reweighed(message: Message) -> Amend | None:
    """What a short message, and nothing else in it, puts right of the last record."""
    if CUES.isdisjoint(message.norms) or word_count(message) > _MOST_WORDS:
        return None
    if any(b.name is not None for b in message.bins) or message.days or message.members:
        return None
    if message.has(_OTHER_SCALES) or is_asking(message) or message.bot:
        return None
    text, figures, units = _slotted(message)
    if _COOKED.fullmatch(text) is not None:
        return Amend(materials={"cooked": 1.0}, rules=(BY_FORM,))
    if figures and _OFF.fullmatch(text) is not None:
        return _taken_off(message)
    if figures and any(form.fullmatch(text) for form in _RIGHT):
        return _figure(message, figures[0])
    if units and not figures and _UNIT.fullmatch(text) is not None:
        return _unit(message, units)
    return None


def _slotted(message: Message) -> tuple[str, list[int], list[Unit]]:
    """The words with `qfig` for each figure, measured or not, and `qunit` for each bare unit."""
    measured = {a.start: a.end for a in message.amounts if a.quantity in ("mass", "volume")}
    table = unit_table(message.context.units)
    words: list[str] = []
    figures: list[int] = []
    units: list[Unit] = []
    i = 0
    while i < len(message.norms):
        number = read_number(message.words, i) if i not in measured else None
        end = measured.get(i) or (number.end if number and not number.word else None)
        if end is not None:
            figures.append(i)
            words.append("qfig")
        elif message.norms[i] in table and table[message.norms[i]].quantity in ("mass", "volume"):
            units.append(table[message.norms[i]])
            words.append("qunit")
        else:
            words.append(message.norms[i])
        i = end or i + 1
    return " ".join(words).strip(" .!"), figures, units


def _figure(message: Message, at: int) -> Amend | None:
    if any(a.start == at for a in message.amounts):
        found = replace(amend_from(message, BY_FORM), materials=None, rich=None)
        return found if _is_near(message, found) else None
    number = read_number(message.words, at)
    if number is None:
        return None
    if message.context.last is not None:
        meant = number_meant(number.value, message) or _point_moved(message, number.value)
        return None if meant is None else replace(meant, rules=(BY_FORM,))
    whole = number.value == int(number.value)
    return Amend(rules=(BY_FORM,)) if number.value >= WEIGHED or not whole else None


def _point_moved(message: Message, right: float) -> Amend | None:
    """ "I had the comma astray, 1.2 not 12": the same figures, ten or a hundred times less."""
    last = message.context.last
    if not message.has(_POINTS) or right <= 0:
        return None
    mass, volume = getattr(last, "mass_kg", None), getattr(last, "volume_l", None)
    if mass and _is_power_of_ten(mass / right):
        return Amend(mass_kg=right)
    return Amend(volume_l=right) if volume and _is_power_of_ten(volume / right) else None


def _is_power_of_ten(ratio: float) -> bool:
    return round(log10(ratio), 6).is_integer()


_POINTS = words_in("point comma decimal")


def _is_near(message: Message, found: Amend) -> bool:
    """Whether the amount can stand in the place of the one last written down."""
    last = message.context.last
    for name in ("mass_kg", "volume_l"):
        said, right = getattr(last, name, None), getattr(found, name)
        if said and right:
            return bool(1 / _FARTHEST <= right / said <= _FARTHEST)
    return True


def _taken_off(message: Message) -> Amend:
    last = message.context.last
    off = next((a.value for a in message.amounts if a.quantity == "mass"), None)
    if off is None or not isinstance(last, Layer) or (last.mass_kg or 0.0) <= off:
        return Amend(rules=(BY_FORM,))
    return Amend(mass_kg=(last.mass_kg or 0.0) - off, rules=(BY_FORM,))


def _unit(message: Message, units: list[Unit]) -> Amend:
    """The figure last written down in the unit that was meant, where both are known."""
    if len(units) == 2:
        return converted(message, units[0], units[1])
    return Amend(rules=(BY_FORM,))
