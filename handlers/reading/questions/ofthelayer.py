"""How much starter the layer in talk should have had: "how much should it have been?"."""

from handlers.reading.acts import Ask, Drain, Layer
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text, with_people
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

OF_TALK = "the layer in talk"
"""What is asked about: its dose, whoever told it."""
CUES = words_in("should needed right enough wanted correct")
"""Words without one of which it is not asked."""
_LONGEST = 14
_BRAN = r"(?: (?:of )?(?:the )?(?:bran|starter|inoculant))?"
_ASKED = Late(
    r"^(?:(?:so|ok|and|but|hey|hi|oh|right|well|please|bot|pailkeeper|then|,) )*"
    r"(?:(?:how much|how many (?:spoons|spoonfuls|tablespoons|handfuls|scoops)|what)"
    rf"{_BRAN} should "
    r"(?:it|that|this|he|she|they|i|we|qmember) (?:have )?"
    r"(?:been|be|used|use|put|had|have|got|get|given|give|added|add|gone|go)"
    rf"(?: (?:it|that|on|in|with|there))*{_BRAN}(?: (?:on|in|with) (?:it|that|there))?|"
    rf"how much{_BRAN} (?:was|is) (?:needed|right|enough|wanted|correct)|"
    r"what(?: was| is| 's) the (?:right|correct) (?:amount|dose))"
    rf"{_BRAN}(?: (?:then|instead|for (?:it|that)|please|bot|pailkeeper|actually|[,?.!]))*$"
)


def asks_dose_of_layer(message: Message) -> Ask | None:
    """The dose of the layer in talk, asked of the bot or by whoever has just told the layer."""
    if not message.has(CUES) or len(message.norms) > _LONGEST or not message.context.in_room:
        return None
    if message.amounts or message.bins or message.items:
        return None
    of_liquid = isinstance(message.context.just_told or message.context.last, Drain)
    if of_liquid or not (message.bot or isinstance(spoken_of(message), Layer)):
        return None
    if _ASKED.search(with_people(message, plain_text(message))) is None:
        return None
    return Ask(topic="dose", what=OF_TALK, rules=("asks of the layer in talk",))
