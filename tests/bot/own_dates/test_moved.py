"""What members set is moved, left out for a day and called off, and nothing else with it."""

from datetime import date

import pytest

from tests.bot.own_dates.spoken import lives_until, words
from tests.room import TalkingRoom


async def test_it_is_called_off_edited_and_deleted(room: TalkingRoom) -> None:
    await room.says("remind us to empty the shed caddy on Friday at 6", event="$caddy")
    await room.edits("$caddy", "remind us to empty the shed caddy on Saturday at 17:00")
    await room.says("remind us to wash the lids every Sunday")
    await room.says("remind us to lock up every day at 20:00", event="$lock")
    assert words(await room.says("cancel the lids reminder")) == ["Called off: wash the lids."]
    await room.deletes("$lock")
    assert await lives_until(room, 20, 12) == ["07 17:00 Empty the shed caddy."]
    assert words(await room.says("what reminders do we have?"))[0].startswith(
        "No reminders are set"
    )


async def test_it_is_moved_and_all_of_it_called_off(room: TalkingRoom) -> None:
    await room.says("remind us about the work party on Friday at 10")
    moved = await room.says("move the work party to Saturday")
    assert words(moved) == ["I will say it Saturday 7 March at 10:00: the work party."]
    assert await room.says("move the sofa to the hall on Saturday") == []
    assert await room.says("cancel the milk") == []
    assert words(await room.says("cancel the work party")) == ["Called off: the work party."]
    await room.says("remind us to shake the rug every Friday")
    off = await room.says("stop the reminder to shake the rug")
    assert words(off) == ["Called off: shake the rug."]
    await room.says("remind us to wash the lids every Sunday")
    await room.says("remind us to lock up every day at 20:00")
    off = await room.says("cancel all reminders", event="$all")
    assert words(off) == ["Called off: wash the lids and lock up."]
    await room.deletes("$all")
    assert (await room.says("list our reminders"))[0].body.count("\n") == 1


@pytest.mark.parametrize(
    ("said", "days"),
    [
        ("change the rake to Thursdays", "every Thursday, from Thursday 5 March on"),
        ("rinse the rake every Thursday instead", "every Thursday, from Thursday 5 March on"),
        ("remind us to rinse the rake every Thursday instead", "every Thursday, from Thursday 5"),
        ("rinse the rake every two weeks instead", "every second Wednesday, from Wednesday 4"),
        ("move the rake to every second Monday", "every second Monday, from Monday 9 March on"),
    ],
)
async def test_what_comes_again_comes_on_other_days(
    room: TalkingRoom, said: str, days: str
) -> None:
    await room.says("remind us every Wednesday to rinse the rake")
    [told] = await room.says(said)
    assert told.body.startswith(f"I will say it {days}")
    [listed] = await room.says("which reminders are set?")
    assert listed.body.count("rinse the rake") == 1


async def test_a_move_is_no_wish_for_a_setting(room: TalkingRoom) -> None:
    await room.says("remind me to ring the school on Friday")
    [told] = await room.says("move the school to Saturday")
    assert told.body == "I will say it Saturday 7 March: ring the school."


@pytest.mark.parametrize("said", ["cancel the trug", "cancel rake the path"])
async def test_a_reminder_called_off_strikes_no_record(room: TalkingRoom, said: str) -> None:
    await room.says("opened the yard bin, 20 L")
    await room.says("added 2 kg of bread")
    await room.says("remind us to wash the trug on Friday", who="bram")
    await room.says("remind us to rake the path on Friday", who="bram")
    [answer] = await room.says(said)
    assert answer.body.startswith("Called off: ")
    assert "Struck" not in answer.body
    assert "layer" in [entry.act for entry in await room.standing()]


@pytest.mark.parametrize(
    ("said", "moved"),
    [
        ("make the pear one Saturday instead", True),
        ("make the pear bed digging Saturday instead", True),
        ("move the pear digging to Saturday", True),
        ("the rice one should be Saturday instead", False),
        ("make the caddy one Saturday instead", None),
    ],
)
async def test_a_reminder_moved_puts_no_record_right(
    room: TalkingRoom, said: str, moved: bool | None
) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says("remind us of the pear bed digging on Friday")
    await room.says("2 kg of rice in the shed bin")
    before = {entry.act: entry.on for entry in await room.standing()}
    await room.says(said)
    after = {entry.act: entry.on for entry in await room.standing()}
    assert {act for act in after if after[act] != before[act]} == (
        set() if moved is None else {"date"} if moved else {"layer"}
    )


@pytest.mark.parametrize(
    ("said", "on"),
    [
        ("make it Saturday", date(2026, 3, 7)),
        ("make it Saturday instead", date(2026, 3, 7)),
        ("oh no, make that Saturday please", date(2026, 3, 7)),
        ("it should be Saturday", date(2026, 3, 7)),
        ("change it to Saturday instead", date(2026, 3, 7)),
        ("see you on Saturday", date(2026, 3, 6)),
        ("Saturday", date(2026, 3, 6)),
    ],
)
async def test_it_is_what_was_set_last_that_is_moved(
    room: TalkingRoom, said: str, on: date
) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says("2 kg of rice in the shed bin")
    await room.says("remind us to wash the lids on Friday")
    await room.says(said)
    by_act = {entry.act: entry.on for entry in await room.standing()}
    assert by_act["date"] == on
    assert by_act["layer"] == by_act["open"]


async def test_a_day_of_what_comes_again_is_left_out_with_the_word_ahead(
    room: TalkingRoom,
) -> None:
    await room.says("remind us every Friday to empty the caddy")
    said = words(await room.says("remind us the evening before"))
    assert said == [
        "I will say it every Thursday at 18:00, from Thursday 5 March on: empty the caddy "
        "(tomorrow)."
    ]
    [left_out] = words(await room.says("skip the caddy this Friday"))
    assert left_out == "Left out Friday 6 March: empty the caddy. Next: Friday 13 March."
    assert await lives_until(room, 14, 12) == [
        "12 18:00 Empty the caddy (tomorrow).",
        "13 09:00 Today: empty the caddy.",
    ]


@pytest.mark.parametrize(
    ("said", "answer"),
    [
        ("not this Friday", "Left out Friday 6 March: empty the caddy. Next: Friday 13 March."),
        ("skip it next week", "Left out Friday 13 March: empty the caddy. Next: Friday 20 March."),
        ("skip the caddy", "Left out Friday 6 March: empty the caddy. Next: Friday 13 March."),
        (
            "skip the caddy on Sunday",
            "Nothing of the sort is set for Sunday 8 March: next comes “empty the caddy” Friday "
            "6 March.",
        ),
        ("cancel the lids on Saturday", "Called off: wash the lids."),
        ("cancel Saturday's", "Called off: wash the lids."),
    ],
)
async def test_what_is_left_out_is_told(room: TalkingRoom, said: str, answer: str) -> None:
    await room.says("remind us on Saturday to wash the lids")
    await room.says("remind us every Friday to empty the caddy")
    assert words(await room.says(said)) == [answer]


@pytest.mark.parametrize(
    "said",
    [
        "skip the party on Friday",
        "cancel the party on Friday",
        "skip my turn",
        "never mind the weather",
        "forget the one about the pirate",
    ],
)
async def test_talk_of_other_things_leaves_reminders_alone(room: TalkingRoom, said: str) -> None:
    await room.says("remind us on Saturday to turn the soil")
    await room.says("hello all", who="bram")
    assert not await room.says(said)


@pytest.mark.parametrize(
    ("said", "called_off"),
    [
        ("cancel the bucket one", "wash the buckets"),
        ("forget the one about the buckets", "wash the buckets"),
        ("never mind the buckets", "wash the buckets"),
        ("stop the lid one", "wipe the lids"),
        ("call off the lid thing", "wipe the lids"),
        ("we don't need the lids reminder any more", "wipe the lids"),
        ("cancel the digging one", "dig the trench"),
    ],
)
async def test_a_reminder_is_called_off_by_a_word_for_it(
    room: TalkingRoom, said: str, called_off: str
) -> None:
    await room.says("remind us on the 10th to wash the buckets", who="bram")
    await room.says("remind us every second Sunday to wipe the lids", who="bram")
    await room.says("remind us on Saturday to dig the trench")
    assert words(await room.says(said)) == [f"Called off: {called_off}."]


@pytest.mark.parametrize("said", ["cancel the bucket one", "cancel Thursday's"])
async def test_a_word_that_calls_no_reminder_strikes_none(room: TalkingRoom, said: str) -> None:
    await room.says("remind us on Saturday to dig the trench")
    [told] = words(await room.says(said))
    assert "o such reminder" in told
    assert [entry.act for entry in await room.standing()] == ["date"]


async def test_another_hour_and_every_week_are_said_behind_it(room: TalkingRoom) -> None:
    await room.says("remind us on Friday at 18:00 to empty the caddy")
    [told] = words(await room.says("make it 7"))
    assert told == "I will say it Friday 6 March at 19:00: empty the caddy."
    [told] = words(await room.says("same every week"))
    assert told.startswith("I will say it every Friday at 19:00, from Friday 6 March on")
