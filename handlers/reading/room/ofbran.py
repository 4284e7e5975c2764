"""Talk of how much starter was put on: a few spoons or handfuls behind it are of starter, and
neither scraps nor liquid.
"""

from handlers.reading.corrections.amending import SORRY
from handlers.reading.deeds.spoons import CUES as SPOONS
from handlers.reading.message import Message
from handlers.reading.room.neighbours import BOOKED, CRAFT
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

OF_BRAN = words_in("bran starter inoculant sprinkle sprinkled sprinkling")
"""A message with one of these, of which nothing is written down, is talk of starter."""
_HELD = SPOONS | words_in(
    "handful handfuls handfull fistful fistfuls fist fists pinch pinches scoop scoops scoopful "
    "cup cups cupful mug mugs mugful"
)
_OF_SCRAPS = SORRY | words_in("another more again extra also plus in into")
"""Behind one of these an amount that is weighed goes on from a layer, or puts it right."""
_MOST_KG, _MOST_L = 0.2, 1.0
"""More is no dose of one layer, by either habit."""


def may_be_dose(message: Message) -> bool:
    """Whether no more is told than an amount as small as a dose, of nothing that is named."""
    measured = message.measured()
    named = message.bins or message.items or message.liquid() or message.has(CRAFT | BOOKED)
    if not measured or named or message.bot:
        return False
    return all(
        amount.value <= _MOST_KG and not message.has(_OF_SCRAPS)
        if amount.quantity == "mass"
        else amount.value <= _MOST_L and message.has_in(_HELD, amount.start, amount.end)
        for amount in measured
    )


_DID_YOU = Late(r"\b(?:did|have|had) (?:you|u|ye|ya)\b")


def asks_what_was_put_on(message: Message) -> bool:
    """ "Did you put bran on?", "how much starter did you use, Jo?": what a neighbour has done."""
    return message.has(OF_BRAN) and _DID_YOU.search(" ".join(message.norms)) is not None
