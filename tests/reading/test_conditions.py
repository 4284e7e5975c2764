"""What is asked of a growth by its colour alone, and of the days that a temperature makes."""

import pytest

from handlers.reading.acts import Amend, Ask, Layer, Observe
from handlers.reading.arranged import Taught
from handlers.reading.plans import read
from tests.reading.context import group


@pytest.mark.parametrize(
    ("text", "sign"),
    [
        ("blue mould, what now?", "green_mould"),
        ("yellow mould?", "other_mould"),
        ("is pink fuzz normal?", "other_mould"),
        ("white fluff on top?", "white_mould"),
    ],
)
def test_a_growth_is_a_sign_and_nothing_to_put_in(text: str, sign: str) -> None:
    assert read(text, group(in_room=True)) == (Ask(topic="trouble", signs=(sign,)),)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("text", "celsius"),
    [
        ("how long at 12 °C?", 12.0),
        ("how many days does it ferment at 59 F?", 15.0),
        ("if the garage is at 50 Fahrenheit, how long should the shed bin sit?", 10.0),
    ],
)
def test_the_days_at_a_temperature(text: str, celsius: float) -> None:
    asked = Taught(lesson="when to bury", celsius=pytest.approx(celsius))  # type: ignore[arg-type]
    assert read(text, group(in_room=True)) == (asked,)


@pytest.mark.parametrize(
    ("text", "celsius"),
    [
        ("how long will it take in soil at 3 degrees?", 3.0),
        ("how long does it take in the ground at 3 °C?", 3.0),
        ("how long does it take to break down in soil at 12 °C?", 12.0),
        ("how many weeks in cold soil of 41 F?", 5.0),
    ],
)
def test_the_days_in_soil_of_a_temperature(text: str, celsius: float) -> None:
    asked = Taught(lesson="when to plant", celsius=pytest.approx(celsius))  # type: ignore[arg-type]
    assert read(text, group(in_room=True)) == (asked,)


@pytest.mark.parametrize(
    ("text", "after_bot", "meant"),
    [
        ("what is the usual dose?", False, True),
        ("and the normal dose per kilo?", False, True),
        ("what's the dose?", True, True),
        ("what dose do you recommend?", True, True),
        ("what's the dose?", False, False),
        ("what is the usual dose of paracetamol?", True, False),
        ("the usual dose of complaints?", True, False),
    ],
)
def test_the_usual_dose(text: str, after_bot: bool, meant: bool) -> None:
    said = read(text, group(in_room=True, after_bot=after_bot))
    assert (Ask(topic="dose") in said) == meant


@pytest.mark.parametrize(
    ("text", "ph"),
    [
        ("is a pH of 5 ok?", 5.0),
        ("is pH 6 too high?", 6.0),
        ("is ph 4.5 low enough?", 4.5),
        ("is 4,2 a good pH?", 4.2),
        ("is 3.9 sour enough?", 3.9),
        ("is pH 5 okay for the bin?", 5.0),
        ("what does pH 4.2 mean?", 4.2),
        ("what does 4.2 mean?", 4.2),
        ("and what if the pH is 5.5?", 5.5),
        ("does a pH of 4 mean it's ready?", 4.0),
    ],
)
def test_a_ph_that_is_only_asked_about_is_no_record(text: str, ph: float) -> None:
    asked = Ask(topic="trouble", ph=ph)
    assert read(text, group(in_room=True, after_bot=True)) == (asked,)


@pytest.mark.parametrize(
    "text",
    [
        "is pH 7 ok for the pool?",
        "is a pH of 6 good for blueberries?",
        "what does 4.2 km mean in miles?",
        "is 4.2 a good score?",
    ],
)
def test_a_ph_of_other_things_is_not_meant(text: str) -> None:
    said = read(text, group(in_room=True, after_bot=True))
    assert not [one for one in said if isinstance(one, Ask) and one.ph]


def test_a_ph_that_is_told_and_asked_about_is_answered_by_its_record() -> None:
    (seen,) = read("pH 3.8, is that good?", group(in_room=True))
    assert isinstance(seen, Observe)
    assert seen.ph == 3.8


@pytest.mark.parametrize(
    "text",
    ["how long at 200 C?", "how long do the eggs cook at 50 C?", "blue cheese?", "what mould?"],
)
def test_other_things_are_not_meant(text: str) -> None:
    said = read(text, group(in_room=True))
    assert not [one for one in said if isinstance(one, Taught)]
    assert Ask(topic="trouble", signs=("green_mould",)) not in said


def test_what_is_to_be_added_is_not_to_be_thinned() -> None:
    said = read("can I add liquids like soup?", group(in_room=True))
    assert [one.topic for one in said if isinstance(one, Ask)] == ["allowed"]


def test_water_is_no_record_put_right() -> None:
    for text in ("1:500, 2 pints of water", "9 L of water"):
        said = read(text, group(in_room=True, after_bot=True, last=Layer(mass_kg=1.0, bin="shed")))
        assert not [one for one in said if isinstance(one, Amend)]
