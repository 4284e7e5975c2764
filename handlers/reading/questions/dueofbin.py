"""What is to be done with one bin, asked without any word for the deed: "what do I have to do with
Plum this week?", "does the shed need anything?".
"""

from handlers.reading.acts import Ask
from handlers.reading.message import Message
from handlers.reading.questions.daysasked import days_asked
from handlers.reading.questions.duekinds import AFTER, BEFORE
from handlers.reading.words.late import Late

_WITH = r"(?:with|to|for|about)(?: (?:the|my|our))? qbin"
_I = r"(?:i|we|you|qmember)"
_DAY = r"(?: (?:this|next|the|coming|on|by|now|today|tomorrow|tonight|qday|week|weekend|month))"
_TO_DO = Late(
    rf"{BEFORE}(?:what (?:do|must|should|shall|does) {_I} (?:still )?(?:(?:have|need|got) to )?"
    rf"(?:be )?(?:do|doing)(?: next)? {_WITH}|"
    rf"(?:is )?(?:there )?anything (?:{_I} (?:have|need|ought) )?to do {_WITH}|"
    rf"(?:do|does|must|should) {_I} (?:(?:have|need) to )?do anything {_WITH}|"
    r"(?:does|will|would)(?: (?:the|my|our))? qbin need (?:anything|something)(?: (?:doing|done))?)"
    rf"{_DAY}*{AFTER}"
)


def to_do_with(message: Message, start: int, end: int) -> Ask | None:
    """The dues of the group's one bin that a sentence names, by the day it says."""
    if (said := of_one_bin(message, start, end)) is None:
        return None
    bin, text = said
    if _TO_DO.fullmatch(text.removesuffix(" ?")) is None:
        return None
    first, on = days_asked(message, start, end, text)
    return Ask(topic="due", bin=bin, first=first, on=on)


def of_one_bin(message: Message, start: int, end: int) -> tuple[str, str] | None:
    """The one bin of the group's that a sentence names, and its words with `qbin` for it."""
    refs = [b for b in message.bins if start <= b.start < end and b.known and b.name]
    if len(refs) != 1 or refs[0].name is None:
        return None
    [ref] = refs
    norms = message.norms
    return refs[0].name, " ".join([*norms[start : ref.start], "qbin", *norms[ref.end : end]])
