"""Days that come again: RRULEs of RFC 5545, reckoned by dateutil, and how they are said."""

import re
from datetime import date, datetime, time, timedelta

from dateutil.rrule import rrulestr

CODES = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")
NAMES = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
ORDINALS = {1: "first", 2: "second", 3: "third", 4: "fourth", 5: "fifth", -1: "last"}
UNITS = {"DAILY": "day", "WEEKLY": "week", "MONTHLY": "month", "YEARLY": "year"}

FARTHEST = timedelta(days=366 * 5)
"""A rule that names no day for so long is none."""


def occurrences(rule: str | None, first: date, start: date, end: date) -> list[date]:
    """The days of a rule that begins on `first`, from `start` to `end`; no rule: `first` alone."""
    if rule is None:
        return [first] if start <= first <= end else []
    days = rrulestr(rule, dtstart=_midnight(first))
    return [day.date() for day in days.between(_midnight(start), _midnight(end), inc=True)]


def first_on(rule: str, start: date) -> date | None:
    """The first day of a rule from `start` on, whichever week or month an interval begins with."""
    every = re.sub(r"INTERVAL=\d+;?", "", rule).rstrip(";")
    return next(iter(occurrences(every, start, start, start + FARTHEST)), None)


def first_after(rule: str, first: date, day: date) -> date | None:
    """The first day from `day` on of a rule that begins on `first`."""
    found = rrulestr(rule, dtstart=_midnight(first)).after(_midnight(day), inc=True)
    return found.date() if found else None


def monthly(day: int) -> str:
    """The rule of a day of the month; in a month that has no such day, its last."""
    if day <= 28:
        return f"FREQ=MONTHLY;BYMONTHDAY={day}"
    days = ",".join(str(n) for n in range(28, day + 1))
    return f"FREQ=MONTHLY;BYMONTHDAY={days};BYSETPOS=-1"


def spoken(rule: str, first: date) -> str:
    """A rule in words: "every second Sunday", "on the last Friday of each month"."""
    parts = dict(part.split("=", 1) for part in rule.split(";"))
    freq, count = parts["FREQ"], int(parts.get("INTERVAL", "1"))
    named = [code for code in parts.get("BYDAY", "").split(",") if code]
    if freq == "MONTHLY":
        return f"on the {_of_month(parts, named, first)} of {_each(count, 'month')}"
    if freq == "YEARLY":
        return f"on {first.day} {first:%B} {_every(count, 'year')}"
    if not named:
        return _every(count, UNITS[freq])
    if named == list(CODES[:5]):
        return _every(count, "weekday")
    days = [NAMES[CODES.index(code)] for code in named]
    return _every(count, " and ".join(days))


def _of_month(parts: dict[str, str], named: list[str], first: date) -> str:
    if named:
        nth, code = named[0][:-2], named[0][-2:]
        return f"{ORDINALS[int(nth)]} {NAMES[CODES.index(code)]}"
    day = int(parts["BYMONTHDAY"].split(",")[-1]) if "BYMONTHDAY" in parts else first.day
    suffix = "th" if day % 100 in (11, 12, 13) else {1: "st", 2: "nd", 3: "rd"}.get(day % 10, "th")
    return f"{day}{suffix}"


def _each(count: int, unit: str) -> str:
    return f"each {unit}" if count == 1 else f"every {_nth(count)} {unit}"


def _every(count: int, unit: str) -> str:
    return f"every {unit}" if count == 1 else f"every {_nth(count)} {unit}"


def _nth(count: int) -> str:
    return ORDINALS.get(count, f"{count}th")


def _midnight(day: date) -> datetime:
    # dateutil reckons with moments; a day of the group's is one without a zone.
    return datetime.combine(day, time())
