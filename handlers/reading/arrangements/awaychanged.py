"""An absence that is told anew: "staying till the 25th", "sorry, 9th to 15th", "the trip's off"."""

from collections.abc import Iterator
from datetime import timedelta

from handlers.reading.arranged import AwayChanged, Staying
from handlers.reading.arrangements.awayright import CUES as RIGHT_CUES
from handlers.reading.arrangements.awayright import put_right
from handlers.reading.calendar.stretches import begins_at, stretch_in
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = (
    *("staying", "not back", "not home", "be back", "be home", "back until", "back till"),
    *("home until", "home till", "get back", "get home", "back before", "home before"),
    *RIGHT_CUES,
    *("trip", "holiday", "vacation", "not going", "extended", "extending", "prolong"),
)

_LEAD = (
    r"(?:(?:actually|sorry|no|oh|so|but|and|hi|all|folks|hey|news|update|change of plan|bad news|"
    r"good news|looks like|it looks like|looks as if|turns out|just to say|fyi|"
    r"(?:stuck|delayed|held up|stranded)(?: (?:in|at) \S+| here)?|flight(?: is| 's| was)? "
    r"(?:cancelled|canceled|delayed)) )*"
)
_WHO = r"(?:i|we|qmember|he|she|they)"
_BE = r"(?: (?:am|are|is|'s|will|'ll|have|has|be|had))*"
_LONGER = Late(
    rf"^{_LEAD}(?:{_WHO}{_BE} )?(?:"
    r"staying(?! (?:up|in touch))(?: (?!till|until|til)\S+){0,4}|"
    r"(?:not|not coming|wont be|cant be|not be|cant get|not get|not be able to get) (?:back|home)"
    r"(?: (?:home|here|again|now|yet))?|"
    rf"{_WHO} (?:will|'ll|am|are|is|'s)(?: only)? be (?:back|home) only|"
    r"(?:extended|extending|prolonged|prolonging|staying)(?: \S+){0,3}"
    r") (?P<till>till|until|til|before|to|through) (?:\S+ ){0,4}?q?\w+"
)
"""Somebody is away for longer than was told, until a day."""
_MORE = Late(
    rf"^{_LEAD}(?:{_WHO}{_BE} )?(?:staying|stay)(?: (?:on|here|away|there|put|in \S+))*(?: for)? "
    r"(?:(?P<another>another|an extra|one more) )?"
    r"(?P<count>a|an|one|two|three|four|five|six|\d{1,2})?"
    r" ?(?:more |extra )?(?P<unit>days?|nights?|weeks?|fortnight)(?P<longer> longer| more| extra)?"
    r"(?: .{0,40})?$"
)
"""They are so, for so many days more."""
_COUNTS = {"two": 2, "three": 3, "four": 4, "five": 5, "six": 6}
_DAYS_OF = {"d": 1, "n": 1, "w": 7, "f": 14}
_OFF = Late(
    rf"^{_LEAD}(?:the|my|our) (?:trip|holiday|holidays|vacation|weekend away|journey|visit) "
    r"(?:is|are|'s|has been|have been|got|was)(?: now)? (?:off|cancelled|canceled|called off|"
    r"not happening|fallen through)\b|"
    rf"^{_LEAD}(?:trip|holidays?|vacation) (?:is |'s )?(?:off|cancelled|canceled|called off)\b|"
    rf"^(?:actually |so )*{_WHO} (?:am|are|is|'s) not going(?: away)? (?:after all|any ?more)$"
)
"""What somebody was to be away for does not take place."""
_SLIP = words_in("sorry no oops actually rather correction wait")
_AROUND = _SLIP | words_in(
    "i we mean meant make it that is it's should be was , . ! : - not but instead then please from "
    "the away till until til to am are"
)
_MOST = 16
"""Words of a message that says no more than that."""


def away_changed(message: Message) -> Iterator[Found]:
    """What a message says anew of an absence that was told before."""
    if len(message.words) > 2 * _MOST:
        return
    if message.context.on_absence and (anew := _put_right(message)):
        yield Found(0, len(message.words), anew)
        return
    for phrase in phrases(message):
        if phrase.asked:
            continue
        right = put_right(phrase)
        if right is not None:
            yield Found(phrase.start, phrase.sentence[1], right)
        elif longer := _longer(phrase) or _so_much_longer(phrase):
            yield Found(phrase.start, phrase.sentence[1], longer)
        elif _OFF.match(phrase.text):
            yield Found(phrase.start, phrase.sentence[1], Staying(member=phrase.member))


def _longer(phrase: Phrase) -> AwayChanged | None:
    """ "We're staying on till the 25th", "Dev's not home before the 24th"."""
    match = _LONGER.match(phrase.text)
    span = phrase.words(match, "till") if match else None
    if match is None or span is None:
        return None
    stretch = stretch_in(phrase.message, span[0], phrase.end)
    if stretch is None or stretch.last is None:
        return None
    named = [one for one in phrase.members if one.end <= span[0]]
    days = [day for day in phrase.days if span[0] <= day.start < stretch.end]
    by_week = any(day.future - day.past == _WEEK for day in days)
    is_back = by_week and match["till"] in ("till", "until", "til", "before")
    return AwayChanged(
        last=stretch.last,
        is_back=is_back,
        no_earlier=is_back,
        weekday=by_week,
        member=named[0].name if named else None,
    )


def _so_much_longer(phrase: Phrase) -> AwayChanged | None:
    """ "Staying another week", "we're staying two days longer"."""
    match = _MORE.match(phrase.text)
    if match is None or not (match["another"] or match["longer"] or " more " in match.group()):
        return None
    said = match["count"] or "one"
    count = int(said) if said.isdecimal() else _COUNTS.get(said, 1)
    return AwayChanged(more=count * _DAYS_OF[match["unit"][0]], member=phrase.member)


def _put_right(message: Message) -> AwayChanged | None:
    """ "Sorry, 9th to 15th", right behind an absence of the sender's own."""
    norms = message.norms
    if len(norms) > _MOST or not message.has(_SLIP | {"make", "mean", "meant"}):
        return None
    if message.sentences and message.sentences[0].asked:
        return None
    at = next((i for i, norm in enumerate(norms) if norm not in _AROUND - _LEADS), len(norms))
    stretch = stretch_in(message, at, len(norms))
    if stretch is None or stretch.last is None or not begins_at(message, at, stretch):
        return None
    if not all(norm in _AROUND for norm in norms[stretch.end :]):
        return None
    is_end = norms[at] in _TILL
    if stretch.first == stretch.last and not is_end:  # its first day, or its last?
        days = [day for day in message.days if at <= day.start < stretch.end]
        by_week = any(day.future - day.past == _WEEK for day in days)
        ahead = days and stretch.first > message.today
        return AwayChanged(either=stretch.first, weekday=by_week) if ahead else None
    return AwayChanged(first=None if is_end else stretch.first, last=stretch.last)


_WEEK = timedelta(days=7)
_TILL = words_in("till until til")
_LEADS = _TILL | words_in("from the to")
