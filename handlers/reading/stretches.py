"""Stretches of days to come: "till Monday", "from the 3rd to the 10th", "for two weeks"."""

from datetime import date, timedelta
from typing import NamedTuple

from handlers.reading.days import Day
from handlers.reading.daywords import MONTHS, WEEKDAYS
from handlers.reading.late import Late
from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in

FARTHEST = 14
"""Words behind its lead that a stretch is looked for in."""
LONGEST = timedelta(days=400)

_UNTIL = words_in("until till til before")
_THROUGH = words_in("to through thru -")
_FROM = words_in("from starting")
_BACK = words_in("back return returning returns home")
_BETWEEN = words_in("on by the about around at least sometime again")
_WEEKS = (
    (Late(r"(?:until|till) (?:the )?(?:next week|weekend)"), "until"),
    (Late(r"(?:until|till) (?:the )?end of (?:the|this|next) month"), "month's end"),
    (Late(rf"in (?:{'|'.join(MONTHS)})(?= |$)"), "month"),
    (Late(r"next weekend"), "next weekend"),
    (Late(r"(?:this|the|all|over the|at the|for the) weekend"), "weekend"),
    (Late(r"(?:all )?next week"), "next week"),
    (Late(r"(?:all |the rest of )?(?:this|the) week|all week"), "this week"),
)


class Stretch(NamedTuple):
    """Days from first to last (None: no end was said), told by words up to `end`."""

    first: date
    last: date | None
    end: int

    @property
    def is_backward(self) -> bool:
        """Whether it ends before it begins."""
        return self.last is not None and self.last < self.first


def stretch_in(message: Message, start: int, end: int) -> Stretch | None:
    """The stretch of days to come that words[start:end] tell, the first one."""
    found = told_stretch(message, start, end)
    return None if found is None or found.is_backward else found


def told_stretch(message: Message, start: int, end: int) -> Stretch | None:
    """The same, be it that it ends before it begins: "from Monday till last Friday"."""
    stop = min(_stop(message, start, end), start + FARTHEST)
    whole = _of_weeks(message, start, stop)
    if whole is not None:
        return whole
    days = [day for day in message.days if start <= day.start < stop and not day.loose]
    if not days:
        return _lasting(message, start, stop, message.today)
    return _between(message, days, start, stop)


def _stop(message: Message, start: int, end: int) -> int:
    """Where the stretch's clause ends: a comma goes on only where more days follow."""
    for i in range(start, end):
        after = message.norms[i + 1] if i + 1 < end else ""
        if message.norms[i] == "," and after not in _UNTIL | _BACK | {"from", "for"}:
            return i
    return end


def _of_weeks(message: Message, start: int, stop: int) -> Stretch | None:
    text = " ".join(message.norms[start:stop])
    monday = message.today - timedelta(days=message.today.weekday())
    for pattern, name in _WEEKS:
        match = pattern.search(text)
        if match is None:
            continue
        end = start + len(text[: match.end()].split())
        saturday = monday + timedelta(days=5)
        match name:
            case "until":
                last = saturday if "weekend" in match.group() else monday + timedelta(days=7)
                return Stretch(message.today, last - timedelta(days=1), end)
            case "weekend" | "next weekend":
                first = saturday + timedelta(days=7 if name == "next weekend" else 0)
                return Stretch(max(first, message.today), first + timedelta(days=1), end)
            case "month":
                return _month(message.today, MONTHS[match.group().split()[1]], end)
            case "month's end":
                first = message.today.replace(day=28) + timedelta(days=4)
                last = (first if "next" not in match.group() else _next_month(first)).replace(day=1)
                return Stretch(message.today, last - timedelta(days=1), end)
            case "next week":
                return Stretch(monday + timedelta(days=7), monday + timedelta(days=13), end)
            case _:
                return Stretch(message.today, monday + timedelta(days=6), end)
    return None


def _month(today: date, number: int, end: int) -> Stretch:
    """A month that is not over, from today on if it has begun."""
    first = date(today.year + (number < today.month), number, 1)
    last = _next_month(first).replace(day=1) - timedelta(days=1)
    return Stretch(max(first, today), last, end)


def _next_month(day: date) -> date:
    return day.replace(day=28) + timedelta(days=4)


def _lasting(message: Message, start: int, stop: int, first: date) -> Stretch | None:
    """ "For two weeks", from a day on."""
    for amount in message.amounts:
        if amount.quantity == "days" and start < amount.start < stop:
            days = timedelta(days=max(round(amount.value), 1))
            if message.norms[amount.start - 1] == "for" and days <= LONGEST:
                return Stretch(first, first + days - timedelta(days=1), amount.end)
    return None


def _between(message: Message, days: list[Day], start: int, stop: int) -> Stretch | None:
    first: date | None = None
    last: date | None = None
    begins: Day | None = None
    ends: Day | None = None
    for day in days:
        lead = _lead(message, day, start)
        if lead in _UNTIL or lead in _BACK:
            ends = _as_said(message, day)
            last = ends.future - timedelta(days=1)
        elif lead in _THROUGH or (begins and (lead == "and" or begins.end == day.start)):
            ends = _as_said(message, day)
            last = ends.future
            first = _number_before(message, day) or first
        elif begins is None:
            begins = day
        else:
            break
        stop = day.end
    if begins is not None and _lead(message, begins, start) == "since":
        first = begins.past
    elif begins is not None and ends and last and _is_next(message, begins, ends):
        first = coming(begins.past, begins.future, message.today)
        weeks = 0 if message.norms[begins.start] == "next" else 1
        last = _weekday_in(first, weeks, ends.future) - (ends.future - last)
    elif begins is not None:
        first, last = _ahead(begins, ends, last, message.today)
    first = first or message.today
    lasting = _lasting(message, start, len(message.norms), first) if last is None else None
    if lasting is not None:
        return lasting._replace(end=max(lasting.end, stop))
    if last is None:
        is_open = begins is not None and _lead(message, begins, start) in _FROM
        return Stretch(first, None if is_open else first, stop)
    return Stretch(first, last, stop) if last <= first + LONGEST else None


def _is_next(message: Message, begins: Day, ends: Day) -> bool:
    """ "Thursday to next Friday": the end is a day of the week behind that of the beginning; both
    are of one week where both are said to be next.
    """
    named = {message.norms[begins.end - 1], message.norms[ends.end - 1]} <= WEEKDAYS.keys()
    return named and message.norms[ends.start] == "next"


def _weekday_in(first: date, weeks: int, day: date) -> date:
    """The day's weekday in the week, from Monday on, so many behind that of the first day."""
    return first + timedelta(days=7 * weeks - first.weekday() + day.weekday())


def _as_said(message: Message, day: Day) -> Day:
    """The day; one that is said to be over ("last Friday") is not to come."""
    is_over = message.norms[day.start] in ("last", "past")
    return day._replace(future=day.past) if is_over else day


def coming(past: date, future: date, today: date) -> date:
    """The day that lies ahead; a weekday of today's name is next week's."""
    is_weekday = future - past == timedelta(days=7)
    return today if past == today and not is_weekday else future


def _ahead(
    begins: Day, ends: Day | None, last: date | None, today: date
) -> tuple[date, date | None]:
    """The first and the last day: of weekdays those to come, the end behind the beginning.

    Other dates may have begun already ("20 May to 5 June"), and so may what begins today.
    """
    first = coming(begins.past, begins.future, today)
    if last is None or ends is None:
        return first, last
    is_weekday = ends.future - ends.past == _WEEK
    if first < last or (first == last and not (is_weekday and ends.future == begins.future)):
        return first, last
    is_begun = today - begins.past < begins.future - today
    if first > last and (begins.past == today or not is_weekday):
        return begins.past if is_begun else first, last
    return first, last + max(-((last - first) // _WEEK), 1) * _WEEK


_WEEK = timedelta(days=7)


def _lead(message: Message, day: Day, start: int) -> str:
    """The word that says which end of the stretch a day is."""
    at = day.start - 1
    while at > start and message.norms[at] in _BETWEEN:
        at -= 1
    return message.norms[at] if at >= start else ""


def _number_before(message: Message, day: Day) -> date | None:
    """The first day of "3-10 April" and "from the 3rd to the 10th of April"."""
    at = day.start - 2
    number = message.norms[at] if at >= 0 else ""
    if not number.isdecimal() or not 1 <= int(number) <= 31:
        return None
    try:
        return day.future.replace(day=int(number))
    except ValueError:
        return None
