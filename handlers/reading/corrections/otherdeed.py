"""What was done put right: "sealed it, I mean" behind "buried it", "no, drained"."""

from handlers.reading.acts import Act, Bury, Drain, Retract, Seal
from handlers.reading.corrections.onlywrong import END, LEAD
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

RULE = "another deed than was told"
CUES = words_in("sealed buried drained")
"""Words without one of which no deed is put right."""
_AGAINST = words_in("no nope sorry oops mean meant actually wait not")
_DEED = r"(?:sealed|buried|drained)"
_IT = r"(?: (?:it|that|(?:the |our |my )?qbin))?"
_ANOTHER = Late(
    r"^(?:(?:no|nope|oh|ah|sorry|oops|wait|actually|i mean|i meant|meant|it was|was|i|we|,|[.!]) )*"
    rf"(?P<deed>{_DEED}){_IT}"
    rf"(?: (?:i mean|i meant|mean|meant|sorry|oops|actually|not {_DEED}{_IT}|[,.!]))*$"
)
_KINDS: dict[str, type[Seal | Bury | Drain]] = {"sealed": Seal, "buried": Bury, "drained": Drain}


def another_deed(message: Message) -> tuple[Act, ...]:
    """The sender's last deed struck out, and what was done to that bin instead, if anything."""
    return _told_else(message) or _denied(message)


def _told_else(message: Message) -> tuple[Act, ...]:
    last = message.context.last
    if not isinstance(last, Seal | Bury | Drain) or not message.has(_AGAINST):
        return ()
    if last.member not in (None, message.context.sender) or {b.name for b in message.bins} - {
        last.bin
    }:
        return ()
    match = _ANOTHER.search(plain_text(message))
    kind = _KINDS[match["deed"]] if match else type(last)
    if isinstance(last, kind):
        return ()
    return (
        Retract(anew=True, rules=(RULE,)),
        kind(bin=last.bin, on=last.on, rules=(RULE,)),
    )


def _denied(message: Message) -> tuple[Act, ...]:
    """ "Not sealed, drained": the deed just told is struck out, with the one done in its place;
    "it's not sealed" strikes it out alone.
    """
    last = message.context.last
    if not isinstance(last, Drain | Seal | Bury) or not message.has(CUES) or message.amounts:
        return ()
    if message.bins or message.members or message.days or message.items or "?" in message.said:
        return ()
    match = _ANOTHER_DEED.search(" ".join(message.norms).strip(" .!"))
    if match is None:
        return ()
    denied, done = (
        match["denied"] or match["denied2"],
        match["done"] or match["only"] or match["done2"],
    )
    if (denied and _KINDS[denied] is not type(last)) or (done and _KINDS[done] is type(last)):
        return ()
    struck = Retract(anew=True if done else None, rules=("not done after all",))
    if not done:
        return (struck,)
    return struck, _KINDS[done](bin=last.bin, member=last.member, on=last.on, rules=(RULE,))


_DID = r"(?:drained|sealed|buried)"
_SAID = r"(?:(?:i|we|it|that|have|has|been|was|is|'s|only|just|actually|but) )*"
_ANOTHER_DEED = Late(
    rf"{LEAD}(?:{_SAID}(?:not|isnt|wasnt|havent|didnt) (?P<denied>{_DID})(?: it)?(?: yet| ,| but)*"
    rf"(?: {_SAID}(?P<done>{_DID})(?: it)?)?|"
    rf"{_SAID}(?P<done2>{_DID})(?: it)?(?: ,| and)* not (?P<denied2>{_DID})|"
    rf"(?:i |we )?(?:only|just) (?P<only>{_DID}) it){END}"
)
