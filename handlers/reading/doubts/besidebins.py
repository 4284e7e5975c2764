"""What is dealt with and seen next to a bin, or in what stands there: "drained the pond near the
shed bin", "the shed roof is wet", "Doris's fridge smells".
"""

from collections.abc import Sequence

from handlers.reading.acts import Act, Drain, Layer, Observe, Seal, meant
from handlers.reading.message import Message
from handlers.reading.words.binwords import BIN_WORDS, BinRef
from handlers.reading.words.vocabulary import words_in

_BESIDE = words_in("near beside behind opposite outside past nearby by next")
_THINGS = words_in(
    "roof roofs gutter gutters wall walls ceiling floor floors door doors window windows gate "
    "gates fence chimney fridge freezer radiator radiators boiler sink toilet loo bath shower "
    "carpet sofa "
    "kitchen bathroom bedroom garden greenhouse lawn roses tree trees hedge plants allotment "
    "bakery farm cafe pub shop market school canteen station car van bike coat hair phone letter "
    "parcel cat cats dog dogs hens rabbit kids husband wife mum dad sister brother baby"
)
CUES = _BESIDE | _THINGS
_ARTICLES = words_in("the our my that old to")
_ABOUT = frozenset({"insects", "rodents", "rotten", "sour", "ammonia", "alcohol", "much_liquid"})
"""Signs of a bin that are seen and smelt next to it."""


def without_beside(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts without those on a bin that only says where something else stood."""
    return [act for act in acts if not _is_beside(act, message)]


def _is_beside(act: Act, message: Message) -> bool:
    act = meant(act)
    if not isinstance(act, Drain | Seal | Observe | Layer) or act.bin is None:
        return False
    norms, refs = message.norms, [ref for ref in message.bins if ref.name == act.bin]
    if refs and all(_is_whose(ref, norms) for ref in refs):
        return not isinstance(act, Layer) or _OFF.issuperset(norms[r.start - 1] for r in refs)
    if isinstance(act, Layer) or (isinstance(act, Observe) and not _ABOUT.isdisjoint(act.signs)):
        return False
    return bool(refs) and all(_stands_behind(ref, norms) for ref in refs)


_OFF = words_in("off from")


def _is_whose(ref: BinRef, norms: Sequence[str]) -> bool:
    """ "Doris's fridge", "the shed roof": the name says whose or where another thing is."""
    at = ref.end + (norms[ref.end : ref.end + 1] == ["'s"])
    thing = not _THINGS.isdisjoint(norms[at : at + 1])
    return thing and BIN_WORDS.isdisjoint([*norms[ref.start : ref.end], *norms[at + 1 : at + 2]])


def _stands_behind(ref: BinRef, norms: Sequence[str]) -> bool:
    at = ref.start - 1
    while at > 0 and norms[at] in _ARTICLES:
        at -= 1
    return at >= 0 and norms[at] in _BESIDE
