"""An amount that is both put right and told as new: which of the two is meant."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Amend, Bury, Drain, Layer, Seal
from handlers.reading.corrections.amended import NOT_ANOTHER
from handlers.reading.corrections.rightwrong import BY_FORM
from handlers.reading.message import Message

_PUT_RIGHT = frozenset({BY_FORM, NOT_ANOTHER})


def right_or_new(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, the very amount of one once: as a correction or as a new record."""
    amends = [act for act in acts if isinstance(act, Amend)]
    told = [act for act in acts if isinstance(act, Layer | Drain)]
    if not amends or len(acts) < 2:
        return list(acts)
    new = [a for a in amends if message.items and any(_tells_in_full(act, a) for act in told)]
    right: list[Act] = [
        act for act in told if any(_puts_right(a, act) for a in amends if a not in new)
    ]
    if len(message.sentences) == 1:
        right += [act for act in acts if any(_names_it_again(a, act) for a in amends)]
    return [act for act in acts if act not in new and act not in right]


def _tells_in_full(act: Layer | Drain, amend: Amend) -> bool:
    """ "1.5 kg less 200 for the dish, lasagne, red": a food, its bin and what is taken off."""
    return amend.bin is None is not act.bin and _is_same(act, amend)


def _puts_right(amend: Amend, act: Layer | Drain) -> bool:
    """ "2 kg in blue, not 3": the very amount is of the record put right, and of no new one."""
    plain = not _PUT_RIGHT.isdisjoint(amend.rules)
    return plain and amend.bin == act.bin and _is_same(act, amend)


def _names_it_again(amend: Amend, act: Act) -> bool:
    """ "It was the barn, not the yard, from which I drew a pint", "it was Ines that sealed it": the
    deed is named again."""
    deed = isinstance(act, Layer | Drain | Seal | Bury) and act.bin == amend.bin
    return deed and replace(amend, bin=None, member=None) == Amend(rules=(BY_FORM,))


def _is_same(act: Layer | Drain, amend: Amend) -> bool:
    mass = act.mass_kg if isinstance(act, Layer) else None
    measured = (mass, act.volume_l)
    return measured != (None, None) and measured == (amend.mass_kg, amend.volume_l)
