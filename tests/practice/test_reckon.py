"""The door to the arithmetic: a topic and values in words, an answer with units in its names."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.dose import dose
from handlers.practice.figure import Refused
from handlers.practice.reckon import TOPICS, reckon
from handlers.practice.units import SYSTEMS, System

EXAMPLES: dict[str, dict[str, str]] = {
    "dose": {"mass": "2kg", "meat": "0.7"},
    "first-bed": {"capacity": "20 L"},
    "dilution": {"water": "9L", "parts": "100"},
    "days": {"sealed": "2026-03-20"},
    "trench": {"volume": "20L"},
    "bed": {"area": "4x8ft"},
    "starter": {"mass": "4.5kg"},
    "moisture": {"fruit": "1"},
    "carbon": {"grain": "50%"},
    "bins": {"people": "4", "capacity": "20L"},
    "liquid": {"mass": "10 kg"},
    "outlook": {"capacity": "20L", "today": "2026-03-10", "layers": "2026-03-01:2kg"},
    "trouble": {"signs": "rotten,wet"},
    "allowed": {"what": "big bones"},
}
FIELDS = {
    "dose": {"volume_l", "starter_ml", "starter_g", "tablespoons", "habit", "reason"},
    "first-bed": {"starter_ml", "starter_g", "tablespoons"},
    "dilution": {"liquid_ml", "water_l", "total_l", "parts"},
    "days": {"bury_from", "bury_by", "late_after", "plant_from", "plant_usual"},
    "trench": {"length_m", "soil_l", "mix_l", "cover_m", "mound_m"},
    "bed": {"mass_kg", "nitrogen_g", "nitrogen_kg_ha", "limit_kg_ha", "used_share"},
    "starter": {
        "bran_kg",
        "bran_l",
        "molasses_ml",
        "culture_ml",
        "water_ml",
        "moisture",
        "yield_kg",
    },
    "moisture": {"moisture", "cn", "nitrogen_share"},
    "carbon": {"moisture", "cn", "nitrogen_share"},
    "bins": {"bins", "fill_days"},
    "liquid": {"expected_l", "low_l", "high_l"},
    "outlook": {"full_on", "full_from", "full_to", "filled_share"},
    "trouble": {"causes", "verdict"},
    "allowed": {"allowed", "reason"},
}


def test_every_topic_has_an_example() -> None:
    assert set(EXAMPLES) == set(FIELDS) == set(TOPICS)


@pytest.mark.parametrize("topic", EXAMPLES)
def test_a_topic_answers_with_its_fields_lines_and_reasons(topic: str) -> None:
    found = reckon(topic, EXAMPLES[topic])
    assert found.answer.keys() >= FIELDS[topic]
    assert found.lines
    assert found.why


@pytest.mark.parametrize("topic", EXAMPLES)
def test_a_topic_refuses_what_it_does_not_take(topic: str) -> None:
    with pytest.raises(Refused, match="does not take “colour”"):
        reckon(topic, {**EXAMPLES[topic], "colour": "blue"})


@pytest.mark.parametrize("topic", EXAMPLES)
@pytest.mark.parametrize("value", ["", "blue", "-1", "9**9**9", "nan", "1e999 kg", "2 kg 3 L"])
def test_a_bad_value_gives_a_sentence_never_a_number(topic: str, value: str) -> None:
    if topic in {"allowed", "trouble"}:
        name = next(iter(EXAMPLES[topic]))
        if value == "2 kg 3 L" and topic == "allowed":
            return
    else:
        name = "celsius" if topic == "days" and value == "-1" else next(iter(EXAMPLES[topic]))
    if (topic, name, value) == ("days", "celsius", "-1"):
        return
    with pytest.raises(Refused) as refused:
        reckon(topic, {**EXAMPLES[topic], name: value})
    assert str(refused.value).endswith(".")
    assert "\n" not in str(refused.value)


@pytest.mark.parametrize(
    ("topic", "values", "units", "field", "value", "source"),
    [
        ("dilution", {"water": "9L"}, "metric", "liquid_ml", 90.0, "1:100 by definition"),
        ("dilution", {"water": "1 gal", "liquid": "1 tbsp"}, "us", "parts", 256.0, "NIST HB 44"),
        (
            "dilution",
            {"total": "10L", "parts": "1 in 100"},
            "metric",
            "liquid_ml",
            100.0,
            "by def.",
        ),
        ("dilution", {"total": "10L", "parts": "1:100"}, "metric", "liquid_ml", 99.0099, "by def."),
        (
            "dilution",
            {"liquid": "250ml", "use": "house plants"},
            "metric",
            "water_l",
            125.0,
            "trade",
        ),
        ("dose", {"mass": "2kg", "meat": "0.7", "habit": "weight"}, "us", "starter_g", 80.0, "4 %"),
        ("dose", {"mass": "2kg", "habit": "weight"}, "us", "tablespoons", 11.03, "USDA SR28 20077"),
        ("bed", {"area": "4x8ft"}, "us", "nitrogen_kg_ha", 117.73, "5 kg at 0.7 %, by hand"),
        ("bins", {"fill": "1 week"}, "metric", "bins", 3, "(7 + 14) / 7"),
        ("bins", {"fill": "3 d", "ferment": "3 weeks"}, "metric", "bins", 8, "(3 + 21) / 3"),
        ("starter", {"mass": "25 lb", "recipe": "cups"}, "us", "water_ml", 5914.7, "25 US cups"),
        ("starter", {"mass": "10kg", "moisture": "25%"}, "us", "add_water_ml", 1538.46, "by hand"),
        ("trench", {"volume": "5 gal", "tub": "yes"}, "us", "mix_l", 56.78, "1 to 2 of 18.93 L"),
        ("trench", {"mass": "14kg", "bins": "3"}, "us", "volume_l", 51.0, "at 0.70 kg/L less 15 %"),
        ("liquid", {"mass": "10kg"}, "metric", "high_l", 1.0, "trade: 100 mL to the kg"),
    ],
)
def test_answers_against_sources(
    topic: str, values: dict[str, str], units: System, field: str, value: float, source: str
) -> None:
    found = reckon(topic, values, units=units).answer[field]
    assert found == pytest.approx(value, rel=1e-3), source


def test_days_are_calendar_days() -> None:
    # Counted on a calendar, over 29 February 2028.
    found = reckon("days", {"sealed": "2028-02-20"}).answer
    assert found["bury_by"] == "2028-03-05"
    cold = reckon("days", {"sealed": "2028-02-20", "celsius": "50F", "soil": "8"}).answer
    assert cold["bury_by"] == "2028-04-02"


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


def test_an_unknown_topic_names_those_there_are() -> None:
    with pytest.raises(Refused, match="dose, first-bed, dilution"):
        reckon("weather", {})


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


def test_the_groups_units_choose_its_spoon() -> None:
    for units in SYSTEMS:
        spoon = reckon("dose", {"mass": "2kg"}, units=units).answer["tablespoon"]
        assert spoon == ("us" if units == "us" else "metric")
    australian = reckon("dose", {"mass": "2kg", "tablespoon": "australian"}).answer
    assert australian["starter_ml"] == pytest.approx(
        float(str(australian["tablespoons"])) * 20, rel=1e-5
    )


@given(st.floats(0.2, 20), st.sampled_from(SYSTEMS))
def test_units_change_no_answer(litres: float, units: System) -> None:
    spellings = {
        "metric": f"{litres:.6f} L",
        "us": f"{litres / 3.785411784:.9f} us gal",
        "imperial": f"{litres / 4.54609:.9f} imperial gallons",
    }
    found = [
        reckon("dose", {"volume": text}, units=units).answer["starter_ml"]
        for text in spellings.values()
    ]
    assert found == pytest.approx([found[0]] * 3, rel=1e-4)
