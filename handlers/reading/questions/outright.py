"""Questions that hold whatever their score: their words can ask about nothing but the craft."""

from handlers.reading.acts import Drain, Topic
from handlers.reading.context import Context
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text, with_people
from handlers.reading.questions.briefly import MAY_GO_ON, POURED_ON
from handlers.reading.questions.outrightwords import BED_WORDS, OUTRIGHTS
from handlers.reading.words.asking import is_question
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

_PETS = words_in(
    "dog dogs cat cats hens hen chooks ducks rabbit rabbits horse horses pony goat "
    "goats baby babies "
    "toddler kids guests birds pigs pig sheep hamster budgie microwave fridge freezer oven salad "
    "tortoise guinea puppy kitten soup stew cake batter fryer compost-heap school"
)
_CUES = frozenset[str]().union(*(each.cues for each in OUTRIGHTS))
LONGEST = 240
"""Letters of a message that may ask so; a longer one tells a story."""
OUTRIGHT = "asked in words that can ask about nothing else"


def _is_named(of: str, message: Message) -> bool:
    """Whether a food that no mouth waits for is named, or a sign and the bin that shows it; or
    that the bot is asked, or anything at all.
    """
    if of == "bot":
        return bool(message.bot) or message.context.to_bot or message.context.after_bot
    if of == "asked":
        return message.asked
    if message.has(_PETS):
        return False
    if of == "bin on bed":
        return any(_may_go(ref, message) for ref in (*message.bins, *message.named) if ref.known)
    if of == "food":
        return bool(message.items)
    return bool(message.signs) and any(b.plain or b.known for b in message.bins)


def _may_go(ref: BinRef, message: Message) -> bool:
    """ "Can the shed bin go on the carrots": it is the bin that may go, to a bed or to plants."""
    if any(item.start < ref.start for item in message.items):
        return False
    led = not _MAY.isdisjoint(message.norms[max(0, ref.start - 4) : ref.start])
    grown = any(item.start >= ref.end for item in message.items)
    return led and (grown or message.has_in(BED_WORDS, ref.end, len(message.norms)))


_MAY = words_in("can may could should will would")


def asked_outright(message: Message) -> Topic | None:
    """The topic that a message can only ask about, if its words are such."""
    if _is_of_liquid(message.context) and _is_for_plants(message):
        asks = message.asked or is_question(message.norms, False, frozenset())
        return "dilution" if asks else None
    if _is_next_bin(message):
        return "bin"
    words = _CUES.intersection(message.norms)
    text = ""
    for each in OUTRIGHTS if words else ():
        if words.isdisjoint(each.cues) or (each.of and not _is_named(each.of, message)):
            continue
        text = text or with_people(message, plain_text(message, days=True))
        if len(text) <= LONGEST and each.asked.search(text):
            return each.topic
    return None


def _is_of_liquid(context: Context) -> bool:
    """Whether the talk is of a bin's liquid: it was drained, or asked about, last."""
    drained = isinstance(context.last, Drain) or isinstance(context.just_told, Drain)
    return drained or any(asked.topic in ("dilution", "liquid") for asked in context.asked)


def _is_for_plants(message: Message) -> bool:
    """ "Could I use it on my tomatoes", "is it ok for house plants"."""
    text = plain_text(message)
    return bool(POURED_ON.search(text) or MAY_GO_ON.search(text))


def _is_next_bin(message: Message) -> bool:
    """ "And the shed?", behind an answer of ours: the same of another bin."""
    if not message.context.after_bot or len(message.norms) > _NEXT_BIN:
        return False
    refs = [ref for ref in (*message.bins, *message.named) if ref.known]
    rest = {*unheld(message.norms, indexes(refs))}
    return "?" in rest and rest <= _AND_IT and len({ref.name for ref in refs}) == 1


_NEXT_BIN = 8
_AND_IT = words_in("and what how about the bin one in ? , so now")


def is_whether(message: Message) -> bool:
    """ "Two pounds of rind. Into the shed or no?": what was measured is only asked about."""
    return _WHETHER.search(plain_text(message)) is not None


_WHETHER = Late(
    r"\bqbin (?:or (?:no|not|nah|naw)|yes or no|yea or nay|(?:can|may) (?:eat|have|digest))\b"
)
