"""Questions about several things, what fits, what is in it, and starter asked with its bran."""

import pytest

from handlers.reading.acts import Ask
from tests.reading.context import acts

BINS = ("gate", "larder", "hall")


def asked(text: str) -> list[Ask]:
    return [act for act in acts(text, bins=BINS, in_room=True) if isinstance(act, Ask)]


@pytest.mark.parametrize(
    ("text", "things"),
    [
        ("can cheese and lemon peel go in?", ["cheese", "lemon peel"]),
        ("what about leeks, onions, and lamb bones?", ["leeks", "onions", "lamb bones"]),
        ("can mouldy cheese and bread go in?", ["mouldy cheese and bread"]),
        ("can rice go in?", ["rice"]),
    ],
)
def test_each_thing_is_asked_about(text: str, things: list[str]) -> None:
    assert [act.what for act in asked(text)] == things


@pytest.mark.parametrize(
    ("text", "bins"),
    [
        ("how full are the gate and the larder bin?", ["gate", "larder"]),
        ("how full are gate, larder and hall?", ["gate", "larder", "hall"]),
        ("how full is the gate bin?", ["gate"]),
    ],
)
def test_each_bin_is_asked_about(text: str, bins: list[str]) -> None:
    assert [act.bin for act in asked(text)] == bins


@pytest.mark.parametrize(
    ("text", "bins"),
    [
        ("apart from the hall bin, what's due?", ["gate", "larder"]),
        ("what's due except the gate bin?", ["larder", "hall"]),
        ("what's due for all but the larder bin?", ["gate", "hall"]),
        ("what's due for the larder bin?", ["larder"]),
    ],
)
def test_a_bin_that_is_left_out_is_not_asked_about(text: str, bins: list[str]) -> None:
    assert [act.bin for act in asked(text)] == bins


@pytest.mark.parametrize(
    ("text", "topic", "what", "week_kg"),
    [
        ("how many kilos still fit?", "full", "room", None),
        ("how much space is left in the gate bin?", "full", "room", None),
        ("if I put in 2 kg a day, when is it full?", "full", None, 14),
        ("with 7 kg a week when will the gate bin be full?", "full", None, 7),
        ("how much nitrogen is in the gate bin?", "carbon", "nitrogen", None),
        ("how much salt is in it?", "carbon", "salt", None),
        ("what are our bins?", "bin", None, None),
    ],
)
def test_what_is_in_a_bin(text: str, topic: str, what: str | None, week_kg: float | None) -> None:
    [act] = asked(text)
    assert (act.topic, act.what) == (topic, what)
    assert act.week_kg == pytest.approx(week_kg)


@pytest.mark.parametrize(
    "text",
    [
        "how many people fit in the car?",
        "how much room is there in the flat?",
        "how much salt is in the soup?",
        "when is the car park full?",
    ],
)
def test_of_other_things_nothing_is_asked(text: str) -> None:
    assert asked(text) == []


def test_scraps_named_beside_carbon() -> None:
    [act] = asked("what's the C:N of 2 kg of bread?")
    assert (act.topic, act.mass_kg, act.materials) == ("carbon", 2, {"grain": 1})


@pytest.mark.parametrize(
    ("text", "topics"),
    [
        ("how much water for 3 kg of rice bran?", ["batch"]),
        ("mix for 4 kg of starter?", ["batch"]),
        ("starter batch for 3 kg of wheat bran", ["batch"]),
        ("how much starter on 2 kg of scraps?", ["dose"]),
    ],
)
def test_what_starter_is_made_of_is_no_dose(text: str, topics: list[str]) -> None:
    assert [act.topic for act in asked(text)] == topics
