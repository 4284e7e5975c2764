"""Questions whether a bin is ready: "can we bury green now?", "is it time to seal the shed?"."""

from datetime import date

import pytest

from handlers.reading.acts import Ask
from handlers.reading.plans import read
from tests.reading.context import WEDNESDAY, group


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("can we bury the green bin now?", "bury"),
        ("should I dig in green today", "bury"),
        ("is green ready?", "bury"),
        ("is the green bin ready to be sealed yet", "seal"),
        ("is it time to close green?", "seal"),
        ("must we drain green now", "drain"),
    ],
)
def test_whether_it_is_due_by_today(text: str, what: str) -> None:
    context = group(bins=("green", "shed"), in_room=True)
    (ask,) = read(text, context)
    assert isinstance(ask, Ask)
    assert (ask.topic, ask.bin, ask.what) == ("due", "green", what)
    assert ask.first == ask.on == context.at.date()


@pytest.mark.parametrize(
    "text",
    [
        "can we bury the hatchet now?",
        "is the green paint ready?",
        "green is ready",
        "can we bury green and paint the shed now?",
        "time to drain the pasta?",
        "should we bury the hatchet?",
        "time to bury the dog",
        "do we need to seal the deal?",
    ],
)
def test_what_asks_for_no_day(text: str) -> None:
    found = read(text, group(bins=("green", "shed"), in_room=True))
    assert not any(isinstance(act, Ask) and act.what and act.first for act in found)


@pytest.mark.parametrize("text", ["ok sealed again", "so drained today", "and buried"])
def test_a_deed_that_is_told_behind_our_words_is_no_question(text: str) -> None:
    found = read(text, group(bins=("green", "shed"), in_room=True, after_bot=True))
    assert not any(isinstance(act, Ask) for act in found)


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("is it time to drain?", "drain"),
        ("time to drain yet?", "drain"),
        ("do we need to seal one now?", "seal"),
        ("ok, should we bury anything today?", "bury"),
    ],
)
def test_whether_any_is_due(text: str, what: str) -> None:
    context = group(bins=("green", "shed"), in_room=True)
    (ask,) = read(text, context)
    assert isinstance(ask, Ask)
    assert (ask.topic, ask.bin, ask.what) == ("due", None, what)
    assert ask.first == ask.on == context.at.date()


@pytest.mark.parametrize(
    ("day", "last"),
    [(17, date(2026, 6, 21)), (20, date(2026, 6, 21)), (21, date(2026, 6, 28))],
)
def test_on_its_last_day_this_week_is_the_coming_one(day: int, last: date) -> None:
    context = group(in_room=True, at=WEDNESDAY.replace(day=day))
    [asked] = read("what do I have to do this week?", context)
    assert isinstance(asked, Ask)
    assert asked.on == last
