"""Bare corrections: a figure or a unit put right by words that can tell of nothing else."""

import re
from typing import NamedTuple

from handlers.reading.acts import Amend
from handlers.reading.amending import SHORT, SORRY, amend_from, word_count
from handlers.reading.leaning import number_meant
from handlers.reading.message import Message
from handlers.reading.numbers import read_number
from handlers.reading.unitwords import Unit, unit_table
from handlers.reading.vocabulary import words_in

RESTATED = "a figure put right, and nothing else"

_PLAIN_CUES = (SORRY - {"actually", "wait"}) | words_in("* typed mistyped")
_JOINED_CUES = words_in("not make should shoulda shd ought must meant rather instead wrong")
CUES = _PLAIN_CUES | _JOINED_CUES
"""Words without one of which nothing is put right."""
_TAKEN_BACK = words_in("not than of said say wrote put typed logged posted entered")
"""Right before the figure that was wrong."""
_ALONE = CUES | _TAKEN_BACK | words_in(
    "ah oh ha haha no nope nah ok okay well um er argh ugh hang on hold actually wait bot please "
    "pls thanks ta , . ! - : — ( ) * ☺ it its that this is was 's be been have of to my the a an "
    "i me by and but last one number figure amount weight it all only just about really now read "
    "excuse"
)  # fmt: skip
_REASONS = words_in(
    "weighed weigh scale scales misread box bag bowl tub lid phone thumb thumbs finger fingers "
    "glasses total totals bran dose so far"
)
"""Behind a stop: why the figure was wrong, or what follows from the right one."""
_ARTICLES = words_in("a an one")
_STOPS = words_in(", . ! ; - — ( \n now")


class _Figure(NamedTuple):
    start: int
    value: float
    measured: bool


def restated(message: Message) -> Amend | None:
    """The figure that a short correction puts right, where it says nothing besides."""
    norms = message.norms
    if CUES.isdisjoint(norms) or word_count(message) > SHORT or message.days:
        return None
    figures, units, end = _read(message)
    if end < len(norms) and not _is_reasoned(message, figures, end):
        return None
    if not figures:
        return _another_unit(message, units)
    figure = _right(norms, figures)
    if figure is None or not _is_plain(message, figure, alone=len(figures) == 1):
        return None
    if any(each.measured for each in figures):
        return amend_from(message, RESTATED)
    meant = number_meant(figure.value, message) or Amend()
    return Amend(
        mass_kg=meant.mass_kg,
        volume_l=meant.volume_l,
        capacity_l=meant.capacity_l,
        rules=(RESTATED,),
    )


def _read(message: Message) -> tuple[list[_Figure], list[tuple[int, Unit]], int]:
    """Figures and bare units, and where the first word stands that belongs to no correction."""
    measured = {a.start: a for a in message.amounts if a.quantity in ("mass", "volume")}
    table = unit_table(message.context.units)
    figures: list[_Figure] = []
    units: list[tuple[int, Unit]] = []
    i = 0
    while i < len(message.norms):
        amount = measured.get(i)
        number = None if message.norms[i] in _ARTICLES else read_number(message.words, i)
        if amount is not None:
            figures.append(_Figure(i, amount.value, measured=True))
            i = amount.end
        elif number is not None and not number.word:
            figures.append(_Figure(i, number.value, measured=False))
            i = number.end
        elif message.norms[i] in _ALONE:
            i += 1
        elif message.norms[i] in table:
            units.append((i, table[message.norms[i]]))
            i += 1
        else:
            break
    return figures, units, i


def _is_reasoned(message: Message, figures: list[_Figure], end: int) -> bool:
    """Whether what follows is a reason, or asks what comes of the right figure."""
    norms = message.norms
    behind = bool(figures) and not _STOPS.isdisjoint(norms[figures[-1].start + 1 : end + 1])
    return behind and not _REASONS.isdisjoint(norms[end:])


def _right(norms: list[str], figures: list[_Figure]) -> _Figure | None:
    """The figure that is meant: none where two may be."""
    right = [f for f in figures if norms[f.start - 1 : f.start] not in _WRONG]
    if len(right) == 2 and not _BETWEEN.isdisjoint(norms[right[0].start : right[1].start]):
        return right[1]
    return right[0] if len(right) == 1 else None


_WRONG = [[word] for word in _TAKEN_BACK]
_BETWEEN = words_in("should shoulda shd must ought meant")
"""Between a wrong figure and the right one: "230 must be 320"."""


def _is_plain(message: Message, figure: _Figure, *, alone: bool) -> bool:
    """Whether the figure can be none of things, years or hours: "sorry, 6.30 not 7.30"."""
    if figure.measured:
        return not alone or not _JOINED_CUES.isdisjoint(message.norms) or message.norms[0] == "*"
    written = message.norms[figure.start]
    if message.context.last is not None:
        return number_meant(figure.value, message) is not None
    if _CLOCK.fullmatch(written) or _YEARS[0] <= figure.value <= _YEARS[1]:
        return False
    return figure.value >= _WEIGHED or figure.value != int(figure.value)


_CLOCK = re.compile(r"(?:[01]?\d|2[0-3])[:.](?:00|15|30|45)")
_YEARS = (1900, 2100)
_WEIGHED = 100
"""A bare whole number from here on counts grams or millilitres and hardly anything else."""


def _another_unit(message: Message, units: list[tuple[int, Unit]]) -> Amend | None:
    """ "Kilos! Not grams": the unit put right; the figure is as it was."""
    norms = message.norms
    units = [(i, unit) for i, unit in units if unit.quantity in ("mass", "volume")]
    wrong = [unit for i, unit in units if _is_refused(norms, i)]
    right = [unit for i, unit in units if not _is_refused(norms, i)]
    if "please" in norms or message.bot:
        return None  # "ounces please, not grams" is a wish for all that is to come
    if not right or any(unit != right[0] for unit in right):
        return None
    if wrong:
        return _converted(message, right[0], wrong[0])
    return Amend(rules=(RESTATED,)) if "should" in norms and len(units) == 1 else None


def _is_refused(norms: list[str], i: int) -> bool:
    return norms[i - 1 : i] in _WRONG or norms[max(0, i - 2) : i] in (["not", "a"], ["not", "an"])


def _converted(message: Message, right: Unit, wrong: Unit) -> Amend:
    """The amount last written down in the unit that was meant."""
    last = message.context.last
    said = getattr(last, "mass_kg" if wrong.quantity == "mass" else "volume_l", None)
    if said is None:
        return Amend(rules=(RESTATED,))
    much = said * right.factor / wrong.factor
    if right.quantity == "mass":
        return Amend(mass_kg=much, rules=(RESTATED,))
    return Amend(volume_l=much, rules=(RESTATED,))
