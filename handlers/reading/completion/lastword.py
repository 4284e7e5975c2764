"""An amount settled in a clause of its own behind a guess: "Call it a quart", "OK, 600 ml"."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Drain, Layer
from handlers.reading.food.ofwhat import of_what
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in

_HEDGES = words_in("~ about bout abt around like maybe roughly probably perhaps approx just ' a at")
_LEADS = words_in("say ok okay call make estimate reckon guess judge gauge eyeballed")
"""Words that lead to a last word on an amount."""
_TAILS = words_in("mean reckon guess think say thereabouts estimate suppose")
"""Words behind it: "5 litres I mean"."""
_LIGHT = words_in("it that which i we 'd would 'll will let 's lets us them so well")
_STOPS = words_in(". , ; : ! ? - — ( )") | {"\n", ""}
_SURE = words_in("actual actually exact exactly precise precisely fact reality really")
_SCALED = _SURE | words_in("weighed scale scales prob probably nearer closer")
"""Words that lead to what was measured behind a guess, or end it."""
_GUESSED = words_in(
    "feel feels felt look looks looked looking thought reckoned reckon guess guessed guessing "
    "estimate estimated seemed figured must eyeballed about roughly around ish ~ like"
)
_CUES = _LEADS | _TAILS | _SCALED
_MOST_APART = 2.5
"""Times the lesser of two guesses that the greater may be."""


def settled_at_last(act: Act, message: Message) -> Act:
    """The act with the amount that a later clause settles, where it was told by a guess before."""
    if not isinstance(act, Layer | Drain) or not message.has(_CUES):
        return act
    last = _weighed_last(message)
    if last is None:
        last = _last_word(message)
        if last is None or not _replaces(act, last, message):
            return act
    if isinstance(act, Layer):
        mass = last.value if last.quantity == "mass" else None
        return replace(act, mass_kg=mass, volume_l=None if mass is not None else last.value)
    volume = last.value if last.liquid_l is None else last.liquid_l
    return (
        act if last.quantity == "mass" and last.liquid_l is None else replace(act, volume_l=volume)
    )


def _last_word(message: Message) -> Amount | None:
    measures = [a for a in message.measured() if not a.vessel]
    if len(message.amounts) < 2 or not measures or measures[-1] is not message.amounts[-1]:
        return None
    last = measures[-1]
    lead, told = _lead(message.norms, last.start)
    settles = told and (lead or _is_followed(message.norms, last.end))
    return last if settles and not last.negative and not of_what(message, last) else None


def _weighed_last(message: Message) -> Amount | None:
    """ "Felt like 5 kg, but it weighed 3.2", "2 stone. Actual weight 9 lb", "a litre and a bit,
    prob 1.2": what was measured, or thought better of, behind the one guess at it."""
    measures = [a for a in message.measured() if not a.negative]
    if not message.has(_SCALED) or len(measures) != 2:
        return None
    guess, last = measures
    norms = message.norms
    between = norms[guess.end : last.start]
    behind = norms[last.end : last.end + 3]
    if guess.quantity != last.quantity or last.vessel or _MORE.intersection(between):
        return None
    if not 1 / _FAR_OFF <= last.value / (guess.value or 1.0) <= _FAR_OFF:
        return None
    if any(last.end <= item.start < last.end + 3 for item in message.items):
        return None
    lead, words = between[-_LEAD_WORDS:], norms[max(0, guess.start - 5) : last.start]
    said = not _SCALED.isdisjoint(lead) or not _SURE.isdisjoint(behind)
    if _LIKELY.issuperset(lead[-1:]) and lead:
        said = norms[guess.end - 1] == "bit" or not _ISH.isdisjoint(between[:1])
        said = said and last.value <= guess.value * _A_BIT
        return last if said else None
    sure = not _SURE.isdisjoint((*lead, *behind))
    return last if said and (sure or not _GUESSED.isdisjoint(words)) else None


_MORE = words_in("another more plus further extra other minus less empty")
_LIKELY = words_in("prob probably nearer closer")
_ISH = words_in("ish odd plus")
_LEAD_WORDS = 4
_FAR_OFF, _A_BIT = 6.0, 1.5
"""Times a guess may be off what the scale shows, and "a litre and a bit" its litre."""


def _lead(norms: Sequence[str], start: int) -> tuple[bool, bool]:
    """Whether a word that settles it leads to the amount, and a stop with only such words and
    hedges behind it: ". Call it about"."""
    at, led = start - 1, False
    while at >= 0 and norms[at] not in _STOPS:
        led = led or norms[at] in _LEADS
        if norms[at] not in _LEADS and norms[at] not in _HEDGES and norms[at] not in _LIGHT:
            return led, False
        at -= 1
    return led, at > 0


def _is_followed(norms: Sequence[str], end: int) -> bool:
    behind = norms[end : end + 4]
    tail = next((k for k, norm in enumerate(behind) if norm in _TAILS), None)
    return tail is not None and _TAIL_LIGHT.issuperset(behind[:tail])


_TAIL_LIGHT = words_in("i we 'd would or so")


def _replaces(act: Layer | Drain, last: Amount, message: Message) -> bool:
    """Whether the act has its amount from what was told before, and this can stand for it."""
    mass = act.mass_kg if isinstance(act, Layer) else None
    told = act.volume_l if mass is None else mass
    before = [a for a in message.measured() if a.end <= last.start]
    if told is None or not before:
        return told is None
    if last.quantity != ("volume" if mass is None else "mass"):
        return all(a.vessel for a in before)
    if any(a.vessel for a in before):
        return True
    return 1 / _MOST_APART <= last.value / (told or 1.0) <= _MOST_APART
