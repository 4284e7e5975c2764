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
    assert "smaller bins" in found.lines[1]


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


@given(st.integers(1, 100), st.integers(0, 60))
def test_there_are_enough_bins_and_none_too_many(fill: int, ferment: int) -> None:
    # Little's law: bins in use on average are days held over days between fills.
    count = bins(fill_days=fill, ferment_days=ferment).bins
    assert count >= (fill + ferment) / fill
    assert (count - 1) * fill < fill + ferment
