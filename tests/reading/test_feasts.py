"""Days named by a feast."""

from datetime import date

import pytest

from handlers.reading.acts import Seal
from handlers.reading.calendar.feasts import feast_days
from tests.reading.context import acts


# Easter: US Naval Observatory, "The Date of Easter"; Thanksgiving: 5 U.S.C. § 6103 and the Holidays
# Act of Canada (second Monday in October); Memorial Day: last Monday in May, 5 U.S.C. § 6103.
@pytest.mark.parametrize(
    ("name", "american", "past", "future"),
    [
        ("easter sunday", False, "2026-04-05", "2027-03-28"),
        ("good friday", False, "2026-04-03", "2027-03-26"),
        ("easter monday", False, "2026-04-06", "2027-03-29"),
        ("ash wednesday", False, "2026-02-18", "2027-02-10"),
        ("whit monday", False, "2026-05-25", "2027-05-17"),
        ("thanksgiving", True, "2025-11-27", "2026-11-26"),
        ("thanksgiving", False, "2025-10-13", "2026-10-12"),
        ("memorial day", True, "2026-05-25", "2027-05-31"),
        ("boxing day", False, "2025-12-26", "2026-12-26"),
        ("king 's day", False, "2026-04-27", "2027-04-27"),
        ("leap day", False, "2024-02-29", "2028-02-29"),
    ],
)
def test_a_feast_is_on_its_day(name: str, american: bool, past: str, future: str) -> None:
    found = feast_days(name, date(2026, 6, 17), american=american)
    assert found == (date.fromisoformat(past), date.fromisoformat(future))


@pytest.mark.parametrize(
    ("text", "on"),
    [
        ("sealed bin 3 on Easter Monday", date(2026, 4, 6)),
        ("sealed bin 3 Good Friday evening", date(2026, 4, 3)),
        ("sealed bin 3 on midsummer eve", date(2025, 6, 23)),
        ("bin 3 was sealed the evening of King's Day", date(2026, 4, 27)),
        ("sealed bin 3 boxing day arvo after the match", date(2025, 12, 26)),
        ("sealed bin 3, the Easter eggs are all gone", date(2026, 6, 17)),
        ("cleared up after Easter and sealed bin 3", date(2026, 6, 17)),
        ("sealed bin 3 on Monday", date(2026, 6, 15)),
    ],
)
def test_a_record_is_of_the_feast_it_names(text: str, on: date) -> None:
    assert [act.on for act in acts(text) if isinstance(act, Seal)] == [on]


def test_no_other_words_are_a_feast() -> None:
    assert feast_days("washing day", date(2026, 6, 17), american=False) is None
    assert feast_days("memorial day", date(2026, 6, 17), american=False) is None


@pytest.mark.parametrize(
    ("text", "on"),
    [
        ("Second Easter day: sealed bin 3", date(2026, 4, 6)),
        ("sealed bin 3 on the second day of Christmas", date(2025, 12, 26)),
        ("2nd Christmas day, sealed bin 3", date(2025, 12, 26)),
        ("sealed bin 3 on first Easter day", date(2026, 4, 5)),
        ("second Pentecost day, sealed bin 3", date(2026, 5, 25)),
        ("sealed bin 3, second day in a row of rain", date(2026, 6, 17)),
        ("Easter Monday leftovers are all in, sealed bin 3", date(2026, 6, 17)),
        ("sealed bin 3, Good Friday leftovers and all", date(2026, 6, 17)),
    ],
)
def test_a_feast_of_two_days_and_its_leftovers(text: str, on: date) -> None:
    assert [act.on for act in acts(text) if isinstance(act, Seal)] == [on]
