"""Foods that are named and are not to go into a bin, and trouble that nobody asks about."""

import pytest

from handlers.reading.acts import Ask
from handlers.reading.plans import read
from tests.reading.context import acts, group


def topics(text: str) -> list[str]:
    return [act.topic for act in acts(text) if isinstance(act, Ask)]


@pytest.mark.parametrize(
    "text",
    [
        "is it good for the leeks?",
        "can I eat parsnips grown there?",
        "could I put it under the raspberries?",
        "does it kill pumpkin seeds?",
        "is it too sour for radishes?",
        "should we add lime?",
        "will foxes dig up fish?",
        "what about pink or orange fuzz?",
    ],
)
def test_what_grows_is_no_scraps(text: str) -> None:
    assert "allowed" not in topics(text)


@pytest.mark.parametrize(
    "text",
    [
        "can leeks go in?",
        "can I put lime peel in the bin?",
        "are parsnips ok in the shed bin?",
        "can I put in plants that I pulled up?",
    ],
)
def test_scraps_are_still_asked_about(text: str) -> None:
    assert "allowed" in topics(text)


@pytest.mark.parametrize("text", ["why 30 cm?", "what is a layer?", "why must I thin it?"])
def test_nothing_is_wrong_where_nothing_is_named(text: str) -> None:
    assert "trouble" not in topics(text)


@pytest.mark.parametrize(
    ("text", "topic"),
    [
        ("do I have to water it in?", "dilution"),
        ("how often water the leeks with it?", "dilution"),
        ("how do we change the dilution?", "dilution"),
        ("how much do 2 litres of scraps weigh?", "dose"),
        ("how many kg is 12 L of scraps?", "dose"),
        ("how many litres is 6 kg of peelings?", "dose"),
        ("how many neighbours can share a 30 L bin?", "dilution"),
        ("how many households for one 60 L drum?", "dilution"),
        ("how much fish can go in a 15 L bucket?", "dilution"),
        ("and in heavy clay?", "allowed"),
        ("can I put it on my hot compost heap?", "allowed"),
    ],
)
def test_no_mix_and_no_dose_is_asked(text: str, topic: str) -> None:
    assert topic not in topics(text)


@pytest.mark.parametrize(
    "text",
    ["how much water for a 20 L bucket?", "how much liquid in a 10 L can?", "dilution for a 10 L "
     "bucket"],
)  # fmt: skip
def test_a_vessel_of_water_is_still_one_to_thin_in(text: str) -> None:
    assert "dilution" in topics(text)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("can we compost fish?", "fish"),
        ("is it ok to compost pork this way?", "meat"),
        ("is it halal to compost lamb?", "meat"),
        ("can I compost bones?", "bone"),
    ],
)
def test_to_compost_is_a_deed_and_no_scraps(text: str, kind: str) -> None:
    (asked,) = [act for act in read(text, group(in_room=True)) if isinstance(act, Ask)]
    assert (asked.topic, list(asked.materials or {})) == ("allowed", [kind])


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("how many kilos go into a 20 L bin?", 20),
        ("how much can a 12 L bucket hold?", 12),
        ("how heavy is 15 L?", 15),
        ("how much water is in a 20 L bin?", None),
    ],
)
def test_what_a_vessel_of_that_size_weighs(text: str, litres: int | None) -> None:
    asked = [act for act in read(text, group(in_room=True)) if isinstance(act, Ask)]
    weighed = [act.capacity_l for act in asked if act.what == "weight"]
    assert weighed == ([litres] if litres else [])
