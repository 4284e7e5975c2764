"""Of what an amount is said to be: starter bran, liquid of a bin, water; else of scraps."""

from collections.abc import Sequence
from itertools import pairwise

from handlers.reading.measures.amounts import Amount
from handlers.reading.message import BRAN, LIQUID, Message
from handlers.reading.words.once import once
from handlers.reading.words.vocabulary import words_in


def is_drawn(message: Message, amount: Amount) -> bool:
    """Whether the words round a volume say that it came out ("poured off 10 oz", "2 pints out")."""
    if amount.quantity != "volume" and amount.liquid_l is None:
        return False
    if any(amount.end <= x.start <= amount.end + 2 for x in message.items):
        return False
    behind = message.norms[amount.end : amount.end + 1]
    if behind in (["off"], ["out"]) or _is_behind_drawing(message.norms, amount.start):
        return True
    if behind not in (["and"], ["n"], ["&"], ["+"]):
        return False  # "a quart and a cup off the tap"
    return any(a.start == amount.end + 1 and is_drawn(message, a) for a in message.amounts)


def _is_behind_drawing(norms: Sequence[str], start: int) -> bool:
    """ "Drew off 2 L", but not "the soup went off. 2 L of it", "milk gone off, 2 L"."""
    for i in range(start - 1, max(-1, start - 4), -1):
        if norms[i] == ".":
            return False
        if norms[i] in _DRAWN and not (i and norms[i] == "off" and norms[i - 1] in _GONE):
            return True
    return False


_GONE = words_in("went gone going go goes right turned")
_DRAWN = words_in("drained drew drawn tapped bled siphoned released off out")


def is_level(message: Message, amount: Amount) -> bool:
    """ "Bertha is up to 11 kilos", "12 kg in the hall so far": what a bin holds by now."""
    norms = message.norms
    if _LEVELS.isdisjoint(norms[max(0, amount.start - 2) : amount.end + _SO_FAR]):
        return False
    lead = norms[max(0, amount.start - 2) : amount.start]
    behind = norms[amount.end : amount.end + _SO_FAR]
    so_far = any(pair == ("so", "far") for pair in pairwise(behind))
    so_far = so_far and _SIGNS.isdisjoint(behind[: behind.index("so")])
    so_far = so_far and any(amount.end < b.start < amount.end + _SO_FAR for b in message.bins)
    inside = behind[:2] == ["in", "there"] or behind[:1] in (["now"], ["inside"])
    made = inside and not _MADE.isdisjoint(norms[max(0, amount.start - 3) : amount.start])
    reached = lead == ["up", "to"] and not _is_little(norms, amount)
    return lead == ["down", "to"] or reached or so_far or made


def _is_little(norms: Sequence[str], amount: Amount) -> bool:
    """ "Put the peel in, it is up to 800 g": what was put in; no bin is told to hold so little."""
    told = norms[amount.start - 4 : amount.start - 3] in (["it"], ["e"], ["they"], ["all"])
    return told and amount.quantity == "mass" and amount.value < _LEAST_LEVEL_KG


_LEAST_LEVEL_KG = 3


_SO_FAR = 6
_LEVELS = words_in("up down far there now inside")
"""Words round an amount without one of which it is not what a bin holds."""
_SIGNS = words_in(", . ; : ( )")
_MADE = words_in("makes making brings bringing take takes")


def of_what(message: Message, amount: Amount) -> str:
    """`bran`, `liquid`, `water`, or nothing if the amount is not said to be of these."""
    if not _names_others(message):
        return ""
    called = called_behind(message, amount)
    if called:
        return called
    if amount.start and message.bran_at(amount.start - 1) and amount.end < len(message.norms):
        return "bran"
    return "bran" if _is_said_of_bran(message, amount) else ""


def called_behind(message: Message, amount: Amount) -> str:
    """What the words right behind an amount call it, of `bran`, `liquid` and `water`."""
    norms = message.norms
    for i in range(amount.end, min(len(norms), amount.end + 4)):
        if message.bran_at(i):
            return "bran"
        if message.liquid_at(i):
            return "liquid"
        if norms[i] in _WATER:
            return "liquid" if _is_bin_water(norms, i) else "water"
        if norms[i] not in _OF_BETWEEN and any(x.start <= i < x.end for x in message.items):
            break
        if norms[i] in _OF_ENDS:
            break
    return ""


_WATER = words_in("water molasses jaggery treacle")
_OTHERS = BRAN | LIQUID | _WATER


@once
def _names_others(message: Message) -> bool:
    return message.has(_OTHERS)


def _is_said_of_bran(message: Message, amount: Amount) -> bool:
    """ "The starter tin's about half full, call it 800 g": bran is what was named last before."""
    if any(amount.end <= x.start <= amount.end + 2 for x in message.items):
        return False
    if message.norms[max(0, amount.start - 2) : amount.start] == ["down", "to"]:
        return message.bran(max(0, amount.start - _BACK), amount.start)
    if _is_headed_bran(message, amount):
        return True
    first = max(0, amount.start - _BACK + 1)
    if not message.bran(first, amount.start):
        return False
    spans = [(x.start, x.end) for x in message.items if not x.generic]  # "bran remains 600 g"
    spans += [(x.start, x.end) for x in message.bins]
    spans += [(x.start, x.end) for x in message.amounts]
    named = {i for start, end in spans for i in range(start, end)}
    for i in range(amount.start - 1, first - 1, -1):
        if i in named or message.norms[i] in _ENDING:
            return False
        if message.bran_at(i):
            return not is_denied(message.norms, i)
    return False


def is_denied(norms: Sequence[str], i: int) -> bool:
    """ "No bran left", "out of bran", "bran's run out": of what word i names there is none."""
    behind = norms[i + 1 : i + 4]
    before = norms[max(0, i - 4) : i]
    if not NEARLY.isdisjoint([*before, *behind]):
        return False
    run_out = "out" in behind and not _RUN.isdisjoint(behind)
    return run_out or not WITHOUT.isdisjoint(before[-2:]) or before[-2:] == _OUT_OF


WITHOUT = words_in("no without forgot")
_OUT_OF = ["out", "of"]
_RUN = words_in("run ran")
NEARLY = words_in("nearly almost running about close")


def _is_headed_bran(message: Message, amount: Amount) -> bool:
    """ "Bran now: hall 1 kg, shed 2 kg": bran is what the list is of."""
    if message.items or ":" not in message.norms[:_HEADING]:
        return False
    head = message.norms.index(":")
    return head < amount.start and message.bran(0, head)


_HEADING = 5
_BACK = 12
"""Words back to which an amount may be said of what was named."""
_ENDING = words_in(". ! ? on over then to into in for per with and goes need needs want wants") | {
    "\n"
}


def _is_bin_water(norms: Sequence[str], i: int) -> bool:
    """ "400 ml of brown water", "250 ml water removed": what came out of a bin, so called."""
    if norms[i] != "water":
        return False
    return norms[i - 1] in MURKY or not _REMOVED.isdisjoint(norms[i + 1 : i + 3])


MURKY = words_in("brown dirty black smelly yellow murky stinky manky brownish yellowish amber")
_REMOVED = words_in("removed out off drained came taken")


_OF_ENDS = words_in(
    "before after without , . in into and to ( ) ; for from + n how what is are do should can : → "
    "off out"
)


_OF_BETWEEN = words_in(
    "of the o fresh old dry more good new wheat rice oat our that extra fermented"
)
