"""The plainest reports, which hold by their form, whatever their score: "opened the yard bin",
"drained the shed, got 300 ml"."""

from collections.abc import Sequence

from handlers.reading.acts import Act, Bury, Drain, Open, Seal
from handlers.reading.flatly import FLATLY
from handlers.reading.message import Message
from handlers.reading.observations import ON_IT
from handlers.reading.openings import INTRODUCED
from handlers.reading.passing import BY_NAME
from handlers.reading.restarts import RESTARTED
from handlers.reading.rightwrong import BY_FORM as PUT_RIGHT
from handlers.reading.scraps import WITHIN
from handlers.reading.spans import indexes
from handlers.reading.vocabulary import words_in

BY_FORM = frozenset({BY_NAME, FLATLY, INTRODUCED, ON_IT, PUT_RIGHT, RESTARTED, WITHIN})
"""Rules whose words leave no doubt."""

_DEEDS: dict[str, type[Act]] = {
    **dict.fromkeys(("opened", "started"), Open),
    "drained": Drain,
    "sealed": Seal,
    "buried": Bury,
}
_CUES = frozenset(_DEEDS)
_BESIDE = words_in("i we just have ve the our now . !")
_TOLD_OF: dict[type[Act], frozenset[str]] = {
    Drain: words_in("got took had about nothing none came out , of liquid juice leachate"),
    Open: words_in("holds about a ,"),
}
"""What may stand behind the bin, with an amount or without: what came out, what it holds."""


def plain_report(message: Message) -> type[Act] | None:
    """The kind of act of a message that says no more than what was done to one bin, or both: where
    the bin is named, nothing in it is left to complete.
    """
    if len(message.bins) != 1 or not message.has(_CUES):
        return None
    start, end, name, *_ = message.bins[0]
    several = name is None and "both" in message.norms[:end]
    if not several and (name is None or not message.bins[0].plain):
        return None
    dated, measured = indexes(message.days), indexes(message.amounts)
    rest = [
        norm
        for i, norm in enumerate(message.norms)
        if not start <= i < end and i not in dated and i not in measured and norm not in _BESIDE
        if not (norm == "on" and i + 1 in dated)
    ]
    rest = [norm for norm in rest if norm != "both"] if several else rest
    deed = _DEEDS.get(rest[0]) if rest and rest[0] in message.norms[:start] else None
    if deed is None or (len(rest) == 1 and not measured):
        return deed
    behind = not several and all(a.quantity == "volume" and a.start >= end for a in message.amounts)
    whole = behind and len(message.amounts) < 2
    return deed if whole and _TOLD_OF.get(deed, frozenset()).issuperset(rest[1:]) else None


def with_siblings(believed: list[Act], told: Sequence[Act], message: Message) -> list[Act]:
    """The acts that are believed, with those that are told in the same plain form beside them.

    "Ines drained the shed and Kofi's sealed bin 3": what carries the one carries the other.
    """
    believed = [act for act in told if act in believed or _is_led(act, message)]
    if len(believed) == len(told) or not any(isinstance(act, _SIBLINGS) for act in believed):
        return believed
    if ":" in message.norms:  # a heading may say that all of it is a plan
        return believed
    return [act for act in told if act in believed or not _PLAIN.isdisjoint(act.rules)]


def _is_led(act: Act, message: Message) -> bool:
    """ "Buried the shed bin and it's stinking": whatever follows, the first clause says it all."""
    clause = message.clauses[0]
    if not isinstance(act, Bury) or clause.sense != "did" or not message.context.in_room:
        return False
    refs = [ref for ref in message.bins if clause.start <= ref.start < clause.end]
    if len(refs) != 1 or not refs[0].plain or not refs[0].known or refs[0].name != act.bin:
        return False
    held = indexes(refs, message.days)
    rest = [message.norms[i] for i in range(clause.start, clause.end) if i not in held]
    return [norm for norm in rest if norm not in _BESIDE] == ["buried"]


_SIBLINGS = (Bury, Drain, Seal)
_PLAIN = frozenset({"a bin was drained", "a bin was sealed", "a bin was buried"})
