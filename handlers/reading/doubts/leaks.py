"""Liquid that ran out by itself: "leaking at the tap, half a mug on the floor" drains no bin."""

from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in(
    "leak leaks leaked leaking leakage puddle overflowed dripped dripping floor carpet rug lino "
    "tiles boards worktop counter stairs step"
)
"""Words without one of which nothing leaks here."""
_LEAKED = Late(
    r"\b(?:leak|leaks|leaked|leaking|leakage|puddle|overflowed|drained (?:itself|by itself))\b|"
    r"\b(?:all )?(?:on|over|across) (?:the|my|our) (?:\w+ )?(?:floor|carpet|rug|lino|tiles|boards|"
    r"worktop|counter|stairs|step)\b"
)
_CAUGHT = Late(
    r"\b(?:drained(?! (?:itself|by itself))|drew|drawn|emptied|tapped|collected|caught|siphoned|"
    r"poured|pulled|took|take|got|had|gave|into)\b"
)
"""Words with which somebody drew it off as well."""


def is_leak(message: Message) -> bool:
    """Whether the liquid told of ran out by itself, and nobody drew any off."""
    text = plain_text(message)
    return _LEAKED.search(text) is not None and _CAUGHT.search(text) is None
