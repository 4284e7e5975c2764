"""The growth model against the values worked out from its published coefficients."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.growth import growth_per_hour, slowness

# Wijtzes et al. 1995: mu = 0.0001263 (T + 3.27)² (pH - 4.26) (9.77 - pH), by hand.


@pytest.mark.parametrize(
    ("celsius", "rate"),
    [(10, 0.1629), (15, 0.3088), (20, 0.5009), (25, 0.7394), (30, 1.0240)],
)
def test_growth_by_temperature(celsius: float, rate: float) -> None:
    assert growth_per_hour(celsius, 6.5) == pytest.approx(rate, abs=0.0005)


@pytest.mark.parametrize(
    ("ph", "rate"), [(5.5, 0.3621), (5.0, 0.2414), (4.5, 0.0865), (4.26, 0), (3.9, 0), (10, 0)]
)
def test_growth_by_acidity(ph: float, rate: float) -> None:
    assert growth_per_hour(20, ph) == pytest.approx(rate, abs=0.0005)


def test_nothing_grows_in_the_freezer() -> None:
    assert growth_per_hour(-18) == 0


@pytest.mark.parametrize(
    ("celsius", "days"), [(10, 43.1), (15, 22.7), (20, 14.0), (25, 9.5), (30, 6.8)]
)
def test_two_weeks_at_twenty_degrees_elsewhere(celsius: float, days: float) -> None:
    assert 14 * slowness(celsius) == pytest.approx(days, abs=0.05)


@given(st.floats(-40, 60), st.floats(-40, 60))
def test_colder_is_never_faster(one: float, other: float) -> None:
    colder, warmer = sorted((one, other))
    assert slowness(colder) >= slowness(warmer)


def test_outside_its_range_the_model_stays_at_its_edge() -> None:
    assert slowness(-10) == slowness(6)
    assert slowness(45) == slowness(31)
