"""Goals, limits, totals and plans: amounts of what is not put in by this message."""

import re

from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in

_CUES = words_in(
    "goal target aim estimate forecast limit maximum capacity total tally plan plans planned "
    "follow todo still later next upcoming coming pencilled"
)
_FIRST = 6
"""Words of a heading."""
_WHOSE = r"(?:(?:my|our|the|new|this|last|\w+) (?:(?:week|month|year|season|\w+day) )?(?:'s )?)?"
_HEADING = re.compile(
    rf"^{_WHOSE}(?:goals?|targets?|aim|estimate|forecast|limit|capacity|total|tally)"
    r" (?:for|is|of|:|in|was|at)|"
    r"^(?:the )?maximum (?:is |of |: )?\d|"
    rf"^{_WHOSE}plans? (?:for [\w ]{{1,20}})?[:—-]|"
    r"^(?:to follow|still to (?:do|come|go)|todo|to do|later (?:today|on)|next up|up next|"
    r"coming up|upcoming|planned|pencilled in)\b[ \w]{0,20}[:,—-]|"
    r"^next up\b"
)


def is_outlook(message: Message) -> bool:
    """Whether a heading says that the amounts are aimed at, allowed or summed up."""
    norms = message.norms
    if _CUES.isdisjoint(norms[:_FIRST]):
        return False
    if any(c.sense == "did" and c.verb and "layer" in c.verb.verb.classes for c in message.clauses):
        return False
    return _HEADING.search(" ".join(norms[: 2 * _FIRST])) is not None
