"""What is read off a strip, a meter or a thermometer without its unit."""

from handlers.reading.measures.digits import Number
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

THERMOMETERS = words_in("thermometer temp temperature probe")
STRIPS = words_in("strip strips litmus ph meter acid acidity")
_READING = words_in("say says said read reads reading gives giving shows showing showed came at is")
_LEAST_ACID, _MOST_ACID = 2.0, 9.0
"""pH; beyond them no figure is the reading of a ferment."""
_COLDEST, _HOTTEST, _HOTTEST_FAHRENHEIT = -40.0, 60.0, 140.0
"""°C and °F; no bin that ferments is as hot, and none is out in a greater frost."""
_FEVERS = (35.0, 43.0)
"""°C that a body may have."""
_ILL = words_in(
    "school nursery fever doctor gp nurse calpol paracetamol ibuprofen aspirin flu ill poorly "
    "unwell tonsils tonsillitis antibiotics chickenpox measles teething vet surgery forehead "
    "armpit cough coughing sniffles patient hospital keeping sofa duvet"
)
_ARTICLES = frozenset({"a", "an", "one"})


def acidity(message: Message) -> list[float]:
    """ "Reads 3.6 on the strips": the one free figure beside a word for an acidity test; a whole
    number only where it is read off ("pH paper says four")."""
    on_paper = message.has(_PAPER) and _ON_PAPER.search(" ".join(message.norms)) is not None
    if not (on_paper or message.has(STRIPS)):
        return []
    read = is_read_off(message)
    numbers = _free_numbers(message)
    if len(numbers) > 1:
        numbers = [
            n for n in numbers if message.has_in(STRIPS | _PAPER, max(0, n.start - 6), n.end + 6)
        ]
        numbers = [n for n in numbers if _LEAST_ACID <= n.value <= _MOST_ACID]
    free = [n.value for n in numbers if read or n.value % 1]
    return free if len(free) == 1 and _LEAST_ACID <= free[0] <= _MOST_ACID else []


_PAPER = frozenset({"paper", "papers"})
_ON_PAPER = Late(
    r"\b(?:on|by) (?:the )?papers?\b|\bpapers? (?:say|says|said|show|shows|read|reads)\b"
)


def is_read_off(message: Message) -> bool:
    """Whether a figure is said to be what something shows."""
    return message.has(_READING) or "=" in message.said


def warmth(message: Message, start: int = 0, end: int | None = None) -> list[float]:
    """ "Thirty-three on the probe": °C, where it is named; degrees Fahrenheit where no °C can be
    meant and the group measures so."""
    if not message.has(THERMOMETERS):
        return []
    stop = len(message.norms) if end is None else end
    numbers = [n for n in _free_numbers(message) if start <= n.start < stop]
    numbers = [n for n in numbers if not message.has_in(_OUTSIDE, n.end, n.end + 1)]
    if len(numbers) > 1:
        behind = [n for n in numbers if message.has_in(THERMOMETERS, max(0, n.start - 4), n.start)]
        numbers = behind if len(behind) == 1 else numbers
    values = [-n.value if _is_below(message, n) else n.value for n in numbers]
    if not values or (end is None and len(values) > 1):
        return []
    if _COLDEST < values[0] < _HOTTEST and values[0]:
        return values[:1]
    fahrenheit = message.context.units == "us" and _HOTTEST <= values[0] <= _HOTTEST_FAHRENHEIT
    return [(values[0] - 32) / 1.8] if fahrenheit else []


def _is_below(message: Message, number: Number) -> bool:
    """ "Says -6", "minus 6": whether a sign before the number makes it one below nought."""
    norms, at = message.norms, number.start - 1
    if at < 0 or norms[at] not in ("-", "−", "–", "minus", "negative"):
        return False
    sign = message.words[at]
    if sign.kind == "word":
        return True
    touches = sign.end == message.words[number.start].start
    return touches and (at == 0 or message.words[at - 1].end < sign.start)


_OUTSIDE = words_in("outside outdoors outwith")


def is_fever(message: Message, celsius: float) -> bool:
    """ "Took Mabel's temperature, 39, she's off school": a person's."""
    held = indexes(message.bins)
    told = {*unheld(message.norms, held)}
    return _FEVERS[0] <= celsius <= _FEVERS[1] and not told.isdisjoint(_ILL)


def _free_numbers(message: Message) -> list[Number]:
    """The numbers, in digits or words, that belong to no amount, day or name."""
    held = indexes(message.amounts, message.days, message.bins)
    found: list[Number] = []
    i = 0
    while i < len(message.words):
        number = None if i in held else read_number(message.words, i)
        if number is None or number.word or number.vague:
            i += 1
            continue
        if message.norms[i] not in _ARTICLES:
            found.append(number)
        i = number.end
    return found
