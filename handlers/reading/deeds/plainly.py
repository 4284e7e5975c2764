"""The plainest reports, which hold by their form, whatever their score: "opened the yard bin",
"drained the shed, got 300 ml"; with a question behind it, too."""

from collections.abc import Sequence

from handlers.reading.acts import Act, Bury, Drain, Open, Seal
from handlers.reading.arrangements.passing import BY_NAME
from handlers.reading.calendar.days import Day
from handlers.reading.completion.begun import BEGUN_WITH
from handlers.reading.corrections.rightwrong import BY_FORM as PUT_RIGHT
from handlers.reading.deeds.flatly import FLATLY
from handlers.reading.deeds.observations import ON_IT
from handlers.reading.deeds.openings import INTRODUCED
from handlers.reading.deeds.restarts import RESTARTED
from handlers.reading.deeds.scraps import WITHIN
from handlers.reading.message import Message
from handlers.reading.words.spans import accounted, indexes, unheld
from handlers.reading.words.vocabulary import words_in

BY_FORM = frozenset({BEGUN_WITH, BY_NAME, FLATLY, INTRODUCED, ON_IT, PUT_RIGHT, RESTARTED, WITHIN})
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
    told = accounted(message.norms, message.amounts, message.days, message.bins)
    dating = {i - 1 for i, piece in enumerate(told) if isinstance(piece, Day)}
    rest = [
        piece
        for i, piece in enumerate(told)
        if isinstance(piece, str) and piece not in _BESIDE and not (piece == "on" and i in dating)
    ]
    rest = [norm for norm in rest if norm != "both"] if several else rest
    deed = _DEEDS.get(rest[0]) if rest and rest[0] in message.norms[:start] else None
    if deed is None or (len(rest) == 1 and not message.amounts):
        return deed
    behind = not several and all(a.quantity == "volume" and a.start >= end for a in message.amounts)
    whole = behind and len(message.amounts) < 2
    return deed if whole and _TOLD_OF.get(deed, frozenset()).issuperset(rest[1:]) else None


_LED = {"drained": "drain", "added": "layer", "sealed": "seal"}
_LED_CUES = frozenset(_LED)
_TAGS = words_in("didnt havent hasnt wasnt isnt right innit yes no")
_OF_LED = _BESIDE | words_in("it of about from off in into to a some , juice liquid")


def led_by(message: Message) -> str | None:
    """The kind of record that a message begins with in so many words, a question behind it:
    "drained 300 ml, how much water for that?", "added 2 kg of bread. Can bones go in?".
    """
    if message.members or len(message.clauses) < 2 or not message.has(_LED_CUES):
        return None
    first, second, *_ = message.clauses
    deeds = [norm for norm in message.norms[: first.end] if norm in _LED]
    if first.sense != "did" or second.sense != "ask" or len(deeds) != 1:
        return None
    if not _TAGS.isdisjoint(message.norms[second.start : second.end]):
        return None  # "added 3 kg of bread, didn't I?"
    spans = (message.items, message.days, message.amounts, message.bins)
    told = accounted(message.norms, *spans, end=first.end)
    rest = {piece for piece in told if isinstance(piece, str)}
    kind = _LED[deeds[0]]
    measured = [a for a in message.amounts if a.end <= first.end and not a.negative]
    whole = bool(measured) if kind != "seal" else not measured
    return kind if whole and rest - _LED_CUES <= _OF_LED else None


_DATED = dict.fromkeys(
    ("put", "added", "chucked", "tipped", "threw", "tossed", "dumped"), "layer"
) | dict.fromkeys(("drained", "tapped", "emptied"), "drain")
_DATED_CUES = frozenset(_DATED)
_PUT, _EMPTIED = frozenset({"put"}), frozenset({"emptied"})
_ABOUT_DEED = words_in("on already so far and also")
_BY_ITSELF = words_in("added drained tapped emptied")


def dated_report(message: Message) -> str | None:
    """The kind of record of a message that tells a deed, an amount and its day, and nothing else:
    "put in 2 kg on 2/3", "drained 200 ml on 1 March"; without a day "I've put 2 kg in" and "emptied
    the shed, half a litre of juice".
    """
    if len(message.sentences) != 1 or not message.has(_DATED_CUES):
        return None
    measured = message.measured()
    emptied = message.has(_EMPTIED)
    if emptied and not (message.liquid() and _empties_bin(message)):
        return None
    weighed = message.has(_PUT) and measured and measured[0].quantity == "mass"
    if not (message.days or weighed or emptied):
        return None
    if message.members or len(measured) != 1 or measured[0].negative or message.norms[-1] == "?":
        return None
    if any(day.past > message.today or day.aside for day in message.days):
        return None
    held = indexes(message.days, message.amounts, message.items, message.bins)
    rest = [norm for i, norm in enumerate(message.norms) if i not in held]
    deeds = [norm for norm in rest if norm in _DATED]
    if len(deeds) != 1 or not _OF_LED.union(deeds, _ABOUT_DEED).issuperset(rest):
        return None
    if deeds[0] not in _BY_ITSELF and "in" not in rest:
        return None  # "put on 2 kg", "threw 2 kg on Sunday"
    drained = _DATED[deeds[0]] == "drain"
    solid = any(not message.liquid_at(item.start) for item in message.items)
    solid = solid or measured[0].quantity == "mass"
    return None if drained and solid else _DATED[deeds[0]]


def _empties_bin(message: Message) -> bool:
    """ "Emptied the shed": not what was emptied into it."""
    led = [message.norms[max(0, ref.start - 2) : ref.start] for ref in message.bins]
    return any(lead[-1:] == ["emptied"] or lead == ["emptied", "the"] for lead in led)


def with_siblings(believed: list[Act], told: Sequence[Act], message: Message) -> list[Act]:
    """The acts that are believed, with those that are told in the same plain form beside them.

    "Ines drained the shed and Kofi's sealed bin 3": what carries the one carries the other.
    """
    believed = [act for act in told if act in believed or _is_led(act, message)]
    if len(believed) == len(told) or not any(isinstance(act, _SIBLINGS) for act in believed):
        return believed
    if ":" in message.said:  # a heading may say that all of it is a plan
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
    rest = unheld(message.norms, held, clause.start, clause.end)
    return [norm for norm in rest if norm not in _BESIDE] == ["buried"]


_SIBLINGS = (Bury, Drain, Seal)
_PLAIN = frozenset({"a bin was drained", "a bin was sealed", "a bin was buried"})
