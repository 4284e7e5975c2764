"""What may go in, against what guides of the trade say."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.allowed import ROWS, allowed
from handlers.practice.figure import Refused
from handlers.practice.goes_in import OF_KIND, Verdict
from handlers.practice.kinds import KINDS


@pytest.mark.parametrize(
    ("what", "verdict"),
    [
        # Footer 2013 ch. 6: meat, dairy and cooked food go in; mouldy and foul food does not.
        ("chicken", "yes"),
        ("raw meat and fish", "yes"),
        ("cheese", "yes"),
        ("leftover curry", "yes"),
        ("mouldy bread", "no"),
        ("moldy cheese", "no"),
        ("rotten tomatoes", "no"),
        # Habit of the trade.
        ("orange peels", "yes"),
        ("lemons", "yes"),
        ("onion skins", "yes"),
        ("coffee grounds", "yes"),
        ("potatoes", "yes"),
        ("cherries", "yes"),
        ("stale pastries", "yes"),
        ("eggs", "yes"),
        ("egg shells", "with care"),
        ("eggshells", "with care"),
        ("chicken bones", "with care"),
        ("a big ham bone", "with care"),
        ("can I put soup in", "with care"),
        ("milk", "with care"),
        ("cooking oil", "with care"),
        ("avocado stones", "with care"),
        ("tea bags", "with care"),
        ("paper towels", "with care"),
        ("dog poo", "no"),
        ("cat litter", "no"),
        ("plastic bags", "no"),
        ("cheese in plastic", "no"),
        ("compostable bags", "no"),
        ("ash", "no"),
        ("bleach", "no"),
        ("soil", "no"),
        ("ground beef", "yes"),
        ("stale cookies", "yes"),
        ("a veggie burger", "yes"),
        ("autumn leaves", "with care"),
        ("wine glasses", "no"),
        ("fish heads", "with care"),
        ("tissues", "with care"),
        ("baking paper", "no"),
        ("wet wipes", "no"),
        ("coffee pods", "no"),
        ("kimchi", "with care"),
        ("roti and dal", "yes"),
        ("cut flowers", "with care"),
        ("dog hair", "no"),
        ("cat food", "yes"),
        ("raw chicken", "yes"),
        ("coffee filters", "yes"),
        ("spoilt milk", "no"),
    ],
)
def test_what_people_ask_about(what: str, verdict: Verdict) -> None:
    found = allowed(what)
    assert found.allowed == verdict
    assert found.reason in found.lines[0]


def test_the_words_failing_the_kind_decides() -> None:
    assert allowed("papaya", ["fruit"]).allowed == "yes"
    assert allowed("ghee", ["oil"]).allowed == "with care"
    assert allowed("poo", ["fruit"]).allowed == "no"


def test_what_nobody_knows_gets_the_rule() -> None:
    with pytest.raises(Refused, match="anything that was food goes in"):
        allowed("xyzzy")
    with pytest.raises(Refused, match="What is to go in"):
        allowed(" ")


def test_every_kind_has_its_row_and_no_words_stand_twice() -> None:
    names = {row.name for row in ROWS}
    assert len(names) == len(ROWS)
    assert set(OF_KIND) == set(KINDS)
    assert set(OF_KIND.values()) <= names
    words = [word for row in ROWS for word in row.words]
    assert sorted(words) == sorted(set(words))


@given(st.text(max_size=60))
def test_any_words_get_an_answer_or_the_rule(what: str) -> None:
    try:
        found = allowed(what)
    except Refused as refused:
        words = str(refused)
    else:
        words = found.lines[0]
    assert words.endswith(".")
