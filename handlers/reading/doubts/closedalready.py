"""A bin that is closed or full as it is, told as the reason why scraps went into another one:
"the shed is shut, so it went in the hall".
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import zip_longest

from handlers.reading.acts import Act, Layer, Seal
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


def put_in_another(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, with no sealing of a bin that is only why scraps went elsewhere, and with the layer
    where they went.
    """
    if not message.has(_STATES) or not any(isinstance(act, Layer) for act in acts):
        return list(acts)
    closed = {ref.name: other for ref, other in _closed_already(message)}
    if not closed:
        return list(acts)
    instead = {other.name for other in closed.values() if other is not None}
    shut = closed.keys() | instead
    acts = [act for act in acts if not (isinstance(act, Seal) and act.bin in shut)]
    if len(instead) != 1 or sum(isinstance(act, Layer) for act in acts) != 1:
        return acts
    there = instead.pop()
    lost = {None, *closed}
    return [
        replace(act, bin=there) if isinstance(act, Layer) and act.bin in lost else act
        for act in acts
    ]


def _closed_already(message: Message) -> Iterator[tuple[BinRef, BinRef | None]]:
    """Each bin told to be closed as it is, and the one that got the scraps instead, where it is
    named behind it.
    """
    norms, named = message.norms, [ref for ref in message.bins if ref.name is not None]
    for ref, other in zip_longest(named, named[1:]):
        end = len(norms) if other is None else other.start
        behind = " ".join(norms[ref.end : min(end, ref.end + _NEAR)])
        then = other is not None and norms[other.end : other.end + 1] in _THEN
        if other is not None and (_SO.search(behind) or (then and _THEREFORE.search(behind))):
            yield ref, other
        elif _IS_CLOSED.search(behind) and _BECAUSE.search(
            " ".join(norms[max(0, ref.start - 3) : ref.start])
        ):
            yield ref, None


_STATES = words_in("closed shut sealed locked taped full chocka brimming packed")
_NEAR = 16
"""Words behind a bin in which it is told what went where instead."""
_STATE = (
    r"^(?:(?:bin|one) )?(?:(?:is|'s|was|being|been|has been|'s been) )?"
    r"(?:(?:already|still|all|now|long) )*(?:closed|shut|sealed|locked|taped|full|chocka|brimming|"
    r"packed)(?: up| off| tight)?"
    r"(?: (?:innit|already|now|mate|sadly|anyway|lol|of course|,|[.]+|-|—|;))*"
)
_SO = Late(
    _STATE + r" (?:so|hence|therefore|which is why)\b"
    r"(?! (?:i|we|he|she) (?:\w+ )?(?:sealed|closed|shut|taped)\b)"
)
_THEREFORE = Late(_STATE + r"$")
_IS_CLOSED = Late(_STATE)
_THEN = (["then"], ["instead"])
_BECAUSE = Late(r"\b(?:because|cos|coz|cuz|as|since|seeing as)(?: the| our)?$")
""" "Went in the hall as the shed is shut"."""
