"""Figures without a unit beside bins, and nothing else said: "red 500, blue 400", "yard 600".

They may be grams that went in as well as millilitres that came out: only the talk can tell.
"""

from handlers.reading.acts import Drain, Layer
from handlers.reading.measures.digits import digits_value
from handlers.reading.message import Message
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

FIGURES = "bare figures beside bins"
"""The rule of layers that are asked about, as no unit was told."""
_SMALL = words_in(
    ", : ; . - – — = and & + each today too also just now got gets has had ! the bin again another "
    "more further in into"
)
_LEAST_G, _MOST_G, _STEP_G = 50, 5000, 5
_MOST_KG = 20


def with_unit(message: Message) -> str | None:
    """The message with the unit that its figures are most likely in; None if anything else is said,
    or the talk is of drainings.
    """
    context = message.context
    last = context.just_told or context.last
    bins = [ref for ref in message.bins if ref.known]
    if context.units != "metric" or not bins or isinstance(last, Drain):
        return None
    if message.amounts or message.items or message.members or message.signs:
        return None
    if "?" in message.said or any(day.past != message.today for day in message.days):
        return None
    held = indexes(bins, message.days)
    figures = [i for i, w in enumerate(message.words) if w.kind == "number" and i not in held]
    rest = {norm for i, norm in enumerate(message.norms) if i not in held and i not in figures}
    values = [digits_value(message.norms[i]) or 0 for i in figures]
    if not rest <= _SMALL or not values:
        return None
    each = "each" in message.said and len(values) == 1
    if not each and len(values) != len(bins):
        return None
    weighed = isinstance(last, Layer) and last.mass_kg is not None
    if all(_LEAST_G <= value <= _MOST_G and value % _STEP_G == 0 for value in values):
        unit = "g"
    elif weighed and all(0 < value <= _MOST_KG for value in values):
        unit = "kg"
    else:
        return None
    said, end = "", 0
    for i in figures:
        said += f"{message.text(end, i + 1)} {unit} "
        end = i + 1
    return said + message.text(end, len(message.words))


def is_weighed_talk(message: Message) -> bool:
    """Whether the record before was of scraps that were weighed, and nobody has to be asked."""
    last = message.context.just_told or message.context.last
    return isinstance(last, Layer) and last.mass_kg is not None
