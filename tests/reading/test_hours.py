"""Hours of the day as people say them."""

from datetime import time

import pytest

from handlers.reading.calendar.hours import hour_at
from handlers.reading.words.words import cleaned, words_of


def hour(text: str) -> time | None:
    words = words_of(cleaned(text))
    norms = [word.norm for word in words]
    found = (hour_at(words, norms, i) for i in range(len(words)))
    return next((one.at for one in found if one), None)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("at 6", time(18)),
        ("at 6 in the morning", time(6)),
        ("at 6am", time(6)),
        ("at 6 pm", time(18)),
        ("6:30", time(18, 30)),
        ("06:30", time(6, 30)),
        ("at 18:00", time(18)),
        ("at 6.30", time(18, 30)),
        ("at 8", time(8)),
        ("at 8 in the evening", time(20)),
        ("at noon", time(12)),
        ("midday", time(12)),
        ("at half past six", time(18, 30)),
        ("quarter to seven", time(18, 45)),
        ("at seven", time(7)),
        ("5 o'clock", time(17)),
        ("12 am", time(0)),
        ("tonight", time(19)),
        ("in the afternoon", time(15)),
        ("at 23:59", time(23, 59)),
        ("at half six", time(18, 30)),
        ("at half 5 in the evening", time(17, 30)),
        ("at half eight in the morning", time(8, 30)),
        ("at 18h", time(18)),
        ("16h30", time(16, 30)),
        ("at 1830", time(18, 30)),
        ("at 1930hrs", time(19, 30)),
        ("6.30pm", time(18, 30)),
    ],
)
def test_an_hour_is_read(said: str, meant: time) -> None:
    assert hour(said) == meant


@pytest.mark.parametrize(
    "said",
    [
        "6 bins",
        "at 25",
        "at 6 %",
        "2.5 kg",
        "bin 3",
        "at the shed",
        "at 12.75",
        "in the bin",
        "about half a kilo",
        "around half the bran",
        "1830",
        "at 2075",
        "6.30",
    ],
)
def test_what_is_no_hour(said: str) -> None:
    assert hour(said) is None
