"""Neighbours ask each other: whether a line asks of other things, and what only answers such."""

from collections.abc import Sequence
from re import IGNORECASE

from handlers.reading.acts import (
    Accept,
    Act,
    Amend,
    Ask,
    Decline,
    Done,
    Later,
    Layer,
    Retract,
    Unsure,
)
from handlers.reading.arranged import Plan
from handlers.reading.arrangements.communal import Refusing, Taking
from handlers.reading.arrangements.putoff import FORGOTTEN
from handlers.reading.bins.keptbins import only_mine
from handlers.reading.corrections.amending import SORRY
from handlers.reading.corrections.partright import BY_PART
from handlers.reading.message import Message
from handlers.reading.plaintext import word_count
from handlers.reading.plans import Reading
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

PASSING_ON = Accept | Decline | Taking | Refusing
"""Answers to an offer."""
ANSWERING = Amend | Retract | Done | Later | PASSING_ON
"""What a few words may mean to the bot, and to a neighbour just as well."""

_ASKING = Late(
    r"\?|^\W*(?:\w+\W+){0,2}?"
    r"(?:who|what(?! an? )|when|where|which|why|how|any|anyone|anybody|fancy|"
    r"(?:do|does|did|are|is|was|were|have|has|had|can|could|will|would|shall)"
    r"(?= (?:you|u|we|they|i|he|she|it|there|this|that|anyone|anybody|somebody|someone)\b))"
    r"(?:'?s|'?re|'?ve|'?ll)?\b|"
    r"^\W*(?:do|does|did|are|is|was|were|have|has|had|can|could|will|would|shall)\b",
    IGNORECASE,
)
"""Without it nothing is asked."""
OF_RECORD = words_in(
    "how much many what whats when where which who whos was were is it its that this did do does "
    "you u one bin bins in into put add added say said have and or about by then so oh hey the of "
    "all mean meant sure really again exactly time day today yesterday kilo kilos kg lb lbs pounds "
    "grams litres , . ? ! ' 's 're 've"
)
"""A question of nothing else is of what was said before it."""
CRAFT = words_in(
    "drain drained drains draining seal sealed seals sealing bury buried buries burying bran "
    "starter scraps peelings leachate bokashi compost trench rota bot"
)
"""A question with one of these, or one of `BOOKED`, is of the bins."""
BOOKED = words_in("record records recorded entry log logged layer bin bins bucket buckets")
"""Words for what only the bot is told of."""
_IS = words_in("was were is are went should 's")
_CORRECTING = SORRY | words_in("no nope make meant correction")


_FANCY = words_in("fancy")
"""A word of no bin: "do you fancy a pint?" """


def asks_neighbours(said: Reading, acts: Sequence[Act | Plan]) -> bool:
    """Whether it asks those in the room, of neither bins and amounts nor what was said before."""
    if said.context.to_bot or not all(isinstance(act, Ask) for act in acts):
        return False
    if _ASKING.search(said.text.replace("’", "'")) is None:
        return False
    message = said.message
    if message.has(_FANCY):
        return True
    if any(b.known for b in message.bins) or message.measured():
        return False
    if message.has(CRAFT | BOOKED):
        return False
    held = indexes(message.members)
    return any(
        word.kind != "number" and word.norm not in OF_RECORD
        for i, word in enumerate(message.words)
        if i not in held
    )


def asks_amount(message: Message) -> bool:
    """ "How heavy was the lettuce?", "did you weigh it?": it asks how much there was of some food,
    or of what was told before, and nothing else.
    """
    weighed = message.has(_WEIGHED) and message.has(_IT)
    if not weighed and not (message.items and message.has(_HOW_MUCH)):
        return False
    held = indexes(message.items, message.members)
    return (OF_RECORD | _HOW_MUCH | _LITTLE).issuperset(unheld(message.norms, held))


_WEIGHED = words_in("heavy weigh weighed")
_IT = words_in("it that they them those")
_HOW_MUCH = words_in("much weight") | _WEIGHED
_LITTLE = words_in("a old those that these roughly btw just lot bunch bag")


def calls_record(message: Message) -> bool:
    """Whether it calls us, or a record or a bin by such a word: "3 buckets" are none."""
    measured = indexes(message.amounts)
    return bool(message.bot) or any(
        norm in BOOKED and i not in measured for i, norm in enumerate(message.norms)
    )


def is_for_us(act: ANSWERING, message: Message) -> bool:
    """Whether it can be no answer to a neighbour: it calls us, or names what it is about."""
    if calls_record(message):
        return True
    if isinstance(act, Later) and (act.what or FORGOTTEN in act.rules):
        return True
    if isinstance(act, Done | Later | PASSING_ON):
        return act.bin is not None and not only_mine(message.bins, message.norms)
    if isinstance(act, Amend) and (
        (act.whose and act.member) or (act.bin and BY_PART in act.rules)
    ):
        return True
    record = message.context.last or message.context.earlier
    kinds = getattr(record, "materials", None) or {}
    said = [a.value for a in message.amounts]
    had = [getattr(record, name, None) for name in ("mass_kg", "volume_l")]
    verb = next((i for i, norm in enumerate(message.norms) if norm in _IS), len(message.norms))
    spoken = [item for item in message.items if item.start < verb]  # not "it was lasagne"
    return any(kind in kinds for item in spoken for kind, _ in item.food.shares) or any(
        much in said for much in had if much is not None
    )


def asked_of_layer(act: Act | Plan, message: Message) -> Act | Plan:
    """A layer, asked about first where no deed, no bin and no starter is named with its food."""
    if not isinstance(act, Layer) or act.bin or message.bot or message.has(CRAFT | BOOKED):
        return act
    if message.bins or any(clause.verb for clause in message.clauses):
        return act
    return Unsure(guess=(act,), rules=("may answer a neighbour",))


def may_be_for_us(act: ANSWERING, message: Message) -> bool:
    """Whether it reads so much like one for the book that it is asked about: "sorry, 3 kg"."""
    if isinstance(act, Accept | Decline):
        # "I'll take it", not "I'll do them"
        return isinstance(act, Accept) and act.bare is None and not message.has(_SEVERAL)
    if not isinstance(act, Amend):
        return isinstance(act, Retract | Taking | Refusing)
    if message.norms[0] in _SLIPPED and word_count(message) <= _MOST_SLIPPED:
        return True
    measured = act.mass_kg is not None or act.volume_l is not None
    return measured and not _CORRECTING.isdisjoint(message.norms[:3])


_SEVERAL = words_in("them these those")
_SLIPPED = words_in("sorry oops whoops woops correction typo * mistake")
_MOST_SLIPPED = 6
"""Words of a correction of whatever sort that is none of a neighbour's."""
