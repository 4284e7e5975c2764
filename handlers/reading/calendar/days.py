"""Days: "last night", "on the 3rd", "Friday the 10th", each read both ways.

A day is given as the latest one that has been and the next one to come; the sense of the sentence
chooses.
"""

import calendar
from collections.abc import Collection, Sequence
from datetime import UTC, date, datetime, timedelta
from itertools import pairwise

from handlers.reading.calendar.asidedays import day_before, placed
from handlers.reading.calendar.dates import Day as Day
from handlers.reading.calendar.daystarts import STEPS, day_starts, is_counted
from handlers.reading.calendar.daywords import (
    AMOUNT_BEHIND,
    BEFORE_SHORT,
    BEHIND_A_DAY,
    DAY_PARTS,
    FIRST_OF_OFFSET,
    MONTHS,
    ORDINALS,
    SHORT,
    SUMS,
    WEEKDAYS,
    YEAR_TO_DATE,
)
from handlers.reading.calendar.feastdays import FeastDays
from handlers.reading.calendar.feasts import first_words
from handlers.reading.measures.digits import Number
from handlers.reading.measures.numbers import read_number
from handlers.reading.words.words import Word


def read_days(
    words: Sequence[Word],
    norms: Sequence[str],
    at: datetime,
    *,
    month_first: bool,
    taken: Collection[int] = (),
) -> tuple[Day, ...]:
    """All days named in the words; `at` is the local time of the message."""
    starts = day_starts(words, norms)
    if not starts:
        return ()
    reader = _Reader(words, norms, at, month_first)
    out: list[Day] = []
    for i in starts:
        if i in taken:
            continue
        if out and i < out[-1].end:
            continue
        day = reader.at_word(i) or (day_before(norms, i, out[-1]) if out else None)
        if day is None and norms[i] in SHORT and 2 < i == len(norms) - 1 and i - 1 in taken:
            day = reader.weekday(i, i)  # "sealed the shed sat"
        if day is not None:
            out.append(placed(day, words, norms, reader.today))
    told = pairwise((None, *out))
    out = [day for last, day in told if day and not _is_again(norms, last, day, reader.today)]
    if len(out) == 2 and (day := _of_last_week(out[0], out[1], norms, reader)):
        return (day,)
    nearer = [day for day in out if reader.norms[day.end - 1] != "weekend"]
    return tuple(nearer or out)  # "at the weekend, Saturday I think"


def _is_again(norms: Sequence[str], last: Day | None, day: Day, today: date) -> bool:
    """ "A fortnight from today is the 17th": the day to come once more, by its date."""
    if last is None or last.past <= today:
        return False
    return norms[last.end : day.start] in (["is"], ["'s"], ["will", "be"], ["would", "be"])


def _of_last_week(week: Day, day: Day, norms: Sequence[str], reader: "_Reader") -> Day | None:
    """ "Last week, on Thursday", "last week I put 3 kg in, Thursday": the day of that week, where
    nothing tells of a second deed.
    """
    number = reader.weekday_number(day.end - 1)
    if list(norms[week.start : week.end]) != ["last", "week"] or number is None:
        return None
    between = norms[week.end : day.start]
    near = set(between) <= _BEFORE_DAY
    apart = day.end == len(norms) and norms[day.start - 1] in _BEFORE_DAY
    if not near and not (apart and _JOINED.isdisjoint(between)):
        return None
    past = reader.today - timedelta(reader.today.weekday() + 7 - number)
    return day._replace(start=day.start if between else week.start, past=past, aside=False)


_BEFORE_DAY = frozenset({",", "on", "-", "("})
_JOINED = frozenset({"and", "then", ".", ";", "\n", "&", "but"})


class _Reader(FeastDays):
    @property
    def counts(self) -> bool:
        """Whether a day may be told by how long ago or ahead it is."""
        return is_counted(self.norms)

    def at_word(self, i: int) -> Day | None:
        word = self.words[i]
        if word.kind == "number":
            feast = self.feast(i) if self.norms[i + 1 : i + 2] in _NTH else None
            return feast or self.dated(i) or self.ordinal(i) or self.counted(i)
        norm = word.norm
        if norm in FIRST_OF_OFFSET:
            day = self.offset(i)
            if day is not None:
                return day
        return self.worded(i, norm)

    def worded(self, i: int, norm: str) -> Day | None:
        if self.norms[i : i + 3].count("weekend") and self.leads_weekend(i):
            return self.weekend(i)
        if norm in first_words() and (feast := self.feast(i)):
            return feast
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
        return self.counted(i)

    def offset(self, i: int) -> Day | None:
        behind = self.norms[i + 1] if i + 1 < len(self.norms) else ""
        for phrase, offset in FIRST_OF_OFFSET[self.norms[i]]:
            if len(phrase) > 1 and phrase[1] != behind:
                continue
            end = i + len(phrase)
            if tuple(self.norms[i:end]) == phrase:
                if phrase == YEAR_TO_DATE and not SUMS.isdisjoint(self.norms):
                    continue
                day = self.today + timedelta(offset)
                loose = phrase in (("tonight",), ("tonite",), ("this", "evening"))
                return Day(i, self.after_part(end), day, day, loose=loose)
        return None

    def is_short_day(self, i: int) -> bool:
        before = self.norms[i - 1] if i else ""
        after = self.norms[i + 1] if i + 1 < len(self.norms) else "."
        capital = self.words[i].text[:1].isupper()
        ends = capital and after in (".", ",", "!", ")", "\n", ":", "-")
        if self.leads_amount(i, capital) or self.ends_amount(i, after):
            return True
        if i == 0:
            return (capital and (ends or after in ("i", "we"))) or after in DAY_PARTS
        return before in BEFORE_SHORT or after in DAY_PARTS or ends

    def leads_amount(self, i: int, capital: bool) -> bool:
        """ "Sat 1.5 kg, Sun 2 kg": a day that begins a list, with its amount."""
        before = self.norms[i - 1] if i else ""
        numbered = self.words[i + 1 : i + 2] and self.words[i + 1].kind == "number"
        if not numbered or before not in ("", ",", ";", ".", "\n", "and", "&", ":", "-"):
            return False
        return capital or not AMOUNT_BEHIND.isdisjoint(self.norms[i + 2 : i + 3])

    def ends_amount(self, i: int, after: str) -> bool:
        """ "1 kg sat, 2 kg sun in green": a day behind its amount, but "2 kg sat in green"."""
        measured = i > 1 and self.words[i - 2].kind == "number"
        if not measured or self.norms[i - 1] not in AMOUNT_BEHIND:
            return False
        leads_in = after in ("in", "into", "to") and self.norms[i] != "sat"
        return leads_in or after in (",", ";", ".", "and", "&", "+")

    def weekday_number(self, i: int) -> int | None:
        if i >= len(self.norms):
            return None
        norm = self.norms[i]
        return WEEKDAYS.get(norm, SHORT.get(norm))

    def weekday(self, start: int, i: int) -> Day | None:
        number = self.weekday_number(i)
        if number is None or (i + 1 < len(self.norms) and self.norms[i + 1] in _NOT_A_DAY):
            return None
        dated = self.weekday_with_date(start, i + 1)
        if dated is not None:
            return dated
        since = (self.today.weekday() - number) % 7
        past = self.today - timedelta(since)
        future = past + timedelta(7)
        end = self.after_part(i + 1)
        if self.norms[end : end + 1] in (["week"], ["fortnight"]):
            more = timedelta(7 if self.norms[end] == "week" else 14)
            return Day(start, end + 1, past - more, future + more)
        if self.norms[end : end + 2] == ["just", "gone"]:
            end += 2
        return self.reckoned_back(Day(start, end, past, future))

    def reckoned_back(self, day: Day) -> Day:
        """ "Monday before last", "a week last Monday", "Wednesday last"."""
        if "last" not in self.norms and "week" not in self.norms:
            return day
        week = timedelta(7)
        if self.norms[day.end : day.end + 2] == ["before", "last"]:
            return day._replace(end=day.end + 2, past=day.past - week)
        if self.norms[max(0, day.start - 2) : day.start] == ["a", "week"]:
            return day._replace(start=day.start - 2, past=day.past - week)
        beyond = self.norms[day.end + 1] if day.end + 1 < len(self.norms) else ""
        if self.norms[day.end : day.end + 1] == ["last"] and (
            not beyond[:1].isalpha() or beyond in BEHIND_A_DAY
        ):
            past = day.past - week if day.past == self.today else day.past
            return day._replace(end=day.end + 1, past=past)
        return day

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
            return self.ordinal(i) if norm == "on" else self.last_week(i)
        day = self.weekday(i, at)
        if day is None or norm == "on":
            return day
        if norm in ("last", "past") and day.past == self.today:
            return day._replace(past=day.past - timedelta(7))
        if norm in ("next", "coming"):
            return day._replace(past=day.future)
        return day

    def leads_weekend(self, i: int) -> bool:
        """Whether the weekend named within two words is a time, and no thing of that time."""
        at = self.norms.index("weekend", i, i + 3)
        lead, after = " ".join(self.norms[i:at]), self.norms[at + 1 : at + 3]
        return lead in _WEEKEND_LEADS or (lead == "the" and after == ["just", "gone"])

    def weekend(self, i: int) -> Day | None:
        """ "At the weekend", "last weekend": the Sunday before, or the Saturday to come."""
        end = self.norms.index("weekend", i, i + 3) + 1
        saturday = coming = self.today + timedelta((5 - self.today.weekday()) % 7 or 7)
        sunday = self.today - timedelta((self.today.weekday() + 1) % 7)
        if self.today.weekday() >= 5:
            saturday, sunday = self.today, self.today
        lead = self.norms[end - 2]
        if lead == "next":
            return Day(i, end, coming, coming)
        if lead == "last" and self.today.weekday() >= 5:
            sunday -= timedelta(self.today.weekday() - 5 + 6)
        if self.norms[end : end + 2] == ["just", "gone"]:
            end += 2
        return Day(i, end, sunday, saturday)

    def last_week(self, i: int) -> Day | None:
        if self.norms[i : i + 2] == ["last", "week"]:
            return Day(i, i + 2, self.today - timedelta(7), self.today - timedelta(7))
        if self.norms[i : i + 2] == ["next", "week"]:
            return self.next_week(i)
        return None

    def next_week(self, i: int) -> Day:
        """ "Next week", "next week Monday": a week from now, or that day of the week to come."""
        ahead, end = 7, i + 2
        number = self.weekday_number(end)
        if number is not None:
            ahead, end = 7 - self.today.weekday() + number, end + 1
        day = self.today + timedelta(ahead)
        return Day(i, end, day, day)

    def counted(self, i: int) -> Day | None:
        """ "3 days ago", "a week ago", "in two days", "5 days from now"."""
        if not self.counts:
            return None
        start = i
        ahead = self.norms[i] == "in"
        number = read_number(self.words, i + 1 if ahead and i + 1 < len(self.words) else i)
        if number is None or number.end >= len(self.norms):
            return None
        unit = self.norms[number.end]
        step = STEPS.get(unit)
        if unit in WEEKDAYS and self.norms[number.end + 1 : number.end + 2] == ["ago"]:
            return self.weekdays_ago(start, number)
        if step is None or (ahead and step > _FORTNIGHT):
            return None  # "the first in a month" tells of the past
        after = self.norms[number.end + 1] if number.end + 1 < len(self.norms) else ""
        span = timedelta(round(min(number.value * step, _FARTHEST)))
        if after in ("ago", "back", "bk", "earlier"):
            past = self.ago(number.value, unit) or self.today - span
            return Day(start, number.end + 2, past, past)
        if ahead or self.norms[number.end + 1 : number.end + 3] in (
            ["from", "now"],
            ["from", "today"],
        ):
            end = number.end + (1 if ahead else 3)
            if unit in _IN_A_DAY:
                then = self.after(number.value * _IN_A_DAY[unit])
                return Day(start, end, then.date(), then.date(), at=then.time())
            return Day(start, end, self.today + span, self.today + span)
        return None

    def weekdays_ago(self, start: int, number: Number) -> Day:
        """ "Two Sundays ago": the last such day is the first of them."""
        since = (self.today.weekday() - WEEKDAYS[self.norms[number.end]]) % 7 or 7
        past = self.today - timedelta(since + 7 * (round(min(number.value, 99)) - 1))
        return Day(start, number.end + 2, past, past)

    def after(self, seconds: float) -> datetime:
        """The moment so many seconds after the message, by the group's clock."""
        moment = self.at.replace(second=0, microsecond=0)
        span = timedelta(seconds=min(seconds, _FARTHEST * 86_400))
        if moment.tzinfo is None:
            return moment + span
        return (moment.astimezone(UTC) + span).astimezone(moment.tzinfo)

    def ago(self, count: float, unit: str) -> date | None:
        if unit in ("hour", "hours", "hrs"):
            return (self.at - timedelta(hours=min(count, 24 * _FARTHEST))).date()
        months = 12 if STEPS[unit] > 31 else 1
        if STEPS[unit] > _FORTNIGHT and count == int(count) < _FARTHEST / 31 / months:
            year, month = divmod(
                self.today.year * 12 + self.today.month - 1 - int(count) * months, 12
            )
            last = calendar.monthrange(year, month + 1)[1]
            return date(year, month + 1, min(self.today.day, last))
        return None


_NTH = (["st"], ["nd"])
"""Behind the number of a feast's day: "2nd Christmas day"."""
_IN_A_DAY = {
    **dict.fromkeys(("hour", "hours", "hrs"), 3600),
    **dict.fromkeys(("mins", "minutes", "minute"), 60),
}
"""Seconds in each unit that is counted by the clock."""
_FORTNIGHT = 14
"""Days in the longest unit that is counted ahead in."""
_FARTHEST = 36_525
"""Days in a century: nobody means a day beyond it."""
_WEEKEND_LEADS = frozenset(
    {"at the", "over the", "on the", "during the", "last", "this", "next", "this past"}
)
_NOT_A_DAY = frozenset({"school", "club", "group", "class", "crew", "market", "papers"})
"""Behind a weekday: "Sunday school" is a thing, and no day on which something was done."""
