"""How many bins, against a plain count of days and Little's law."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.bins import bins
from handlers.practice.figure import Refused


@pytest.mark.parametrize(
    ("fill", "ferment", "count"),
    # ceil((F + M) / F), by hand.
    [(7, 14, 3), (10, 14, 3), (14, 14, 2), (5, 14, 4), (3, 21, 8), (21, 14, 2), (28, 28, 2)],
)
def test_one_is_filled_while_the_others_stand(fill: float, ferment: float, count: int) -> None:
    assert bins(fill_days=fill, ferment_days=ferment).bins == count


def test_four_people_fill_twenty_litres_in_over_two_weeks() -> None:
    # 20 L x 0.7 = 14 kg; UNEP 2024: 4 x 1.515 kg a week; 16.2 days, over Footer's two weeks.
    found = bins(people=4, capacity_l=20)
    assert found.fill_days == pytest.approx(16.2, rel=0.02)
    assert any("smaller bins" in line for line in found.lines)


def test_five_households_want_four_bins() -> None:
    # 19.0 kg a week fill one bin of 14 kg in 5.2 days; (5.2 + 14) / 5.2 rounded up.
    found = bins(rate_kg_week=19.0, capacity_l=20)
    assert found.fill_days == pytest.approx(5.16, abs=0.01)
    assert found.bins == 4


def test_nonsense_is_refused() -> None:
    with pytest.raises(Refused, match="how many days"):
        bins()
    for wrong in (0.0, -7.0, 1e9, 0.001):
        with pytest.raises(Refused):
            bins(fill_days=wrong)
    with pytest.raises(Refused):
        bins(people=-1)
    with pytest.raises(Refused):
        bins(rate_kg_week=0)


def test_the_count_told_with_what_would_change_it() -> None:
    # By hand: a quarter faster than 7 days is 5.25, (5.25 + 14) / 5.25 = 3.7; slower 8.75, 2.6.
    found = bins(fill_days=7, ferment_days=14)
    assert [(o.fill_days, o.bins) for o in found.sensitivity] == [(5.25, 4), (8.75, 3)]
    assert "it would be 4" in found.lines[1]
    # At 28 days two do, and at 21 and 35 as well: nothing to say.
    assert not any("would be" in line for line in bins(fill_days=28).lines)


def test_how_full_a_bin_is_after_settling() -> None:
    # 14 kg at 0.70 kg/L are 20 L, settled by 15 % 17 L of a 20 L bin.
    found = bins(fill_days=10, capacity_l=20, holds_kg=14)
    assert found.filled_l == pytest.approx(17)
    assert found.filled_share == pytest.approx(0.85)
    assert "85% full" in found.lines[0]
    assert any("14 kg at 0.7 kg/L, settled by 15 %, are 17 L" in step for step in found.steps)
    assert bins(fill_days=10, holds_kg=1000).filled_share == 1
    assert found.capacity_kg == pytest.approx(14)


@given(st.integers(1, 100), st.integers(0, 60))
def test_there_are_enough_bins_and_none_too_many(fill: int, ferment: int) -> None:
    # Little's law: bins in use on average are days held over days between fills.
    count = bins(fill_days=fill, ferment_days=ferment).bins
    assert count >= (fill + ferment) / fill
    assert (count - 1) * fill < fill + ferment


def test_one_of_days_people_and_rate_is_enough() -> None:
    with pytest.raises(Refused, match="one of these"):
        bins(fill_days=7, rate_kg_week=5)
    with pytest.raises(Refused, match="larger bins"):
        bins(rate_kg_week=1000)
