"""Calendar dates: "the 3rd", "15/8", "June 3", "the twentieth of last month".

dateparser sees only a stretch that is a calendar date, with the base day given.
"""

import calendar
import re
from collections.abc import Sequence
from datetime import date, datetime, time, timedelta
from functools import cached_property, lru_cache
from typing import NamedTuple

from handlers.reading.calendar.daystarts import leads_ledger, line_heads, says_only
from handlers.reading.calendar.daywords import (
    AMOUNT_BEHIND,
    BEHIND_A_DAY,
    ENDS,
    MONTHS,
    ORDINALS,
    SHORT,
    WEEKDAYS,
)
from handlers.reading.calendar.feasts import last_and_next
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word


class Day(NamedTuple):
    """A day named by words[start:end]."""

    start: int
    end: int
    past: date
    """The latest such day up to today."""
    future: date
    """The next such day after today."""
    aside: bool = False
    """It dates something else: "since Monday", "leftovers from Sunday", "yesterday's soup"."""
    loose: bool = False
    """A part of today that may lie ahead or behind ("tonight", "this evening")."""
    at: time | None = None
    """The hour by the group's clock, where it is said by how long it is till then."""


NUMERIC = Late(r"(\d{1,2})([/.])(\d{1,2})(?:\2(\d{2}|\d{4}))?")
ISO = Late(r"\d{4}-\d\d?-\d\d?")


class Dates:
    """Reads the calendar dates in the words of a message that was sent at `at`."""

    def __init__(
        self, words: Sequence[Word], norms: Sequence[str], at: datetime, month_first: bool
    ) -> None:
        self.words = words
        self.norms = norms
        self.at = at
        self.today = at.date()
        self.month_first = month_first

    def ordinal(self, i: int) -> Day | None:
        """ "The 3rd", "on the fourth", "3rd of June", "the 10th", "on 15"."""
        at = i + 1 if self.norms[i] in ("the", "on") else i
        if self.norms[i] == "on" and self.norms[at : at + 1] == ["the"]:
            at += 1
        if at >= len(self.words):
            return None
        if self.words[at].kind == "number":
            return self.numbered(i, at)
        value_word = ORDINALS.get(self.norms[at])
        if value_word is None or self.norms[at - 1] != "the" or self.counts_things(at + 1):
            return None
        dated = self.norms[i] == "on" and self.is_over(at + 1)  # "closed on the first by Priya"
        if self.norms[at] in ("first", "second", "third") and not (
            dated or self.ends_there(at + 1)
        ):
            return None
        return self.of_month(i, at + 1, value_word)

    def numbered(self, i: int, at: int) -> Day | None:
        """The day of the number at word `at`: "the 10th", or a bare "the 22" that ends there."""
        value = self.norms[at]
        if not value.isdecimal() or len(value) > 2:
            return None
        after = self.norms[at + 1] if at + 1 < len(self.norms) else ""
        if after in ENDS:
            if self.counts_things(at + 2) or (i == at and self.describes(at + 2)):
                return None
            return self.of_month(i, at + 2, int(value))
        before = self.norms[i - 1] if i else ""
        of_deed = self.norms[i] == "on" and before in _DEEDS  # "sealed on 5", but "broke on 3"
        dated = of_deed or before in _DATED or int(value) > _FEW
        if i < at and dated and (after in _BEHIND_A_DATE or not after[:1].isalnum()):
            return None if after in ("%", "°") else self.of_month(i, at + 1, int(value))
        return None

    def describes(self, i: int) -> bool:
        """Whether the word behind "4th", said without "the", is what it describes."""
        after = self.norms[i] if i < len(self.norms) else ""
        free = not after[:1].isalpha() or after in MONTHS or after in BEHIND_A_DAY
        return not free and after not in ("of", "drained", "sealed", "buried", "was", "it", "on")

    def counts_things(self, i: int) -> bool:
        """Whether an ordinal counts the thing behind it ("6th layer", "the 3rd floor")."""
        word = self.norms[i] if i < len(self.norms) else ""
        many = word.endswith("s") and not word.endswith("ss")  # "the 12th unless it rains"
        people = len(word) > 4 and many and word.isalpha() and word not in MONTHS
        return (people and word not in _NO_PEOPLE) or word in _COUNTED

    def ends_there(self, i: int) -> bool:
        """Whether "the second" stands alone, as a day does, and is not "the second bucket"."""
        if self.norms[i : i + 1] not in (["of"], ["o"]) or i + 1 >= len(self.norms):
            return False
        of_month = (
            self.norms[i + 1] in ("the", "this", "next") and "month" in self.norms[i + 2 : i + 3]
        )
        return of_month or self.norms[i + 1] in MONTHS

    def is_over(self, i: int) -> bool:
        """Whether word i goes on with something else than what an ordinal counts."""
        after = self.norms[i] if i < len(self.norms) else ""
        return not after[:1].isalpha() or after in ("by", "and", "i", "we", "but", "with")

    def ordinal_of_month(self, i: int) -> Day | None:
        """ "Third of June"."""
        if (
            self.norms[i + 1 : i + 2] == ["of"]
            and i + 2 < len(self.norms)
            and (self.norms[i + 2] in MONTHS)
        ):
            return self.of_month(i, i + 1, ORDINALS[self.norms[i]])
        return None

    def of_month(self, start: int, end: int, number: int) -> Day | None:
        """The day of that number, in the month said behind it or the nearest one."""
        at = end + 1 if self.norms[end : end + 1] in (["of"], ["o"]) else end
        if self.norms[at : at + 2] == ["last", "month"] or self.norms[at : at + 1] == ["ult"]:
            before = self.today.replace(day=1) - timedelta(1)
            day = _date(before.year, before.month, number)
            last = at + (1 if self.norms[at] == "ult" else 2)
            return None if day is None else Day(start, last, day, day)
        if at < len(self.norms) and self.norms[at] in MONTHS:
            return self.calendar_date(start, at + 1, number, MONTHS[self.norms[at]])
        return self.monthly(start, end, number)

    def dated(self, i: int) -> Day | None:
        """ "15/8", "9/5", "1.6.", "3 June", "2026-03-05"."""
        norm = self.norms[i]
        if "-" in norm and ISO.fullmatch(norm):
            return self.parsed(i, i + 1, norm)
        numeric = NUMERIC.fullmatch(norm)
        if numeric is not None:
            return self.numeric(i, numeric)
        if norm.isdecimal() and i + 1 < len(self.norms):
            at = i + 2 if self.norms[i + 1] == "of" else i + 1
            month = MONTHS.get(self.norms[at]) if at < len(self.norms) else None
            if month is not None and self.is_month(at):
                return self.calendar_date(i, at + 1, int(norm), month)
        return None

    def is_month(self, at: int) -> bool:
        """ "may" and "march" behind a number are months unless a verb follows them."""
        if self.norms[at] not in ("may", "march", "mar"):
            return True
        after = self.norms[at + 1] if at + 1 < len(self.norms) else ""
        return after not in ("be", "have", "need", "not", "also", "well", "past", "on")

    def numeric(self, i: int, match: re.Match[str]) -> Day | None:
        """ "15/8", "1.6.": two numbers that are a date where they stand."""
        first, sign, second, year = match.groups()
        before = self.norms[i - 1] if i else ""
        full_stop = self.norms[i + 1 : i + 2] == ["."] and sign == "."
        if (
            sign == "."
            and year is None
            and not (full_stop and before in ("on", "am", "the", "since"))
            and not (full_stop and len(second) > 1 and before in _LINE_STARTS)
            and not (before in ("on", "am") and self.is_plain_date(i, int(first), int(second)))
        ):
            return None
        if (
            sign == "/"
            and year is None
            and not self.is_slash_date(i, before, int(first), int(second))
        ):
            return None
        if year is None:
            return self.of_two_numbers(i, int(first), int(second))
        return self.parsed(i, i + 1, match.group())

    def of_two_numbers(self, i: int, first: int, second: int) -> Day | None:
        """The date of two numbers, in the group's order; the other way round if only that fits."""
        month, number = (first, second) if self.month_first else (second, first)
        if month > MONTHS_A_YEAR:
            month, number = number, month
        return self.yearly(i, i + 1, month, number) if 1 <= month <= MONTHS_A_YEAR else None

    def is_plain_date(self, i: int, first: int, second: int) -> bool:
        """ "On 1.6" is a date where no unit follows."""
        after = self.norms[i + 1] if i + 1 < len(self.norms) else ""
        return 1 <= first <= 31 and 1 <= second <= 12 and after not in AMOUNT_BEHIND

    def is_slash_date(self, i: int, before: str, first: int, second: int) -> bool:
        """ "9/5" is a date behind "on" and the like, and "1/2 cup" never."""
        if before in ("on", "since", "from", "dated", "by", "until", "the", "("):
            return True
        if before in ("to", "till", "-") and i > 1 and NUMERIC.fullmatch(self.norms[i - 2]):
            measured = not AMOUNT_BEHIND.isdisjoint(self.norms[i + 1 : i + 2])
            return not measured and self.norms[i - 3 : i - 2] == ["from"]
        after = self.norms[i + 1] if i + 1 < len(self.norms) else "\n"
        alone = after in (":", ",", ".", "\n", "-", ";", ")") or i + 1 == len(self.norms)
        done = _tells_deed(self.norms[i - 2] if before in _THINGS and i > 1 else before)
        if alone and i and says_only(self.norms, i):
            return max(first, second) <= _DAYS  # "and 5/16"
        if alone and (max(first, second) > MONTHS_A_YEAR or done):
            return max(first, second) <= _DAYS and (second not in _PARTED or first > second)
        if i in self.heads or self.is_of_weekday(before, i, first, second):
            return True
        leads = i == 0 or before in (".", "!", "\n", ",")
        if leads and MONTHS_A_YEAR < max(first, second) <= _DAYS and second not in _PARTED:
            return True  # "11/21 gate 4 lb"
        measured = self.norms[i + 2 : i + 3] != [] and self.norms[i + 2] in AMOUNT_BEHIND
        told = alone or measured or self.leads_report(i + 1)
        written = self.norms[i].startswith("0") or "/0" in self.norms[i]
        if leads and written and max(first, second) <= _DAYS:
            return True  # "10/06 gate 1.5 kg"
        if leads and leads_ledger(self.norms, i + 1):
            day = self.of_two_numbers(i, first, second)  # "2/3 gate 4 kg" may be a share
            return day is not None and (second > 4 or self.today - day.past <= _LATELY)
        return (told and leads and (second > 4 or first > second)) or (
            alone and first > second and second > 4
        )

    def is_of_weekday(self, before: str, i: int, first: int, second: int) -> bool:
        """ "Mon 2/3": a date that falls on the day said before it."""
        weekday = WEEKDAYS.get(before, SHORT.get(before))
        if weekday is None or not AMOUNT_BEHIND.isdisjoint(self.norms[i + 1 : i + 2]):
            return False
        day = self.of_two_numbers(i, first, second)
        return day is not None and weekday in (day.past.weekday(), day.future.weekday())

    @cached_property
    def heads(self) -> frozenset[int]:
        """Where a date leads a line, among others that do."""
        return line_heads(self.norms)

    def leads_report(self, i: int) -> bool:
        """Whether word i begins what was done: "i", a verb, or a name ("3/5 Mei drained it")."""
        if self.norms[i] in ("i", "we", "put") or self.norms[i].endswith("ed"):
            return True
        after = self.norms[i + 1] if i + 1 < len(self.norms) else ""
        return self.words[i].text[:1].isupper() or after == "put" or after.endswith("ed")

    def month_first_date(self, i: int) -> Day | None:
        """ "June 3", "March 3rd", "Sept. 5"."""
        at = i + 2 if self.norms[i + 1 : i + 2] == ["."] else i + 1
        if at >= len(self.words):
            return None
        if self.norms[at] == "the":
            at += 1
        if at >= len(self.words) or not self.norms[at].isdecimal():
            return None
        number = int(self.norms[at])
        end = at + 2 if self.norms[at + 1 : at + 2] and self.norms[at + 1] in ENDS else at + 1
        if end == at + 1 and self.norms[end : end + 1] and self.norms[end] in AMOUNT_BEHIND:
            return None
        return self.calendar_date(i, end, number, MONTHS[self.norms[i]])

    def calendar_date(self, start: int, end: int, number: int, month: int) -> Day | None:
        """A day of a month, in the year said behind it or the nearest one."""
        year = self.norms[end] if end < len(self.norms) else ""
        if year.isdecimal() and len(year) == 4:
            return self.parsed(start, end + 1, f"{number} {calendar.month_name[month]} {year}")
        return self.yearly(start, end, month, number)

    def yearly(self, start: int, end: int, month: int, number: int) -> Day | None:
        """The last and the next such day of the year."""
        years = [_date(self.today.year + k, month, number) for k in range(-4, 5)]
        return self.around(start, end, years)

    def monthly(self, start: int, end: int, number: int) -> Day | None:
        """The last and the next day of that number."""
        months = self.today.year * 12 + self.today.month - 1
        near = [_date((months + k) // 12, (months + k) % 12 + 1, number) for k in range(-4, 5)]
        return self.around(start, end, near)

    def around(self, start: int, end: int, days: Sequence[date | None]) -> Day | None:
        """The last and the next of such days, of which some may not be in the calendar."""
        found = last_and_next([day for day in days if day is not None], self.today)
        return None if found is None else Day(start, end, *found)

    def parsed(self, start: int, end: int, text: str) -> Day | None:
        """What dateparser makes of a stretch that is a date."""
        past = _calendar_date(text, self.today, self.month_first, "past")
        future = _calendar_date(text, self.today, self.month_first, "future")
        return None if past is None or future is None else Day(start, end, past, future)


_NO_PEOPLE = words_in(
    "onwards perhaps always please thanks cheers works suits looks sounds seems towards besides "
    "afterwards forwards sometimes yours comes"
)
"""Words behind a date that end as the names of many do."""
_LINE_STARTS = frozenset({"", "\n"})
MONTHS_A_YEAR, _DAYS, _LATELY = 12, 31, timedelta(days=14)
_FEW = 9
"""Up to here "the 4" may be four things, unless "on" or "since" stands before it."""
_PARTED = frozenset({2, 3, 4, 8, 16})
"""What people divide by: "3/4", "15/16"."""
_DATED = frozenset({"on", "since", "from", "until", "by"})
_DEEDS = words_in("sealed closed shut opened started buried drained done added filled due")
_BEHIND_A_DATE = words_in("i we he she they and at")
_COUNTED = words_in(
    "layer floor bin bucket batch time one week grade birthday anniversary street ave avenue form "
    "year tub caddy load lot round go try person household keeper storey jar bag trench row bed "
    "month century layers party meeting edition"
)
_THINGS = words_in("it her him them this that")


def _tells_deed(word: str) -> bool:
    return word.endswith("ed") or word in ("done", "in", "off", "shut", "dug")


def _date(year: int, month: int, number: int) -> date | None:
    try:
        return date(year, month, number)
    except (ValueError, OverflowError):
        return None


@lru_cache(maxsize=512)
def _calendar_date(text: str, today: date, month_first: bool, prefer: str) -> date | None:
    # Loading dateparser takes longer than reading a hundred messages.
    import dateparser

    found = dateparser.parse(
        text,
        languages=["en"],
        settings={
            "RELATIVE_BASE": datetime.combine(today, time(12)),
            "DATE_ORDER": "YMD" if ISO.fullmatch(text) else ("MDY" if month_first else "DMY"),
            "PREFER_DATES_FROM": prefer,
            "REQUIRE_PARTS": ["day", "month"],
            "TIMEZONE": "UTC",
            "RETURN_AS_TIMEZONE_AWARE": False,
        },
    )
    return None if found is None else found.date()
