"""Moisture, nitrogen and C:N against USDA rows and Cornell's worked examples."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.composition import (
    CONTENT,
    content,
)
from handlers.practice.kinds import KINDS, Kind


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_is_made_of_something(kind: Kind) -> None:
    made = CONTENT[kind]
    assert 0 <= made.water <= 100
    assert 0 <= made.nitrogen <= 10
    assert made.water + made.carbon <= 100


@given(st.sampled_from(KINDS), st.floats(0, 1), st.floats(0, 1))
def test_more_meat_is_more_nitrogen(kind: Kind, one: float, other: float) -> None:
    less, more = sorted((one, other))
    if kind == "meat":
        return
    poorer = content({"meat": less, kind: 1 - less}).nitrogen
    assert poorer <= content({"meat": more, kind: 1 - more}).nitrogen + 1e-9


@given(st.sampled_from(KINDS), st.sampled_from(KINDS), st.floats(0.01, 0.99))
def test_a_blend_lies_between_its_kinds(one: Kind, other: Kind, share: float) -> None:
    if one == other:
        return
    low, high = sorted((CONTENT[one].water, CONTENT[other].water))
    assert low - 1e-9 <= content({one: share, other: 1 - share}).water <= high + 1e-9
