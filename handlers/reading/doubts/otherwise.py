"""The craft's verbs said of other things: sealed envelopes, drained pints, a nose in a book."""

from handlers.reading.doubts.branelse import OF_BRAN
from handlers.reading.doubts.buriedelse import BURIED
from handlers.reading.doubts.drainedelse import DRAINED
from handlers.reading.doubts.elsewords import BEASTS, GOODS
from handlers.reading.doubts.openedelse import OPENED, SEEN
from handlers.reading.doubts.sealedelse import SEALED
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.vocabulary import words_in

_OF_ELSE = {
    "stock": OF_BRAN,
    "batch": OF_BRAN,
    "open": OPENED,
    "observe": SEEN,
    "seal": SEALED,
    "drain": DRAINED,
    "bury": BURIED,
}
"""By kind of record."""


_OF_NO_BIN: dict[str, frozenset[str]] = {
    "observe": words_in("heap pile midden oven aphids ankles campsite"),
    "open": words_in(f"{BEASTS} {GOODS} recycling rubbish trash glass cardboard"),
}
"""What is told of a bin wherever one is named that could be nothing else, and the words beside
which it may be told of another thing all the same."""


def is_of_else(kind: str, message: Message) -> bool:
    """Whether the deed of that kind was done to a thing that is no bin, and to nothing besides."""
    other = _OF_ELSE.get(kind)
    if other is None or not message.has(other.cues):
        return False
    named = any(ref.plain and ref.name for ref in message.bins)
    if named and kind in _OF_NO_BIN and not message.has(_OF_NO_BIN[kind]):
        return False
    text = plain_text(message)
    rest = other.turns.sub(" ", text)
    return rest != text and other.itself.search(rest) is None
