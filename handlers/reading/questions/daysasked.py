"""The days that a question is about: "by Sunday", "next week", "between the 14th and the 20th"."""

from datetime import date, timedelta

from handlers.reading.calendar.daywords import MONTHS
from handlers.reading.calendar.stretches import coming
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


def days_asked(
    message: Message, start: int, end: int, text: str
) -> tuple[date | None, date | None]:
    """The first and the last day that are asked about; no first one where all up to a day is."""
    today = message.today
    sunday = today + timedelta(days=6 - today.weekday())
    month_end = _after_month(today) - _DAY
    of_a_date = "weekend of" in text
    if "end of the month" in text or "end of this month" in text:
        return max(month_end - timedelta(days=6), today), month_end
    for words, first, last in (
        ("week after next", sunday + timedelta(days=8), sunday + timedelta(days=14)),
        ("next week", sunday + _DAY, sunday + timedelta(days=7)),
        ("this week", None, sunday if today < sunday else sunday + timedelta(days=7)),
        ("next weekend", sunday + timedelta(days=6), sunday + timedelta(days=7)),
        ("this weekend", max(sunday - _DAY, today), sunday),
        ("the weekend", max(sunday - _DAY, today), sunday),
        ("this month", None, month_end),
        ("next month", month_end + _DAY, _after_month(month_end + _DAY) - _DAY),
    ):
        if not of_a_date and (text.endswith(f" {words}") or f" {words} " in text):
            is_until = _UNTIL.search(text) is not None
            return None if is_until else first, last
    if month := _IN_MONTH.search(text):
        number = MONTHS[month["month"]]
        begin = date(today.year + (number < today.month), number, 1)
        if week := _WEEK_OF.search(text):
            return _week_of(begin, week["which"])
        if weekend := _WEEKEND_OF.search(text):
            return _weekend_of(begin, weekend["which"])
        return max(begin, today), _after_month(begin) - _DAY
    days = [day for day in message.days if start <= day.start < end]
    if not days:
        return None, None
    on = coming(days[0].past, days[0].future, today)
    if len(days) > 1 and message.norms[days[0].start - 1] in _FROM:
        return on, max(on, coming(days[1].past, days[1].future, on))
    if "weekend" in message.norms[max(start, days[0].start - 3) : days[0].start]:
        saturday = on + timedelta(days=5 - on.weekday()) if on.weekday() < 6 else on - _DAY
        return saturday, saturday + _DAY
    is_until = message.norms[days[0].start - 1] in _BY if days[0].start > start else False
    return None if is_until or on <= today else on, on


_NTH = ("first", "second", "third", "fourth")


def _week_of(begin: date, which: str) -> tuple[date, date]:
    """The first and the last day of the week so called of the month that begins then."""
    if which == "last":
        return _after_month(begin) - timedelta(days=7), _after_month(begin) - _DAY
    first = begin + timedelta(days=7 * _NTH.index(which))
    return first, first + timedelta(days=6)


def _weekend_of(begin: date, which: str) -> tuple[date, date]:
    """The Saturday so called of the month that begins then, and the Sunday behind it."""
    if which == "last":
        end = _after_month(begin) - _DAY
        saturday = end - timedelta(days=(end.weekday() - 5) % 7)
    else:
        first = begin + timedelta(days=(5 - begin.weekday()) % 7)
        saturday = first + timedelta(days=7 * _NTH.index(which))
    return saturday, saturday + _DAY


_WEEKEND_OF = Late(r"\b(?P<which>first|second|third|fourth|last) weekend (?:of|in) ")
_WEEK_OF = Late(r"\b(?P<which>first|second|third|fourth|last) week (?:of|in) ")


def _after_month(day: date) -> date:
    """The first day of the month after that of a day."""
    return (day.replace(day=28) + timedelta(days=4)).replace(day=1)


_FROM = words_in("between from")
_BY = words_in("by until till til before to up")
_UNTIL = Late(r"\b(?:by|until|till|before)\b")
_IN_MONTH = Late(
    rf"\b(?:in|during|for|of) (?P<month>{'|'.join(sorted(MONTHS, key=len, reverse=True))})\b(?! \d)"
)
_DAY = timedelta(days=1)
