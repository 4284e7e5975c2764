import pytest

from handlers.reading.materials import Makeup, find_items, makeup
from handlers.reading.vocabulary import plurals, vocabulary
from handlers.reading.words import cleaned, words_of


def made(text: str) -> Makeup | None:
    norms = [word.norm for word in words_of(cleaned(text))]
    return makeup(find_items(norms, vocabulary().find(norms)))


@pytest.mark.parametrize(
    ("text", "shares"),
    [
        ("veg peels", {"vegetable": 1}),
        ("coffee grounds", {"coffee": 1}),
        ("scraps, mostly meat", {"meat": 0.7, "mixed": 0.3}),
        ("half of it chicken bones", {"bone": 0.5, "mixed": 0.5}),
        ("salad and bread", {"vegetable": 0.5, "grain": 0.5}),
        ("veg with a bit of cheese", {"vegetable": 0.9, "dairy": 0.1}),
        ("bread without the crusts", {"grain": 1}),
        ("prawn shells", {"bone": 1}),
        ("bean tops", {"vegetable": 1}),
        ("bacon grease", {"oil": 1}),
        ("chicken curry", {"meat": 0.6, "cooked": 0.4}),
        ("turkey soup", {"meat": 0.3, "liquid": 0.7}),
        ("lasagne", {"cooked": 1}),
        ("peels of mango", {"fruit": 1}),
        ("brinjal and bhindi", {"vegetable": 1}),
        ("bones from the stock", {"bone": 1}),
        ("scraps", {"mixed": 1}),
    ],
)
def test_shares_by_the_words_of_proportion(text: str, shares: dict[str, float]) -> None:
    found = made(text)
    assert found is not None
    assert found.shares == pytest.approx(shares)


@pytest.mark.parametrize(
    ("text", "rich"),
    [("scraps", None), ("lasagne", 0.4), ("fish skins", 1.0), ("peel", 0.0), ("leftovers", 0.25)],
)
def test_the_rich_share(text: str, rich: float | None) -> None:
    found = made(text)
    assert found is not None
    assert found.rich == (None if rich is None else pytest.approx(rich))


def test_nothing_to_eat_is_nothing() -> None:
    assert made("the ladder is behind the door") is None


@pytest.mark.parametrize(
    ("one", "many"),
    [("peel", "peels"), ("leaf", "leaves"), ("peach", "peaches"), ("berry", "berries")],
)
def test_plurals(one: str, many: str) -> None:
    assert many in plurals(one)


def test_the_lists_know_eight_hundred_foods() -> None:
    foods = {
        phrase
        for phrase in vocabulary()
        if any(m.tag == "food" for m in vocabulary().find([phrase]))
    }
    assert len(foods) > 800
