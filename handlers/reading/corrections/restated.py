"""Corrections in few words: a figure, a unit or a bin put right by a form that tells nothing else.

A form is a cue, what was wrong and what is right, in any order; behind a stop may follow how the
slip came about.
"""

from collections.abc import Collection, Sequence
from dataclasses import replace
from math import log10

from handlers.practice.units import KILOGRAMS
from handlers.reading.acts import Amend
from handlers.reading.corrections.numberright import number_meant
from handlers.reading.corrections.rightwrong import (
    BY_FORM,
    JOINED_CUES,
    PLAIN_CUES,
    REASONS,
    STOPS,
    TELLING,
    VESSELS,
    WEIGHED,
    WEIGHING,
    WITHOUT,
    Sides,
    Thing,
    right,
    sides,
)
from handlers.reading.corrections.unitright import amount_of, another_unit, unit_said
from handlers.reading.measures.unitwords import Unit
from handlers.reading.message import Message
from handlers.reading.plaintext import SHORT, word_count
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_NAMED = (
    WEIGHING
    | TELLING
    | words_in(
        "typo typos mistyped misread miskeyed misweighed typing decimal supposed autocorrect thumb "
        "thumbs"
    )
)
"""Cues of a record alone: with one of these any figure is one of the record."""
_HEADS = PLAIN_CUES | JOINED_CUES | _NAMED
CUES = _HEADS | REASONS | WITHOUT | WEIGHED
"""Words without one of which nothing is put right."""
_SLIPS = words_in(
    "misread decimal comma point nought zero number numbers digit digits figure figures typing "
    "wrong"
)
"""Before a stop: how a figure came to be wrong."""
_ENDS = words_in(". ; ! \n so")
_HEADS_ALONE = _NAMED | words_in("should shoulda shd shld make")
"""Cues behind which another sentence may tell or ask of something else."""
_OURSELVES = words_in("i im my me we our")
_WONDERING = _OURSELVES | words_in("what how where")
"""They begin what a person adds about a slip, where the two figures show that it was one."""
_NOTHING: frozenset[str] = frozenset()


def restated(message: Message) -> Amend | None:
    """What a short correction puts right, where it says nothing besides."""
    norms = message.norms
    if CUES.isdisjoint(norms) or word_count(message) > 2 * SHORT:
        return None
    told = sides(message)
    if not (told.figures or told.units or told.bins):
        told = sides(message, _behind_reason(message))
        if not any(each.wrong for each in told.figures) and "should" not in norms:
            return None
    if any(day.start < told.end for day in message.days):
        return None
    if told.figures:
        return _another_figure(message, told)
    return another_unit(message, told) or _another_bin(message, told)


def _another_figure(message: Message, told: Sides) -> Amend | None:
    figure = right(message.norms, told.figures)
    if figure is None or not _is_plain(message, figure, told):
        return None
    added = _WONDERING if _is_slip(figure, told.figures) else _NOTHING
    if not _ends_well(message, told, told.figures, added):
        return None
    bin = right(message.norms, told.bins)
    if bin is not None and _is_its_size(message, bin, figure) and figure.amount is not None:
        return Amend(capacity_l=figure.amount.value, bin=str(bin.of), rules=(BY_FORM,))
    return replace(
        _measured(figure, told)
        or _in_its_unit(figure, told, message)
        or number_meant(_number(figure), message)
        or _by_its_measure(figure, message)
        or Amend(),
        bin=None if bin is None else str(bin.of),
        rules=(BY_FORM,),
    )


def _is_its_size(message: Message, bin: Thing, figure: Thing) -> bool:
    """ "Rosie is a four gallon pail, not five": what the bin holds, and not what went in."""
    between = message.norms[bin.end : figure.start]
    sized = figure.amount is not None and figure.amount.size
    return sized and between[:1] != [] and _IS_A.issuperset(between)


_IS_A = words_in("is was 's a an the only just really actually")


def _measured(figure: Thing, told: Sides) -> Amend | None:
    """The figure in the unit said with it, with the wrong one, or by itself ("ml")."""
    if figure.amount is not None:
        return amount_of(figure.amount.quantity, figure.amount.value)
    for other in told.figures:
        if other.amount is not None and _number(other):
            factor = other.amount.value / _number(other)
            return amount_of(other.amount.quantity, _number(figure) * factor)
    alone = [thing.of for thing in told.units if isinstance(thing.of, Unit) and not thing.wrong]
    if len(alone) == 1:
        return amount_of(alone[0].quantity, _number(figure) * alone[0].factor)
    return None


def _in_its_unit(figure: Thing, told: Sides, message: Message) -> Amend | None:
    """The figure in the unit that makes the wrong one what was last written down."""
    for each in told.figures:
        unit = unit_said(message, _number(each)) if each.wrong else None
        if unit is not None:
            return amount_of(unit.quantity, _number(figure) * unit.factor)
    return None


def _by_its_measure(figure: Thing, message: Message) -> Amend | None:
    """A bare figure read off a scale or a jug, where no record tells its unit; one with decimals
    or of hundreds is read off a scale where no liquid is spoken of."""
    if message.context.last is not None:
        return None
    number = _number(figure)
    if message.has(_SCALES) and number == int(number) and number < _HEAVY:
        return Amend(mass_kg=number * (1.0 if message.context.units == "metric" else _POUND))
    if message.context.units != "metric":
        return None
    decimal = number < _WEIGHED and number != int(number)
    factor = 1.0 if decimal else 0.001 if number >= _WEIGHED else None
    if factor is None:
        return None
    if "jug" in message.said:
        return Amend(volume_l=number * factor)
    weighed = message.has(_SCALES) or not message.liquid()
    return Amend(mass_kg=number * factor) if weighed else None


_HEAVY = 30
"""A bare whole number up to here, read off a scale, counts kilograms or pounds."""
_POUND = KILOGRAMS["pound"]
_SCALES = WEIGHED | words_in("scale scales weight")


def _number(figure: Thing) -> float:
    return figure.of if isinstance(figure.of, int | float) else 0.0


def _behind_reason(message: Message) -> int:
    """Where the correction begins behind its reason: "I had the comma astray, 1.2 not 12"."""
    norms = message.norms
    stop = next((i for i, norm in enumerate(norms) if norm in STOPS or norm == ":"), 0)
    return 0 if _SLIPS.isdisjoint(norms[:stop]) or message.items else stop + 1


def _ends_well(
    message: Message, told: Sides, things: Sequence[Thing], added: Collection[str]
) -> bool:
    """Whether nothing follows but a reason, what begins with a word of `added`, or a sentence that
    tells of something else.
    """
    norms = message.norms
    behind = things[-1].end
    between, rest = norms[behind : told.end + 1], norms[behind:]
    if not _ENDS.isdisjoint(between) and not _HEADS_ALONE.isdisjoint(norms[:behind]):
        return True
    if _OF_THE_DEED.fullmatch(" ".join(rest)) and not message.days:
        return True
    if word_count(message) > SHORT or message.days:
        return False
    if _OF_THE_RECORD.fullmatch(" ".join(norms[things[-1].end :])):
        return True
    if told.end >= len(norms) or not (STOPS.isdisjoint(between) or REASONS.isdisjoint(rest)):
        return True
    return any(norm in added for norm in between) and "?" not in norms


_OF_THE_RECORD = Late(
    r"(?:on|for|in|of) (?:that|the|my) (?:last )?(?:drain|draining|layer|one|entry|record|lot)"
    r"(?: [.!]| please| sorry)*"
)
""" "500 not 650 on that drain"."""


_OF_THE_DEED = Late(
    r"(?:, )?(?:(?:from|in|into|off|to|out of) which|that|which|where|wherefrom) (?:i|we) "
    r"(?:[a-z]+ ?){1,2}(?: [a-z0-9.]+){0,6}(?: [.!])*"
)
""" "The barn, not the yard, from which I drew that pint": which record it is, and nothing new."""


def _is_plain(message: Message, figure: Thing, told: Sides) -> bool:
    """Whether the figure can be none of things, years or hours: "sorry, 6.30 not 7.30"."""
    if figure.amount is None and message.norms[figure.start - 1] == "at":
        return False  # "sorry, it's at 7": an hour
    head = message.norms[: told.end]
    wrong = any(each.wrong for each in told.figures)
    reasoned = not REASONS.isdisjoint(message.norms[told.figures[-1].end :])
    if not wrong and _is_put_in(message.norms, figure):
        return False
    if not wrong and _names_both(message.norms, figure, told.bins):
        return figure.amount is not None
    if not wrong and (told.bins or not (_has_cue(head) or (reasoned and not _IT.isdisjoint(head)))):
        return False  # it tells of something new
    if figure.amount is not None or any(each.amount for each in told.figures):
        less = not WITHOUT.isdisjoint(head) and not VESSELS.isdisjoint(head)
        return wrong or less or not JOINED_CUES.isdisjoint(head) or head[0] == "*"
    if message.context.last is not None:
        known = _in_its_unit(figure, told, message) or number_meant(_number(figure), message)
        return known is not None
    if _is_of_time(message.norms[figure.start], figure):
        return False
    if _number(figure) >= _WEIGHED or _number(figure) != int(_number(figure)):
        return True
    if message.context.in_room:
        return False  # no record is spoken of that it could be one of
    alone = told.end >= len(message.norms) or reasoned or _is_slip(figure, told.figures)
    weighed = message.norms[:2] == ["make", "that"] and _is_weighed(message.norms)
    return (wrong and alone) or weighed or not _NAMED.isdisjoint(message.said)


def _is_put_in(norms: Sequence[str], figure: Thing) -> bool:
    """ "Put 2 kg in", "put in 2 kg": a deed, and not what was written."""
    inside = norms[figure.start - 1 : figure.start], norms[figure.end : figure.end + 1]
    return "put" in norms[: figure.start] and ["in"] in inside


def _names_both(norms: Sequence[str], figure: Thing, bins: Sequence[Thing]) -> bool:
    """ "Sorry, red, and 650 g", "oops 650 g and red": the bin and the amount are put right at once,
    where "sorry, 650 g in red" tells what was forgotten.
    """
    if len(bins) != 1 or not PLAIN_CUES.intersection(norms[:1]):
        return False
    first, second = sorted((figure, bins[0]))
    lead, between = norms[1 : first.start], norms[first.end : second.start]
    return "and" in between and _AND_IT_WAS.issuperset((*lead, *between))


_AND_IT_WAS = words_in(", : and it was the in that is 's")


def _is_weighed(norms: Sequence[str]) -> bool:
    """Whether a vessel was weighed with it, or it was weighed again."""
    again = "it" in norms and not _AGAIN.isdisjoint(norms)
    return not WEIGHED.isdisjoint(norms) and (again or not VESSELS.isdisjoint(norms))


def _has_cue(head: Sequence[str]) -> bool:
    """Whether a word of putting right stands there, or something was weighed again."""
    again = not WEIGHED.isdisjoint(head) and not _AGAIN.isdisjoint(head)
    less = not WITHOUT.isdisjoint(head) and not VESSELS.isdisjoint(head)
    return again or less or not _HEADS.isdisjoint(head)


_AGAIN = words_in("again once second twice")
_IT = words_in("it its that")


def _is_of_time(written: str, figure: Thing) -> bool:
    return bool(_CLOCK.fullmatch(written)) or _YEARS[0] <= _number(figure) <= _YEARS[1]


_CLOCK = Late(r"(?:[01]?\d|2[0-3])[:.](?:00|15|30|45)")
_YEARS = (1900, 2100)
_WEIGHED = 100
"""A bare whole number from here on counts grams or millilitres and hardly anything else."""


def _is_slip(figure: Thing, figures: Sequence[Thing]) -> bool:
    """Whether the wrong figure is the right one mistyped: a nought, a comma, turned digits."""
    meant = _number(figure)
    for each in figures:
        if each.wrong and meant and _number(each):
            ten, digits = log10(_number(each) / meant), (_digits(meant), _digits(_number(each)))
            if abs(ten) > _SAME and abs(ten - round(ten)) < _SAME:
                return True
            if digits[0] != digits[1] and sorted(digits[0]) == sorted(digits[1]):
                return True
    return False


_SAME = 1e-6


def _digits(value: float) -> str:
    return f"{value:g}".replace(".", "")


def _another_bin(message: Message, told: Sides) -> Amend | None:
    """ "The porch, not the yard": one known bin in place of another."""
    bin = right(message.norms, told.bins)
    if bin is None or not any(each.of != bin.of for each in told.bins):
        return None
    if any(item.start < told.end for item in message.items):
        return None
    if message.context.in_room and message.context.last is None:
        return None
    if not _ends_well(message, told, told.bins, _OURSELVES):
        return None
    return Amend(bin=str(bin.of), rules=(BY_FORM,))
