"""A deed told of one bin more, or once more: "green too, by the shed", "same in Rosie", "ok, sealed
again".
"""

from dataclasses import replace

from handlers.reading.acts import Bury, Drain, Layer, Observe, Seal, Unsure
from handlers.reading.amending import plain_text
from handlers.reading.buried import bury_from
from handlers.reading.goneon import COLOURS
from handlers.reading.grouping import groups_of
from handlers.reading.late import Late
from handlers.reading.leaning import spoken_of
from handlers.reading.message import Message, read_message
from handlers.reading.vocabulary import words_in

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


_SAME = Late(
    r"^(?:(?:and|oh|yes|yep|then|,) )*(?:the )?same(?: again| amount)?(?: (?:for|from|with|by) me)?"
    r"(?: (?:in|into|for|with|to|from|on|of|at))? (?:the )?qbin(?: bin)?"
    r"(?: (?:too|as well|also|again|please|now))*$"
)
_CUES = words_in("same too also likewise well")
_Done = Bury | Drain | Layer | Observe | Seal


def done_too(message: Message) -> _Done | Unsure | None:
    """What was done to the bin that the talk is on, done to another."""
    if not message.has(_CUES) or len(message.bins) != 1:
        return None
    if message.amounts or message.days or message.items:
        return None
    [ref] = message.bins
    last = spoken_of(message)
    if not isinstance(last, _Done) or not ref.known or ref.name is None or "?" in message.norms:
        return None
    if ref.name == last.bin and not (isinstance(last, Layer) and "again" in message.norms):
        return None
    if _SAME.search(plain_text(message)) is not None:
        return _as_much(last, ref.name, message)
    return _also(last, ref.name, message)


def _as_much(last: _Done, bin: str | None, message: Message) -> _Done | Unsure | None:
    """ "Same in green": as much of the same, asked first where it was another's."""
    if isinstance(last, Layer) and not (last.mass_kg or last.volume_l or last.materials):
        return None
    same = replace(last, bin=bin, member=None, rules=(_RULE,))
    if last.member in (None, message.context.sender):
        return same
    return Unsure(guess=(replace(same, on=message.today),), rules=(_RULE,))


def _also(last: _Done, bin: str | None, message: Message) -> _Done | Unsure | None:
    """ "Green too, by the shed": the deed or the sign, without what was measured; asked first where
    a mould may be of the colour that a bin is called by."""
    words = (bin or "").casefold().split()
    match = _TOO.search(plain_text(message))
    if match is None or isinstance(last, Layer) or message.context.last is None:
        return None
    if isinstance(last, Bury):
        place = last.place
        if match["where"]:
            told = read_message(f"buried {bin}{match['where']}", message.context)
            place = bury_from(groups_of(told), 0, _RULE).place
        return replace(last, bin=bin, member=None, place=place, rules=(_RULE,))
    if match["where"]:
        return None
    if isinstance(last, Drain):
        return Drain(bin=bin, on=last.on, rules=(_RULE,))
    if isinstance(last, Observe):
        if not last.signs or last.celsius is not None or last.ph is not None:
            return None
        seen = Observe(signs=last.signs, bin=bin, on=last.on, rules=(_RULE,))
        coloured = any("mould" in sign for sign in last.signs) and not COLOURS.isdisjoint(words)
        return Unsure(guess=(seen,), rules=(_RULE,)) if coloured else seen
    return Seal(bin=bin, on=last.on, rules=(_RULE,))


def sealed_again(message: Message) -> Seal | None:
    """The bin that the talk is on was closed once more."""
    bin: str | None = getattr(spoken_of(message), "bin", None)
    if bin is None or message.bins or message.amounts or "?" in message.norms:
        return None
    return Seal(bin=bin, rules=(_RULE,)) if _AGAIN.search(plain_text(message)) else None
