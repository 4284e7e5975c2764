"""Dilutions against the trade's statements, worked out by hand."""

from collections.abc import Mapping

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from handlers.practice.dilution import PARTS, USES, Use, dilute
from handlers.practice.dilution_words import parts_in, parts_said, use_named
from handlers.practice.figure import Refused
from handlers.practice.units import LITRES

US_SPOON = LITRES["us_tablespoon"] * 1000


@pytest.mark.parametrize(
    ("liquid_ml", "water_l", "parts", "source"),
    [
        (US_SPOON, LITRES["us_gallon"], 256.0, "NIST HB 44: 256 tablespoons to the US gallon"),
        (30, 5, 166.7, "a NZ supplier's '1:100'"),
        (2 * US_SPOON, 5, 169.1, "the same with US spoons"),
        (40, 5, 125.0, "the same with Australian spoons"),
        (5, 1, 200.0, "a US newspaper: 1 tsp to the litre"),
        (LITRES["us_teaspoon"] * 1000, 1, 202.9, "the same with a US teaspoon"),
        (100, 10, 100.0, "by definition"),
    ],
)
def test_what_is_taught_turned_into_its_true_ratio(
    liquid_ml: float, water_l: float, parts: float, source: str
) -> None:
    assert dilute(liquid_ml=liquid_ml, water_l=water_l).parts == pytest.approx(parts, abs=0.05), (
        source
    )


@pytest.mark.parametrize(
    ("parts", "per_litre", "per_us_gallon", "spoons"),
    # Litres and gallons by NIST: mL to the litre, mL and tablespoons to the US gallon of water.
    [
        (100, 10.0, 37.85, 2.560),
        (200, 5.0, 18.93, 1.280),
        (256, 3.91, 14.79, 1.0),
        (300, 3.33, 12.62, 0.853),
        (500, 2.0, 7.57, 0.512),
        (1000, 1.0, 3.79, 0.256),
    ],
)
def test_the_table_of_mixes(
    parts: float, per_litre: float, per_us_gallon: float, spoons: float
) -> None:
    assert dilute(water_l=1, parts=parts).liquid_ml == pytest.approx(per_litre, abs=0.005)
    gallon = dilute(water_l=LITRES["us_gallon"], parts=parts).liquid_ml
    assert gallon == pytest.approx(per_us_gallon, abs=0.005)
    assert gallon / US_SPOON == pytest.approx(spoons, abs=0.001)


def test_a_can_filled_up_is_not_a_can_poured_on() -> None:
    # One part in 101 of a 10 L mix is 99.0 mL; 10 L of water take 100 mL and make 10.1 L.
    assert dilute(total_l=10, parts=100).liquid_ml == pytest.approx(99.0099, abs=0.001)
    poured = dilute(water_l=10, parts=100)
    assert (poured.liquid_ml, poured.total_l) == pytest.approx((100, 10.1))
    assert dilute(total_l=10, parts=parts_in(100)).liquid_ml == pytest.approx(100)


def test_liquid_on_hand() -> None:
    found = dilute(liquid_ml=250, use="pot")
    assert (found.water_l, found.total_l) == pytest.approx((125, 125.25))
    assert dilute(liquid_ml=250, parts=100).total_l == pytest.approx(25.25)


def test_thinning_twice_by_ten_is_one_in_121() -> None:
    first = dilute(liquid_ml=10, parts=10)
    second = dilute(liquid_ml=first.total_l * 1000, parts=10)
    assert second.total_l * 1000 / 10 == pytest.approx(121)


def test_an_amount_alone_is_for_established_beds() -> None:
    found = dilute(water_l=9)
    assert found.use == "bed"
    assert (found.liquid_ml, found.parts) == pytest.approx((90, 100))


@pytest.mark.parametrize(
    ("words", "use"),
    [
        ("established beds", "bed"),
        ("house-plants", "pot"),
        ("house plants", "pot"),
        ("tomatoes", "bed"),
        ("seedlings in pots", "seedling"),
        ("the garden", "bed"),
        ("Leaves", "leaf"),
        ("kitchen drain", "drain"),
    ],
)
def test_uses_by_their_words(words: str, use: Use) -> None:
    assert use_named(words) == use


def test_tender_plants_get_no_stronger_mix_than_beds() -> None:
    # Footer 2013 ch. 8: 100 to 1 for soil, 500 to 1 on leaves; the trade 1:500 to 1:1000 for pots.
    strength = [PARTS[use].value for use in ("drain", "bed", "pot", "seedling")]
    assert strength == sorted(strength)
    assert PARTS["bed"].value == 100
    assert PARTS["leaf"].value == 500


def test_drains_get_it_undiluted() -> None:
    found = dilute(liquid_ml=500, use="drain")
    assert (found.water_l, found.parts, found.total_l) == (0, 0, 0.5)
    assert "Undiluted" in found.lines[0]
    with pytest.raises(Refused, match="how much liquid"):
        dilute(water_l=5, use="drain")


def test_a_spoon_to_the_gallon_is_told_kindly_and_truly() -> None:
    lines = dilute(liquid_ml=US_SPOON, water_l=LITRES["us_gallon"], tablespoon="us").lines
    assert lines[0].endswith("1:256.")
    assert lines[1].startswith("That is milder than 1:100")
    assert "2½ US tablespoons" in lines[1]
    assert len(dilute(water_l=9, parts=100).lines) == 1
    # Whoever asks for a mild mix gets it without a word.
    assert len(dilute(water_l=9, parts=300).lines) == 1


def test_a_ratio_that_a_mix_is_not_is_put_right_kindly() -> None:
    # NIST HB 44: 256 tablespoons to the US gallon; 1:100 takes 2.56 of them.
    found = dilute(liquid_ml=US_SPOON, water_l=LITRES["us_gallon"], parts=100, tablespoon="us")
    assert found.parts == pytest.approx(256)
    assert "often called 1:100, but it is 1:256" in found.lines[1]
    assert "2½ US tablespoons" in found.lines[1]
    assert len(dilute(liquid_ml=100, water_l=10, parts=100).lines) == 1


def test_the_remark_counts_in_the_spoons_of_who_asks() -> None:
    # 5 L at 1:100 are 50 mL: 3.33 spoons of 15 mL, 2.5 of 20 mL (AS 1325), 3.38 of 14.787 mL.
    metric = dilute(liquid_ml=30, water_l=5, tablespoon="metric")
    assert "3½ tablespoons" in metric.remark
    assert "2½ Australian" in dilute(liquid_ml=30, water_l=5, tablespoon="au").remark


def test_without_water_it_is_for_drains_only() -> None:
    with pytest.raises(Refused, match="for drains only"):
        dilute(liquid_ml=500, water_l=0)
    with pytest.raises(Refused, match="for drains only"):
        dilute(liquid_ml=500, total_l=0.5)
    with pytest.raises(Refused, match="for drains only"):
        dilute(liquid_ml=500, water_l=0, parts=100)
    assert dilute(liquid_ml=500, water_l=0, use="drain").parts == 0


def test_in_a_strong_mix_the_other_reading_is_named() -> None:
    # By definition: 1 part to 3 parts of water is 1 in 4 of the mix.
    found = dilute(water_l=3, parts=3)
    assert found.one_in == pytest.approx(4)
    assert "some call it 1:4" in found.lines[1]
    assert not any("some call it" in line for line in dilute(water_l=3, parts=100).lines)


def test_liquid_on_hand_is_enough_for_so_many_cans() -> None:
    # 250 mL at 1:100 make 25.25 L, 2.5 cans of 10 L.
    found = dilute(liquid_ml=250)
    assert found.cans == pytest.approx(25.25 / 10)
    assert "2.5 cans" in found.lines[-1]


@pytest.mark.parametrize(
    ("said", "parts"),
    [
        ("100", 100),
        ("1:100", 100),
        ("1 to 100", 100),
        ("1/100", 100),
        ("2:100", 50),
        ("1%", 99),
        ("0.5 percent", 199),
        ("1 part in 100", 99),
        ("100:1", 100),
        ("100 to 1", 100),
        ("1 part to 100", 100),
        ("1 part to 100 parts of water", 100),
        ("100 parts", 100),
        ("1:1", 1),
        ("1 in 100", 99),
    ],
)
def test_ratios_as_they_are_said(said: str, parts: float) -> None:
    assert parts_said(said) == pytest.approx(parts)


@pytest.mark.parametrize("said", ["", "1:0 of", "a bit", "1:", "1 in", "1:1:1"])
def test_what_is_no_ratio_is_refused(said: str) -> None:
    with pytest.raises(Refused):
        parts_said(said)


def test_a_group_may_take_its_own_ratio_for_beds() -> None:
    # A South African supplier says 1:300.
    theirs: Mapping[Use, float] = {"bed": 300}
    found = dilute(water_l=9, usual=theirs)
    assert found.parts == pytest.approx(300)
    assert found.chosen == ("bed_parts",)
    assert dilute(water_l=9, usual=theirs, use="pot").parts == pytest.approx(500)
    assert dilute(water_l=9, usual={"pot": 1000}, use="pot").parts == pytest.approx(1000)
    # A ratio that was said is nobody's choice but the speaker's.
    assert dilute(water_l=9, parts=200, usual=theirs).chosen == ()


def test_a_strong_mix_is_pointed_out() -> None:
    assert "stronger than the usual 1:100" in dilute(liquid_ml=100, water_l=2).lines[1]
    assert "stronger than the usual 1:500" in dilute(liquid_ml=9, water_l=1, use="leaf").lines[1]


@pytest.mark.parametrize(
    "said",
    [
        {},
        {"parts": 100.0},
        {"liquid_ml": 0.0, "parts": 100.0},
        {"liquid_ml": -5.0, "parts": 100.0},
        {"water_l": -5.0, "parts": 100.0},
        {"water_l": 1e9, "parts": 100.0},
        {"total_l": 0.0, "parts": 100.0},
        {"water_l": 1.0, "parts": -1.0},
        {"liquid_ml": 100.0, "parts": 0.0},
        {"liquid_ml": 100.0, "water_l": 1.0, "parts": 0.0},
        {"total_l": 1.0, "parts": 0.0},
        {"water_l": 1.0, "parts": 1e9},
        {"water_l": float("nan"), "parts": 100.0},
        {"liquid_ml": 100.0, "water_l": 10.0, "total_l": 12.0},
        {"liquid_ml": 2000.0, "total_l": 1.0},
        {"water_l": 2.0, "total_l": 2.0},
        {"water_l": 3.0, "total_l": 2.0},
        {"water_l": 0.0, "parts": 100.0},
        {"liquid_ml": 0.001, "water_l": 1000.0},
    ],
)
def test_what_cannot_be_mixed_is_refused(said: dict[str, float]) -> None:
    with pytest.raises(Refused) as refused:
        dilute(
            liquid_ml=said.get("liquid_ml"),
            water_l=said.get("water_l"),
            total_l=said.get("total_l"),
            parts=said.get("parts"),
        )
    assert str(refused.value).endswith(".")


@pytest.mark.parametrize("words", ["", "the cat", "1:100"])
def test_an_unknown_use_is_asked_for(words: str) -> None:
    with pytest.raises(Refused, match="seedlings"):
        use_named(words)


def test_one_in_less_than_one_is_nothing() -> None:
    with pytest.raises(Refused):
        parts_in(0.5)


@given(st.floats(min_value=0.1, max_value=1e4), st.floats(min_value=1, max_value=5000))
def test_any_two_figures_give_the_same_mix(liquid_ml: float, parts: float) -> None:
    assume(liquid_ml * parts / 1000 < 19000)
    mix = dilute(liquid_ml=liquid_ml, parts=parts)
    again = (
        dilute(liquid_ml=mix.liquid_ml, water_l=mix.water_l),
        dilute(liquid_ml=mix.liquid_ml, total_l=mix.total_l),
        dilute(water_l=mix.water_l, total_l=mix.total_l),
        dilute(water_l=mix.water_l, parts=mix.parts),
        dilute(total_l=mix.total_l, parts=mix.parts),
    )
    for other in again:
        for name in ("liquid_ml", "water_l", "total_l", "parts"):
            assert getattr(other, name) == pytest.approx(getattr(mix, name), rel=1e-6)


@given(st.floats(min_value=0.1, max_value=1000), st.sampled_from(USES))
def test_liquid_and_water_make_the_mix(liquid_ml: float, use: Use) -> None:
    mix = dilute(liquid_ml=liquid_ml, use=use)
    assert mix.liquid_ml / 1000 + mix.water_l == pytest.approx(mix.total_l)


def test_one_word_on_a_ratio_is_enough() -> None:
    found = dilute(liquid_ml=US_SPOON, water_l=LITRES["us_gallon"], parts=100, tablespoon="us")
    assert found.remark.count("1:100 takes") == 1
