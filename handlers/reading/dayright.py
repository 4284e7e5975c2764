"""A record put down to another day by its form alone: "put it down as yesterday"."""

from handlers.reading.acts import Amend
from handlers.reading.amending import SHORT, plain_text, word_count
from handlers.reading.late import Late
from handlers.reading.message import Message
from handlers.reading.rightwrong import BY_FORM
from handlers.reading.vocabulary import words_in

CUES = words_in("put log record enter book mark date 's correct fix not")
"""Words without one of which no day is put right."""
_LEAD = r"^(?:(?:oh|no|sorry|oops|actually|and|wait|ah|please|can you|could you|,|[.]) )*"
_THAT = r"(?:that|it|this|the last)(?: (?:one|entry|lot|layer))?"
_PUT_DOWN = Late(
    # "put it down as yesterday", "date that one Monday"
    _LEAD
    + rf"(?:(?:put|log|record|enter|book|mark) {_THAT} (?:down )?(?:as|under|for|to) (?:\w+ )?|"
    rf"date {_THAT} (?:as |to )?)qday(?: 's)?(?: instead| ,? please)?$|"
    # "that was Monday's"
    + _LEAD
    + rf"{_THAT} was qday 's(?: (?:lot|one|scraps|layer|drain))?$|"
    # "not Saturday. It was Thursday. Correct it"
    + _LEAD
    + r"not (?:on )?qday [.,;-] (?:[a-z]+ ){0,5}(?:on )?(?P<right>qday)(?: [.,;-])? (?:please )?"
    rf"(?:correct|fix) {_THAT}(?: please)?$|"
    # "not Monday, Tuesday"
     + _LEAD + r"not (?:on )?qday(?: ,| but)* (?:on )?(?P<other>qday)$"
)


def another_day(message: Message) -> Amend | None:
    """The day that the last record is put down to."""
    if not message.days or word_count(message) > SHORT or message.amounts or message.items:
        return None
    if message.context.in_room and message.context.last is None:
        return None
    found = _PUT_DOWN.search(plain_text(message, days=True))
    two = found is not None and (found["right"] or found["other"])
    if found is None or "?" in message.norms or len(message.days) > (2 if two else 1):
        return None
    if found["other"] and any(day.past > message.today for day in message.days):
        return None  # "not today, tomorrow"
    was = message.days[0].past if two and message.context.in_room else None
    return Amend(on=message.days[-1].past, was=was, rules=(BY_FORM,))
