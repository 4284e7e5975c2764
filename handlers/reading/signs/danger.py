"""Signs of danger that nothing else made a record of: "rats at the bin", "the lid exploded"."""

from collections.abc import Iterator

from handlers.practice.signs import Sign
from handlers.reading.acts import Observe
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in

CUES = (
    *("rat", "mice", "mouse", "rodent", "explo", "burst", "blew", "popped", "bulg", "swollen"),
    "droppings",
    *("hiss", "gas", "mould", "mold", "furry", "fuzz", "fluff", "hairy"),
)

_DANGERS: frozenset[Sign] = frozenset({"rodents", "gas", "green_mould", "black_mould"})
_LID = words_in("lid lids")
_ELSEWHERE = words_in(
    "wheelie council recycling rubbish trap traps road street bread cheese wall "
    "ceiling film movie fireworks car bike tyre balloon phone battery boiler toy cat friend "
    "friends cousin sister brother"
)
_MOST_WORDS = 12


def dangers(text: str, message: Message) -> Iterator[Observe]:
    """The signs of a short message that tells of nothing else, in a bin or about its lid."""
    lower = text.casefold()
    if not message.context.in_room or not any(cue in lower for cue in CUES):
        return
    if len(message.words) > _MOST_WORDS or message.has(_ELSEWHERE) or not _is_told(message):
        return
    signs = tuple(dict.fromkeys(s.sign for s in message.signs if not s.absent))
    found = tuple(sign for sign in signs if sign in _DANGERS)
    mould = bool(found) and all(sign.endswith("mould") for sign in found)
    refs = [ref for ref in message.bins if ref.plain or (ref.known and (mould or not ref.place))]
    if found and (refs or message.has(_LID)):
        name = next((ref.name for ref in refs if ref.name), None)
        yield Observe(signs=found, bin=name, rules=("a sign of danger",))


def _is_told(message: Message) -> bool:
    asked = message.asked
    senses = {clause.sense for clause in message.clauses}
    return not asked and senses.isdisjoint({"not", "if", "will", "said", "ask", "order"})
