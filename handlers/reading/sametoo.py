"""A deed told of one bin more, or once more: "green too, by the shed", "ok, sealed again"."""

from dataclasses import replace

from handlers.reading.acts import Bury, Drain, Seal
from handlers.reading.amending import plain_text
from handlers.reading.buried import bury_from
from handlers.reading.grouping import groups_of
from handlers.reading.late import Late
from handlers.reading.leaning import spoken_of
from handlers.reading.message import Message, read_message

_RULE = "the same, of another bin"
_TOO = Late(
    r"^(?:(?:and|oh|yes|yep|,) )*(?:the )?qbin(?: bin)? (?:too|as well|also|likewise)"
    r"(?: ,)?(?P<where>(?: (?:by|under|near|behind|beside|in|next|at|along|below)\b.{1,60})?)$"
)
_AGAIN = Late(
    r"^(?:(?:ok|okay|right|now|and|there|all|done|,|[.]) )*(?:its |it is |i |ive )?"
    r"(?:(?:re-?sealed|re-?shut)(?: it)?(?: again| now)?|"
    r"(?:sealed|shut|closed)(?: it)?(?: up)? again(?: now)?)$"
)


def done_too(message: Message) -> Bury | Drain | Seal | None:
    """What was done to the bin that the talk is on, done to another."""
    last = message.context.last
    if not isinstance(last, Bury | Drain | Seal) or len(message.bins) != 1 or message.amounts:
        return None
    [ref] = message.bins
    match = _TOO.search(plain_text(message))
    if match is None or not ref.known or ref.name in (None, last.bin) or "?" in message.norms:
        return None
    if isinstance(last, Bury):
        place = last.place
        if match["where"]:
            told = read_message(f"buried {ref.name}{match['where']}", message.context)
            place = bury_from(groups_of(told), 0, _RULE).place
        return replace(last, bin=ref.name, member=None, place=place, rules=(_RULE,))
    if match["where"]:
        return None
    if isinstance(last, Drain):
        return Drain(bin=ref.name, on=last.on, rules=(_RULE,))
    return Seal(bin=ref.name, on=last.on, rules=(_RULE,))


def sealed_again(message: Message) -> Seal | None:
    """The bin that the talk is on was closed once more."""
    bin: str | None = getattr(spoken_of(message), "bin", None)
    if bin is None or message.bins or message.amounts or "?" in message.norms:
        return None
    return Seal(bin=bin, rules=(_RULE,)) if _AGAIN.search(plain_text(message)) else None
