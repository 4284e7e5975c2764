"""A word put right by naming both: "for bread read beef", "what I wrote as bin 3 was the shed"."""

from handlers.reading.acts import Amend
from handlers.reading.corrections.rightwrong import BY_FORM
from handlers.reading.food.makeups import makeup
from handlers.reading.message import Message
from handlers.reading.plaintext import SHORT, word_count
from handlers.reading.words.late import Late

_WROTE = r"(?:put|wrote|typed|said|logged|posted)"
_THING = r"((?:\S+ ){1,4}?)"
_RIGHT_LAST = Late(
    rf"^(?:sorry |oops |, )*(?:for {_THING}(?:, )?read {_THING}(?:in my last |please |[.!] )*$|"
    rf"where i {_WROTE} {_THING}(?:, )?read {_THING}(?:please |[.!] )*$|"
    rf"what i {_WROTE} as {_THING}(?:should (?:have been|be) |was ){_THING}(?:please |[.!] )*$)"
)
_RIGHT_FIRST = Late(rf"^(?:sorry |oops |, )*read {_THING}where i {_WROTE} {_THING}(?:[.!] )*$")
_COOKED = Late(
    r"^(?:(?:and|sorry|oops|no|actually|,) )*(?:it|that|this)(?: (?:last )?(?:lot|one))? (?:was|is|"
    r"'s) (?:all )?cooked (?:stuff |food |scraps )?(?:, )?not raw (?:, |[.!] |if that matters |"
    r"(?:on |in )?(?:that|my|the) last (?:one|lot|entry) )*$"
)


def read_for(message: Message) -> Amend | None:
    """The food or the bin that is to stand in place of another."""
    if word_count(message) > SHORT:
        return None
    text = " ".join(message.norms) + " "
    if _COOKED.match(text) and (message.context.last or not message.context.in_room):
        return Amend(materials={"cooked": 1.0}, rules=(BY_FORM,))
    right_last = _RIGHT_LAST.match(text)
    match = right_last or _RIGHT_FIRST.match(text)
    if match is None:
        return None
    named = [k for k in range(1, (match.lastindex or 0) + 1) if match[k] is not None]
    right = named[-1] if right_last else named[0]
    start, end = (text[: match.start(right)].count(" "), text[: match.end(right)].count(" "))
    items = [item for item in message.items if start <= item.start < end]
    bins = [bin.name for bin in message.bins if start <= bin.start < end and bin.name]
    if not items and not bins:
        return None
    made = makeup(items) if items and not bins else None
    return Amend(
        materials=None if made is None else made.shares,
        rich=None if made is None else made.rich,
        bin=bins[0] if bins else None,
        rules=(BY_FORM,),
    )
