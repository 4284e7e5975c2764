"""Who sees to what while its keeper is away; and the calendar as it hangs in the room."""

from datetime import UTC, date, datetime, timedelta

import pytest

from bot.reminders import tell
from handlers.planning.calendar import notice
from handlers.reading.acts import Ask, Layer, Open, Seal
from storage.database import Database
from tests.group import Group
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Bram keeps the shed bin, to be drained on 4 or 5 March; Ines has fed it too."""
    room = TalkingRoom(db)
    await room.waits(minutes=0)
    await room.says("opened the shed bin, 20 L", who="bram")
    await room.says("added 1 kg to the shed bin", who="bram")
    await room.says("added 1 kg to the shed bin", who="ines")
    await room.says("hello", who="dov")
    return room


async def digest(room: TalkingRoom, day: int) -> tuple[str, str]:
    """The words of a day's digest and whom it calls."""
    await tell(room.db, datetime(2026, 3, day, 9, tzinfo=UTC))
    rows = await room.db.rows("SELECT body, mentions FROM outbox WHERE kind = 'digest'")
    return rows[-1]["body"], rows[-1]["mentions"]


async def test_whoever_last_had_a_hand_in_a_bin_stands_in(room: TalkingRoom) -> None:
    await room.says("I'm away till Monday", who="bram")
    assert await digest(room, 4) == (
        "Today or tomorrow: drain the shed bin (ines for bram).",
        '["@ines:test"]',
    )


async def test_whoever_is_named_stands_in(room: TalkingRoom) -> None:
    await room.says("I'm away till Monday, Dov looks after my bin", who="bram")
    assert await digest(room, 4) == (
        "Today or tomorrow: drain the shed bin (dov for bram).",
        '["@dov:test"]',
    )


async def test_where_nobody_is_left_it_is_asked_who_can(room: TalkingRoom) -> None:
    await room.says("I'm away till Monday", who="bram")
    await room.says("I'm away till Friday", who="ines")
    assert await digest(room, 4) == (
        "Today or tomorrow: drain the shed bin (bram is away: who can?).",
        "[]",
    )


async def test_a_keeper_who_is_back_in_time_keeps_it(room: TalkingRoom) -> None:
    await room.says("I'm away till Thursday", who="bram")
    [told] = await room.says("what's due?")
    assert told.body.splitlines()[0] == "Wednesday 4 or Thursday 5 March: drain the shed bin (bram)"


async def test_what_is_done_for_another_counts_as_theirs(room: TalkingRoom) -> None:
    await room.says("I'm away till Monday", who="bram")
    room.now = datetime(2026, 3, 4, 9, tzinfo=UTC)
    [said] = [one.message async for one in room.playback.run_until(room.now)]
    await room.marks(said.tx_id, "✅", who="ines")
    assert [(e.act, e.member) for e in await room.standing()][-1] == ("drain", "ines")


async def test_done_in_reply_to_a_digest_is_about_what_it_named(room: TalkingRoom) -> None:
    room.now = datetime(2026, 3, 4, 9, tzinfo=UTC)
    [said] = [one.message async for one in room.playback.run_until(room.now)]
    await room.says("added 2 kg to the yard bin", who="bram")
    room.now += timedelta(days=2)
    [mark] = await room.says("done", who="bram", replies_to=said.tx_id)
    assert mark.kind == "reaction"
    assert [(e.act, e.bin.name if e.bin else "") for e in await room.standing()][-1] == (
        "drain",
        "shed",
    )


async def test_the_notice_tells_dates_so_that_it_stays_true(group: Group) -> None:
    await group.says(Open(bin="shed", capacity_l=20.0), who="bram")
    await group.says(Layer(mass_kg=2.0, bin="shed"), who="bram")
    await group.says(Seal(bin="yard"), days=-6)
    assert (await notice(group.book, date(2026, 3, 2))).splitlines() == [
        "What is due",
        "Late, since Friday 27 February: drain the yard bin (ines)",
        "Wednesday 4 or Thursday 5 March: drain the shed bin (bram)",
        "Friday 6 to Tuesday 10 March: bury the yard bin (ines)",
        "Monday 16 March: seal the shed bin (bram)",
    ]


async def test_the_notice_of_an_empty_book(group: Group) -> None:
    assert await notice(group.book, date(2026, 3, 2)) == "What is due\nNothing just now."


@pytest.mark.parametrize(
    ("asked", "said"),
    [
        (Ask(topic="due", bin="shed", what="bury"), "The shed bin is not sealed yet. Sealed today"),
        (Ask(topic="due", bin="shed", what="plant"), "The shed bin is not buried yet."),
        (Ask(topic="due", bin="shed", what="drain"), "Wednesday 4 or Thursday 5 March: drain"),
        (Ask(topic="due", bin="yard", what="bury"), "Friday 6 to Tuesday 10 March: bury the yard"),
        (Ask(topic="due", bin="hall", what="bury"), "There is nothing in the hall bin yet."),
    ],
)
async def test_when_a_bin_can_be_dealt_with(group: Group, asked: Ask, said: str) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Seal(bin="yard"), days=-6)
    await group.says(Open(bin="hall"))
    assert (await group.says(asked)).say.startswith(said)
