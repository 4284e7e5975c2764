"""A record struck out, and what is to stand in its place: "scratch that, 4 kg to the shed"."""

from handlers.reading.acts import Amend
from handlers.reading.food.quantities import amount_sum
from handlers.reading.message import Message
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

CUES = words_in("scratch strike delete undo remove cancel disregard scrap erase forget ignore")
"""Words that strike something out."""
_BEFORE = words_in("sorry oops no nope ok wait bot pls please , ! .")
_STRUCK = words_in("that this it the my last one entry record out please pls sorry")
_WHICH = words_in("that this it last")
_JOINTS = words_in(", . ; : - — and then & instead") | {"\n"}


def behind_striking(message: Message) -> int:
    """Index of the word with which something else is told behind a striking out; 0 if none is."""
    norms = message.norms
    at = next((i for i, norm in enumerate(norms) if norm not in _BEFORE), len(norms))
    if at == len(norms) or norms[at] not in CUES:
        return 0
    end = next((i for i in range(at + 1, len(norms)) if norms[i] not in _STRUCK), len(norms))
    if _WHICH.isdisjoint(norms[at + 1 : end]):
        return 0
    if norms[end : end + 1] and norms[end] not in _JOINTS:
        return _unjoined(norms, at, end)
    return next((i for i in range(end, len(norms)) if norms[i] not in _JOINTS), 0)


def _unjoined(norms: list[str], at: int, end: int) -> int:
    """Where what is right begins behind no stop: "scratch that it was 3 kg", "scrap that I meant
    green"; 0 if "that" is not what is struck out."""
    led = norms[end - 1] in _ITSELF and norms[end] in _BEING
    start = end - led
    told = led or norms[end] in _MEANT or norms[end : end + 2] == ["make", "it"]
    return start if told and not _WHICH.isdisjoint(norms[at + 1 : start]) else 0


_ITSELF = words_in("it that this")
_BEING = words_in("was is 's should went")
_MEANT = words_in("its i we should thats twas")


def bin_and_amount(rest: Message) -> Amend | None:
    """ "It was the shed but more like 3 kg": a bin and an amount, and nothing else, are right."""
    refs = [ref for ref in rest.bins if ref.known]
    measured = rest.measured()
    if len(refs) != 1 or len(measured) != 1 or rest.norms[0] not in _ITSELF | _ITS:
        return None
    left = unheld(rest.norms, indexes(refs, measured))
    if not _BEFORE_BOTH.issuperset(left):
        return None
    mass, volume = amount_sum(measured)
    return Amend(bin=refs[0].name, mass_kg=mass, volume_l=volume, rules=("struck out, and right",))


_ITS = words_in("its thats twas")


def is_only_one_thing(rest: Message) -> bool:
    """Whether what is told behind it is a bin, a day, an amount or a food, and nothing else."""
    if any(rest.norms[day.end : day.end + 1] == ["'s"] for day in rest.days):
        return False  # "that was last week's"
    refs = [ref for ref in (*rest.bins, *rest.named) if ref.known]
    items = [item for item in rest.items if not item.generic]
    spans = [*refs, *rest.days, *rest.measured(), *items]
    held = indexes(refs, rest.days, rest.measured(), items)
    left = unheld(rest.norms, held)
    if not spans and left and rest.words[-1].kind == "number":  # "scratch that, it was 3"
        return _BEFORE_IT.issuperset(left[:-1])
    return len(spans) == 1 and _BEFORE_IT.issuperset(left)


_BEFORE_IT = words_in(
    "it that its was is put went into in to the for on meant should be have been make i we . ! "
    "please sorry 's think actually really about only just more like probably"
)
_BEFORE_BOTH = _BEFORE_IT | _ITS | words_in("but and with , around roughly nearer closer maybe of")
