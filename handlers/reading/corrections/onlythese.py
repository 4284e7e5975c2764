"""What was told of several bins and holds for one: "no, only the shed", "the yard isn't buried"."""

from handlers.reading.acts import Bury, Drain, Layer, Retract, Seal
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in("only just not isnt wasnt hasnt except bar apart other")
"""Words without one of which nothing is taken back of one bin."""
_LEAD = r"^(?:(?:no|nope|sorry|oops|wait|actually|but|and|oh|,|[.]) )*"
_BIN = r"(?:(?:in|into|to|from) )?(?:the |our |my )?qbin(?: bin)?"
_END = r"(?: (?:yet|at all|actually|though|after all|sorry|,|[.!]))*$"
_ONLY = Late(
    rf"{_LEAD}(?:it was )?(?:only|just) {_BIN}(?P<other>(?: ,| and)* not {_BIN})?{_END}|"
    rf"{_LEAD}{_BIN}(?P<only>(?: ,)? only){_END}"
)
_NOT = Late(rf"{_LEAD}(?:not|except|bar|apart from|other than) (?:for )?{_BIN}{_END}")
_REFUSING = words_in("no nope not except bar apart other")
_UNDONE = Late(
    rf"{_LEAD}{_BIN} (?:is not|'s not|isnt|was not|wasnt|has not been|hasnt been) "
    rf"(?P<deed>buried|sealed){_END}"
)
"""A bin that is not drained may well have been drained before."""
_KINDS = {"buried": "bury", "sealed": "seal"}


def not_of_these(message: Message) -> Retract | None:
    """What is to be struck out of the last record, or of a bin's own, as its deed was not done."""
    if not message.has(CUES) or message.amounts or message.items or "?" in message.said:
        return None
    refs = [ref for ref in message.bins if ref.known and ref.name]
    if not 0 < len(refs) < 3 or len(message.sentences) != 1:
        return None
    text, bin = plain_text(message, days=True), refs[0].name
    if match := _UNDONE.search(text):
        what = _KINDS[match["deed"]]
        return Retract(what=what, bin=bin, of_bin="undone", rules=("it was not done",))
    if not isinstance(message.context.last, Bury | Drain | Seal | Layer):
        return None
    if _ONLY.search(text):
        return Retract(bin=bin, of_bin="only", rules=("of this bin alone",))
    refused = message.norms[0] in _REFUSING and _NOT.search(text)
    return Retract(bin=bin, of_bin="not", rules=("not of this bin",)) if refused else None
