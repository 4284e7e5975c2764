"""Who drains on which days of the week, and what "who drains today" is answered with."""

from storage.database import Database
from tests.room import TalkingRoom, words


async def drained_by_turns(db: Database) -> TalkingRoom:
    """A shed bin with a layer; Bram drains it on Tuesdays, Zoe on Fridays."""
    room = TalkingRoom(db)
    for who in ("ines", "bram", "zoe"):
        await room.calls_itself(who.title(), who=who)
    await room.says("opened the shed bin, 30 L")
    await room.says("added 3 kg")
    said = await room.says("bram drains the shed bin on Tuesdays, zoe on Fridays")
    assert "Bram: drain the shed bin" in words(said)
    assert "Zoe: drain the shed bin" in words(said)
    return room


async def test_whose_day_it_is_hands_no_bin_over(db: Database) -> None:
    room = await drained_by_turns(db)
    assert await room.keeper("shed") == "Ines"


async def test_who_drains_is_answered_with_those_whose_day_it_is(db: Database) -> None:
    room = await drained_by_turns(db)
    await room.waits(days=1)
    asked_today = await room.says("who drains today", who="zoe")
    assert "Today: drain the shed bin (Bram)" in words(asked_today)
    asked_ahead = await room.says("who's draining on Friday?", who="bram")
    assert "Friday 6 March: drain the shed bin (Zoe)" in words(asked_ahead)


async def test_who_drains_is_for_others_behind_other_talk(db: Database) -> None:
    room = await drained_by_turns(db)
    await room.waits(hours=3)
    await room.says("our bath is blocked", who="zoe")
    await room.says("oh no", who="bram")
    assert not await room.says("who drains tonight, bram or the plumber", who="zoe")
