"""Feasts by which people name a day: those of a date, and those that move from year to year."""

from collections import defaultdict
from collections.abc import Sequence
from datetime import date, timedelta
from functools import cache, lru_cache

from handlers.reading.words.vocabulary import lines_of

_YEARS = range(-4, 5)
"""Round the present one: a leap day is among them."""


@cache
def _reckoned() -> dict[str, list[str]]:
    """How each feast is reckoned, by its name in the words of a message."""
    found: dict[str, list[str]] = defaultdict(list)
    for line in lines_of("feasts.txt"):
        reckoned, _, names = line.partition(":")
        for name in names.split(","):
            for written in {name.strip().replace("'s", " 's"), name.strip().replace("'s", "s")}:
                found[written].append(reckoned)
    return dict(found)


@cache
def first_words() -> frozenset[str]:
    """The words with which the names of feasts begin."""
    return frozenset(name.split()[0] for name in _reckoned())


@lru_cache(256)
def feast_days(name: str, today: date, *, american: bool) -> tuple[date, date] | None:
    """The last and the next such day; None if no feast has that name.

    `american`: some fall on other days where the month is said before the day.
    """
    years = [today.year + k for k in _YEARS]
    ways = _reckoned().get(name, [])
    days = sorted(d for way in ways for y in years if (d := _of_year(way, y, american=american)))
    return last_and_next(days, today)


def last_and_next(days: Sequence[date], today: date) -> tuple[date, date] | None:
    """Of days in their order the last one up to today and the next; None if one of them lacks."""
    past, future = [d for d in days if d <= today], [d for d in days if d > today]
    return (past[-1], future[0]) if past and future else None


def _of_year(reckoned: str, year: int, *, american: bool) -> date | None:
    # Loaded once a feast is named, which few messages do.
    from dateutil.easter import easter
    from dateutil.relativedelta import relativedelta, weekday

    if not date.min.year < year < date.max.year:
        return None
    match reckoned.split():
        case ["easter", days]:
            return easter(year) + timedelta(int(days))
        case [where, month, name, number]:
            day = 31 if int(number) < 0 else 1
            step = relativedelta(day=day, weekday=weekday(_WEEK.index(name))(int(number)))
            there = (where == "american") == american
            return date(year, int(month), 1) + step if there else None
    month, _, of_month = reckoned.partition("-")
    try:
        return date(year, int(month), int(of_month))
    except ValueError:  # 29 February
        return None


_WEEK = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
