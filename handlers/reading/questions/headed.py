"""Questions that are no more than a heading: "C:N of 2 kg coffee grounds", "1:500 in 5 litres"."""

from handlers.reading.acts import Ask
from handlers.reading.deeds.scraps import layer_from
from handlers.reading.food.items import one_food
from handlers.reading.grouping import groups_of
from handlers.reading.message import Message
from handlers.reading.questions.askedfigures import filled
from handlers.reading.questions.asks import question_of
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_CUES = words_in("moisture carbon c c/n")
_HEADING = Late(
    r"(?:(?:bot|pailkeeper|and|the|so|,|hey|what|whats|is|'s|tell|give|me|us|do|you|know) )*"
    r"(?:(moisture)|c ?(?::|/) ?n|"
    r"carbon (?:to|and|-|/|:) ?nitrogen)(?: (?:ratio|content|level))* (?:of|for|in) "
)


def asked_by_heading(message: Message) -> Ask | None:
    """What is wanted of the scraps named, none of which went into a bin, or of a dilution."""
    if message.context.in_room and message.norms[0].startswith("1:") and _is_ratio(message):
        return filled(question_of(message), "dilution")
    if not message.context.in_room or not message.items or not message.has(_CUES):
        return None
    found = _HEADING.match(" ".join(message.norms))
    if found is None or message.bins:
        return None
    scraps = layer_from(groups_of(message), 0, "")
    return Ask(
        topic="moisture" if found[1] else "carbon",
        materials=scraps.materials,
        mass_kg=scraps.mass_kg,
        what=one_food(message.items),
        rules=("asked by a heading",),
    )


def _is_ratio(message: Message) -> bool:
    """ "1:500 in 5 litres", "1:1000 for 2 L": a ratio, and how much is to be mixed by it."""
    alone = len(message.measured()) == 1 and all(c.verb is None for c in message.clauses)
    return alone and _RATIO.match(" ".join(message.norms)) is not None


_RATIO = Late(r"1:\d{2,4} (?:in|for|to|with|of|on) (?:an? )?\d")
