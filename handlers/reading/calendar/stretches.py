"""Stretches of days to come: "till Monday", "from the 3rd to the 10th", "for two weeks"."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from typing import NamedTuple

from handlers.reading.calendar.days import Day
from handlers.reading.calendar.daywords import MONTHS, WEEKDAYS
from handlers.reading.calendar.weeks import named_in
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

FARTHEST = 14
"""Words behind its lead that a stretch is looked for in."""
LONGEST = timedelta(days=400)

_UNTIL = words_in("until till til before")
_THROUGH = words_in("to through thru -")
_FROM = words_in("from starting")
_BACK = words_in("back return returning returns home")
_BETWEEN = words_in("on by the about around at least sometime again")


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
    whole = _named(message, start, stop)
    if whole is not None:
        return whole
    days = [day for day in message.days if start <= day.start < stop and not day.loose]
    if not days:
        return _lasting(message, start, stop, message.today)
    return _week_of(message, days[0]) or _between(message, days, start, stop)


def further(message: Message, before: Stretch, end: int) -> Iterator[Stretch]:
    """The stretches that follow on one: "… and 12 to 14 June", "this weekend and next"."""
    at = before.end
    while at < end and message.norms[at] in (",", "and"):
        is_listed = message.norms[at] == "," and message.norms[at + 1 : at + 2] != ["and"]
        at += 1 if is_listed or message.norms[at] == "and" else 2
        found = None if is_listed else _next_to(message, before, at, end)
        if found is None:
            found = told_stretch(message, at, end)
            if found is None or not begins_at(message, at, found):
                return
        if is_listed and found.last in (None, found.first):
            return  # "…, Saturday is the burial"
        yield found
        at, before = found.end, found


_NEXT_TO = Late(
    r"(?:(?:the )?(?:next|following)(?: (?P<count>two|three|four|five|six))?"
    r"(?: (?P<unit>days?|weekend|week|one))?|the (?P<of>day|weekend|week|one) after(?: that)?)"
    r"(?= (?:[,.;:!()-]|and|but|so|too|as well|sorry|please|folks|all)(?: |$)|$)"
)
_COUNTED = {"two": 2, "three": 3, "four": 4, "five": 5, "six": 6}


def _next_to(message: Message, before: Stretch, at: int, end: int) -> Stretch | None:
    """What is told by the days before it alone: "and the day after", "and the next weekend"."""
    match = _NEXT_TO.match(" ".join(message.norms[at : min(end, at + FARTHEST)]))
    if match is None or before.last is None:
        return None
    unit = (match["unit"] or match["of"] or "one").removesuffix("s")
    last_word = message.norms[before.end - 1]
    if unit == "one":
        unit = "weekday" if last_word in WEEKDAYS else last_word
    count, monday = _COUNTED.get(match["count"], 1), before.last.weekday() * _DAY
    stop = at + len(match.group().split())
    match unit:
        case "day":
            return Stretch(before.last + _DAY, before.last + count * _DAY, stop)
        case "weekday":
            return Stretch(before.last + _WEEK, before.last + _WEEK, stop)
        case "week" | "weekend":
            first = before.last - monday + _WEEK
            sunday = first + 6 * _DAY
            return Stretch(sunday - _DAY if unit == "weekend" else first, sunday, stop)
    return None


def begins_at(message: Message, at: int, stretch: Stretch) -> bool:
    """Whether a stretch is told from that word on, with nothing before its days."""
    days = [day.start for day in message.days if at <= day.start < stretch.end]
    if not days:
        named = named_in(" ".join(message.norms[at : stretch.end]), message.today)
        return named is not None and named.start == 0
    leads = message.norms[at : min(days)]
    return all(norm in _LEADS or norm.isdecimal() for norm in leads)


_LEADS = words_in("from on between the to - and again also then all of for in until till")


def _stop(message: Message, start: int, end: int) -> int:
    """Where the stretch's clause ends: a comma goes on only where more days follow."""
    for i in range(start, end):
        after = message.norms[i + 1] if i + 1 < end else ""
        if message.norms[i] == "," and after not in _UNTIL | _BACK | {"from", "for"}:
            return i
    return end


def _named(message: Message, start: int, stop: int) -> Stretch | None:
    """A week or month that is called by name; where only its end is, from the day before it on."""
    found = named_in(" ".join(message.norms[start:stop]), message.today)
    if found is None:
        return None
    first = found.first
    if first is None:
        begins = told_stretch(message, start, start + found.start) if found.start else None
        first = begins.first if begins else message.today
    return Stretch(first, found.last, start + found.end)


def _week_of(message: Message, day: Day) -> Stretch | None:
    """ "The week of 18 May", "the week beginning Monday"."""
    if message.norms[day.start - 1] not in _WEEK_OF or message.norms[day.start - 2] != "week":
        return None
    monday = day.future - timedelta(days=day.future.weekday())
    return Stretch(monday, monday + timedelta(days=6), day.end)


_WEEK_OF = words_in("of commencing beginning starting")


def _lasting(message: Message, start: int, stop: int, first: date) -> Stretch | None:
    """ "For two weeks", from a day on."""
    for amount in message.amounts:
        if amount.quantity == "days" and start < amount.start < stop:
            days = timedelta(days=max(round(amount.value), 1))
            if message.norms[amount.start - 1] == "for" and days <= LONGEST:
                return Stretch(first, first + days - timedelta(days=1), amount.end)
    return None


@dataclass(slots=True)
class _Bounds:
    """What the days of a stretch are in it: where it begins and ends."""

    message: Message
    start: int
    stop: int
    first: date | None = None
    last: date | None = None
    begins: Day | None = None
    ends: Day | None = None

    def takes(self, day: Day) -> bool:
        """Whether a day belongs to the stretch, and is now its beginning or its end."""
        lead, number = _lead(self.message, day, self.start), _number_before(self.message, day)
        if lead in _UNTIL or lead in _BACK:
            self.ends = _as_said(self.message, day)
            self.last = self.ends.future - _DAY
        elif self.ends is not None and (number or lead in _THROUGH or lead == "and"):
            return False
        elif self._is_end(day, lead, number):
            self.ends = _as_said(self.message, day)
            self.last, self.first = self.ends.future, number or self.first
        elif self.begins is None:
            self.begins = day
        else:
            return False
        self.stop = day.end
        return True

    def _is_end(self, day: Day, lead: str, number: date | None) -> bool:
        """Whether a day ends what another begins: "between the 3rd and the 5th", "1 and 2 June"."""
        if lead in _THROUGH:
            return True
        if self.begins is None:
            is_between = self.message.norms[day.start - 3] == "between"
            return bool(number) and lead == "and" and (is_between or day.future - _DAY == number)
        if lead != "and":
            return self.begins.end == day.start
        apart = (day.future - self.begins.future).days
        is_next = apart == 1 or (abs(apart) < 7 and apart % 7 == 1)
        return is_next or _lead(self.message, self.begins, self.start) == "between"


def _between(message: Message, days: list[Day], start: int, stop: int) -> Stretch | None:
    number = _number_before(message, days[0])
    bounds = _Bounds(message, start, stop)
    for day in days:
        if not bounds.takes(day):
            break
    first, last, begins, ends = bounds.first, bounds.last, bounds.begins, bounds.ends
    stop = bounds.stop
    is_listed = begins is not None and begins == days[0] and begins.start - 2 >= start
    if number and begins and is_listed and message.norms[begins.start - 1] == "and":
        return Stretch(number, number, begins.start - 1)  # "on 1 and 5 June": two apart
    if begins and ends and (in_month := _day_of_month(message, begins, ends)):
        first, begins = in_month, None
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


def _day_of_month(message: Message, begins: Day, ends: Day) -> date | None:
    """Of "the 1st to the 3rd of July" the first day: one without a month is of that of the end."""
    said = message.norms[begins.start : begins.end]
    numbers = [int(norm) for norm in said if norm.isdecimal()]
    months = MONTHS.keys()
    if len(numbers) != 1 or not months.isdisjoint(said):
        return None
    if months.isdisjoint(message.norms[ends.start : ends.end]):
        return None
    month = ends.future
    if numbers[0] > month.day:
        month = month.replace(day=1) - _DAY
    try:
        return month.replace(day=numbers[0])
    except ValueError:
        return None


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
_DAY = timedelta(days=1)


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
