"""Weeks and months that are called by name: "the week after next", "the last week of May"."""

import re
from collections.abc import Callable
from datetime import date, timedelta
from typing import NamedTuple

from handlers.reading.calendar.daywords import MONTHS
from handlers.reading.words.late import Late

_WEEK = timedelta(days=7)
_DAY = timedelta(days=1)


class Named(NamedTuple):
    """Days that are called by name in a text, from the word `start` to the word `end`."""

    first: date | None
    """None: only the last one is named ("till the end of the month")."""
    last: date
    start: int
    end: int


def named_in(text: str, today: date) -> Named | None:
    """The week, weekend or month that words joined by spaces name, the plainest first."""
    for pattern, days in _NAMED:
        if match := pattern.search(text):
            first, last = days(match, today)
            start = text[: match.start()].count(" ")
            return Named(first, last, start, start + len(match.group().split()))
    return None


_Days = tuple[date | None, date]


def _monday(day: date, weeks: int = 0) -> date:
    """The first day of its week, or of the one so many later."""
    return day - day.weekday() * _DAY + weeks * _WEEK


def _weeks(first: int, last: int) -> Callable[[re.Match[str], date], _Days]:
    """The weeks so many after the present one; of that, what is still to come."""

    def days(_: re.Match[str], today: date) -> _Days:
        return max(_monday(today, first), today), _monday(today, last + 1) - _DAY

    return days


def _weekend(match: re.Match[str], today: date) -> _Days:
    """The weekend of this week, of the next one, or of that after it; what is to come of it."""
    weeks = 2 if match["of"] else int(match.group().startswith("next"))
    saturday = _monday(today, weeks) + 5 * _DAY
    return max(saturday, today), saturday + _DAY


def _until(match: re.Match[str], today: date) -> _Days:
    """ "Until next week": the day before it begins."""
    begins = {"weekend": _monday(today) + 5 * _DAY, "next": _monday(today, 2)}
    return None, begins.get(match.group().split()[-1], _monday(today, 1)) - _DAY


def _end(match: re.Match[str], today: date) -> _Days:
    """ "Till the end of next week", "… of the month", "… of May"."""
    if match["of"].endswith("week"):
        return None, _monday(today, 2 if "next" in match["of"] else 1) - _DAY
    return None, _of_month(match["of"], today)[1]


def _of_month(said: str, today: date) -> tuple[date, date]:
    """The first and the last day of "June", "this month", "next month"."""
    first = today.replace(day=1)
    if said in MONTHS:
        number = MONTHS[said]
        first = date(today.year + (number < today.month), number, 1)
    elif "next" in said:
        first = _next_month(first)
    return first, _next_month(first) - _DAY


def _next_month(day: date) -> date:
    return (day.replace(day=28) + 4 * _DAY).replace(day=1)


def _in_month(match: re.Match[str], today: date) -> _Days:
    """A month that is not over, from today on if it has begun."""
    first, last = _of_month(match["of"], today)
    return max(first, today), last


def _week_of_month(match: re.Match[str], today: date) -> _Days:
    """The first seven days of a month, the seven after those, its last seven."""
    first, last = _of_month(match["of"], today)
    if match["nth"] == "last":
        return last - 6 * _DAY, last
    first += _NTH.index(match["nth"]) * _WEEK
    return first, first + 6 * _DAY


_NTH = ("first", "second", "third", "fourth")
_MONTH = rf"(?P<of>(?:the|this|next) month|{'|'.join(MONTHS)})(?= |$)"
_TILL = r"(?:until|till|til|to|through)"
_NAMED: tuple[tuple[Late, Callable[[re.Match[str], date], _Days]], ...] = (
    (Late(r"(?:until|till|til) (?:the )?(?:next week|weekend|week after next)(?= |$)"), _until),
    (Late(rf"{_TILL} (?:the )?end of (?P<of>(?:the|this|next) week)(?= |$)"), _end),
    (Late(rf"{_TILL} (?:the )?end of {_MONTH}"), _end),
    (Late(rf"(?:the )?(?P<nth>{'|'.join(_NTH)}|last) week (?:of|in) {_MONTH}"), _week_of_month),
    (
        Late(r"next week and the (?:week after|one after|following week|following one)"),
        _weeks(1, 2),
    ),
    (Late(r"this week and (?:the )?next(?: week)?(?= |$)"), _weeks(0, 1)),
    (Late(r"(?:the )?week after next(?= |$)"), _weeks(2, 2)),
    (Late(rf"in {_MONTH}"), _in_month),
    (
        Late(
            r"(?:(?:the )?weekend(?= after next)|(?:next|this|the|all|over the|at the|"
            r"for the) weekend(?! (?:after|before|following|of)\b))(?P<of> after next)?(?= |$)"
        ),
        _weekend,
    ),
    (Late(r"(?:all )?next week(?= |$)"), _weeks(1, 1)),
    (
        Late(
            r"(?:(?:all |the rest of )?(?:this|the) week|all week)(?= |$)"
            r"(?! (?:of|commencing|beginning|starting|from|after)\b)"
        ),
        _weeks(0, 0),
    ),
)
