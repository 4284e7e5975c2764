"""What a question is about, measured in a sentence beside it: "How do I make bran? I need 5 kg"."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Ask
from handlers.reading.food.ofwhat import of_what
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.questions.askedfigures import filled
from handlers.reading.questions.asks import question_of
from handlers.reading.questions.dilutions import dilution_of
from handlers.reading.words.vocabulary import words_in

FIGURED = ("batch", "dilution", "dose")
"""Topics whose amount people tell in a sentence of its own."""


def asked_elsewhere(act: Ask, acts: Sequence[Act], free: Sequence[Amount], message: Message) -> Ask:
    """The question with the one amount that the sentences beside it tell and no other act has."""
    if len(free) != 1 or act.mass_kg is not None or act.volume_l is not None:
        return act
    match act.topic:
        case "batch":
            return _batch(act, free[0], message)
        case "dilution":
            return _dilution(act, free[0], message)
        case _:
            return _dose(act, free[0], message) if all(isinstance(a, Ask) for a in acts) else act


def _batch(act: Ask, amount: Amount, message: Message) -> Ask:
    """ "How do we make the bran? I want 6 kg by June", but not "..., there are 6 kg left"."""
    norms = _around(message, amount)
    other = amount.quantity != "mass" or not _ON_HAND.isdisjoint(norms)
    if other or _of_things(message, amount) or of_what(message, amount) == "water":
        return act
    return replace(act, mass_kg=amount.value)


def _dilution(act: Ask, amount: Amount, message: Message) -> Ask:
    """ "What ratio for roses? I have 200 ml of it", "... My can is 9 litres"."""
    if act.liquid_l is not None or act.water_l is not None or amount.quantity != "volume":
        return act
    norms = _around(message, amount)
    if norms.isdisjoint(_HAVE | _VESSELS) or not norms.isdisjoint(_KEPT):
        return act
    told = dilution_of(question_of(message), act.bin)
    if norms.isdisjoint(_VESSELS):
        return replace(act, liquid_l=told.liquid_l or told.water_l)
    return replace(act, liquid_l=told.liquid_l, water_l=told.water_l)


def _dose(act: Ask, amount: Amount, message: Message) -> Ask:
    """ "How much bran for this? It's 2 kg of fish."."""
    if amount.quantity != "mass" or of_what(message, amount) == "bran":
        return act
    if not _ON_HAND.isdisjoint(_around(message, amount)):
        return act
    told = filled(question_of(message), "dose")
    if act.materials:
        return replace(act, mass_kg=told.mass_kg)
    return replace(act, mass_kg=told.mass_kg, materials=told.materials, rich=told.rich)


def _around(message: Message, amount: Amount) -> frozenset[str]:
    """The words of the sentence that an amount stands in."""
    own = [s for s in message.sentences if s.start <= amount.start]
    return frozenset(message.norms[own[-1].start : own[-1].end])


def _of_things(message: Message, amount: Amount) -> bool:
    """Whether scraps or a bin stand right behind the amount ("5 kg of peel")."""
    near = range(amount.end, amount.end + 3)
    starts = {item.start for item in message.items} | {ref.start for ref in message.bins}
    return not starts.isdisjoint(near)


_HAVE = words_in("got have had ive theres")
_VESSELS = words_in("water can bucket sprayer tank watering butt bottle jug holds")
_KEPT = words_in("scraps bran starter peel")
_ON_HAND = words_in("left remaining last lasts stock shelf still only low")
