"""What is dealt with and seen next to a bin: "drained the pond near the shed bin"."""

from collections.abc import Sequence

from handlers.reading.acts import Act, Drain, Observe, Seal
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.vocabulary import words_in

CUES = words_in("near beside behind opposite outside past nearby by next")
_ARTICLES = words_in("the our my that old to")
_ABOUT = frozenset({"insects", "rodents", "rotten", "sour", "ammonia", "alcohol", "much_liquid"})
"""Signs of a bin that are seen and smelt next to it."""


def without_beside(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts without those on a bin that only says where something else stood."""
    if not message.has(CUES) or not message.bins:
        return list(acts)
    return [act for act in acts if not _is_beside(act, message)]


def _is_beside(act: Act, message: Message) -> bool:
    if not isinstance(act, Drain | Seal | Observe) or act.bin is None:
        return False
    if isinstance(act, Observe) and not _ABOUT.isdisjoint(act.signs):
        return False
    refs = [ref for ref in message.bins if ref.name == act.bin]
    return bool(refs) and all(_stands_behind(ref, message.norms) for ref in refs)


def _stands_behind(ref: BinRef, norms: Sequence[str]) -> bool:
    at = ref.start - 1
    while at > 0 and norms[at] in _ARTICLES:
        at -= 1
    return at >= 0 and norms[at] in CUES
