"""One lot in fractions: "4 kg, three quarters in the shed and the rest in the hall", "2:1"."""

from collections.abc import Collection, Sequence
from dataclasses import replace

from handlers.reading.acts import Layer
from handlers.reading.completion.lots import Lot, is_placed, lot_at
from handlers.reading.food.ofwhat import is_drawn, of_what
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.proportions import MOST, PERCENT
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_CUES = (
    PERCENT
    | MOST
    | words_in(
        "half third thirds quarter quarters fifth fifths eighth eighths split divided shared "
        "divide share splitting"
    )
)
"""Words without one of which, or a fraction in figures, no shares are told."""
_SHARING = words_in("split divided shared between divide share splitting among")
_RATIO = Late(r"(\d{1,2})[:/](\d{1,2})")
_EXACT = 0.02


def portioned(layers: Sequence[Layer], message: Message) -> list[Layer]:
    """The layers with the share that each bin had of the whole; none if none is told."""
    if not (message.has(_CUES) or any("/" in norm for norm in message.norms)):
        return []
    wholes = [a for a in message.measured() if not (of_what(message, a) or is_drawn(message, a))]
    if not message.bins or len(wholes) != 1:
        return []
    shares = _by_ratio(message) or _by_share(message, wholes[0])
    mass, volume = layers[0].mass_kg, layers[0].volume_l
    if not shares or (mass or volume) is None:
        return []
    value = wholes[0].value
    return [
        replace(
            layers[0],
            bin=name,
            mass_kg=None if mass is None else value * share,
            volume_l=None if mass is not None else value * share,
        )
        for name, share in shares.items()
    ]


def _by_share(message: Message, whole: Amount) -> dict[str, float]:
    """ "A quarter in the shed, the rest in the hall": the share of each bin."""
    norms = message.norms
    refs = {ref.start: ref.name for ref in (*message.named, *message.bins) if ref.name}
    lots = _lots(message, refs.keys(), indexes([whole]))
    parts = [lot for lot in lots if lot.share is not None]
    inside = any(lot.start < whole.start < lot.at for lot in parts)
    if not parts or (not inside and is_placed(norms, whole.end, parts[0].start, refs)):
        return {}
    shares: dict[str, float] = {}
    for lot in parts:
        shares[refs[lot.at]] = shares.get(refs[lot.at], 0.0) + (lot.share or 0.0)
    left = 1.0 - sum(shares.values())
    rests = {refs[lot.at] for lot in lots if lot.share is None}
    if not rests and any(message.norms[lot.start] in MOST for lot in parts):
        return {}  # "4 kg, mostly in the shed": nothing is said of any other bin
    rests = rests or {ref.name for ref in message.bins if ref.name and ref.name not in shares}
    if left < -_EXACT or len(rests) > 1 or (rests and left < _EXACT):
        return {}
    return shares | dict.fromkeys(rests, left)


def _by_ratio(message: Message) -> dict[str, float]:
    """ "Split 6 kg 2:1 between the shed and the hall": the share of each of two bins."""
    if not message.has(_SHARING):
        return {}
    names = list(dict.fromkeys(ref.name for ref in sorted(message.bins) if ref.name))
    ratios = [m for norm in message.norms if (m := _RATIO.fullmatch(norm))]
    if len(names) != 2 or len(ratios) != 1:
        return {}
    first, second = int(ratios[0][1]), int(ratios[0][2])
    whole = first + second
    return {names[0]: first / whole, names[1]: second / whole} if first and second else {}


def _lots(message: Message, held: Collection[int], measured: Collection[int]) -> list[Lot]:
    out: list[Lot] = []
    dated = indexes(message.days)
    for i in range(len(message.norms)):
        if i not in measured and i not in dated and (not out or i > out[-1].at):
            lot = lot_at(message.words, message.norms, i, held, measured)
            if lot is not None:
                out.append(lot)
    return out
