"""How likely an act must be that no rule found: more so, the less is said of a bin or to the bot.

An act that is none too likely is left out, or asked about first.
"""

from handlers.reading.acts import Act, Layer, Unsure
from handlers.reading.message import Message
from handlers.reading.records import RECORD_KINDS
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


def if_likely(
    act: Act, kind: str, likelihood: float, message: Message, *, alone: bool
) -> Act | None:
    """The act, or what asks about it first; None where too little speaks for it.

    `alone` is an act beside which nothing else is told.
    """
    if _is_too_little(kind, likelihood, message, alone=alone):
        return None
    if kind in RECORD_KINDS and likelihood < PLAINLY_TOLD:
        return Unsure(guess=(act,), rules=("likely, but no more",))
    return act


def _is_too_little(kind: str, likelihood: float, message: Message, *, alone: bool) -> bool:
    if kind in _OF_A_BIN:
        return alone and likelihood < PLAINLY_TOLD and not _sounds_so(message)
    if kind == "seal":
        return not alone and likelihood < SHUT_BESIDE
    if kind == "decline" and message.context.in_room:
        return not _is_to_bot(message)
    answers = kind in _ANSWERS or (kind == "ask trouble" and not message.signs)
    return answers and likelihood < TO_NOBODY and not _is_to_bot(message)


def is_unlikely(layer: Layer, likelihood: float, message: Message) -> bool:
    """Whether what a rule took for a layer had better not be believed."""
    if layer.mass_kg is None and layer.volume_l is None:
        return False
    if message.bins or likelihood >= MAY_BE_OF_NO_BIN or isinstance(message.context.last, Layer):
        return False
    return not (_sounds_so(message) or _is_told(message))


def _is_told(message: Message) -> bool:
    """Whether somebody is said to have put something anywhere."""
    did = (clause.verb for clause in message.clauses if clause.sense == "did")
    return any(use is not None and "layer" in use.verb.classes for use in did)


MAY_BE_OF_NO_BIN = 0.25
"""Likelihood below which no rule is believed that finds a layer in words without any bin: most is
carried, spilt and given away by weight."""
PLAINLY_TOLD = 0.58
"""Likelihood from which a record that no rule found is written down without asking; below it, a
layer or a sign in words without any bin is not even asked about: what is cooked, spilt, bought and
seen elsewhere is told of in just such words."""
SHUT_BESIDE = 0.6
"""Likelihood from which a bin is believed to be sealed beside something else that is told of it:
lids are also pressed, stuck and looked under."""
TO_NOBODY = 0.7
"""Likelihood from which an answer is believed that neither calls the bot nor names a bin: most that
sound so are given to a neighbour."""
_OF_A_BIN = frozenset({"layer", "observe"})
_AGAIN = words_in("same again ditto")
"""Words with which little is said, and yet a record is meant: "the yard again, same as Friday"."""
_ANSWERS = frozenset({"decline", "done", "later", "ask bin", "ask custody", "ask starter"})


def _sounds_so(message: Message) -> bool:
    """Whether it names a bin, one of us or what is scraps, or says of something that it went in."""
    if message.bins or message.members:
        return True
    if any(item.scrap and item.food.name != "food" for item in message.items):
        return True
    return message.has(_LAYER) or _went_in(message)


def _went_in(message: Message) -> bool:
    return "went" in message.said and _WENT_IN.search(" ".join(message.norms)) is not None


_LAYER = BIN_WORDS | _AGAIN | words_in("layer layers")
_WENT_IN = Late(r"\bwent in\b|\bin (?:it|they) went\b")


def _is_to_bot(message: Message) -> bool:
    """Whether the bot is called or answered, or something of ours is named or waits."""
    context = message.context
    waits = context.on_offer or context.on_reminder or context.after_bot
    named = message.bot or message.bins or message.named or message.has(BIN_WORDS)
    return bool(named) or waits or context.to_bot
