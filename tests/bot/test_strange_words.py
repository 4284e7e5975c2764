"""What nobody would write, but anybody can send: it is let in harmless, and stops nobody."""

import pytest

from bot.content import event_of
from bot.export import as_csv
from storage.database import Database
from storage.rows import Waiting
from tests.room import BEGIN, TalkingRoom


@pytest.fixture
def room(db: Database) -> TalkingRoom:
    return TalkingRoom(db)


HALF = "\ud83d"
"""Half of a surrogate pair: JSON can write it, UTF-8 and SQLite cannot."""


async def test_half_a_character_stops_nobody(room: TalkingRoom) -> None:
    await room.says(f"added 2 kg scraps to the shed bin {HALF}", event="$m")
    await room.marks("$m", HALF)
    await room.marks(HALF, "❌")
    await room.deletes(HALF)
    await room.edits(HALF, HALF)
    await room.says(HALF, who=f"mall{HALF}ory")
    await room.event("m.room.member", {"membership": "join", "displayname": HALF})
    await room.event("m.room.member", {HALF: HALF})
    assert await room.says("how full is the shed bin?")
    assert [entry.facts.mass_kg for entry in await room.standing()] == [2.0]


async def test_a_number_that_is_none_stops_nobody(room: TalkingRoom) -> None:
    content = {"msgtype": "m.text", "body": "added 2 kg scraps to the shed bin", "x": float("nan")}
    assert await room.event("m.room.message", content)
    assert len(await room.standing()) == 1


async def test_half_an_event_id_is_passed_over(room: TalkingRoom) -> None:
    assert await room.says("added 2 kg scraps to the shed bin", event=f"$m{HALF}") == []
    assert await room.says("added 2 kg scraps to the shed bin")


async def test_an_event_without_bottom_is_passed_over(room: TalkingRoom) -> None:
    bottom: object = 1
    for _ in range(900):
        bottom = [bottom]
    assert await room.event("m.room.message", {"body": "added 2 kg scraps", "x": bottom}) == []
    assert await room.says("added 1 kg scraps to the shed bin")
    assert len(await room.standing()) == 1


@pytest.mark.parametrize(
    "said",
    [
        "added 2 kg scraps to the sh\u202eed bin",
        "added 2 kg scraps to the shed\u200b bin",
        "\u2066added 2 kg scraps to the shed bin\u2069",
        "added 2 kg\0 scraps to the shed bin",
    ],
)
async def test_what_cannot_be_seen_makes_no_other_bin(room: TalkingRoom, said: str) -> None:
    await room.says("added 1 kg scraps to the shed bin")
    await room.says(said)
    assert [bin.name for bin in await (await room.book()).bins()] == ["shed"]


async def test_no_word_of_a_reply_is_without_end(room: TalkingRoom) -> None:
    long = "shed" * 500
    [answer] = await room.says(f"added 2 kg scraps to the {long} bin")
    assert len(answer.body) < 1000
    [entry] = await room.standing()
    assert entry.bin
    assert len(entry.bin.name) == 40
    # The same again is the same bin.
    await room.says(f"added 1 kg scraps to the {long} bin")
    assert len(await (await room.book()).bins()) == 1


@pytest.mark.parametrize(
    "name", ["=HYPERLINK(1)", "<b>Ana</b>", "@room", "-2+3", "Ana\u202e\n<br>"]
)
async def test_a_members_name_is_words_everywhere(room: TalkingRoom, name: str) -> None:
    await room.event("m.room.member", {"membership": "join", "displayname": name})
    renamed = {
        "type": "m.room.member",
        "event_id": "$join",
        "sender": "@ines:test",
        "state_key": "@ines:test",
        "origin_server_ts": int(room.now.timestamp() * 1000),
        "content": {"membership": "join", "displayname": name},
    }
    await room.playback.take(renamed, room.now)
    said = await room.says("added 2 kg scraps to the shed bin")
    said += await room.says("drained the shed bin and sealed it")
    said += await room.says("who has the shed bin?")
    for message in said:
        if message.kind == "reaction":
            continue
        row = Waiting(id=1, room="!r", message=message, made_at=BEGIN)
        _, content = event_of(row)
        assert content["m.mentions"] == {}
        assert "\u202e" not in content["body"]
        assert "<b" not in content.get("formatted_body", "").replace("<br>", "")
    for line in (await as_csv(await room.book())).splitlines():
        assert not any(cell.lstrip('"')[:1] in "=@\t" for cell in line.split(",") if cell)
