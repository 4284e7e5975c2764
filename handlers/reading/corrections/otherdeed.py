"""What was done put right: "sealed it, I mean" behind "buried it", "no, drained"."""

from handlers.reading.acts import Act, Bury, Drain, Retract, Seal
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
    """The sender's last deed struck out, and what was done to that bin instead."""
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
