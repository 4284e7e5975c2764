"""The door to the arithmetic: a topic and values in words, an answer with units in its names."""

import json
from contextlib import suppress

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from handlers.practice.cautions import CAUTIONS
from handlers.practice.figure import Refused
from handlers.practice.reckon import reckon
from handlers.practice.topics import TOPICS
from handlers.practice.units import System

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
def test_a_caution_is_said_once_where_harm_is_possible(topic: str) -> None:
    lines = reckon(topic, EXAMPLES[topic]).lines
    said = [line for line in lines if line in CAUTIONS.values()]
    assert len(said) == (topic in {"dilution", "trench", "bed", "starter", "liquid"})


@pytest.mark.parametrize("topic", EXAMPLES)
def test_the_working_is_short_enough_for_a_phone(topic: str) -> None:
    why = reckon(topic, EXAMPLES[topic]).why
    assert len(why) <= 12
    assert all(len(line) <= 180 for line in why)
    sources = [line.rpartition(": ")[2] for line in why if ", published: " in line]
    assert len(sources) == len(set(sources))


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
        (
            "starter",
            {"mass": "25 lb", "recipe": "ten-pounds"},
            "us",
            "water_ml",
            5914.7,
            "25 US cups",
        ),
        ("starter", {"mass": "10kg", "moisture": "25%"}, "us", "add_water_ml", 1538.46, "by hand"),
        ("trench", {"volume": "5 gal", "tub": "yes"}, "us", "mix_l", 56.78, "1 to 2 of 18.93 L"),
        ("trench", {"mass": "14kg", "bins": "3"}, "us", "volume_l", 51.0, "at 0.70 kg/L less 15 %"),
        ("liquid", {"mass": "10kg"}, "metric", "high_l", 1.0, "trade: 100 mL to the kg"),
        ("liquid", {"volume": "10 L"}, "metric", "high_l", 0.455, "EPA 2016: 3.8 lb/US gal"),
        ("starter", {"bran": "10 cups"}, "us", "molasses_ml", 14.7868, "NIST HB 44: 1 tablespoon"),
        ("starter", {"bran": "580 g", "recipe": "10:1"}, "us", "molasses_ml", 40.72, "58 g, USDA"),
        (
            "starter",
            {"bran": "25 lb", "recipe": "ten-pounds"},
            "us",
            "water_ml",
            5914.7,
            "25 US cups",
        ),
        ("trench", {"tub": "60 L"}, "metric", "volume_l", 16.0, "1 + 2 parts and a quarter more"),
        ("trench", {"bins": "2"}, "metric", "volume_l", 40.0, "two bins of 20 L"),
        ("trench", {"volume": "25L", "soil_parts": "2.5"}, "us", "length_m", 1.25, "by hand"),
        ("bed", {"area": "4x8ft", "limit": "250"}, "us", "most_kg", 10.62, "UK nitrate zones"),
        ("bins", {"rate": "19 kg/week", "capacity": "20L"}, "metric", "bins", 4, "by hand"),
        ("bins", {"rate": "1 kg a day", "capacity": "20L"}, "metric", "fill_days", 14, "14 kg"),
        ("bins", {"rate": "10 L per week"}, "metric", "rate_kg_week", 4.553, "EPA 2016"),
        ("bins", {"fill_days": "7", "ferment_days": "14"}, "us", "bins", 3, "(7 + 14) / 7"),
        ("bins", {"fill_days": "7", "mass": "14kg"}, "us", "filled_share", 0.85, "0.70 kg/L"),
        ("bins", {"mass": "7kg", "capacity": "20L"}, "us", "filled_share", 0.425, "0.70 kg/L"),
        ("carbon", {"rice": "1"}, "us", "cn", 32.87, "USDA SR28 20045"),
        (
            "moisture",
            {"rice": "0.4kg", "carrot": "0.4kg", "chicken": "0.2kg"},
            "us",
            "moisture",
            0.7574,
            "USDA SR28, by hand",
        ),
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


def test_an_empty_bin_gets_its_bed_first() -> None:
    bed = reckon("dose", {"empty": "yes", "capacity": "20L"}).answer
    assert bed == reckon("first-bed", {"capacity": "20L"}).answer
    both = reckon("dose", {"mass": "2kg", "empty": "yes", "capacity": "20L"}).answer
    assert both["first_bed_ml"] == bed["starter_ml"]
    assert both["starter_ml"] == reckon("dose", {"mass": "2kg"}).answer["starter_ml"]


def test_a_tub_that_is_too_small_says_what_it_takes() -> None:
    with pytest.raises(Refused, match="takes 16 L of ferment"):
        reckon("trench", {"tub": "60 L", "volume": "19 L"})
    fits = reckon("trench", {"tub": "90 L", "volume": "19 L"}).answer
    assert fits["soil_l"] == pytest.approx(38)


def test_the_outlook_tells_when_a_batch_must_be_begun() -> None:
    given = {"capacity": "20L", "layers": "2026-03-01:2kg, 2026-03-04:4.4 L", "starter": "0.3 kg"}
    found = reckon("outlook", given).answer
    assert found["full_from"] < found["full_on"] < found["full_to"]  # type: ignore[operator]
    assert found["begin_batch_by"] < found["starter_out_on"]  # type: ignore[operator]
    # Without a day it is asked on that of the last layer.
    assert found == reckon("outlook", {**given, "today": "2026-03-04"}).answer
    by_volume = reckon("outlook", {**given, "starter": "5 cups"}).answer
    assert by_volume["starter_out_on"] > found["starter_out_on"]  # type: ignore[operator]
    with pytest.raises(Refused, match="write 2026-03-02:2kg"):
        reckon("outlook", {**given, "layers": "2026-03-01"})


def test_a_trench_of_a_kilometre_is_not_dug() -> None:
    with pytest.raises(Refused, match="dig wider or deeper"):
        reckon("trench", {"volume": "5000L", "width": "10cm", "depth": "20cm"})
    with pytest.raises(Refused):
        reckon("trench", {"volume": "20L", "width": "3km"})


def test_an_unknown_topic_names_those_there_are() -> None:
    with pytest.raises(Refused, match="dose, first-bed, dilution"):
        reckon("weather", {})


STRANGE = (
    *("", " ", "-1", "0", "0 kg", "0 L", "-2 kg", "80C", "1000C", "3 km", "1:0", "0:1", "nan"),
    *("inf kg", "∞ L", "1e-9", "1/0 kg", "9999-12-31", "0001-01-01", "2026-13-45", "yes", "🍌"),
    *("0.0000001 g", "999999999 kg", "2026-03-20:0kg", "rotten,ammonia,rodents", "a" * 300),
)


@settings(max_examples=300)
@given(st.data())
def test_no_value_is_too_strange(data: st.DataObject) -> None:
    topic = data.draw(st.sampled_from(sorted(TOPICS)))
    names = st.sampled_from([*TOPICS[topic].names, "meat", "units"])
    given_values = data.draw(st.dictionaries(names, st.sampled_from(STRANGE), max_size=4))
    with suppress(Refused):
        found = reckon(topic, {**EXAMPLES[topic], **given_values})
        assert json.dumps(found.answer, allow_nan=False)
