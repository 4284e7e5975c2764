"""So many bins that are not named: "a trench for 3 bins", "starter for two full ones of 20 L"."""

from handlers.reading.measures.digits import Number
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

CUES = words_in("bins")
_BETWEEN = words_in("full whole more of our the other such those these")
MOST = 50
"""Bins that one asks of at once; more are counted for something else."""


def bins_counted(message: Message, start: int, end: int) -> Number | None:
    """The number of bins, its end behind their word; None where none are counted."""
    if not message.has_in(CUES, start, end):
        return None
    sized = indexes(message.amounts)
    for i in range(start, end):
        number = None if i in sized else read_number(message.words, i)
        if number is None:
            continue
        at = number.end
        while at < end and message.norms[at] in _BETWEEN:
            at += 1
        whole = number.value == int(number.value) and 1 < number.value <= MOST
        if whole and at < end and message.norms[at] in CUES:
            return number._replace(end=at + 1)
    return None
