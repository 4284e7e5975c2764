"""Questions that only a room can be asked, and what is none of them."""

import json

import pytest

from bot.read import answered
from handlers.reading.acts import Act, Ask
from tests.reading.context import acts, group

PLACES = ("pear bed", "the roses", "garden")
BEYOND = {"full", "bins", "liquid", "moisture", "carbon"}
"""Topics that the reading contract does not have."""


def asked(text: str, *, after_bot: bool = False) -> tuple[Act, ...]:
    return acts(text, in_room=True, places=PLACES, after_bot=after_bot)


QUESTIONS = [
    ("how many bins do we need for 5 kg a week?", Ask(topic="bins", week_kg=5.0)),
    ("How many 20 L buckets for 4 people?", Ask(topic="bins", people=4.0, capacity_l=20.0)),
    # US Census 2023: 2.5 people to a household.
    ("how many bins for 12 households", Ask(topic="bins", people=30.0, what="households")),
    ("how many bins for 9 households of 3 people?", Ask(topic="bins", people=27.0)),
    ("how many bins for six families of four?", Ask(topic="bins", people=24.0)),
    ("how many bins for a school of 30 people?", Ask(topic="bins", people=30.0)),
    ("how many buckets for twelve flats, 2 people each?", Ask(topic="bins", people=24.0)),
    (
        "how many bins for 5 kg a week fermenting 3 weeks?",
        Ask(topic="bins", week_kg=5.0, ferment_days=21.0),
    ),
    ("how heavy is bin 3 when it's full?", Ask(topic="full", what="weight", bin="bin 3")),
    (
        "how much does a 20 L bin weigh when full?",
        Ask(topic="full", what="weight", capacity_l=20.0),
    ),
    ("what size bin is right for a household of three?", Ask(topic="bins", people=3.0)),
    ("how big a bucket for five people", Ask(topic="bins", people=5.0)),
    ("if one fills in 5 days how many bins do we need?", Ask(topic="bins", days=5.0)),
    ("if a bin fills in 2 weeks how many bins do we need?", Ask(topic="bins", days=14.0)),
    ("bot, how many bins should we have for 1 kg a day?", Ask(topic="bins", week_kg=7.0)),
    ("how many bins do we need for 20 L of scraps a week?", Ask(topic="bins", volume_l=20.0)),
    ("how many more bins do we need?", Ask(topic="bins")),
    ("is that too much liquid?", Ask(topic="liquid")),
    ("is 3 L of juice too much?", Ask(topic="liquid", volume_l=3.0)),
    ("how much liquid should we expect from the shed bin?", Ask(topic="liquid", bin="shed")),
    ("is it normal to get so much leachate?", Ask(topic="liquid")),
    ("is the shed bin too wet?", Ask(topic="moisture", bin="shed")),
    ("how wet is the shed bin?", Ask(topic="moisture", bin="shed")),
    ("what's the moisture like in bin 3?", Ask(topic="moisture", bin="bin 3")),
    ("how's the carbon?", Ask(topic="carbon")),
    ("what's the C:N of the shed bin?", Ask(topic="carbon", bin="shed")),
    ("is the carbon to nitrogen ratio ok?", Ask(topic="carbon")),
    ("when will the shed bin be full?", Ask(topic="full", bin="shed")),
    ("will the shed bin be full by Friday?", Ask(topic="full", bin="shed")),
    ("how long until bin 3 is full?", Ask(topic="full", bin="bin 3")),
    ("how much may go on the pear bed?", Ask(topic="bed", place="pear bed")),
    ("how much may go on the pear bed, 3 m2?", Ask(topic="bed", place="pear bed", area_m2=3.0)),
    ("what has the pear bed had this year?", Ask(topic="bed", place="pear bed")),
    ("how much have we put on the garden?", Ask(topic="bed", place="garden")),
    ("can we put more on the roses?", Ask(topic="bed", place="roses")),
    ("how much of the shed bin can go on the roses?", Ask(topic="bed", place="roses", bin="shed")),
]
AFTER_BOT = [
    ("is it too wet?", Ask(topic="moisture")),
    ("is it too dry?", Ask(topic="moisture")),
    ("when will it be full?", Ask(topic="full")),
]
NONE_OF_THEM = [
    "how many bins are there?",
    "how many bins do we need for the party?",
    "how many buckets of water do we need?",
    "how many buckets do we need for the car wash?",
    "how much tea should I make?",
    "is it too wet to mow?",
    "is the shed too wet to paint?",
    "is the pitch too wet for football?",
    "is the wine too dry?",
    "how's the carbon footprint?",
    "how is the carbon monoxide alarm?",
    "when is the moon full?",
    "when is the freezer full?",
    "when is the bin lorry full?",
    "how long do we leave it when it's full?",
    "how much are we spending on the garden?",
    "how much does the garden cost?",
    "how much water does the garden need?",
    "what did you get for the garden?",
    "when will it be full?",
    "is it too wet?",
]


@pytest.mark.parametrize(("text", "act"), QUESTIONS)
def test_a_room_can_be_asked(text: str, act: Ask) -> None:
    assert asked(text) == (act,)


@pytest.mark.parametrize(("text", "act"), AFTER_BOT)
def test_behind_the_bots_words_no_bin_need_be_named(text: str, act: Ask) -> None:
    assert asked(text, after_bot=True) == (act,)


@pytest.mark.parametrize("text", NONE_OF_THEM)
def test_other_talk_is_none_of_these(text: str) -> None:
    assert not any(
        isinstance(act, Ask) and (act.topic in BEYOND or act.place) for act in asked(text)
    )


@pytest.mark.parametrize("text", [text for text, _ in (*QUESTIONS, *AFTER_BOT)])
def test_the_reading_command_keeps_to_the_contract(text: str) -> None:
    line = json.dumps({"body": text}).encode()
    for act in answered(line, group())["acts"]:
        assert act.get("topic") not in BEYOND
        assert act.keys() <= {
            *("act", "topic", "water_l", "liquid_l", "parts", "use", "volume_l", "mass_kg"),
            *("bin", "area_m2", "signs", "materials", "rich", "what", "on", "member"),
        }


@pytest.mark.parametrize(
    ("text", "what", "value"),
    [
        ("set the recipe to ten to one", "recipe", "ten to one"),
        ("use the tablespoon recipe", "recipe", "tablespoon"),
        ("set the trench depth to 30 cm", "trench depth", "30 cm"),
        ("set the nitrogen limit to 250", "nitrogen limit", "250"),
        ("set the pot dilution to 1:1000", "pot dilution", "1:1000"),
        ("set the dilution for house plants to 1:1000", "pot dilution", "1:1000"),
    ],
)
def test_choices_of_the_craft_are_settings(text: str, what: str, value: str) -> None:
    (act,) = asked(text)
    assert (act.act, act.what, act.value) == ("set", what, value)  # type: ignore[union-attr]


@pytest.mark.parametrize("text", ["use the tablespoon", "use the recipe from grandma"])
def test_a_recipe_of_the_kitchen_is_no_setting(text: str) -> None:
    assert asked(text) == ()


@pytest.mark.parametrize(
    ("text", "food"),
    [
        ("moisture of cooked rice?", "rice"),
        ("what is the C:N of carrots?", "carrot"),
        ("C:N of rice and carrots?", None),
    ],
)
def test_one_food_is_asked_about_by_its_name(text: str, food: str | None) -> None:
    [asked] = [act for act in acts(text, in_room=True) if isinstance(act, Ask)]
    assert asked.what == food
