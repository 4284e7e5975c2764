"""Signs, alone and together, against the trade's tables of troubles."""

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.causes import CAUSES, NOTHING
from handlers.practice.figure import Refused
from handlers.practice.signs import SIGNS, signs_named
from handlers.practice.trouble import GOOD, Verdict, trouble


def test_the_signs_are_those_that_the_reading_writes() -> None:
    # The words of `python -m bot read`, as its contract lists them.
    contract = (
        "white_mould green_mould black_mould other_mould sour rotten ammonia alcohol wet dry "
        "no_liquid much_liquid insects rodents gas warm cold"
    )
    assert contract.split() == list(SIGNS)


@pytest.mark.parametrize(
    ("signs", "likeliest", "verdict"),
    [
        # Footer 2013 ch. 4 and booklets: white growth and a sour smell are as it should be.
        (["white_mould"], NOTHING, "good"),
        (["sour"], NOTHING, "good"),
        (["sour", "white_mould"], NOTHING, "good"),
        (["alcohol"], NOTHING, "good"),
        # A NZ supplier: no liquid is normal.
        (["no_liquid"], NOTHING, "good"),
        (["sour", "much_liquid"], NOTHING, "good"),
        # Footer 2013 ch. 6: a rotten smell is too little starter, a leaking lid, no draining.
        (["rotten"], "too little starter", "mend"),
        (["rotten", "much_liquid"], "too wet, or not drained", "mend"),
        (["rotten", "wet"], "too wet, or not drained", "mend"),
        # Green or black growth: air got in, or too wet.
        (["green_mould"], "air gets in", "mend"),
        (["black_mould"], "air gets in", "mend"),
        (["green_mould", "rotten"], "air gets in", "give up"),
        (["black_mould", "wet"], "too wet, or not drained", "mend"),
        # Habit of the trade.
        (["insects"], "flies laid eggs on the scraps", "mend"),
        (["insects", "green_mould"], "air gets in", "mend"),
        (["gas"], "yeasts make gas", "mend"),
        (["gas", "alcohol"], "yeasts make gas", "mend"),
        (["warm"], "too warm", "mend"),
        (["cold"], "too cold, so it is slow", "mend"),
        (["dry", "no_liquid"], "too dry", "mend"),
        (["rodents"], "animals can get at it", "mend"),
    ],
)
def test_signs_and_their_likeliest_cause(
    signs: list[str], likeliest: str, verdict: Verdict
) -> None:
    found = trouble(signs)
    assert found.causes[0].cause == likeliest
    assert found.verdict == verdict


def test_ammonia_is_protein_or_starter() -> None:
    causes = [cause.cause for cause in trouble(["ammonia"]).causes[:2]]
    assert set(causes) == {"too little starter", "too much meat, fish or dairy for its starter"}


def test_a_week_after_the_remedy_a_rotten_bin_is_given_up() -> None:
    # A South African supplier: if it is still rotten after seven days, bury it.
    assert trouble(["rotten"]).verdict == "mend"
    given_up = trouble(["rotten"], treated=True)
    assert given_up.verdict == "give up"
    assert "bury it now" in given_up.discard
    assert trouble(["white_mould"], treated=True).verdict == "good"


@pytest.mark.parametrize(
    ("ph", "words"),
    # 21 CFR 114.3: acid foods reach 4.6; well fermented silage 3.7 to 4.2.
    [(3.8, "is sour enough"), (4.3, "nearly sour enough"), (5.0, "not sour yet")],
)
def test_a_ph_is_read_against_the_limit_for_acid_foods(ph: float, words: str) -> None:
    assert any(words in line for line in trouble([], ph=ph).lines)


def test_what_is_not_sour_yet_is_not_called_good() -> None:
    assert trouble([], ph=5.0).verdict == "mend"
    assert trouble(["white_mould"], ph=5.0).verdict == "mend"
    assert "Carry on." not in trouble(["white_mould"], ph=5.0).lines
    assert trouble(["white_mould"], ph=3.8).verdict == "good"


@pytest.mark.parametrize(
    ("words", "signs"),
    [
        ("white_mould,sour", ["white_mould", "sour"]),
        ("White mold, vinegar", ["white_mould", "sour"]),
        ("rotten wet", ["rotten", "wet"]),
        ("green fuzz and maggots", ["green_mould", "insects"]),
        ("fruit flies; bulging lid", ["insects", "gas"]),
        ("purple haze", ["purple haze"]),
        (" , ", []),
    ],
)
def test_signs_in_other_words(words: str, signs: list[str]) -> None:
    assert signs_named(words) == signs


@pytest.mark.parametrize(
    ("celsius", "likeliest"),
    [(8, "too cold, so it is slow"), (38, "too warm"), (20, NOTHING)],
)
def test_a_temperature_is_a_sign(celsius: float, likeliest: str) -> None:
    assert trouble([], celsius=celsius).causes[0].cause == likeliest


@pytest.mark.parametrize(
    ("sign", "words"),
    [
        ("green_mould", "mask"),
        ("rodents", "glove"),
        ("gas", "never ferment in glass"),
        ("much_liquid", "raw waste"),
    ],
)
def test_where_harm_is_possible_there_is_one_caution(sign: str, words: str) -> None:
    found = trouble([sign])
    assert words in found.care
    assert found.lines[-1] == found.care


def test_mouldy_scraps_are_lifted_out_and_good_ones_stay() -> None:
    assert "bury those 20 cm deep" in trouble(["green_mould"]).discard
    assert trouble(["white_mould"]).discard == ""


def test_what_is_no_sign_is_refused() -> None:
    with pytest.raises(Refused, match="no sign"):
        trouble(["purple"])
    with pytest.raises(Refused, match="see or smell"):
        trouble([])
    with pytest.raises(Refused, match="between 0 and 14"):
        trouble(["rotten"], ph=15)


@given(st.sets(st.sampled_from(SIGNS), min_size=1))
def test_any_signs_get_causes_in_order(signs: set[str]) -> None:
    found = trouble(signs)
    weights = [cause.weight for cause in found.causes]
    assert weights == sorted(weights, reverse=True)
    assert 0 < sum(weights) <= 1 + 1e-9
    assert found.lines


@given(st.sets(st.sampled_from(sorted(set(SIGNS) - GOOD.keys())), min_size=1), st.booleans())
def test_nothing_foul_is_called_good(signs: set[str], treated: bool) -> None:
    if signs & {"rotten", "ammonia", "green_mould", "black_mould", "insects", "rodents"}:
        found = trouble(signs, treated=treated)
        assert found.verdict != "good"
        assert all(cause.cause != NOTHING for cause in found.causes)


def test_every_sign_belongs_to_a_cause_and_no_two_causes_are_alike() -> None:
    assert {sign for _, signs in CAUSES for sign in signs} == set(SIGNS)
    for (one, _), (other, _) in combinations(CAUSES, 2):
        assert one.cause != other.cause
        assert one.do != other.do


@pytest.mark.parametrize("celsius", [-100.0, 80.0, 800.0])
def test_no_bin_is_that_cold_or_hot(celsius: float) -> None:
    with pytest.raises(Refused, match="°C or °F"):
        trouble([], celsius=celsius)


def test_a_ph_smells_of_nothing() -> None:
    # 21 CFR 114.3: 4.6; maize silage 3.7 to 4.2 (Kung and Shaver).
    assert trouble([], ph=3.8).lines == ("A pH of 3.8 is sour enough.",)
    assert trouble(["sour"], ph=3.8).lines[0].startswith("A pickled, sour smell")
    assert not any("Carry on" in line for line in trouble([], ph=4.3).lines)


def test_what_is_given_up_is_not_mended_as_well() -> None:
    lines = trouble(["rotten"], treated=True).lines
    assert lines[0].startswith("That is too far gone to mend: most likely too little starter")
    assert lines[1].startswith("Give this bin up: gloves on")
    assert len(lines) == 2


def test_maggots_in_foul_scraps_came_from_flies() -> None:
    found = trouble(["insects", "rotten"])
    assert found.causes[0].cause == "flies laid eggs on the scraps"
