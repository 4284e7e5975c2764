"""The door to the arithmetic: a topic and values in words, an answer with units in its names."""

from dataclasses import fields

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.cautions import CAUTIONS
from handlers.practice.choices import OURS, WHY, Choices
from handlers.practice.dose import dose
from handlers.practice.figure import Refused
from handlers.practice.reckon import reckon
from handlers.practice.topics import TOPICS
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


def test_a_group_settles_for_itself_what_the_sources_leave_open() -> None:
    ours = Choices(
        habit="weight",
        recipe="ten-to-one",
        bed_parts=300,
        ferment_days=21,
        plant_days=28,
        soil_parts=1.5,
        limit_kg_ha=250,
    )
    assert set(WHY) == {field.name for field in fields(Choices)}
    assert reckon("dose", {"mass": "2kg"}, choices=ours).answer["starter_g"] == pytest.approx(40)
    assert reckon("starter", {"bran": "1kg"}, choices=ours).answer["recipe"] == "ten-to-one"
    assert reckon("dilution", {"water": "9L"}, choices=ours).answer["liquid_ml"] == pytest.approx(
        30
    )
    days = reckon("days", {"sealed": "2026-03-20"}, choices=ours).answer
    # Counted on a calendar: 21 days sealed, then 28 in the soil, the first three weeks the least.
    assert (days["bury_by"], days["plant_usual"]) == ("2026-04-10", "2026-05-08")
    tub = reckon("trench", {"volume": "10L", "tub": "yes"}, choices=ours).answer
    assert tub["soil_l"] == pytest.approx(15)
    assert reckon("bed", {"area": "4x8ft"}, choices=ours).answer["limit_kg_ha"] == 250
    # What is said comes before what was settled, and nothing is chosen then.
    assert not any(
        "our choice" in line for line in reckon("bed", {"area": "3m2", "limit": "250"}).why
    )
    assert any("our choice" in line for line in reckon("bed", {"area": "3m2"}).why)
    said = reckon("dose", {"mass": "2kg", "habit": "spoon"}, choices=ours).answer
    assert said == reckon("dose", {"mass": "2kg"}).answer


def test_the_defaults_are_the_figures_of_their_modules() -> None:
    # Choices of the craft: two weeks sealed, three in soil, 1:100, two parts of soil, 170 kg/ha.
    assert (OURS.ferment_days, OURS.plant_days, OURS.bed_parts) == (14, 21, 100)
    assert (OURS.soil_parts, OURS.limit_kg_ha, OURS.habit) == (2, 170, "spoon")


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


def test_whole_days_are_whole() -> None:
    with pytest.raises(Refused, match="whole days"):
        reckon("days", {"sealed": "2026-03-20", "ferment_days": "10.5"})
    found = reckon("days", {"sealed": "2026-03-20", "ferment_days": "2 weeks"}).answer
    assert found["bury_by"] == "2026-04-03"


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


@given(st.floats(5, 40), st.floats(0.22, 0.6), st.floats(0.15, 0.6))
def test_a_trench_is_the_same_in_feet_and_in_metres(
    litres: float, depth: float, width: float
) -> None:
    # NIST SP 811: an inch is 25.4 mm; NIST HB 44: a US gallon is 3.785411784 L.
    metric = {"volume": f"{litres:.9f} L", "depth": f"{depth:.9f} m", "width": f"{width:.9f}m"}
    american = {
        "volume": f"{litres / 3.785411784:.9f} gal",
        "depth": f"{depth / 0.0254:.9f} in",
        "width": f"{width / 0.3048:.9f} ft",
    }
    one = reckon("trench", metric).answer
    other = reckon("trench", american, units="us").answer
    for name in ("length_m", "soil_l", "mix_l", "cover_m", "mound_m"):
        assert one[name] == pytest.approx(other[name], rel=1e-6)


@given(st.floats(1, 50), st.floats(0, 5))
def test_a_bed_is_the_same_in_pounds_and_in_kilograms(area: float, had: float) -> None:
    # NIST SP 811: a pound is 0.45359237 kg, a square foot 0.09290304 m².
    one = reckon("bed", {"area": f"{area:.9f} m2", "had": f"{had:.9f} kg"}).answer
    american = {"area": f"{area / 0.09290304:.9f} sq ft", "had": f"{had / 0.45359237:.9f} lb"}
    other = reckon("bed", american, units="us").answer
    for name in ("mass_kg", "nitrogen_g", "nitrogen_kg_ha", "used_share"):
        assert one[name] == pytest.approx(other[name], rel=1e-6)
