"""Days as people write them; ISO 8601 is read always, anything that has two meanings never."""

from datetime import date

import pytest

from handlers.practice.figure import Refused
from handlers.practice.written_day import day


@pytest.mark.parametrize(
    "text",
    [
        "2026-03-20",
        " 2026-3-20 ",
        "2026/03/20",
        "2026-03-20T09:00",
        "20 March 2026",
        "20th Mar 2026",
        "March 20, 2026",
        "Friday 20 March 2026",
        "20.3.2026",
        "20/3/2026",
        "3/20/2026",
    ],
)
def test_one_day_written_many_ways(text: str) -> None:
    # ISO 8601: 20 March 2026 is day 5 of week 12.
    assert day(text) == date(2026, 3, 20)
    assert day(text).isocalendar()[1:] == (12, 5)


def test_a_leap_day_and_a_date_that_is_its_own_mirror() -> None:
    assert day("2028-02-29") == date(2028, 2, 29)
    assert day("4/4/2026") == date(2026, 4, 4)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "20 March",
        "2027-02-29",
        "0000-01-01",
        "today",
        "20 Smarch 2026",
        "٢٠٢٦-٠٣-٢٠",
        "2026-03-20-01",
        "31.4.2026",
    ],
)
def test_what_is_no_day_is_refused(text: str) -> None:
    with pytest.raises(Refused, match=r"write it like 2026-03-20\.$"):
        day(text)


def test_what_could_be_two_days_is_asked_again() -> None:
    with pytest.raises(Refused, match="two ways"):
        day("03/04/2026")
