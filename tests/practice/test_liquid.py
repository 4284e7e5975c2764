"""Liquid to expect, within the trade's 0 to 100 mL to the kilogram."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.figure import Refused
from handlers.practice.kinds import KINDS, Kind
from handlers.practice.liquid import liquid


@given(st.sampled_from(KINDS), st.floats(0.1, 100))
def test_it_stays_in_the_range_of_the_trade(kind: Kind, mass: float) -> None:
    found = liquid(mass, {kind: 1.0})
    assert 0 <= found.low_l <= found.expected_l <= found.high_l
    assert 0.03 * mass <= found.high_l + 1e-9
    assert found.high_l <= 0.1 * mass + 1e-9


def test_scraps_of_no_stated_kind_may_give_all_that_the_trade_has_seen() -> None:
    # Trade: 0 to about 100 mL to the kilogram.
    assert liquid(10).high_l == pytest.approx(1.0)
    assert liquid(10, {"meat": 0.5, "mixed": 0.5}).high_l == pytest.approx(0.5 + 0.15)


def test_half_a_litre_from_meat_and_rice_is_worth_a_word() -> None:
    # USDA SR28: meat holds 56 to 65 % water and rice 68 %, about what scraps hold.
    assert liquid(10, {"meat": 0.5, "grain": 0.5}, drained_l=0.5).drained == "much"
    assert liquid(10, {"meat": 0.5, "grain": 0.5}, drained_l=0.2).drained == "usual"


def test_fruit_and_vegetables_give_more_than_rice_and_meat() -> None:
    # A supplier's text: little or none is no fault, fruit and vegetables give more.
    for juicy in ("fruit", "vegetable"):
        assert liquid(10, {juicy: 1.0}).expected_l > 0.4
    for dry in ("grain", "paper", "meat"):
        assert liquid(10, {dry: 1.0}).expected_l < 0.1


@pytest.mark.parametrize(
    ("drained_l", "word"), [(0.0, "little"), (0.1, "little"), (0.5, "usual"), (1.2, "much")]
)
def test_what_was_drained_is_held_against_it(drained_l: float, word: str) -> None:
    # 10 kg of fruit and vegetables: about 0.6 L, and no more than 100 mL to the kilogram.
    found = liquid(10, {"fruit": 0.5, "vegetable": 0.5}, drained_l=drained_l)
    assert found.drained == word
    assert len(found.lines) == 2


def test_dry_scraps_give_none_and_nobody_wonders() -> None:
    assert liquid(10, {"grain": 1.0}, drained_l=0).drained == "usual"
    with pytest.raises(Refused, match="came off"):
        liquid(10, drained_l=-1)


def test_no_scraps_no_answer() -> None:
    with pytest.raises(Refused):
        liquid(0)
