"""What somebody puts in beside the layer that another has just told: "and 2 handfuls of crusts from
me", "same here but 800 g".
"""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Layer
from handlers.reading.corrections.likewise import LED, LIKEWISE
from handlers.reading.corrections.sametoo import AS_JUST_TOLD
from handlers.reading.food.quantities import amount_sum
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

_LEADS = words_in("and plus also & + oh , with then")
_ABOUT = words_in("about around roughly some another maybe approx ~ a the")
_TAILS = (
    *(("from", who) for who in ("me", "us", "here")),
    *(("by", who) for who in ("me", "us")),
    *(("from", whose, place) for whose in ("my", "our") for place in ("side", "house", "kitchen")),
    ("from", "upstairs"),
    ("from", "downstairs"),
    ("from", "next", "door"),
)
_TOO = (("too",), ("also",), ("as", "well"), (".",), ("!",))


def put_in_besides(message: Message) -> str | None:
    """The amounts and foods that come to the layer just told; None where it is none, or more is
    said.
    """
    norms, amounts = message.norms, message.measured()
    last = message.context.just_told
    if not isinstance(last, Layer) or message.bins:
        return None
    if not amounts:
        return _in_its_unit(last, message)
    if "?" in norms or message.days or message.members or len(message.sentences) > 1:
        return None
    start = next((i for i, norm in enumerate(norms) if norm not in _LEADS), len(norms))
    end = _without(norms, len(norms), _TOO)
    said_too = end < len(norms)
    behind = _without(norms, end, _TAILS)
    whose = behind < end
    if not (start or whose or said_too) or not (whose or message.items):
        return None
    first = next((i for i in range(start, behind) if norms[i] not in _ABOUT), behind)
    if not any(start <= amount.start <= first < behind for amount in amounts):
        return None
    return message.text(start, behind)


_FIGURE_FROM_ME = Late(
    r"^(?:(?:and|plus|also|oh|,|another|about|around|roughly|then) )*(?P<figure>\d+(?:[.,]\d+)?) "
    r"(?:from|by|for) (?:me|us|here|my side|our side|our house|our kitchen)"
    r"(?: (?:too|also|as well))?$"
)


def _in_its_unit(last: Layer, message: Message) -> str | None:
    """ "1.5 from me": kilos or grams, where what was just told was weighed."""
    match = _FIGURE_FROM_ME.match(" ".join(message.norms).strip(" .!"))
    if match is None or last.mass_kg is None or message.context.units != "metric":
        return None
    figure = float(match["figure"].replace(",", "."))
    unit = "kg" if figure <= _MOST_KG else "g" if figure >= _LEAST_G else ""
    return f"{figure:g} {unit}" if figure and unit else None


_MOST_KG, _LEAST_G = 20, 50


def _without(norms: Sequence[str], end: int, tails: Sequence[tuple[str, ...]]) -> int:
    """Where the words end before what they end with, as often as it stands there."""
    while tail := next((t for t in tails if tuple(norms[max(0, end - len(t)) : end]) == t), None):
        end -= len(tail)
    return end


_SAME = Late(
    rf"{LED}(?:{LIKEWISE}|(?:the )?same(?: again)?)"
    r"(?: (?:,|-|but|though|only|just|about|around|roughly|with|at|more|less|like|a|bit|by|for|"
    r"me))*$"
)


def as_much_as_told(message: Message) -> Layer | None:
    """ "Same here but 800 g": the same scraps in the same bin, with an amount of the sender's."""
    last, amounts = message.context.just_told, message.measured()
    if not isinstance(last, Layer) or len(amounts) != 1 or "?" in message.said:
        return None
    if message.bins or message.days or message.items or message.members:
        return None
    rest = " ".join(unheld(message.norms, indexes(amounts))).strip(" .!")
    if _SAME.match(rest) is None:
        return None
    mass, volume = amount_sum(amounts)
    return replace(
        last, mass_kg=mass, volume_l=volume, member=None, on=message.today, rules=(AS_JUST_TOLD,)
    )
