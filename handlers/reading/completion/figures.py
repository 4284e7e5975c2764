"""Figures without a unit where the message measures nothing else: what was done tells the unit.

In a metric group "haldi: tops, 350" is of grams, "Bin 12: rendang. 1.4" of kilos and "drained
Bridie, 250" of millilitres.
"""

from collections.abc import Collection, Sequence

from handlers.reading.food.ofwhat import of_what
from handlers.reading.measures.digits import digits_value
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_KILOS = Late(r"\d{1,2}[.,]\d{1,2}")
_GRAMS = Late(r"[1-9]\d0|1\d[05]0")
_MILLILITRES = Late(r"[1-9]\d[05]|[2-9]0")
_OUT = words_in("off from out oot aff came")
_INTO = words_in("in into intae to of all total altogether together")
_SCALES = words_in("scale scales weighed")
_GRAMS_OF = 200
"""Grams below which a figure right before a thing may count it ("100 tea bags")."""


def bare_mass(message: Message) -> float | None:
    """Kilos that the one bare figure of a layer tells; None if there is none, or more."""
    if not _is_free(message):
        return None
    free = _free(message)
    if len(free) > 1:
        return _of_things(message, free)
    if not free:
        return None
    at, figure = free[0], message.norms[free[0]]
    if _KILOS.fullmatch(figure):
        told = message.has(_SCALES) or _ends(message, at, _INTO) or _is_beside(message, at)
        return digits_value(figure) if told else None
    if not _GRAMS.fullmatch(figure) or not any(not item.absent for item in message.items):
        return None
    grams = float(figure)
    counts = any(item.start == at + 1 for item in message.items) and grams < _GRAMS_OF
    told = _ends(message, at, _INTO) or _is_beside(message, at)
    return grams / 1000 if told and not counts else None


def _of_things(message: Message, free: Sequence[int]) -> float | None:
    """ "2.1 mango + 0.9 squash. That's 3", "350 of paneer, 200 spinach": kilos or grams of things,
    added up, where each has its figure; the last may be what they come to."""
    starts, ends = {i.start for i in message.items}, {i.end for i in message.items}
    norms = message.norms
    own = [i for i in free if i + 1 + (norms[i + 1 : i + 2] == ["of"]) in starts or i in ends]
    kilos = all(_KILOS.fullmatch(norms[i]) for i in own)
    if len(own) < 2 or not (kilos or all(_GRAMS.fullmatch(norms[i]) for i in own)):
        return None
    told = sum(digits_value(norms[i]) or 0.0 for i in own)
    rest = [i for i in free if i not in own]
    total = len(rest) == 1 and digits_value(norms[rest[0]]) == round(told, 3)
    counted = not kilos and any(float(norms[i]) < _GRAMS_OF and i + 1 in starts for i in own[:1])
    if counted or (rest and not total):
        return None
    return told if kilos else told / 1000


def bare_volume(message: Message) -> float | None:
    """Litres that a bare figure of a draining tells: the one that came out, or the only one."""
    at = _drawn_figure(message)
    return None if at is None else float(message.norms[at]) / 1000


def drawn_from(message: Message) -> str | None:
    """The bin that a bare figure is said to have come out of ("250 off the garage")."""
    at = _drawn_figure(message)
    if at is None or message.norms[at + 1 : at + 2] == []:
        return None
    near = [b for b in message.bins if at + 2 <= b.start <= at + 3 and b.name is not None]
    return near[0].name if near and message.norms[at + 1] in _OUT else None


def bare_volume_in(message: Message, start: int, end: int) -> float | None:
    """Litres that the one bare figure among words[start:end] tells of a draining."""
    if message.context.units != "metric":
        return None
    free = [
        i for i in _free(message) if start <= i < end and _MILLILITRES.fullmatch(message.norms[i])
    ]
    told = len(free) == 1 and _ends(message, free[0], _OUT)
    return float(message.norms[free[0]]) / 1000 if told else None


def _drawn_figure(message: Message) -> int | None:
    if message.context.units != "metric":
        return None
    free = [i for i in _free(message) if _MILLILITRES.fullmatch(message.norms[i])]
    out = [i for i in free if message.norms[i + 1 : i + 2] and message.norms[i + 1] in _OUT]
    alone = [i for i in free if _ends(message, i, ())] if len(free) == 1 else []
    found = out if len(out) == 1 else alone
    return found[0] if found else None


def _is_free(message: Message) -> bool:
    """Whether a bare figure can be one of kilos or grams: no scales are told of but for bran."""
    loose = all(a.vessel or of_what(message, a) == "bran" for a in message.amounts)
    return message.context.units == "metric" and loose


def _free(message: Message) -> list[int]:
    """Indexes of the numbers that belong to no day, name or amount."""
    held = indexes(message.days, message.bins, message.amounts, message.named)
    return [i for i, w in enumerate(message.words) if w.kind == "number" and i not in held]


def _ends(message: Message, at: int, more: Collection[str]) -> bool:
    """Whether nothing that a number could count stands behind it."""
    after: Sequence[str] = message.norms[at + 1 : at + 2]
    return not after or not after[0].isalnum() or after[0] in more


def _is_beside(message: Message, at: int) -> bool:
    """Whether a thing or a bin begins right behind the number."""
    return any(x.start == at + 1 for span in (message.items, message.bins) for x in span)
