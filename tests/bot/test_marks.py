"""A ✅ or 💤 on the digest: done, or not now."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def reminded(db: Database) -> tuple[TalkingRoom, str]:
    """A room in which Ines and Bram were reminded to drain a bin each; the digest's event."""
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L", who="ines")
    await room.says("added 2 kg scraps to the shed bin", who="ines")
    await room.says("opened the yard bin, 20 L", who="bram")
    await room.says("added 2 kg scraps to the yard bin", who="bram")
    said = [message for _ in range(2) for message in await room.waits(days=1)]
    [digest] = [message for message in said if message.kind == "digest"]
    assert "drain the shed bin (ines) and the yard bin (bram)" in digest.body
    return room, digest.tx_id


async def drained(room: TalkingRoom) -> list[tuple[str, str | None]]:
    return [
        (entry.bin.name if entry.bin else "", entry.member)
        for entry in await room.standing()
        if entry.act == "drain"
    ]


@pytest.mark.parametrize("mark", ["✅", "✔️"])
async def test_a_tick_means_my_part_is_done(reminded: tuple[TalkingRoom, str], mark: str) -> None:
    room, digest = reminded
    await room.marks(digest, mark, who="bram")
    assert await drained(room) == [("yard", "bram")]


async def test_a_tick_that_is_taken_back_is_undone(reminded: tuple[TalkingRoom, str]) -> None:
    room, digest = reminded
    await room.marks(digest, "✅", who="bram", event="$tick")
    await room.deletes("$tick", who="bram")
    assert await drained(room) == []


async def test_sleep_puts_off_my_part(reminded: tuple[TalkingRoom, str]) -> None:
    room, digest = reminded
    [answer] = await room.marks(digest, "💤", who="bram")
    assert answer.body == "I will say again tomorrow: drain the yard bin."
    [again] = [message for message in await room.waits(days=1) if message.kind == "digest"]
    assert again.body == "Today: drain the yard bin (bram)."
    assert again.mentions == ("@bram:test",)


@pytest.mark.parametrize(("mark", "who"), [("❤️", "bram"), ("✅", "cleo"), ("💤", "cleo")])
async def test_other_marks_and_other_people_change_nothing(
    reminded: tuple[TalkingRoom, str], mark: str, who: str
) -> None:
    room, digest = reminded
    assert await room.marks(digest, mark, who=who) == []
    assert await drained(room) == []


@pytest.mark.parametrize("first", ["$on record", "$on answer"])
async def test_what_is_struck_out_twice_stays_so_until_both_are_taken_back(
    db: Database, first: str
) -> None:
    room = TalkingRoom(db)
    await room.says("added 2 kg scraps to the shed bin", event="$layer")
    await room.marks("$layer", "❌", event="$on record")
    await room.marks("re-$layer", "❌", event="$on answer")
    assert await room.kilos() == []
    await room.deletes(first)
    assert await room.kilos() == []
    [second] = {"$on record", "$on answer"} - {first}
    await room.deletes(second)
    assert await room.kilos() == [2.0]
