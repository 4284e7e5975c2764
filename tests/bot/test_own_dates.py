"""What members set themselves is said at its hour, once, whatever happens; marks answer it."""

from datetime import UTC, date, datetime, time
from zoneinfo import ZoneInfo

import pytest

from bot.reminders import tell
from handlers.reading.acts import Layer, Set
from storage import rooms
from storage.book import Book
from storage.database import Database
from storage.moments import from_ms
from storage.rows import Message
from tests.group import BEGIN, Group
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """A room in Lisbon on Monday 2 March 2026 at 18:00."""
    room = TalkingRoom(db)
    await room.waits(minutes=0)
    return room


def words(said: list[Message]) -> list[str]:
    return [message.body for message in said]


async def lives_until(room: TalkingRoom, day: int, hour: int, minute: int = 0) -> list[str]:
    """What is said unasked until a moment of March 2026, with its local time."""
    moment = datetime(2026, 3, day, hour, minute, tzinfo=ZoneInfo("Europe/Lisbon"))
    room.now = max(room.now, moment.astimezone(UTC))
    zone = ZoneInfo("Europe/Lisbon")
    return [
        f"{spoken.at.astimezone(zone):%d %H:%M} {spoken.message.body}"
        async for spoken in room.playback.run_until(room.now)
    ]


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


async def test_an_outage_ends_in_one_digest_of_all_that_was_missed(
    room: TalkingRoom, db: Database
) -> None:
    await room.says("remind us to empty the shed caddy on Wednesday at 6")
    await room.says("remind us to wash the lids on Thursday")
    await room.says("added 2 kg to the shed bin")
    told = [datetime(2026, 3, 6, hour, 30, tzinfo=UTC) for hour in (14, 15, 20)]
    for moment in told:
        await tell(db, moment)
    rows = await db.rows("SELECT body FROM outbox WHERE kind IN ('digest', 'reminder')")
    assert [row["body"] for row in rows] == [
        "Late, since yesterday: drain the shed bin (ines).\n"
        "Meant for yesterday: wash the lids.\n"
        "Meant for Wednesday 4 March: empty the shed caddy at 18:00."
    ]


async def test_a_pause_ends_in_one_word_for_each_that_fell_into_it(room: TalkingRoom) -> None:
    await room.says("remind me to ring the school on 4 March")
    await room.says("remind us every Tuesday to turn the soil")
    await room.says("remind us every day at 8 to lift the lid")
    await room.says("no reminders till 25 March")
    heard = await lives_until(room, 26, 7)
    assert heard == [
        "25 08:00 Lift the lid.",
        "25 09:00 Meant for yesterday: turn the soil.\nMeant for Wednesday 4 March: ring the "
        "school (ines).",
    ]


async def test_what_was_missed_on_its_own_day_is_said_late(room: TalkingRoom, db: Database) -> None:
    await room.says("remind us to empty the shed caddy on Wednesday at 6")
    await tell(db, datetime(2026, 3, 4, 20, 10, tzinfo=UTC))
    await tell(db, datetime(2026, 3, 4, 20, 20, tzinfo=UTC))
    rows = await db.rows("SELECT body FROM outbox WHERE kind = 'reminder'")
    assert [row["body"] for row in rows] == ["Empty the shed caddy."]


async def test_quiet_hours_that_were_set_later_are_kept(room: TalkingRoom) -> None:
    await room.says("remind us to empty the shed caddy on Friday at 20:00")
    await room.says("quiet hours 19:00 to 8:00")
    assert await lives_until(room, 9, 12) == [
        "07 09:00 Meant for yesterday: empty the shed caddy at 20:00."
    ]


@pytest.mark.parametrize(
    ("zone", "hour", "day", "said_at"),
    [
        # 02:30 does not exist in New York on 8 March 2026 (tz database): said an hour later.
        ("America/New_York", time(2, 30), date(2026, 3, 8), "2026-03-08T03:30:00-04:00"),
        # 01:30 comes twice on 1 November 2026: said the first time.
        ("America/New_York", time(1, 30), date(2026, 11, 1), "2026-11-01T01:30:00-04:00"),
        ("Pacific/Chatham", time(2, 45), date(2026, 9, 27), "2026-09-27T03:45:00+13:45"),
    ],
)
async def test_an_hour_that_is_missing_or_comes_twice(
    db: Database, zone: str, hour: time, day: date, said_at: str
) -> None:
    room = TalkingRoom(db, zone=zone)
    room.now = datetime.combine(day, time(12), ZoneInfo(zone)).astimezone(UTC)
    room.now = room.now.replace(day=max(room.now.day - 2, 1)) if room.now.day > 2 else BEGIN
    await room.says("pailkeeper, quiet hours off")
    said = await room.says(f"remind us to look up on {day.isoformat()} at {hour:%H:%M}")
    assert said[0].body.startswith("I will say it"), said
    wake = await tell(db, room.now)
    until = datetime.combine(day, time(23), ZoneInfo(zone)).astimezone(UTC)
    while wake and wake < until:
        wake = await tell(db, wake)
    rows = await db.rows("SELECT made_at FROM outbox WHERE kind = 'reminder'")
    local = [from_ms(row["made_at"]).astimezone(ZoneInfo(zone)).isoformat() for row in rows]
    assert local == [said_at]


async def test_reminders_that_are_off_keep_the_calendar_going(
    group: Group, db: Database, room: TalkingRoom
) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Set(what="reminders", value="off"))
    book = Book(db, (await rooms.every(db))[0])
    for day in (4, 5, 6):
        await tell(db, datetime(2026, 3, day, 9, tzinfo=UTC))
    assert await db.rows("SELECT 1 FROM outbox") == []
    assert (await book.dues())[0].told_on is None
    del room


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
        ("make the rice one Saturday instead", False),
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


async def test_the_day_before_what_is_due_can_be_set(room: TalkingRoom) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says("2 kg of peelings in the shed bin")
    [told] = words(await room.says("remind us the evening before the shed bin is sealed"))
    wish = told.split("“")[1].split("”")[0]
    [told] = words(await room.says(wish))
    assert told == "I will say it Sunday 15 March at 18:00: seal the shed bin."


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


async def test_another_hour_and_every_week_are_said_behind_it(room: TalkingRoom) -> None:
    await room.says("remind us on Friday at 18:00 to empty the caddy")
    [told] = words(await room.says("make it 7"))
    assert told == "I will say it Friday 6 March at 19:00: empty the caddy."
    [told] = words(await room.says("same every week"))
    assert told.startswith("I will say it every Friday at 19:00, from Friday 6 March on")


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


async def test_a_pause_may_begin_on_a_day_to_come(room: TalkingRoom) -> None:
    await room.says("remind us every Friday to empty the caddy")
    [told] = words(await room.says("pause reminders for the holidays, 10th to 18th March"))
    assert told.startswith("No reminders from Tuesday 10 March until Thursday 19 March")
    assert await lives_until(room, 21, 12) == [
        "06 09:00 Today: empty the caddy.",
        "19 09:00 Meant for Friday 13 March: empty the caddy.",
        "20 09:00 Today: empty the caddy.",
    ]
