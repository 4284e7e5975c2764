"""A group's units, zone and dosing habit."""

import re

import pytest

from handlers.reading.acts import Ask, Layer, Seal, Set
from storage.database import Database
from storage.rooms import find
from tests.group import Group
from tests.reading.context import acts
from tests.room import TalkingRoom


@pytest.mark.parametrize(
    ("what", "value", "kept"),
    [("units", "american", "us"), ("habit", "weight", "weight"), ("zone", "Asia/Kolkata", None)],
)
async def test_a_setting_is_kept(group: Group, what: str, value: str, kept: str | None) -> None:
    answer = await group.says(Set(what=what, value=value))
    assert answer.settings
    room = await find(group.book.db, group.book.room.address)
    assert getattr(room, what) == (kept or value)


@pytest.mark.parametrize(
    ("what", "value"),
    [("units", "furlongs"), ("habit", "guess"), ("zone", "Moon"), ("zone", ""), ("mood", "x")],
)
async def test_what_cannot_be_set_is_explained(group: Group, what: str, value: str) -> None:
    answer = await group.says(Set(what=what, value=value))
    assert not answer.settings
    assert answer.say


@pytest.mark.parametrize(
    ("what", "instead"),
    [
        ("language", "English"),
        ("dates", "cannot be set"),
        ("reminder days", "comes at|remind us every Friday"),
        ("some reminders", "no reminders till Monday"),
        ("rota", "say it anew"),
        ("keeper", "I've got the shed bin now"),
    ],
)
async def test_what_there_is_no_setting_for_is_told_with_what_there_is(
    group: Group, what: str, instead: str
) -> None:
    answer = await group.says(Set(what=what, value="so"))
    assert not answer.settings
    assert re.search(instead, answer.say)


@pytest.mark.parametrize(
    ("said", "bounds"),
    [
        ("set ferment days to 400000", "7 to 60"),
        ("fermentation days: 1000", "7 to 60"),
        ("bot ferment everything for 300 weeks", "7 to 60"),
        ("set the dilution to 1:9999999", "20 to 2000"),
        ("set the planting days to 99999999999999", "7 to 120"),
        ("set the trench depth to 4000 cm", "20 cm to 100 cm"),
    ],
)
async def test_a_figure_beyond_sense_is_refused_with_what_can_be_set(
    room: TalkingRoom, said: str, bounds: str
) -> None:
    [told] = await room.says(said)
    assert told.body.startswith(f"Give a number from {bounds}:")


@pytest.mark.parametrize(
    "said",
    ["quiet hours 25:00 to 99:00", "quiet hours 8 pm to 30", "quiet hours 13 am to 7",
     "bot remind us at 25 am", "bot set the reminder time to 25"],
)  # fmt: skip
async def test_an_hour_that_no_clock_has_is_not_set(group: Group, said: str) -> None:
    [act] = acts(said)
    assert isinstance(act, Set)
    answer = await group.says(act)
    assert not answer.settings
    assert answer.say.startswith("Name ")


async def test_the_weight_habit_gives_another_dose(group: Group) -> None:
    spoon = await group.says(Ask(topic="dose", mass_kg=2.0))
    await group.says(Set(what="habit", value="weight"))
    room = await find(group.book.db, group.book.room.address)
    assert room
    group.book.room = room
    weight = await group.says(Ask(topic="dose", mass_kg=2.0))
    # 2 % of 2 kg: common practice, section "Choices made" of the craft
    assert "40 g" in weight.say
    assert weight.say != spoon.say


@pytest.mark.parametrize(
    ("what", "value"),
    [("dilution", "1:200"), ("ferment days", "12"), ("planting days", "28"), ("soil", "3")],
)
async def test_where_sources_disagree_the_group_chooses(
    group: Group, what: str, value: str
) -> None:
    answer = await group.says(Set(what=what, value=value))
    assert answer.say.startswith("From now on:")
    room = await find(group.book.db, group.book.room.address)
    assert room
    assert list(room.choices.values()) == [float(value.removeprefix("1:"))]


@pytest.mark.parametrize("value", ["2", "-20", "1:900", "the usual"])
async def test_a_choice_out_of_bounds_is_explained(group: Group, value: str) -> None:
    answer = await group.says(Set(what="ferment days", value=value))
    assert not answer.settings
    assert "Usual is 14: two weeks" in answer.say


async def test_a_group_that_ferments_for_three_weeks_buries_later(group: Group) -> None:
    await group.says(Set(what="ferment days", value="21"))
    room = await find(group.book.db, group.book.room.address)
    assert room
    group.book.room = room
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Seal(bin="shed"), days=2)
    assert (await group.dues())["shed", "bury"][1].isoformat() == "2026-03-25"
    said = await group.says(Ask(topic="dilution", liquid_l=0.1))
    assert "100 parts" in said.say


@pytest.mark.parametrize(
    ("units", "value", "words"),
    [
        # NIST SP 811: an inch is 25.4 mm, so that 20 to 100 cm are 8 to 39 in.
        ("metric", "30 cm", "trenches 30 cm deep."),
        ("metric", "5", "from 20 cm to 100 cm: trenches so many deep. Usual is 25 cm"),
        ("us", "12 inches", "trenches 12 in deep."),
        ("us", "12", "trenches 12 in deep."),
        ("us", "30 cm", "trenches 12 in deep."),
        ("us", "5 inches", "from 8 in to 39 in: trenches so many deep. Usual is 10 in"),
    ],
)
async def test_a_depth_is_set_and_said_in_the_measures_of_the_group(
    group: Group, units: str, value: str, words: str
) -> None:
    await group.says(Set(what="units", value=units))
    assert words in (await group.says(Set(what="trench depth", value=value))).say


@pytest.mark.parametrize(
    ("what", "value", "words"),
    [
        ("ferment days", "14", "10 to 14 days sealed"),
        ("ferment days", "21", "now on: 21 days sealed"),
        ("planting days", "21", "14 to 21 days in warm soil"),
    ],
)
async def test_usual_days_are_said_from_the_least_on(
    group: Group, what: str, value: str, words: str
) -> None:
    assert words in (await group.says(Set(what=what, value=value))).say


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """A bin whose first draining falls due on a Thursday."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("opened the shed bin, 20 L")
    await room.says("added 2 kg to the shed bin")
    await room.waits(minutes=1)
    return room


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("send the reminders in the evening", "What is due comes at 18:00 from now on."),
        ("remind us every morning instead", "What is due comes at 09:00 from now on."),
        ("move the reminders to 7 in the evening", "What is due comes at 19:00 from now on."),
        ("no reminders before 8", "I keep quiet from 21:00 to 08:00 from now on."),
        ("don't remind us after ten at night", None),
        ("no nagging after 10 pm", "I keep quiet from 22:00 to 07:00 from now on."),
        ("stop the reminders after 8", "I keep quiet from 20:00 to 07:00 from now on."),
        (
            "quiet hours 22:00 to 6:00 and remind us at 6:30",
            "I keep quiet from 22:00 to 06:00 from now on.\n"
            "What is due comes at 06:30 from now on.",
        ),
    ],
)
async def test_hours_of_the_day_for_reminders(
    room: TalkingRoom, said: str, told: str | None
) -> None:
    assert [m.body for m in await room.says(said)] == ([told] if told else [])


async def test_a_digest_before_the_first_hour_allowed_comes_then(room: TalkingRoom) -> None:
    await room.says("remind us at 8")
    [told] = await room.says("no reminders before 9:30")
    assert told.body == (
        "I keep quiet from 21:00 to 09:30 from now on. What is due comes at 09:30."
    )
    kept = (await room.book()).room
    assert f"{kept.digest_at:%H:%M} {kept.quiet_to:%H:%M}" == "09:30 09:30"


@pytest.mark.parametrize(
    "said",
    ["stop the reminders till next Monday", "no reminders for a week please", "pause the nagging "
     "until Monday 9 March", "turn the reminders off for a week"],
)  # fmt: skip
async def test_reminders_pause_and_come_again_of_themselves(room: TalkingRoom, said: str) -> None:
    [told] = await room.says(said)
    assert told.body.startswith("No reminders until Monday 9 March")
    assert await room.waits(days=5, hours=20) == []
    assert [m.kind for m in await room.waits(days=2)] == ["digest"]


@pytest.mark.parametrize(
    "said",
    ["reminders on again", "start reminding us again", "you can start the reminders again please",
     "resume the reminders", "unpause reminders", "can you start sending reminders again",
     "turn the reminders back on"],
)  # fmt: skip
async def test_reminders_are_on_again_before_a_pause_was_to_end(
    room: TalkingRoom, said: str
) -> None:
    await room.says("stop the reminders till 1 April")
    [told] = await room.says(said)
    assert told.body.startswith("I remind you again")
    assert [m.kind for m in await room.waits(days=3)] == ["digest"]


@pytest.mark.parametrize(
    "said",
    ["we start reminding people next week", "start reminding us about the bins on Mondays",
     "continue the reminder list", "I start with the reminder",
     "start the washing up again"],
)  # fmt: skip
async def test_what_else_is_begun_or_gone_on_with_ends_no_pause(
    room: TalkingRoom, said: str
) -> None:
    await room.says("stop the reminders till 1 April")
    await room.says(said)
    assert await room.waits(days=5) == []


async def test_what_a_member_is_done_with_is_not_said_again_when_reminders_are_on(
    room: TalkingRoom,
) -> None:
    await room.says("remind us to wash the lids on 4 March")
    await room.waits(days=2)
    await room.says("done")
    await room.says("stop the reminders till 1 April")
    await room.says("resume the reminders")
    assert all("lids" not in message.body for message in await room.waits(days=5))


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("stop reminding me", "I remind the group together"),
        ("please don't nag me any more", "I remind the group together"),
        ("no reminders until pigs fly", "Until which day?"),
    ],
)
async def test_what_no_pause_is_stops_nothing(room: TalkingRoom, said: str, told: str) -> None:
    [answer] = await room.says(said)
    assert answer.body.startswith(told)
    assert any(message.kind == "digest" for message in await room.waits(days=5))


@pytest.mark.parametrize(
    ("said", "told", "hours"),
    [
        (
            "quiet hours 20:00 to 6:00 and remind us at 19:45",
            ["I keep quiet from 20:00 to 06:00", "What is due comes at 19:45"],
            "19:45 20:00 06:00",
        ),
        (
            "remind us at 22:30, quiet hours 23:00 to 6:00",
            ["I keep quiet from 23:00 to 06:00", "What is due comes at 22:30"],
            "22:30 23:00 06:00",
        ),
        (
            "quiet hours 22:00 to 10:00 and remind us at 11",
            ["I keep quiet from 22:00 to 10:00", "What is due comes at 11:00"],
            "11:00 22:00 10:00",
        ),
        (
            "our time zone is Europe/Paris, quiet hours 22:00 to 6:00 and remind us at 23:30",
            ["clock is now", "I keep quiet from 22:00 to 06:00", "23:30 is in your quiet hours"],
            "09:00 22:00 06:00",
        ),
        ("quiet hours off", ["There are no quiet hours"], "09:00 00:00 00:00"),
        ("quiet hours 0:00 to 24:00", ["That would be quiet all day"], "09:00 21:00 07:00"),
        ("remind us at midnight", ["00:00 is in your quiet hours"], "09:00 21:00 07:00"),
        ("no quiet hours, and set the reminders to midnight", ["no quiet hours", "comes at 00:00"],
         "00:00 00:00 00:00"),
    ],
)  # fmt: skip
async def test_hours_of_one_message_are_set_together(
    room: TalkingRoom, said: str, told: list[str], hours: str
) -> None:
    [answer] = await room.says(said)
    lines = answer.body.split("\n")
    assert len(lines) == len(told)
    assert all(part in line for part, line in zip(told, lines, strict=True)), answer.body
    kept = (await room.book()).room
    assert f"{kept.digest_at:%H:%M} {kept.quiet_from:%H:%M} {kept.quiet_to:%H:%M}" == hours


async def test_what_follows_a_reminder_of_ours_is_set_as_a_whole(room: TalkingRoom) -> None:
    await room.says("what is due?")
    [answer] = await room.says("no quiet hours and use pounds")
    assert "imperial" in answer.body
    assert "There are no quiet hours" in answer.body


@pytest.mark.parametrize(
    ("said", "days", "words"),
    [
        ("no reminders at weekends", {5, 6}, "No reminders on Saturdays and Sundays"),
        ("no reminders on Sundays please", {6}, "No reminders on Sundays"),
        ("reminders only on weekdays", {5, 6}, "No reminders on Saturdays and Sundays"),
        ("bot, only remind us on Mondays", {1, 2, 3, 4, 5, 6}, "Reminders only on Mondays"),
        ("please don't ping us on Saturdays", {5}, "No reminders on Saturdays"),
        ("bot, not on Sundays or Mondays", {0, 6}, "No reminders on Mondays and Sundays"),
    ],
)
async def test_days_without_reminders(
    room: TalkingRoom, said: str, days: set[int], words: str
) -> None:
    [told] = await room.says(said)
    assert told.body.startswith(words)
    assert (await room.book()).room.quiet_days == days
    await room.says("set the ferment days to 12")
    assert (await room.book()).room.quiet_days == days
    assert (await room.book()).room.choices == {"ferment_days": 12.0}
    await room.says("remind us every day")
    assert (await room.book()).room.quiet_days == set()


@pytest.mark.parametrize(
    "said",
    [
        "no reminders on Sunday",
        "we have no messages on Sundays",
        "only on Sundays do I sleep in",
        "remind us every day to lift the lid",
        "no bin lorry at weekends",
        "only remind us on weekdays and weekends",
    ],
)
async def test_other_days_are_none_without_reminders(room: TalkingRoom, said: str) -> None:
    await room.says("hello")
    await room.says(said, who="bram")
    assert (await room.book()).room.quiet_days == set()


async def test_on_a_day_without_reminders_comes_only_what_was_set_for_it(room: TalkingRoom) -> None:
    await room.says("no reminders on Wednesdays or Thursdays")
    await room.says("remind us on Thursday to lift the lids")
    said = [one.body for one in await room.waits(days=4) if one.kind == "digest"]
    assert said == ["Today: lift the lids.", "Late, since yesterday: drain the shed bin (ines)."]
