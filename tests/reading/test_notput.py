"""Foods that are named and are not to go into a bin, and trouble that nobody asks about."""

import pytest

from handlers.reading.acts import Ask
from tests.reading.context import acts


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
    ],
)
def test_no_mix_and_no_dose_is_asked(text: str, topic: str) -> None:
    assert topic not in topics(text)
