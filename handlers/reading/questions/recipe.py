"""The recipe of a batch asked for in a few words: "starter for 10 kg of bran"."""

from collections.abc import Iterator

from handlers.reading.acts import Ask
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import phrases
from handlers.reading.words.late import Late

CUES = ("bran",)

_RECIPE = Late(
    r"^(?:(?:the|bot|a) )*(?:starter|recipe|mix|molasses|culture)(?: (?:and )?(?:water|culture))* "
    r"for .{1,20} (?:wheat |rice |of )*bran(?: please)?$"
)


def recipe(message: Message) -> Iterator[Found]:
    """The questions of a message that name nothing but the bran there is."""
    masses = [amount.value for amount in message.amounts if amount.quantity == "mass"]
    for phrase in phrases(message) if len(masses) == 1 else ():
        if _RECIPE.match(phrase.text):
            yield Found(*phrase.sentence, Ask(topic="batch", mass_kg=masses[0]))
