"""What goes in behind the question whether it may: "turkey carcass, can I" and then "broke it up,
put it in, 2 kg".
"""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Amend, Ask, Layer, Unsure
from handlers.reading.corrections.amending import BARE_AMOUNT
from handlers.reading.food.quantities import amount_sum
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_RULE = "what was asked about goes in"
_IT = words_in("it them that those this")
_LONGEST = 14
_IN = Late(
    r"\b(?:(?:put|threw|chucked|tipped|popped|tossed|added|it 's|it is|they 're|they are)"
    r"(?: (?:it|them|that|those|this))?(?: all)?|it went|they went) ?(?:,|in\b|into\b)"
)


def may_put_in(body: str) -> bool:
    """Whether a message is so short and so formed that it may tell what becomes of such a food."""
    words = body.casefold().replace(",", " ").split()
    return len(words) <= _LONGEST and any(word in _NEAR for word in words)


_NEAR = _IT | words_in("in it's they half about a cup litre kg g")


def with_asked_food(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, a layer of no food being of the one that the sender has just asked about."""
    asked = message.context.asked_food
    if asked is None or not asked.materials or message.items or "?" in message.said:
        return list(acts)
    pointed = message.has(_IT) or (message.has(_PUT) and "put in" in " ".join(message.norms))
    if not acts or (len(acts) == 1 and isinstance(acts[0], Amend)):
        told = _put_in(asked, message)
        if told is not None and message.has(_IT) and _IN.search(" ".join(message.norms)):
            return [told]
        bare = bool(acts) and BARE_AMOUNT in acts[0].rules  # "about half a cup" puts nothing right
        return [Unsure(guess=(told,), rules=told.rules)] if told and bare else list(acts)
    return [_of(asked, act, pointed=pointed) for act in acts]


_PUT = words_in("put")


def with_food_asked_of(acts: Sequence[Act], message: Message) -> list[Act]:
    """ "Is grapefruit all right? A pound is in the shed already": what goes in beside the question
    whether it may, where no other food is named; "1 kg in the shed, and may orange peel go in?"
    asks of more to come.
    """
    asked = next((a for a in acts if isinstance(a, Ask) and a.topic == "allowed"), None)
    if asked is None or not asked.materials:
        return list(acts)
    questions = [s for s in message.sentences if s.asked]
    if any(a.end <= message.items[0].start for a in message.measured()[:1] if message.items):
        return list(acts)
    if not all(any(q.start <= i.start < q.end for q in questions) for i in message.items):
        return list(acts)
    return [_of(asked, act, pointed=True) for act in acts]


def _of(asked: Ask, act: Act, *, pointed: bool) -> Act:
    if isinstance(act, Unsure):
        return replace(act, guess=tuple(_of(asked, one, pointed=True) for one in act.guess))
    if not pointed or not isinstance(act, Layer) or (act.materials or {}).keys() - {"mixed"}:
        return act
    bin = act.bin or (asked.bin if act.in_it is None else None)
    return replace(act, materials=asked.materials, rich=asked.rich, bin=bin)


def _put_in(asked: Ask, message: Message) -> Layer | None:
    """So much of what was asked about, if an amount is told."""
    mass, volume = amount_sum(message.measured())
    if not (mass or volume) or len(message.sentences) > 2:
        return None
    names = {ref.name for ref in message.bins if ref.known}
    return Layer(
        mass_kg=mass,
        volume_l=volume,
        bin=names.pop() if len(names) == 1 else None,
        materials=asked.materials,
        rich=asked.rich,
        on=message.today,
        rules=(_RULE,),
    )
