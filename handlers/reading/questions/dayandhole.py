"""The day of a burial asked for in one breath with its hole: "when can I bury, how big a hole?"."""

from collections.abc import Sequence

from handlers.reading.acts import Act, Ask
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_WHEN = words_in("when day soon")
_ASKED = Late(
    r"\b(?:when|what day|how soon) (?:can|could|do|does|should|may|will|is|must|shall|am|are)\b"
    r"(?! (?:\S+ ){0,3}full\b)|(?:\band|,) when$"
)
"""Not "how big a hole when I bury it", nor "when is it full"."""
_HOLE = Late(
    r"\bhow (?:big|deep|long|wide) (?:is |should |must |does )?(?:a |the )?(?:hole|trench|pit)\b"
)


def asks_hole(text: str) -> bool:
    """Whether it is asked as well how big a hole is to be."""
    return _HOLE.search(text) is not None


def with_day_of_burial(acts: Sequence[Act], message: Message) -> Sequence[Act]:
    """The acts, with the question when it is to be buried before the one how big the hole is."""
    hole = next((a for a in acts if isinstance(a, Ask) and a.topic == "trench"), None)
    if hole is None or not message.has(_WHEN) or _ASKED.search(plain_text(message)) is None:
        return acts
    rest = [a for a in acts if not (isinstance(a, Ask) and a.topic == "due")]
    return [Ask(topic="due", what="bury", bin=hole.bin), *rest]
