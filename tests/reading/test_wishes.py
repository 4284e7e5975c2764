"""Settings asked for in free words."""

import pytest

from handlers.reading.acts import Set
from handlers.reading.message import read_message
from handlers.reading.wishes import wish_of
from tests.reading.context import group


@pytest.mark.parametrize(
    ("text", "what", "value"),
    [
        ("can the bot talk in litres and kilos, none of your gallons", "units", "metric"),
        ("pints and pounds please, my mother is no good with grams", "units", "imperial"),
        ("fahrenheit and quarts for us, would you", "units", "us"),
        ("let the daily reminder come at half past eight, not at noon", "reminder time", "08:30"),
        ("send the reminders at 9 pm, nobody is up before", "reminder time", "21:00"),
        ("stop the reminders over the holidays", "reminders", "off"),
        ("switch the nagging back on", "reminders", "on"),
        ("we moved the group to Irish time", "zone", "Europe/Dublin"),
        ("use the clock of Paris and not London", "zone", "Europe/Paris"),
    ],
)
def test_a_wish_is_a_setting_and_its_value(text: str, what: str, value: str) -> None:
    found = wish_of(read_message(text, group()))
    assert isinstance(found, Set)
    assert (found.what, found.value) == (what, value)


@pytest.mark.parametrize(
    "text",
    [
        "write to us a little less often",
        "remind us on Mondays",
        "remind me to lock up at 18:00",
        "make the rota two weeks each",
        "we had a lovely time in Paris",
    ],
)
def test_what_names_no_setting_that_we_have_sets_nothing(text: str) -> None:
    assert wish_of(read_message(text, group())) is None
