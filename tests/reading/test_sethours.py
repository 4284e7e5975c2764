"""Hours at which the bot may speak, and the zone that its clock goes by."""

import pytest

from handlers.reading.acts import Set
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "what", "value"),
    [
        ("no pings after ten at night", "quiet after", "22:00"),
        ("bot, no posts before 8 in the morning please", "quiet before", "08:00"),
        ("bot please no notifications between 10 pm and 6 am", "quiet hours", "22:00-06:00"),
        ("quiet hours nine pm to eight am", "quiet hours", "21:00-08:00"),
        ("no notices before 7 or after 9 bot", "quiet hours", "21:00-07:00"),
        ("bot, don't disturb us before 8:15", "quiet before", "08:15"),
        ("no messages before 8 or after 10 at night", "quiet hours", "22:00-08:00"),
        ("hush from 11 to 7, bot", "quiet hours", "23:00-07:00"),
        ("change the reminder hour to 8", "reminder time", "08:00"),
        ("quiet hours 10 to 6, bot", "quiet hours", "22:00-06:00"),
        ("quiet hours from 11 pm to midnight", "quiet hours", "23:00-00:00"),
        ("quiet hours midnight to 6", "quiet hours", "00:00-06:00"),
        ("please switch off the quiet hours", "quiet hours", "off"),
        ("quiet hours: none", "quiet hours", "off"),
        ("no more quiet hours please", "quiet hours", "off"),
        ("remind us at midnight", "reminder time", "00:00"),
        ("shift the daily digest to 9:45", "reminder time", "09:45"),
        ("could the bot do its nagging at half eight", "reminder time", "08:30"),
        ("the timezone is off, we're Europe/Madrid", "zone", "Europe/Madrid"),
        ("wrong time zone, it's America/New_York here", "zone", "America/New_York"),
        ("our time zone is Brisbane", "zone", "Australia/Brisbane"),
        ("we are in Stockholm, use that time zone", "zone", "Europe/Stockholm"),
    ],
)
def test_an_hour_or_a_zone_is_set(text: str, what: str, value: str) -> None:
    [act] = [act for act in acts(text) if isinstance(act, Set)]
    assert (act.what, act.value) == (what, value)


@pytest.mark.parametrize(
    "text",
    [
        "don't wake the baby before 9",
        "no buses after nine at night",
        "reminder: no cars by the gate before 7 pm",
        "the post came at 10:15, no letters",
        "sit still from 10 to 12",
        "move the meeting to 10:15",
        "no messages from Bea since 9",
        "quiet hours from 13 to 15 on the noticeboard, nobody reads it",
        "quiet hours at the library are two to six",
        "there are no quiet hours at the pool",
        "we used to get the reminders at seven",
        "we had a week in Vienna, a different time zone",
    ],
)
def test_other_hours_set_nothing(text: str) -> None:
    assert not any(isinstance(act, Set) for act in acts(text))
