"""In the room, everybody can ask what is kept about them, and be taken out of the book."""

import re
from pathlib import Path

import pytest

from storage import backup, forgetting, outbox
from storage.database import Database
from storage.rows import Message
from tests.room import TalkingRoom, words


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


async def test_coming_into_the_room_is_told_as_that(room: TalkingRoom) -> None:
    await room.calls_itself("Oda", who="oda", is_in=False)  # invited
    await room.calls_itself("Oda", who="oda")
    [told] = await room.says("pailkeeper, what do you know about me?", who="oda")
    assert "1 coming into the room" in told.body
    assert "takes a bin" not in told.body


async def test_between_neighbours_it_is_small_talk(room: TalkingRoom) -> None:
    for asked in ("what do you know about me?", "forget me for good", "forget me"):
        assert await room.says(asked, who="nerissa") == []
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


async def kept(db: Database) -> str:
    """All that stands in the book, as it is read."""
    found = []
    for (table,) in await db.rows("SELECT name FROM sqlite_master WHERE type = 'table'"):
        rows = await db.rows(f"SELECT * FROM {table}")  # noqa: S608
        found += [str(value) for row in rows for value in tuple(row)]
    text = "\n".join(found)
    return re.sub(r"\\u([0-9a-f]{4})", lambda code: chr(int(code[1], 16)), text).casefold()


@pytest.mark.parametrize(
    ("shown", "gone"),
    [
        (["Bram Jansen", "BJ"], "jansen"),
        (["Bram Jansen"], "jansen"),
        (["ömer"], "ömer"),
        (["Þór Ægisson", "thor"], "ægisson"),
        (["иван"], "иван"),
        (["nerissa"], "@bram:test"),  # the name of another, told from it by the account
        (["nerissa", "Bram Jansen"], "@bram:test"),
    ],
)
async def test_no_name_that_was_ever_shown_is_left(
    room: TalkingRoom, db: Database, shown: list[str], gone: str
) -> None:
    await room.calls_itself(shown[0], who="bram")
    await room.says("added 1 kg of tea to the shed bin", who="bram")
    await room.says("opened the roof bin, 10 L", who="bram")
    await room.says("added some stuff, maybe 2 kg", who="bram")  # is asked about
    await room.says(f"remind {shown[0]} to bring the scale on Friday at 18:00", who="nerissa")
    await room.says(f"{shown[0]}, can you drain the shed bin on Friday?", who="nerissa")
    await room.says("yes", who="bram")
    await room.says(f"handing the shed bin to {shown[0]} tomorrow", who="nerissa")
    await room.says("I'll take it", who="bram")
    await room.says("who keeps the roof bin?", who="nerissa")
    await room.says(f"rota for the roof bin: {shown[0]}, nerissa, weekly", who="nerissa")
    for name in shown[1:]:
        await room.calls_itself(name, who="bram")
    assert gone in await kept(db)
    await room.says("pailkeeper, forget me for good", who="bram")
    await room.waits(hours=1)
    assert gone not in await kept(db)
    if shown[0] != "nerissa":  # who is reminded herself otherwise
        assert "scale" not in words([m for _ in range(6) for m in await room.waits(days=1)])


@pytest.mark.parametrize(
    ("shown", "place", "left"),
    [
        ("Lea Müller", "under Lea Müllers pear tree", "a neighbour's pear tree"),
        ("Lea Müller", "at Lea's", "a neighbour's"),
        ("Lea Müller", "behind lea Müller’s shed", "a neighbour's shed"),
        ("Lea", "under Leas pear tree", "a neighbour's pear tree"),
        ("Lea", "under the lean pear tree", "lean pear tree"),
        ("The Gardener", "under The pear tree", "pear tree"),
    ],
)
async def test_a_place_no_longer_says_whose_it_is(
    room: TalkingRoom, shown: str, place: str, left: str
) -> None:
    await room.calls_itself(shown, who="lea")
    await room.says(f"buried the shed bin {place}", who="nerissa")
    await room.says("pailkeeper, forget me for good", who="lea")
    [burial] = [entry for entry in await room.standing() if entry.act == "bury"]
    assert burial.facts.place == left


async def test_it_is_owned_up_to_that_a_bin_bears_the_name(room: TalkingRoom) -> None:
    await room.calls_itself("Lea Müller", who="lea")
    await room.says("opened Lea's bin, 10 L", who="nerissa")
    for asked in ("pailkeeper, forget me", "pailkeeper, forget me for good"):
        [told] = await room.says(asked, who="lea")
        assert "Lea's keeps its name" in told.body


async def test_only_they_themselves_can_ask_for_it(room: TalkingRoom) -> None:
    [told] = await room.says("pailkeeper, forget nerissa for good", who="bram")
    assert told.body.startswith("Only nerissa can ask for that")
    assert "nerissa" in [member.name for member in await (await room.book()).members()]
    assert sorted(mass or 0 for mass in await masses(room)) == [1.0, 2.0, 3.0]


async def test_nobody_is_told_that_one_who_was_forgotten_has_left(room: TalkingRoom) -> None:
    await room.says("pailkeeper, forget me for good", who="nerissa")
    [told] = await room.calls_itself("bram", who="bram", is_in=False)
    assert told.body.startswith("Nobody keeps the shed bin. Who takes it?")
    [asked] = await room.says("how is the shed bin?", who="oda")
    assert "left" not in asked.body
    assert "former" not in asked.body


async def test_what_is_still_to_be_said_to_others_is_said(room: TalkingRoom, db: Database) -> None:
    book = await room.book()
    async with db.transaction():
        for row, body in enumerate(["Drain the shed bin.", "Nerissa, drain the shed bin."]):
            message = Message(tx_id=f"late-{row}", kind="digest", body=body)
            await outbox.put(db, book.room.id, message, room.now)
        [nerissa] = [one for one in await book.members() if one.name == "nerissa"]
        await forgetting.forget_member(book, nerissa)
    assert [row.message.body for row in await outbox.waiting(db)] == ["Drain the shed bin."]


async def test_dues_go_with_the_name_that_is_shown(room: TalkingRoom) -> None:
    await room.says("remind bram to bring the scale tomorrow", who="nerissa")
    await room.says("handing the shed bin to bram tomorrow", who="nerissa")
    await room.says("I'll take it", who="bram")
    await room.calls_itself("Captain Bokashi", who="bram")
    [mine] = await room.says("what's mine?", who="bram")
    [due] = await room.says("what's due?", who="nerissa")
    for part in ("hand over the shed bin", "bring the scale"):
        assert part in mine.body
        assert part in due.body
    assert "Captain Bokashi" in due.body
    assert "bram" not in due.body


async def test_what_was_asked_is_answered_under_another_name(room: TalkingRoom) -> None:
    await room.says("opened the roof bin, 10 L", who="nerissa")
    [asked] = await room.says("added 4 kg scraps", who="oda")
    assert "Which bin" in asked.body
    await room.calls_itself("BJ", who="oda")
    await room.says("the roof", who="oda")
    [layer] = [one for one in await room.standing() if one.facts.mass_kg == 4.0]
    assert layer.bin
    assert layer.bin.name == "roof"
    assert layer.member == "BJ"


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
    assert refused.body.startswith("Only bram can ask for that")
    assert "bram" in [member.name for member in await (await room.book()).members()]
    assert await room.says(words, who="nerissa") == []
