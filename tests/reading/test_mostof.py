"""How much of a food may go in at once is asked, and nothing is written down."""

import pytest

from handlers.reading.acts import Act, Ask, Layer
from handlers.reading.arranged import Plan
from handlers.reading.plans import read
from tests.reading.context import group


def asked(text: str, *, after_bot: bool = False) -> list[Ask]:
    said: tuple[Act | Plan, ...] = read(text, group(in_room=True, after_bot=after_bot))
    assert not any(isinstance(act, Layer) for act in said)
    return [act for act in said if isinstance(act, Ask) and act.at_most]


@pytest.mark.parametrize(
    ("text", "what", "kg", "capacity_l"),
    [
        ("how much rice can go in at once?", "rice", None, None),
        ("how much bread can I add per layer?", "bread", None, None),
        ("how much citrus may we put in the bin?", "citrus", None, None),
        ("is there a limit to how much meat I can put in?", "meat", None, None),
        ("what's the most cheese we can add?", "cheese", None, None),
        ("is 3 kg of fish too much for a 20 L bin?", "fish", 3.0, 20.0),
        ("is 5 kg of rice too much in one go?", "rice", 5.0, None),
    ],
)
def test_how_much_of_a_food_is_too_much(
    text: str, what: str, kg: float | None, capacity_l: float | None
) -> None:
    (ask,) = asked(text)
    assert (ask.topic, ask.what, ask.mass_kg, ask.capacity_l) == ("allowed", what, kg, capacity_l)


@pytest.mark.parametrize(
    "text", ["how much meat at most?", "how much fish is too much?", "is 5 kg of rice too much?"]
)
def test_few_words_ask_so_only_of_the_bot(text: str) -> None:
    assert asked(text, after_bot=True)
    assert not asked(text)


@pytest.mark.parametrize(
    "text",
    [
        "how much wine at most for the party?",
        "how much rice can I put in the paella?",
        "is 3 kg of fish too much for six people?",
        "how much meat can the kids eat?",
        "how much bran at most?",
    ],
)
def test_what_is_eaten_is_no_matter_of_the_bins(text: str) -> None:
    assert not asked(text, after_bot=True)
