"""Measures that are not the same everywhere: which gallon was meant in a metric group."""

import re
from collections.abc import Sequence

from handlers.reading.acts import Act, Ask, Drain, Layer, Open
from handlers.reading.arranged import WhichMeasure
from handlers.reading.context import Context
from handlers.reading.words.late import Late

_CUES = ("gallon", "quart", "pint")
_MEASURE = Late(
    r"(?<!us )(?<!imperial )(?<!uk )(?<!american )\b(?P<unit>gallon|quart|pint)s?\b", re.IGNORECASE
)


def which_measure(text: str, context: Context, acts: Sequence[Act]) -> WhichMeasure | None:
    """The measure that a volume was said in, if a metric group may mean another by it."""
    lower = text.casefold()
    if context.units != "metric" or not context.in_room or not any(cue in lower for cue in _CUES):
        return None
    match = _MEASURE.search(text)
    if match is None:
        return None
    unit = match["unit"].casefold()
    return WhichMeasure(unit=unit) if any(_depends(act, unit) for act in acts) else None


def _depends(act: Act, unit: str) -> bool:
    """Whether it matters; a record by the pint is left alone, for whoever drains one each day."""
    match act:
        case Layer() | Drain():
            return act.volume_l is not None and unit == "gallon"
        case Ask():
            return any(v is not None for v in (act.volume_l, act.water_l, act.liquid_l))
        case Open():
            return act.capacity_l is not None
        case _:
            return False
