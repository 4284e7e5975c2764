"""Choices of the craft told by their names, whatever is to be set."""

import pytest

from handlers.reading.acts import Set
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("set the ferment days to twelve", [("ferment days", "12")]),
        ("change the fermenting time from 12 to 16 days", [("ferment days", "16")]),
        ("please set ferment days to -4", [("ferment days", "-4")]),
        ("set the ferment days to minus nine", [("ferment days", "-9")]),
        ("set the ferment days to the usual", [("ferment days", "the usual")]),
        ("raise the planting days to five weeks", [("planting days", "35")]),
        ("set the nitrogen limit to two hundred", [("nitrogen limit", "200")]),
        ("set the starter recipe to nine to one", [("recipe", "nine to one")]),
        ("set the trench depth to 2 feet", [("trench depth", "60.96")]),
        ("set the trench depth to 2 m", [("trench depth", "200")]),
        ("set the dilution to one to three hundred", [("dilution", "300")]),
        ("set the dilution to 1:99999", [("dilution", "99999")]),
        ("set the soil to four", [("soil", "4")]),
        ("set the dilution to 5 ml per litre", [("dilution", "200")]),
        ("make the pot dilution a teaspoon per gallon", [("pot dilution", "909")]),
        ("set the nitrogen limit to 3 lb per 1000 sq ft", [("nitrogen limit", "146")]),
        ("set the nitrogen limit to 90 lb per acre", [("nitrogen limit", "101")]),
        ("set the nitrogen limit to 12 g per square metre", [("nitrogen limit", "120")]),
        ("change the nitrogen limit to 160 kg/ha", [("nitrogen limit", "160")]),
        ("dilution: set the dilution to 1:250", [("dilution", "250")]),
        ("That worked. Set the ferment days to sixteen", [("ferment days", "16")]),
        ("use a dilution of 1:12", [("dilution", "12")]),
        ("set the ferment time to 13.5 days", [("ferment days", "13.5")]),
        (
            "turn the reminders off and set the planting days to 25",
            [("planting days", "25"), ("reminders", "off")],
        ),
        (
            "set the units to metric and the language to Welsh",
            [("units", "metric"), ("language", "Welsh")],
        ),
        (
            "no quiet hours, and use the weight habit",
            [("habit", "weight"), ("quiet hours", "off")],
        ),
        (
            "set the pot dilution to 1:3 and ferment days to 800",
            [("pot dilution", "3"), ("ferment days", "800")],
        ),
        (
            "use kilos and set the planting days to 700",
            [("planting days", "700"), ("units", "metric")],
        ),
    ],
)
def test_what_is_to_be_set_is_found_whether_or_not_it_can_be(
    text: str, told: list[tuple[str, str]]
) -> None:
    said = [act for act in acts(text) if isinstance(act, Set)]
    assert [(act.what, act.value) for act in said] == told


@pytest.mark.parametrize(
    "text",
    [
        "change the recipe to nine apples",
        "put the soil to one side",
        "set the soil at the back of the shed",
        "set the clock of the trench watch to five",
        "the ferment days of my youth",
        "keep the ferment time to yourself",
        "use the dilution of the label",
        "no quiet hours, and no dogs either",
    ],
)
def test_what_is_done_in_the_garden_and_the_kitchen_sets_nothing(text: str) -> None:
    assert not [act for act in acts(text) if isinstance(act, Set)]


@pytest.mark.parametrize(
    "text", ["set the layer height to six", "change the number of helpers to nine"]
)
def test_a_number_of_something_else_is_no_hour_to_remind_at(text: str) -> None:
    said = acts(text, after_bot=True, in_room=True)
    assert not [act for act in said if isinstance(act, Set) and act.what == "reminder time"]
