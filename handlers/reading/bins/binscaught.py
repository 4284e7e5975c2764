"""Whether all bins of a group's first list were caught: their number may stand beside them."""

from collections.abc import Sequence

from handlers.reading.acts import Act, Open, Unsure
from handlers.reading.bins.binroll import CUES
from handlers.reading.bins.rollwords import VESSELS
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in


def all_caught(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts; where more bins were told than are opened, what was caught is asked about first.

    Where nothing was caught it is said only of the first bins of a group, told with a size.
    """
    count = _count(message) if message.context.in_room and message.has(VESSELS) else 0
    if count < 2:
        return list(acts)
    opened = [act for act in acts if isinstance(act, Open)]
    opened += [g for a in acts if isinstance(a, Unsure) for g in a.guess if isinstance(g, Open)]
    named = [act for act in opened if act.bin is not None]
    if len(named) >= count or len(acts) > max(1, len(opened)):
        return list(acts)
    sized = any(a.quantity == "volume" and not a.vessel for a in message.amounts)
    if not opened and (message.context.bins or not sized or message.items or acts):
        return list(acts)
    return [Unsure(guess=tuple(named), count=count, rules=("fewer bins than were counted",))]


def _count(message: Message) -> int:
    """How many bins are told that somebody has or begins; 0 if none are counted."""
    if not message.has(_HAVING) or message.asked:
        return 0
    for i, norm in enumerate(message.norms[:_NEAR]):
        number = read_number(message.words, i - 1) if norm in VESSELS and i else None
        of_them = message.norms[i + 1 : i + 2] == ["of"]  # "two buckets of paint"
        told = number is not None and number.end == i and message.sense_at(i) in _TOLD
        if number is not None and told and not of_them:
            return int(number.value)
    return 0


_NEAR = 12
"""Words of a message among which its bins are counted."""
_HAVING = CUES.intersection(words_in("opened set registered")) | words_in("have got there our")
_TOLD = frozenset({"none", "did", "habit"})
