"""What is only said again of a record: "yep, 4 kg in green", a quotation, a wondering."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Layer
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

SAID_AGAIN, QUOTED = "said again", "another's words"
"""Rules of a layer that is none if one like it was written down lately: of the same member, or of
anybody.
"""

CUES = words_in('" ? yes yep yeah yup aye said told believe seriously')
_AGAIN = Late(r"^(?:yes|yep|yeah|yup|aye)\b|\b(?:as|like) i (?:just )?(?:said|told|say)\b")
_UNBELIEVED = Late(r"\b(?:dont|cant|can not|do not) believe\b|\bseriously\b")
_FURTHER = words_in("another more too also again further extra")


def with_echoes(acts: Sequence[Act], message: Message) -> tuple[Act, ...]:
    """The acts, with each layer marked that may only say again what was written down."""
    rule = _rule(message) if message.has(CUES) and not message.has(_FURTHER) else None
    if rule is None or not all(isinstance(act, Layer) for act in acts):
        return tuple(acts)
    return tuple([replace(a, rules=(*a.rules, rule)) if isinstance(a, Layer) else a for a in acts])


def _rule(message: Message) -> str | None:
    text = plain_text(message)
    if _AGAIN.search(text):
        return SAID_AGAIN
    measured = [a.start for a in message.measured()]
    quoted = measured and all(_quoted(message, i) or _wondered(message, i) for i in measured)
    return QUOTED if quoted or _UNBELIEVED.search(text) else None


def _quoted(message: Message, i: int) -> bool:
    """Whether word i stands between quotation marks."""
    marks = [k for k, norm in enumerate(message.norms) if norm == '"']
    return len(marks) == 2 and marks[0] < i < marks[1]


def _wondered(message: Message, i: int) -> bool:
    """ "Dev, 4 kg?? In green??": asked without a verb, and that is all."""
    if any(clause.verb is not None for clause in message.clauses):
        return False
    return any(s.asked and s.start <= i < s.end for s in message.sentences)
