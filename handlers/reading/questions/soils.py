"""How warm or cold the soil is in which bins were buried: "the soil is only 8 degrees"."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.practice.days import COLDEST, HOTTEST
from handlers.reading.acts import Act, Bury, Observe, Unsure
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

SOIL = words_in("soil soils ground earth")
_BETWEEN = words_in(
    "temperature temp temps thermometer is 's was are at only still just about around now here "
    "there today reads read says shows measured measures has have got warmed cooled up down to "
    "under the in of our my bed outside out with a , : = by already and it "
    "nearly almost roughly currently"
)
"""What stands between the soil and its temperature, beside places, days and names."""
_SUPPOSING = words_in("if when once until unless till should before")
_COMPARING = words_in("cooler colder warmer hotter more less above below too higher lower")
"""Behind a temperature: it is only how far from another."""
_FARTHEST = 8
_TOLD = frozenset({"none", "did", "habit", "said"})


def with_soil(acts: Sequence[Act], message: Message) -> tuple[Act, ...]:
    """The acts, with the soil's temperature in the burial that is told or as told by itself."""
    warm = _told(message) if message.has(SOIL) else None
    if warm is None:
        return tuple(acts)
    is_done = any(clause.sense == "did" and clause.verb for clause in message.clauses)
    rest = [
        act
        for act in acts
        if not _is_taken_from(act, warm.value)
        if is_done or not (isinstance(act, Bury) and act.bin is None)  # soil is no grave yet
    ]
    if any(isinstance(act, Bury) for act in rest):
        return tuple(
            replace(act, celsius=warm.value) if isinstance(act, Bury) else act for act in rest
        )
    bins = [ref.name for ref in message.bins if ref.known]
    bin = bins[0] if len(bins) == 1 else None
    said = " ".join(message.norms)
    place = next((p for p in message.context.places if f" {p.casefold()} " in f"{said} "), None)
    rules = ("the soil's temperature",)
    return (*rest, Observe(celsius=warm.value, bin=bin, place=place, soil=True, rules=rules))


def _told(message: Message) -> Amount | None:
    """The one temperature that is said of the soil, and not asked or supposed."""
    if message.has(_SUPPOSING) or message.asked:
        return None
    held = indexes(message.bins, message.days)
    warm = [
        amount
        for amount in message.amounts
        if amount.quantity == "celsius"
        and COLDEST <= amount.value <= HOTTEST
        and not message.has_in(_COMPARING, amount.end, amount.end + 2)
        and message.sense_at(amount.start) in _TOLD
        and _is_of_soil(message, amount, held)
    ]
    return warm[0] if len(warm) == 1 else None


def _is_of_soil(message: Message, amount: Amount, held: frozenset[int]) -> bool:
    behind = [norm for norm in message.norms[amount.end : amount.end + 3] if norm != "the"]
    if behind[:1] == ["in"] and not SOIL.isdisjoint(behind[1:2]):  # "8 degrees in the soil"
        return True
    places = {word for place in message.context.places for word in place.casefold().split()}
    for i in range(amount.start - 1, max(-1, amount.start - _FARTHEST), -1):
        norm = message.norms[i]
        if norm in SOIL:
            return True
        if i not in held and norm not in _BETWEEN and norm not in places:
            return False
    return False


def _is_taken_from(act: Act, celsius: float) -> bool:
    """Whether it takes the soil's temperature for that of a bin."""
    if isinstance(act, Unsure):
        return len(act.guess) == 1 and _is_taken_from(act.guess[0], celsius)
    return isinstance(act, Observe) and not act.signs and act.ph is None and act.celsius == celsius
