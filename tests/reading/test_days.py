from datetime import date, datetime, time
from zoneinfo import ZoneInfo

import pytest

from handlers.reading.calendar.days import Day, read_days
from handlers.reading.words.words import cleaned, norms_in, words_of

# Wednesday 9 September 2026; the dates below were read off a printed calendar of that year.
AT = datetime(2026, 9, 9, 21, 15)  # noqa: DTZ001


def days(text: str, *, month_first: bool = False) -> tuple[Day, ...]:
    return _days_at(AT, text, month_first=month_first)


def _days_at(at: datetime, text: str, *, month_first: bool = False) -> tuple[Day, ...]:
    words = words_of(cleaned(text))
    return read_days(words, norms_in(words), at, month_first=month_first)


@pytest.mark.parametrize(
    ("text", "past", "future"),
    [
        ("yesterday", "2026-09-08", "2026-09-08"),
        ("last night", "2026-09-08", "2026-09-08"),
        ("the day before yesterday", "2026-09-07", "2026-09-07"),
        ("tmrw", "2026-09-10", "2026-09-10"),
        ("on saturday", "2026-09-05", "2026-09-12"),
        ("last wednesday", "2026-09-02", "2026-09-16"),
        ("wednesday", "2026-09-09", "2026-09-16"),
        ("Friday the 10th", "2026-08-10", "2026-09-10"),
        ("on the 3rd", "2026-09-03", "2026-10-03"),
        ("on the fourth", "2026-09-04", "2026-10-04"),
        ("3 days ago", "2026-09-06", "2026-09-06"),
        ("yesterday week", "2026-09-01", "2026-09-01"),
        ("8/21 Mei put 2 kg in", "2026-08-21", "2027-08-21"),
        ("sealed it 9/8", "2026-08-09", "2027-08-09"),
        ("two nights ago", "2026-09-07", "2026-09-07"),
        ("a week ago", "2026-09-02", "2026-09-02"),
        ("in 3 days", "2026-09-12", "2026-09-12"),
        ("3 june", "2026-06-03", "2027-06-03"),
        ("June 3rd", "2026-06-03", "2027-06-03"),
        ("1st of March 2026", "2026-03-01", "2026-03-01"),
        ("on 15/8,", "2026-08-15", "2027-08-15"),
        ("on 1.6.", "2026-06-01", "2027-06-01"),
        ("2026-03-05", "2026-03-05", "2026-03-05"),
        ("on midsummer's day with Kit", "2026-06-24", "2027-06-24"),
        ("on boxing day", "2025-12-26", "2026-12-26"),
        ("sealed on 5,", "2026-09-05", "2026-10-05"),
        ("sealed on the 5.", "2026-09-05", "2026-10-05"),
        ("sealed it the 22,", "2026-08-22", "2026-09-22"),
        ("the twentieth of last month", "2026-08-20", "2026-08-20"),
        ("sealed since halloween", "2025-10-31", "2026-10-31"),
        ("done 27/4.", "2026-04-27", "2027-04-27"),
        ("over the weekend", "2026-09-06", "2026-09-12"),
        ("last weekend", "2026-09-06", "2026-09-12"),
        ("next weekend", "2026-09-12", "2026-09-12"),
        ("the weekend just gone", "2026-09-06", "2026-09-12"),
        ("at the weekend, Saturday I think", "2026-09-05", "2026-09-12"),
        ("Wednesday last", "2026-09-02", "2026-09-16"),
        ("a week last Monday", "2026-08-31", "2026-09-14"),
        ("the Sunday before last", "2026-08-30", "2026-09-13"),
        ("vorgestern", "2026-09-07", "2026-09-07"),
        ("samedi", "2026-09-05", "2026-09-12"),
        ("Sat: 2 kg", "2026-09-05", "2026-09-12"),
    ],
)
def test_a_day_is_read_both_ways(text: str, past: str, future: str) -> None:
    (day,) = days(text)
    assert (day.past, day.future) == (date.fromisoformat(past), date.fromisoformat(future))


@pytest.mark.parametrize(
    ("today", "text", "future"),
    [
        ("2026-09-12", "next weekend", "2026-09-19"),
        ("2026-09-13", "next weekend", "2026-09-19"),
        ("2026-09-13", "at the weekend", "2026-09-13"),
        ("2026-09-14", "next weekend", "2026-09-19"),
    ],
)
def test_the_next_weekend_is_another_than_this(today: str, text: str, future: str) -> None:
    (day,) = _days_at(datetime.fromisoformat(f"{today}T18:00+00:00"), text)
    assert day.future.isoformat() == future


def test_the_group_decides_whether_the_month_comes_first() -> None:
    assert days("on 9/5:")[0].past == date(2026, 5, 9)
    assert days("on 9/5:", month_first=True)[0].past == date(2026, 9, 5)


@pytest.mark.parametrize(
    "text",
    ["I may add 2 kg", "it sat in the sun", "the second bucket", "1/2 cup", "a march down the road",
     "Christmas pudding", "may 5 kg", "the 6th layer", "on the 3rd floor", "Sunday school",
     "the 4th graders peeled them", "the 4, all full", "3/4, more or less"],
)  # fmt: skip
def test_words_that_are_no_day(text: str) -> None:
    assert days(text) == ()


@pytest.mark.parametrize(
    "text", ["since monday", "until friday", "yesterday's soup", "from sunday"]
)
def test_a_day_of_something_else_is_set_aside(text: str) -> None:
    assert [day.aside for day in days(text)] == [True]


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("3 months ago", date(2026, 3, 17)),
        ("a month ago", date(2026, 5, 17)),
        ("12 years ago", date(2014, 6, 17)),
        ("2 weeks ago", date(2026, 6, 3)),
        ("30 hours ago", date(2026, 6, 16)),
        ("9999999 years ago", date(1926, 6, 17)),
    ],
)
def test_long_ago_is_a_day_too(text: str, day: date) -> None:
    at = datetime(2026, 6, 17, 18, 30, tzinfo=ZoneInfo("Europe/London"))
    [found] = _days_at(at, f"sealed it {text}")
    assert found.past == day


@pytest.mark.parametrize(
    ("text", "day", "then"),
    [
        # The clocks of London go back at 02:00 on 25 October 2026.
        ("in 5 hours", date(2026, 10, 25), time(2, 30)),
        ("in 90 minutes", date(2026, 10, 25), time(0, 0)),
        ("in half an hour", date(2026, 10, 24), time(23, 0)),
    ],
)
def test_so_long_from_now_is_by_the_clock(text: str, day: date, then: time) -> None:
    at = datetime(2026, 10, 24, 22, 30, tzinfo=ZoneInfo("Europe/London"))
    [found] = _days_at(at, f"remind us {text}")
    assert (found.future, found.at) == (day, then)


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("put 2 kg in last week thursday", [date(2026, 9, 3)]),
        ("put 2 kg in last week, on thursday", [date(2026, 9, 3)]),
        ("last week I put 2 kg in, thursday", [date(2026, 9, 3)]),
        ("put 2 kg in last week and 1 kg on monday", [date(2026, 9, 2), date(2026, 9, 7)]),
    ],
)
def test_a_day_of_last_week(text: str, found: list[date]) -> None:
    assert [day.past for day in days(text)] == found
