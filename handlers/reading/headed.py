"""Questions that are no more than a heading: "C:N of 2 kg coffee grounds", "moisture of bread"."""

from handlers.reading.acts import Ask
from handlers.reading.grouping import groups_of
from handlers.reading.items import one_food
from handlers.reading.late import Late
from handlers.reading.message import Message
from handlers.reading.scraps import layer_from
from handlers.reading.vocabulary import words_in

_CUES = words_in("moisture carbon c c/n")
_HEADING = Late(
    r"(?:(?:bot|pailkeeper|and|the|so|,) )*(?:(moisture)|c ?(?::|/) ?n|carbon (?:to|and|-|/|:) ?"
    r"nitrogen)(?: (?:ratio|content|level))* (?:of|for|in) "
)


def asked_by_heading(message: Message) -> Ask | None:
    """What is wanted of the scraps named, none of which went into a bin."""
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
