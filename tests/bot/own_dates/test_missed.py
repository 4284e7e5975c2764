"""What falls into an outage, a pause, quiet hours or a change of the clocks."""

from datetime import UTC, date, datetime, time
from zoneinfo import ZoneInfo

import pytest

from bot.reminders import tell
from handlers.reading.acts import Layer, Set
from storage import rooms
from storage.book import Book
from storage.database import Database
from storage.moments import from_ms
from tests.bot.own_dates.spoken import lives_until, words
from tests.group import BEGIN, Group
from tests.room import TalkingRoom


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


async def test_a_pause_may_begin_on_a_day_to_come(room: TalkingRoom) -> None:
    await room.says("remind us every Friday to empty the caddy")
    [told] = words(await room.says("pause reminders for the holidays, 10th to 18th March"))
    assert told.startswith("No reminders from Tuesday 10 March until Thursday 19 March")
    assert await lives_until(room, 21, 12) == [
        "06 09:00 Today: empty the caddy.",
        "19 09:00 Meant for Friday 13 March: empty the caddy.",
        "20 09:00 Today: empty the caddy.",
    ]
