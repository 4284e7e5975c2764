"""One amount told of a list of bins ("2 kg to red and blue"), and not how much is for each."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from handlers.reading.acts import Act, Drain, Layer, Unsure
from handlers.reading.completion.binlists import listed_bins
from handlers.reading.completion.lots import share_of
from handlers.reading.message import Message
from handlers.reading.words.binwords import INTO

RULE = "one amount for several bins"


def asked_to_divide(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, with one layer or draining of several bins turned into the question of halves."""
    told = [act for act in acts if isinstance(act, Layer | Drain)]
    if len(told) != 1 or len(message.bins) < 2 or len(message.measured()) != 1:
        return list(acts)
    names = _all_behind(told[0], message)
    if not names:
        return list(acts)
    return [_divided(act, names) if act is told[0] else act for act in acts]


def _all_behind(act: Layer | Drain, message: Message) -> list[str]:
    """The bins in a row behind what leads to them, if one of them is the act's and they end it."""
    for refs in listed_bins(message.bins, message):
        names = list(dict.fromkeys(ref.name for ref in refs if ref.name is not None))
        if any(one.end == other.start for one, other in pairwise(refs)):
            continue
        before = message.norms[max(0, refs[0].start - 2) : refs[0].start]
        drained = isinstance(act, Drain) and _is_drained(message, refs[0].start)
        led = drained or (
            bool(before)
            and (before[-1] in INTO or (before[-1] in ("the", "our") and before[0] in INTO))
        )
        end = refs[-1].end
        ending = {day.start for day in message.days}
        ending |= {amount.start for amount in message.amounts} if drained else set()
        ends = end >= len(message.words) or message.words[end].kind == "sign" or end in ending
        if led and ends and act.bin in names and len(names) > 1:
            return names
    return []


def _is_drained(message: Message, at: int) -> bool:
    """ "Drained shed and green, 300 ml": whether the verb stands straight before the bins."""
    at -= message.norms[at - 1 : at] == ["the"]
    verbs = [clause.verb for clause in message.clauses if clause.verb]
    return any(verb.end == at and "drain" in verb.verb.classes for verb in verbs)


def _divided(act: Layer | Drain, names: Sequence[str]) -> Act:
    part = share_of(act, 1 / len(names))
    return Unsure(guess=tuple([replace(part, bin=name) for name in names]), rules=(RULE,))
