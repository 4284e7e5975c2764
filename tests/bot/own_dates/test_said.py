"""What members set themselves is said at its hour, once, to whom it was set for."""

from datetime import UTC, datetime

import pytest

from storage.moments import from_ms
from tests.bot.own_dates.spoken import lives_until, words
from tests.room import TalkingRoom


async def test_it_is_said_on_its_day_at_its_hour_and_no_more(room: TalkingRoom) -> None:
    said = await room.says("remind us to empty the shed caddy on Friday at 6")
    assert words(said) == ["I will say it Friday 6 March at 18:00: empty the shed caddy."]
    assert await lives_until(room, 20, 12) == ["06 18:00 Empty the shed caddy."]


@pytest.mark.parametrize(
    ("hour", "hint"), [("5:20", "5:20 am"), ("5:20 pm", None), ("17:20", None), ("6", None)]
)
async def test_an_hour_of_either_half_of_the_day_is_told_as_taken(
    room: TalkingRoom, hour: str, hint: str | None
) -> None:
    [said] = await room.says(f"remind us tomorrow at {hour} to open the gate")
    assert ("If you mean the morning" in said.body) == (hint is not None)
    assert hint is None or f"“{hint}”" in said.body


async def test_without_an_hour_it_comes_with_the_digest(room: TalkingRoom) -> None:
    await room.says("remind us to wash the lids every second Sunday")
    assert await lives_until(room, 31, 12) == [
        "08 09:00 Today: wash the lids.",
        "22 09:00 Today: wash the lids.",
    ]


async def test_it_goes_on_for_as_long_as_it_was_set(room: TalkingRoom) -> None:
    await room.says("remind us to check the traps every day at 19:30 until 6 March")
    heard = await lives_until(room, 20, 12)
    assert [line[:8] for line in heard] == [
        "02 19:30",
        "03 19:30",
        "04 19:30",
        "05 19:30",
        "06 19:30",
    ]


async def test_a_year_later_it_is_still_said(room: TalkingRoom) -> None:
    await room.says("remind us every year on 14 March to count the bran")
    await room.says("remind us on the first Saturday of the month about the work party")
    await room.waits(days=365 + 14)
    book = await room.book()
    rows = await book.db.rows("SELECT body, made_at FROM outbox WHERE kind = 'digest' ORDER BY id")
    parties = [from_ms(row["made_at"]).date() for row in rows if "work party" in row["body"]]
    assert len(parties) == 13
    assert all(day.weekday() == 5 and day.day <= 7 for day in parties)


async def test_one_person_is_called_by_name_and_all_are_not(room: TalkingRoom) -> None:
    await room.says("hello", who="bram")
    await room.says("remind bram to bring the bran on Friday at 6")
    await room.says("remind us to bring cups on Friday at 6")
    room.now = datetime(2026, 3, 6, 18, tzinfo=UTC)
    [said] = [one.message async for one in room.playback.run_until(room.now)]
    assert said.body == "bram: bring the bran.\nBring cups."
    assert said.mentions == ("@bram:test",)


@pytest.mark.parametrize(
    ("told", "who"), [("", "bram is away: who can?"), (", Ines does my things", "ines for bram")]
)
async def test_one_who_is_away_is_stood_in_for(room: TalkingRoom, told: str, who: str) -> None:
    await room.says("hello", who="bram")
    await room.says("remind Bram to bring the bran on Friday")
    await room.says("remind Bram to feed the hens on Saturday at 6")
    await room.says(f"I'm away till Monday{told}", who="bram")
    assert await lives_until(room, 20, 12) == [
        f"06 09:00 Today: bring the bran ({who}).",
        f"07 18:00 Feed the hens ({who}).",
    ]


async def test_what_cannot_be_is_said_to_be_so(room: TalkingRoom) -> None:
    quiet = await room.says("remind us to look at the stars on Friday at 23:00")
    assert "in your quiet hours, 21:00 to 07:00" in quiet[0].body
    over = await room.says("remind us to have lunch today at noon")
    assert over[0].body.startswith("That moment has passed")
    when = await room.says("pailkeeper, remind us to be happy")
    assert when[0].body == "When? Say “remind us to be happy on Friday at 18:00”."
    assert await room.standing() == []


async def test_said_today_after_the_digest_it_is_still_said_today(room: TalkingRoom) -> None:
    said = await room.says("remind us today to lock the shed")
    assert words(said) == ["I will say it today at 20:00: lock the shed."]
    assert await lives_until(room, 4, 12) == ["02 20:00 Lock the shed."]


@pytest.mark.parametrize(
    ("said", "at"),
    [("in 2 hours", "20:01"), ("in half an hour", "18:31"), ("in 90 minutes", "19:31")],
)
async def test_so_long_from_now_is_an_hour_by_the_clock(
    room: TalkingRoom, said: str, at: str
) -> None:
    assert words(await room.says(f"remind us to wash the lids {said}")) == [
        f"I will say it today at {at}: wash the lids."
    ]
    assert await lives_until(room, 2, 20, 5) == [f"02 {at} Wash the lids."]


async def test_so_many_hours_from_now_may_be_tomorrow(room: TalkingRoom) -> None:
    said = await room.says("remind us to wash the lids in 20 hours")
    assert words(said) == ["I will say it tomorrow at 14:01: wash the lids."]


@pytest.mark.parametrize("hour", ["at 25", "at 25:00", "at 99 pm"])
async def test_what_is_no_hour_is_asked_about(room: TalkingRoom, hour: str) -> None:
    [asked] = await room.says(f"remind us to air the room tomorrow {hour}")
    assert asked.body.startswith("That is no hour of the day.")
    assert await room.standing() == []


async def test_nobody_makes_the_bot_call_the_whole_room(room: TalkingRoom) -> None:
    said = words(await room.says("remind us to tell @room and @Room the lids are dirty in 1 hour"))
    said += await lives_until(room, 2, 20)
    assert len(said) == 2
    assert not any("@room" in each.casefold() for each in said)


async def test_the_day_before_what_is_due_can_be_set(room: TalkingRoom) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says("2 kg of peelings in the shed bin")
    [told] = words(await room.says("remind us the evening before the shed bin is sealed"))
    wish = told.split("“")[1].split("”")[0]
    [told] = words(await room.says(wish))
    assert told == "I will say it Sunday 15 March at 18:00: seal the shed bin."
