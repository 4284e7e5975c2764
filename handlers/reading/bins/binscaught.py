"""Whether all bins of a group's first list were caught: their number may stand beside them."""

from collections.abc import Sequence

from handlers.reading.acts import Act, Open, Unsure
from handlers.reading.bins.binroll import CUES
from handlers.reading.bins.rollwords import VESSELS, pieces_of
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in


def all_caught(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts; where more bins were told than are opened, what was caught is asked about first.

    Where nothing was caught it is said only of the first bins of a group, told with a size or with
    little else.
    """
    count = _count(message) if message.context.in_room and message.has(VESSELS) else 0
    if not 1 < count <= _MOST:
        return list(acts)
    opened = [act for act in acts if isinstance(act, Open)]
    opened += [g for a in acts if isinstance(a, Unsure) for g in a.guess if isinstance(g, Open)]
    named = [act for act in opened if act.bin is not None]
    if len(named) >= count or len(acts) > max(1, len(opened)):
        return list(acts)
    sizes = [piece.litres for piece in pieces_of(message) if piece.kind == "size"]
    measured = any(not amount.vessel for amount in message.measured())
    only = not measured and len(message.words) <= _FEW
    told = sizes or (only and _OTHERS.isdisjoint(message.norms))
    if not opened and (message.context.bins or not told or message.items or acts):
        return list(acts)
    guess = named or [Open(capacity_l=size, on=message.today) for size in sizes if len(sizes) == 1]
    return [Unsure(guess=tuple(guess), count=count, rules=("fewer bins than were counted",))]


_MOST = 30
"""Bins of one group, at most."""
_FEW = 16
"""Words of a message that tells how many bins there are, and little else."""
_OTHERS = words_in(
    "were was council recycling rubbish wheelie wheelies garbage trash refuse landfill collected "
    "need needs needed want buy spare empty full filled more to that ready due left sealed "
    "fermenting drained"
)


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
_HAVING = CUES.intersection(words_in("opened set registered")) | words_in(
    "have got there our start starting started begin beginning use using run"
)
_TOLD = frozenset({"none", "did", "habit"})
