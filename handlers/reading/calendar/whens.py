"""When something is to be said: a day or a rule of days, and an hour, and the words for them."""

import re
from collections.abc import Iterator
from datetime import date, time, timedelta
from typing import NamedTuple

from handlers.reading.calendar.days import Day
from handlers.reading.calendar.daywords import MONTHS, WEEKDAYS
from handlers.reading.calendar.hours import PARTS, Hour, hour_at, hour_behind
from handlers.reading.calendar.recurrence import CODES, first_on, monthly
from handlers.reading.calendar.stretches import coming
from handlers.reading.calendar.weeks import named_in
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes

_COUNTS = {
    "other": 2, "second": 2, "2nd": 2, "third": 3, "3rd": 3, "fourth": 4, "4th": 4, "two": 2,
    "three": 3, "four": 4, "five": 5, "six": 6, "2": 2, "3": 3, "4": 4, "5": 5, "6": 6, "8": 8,
    "10": 10, "12": 12,
}  # fmt: skip
_NTH = {"first": 1, "1 st": 1, "second": 2, "2 nd": 2, "third": 3, "3 rd": 3, "fourth": 4,
        "4 th": 4, "last": -1}  # fmt: skip
_DAY = "|".join(sorted(WEEKDAYS, key=len, reverse=True)) + "|sat|sun|mon|wed"
_COUNT = (
    r"(?:(?P<count>other|second|third|fourth|two|three|four|five|six|\d\d?)(?: (?:nd|rd|th))? )?"
)
_OF_MONTH = (
    rf"(?:on )?(?:the |every )?(?P<nth>first|second|third|fourth|last|1 st|2 nd|3 rd|4 th) "
    rf"(?P<day>{_DAY}) (?:of|in) (?:the|each|every|a) month"
)
_OF_EVERY_MONTH = (
    rf"(?:on )?every (?P<nth>first|last|1 st) (?P<day>{_DAY})(?: (?:of|in) (?:the|each|a) month)?"
)
_RULES = (
    ("nth", Late(_OF_MONTH)),
    ("nth", Late(_OF_EVERY_MONTH)),
    ("monthday", Late(
        r"(?:every month |monthly |each month )?on the (?P<number>\d\d?) (?:st|nd|rd|th)"
        r"(?: (?:of|in))? (?:the|each|every|a) month")),
    ("monthday", Late(
        r"(?:on )?the first (?:day )?(?:of|in) (?:every|each|a) month(?P<number>)")),
    ("monthday", Late(
        r"(?:every month|monthly|each month) on the (?P<number>\d\d?)(?: (?:st|nd|rd|th))?")),
    ("month's end", Late(
        r"(?:at |on )?(?:the )?(?:end|last day) of (?:every|each) month")),
    ("weekdays", Late(r"(?:every|each) (?:weekday|working day|week day)")),
    ("weekend", Late(rf"every {_COUNT}weekend")),
    ("days", Late(
        rf"(?:every|each) {_COUNT}(?P<days>(?:{_DAY})(?:(?: and| ,| , and| or)? (?:{_DAY}))*)")),
    ("days", Late(
        rf"(?:every|each) {_COUNT}weeks? on (?:a )?"
        rf"(?P<days>(?:{_DAY})(?:(?: and| ,)? (?:{_DAY}))*)")),
    ("fortnight", Late(
        rf"(?:every fortnight|fortnightly)(?: on (?:a )?(?P<days>{_DAY}))?")),
    ("unit", Late(rf"(?:every|each) {_COUNT}(?P<unit>day|week|month|year)s?")),
    ("unit", Late(
        rf"(?:every|each) {_COUNT}(?P<unit>morning|afternoon|evening|night)|(?P<nightly>nightly)")),
    ("unit", Late(r"(?P<unit>daily|weekly|monthly|yearly)(?: on (?P<days>[a-z]+))?")),
    ("plural", Late(
        r"(?:on|to) (?P<days>(?:mondays|tuesdays|wednesdays|thursdays|fridays|saturdays|sundays)"
        r"(?: and (?:mondays|tuesdays|wednesdays|thursdays|fridays|saturdays|sundays))*)")),
)  # fmt: skip
_MONTHS_END = Late(
    r"(?<!\S)(?:at |on )?(?:the )?(?:end|last day) of (?:(?:(?:the|this)|(?P<next>next)) month|"
    rf"(?P<name>{'|'.join(MONTHS)}))(?!\S)"
)
_UNITS = {"day": "DAILY", "week": "WEEKLY", "month": "MONTHLY", "year": "YEARLY",
          "yearly": "YEARLY", "monthly": "MONTHLY", "weekly": "WEEKLY",
          "daily": "DAILY"}  # fmt: skip
_SHORT_DAYS = {"sat": 5, "sun": 6, "mon": 0, "wed": 2}
_ENDS = ("until", "till")
_BEGINS = ("from", "starting", "beginning", "start")
_LEADS = frozenset({"on", "at", "by", "for", "from", "until", "till", "starting", "beginning",
                    "start", "this", "coming", ","})  # fmt: skip


class When(NamedTuple):
    """A first day, how it recurs, until when, at which hour; and the words that say so."""

    first: date | None
    rule: str | None
    until: date | None
    hour: time | None
    said: frozenset[int]
    guessed: bool = False
    """The half of the day that the hour is in was not said."""


class _Rule(NamedTuple):
    start: int
    end: int
    rule: str


def when_in(message: Message, start: int, end: int) -> When | None:
    """When words[start:end] say that something is to be; None if they do not."""
    rule = next(_rules(message, start, end), None)
    taken = set(range(rule.start, rule.end)) if rule else set()
    days = [
        day for day in message.days
        if start <= day.start < end and taken.isdisjoint(range(day.start, day.end))
    ]  # fmt: skip
    days += [] if rule else _months_end(message, start, end)
    days += [] if rule or days else _weekend(message, start, end)
    hours = _hours(message, start, end, days)
    hour = next((one for one in hours if not one.vague), hours[0] if hours else None)
    ends = next((d for d in days if _before(message, d) in _ENDS), None) if rule else None
    begins = _days_before(message, _begins(message, [d for d in days if d is not ends], rule))
    if rule is None and begins is None:
        return None
    today = message.today
    base = coming(begins.past, begins.future, today) if begins else None
    first = base
    if rule is not None:
        first = first_on(rule.rule, base or today)
    part = _part_each_day(message.norms[rule.start : rule.end]) if rule else ""
    in_part = _part_of(message, begins)
    for span in (begins, ends, *hours):
        if span is not None:
            taken |= set(range(span.start, span.end))
    return When(
        first=first,
        rule=rule.rule if rule else None,
        until=ends.future if ends else None,
        hour=_in_part(hour.at if hour else None, part)
        or (begins.at if begins else None)
        or in_part,
        said=frozenset(_with_leads(message, taken, start, end)),
        guessed=hour is not None and hour.guessed and not (part or in_part),
    )


def _months_end(message: Message, start: int, end: int) -> list[Day]:
    """ "At the end of the month", "at the end of next month", "at the end of October"."""
    text = " ".join(message.norms[start:end])
    match = _MONTHS_END.search(text)
    if match is None:
        return []
    today = message.today
    if match["name"]:
        later = MONTHS[match["name"]] + 12 * (MONTHS[match["name"]] < today.month)
    else:
        later = today.month if match["next"] is None else today.month + 1
    year, month = today.year + later // 12, later % 12 + 1
    last = date(year, month, 1) - timedelta(days=1)
    first = start + len(text[: match.start()].split())
    return [Day(first, first + len(match.group().split()), last, last)]


def _weekend(message: Message, start: int, end: int) -> list[Day]:
    """A weekend that is called by name begins on its first day: "the weekend after next"."""
    text = " ".join(message.norms[start:end])
    named = named_in(text, message.today) if "weekend" in text else None
    if named is None or named.first is None:
        return []
    return [Day(start + named.start, start + named.end, named.first, named.first)]


def _days_before(message: Message, day: Day | None) -> Day | None:
    """ "Two days before Easter", "the evening before Good Friday"."""
    if day is None or day.start < _AT_LEAST or message.norms[day.start - 1] != "before":
        return day
    unit, count = message.norms[day.start - 2], message.norms[day.start - 3]
    often = _COUNTS.get(count, 1 if count in ("the", "a", "one", "1") else 0)
    days = often * (7 if unit in ("week", "weeks") else 1)
    if not days or not (unit in PARTS or unit in ("day", "days", "week", "weeks")):
        return day
    on = coming(day.past, day.future, message.today) - timedelta(days=days)
    return day._replace(start=day.start - 3, past=on, future=on, at=PARTS.get(unit))


_AT_LEAST = 3
"""Words of "two days before"."""


def hour_today(message: Message, start: int, end: int) -> When | None:
    """The hour that words[start:end] say with no day: it is today's."""
    hour = next(iter(_hours(message, start, end, [])), None)
    if hour is None or any(start <= day.start < end for day in message.days):
        return None
    said = frozenset(range(hour.start, hour.end))
    return When(message.today, None, None, hour.at, said, guessed=hour.guessed)


def _begins(message: Message, days: list[Day], rule: _Rule | None) -> Day | None:
    """The day that is meant: with a rule only one that it starts from; else the first one said."""
    if rule is not None:
        return next((d for d in days if _before(message, d) in _BEGINS), None)
    return days[0] if days else None


def _before(message: Message, day: Day) -> str:
    at = day.start - 1
    if message.norms[at] in ("the", "on") and at:
        at -= 1
    return message.norms[at] if at >= 0 else ""


def _with_leads(message: Message, taken: set[int], start: int, end: int) -> Iterator[int]:
    """The words that say when, with the "on", "at" and "until" before them, and the full stop of
    "9.3."."""
    for i in taken:
        yield i
        if i + 1 < end and message.norms[i + 1] == ".":
            yield i + 1
        at = i - 1
        while at >= start and at not in taken and message.norms[at] in _LEADS:
            yield at
            at -= 1


def _hours(message: Message, start: int, end: int, days: list[Day]) -> list[Hour]:
    """The hours that are said, in order: a part of the day, and one by the clock, which right
    behind a day needs no "at"."""
    found: list[Hour] = []
    inside = indexes(days)
    ends = {day.end for day in days}
    for i in range(start, end):
        if i in inside and message.norms[i] != "tonight":
            continue
        hour = hour_at(message.words, message.norms, i)
        if hour is None and i - (message.norms[i - 1] == ",") in ends:
            hour = hour_behind(message.words, message.norms, i)
        if hour and hour.end <= end and all(hour.start >= one.end for one in found):
            found.append(hour)
    return found[:2]


def _part_of(message: Message, day: Day | None) -> time | None:
    """The hour of "on Friday evening"."""
    return PARTS.get(message.norms[day.end - 1]) if day else None


def _part_each_day(norms: list[str]) -> str:
    """The part of the day in "every evening", "nightly"."""
    last = norms[-1].replace("nightly", "night")
    return last if last in PARTS else ""


def _in_part(hour: time | None, part: str) -> time | None:
    """An hour in the part of the day that comes again: "at 9 every evening"."""
    if hour is None or not part:
        return hour or PARTS.get(part)
    if part in ("afternoon", "evening", "night") and _SIX <= hour.hour < _NOON:
        return hour.replace(hour=hour.hour + _NOON)
    if part == "night" and _NOON < hour.hour < _NOON + _SIX:
        return hour.replace(hour=hour.hour - _NOON)  # a bare hour was taken for the afternoon's
    return hour


_SIX, _NOON = 6, 12


def _rules(message: Message, start: int, end: int) -> Iterator[_Rule]:
    norms = message.norms[start:end]
    text = " ".join(norms)
    for kind, pattern in _RULES:
        for match in pattern.finditer(text):
            if match.start() and text[match.start() - 1] != " ":
                continue
            if match.end() < len(text) and text[match.end()] != " ":
                continue
            rule = _rule(kind, match, message.today)
            if rule is not None:
                at = start + len(text[: match.start()].split())
                yield _Rule(at, at + len(match.group().split()), rule)


def _rule(kind: str, match: re.Match[str], today: date) -> str | None:
    said = match.groupdict()
    count = _count(said.get("count"))
    if count is None:
        return None
    every = f";INTERVAL={count}" if count > 1 else ""
    match kind:
        case "nth":
            return f"FREQ=MONTHLY;BYDAY={_NTH[said['nth']]}{_code(said['day'])}"
        case "monthday":
            number = int(said["number"] or 1)
            return monthly(number) if 1 <= number <= 31 else None
        case "month's end":
            return monthly(31)
        case "weekdays":
            return f"FREQ=WEEKLY;BYDAY={','.join(CODES[:5])}"
        case "weekend":
            return f"FREQ=WEEKLY{every};BYDAY=SA"
        case "days" | "plural":
            return f"FREQ=WEEKLY{every};BYDAY={_codes(said['days'])}"
        case "fortnight":
            on = _code(said["days"]) if said["days"] else _tomorrow(today)
            return f"FREQ=WEEKLY;INTERVAL=2;BYDAY={on}"
        case _:
            freq = _UNITS.get(said["unit"] or "", "DAILY")
            if said.get("days"):
                return f"FREQ={freq};BYDAY={_codes(said['days'])}" if _codes(said["days"]) else None
            return f"FREQ={freq}{every}"


def _count(said: str | None) -> int | None:
    if said is None:
        return 1
    count = _COUNTS.get(said) or (int(said) if said.isdecimal() else 0)
    return count if 1 <= count <= 52 else None


def _tomorrow(today: date) -> str:
    return CODES[(today.weekday() + 1) % 7]


def _code(day: str) -> str:
    return CODES[WEEKDAYS.get(day, _SHORT_DAYS.get(day, 0))]


def _codes(days: str) -> str:
    found = [day for day in re.split(r"[ ,]+", days) if day in WEEKDAYS or day in _SHORT_DAYS]
    return ",".join(sorted({_code(day) for day in found}, key=CODES.index))
