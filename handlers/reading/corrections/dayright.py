"""A record put down to another day by its form alone: "put it down as yesterday"."""

from datetime import date

from handlers.reading.acts import Amend, Bury, Drain, Layer, Observe, Open, Seal
from handlers.reading.corrections.rightwrong import BY_FORM
from handlers.reading.message import Message
from handlers.reading.plaintext import SHORT, plain_text, word_count
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

CUES = words_in(
    "put log record enter book mark date 's correct fix not meant mean correction * sorry actually "
    "fact oops"
)
"""Words without one of which no day is put right."""
ALONE, AND_SO = "a day alone", "a day that goes on from a correction"
"""Rules of a day that is right only of the record spoken of, and of one corrected before."""
ONCE_MORE = "a day that may tell the same of another day"
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
_ALONE = Late(
    # "no, Wednesday", "sorry meant Wed", "*Thursday"
    r"^(?:(?:(?:oh|no|nope|nah|sorry|oops|wait|actually|correction|ah|bot|,|[.:!]) )*"
    r"(?:(?:no|nope|nah|correction|actually|oops|whoops|sorry|wait|i (?:mean|meant)|mean|meant)"
    r"(?: [,.:!])*|[*]) "
    r"(?:(?:it was|was|that was|on|from) )*|"
    # "was it Tuesday? no it must have been Wednesday"
    r"(?:(?:was|is) (?:it|that) (?:on )?qday [?.,]+ )?"
    r"(?:(?:no|nope|sorry|actually|wait|oh|,|[.]) )*"
    r"(?:it|that) (?:must|should|mustve|shouldve|mightve|might|would)"
    r"(?: (?:have|ha|of|ve|'ve))? (?:been )?(?:on )?)"
    r"qday(?: (?:sorry|actually|in fact|i think|please|not qday|[,.!]))*$|^qday [*]$|"
    # "yesterday, sorry"
    r"^qday(?: ,)? (?:sorry|actually|in fact|oops|i (?:mean|meant)|not qday)(?: [,.!])*$"
)
_AND_SO = Late(
    r"^(?:and|also|again|plus|,)(?:(?P<was> (?:it|that) was)| on| ,| again)* qday"
    r"(?: (?:too|as well|again|(?P<not>not qday|sorry)))*$"
)
_DATED = Layer | Drain | Seal | Bury | Observe | Open
"""Records of something done on one day."""


def another_day(message: Message) -> Amend | None:
    """The day that the last record is put down to."""
    return _put_down(message) or _alone(message)


def and_so(message: Message) -> Amend | None:
    """ "And yesterday", which goes on from a correction."""
    right = _day_of_last(message)
    if right is None or "?" in message.said:
        return None
    led = "also " if message.body.lstrip()[:5].casefold() == "also " else ""  # no courtesy here
    told = _AND_SO.search(led + plain_text(message, days=True))
    if told is None:
        return None
    more = () if told["was"] or told["not"] else (ONCE_MORE,)
    return Amend(on=right, rules=(BY_FORM, AND_SO, *more))


def opened_on(message: Message) -> Amend | None:
    """ "I opened green yesterday, not today": the day of a bin that was just told to be begun."""
    last = message.context.last
    if not isinstance(last, Open) or not message.days or not message.has(_OPENED):
        return None
    held = indexes(message.days, message.bins)
    rest = {norm for i, norm in enumerate(message.norms) if i not in held}
    right = [day for day in message.days if message.norms[day.start - 1 : day.start] != ["not"]]
    if not rest <= _OPENED | _OF_OPENING or len(right) != 1 or right[0].past > message.today:
        return None
    named = {ref.name for ref in message.bins if ref.name is not None}
    if not named <= {last.bin} or right[0].past == last.on:
        return None
    return Amend(on=right[0].past, rules=(BY_FORM,))


_OPENED = words_in("opened started begun")
_OF_OPENING = words_in("i we it was the bin actually sorry no oh , . ! not on in fact already is")


def _alone(message: Message) -> Amend | None:
    """The day alone, of a record that the talk is on."""
    right = _day_of_last(message)
    if right is None or _ALONE.search(plain_text(message, days=True)) is None:
        return None
    alone = message.norms.count("was") == 0  # "that was yesterday" speaks of a record
    return Amend(on=right, rules=(BY_FORM, ALONE) if alone else (BY_FORM,))


def _day_of_last(message: Message) -> date | None:
    """The day that may be that of the record spoken of, where nothing else is named."""
    last = message.context.last
    if not message.days or not isinstance(last, _DATED) or message.context.on_offer:
        return None
    if len(message.norms) > SHORT or message.amounts or message.items or message.bins:
        return None
    right = message.days[-1 if message.norms[-2:-1] != ["not"] else 0]
    if right.past > message.today or right.past == last.on:
        return None
    return right.past


def _put_down(message: Message) -> Amend | None:
    """The day that the last record is put down to in so many words."""
    if not message.days or word_count(message) > SHORT or message.amounts or message.items:
        return None
    if message.context.in_room and message.context.last is None:
        return None
    found = _PUT_DOWN.search(plain_text(message, days=True))
    two = found is not None and (found["right"] or found["other"])
    if found is None or "?" in message.said or len(message.days) > (2 if two else 1):
        return None
    if found["other"] and any(day.past > message.today for day in message.days):
        return None  # "not today, tomorrow"
    was = message.days[0].past if two and message.context.in_room else None
    return Amend(on=message.days[-1].past, was=was, rules=(BY_FORM,))
