"""Days: "last night", "on the 3rd", "Friday the 10th", each read both ways.

A day is given as the latest one that has been and the next one to come; the sense of the sentence
chooses. dateparser sees only a stretch that is a calendar date, with the base day given.
"""

import calendar
import re
from collections.abc import Collection, Sequence
from datetime import date, datetime, time, timedelta
from functools import lru_cache
from typing import NamedTuple

from handlers.reading.daywords import (
    AMOUNT_BEHIND,
    ASIDE,
    BEFORE_SHORT,
    BEHIND_A_DAY,
    DAY_PARTS,
    ENDS,
    FEASTS,
    FIRST_OF_OFFSET,
    MEETING,
    MONTHS,
    ORDINALS,
    SHORT,
    STARTS,
    WEEKDAYS,
)
from handlers.reading.numbers import read_number
from handlers.reading.words import Word


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


_NUMERIC = re.compile(r"(\d{1,2})([/.])(\d{1,2})(?:\2(\d{2}|\d{4}))?")
_ISO = re.compile(r"\d{4}-\d\d?-\d\d?")


def read_days(
    words: Sequence[Word],
    at: datetime,
    *,
    month_first: bool,
    taken: Collection[int] = (),
) -> tuple[Day, ...]:
    """All days named in the words; `at` is the local time of the message."""
    reader = _Reader(words, at, month_first)
    out: list[Day] = []
    i = 0
    while i < len(words):
        day = None if i in taken else reader.at_word(i)
        if day is None:
            i += 1
            continue
        out.append(reader.placed(day))
        i = day.end
    return tuple(out)


class _Reader:
    def __init__(self, words: Sequence[Word], at: datetime, month_first: bool) -> None:
        self.words = words
        self.norms = [w.norm for w in words]
        self.at = at
        self.today = at.date()
        self.month_first = month_first

    def at_word(self, i: int) -> Day | None:
        word = self.words[i]
        if word.kind == "number":
            return self.dated(i) or self.ordinal(i) or self.counted(i)
        norm = word.norm
        if word.kind != "word" or norm not in STARTS:
            return None
        if norm in FIRST_OF_OFFSET:
            day = self.offset(i)
            if day is not None:
                return day
        return self.worded(i, norm)

    def worded(self, i: int, norm: str) -> Day | None:
        if norm in WEEKDAYS or (norm in SHORT and self.is_short_day(i)):
            return self.weekday(i, i)
        if norm in ("last", "this", "next", "coming", "past", "on"):
            return self.qualified(i)
        if norm in MONTHS:
            return self.month_first_date(i)
        if norm == "the":
            return self.ordinal(i)
        if norm in ORDINALS:
            return self.ordinal_of_month(i)
        return self.feast(i) or self.counted(i)

    def feast(self, i: int) -> Day | None:
        for length in (4, 3, 2, 1):
            known = self.norms[i : i + length]
            month_day = FEASTS.get(" ".join(known)) if len(known) == length else None
            if month_day is not None and self.dates(i, i + length):
                return self.yearly(i, i + length, *month_day)
        return None

    def dates(self, start: int, end: int) -> bool:
        """Whether a feast names the day, and not a thing of that day ("Christmas pudding")."""
        after = self.norms[end] if end < len(self.norms) else ""
        before = self.norms[start - 1] if start else ""
        free = not after or not after[0].isalpha() or after in BEHIND_A_DAY
        return free and before not in ("for", "the", "happy", "merry", "till", "until", "since")

    def offset(self, i: int) -> Day | None:
        for phrase, offset in FIRST_OF_OFFSET[self.norms[i]]:
            end = i + len(phrase)
            if tuple(self.norms[i:end]) == phrase:
                day = self.today + timedelta(offset)
                loose = phrase in (("tonight",), ("tonite",), ("this", "evening"))
                return Day(i, self.after_part(end), day, day, loose=loose)
        return None

    def after_part(self, end: int) -> int:
        return end + 1 if end < len(self.norms) and self.norms[end] in DAY_PARTS else end

    def is_short_day(self, i: int) -> bool:
        before = self.norms[i - 1] if i else ""
        after = self.norms[i + 1] if i + 1 < len(self.norms) else "."
        ends = i > 0 and self.words[i].text[:1].isupper() and after in (".", ",", "!", ")", "\n")
        return before in BEFORE_SHORT or after in DAY_PARTS or ends

    def weekday_number(self, i: int) -> int | None:
        if i >= len(self.norms):
            return None
        norm = self.norms[i]
        return WEEKDAYS.get(norm, SHORT.get(norm))

    def weekday(self, start: int, i: int) -> Day | None:
        number = self.weekday_number(i)
        if number is None:
            return None
        dated = self.weekday_with_date(start, i + 1)
        if dated is not None:
            return dated
        since = (self.today.weekday() - number) % 7
        past = self.today - timedelta(since)
        future = past + timedelta(7)
        end = self.after_part(i + 1)
        if self.norms[end : end + 1] == ["week"] and number != self.today.weekday() - 7:
            return Day(start, end + 1, past - timedelta(7), future + timedelta(7))
        if self.norms[end : end + 2] == ["just", "gone"]:
            end += 2
        return Day(start, end, past, future)

    def weekday_with_date(self, start: int, i: int) -> Day | None:
        """ "Friday the 10th", "Monday 3 May", "Tues, 9/5": the date behind it counts."""
        if i < len(self.norms) and self.norms[i] == ",":
            i += 1
        if i >= len(self.words):
            return None
        if self.words[i].kind == "number":
            day = self.dated(i) or self.ordinal(i)
        elif self.norms[i] == "the":
            day = self.ordinal(i)
        elif self.norms[i] in MONTHS:
            day = self.month_first_date(i)
        else:
            return None
        return None if day is None else day._replace(start=start)

    def qualified(self, i: int) -> Day | None:
        norm, at = self.norms[i], i + 1
        if norm == "this" and self.norms[at : at + 1] in (["coming"], ["past"]):
            norm, at = self.norms[at], at + 1
        number = self.weekday_number(at)
        if number is None:
            return self.last_week(i)
        day = self.weekday(i, at)
        if day is None or norm == "on":
            return day
        if norm in ("last", "past") and day.past == self.today:
            return day._replace(past=day.past - timedelta(7))
        return day

    def last_week(self, i: int) -> Day | None:
        if self.norms[i : i + 2] == ["last", "week"]:
            return Day(i, i + 2, self.today - timedelta(7), self.today - timedelta(7))
        if self.norms[i : i + 2] == ["next", "week"]:
            return Day(i, i + 2, self.today + timedelta(7), self.today + timedelta(7))
        return None

    def counted(self, i: int) -> Day | None:
        """ "3 days ago", "a week ago", "in two days", "5 days from now"."""
        start = i
        ahead = self.norms[i] == "in"
        number = read_number(self.words, i + 1 if ahead and i + 1 < len(self.words) else i)
        if number is None or number.end >= len(self.norms):
            return None
        step = {"day": 1, "days": 1, "night": 1, "nights": 1, "week": 7, "weeks": 7, "wk": 7,
                "wks": 7, "fortnight": 14, "hour": 0, "hours": 0, "hrs": 0, "mins": 0,
                "minutes": 0}.get(self.norms[number.end])  # fmt: skip
        if step is None or number.value > 400:
            return None
        after = self.norms[number.end + 1] if number.end + 1 < len(self.norms) else ""
        span = timedelta(round(number.value * step))
        if after in ("ago", "back", "bk", "earlier"):
            past = self.ago(number.value, self.norms[number.end]) or self.today - span
            return Day(start, number.end + 2, past, past)
        if ahead or self.norms[number.end + 1 : number.end + 3] in (
            ["from", "now"],
            ["from", "today"],
        ):
            day = self.today + span
            return Day(start, number.end + (1 if ahead else 3), day, day)
        return None

    def ago(self, count: float, unit: str) -> date | None:
        if unit in ("hour", "hours", "hrs"):
            return (self.at - timedelta(hours=count)).date()
        return None

    def ordinal(self, i: int) -> Day | None:
        """ "the 3rd", "on the fourth", "3rd of June", "the 10th"."""
        at = i + 1 if self.norms[i] == "the" else i
        if at >= len(self.words):
            return None
        if self.words[at].kind == "number":
            value = self.words[at].norm
            if (
                not value.isdecimal()
                or self.norms[at + 1 : at + 2] == []
                or (self.norms[at + 1] not in ENDS)
            ):
                return None
            return self.of_month(i, at + 2, int(value))
        value_word = ORDINALS.get(self.norms[at])
        if value_word is None or self.norms[i] != "the":
            return None
        if self.norms[at] in ("first", "second", "third") and not self.ends_there(at + 1):
            return None
        return self.of_month(i, at + 1, value_word)

    def ends_there(self, i: int) -> bool:
        """Whether "the second" stands alone, as a day does, and is not "the second bucket"."""
        return (
            self.norms[i : i + 1] == ["of"]
            and self.norms[i + 1 : i + 2][:1] != []
            and (self.norms[i + 1] in MONTHS)
        )

    def ordinal_of_month(self, i: int) -> Day | None:
        if (
            self.norms[i + 1 : i + 2] == ["of"]
            and i + 2 < len(self.norms)
            and (self.norms[i + 2] in MONTHS)
        ):
            return self.of_month(i, i + 1, ORDINALS[self.norms[i]])
        return None

    def of_month(self, start: int, end: int, number: int) -> Day | None:
        at = end + 1 if self.norms[end : end + 1] == ["of"] else end
        if at < len(self.norms) and self.norms[at] in MONTHS:
            return self.calendar_date(start, at + 1, number, MONTHS[self.norms[at]])
        return self.monthly(start, end, number)

    def dated(self, i: int) -> Day | None:
        """ "15/8", "9/5", "1.6.", "3 June", "2026-03-05"."""
        norm = self.norms[i]
        if _ISO.fullmatch(norm):
            return self.parsed(i, i + 1, norm)
        numeric = _NUMERIC.fullmatch(norm)
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
        first, sign, second, year = match.groups()
        before = self.norms[i - 1] if i else ""
        full_stop = self.norms[i + 1 : i + 2] == ["."] and sign == "."
        if (
            sign == "."
            and year is None
            and not (full_stop and before in ("on", "am", "the", "since"))
            and not (before in ("on", "am") and self.is_plain_date(i, int(first), int(second)))
        ):
            return None
        if (
            sign == "/"
            and year is None
            and not self.is_slash_date(i, before, int(first), int(second))
        ):
            return None
        return self.parsed(i, i + 1, match.group())

    def is_plain_date(self, i: int, first: int, second: int) -> bool:
        """ "On 1.6" is a date where no unit follows."""
        after = self.norms[i + 1] if i + 1 < len(self.norms) else ""
        return 1 <= first <= 31 and 1 <= second <= 12 and after not in AMOUNT_BEHIND

    def is_slash_date(self, i: int, before: str, first: int, second: int) -> bool:
        """ "9/5" is a date behind "on" and the like, and "1/2 cup" never."""
        if before in ("on", "since", "from", "dated", "by", "until", "the", "("):
            return True
        after = self.norms[i + 1] if i + 1 < len(self.norms) else "\n"
        alone = after in (":", ",", ".", "\n", "-", ";", ")") or i + 1 == len(self.norms)
        leads = i == 0 or before in (".", "!", "\n", ",")
        told = alone or after in ("i", "we", "put", "added", "drained", "sealed", "buried")
        return (told and leads and (second > 4 or first > second)) or (
            alone and first > second and second > 4
        )

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
        year = self.norms[end] if end < len(self.norms) else ""
        if year.isdecimal() and len(year) == 4:
            return self.parsed(start, end + 1, f"{number} {calendar.month_name[month]} {year}")
        return self.yearly(start, end, month, number)

    def yearly(self, start: int, end: int, month: int, number: int) -> Day | None:
        years = [_date(self.today.year + k, month, number) for k in range(-4, 5)]
        known = [d for d in years if d is not None]
        past = [d for d in known if d <= self.today]
        future = [d for d in known if d > self.today]
        return Day(start, end, past[-1], future[0]) if past and future else None

    def monthly(self, start: int, end: int, number: int) -> Day | None:
        months = self.today.year * 12 + self.today.month - 1
        near = [_date((months + k) // 12, (months + k) % 12 + 1, number) for k in range(-4, 5)]
        known = [d for d in near if d is not None]
        past = [d for d in known if d <= self.today]
        future = [d for d in known if d > self.today]
        return Day(start, end, past[-1], future[0]) if past and future else None

    def parsed(self, start: int, end: int, text: str) -> Day | None:
        past = _calendar_date(text, self.today, self.month_first, "past")
        future = _calendar_date(text, self.today, self.month_first, "future")
        return None if past is None or future is None else Day(start, end, past, future)

    def placed(self, day: Day) -> Day:
        """The day, set aside if the words round it say that it dates something else."""
        before = self.norms[day.start - 1] if day.start else ""
        after = self.norms[day.end] if day.end < len(self.norms) else ""
        beyond = self.words[day.end + 1] if day.end + 1 < len(self.words) else None
        owns = after == "'s" and not (beyond is not None and beyond.kind == "number")
        meeting = not MEETING.isdisjoint(self.norms[max(0, day.start - 4) : day.start])
        aside = meeting or before in ASIDE or owns or self.norms[day.start].endswith("days")
        if before == "from" and after in ("on", "onwards"):
            aside = True
        return day._replace(aside=aside and self.norms[day.start] != "today")


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
            "DATE_ORDER": "YMD" if _ISO.fullmatch(text) else ("MDY" if month_first else "DMY"),
            "PREFER_DATES_FROM": prefer,
            "REQUIRE_PARTS": ["day", "month"],
            "TIMEZONE": "UTC",
            "RETURN_AS_TIMEZONE_AWARE": False,
        },
    )
    return None if found is None else found.date()
