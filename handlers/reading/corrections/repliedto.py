"""A few words in reply to what the bot answered to a record: of that record, or unclear."""

from collections.abc import Sequence

from handlers.reading.acts import (
    Act,
    Amend,
    Batch,
    Bury,
    Drain,
    Layer,
    Observe,
    Open,
    Retract,
    Seal,
    Stock,
)
from handlers.reading.corrections.onlywrong import ONLY_WRONG
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

RULE = "in reply to the answer"
_RECORDS = Layer | Drain | Seal | Bury | Observe | Open | Batch | Stock
_MOST_WORDS = 8
_DAY = Late(r"^(?:on |from )?qday$")
_NOT_ME = Late(r"^(?:(?:no|sorry|nope) ,? ?)?not (?:by |from )?me\b")
_DOUBTS = words_in(
    "no nope nah wrong incorrect not what huh eh pardon lot much little high low off odd strange"
)
_BESIDE_DOUBT = _DOUBTS | words_in(
    "right correct true that this it is was 's looks look seems seem sounds a an awful too very so "
    "bit quite hmm um er sorry well ? ! . ,"
)


def right_of_reply(message: Message) -> Sequence[Act]:
    """What a reply corrects by its day or doer alone, or the question what was wrong.

    "That seems a lot" may be of the layer or of the dose: it is asked.
    """
    if not isinstance(message.context.last, _RECORDS) or len(message.words) > _MOST_WORDS:
        return ()
    text = plain_text(message, days=True).strip(" .!")
    if _DAY.search(text) and len(message.days) == 1 and message.days[0].past <= message.today:
        return (Amend(on=message.days[0].past, rules=(RULE,)),)
    if _NOT_ME.search(text):
        if len(message.members) == 1 and message.members[0].name != message.context.sender:
            return (Amend(member=message.members[0].name, rules=(RULE,)),)
        return () if message.members else (Retract(rules=(ONLY_WRONG,)),)
    doubts = not _DOUBTS.isdisjoint(message.said) and _BESIDE_DOUBT.issuperset(message.said)
    return (Retract(rules=(ONLY_WRONG,)),) if doubts else ()
