"""How long starter lasts, against the weeks that a bag is worked out to last."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.figure import Refused
from handlers.practice.outlook import full_forecast
from handlers.practice.prospect import prospect
from handlers.practice.supply import supply

TODAY = date(2026, 3, 2)


def test_a_bag_of_bran_lasts_a_group_twelve_weeks() -> None:
    # 19.0 kg of scraps a week at 2 % are 380 g; 4.5 kg last 11.84 weeks, 82 whole days.
    found = supply(4.5, 19 / 7, TODAY, habit="weight")
    assert found.g_day == pytest.approx(380 / 7)
    assert found.starter_out_on == TODAY + timedelta(days=82)


def test_a_batch_is_begun_in_time_to_ferment_and_dry() -> None:
    # Two weeks sealed at least, a few days to dry (Footer 2013 ch. 4), and a few in hand.
    found = supply(4.5, 19 / 7, TODAY, habit="weight")
    assert found.starter_out_on is not None
    assert found.begin_batch_by is not None
    assert 16 <= (found.starter_out_on - found.begin_batch_by).days <= 28
    assert f"by {found.begin_batch_by}" in found.lines[0]


def test_what_the_group_really_uses_comes_before_the_rule() -> None:
    assert supply(1.0, 2.0, TODAY, g_day=50).starter_out_on == TODAY + timedelta(days=20)


def test_too_late_is_now_and_plenty_is_years() -> None:
    assert "begin a batch now" in supply(0.05, 1, TODAY).lines[0]
    assert supply(0, 1, TODAY).starter_out_on == TODAY
    plenty = supply(5000, 0.01, TODAY)
    assert plenty.starter_out_on is None
    assert "for years" in plenty.lines[0]


def test_nonsense_is_refused() -> None:
    for starter, scraps in ((-1.0, 1.0), (1.0, 0.0), (1.0, -1.0), (1e9, 1.0)):
        with pytest.raises(Refused):
            supply(starter, scraps, TODAY)
    with pytest.raises(Refused, match="how much is used"):
        supply(1, 1, TODAY, g_day=0)


def test_both_forecasts_together() -> None:
    filling = full_forecast([(TODAY, 2.0)], 20, TODAY, people=3)
    found = prospect(filling, supply(1, filling.rate_kg_day, TODAY)).results()
    assert found.keys() >= {"full_on", "full_from", "full_to", "starter_out_on", "begin_batch_by"}
    alone = prospect(filling, None).results()
    assert "starter_out_on" not in alone
    assert alone["full_on"] == found["full_on"]


@given(st.floats(0, 50), st.floats(0, 50), st.floats(0.05, 20))
def test_more_starter_never_runs_out_sooner(one: float, other: float, scraps: float) -> None:
    less, more = (supply(kg, scraps, TODAY) for kg in sorted((one, other)))
    assert (less.starter_out_on or date.max) <= (more.starter_out_on or date.max)
