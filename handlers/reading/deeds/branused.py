"""How much starter really went on the layer just told: "used about 50 g of bran on that", "put 3
spoons of starter on it". It is no scraps, and not what is on hand.
"""

from collections.abc import Iterator

from handlers.reading.acts import Layer
from handlers.reading.arranged import StarterUsed
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.deeds.branmoves import bran_text
from handlers.reading.food.quantities import amount_sum
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.plaintext import is_asking
from handlers.reading.words.late import Late

CUES = ("bran", "starter", "bokashi", "used ", "inoculant")
_LONGEST = 20
_LEAD = r"(?:(?:i|we|and|just|have|'ve|then|also|ok|so|about|oh|for that|,) )*"
_MUCH = r"(?:(?:about|around|roughly|only|just|some|maybe|nearly|over|a|good|generous) )*qmuch"
_BRAN = r"(?: of)?(?: (?:the|our|my|dry|bokashi|starter))* qbran"
_ON = (
    r"(?: (?:on|over|for|with|onto|in|to)(?: top of)? (?:it|that|this|them|top|(?:the|that) "
    r"(?:layer|lot|one|batch|scraps|last one)))"
)
_VERB = r"(?:used|sprinkled|strewed|scattered|put|put on|added|threw|gave it|gave that|dusted)"
_END = r"(?: (?:in the end|in all|altogether|too|today|qday|now|though|already|on top|,|[.!]))*"
_USED = Late(
    rf"{_LEAD}(?:{_VERB} {_MUCH}{_BRAN}{_ON}?|used {_MUCH}{_ON}|"
    rf"{_MUCH}{_BRAN} (?:went|is|'s|are|was|used){_ON}?|"
    rf"{_VERB}{_BRAN}{_ON}? (?:, |: |- )?{_MUCH}){_END}"
)
_UNDONE = frozenset({"will", "if", "not", "said", "ask"})


def starter_used(message: Message) -> Iterator[Found]:
    """The starter that went on the layer in talk, where that is all that is told."""
    if not isinstance(spoken_of(message), Layer) or len(message.norms) > _LONGEST:
        return
    measured = message.measured()
    if len(measured) != 1 or message.items or message.bins or message.members:
        return
    if is_asking(message) or any(clause.sense in _UNDONE for clause in message.clauses):
        return
    if _USED.fullmatch(bran_text(message, measured[0])):
        mass, volume = amount_sum(measured)
        yield Found(0, len(message.words), StarterUsed(mass_kg=mass, volume_l=volume))
