"""Named values as people write them: other words, shares, layers, days."""

import pytest

from handlers.practice.dose import dose
from handlers.practice.figure import Refused
from handlers.practice.reckon import reckon


def test_what_is_left_unstated_is_mixed_scraps() -> None:
    found = reckon("dose", {"mass": "2kg", "meat": "70%"}).answer
    by_hand = dose(mass_kg=2, materials={"meat": 0.7, "mixed": 0.3})
    assert found["starter_ml"] == pytest.approx(by_hand.starter_ml, abs=1e-5)
    assert (
        reckon("dose", {"mass": "2kg", "mixed": "0.2"}).answer
        == reckon("dose", {"mass": "2kg"}).answer
    )


def test_shares_over_the_whole_are_refused() -> None:
    with pytest.raises(Refused, match="more than the whole"):
        reckon("dose", {"mass": "2kg", "meat": "0.7", "fish": "0.7"})


@pytest.mark.parametrize(
    ("values", "millilitres"),
    [
        ({"wetness": "wet"}, 1.25),
        ({"wetness": "soaking"}, 1.5),
        ({"trouble": "rotten"}, 1.5),
        ({"trouble": "white mould"}, 1.0),
        ({"trouble": "none"}, 1.0),
        ({"wetness": "75%"}, 1.25),
        ({"wetness": "dry"}, 1.0),
        ({"trouble": "yes"}, 1.5),
        ({"trouble": "no"}, 1.0),
    ],
)
def test_wet_scraps_and_trouble_raise_the_dose(values: dict[str, str], millilitres: float) -> None:
    plain = dose(mass_kg=2).starter_ml
    found = reckon("dose", {"mass": "2kg", **values}).answer["starter_ml"]
    assert found == pytest.approx(plain * millilitres, rel=1e-5)


@pytest.mark.parametrize(
    ("values", "words"),
    [
        ({"trouble": "maybe"}, "yes or no"),
        ({"habit": "handful"}, "spoon or weight"),
        ({"tablespoon": "soup"}, "us, metric, au"),
        ({"wetness": "purple"}, "dry, ordinary, wet or soaking"),
        ({"wetness": "2"}, "more than the whole"),
    ],
)
def test_words_that_a_topic_does_not_know(values: dict[str, str], words: str) -> None:
    with pytest.raises(Refused, match=words):
        reckon("dose", {"mass": "2kg", **values})


@pytest.mark.parametrize(
    ("topic", "said", "meant"),
    [
        ("dose", {"weight": "2kg", "cheese": "0.5"}, {"mass": "2kg", "dairy": "0.5"}),
        ("dose", {"mass_kg": "2"}, {"mass": "2kg"}),
        ("dose", {"volume_l": "4"}, {"volume": "4 L"}),
        ("dose", {"meat": "1kg", "bread": "1 kg"}, {"mass": "2kg", "meat": "50%", "grain": "0.5"}),
        ("dose", {"mass": "2kg", "meat": "1 kg"}, {"mass": "2kg", "meat": "0.5"}),
        ("dose", {"mass": "2kg", "bread": "0.2", "rice": "0.3"}, {"mass": "2kg", "grain": "0.5"}),
        ("dose", {"mass": "2kg", "units": "us"}, {"mass": "2kg", "tablespoon": "us"}),
        (
            "days",
            {"sealed_on": "20 March 2026", "temp": "60F"},
            {"sealed": "2026-03-20", "celsius": "15.5556"},
        ),
        (
            "days",
            {"sealed": "2026-03-20", "temp_f": "50"},
            {"sealed": "2026-03-20", "celsius": "10"},
        ),
        ("starter", {"mass": "5kg"}, {"bran": "5kg"}),
        ("starter", {"volume": "5 L"}, {"bran": "5 L"}),
        (
            "starter",
            {"bran": "5kg", "recipe": "ten parts"},
            {"bran": "5kg", "recipe": "ten-to-one"},
        ),
        ("bins", {"fill": "1 week"}, {"fill_days": "7"}),
        ("trouble", {"signs": "white mold + vinegar"}, {"signs": "white_mould,sour"}),
        ("bed", {"area_m2": "3"}, {"area": "3 m2"}),
        ("DOSE", {"Mass": "2KG"}, {"mass": "2kg"}),
    ],
)
def test_other_words_for_the_same(topic: str, said: dict[str, str], meant: dict[str, str]) -> None:
    assert reckon(topic, said).answer == reckon(topic.lower(), meant).answer


def test_one_thing_said_twice_is_asked_about() -> None:
    with pytest.raises(Refused, match="twice"):
        reckon("dose", {"mass": "2kg", "weight": "3kg"})
    with pytest.raises(Refused, match="all as shares or all as weights"):
        reckon("dose", {"meat": "1kg", "fish": "0.3"})
    with pytest.raises(Refused, match="does not take “rocks_kg”"):
        reckon("dose", {"rocks_kg": "2"})
    with pytest.raises(Refused, match="weigh something"):
        reckon("dose", {"meat": "0kg", "fish": "0 g"})


def test_whole_days_are_whole() -> None:
    with pytest.raises(Refused, match="whole days"):
        reckon("days", {"sealed": "2026-03-20", "ferment_days": "10.5"})
    found = reckon("days", {"sealed": "2026-03-20", "ferment_days": "2 weeks"}).answer
    assert found["bury_by"] == "2026-04-03"


@pytest.mark.parametrize(
    ("topic", "example"),
    [
        ("bed", "area=4x8ft"),
        ("liquid", "mass=10kg"),
        ("outlook", "capacity=20L"),
        ("allowed", "what=bones"),
    ],
)
def test_what_is_missing_is_asked_for(topic: str, example: str) -> None:
    with pytest.raises(Refused, match=example):
        reckon(topic, {})


def test_layers_are_read_with_either_decimal_sign() -> None:
    given = {"capacity": "20L", "today": "2026-03-10"}
    comma = reckon("outlook", {**given, "layers": "2026-03-01:1,5kg,2026-03-04:2kg"})
    point = reckon("outlook", {**given, "layers": "2026-03-01:1.5kg; 2026-03-04:2000 g"})
    assert comma.answer == point.answer
    assert comma.answer["filled_share"] == pytest.approx(3.5 / (20 * 0.7 / 0.85), abs=1e-6)
