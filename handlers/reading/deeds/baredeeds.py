"""A deed in one word, "drained" or "buried today": of which bin, the talk says or who keeps it."""

from handlers.reading.acts import Bury, Drain
from handlers.reading.message import Message
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

CUES = words_in("drained buried")
IN_ONE_WORD = "a deed in one word"
"""The rule of a deed on the bin in talk, or the sender's only one; else it is asked which."""
_AROUND = words_in("i we have 've ok okay now and it . ! ,")
_MOST = 6


def bare_deed(message: Message) -> Drain | Bury | None:
    """What was done, if no more is told; only said to the bot or right behind its words is it one,
    as a neighbour may be drained by a long day.
    """
    context = message.context
    if len(message.words) > _MOST or not message.has(CUES) or message.asked:
        return None
    if not (context.after_bot or context.to_bot) or not context.bins:
        return None
    days = {day.past for day in message.days}
    on = days.pop() if days else message.today
    rest = unheld(message.norms, indexes(message.days))
    deeds = [norm for norm in rest if norm in CUES]
    if days or on > message.today or len(deeds) != 1 or not _AROUND.issuperset({*rest} - CUES):
        return None
    kind = Drain if deeds == ["drained"] else Bury
    return kind(on=on, each="either", rules=(IN_ONE_WORD,))
