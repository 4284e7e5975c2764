"""In the room, everybody can ask what is kept about them, and be taken out of the book."""

from pathlib import Path

import pytest

from storage import backup
from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Two neighbours fill one bin; one of them is named in answers, dues and links."""
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L", who="nerissa")
    await room.says("added 2 kg scraps to the shed bin", who="nerissa")
    await room.says("added 1 kg scraps to the shed bin", who="bram")
    await room.says("nerissa takes the shed bin", who="bram")
    await room.says("I'll take the shed bin", who="nerissa")
    await room.says("added 3 kg scraps", who="nerissa", event="$last")
    return room


async def masses(room: TalkingRoom) -> list[float | None]:
    return [e.facts.mass_kg for e in await room.standing() if e.act == "layer"]


async def test_what_is_known_is_told(room: TalkingRoom) -> None:
    await room.marks("$last", "❌", who="nerissa")
    [told] = await room.says("pailkeeper, what do you know about me?", who="nerissa")
    for part in (
        "nerissa (@nerissa:test)",
        "1 layer",
        "1 struck out",
        "2 kg in all",
        "shed bin now",
    ):
        assert part in told.body
    assert "bram" not in told.body
    [told] = await room.says("pailkeeper, what do you know about me?", who="oda")
    assert "no records by you or about you" in told.body


async def test_between_neighbours_it_is_small_talk(room: TalkingRoom) -> None:
    for words in ("what do you know about me?", "forget me for good", "forget me"):
        assert await room.says(words, who="nerissa") == []
    assert sorted(mass or 0 for mass in await masses(room)) == [1.0, 2.0, 3.0]


async def test_one_who_asks_for_it_is_forgotten(
    room: TalkingRoom, db: Database, tmp_path: Path
) -> None:
    [warned] = await room.says("pailkeeper, forget me", who="nerissa")
    assert "forget me for good" in warned.body
    [again] = await room.says("yes", who="nerissa")
    assert again.body == warned.body
    assert "nerissa" in [member.name for member in await (await room.book()).members()]
    [done] = await room.says("pailkeeper, forget me for good", who="nerissa")
    assert "3 records stay, without the name" in done.body
    assert sorted(mass or 0 for mass in await masses(room)) == [1.0, 2.0, 3.0]
    [full] = await room.says("what went into the shed bin so far?", who="bram")
    assert "6 kg" in full.body
    await db.close()
    assert b"nerissa" not in (tmp_path / "book.db").read_bytes().lower()
    assert backup.faults(tmp_path / "book.db", thorough=True) == []


async def test_one_who_was_forgotten_begins_anew(room: TalkingRoom) -> None:
    await room.says("pailkeeper, forget me for good", who="nerissa")
    await room.says("scratch that", who="nerissa")
    await room.edits("$last", "added 9 kg scraps", who="nerissa")
    await room.deletes("$last", who="nerissa")
    await room.says("added 4 kg scraps to the shed bin", who="nerissa")
    [told] = await room.says("pailkeeper, what do you know about me?", who="nerissa")
    assert "1 layer" in told.body
    assert "4 kg in all" in told.body


async def test_reminders_for_one_who_was_forgotten_end(room: TalkingRoom) -> None:
    await room.says("remind me to buy bran on Friday", who="nerissa")
    await room.says("remind Nerissa every Friday at 18:00 to sing", who="bram")
    await room.says("remind us to sweep on Friday", who="nerissa")
    await room.says("pailkeeper, forget me for good", who="nerissa")
    [told] = await room.says("which reminders are set?", who="bram")
    assert told.body == "Friday 6 March: sweep."
    days = [await room.waits(days=1) for _ in range(6)]
    said = "\n".join(message.body for day in days for message in day)
    assert "sweep" in said
    assert not any(word in said for word in ("bran", "sing", "former"))


async def test_alone_with_the_bot_its_name_need_not_be_said(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("added 2 kg scraps to the shed bin")
    [told] = await room.says("what do you know about me?")
    assert "1 layer" in told.body


@pytest.mark.parametrize(
    "words", ["forget bram", "please forget bram for good", "erase bram's data"]
)
async def test_only_oneself_can_ask_it(room: TalkingRoom, words: str) -> None:
    [refused] = await room.says(f"pailkeeper, {words}", who="nerissa")
    assert refused.body.startswith("Only bram can ask me that")
    assert "bram" in [member.name for member in await (await room.book()).members()]
    assert await room.says(words, who="nerissa") == []
