"""What was just said is put off by a mark or in a few words; other talk puts nothing off."""

from datetime import UTC, datetime

import pytest

from tests.bot.own_dates.spoken import lives_until, words
from tests.room import TalkingRoom


async def test_a_reminder_is_put_off_by_its_mark_and_comes_once_more(room: TalkingRoom) -> None:
    await room.says("remind me to water the bed on Friday at 6")
    room.now = datetime(2026, 3, 6, 18, tzinfo=UTC)
    [said] = [one.message async for one in room.playback.run_until(room.now)]
    answer = await room.marks(said.tx_id, "💤")
    assert words(answer) == ["I will say again tomorrow: water the bed."]
    assert await lives_until(room, 20, 12) == ["07 09:00 Today: water the bed (ines)."]


async def test_a_mark_on_one_line_means_that_line(room: TalkingRoom) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says("sealed the yard bin", event="$seal")
    await room.says("added 2 kg to the shed bin")
    room.now = datetime(2026, 3, 4, 9, tzinfo=UTC)
    [digest] = [one.message async for one in room.playback.run_until(room.now)]
    assert digest.body == "Today or tomorrow: drain the shed bin (ines) and the yard bin (ines)."
    room.now = datetime(2026, 3, 12, 9, tzinfo=UTC)
    later = [one.message async for one in room.playback.run_until(room.now)]
    digest = later[-1]
    assert digest.body.splitlines()[0].startswith("Today, or by")
    await room.marks(digest.tx_id, "1️⃣")
    acts = [entry.act for entry in await room.standing()]
    assert acts.count("bury") == 1
    assert acts.count("drain") == 0


@pytest.mark.parametrize(
    "said",
    [
        "show me the next two weeks",
        "remind everyone a day ahead of each burial",
        "remind us half an hour earlier",
        "remind me when it's thawed",
    ],
)
async def test_what_is_wished_sooner_or_shown_puts_nothing_off(
    room: TalkingRoom, said: str
) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says("2 kg of peelings in the shed bin")
    await lives_until(room, 4, 10)
    [told] = words(await room.says(said))
    assert "I will say again" not in told
    assert not any(due.put_off_until for due in await (await room.book()).dues())


async def test_only_what_was_named_last_is_put_off(room: TalkingRoom) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says("sealed the shed bin")
    await lives_until(room, 16, 12)
    [told] = words(await room.says("leave it another week"))
    assert told == "I will say again Monday 23 March: bury the shed bin."
    [told] = words(await room.says("what's due?"))
    assert told.splitlines() == [
        "Late by 11 days: drain the shed bin (ines)",
        "Monday 23 March, put off: bury the shed bin (ines)",
    ]


async def test_what_another_has_just_talked_of_puts_nothing_off(room: TalkingRoom) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says("2 kg of peelings in the shed bin")
    await lives_until(room, 5, 10)
    await room.says("we could move the party to the 20th", who="bram")
    assert not await room.says("leave it another week, the weather's awful")
    [told] = words(await room.says("bot, leave it another week"))
    assert told.startswith("I will say again")


@pytest.mark.parametrize(
    ("said", "until"),
    [
        ("at the weekend", "Saturday 7 March"),
        ("next week", "Wednesday 11 March"),
        ("tomorrow evening", "tomorrow"),
        ("Friday, sorry", "Friday 6 March"),
        ("can't get to it before Saturday", "Saturday 7 March"),
    ],
)
async def test_a_day_alone_puts_off_what_was_just_reminded_of(
    room: TalkingRoom, said: str, until: str
) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says("2 kg of peelings in the shed bin")
    await lives_until(room, 4, 10)
    [told] = words(await room.says(said))
    assert told == f"I will say again {until}: drain the shed bin."


@pytest.mark.parametrize("said", ["at the weekend", "next week", "Friday, sorry"])
async def test_a_day_alone_behind_another_answer_puts_nothing_off(
    room: TalkingRoom, said: str
) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says("2 kg of peelings in the shed bin")
    await lives_until(room, 4, 10)
    await room.says("how much water for 100 ml?")
    assert not any("again" in told for told in words(await room.says(said)))
