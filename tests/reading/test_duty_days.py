"""Who drains on which days of the week; what is said of Mondays hands no bin over."""

import pytest

from handlers.reading.acts import Offer
from handlers.reading.arranged import OwnDate
from handlers.reading.plans import read
from tests.reading.context import group


def days(text: str, **changes: object) -> list[tuple[str | None, str, str]]:
    """For whom, what, and on which days a reminder is set, in the talk of bins."""
    context = group(bins=("shed",), in_room=True, **changes)
    dates = [plan for plan in read(text, context) if isinstance(plan, OwnDate)]
    assert all((date.rule or "").startswith("FREQ=WEEKLY;BYDAY=") for date in dates)
    return [(d.for_whom, d.words, (d.rule or "").rpartition("=")[2]) for d in dates]


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("ines drains the shed on Tuesdays, ruth on Fridays", [("ines", "TU"), ("ruth", "FR")]),
        (
            "so ruth does the draining of the shed on Mondays and Fridays, I do Wednesdays",
            [("ruth", "MO,FR"), ("kofi", "WE")],
        ),
        ("ines lets the shed bin's juice out every Sunday", [("ines", "SU")]),
        (
            "on Mondays ruth empties the liquid from the shed, on Saturdays ines",
            [("ruth", "MO"), ("ines", "SA")],
        ),
    ],
)
def test_whose_day_it_is(text: str, told: list[tuple[str, str]]) -> None:
    assert [(who, on) for who, _, on in days(text)] == told
    assert all("shed" in words for _, words, _ in days(text))


def test_the_draining_alone_is_of_the_bin_that_is_talked_of() -> None:
    told = days("draining: ines Mondays, ruth Thursdays")
    assert told == [("ines", "drain the bin", "MO"), ("ruth", "drain the bin", "TH")]
    assert days("ruth drains on Thursdays", of_bins=True) == [("ruth", "drain the bin", "TH")]


@pytest.mark.parametrize(
    "text",
    [
        "ruth drains on Thursdays",
        "ines drains the pond on Tuesdays, ruth on Fridays",
        "ines drained the shed on Tuesday, ruth on Friday",
        "does ines drain the shed on Tuesdays?",
        "ines and ruth drain the shed on Tuesdays",
        "ines has tea with ruth on Fridays",
        "ines takes out the liquid on Tuesdays and ruth makes soup on Fridays",
    ],
)
def test_no_days_of_draining(text: str) -> None:
    assert days(text) == []


@pytest.mark.parametrize(
    ("text", "passed_on"),
    [
        ("ines takes the shed bin on Mondays", False),
        ("ines looks after the shed on Mondays, ruth on Fridays", False),
        ("ines takes the shed bin on Monday", True),
    ],
)
def test_days_that_come_again_hand_no_bin_over(text: str, passed_on: bool) -> None:
    acts = read(text, group(bins=("shed",), in_room=True))
    assert any(isinstance(act, Offer) for act in acts) == passed_on
