"""One question about several things or bins: "can meat and bones go in?", "how full are both?"; or
about what was weighed and what was measured: "how much bran for 1 kg of meat and 3 L of peel?".
"""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Ask
from handlers.reading.completion.unlike import asked_of, things_of_each
from handlers.reading.food.makeups import makeup
from handlers.reading.message import Message
from handlers.reading.words.spans import in_a_row
from handlers.reading.words.vocabulary import words_in

_JOINTS = words_in("and or & n + , the our bin bins bucket") | {"\n"}
_STATES = words_in(
    "mouldy moldy rotten rotting spoiled spoilt rancid putrid slimy fuzzy raw cooked old big large "
    "liquid frozen"
)
"""Said before the first of several things, they may be meant of all."""
_MOST = 6


def each_asked(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, a question about several things or bins as one about each of them."""
    out: list[Act] = []
    for act in acts:
        parts: list[Act] = []
        if isinstance(act, Ask) and act.topic == "allowed" and act.what:
            parts = _of_each_thing(act, message)
        elif isinstance(act, Ask) and act.topic in ("due", "bin", "full") and act.bin:
            others = _all_but(act, message)
            if others:
                out += others
                continue
            parts = [] if act.topic == "due" else _of_each_bin(act, message)
        elif isinstance(act, Ask) and act.topic == "dose":
            parts = _of_each_measure(act, message)
        out += parts if 1 < len(parts) <= _MOST else [act]
    return out


def _all_but(act: Ask, message: Message) -> list[Act]:
    """ "Apart from the shed bin, what's due?": asked of each of the other bins."""
    if not message.has(_EXCLUDING):
        return []
    left_out = {ref.name for ref in message.bins if _is_left_out(message.norms, ref.start)}
    if act.bin not in left_out:
        return []
    context = message.context
    others = [b for b in context.bins if b not in left_out and b not in context.retired]
    return [replace(act, bin=name) for name in others[:_MOST]]


def _is_left_out(norms: Sequence[str], start: int) -> bool:
    at = start - (norms[start - 1 : start] in (["the"], ["our"], ["my"]))
    return any(tuple(norms[at - len(lead) : at]) == lead for lead in _LEFT_OUT if at >= len(lead))


_LEFT_OUT = (("apart", "from"), ("except",), ("except", "for"), ("excluding",), ("outwith",),
             ("other", "than"), ("all", "but"), ("bar",), ("besides",), ("aside", "from"),
             ("leaving", "out"))  # fmt: skip
_EXCLUDING = frozenset(lead[0] for lead in _LEFT_OUT)


def _of_each_thing(act: Ask, message: Message) -> list[Act]:
    items = [item for item in message.items if message.sense_at(item.start) == "ask"]
    if len(items) < len(message.items) or not items:
        items = list(message.items)
    if act.what is None or len(items) < 2 or not in_a_row(message.norms, items, _JOINTS):
        return []
    if message.has_in(_STATES, max(0, items[0].start - 3), items[0].end):
        return []
    parts: list[Act] = []
    for item in items:
        made = makeup([item])
        parts.append(
            replace(
                act,
                what=message.text(item.start, item.end),
                materials=None if made is None else made.shares,
                rich=None if made is None else made.rich,
            )
        )
    return parts


def _of_each_measure(act: Ask, message: Message) -> list[Act]:
    if act.mass_kg is None or act.volume_l is None:
        return []
    lots = [lot for lot in things_of_each(message.amounts, message) if lot[1]]
    return list(asked_of(act, lots))


def _of_each_bin(act: Ask, message: Message) -> list[Act]:
    named = {ref.start: ref for ref in sorted((*message.bins, *message.named)) if ref.known}
    refs = list(named.values())
    if len(refs) < 2 or not in_a_row(message.norms, refs, _JOINTS):
        return []
    return [replace(act, bin=name) for name in dict.fromkeys(ref.name for ref in refs)]
