"""What nobody would write, but anybody can send: it is let in harmless, and stops nobody."""

from datetime import UTC, datetime

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


@pytest.mark.parametrize("said", ["😀", "👍👍", "🍌🥕🍞", "🪣", "‍", "🤢🤮", "❌", "✅"])
async def test_a_message_of_pictures_is_no_record(room: TalkingRoom, said: str) -> None:
    await room.says("opened the shed bin, 20 L")
    assert await room.says(said) == []
    assert [entry.act for entry in await room.standing()] == ["open"]


async def test_two_who_show_one_name_are_told_apart(room: TalkingRoom) -> None:
    for user in ("@a:one", "@b:two"):
        raw: dict[str, object] = {
            "type": "m.room.member",
            "event_id": f"$join-{user}",
            "sender": user,
            "state_key": user,
            "origin_server_ts": int(room.now.timestamp() * 1000),
            "content": {"membership": "join", "displayname": "Sam"},
        }
        await room.playback.take(raw, room.now)
        await room.says("added 1 kg to the shed bin", who=user)
    await room.says("scratch that", who="@a:one")
    assert [entry.member for entry in await room.standing()] == ["Sam (@b:two)"]
    [asked] = await room.says("Sam, can you take the shed bin?")
    assert asked.body == (
        "Whom do you mean, Sam or Sam (@b:two)? Say it again with the whole name."
    )


async def test_an_edit_of_an_edit_and_a_reply_to_what_is_gone_change_nothing(
    room: TalkingRoom,
) -> None:
    await room.says("added 2 kg to the shed bin", event="$m")
    await room.edits("$m", "added 3 kg to the shed bin", event="$e")
    assert await room.edits("$e", "added 4 kg to the shed bin") == []
    assert [entry.facts.mass_kg for entry in await room.standing()] == [3.0]
    await room.deletes("$m")
    for words in ("no, 5 kg", "scratch that", "put it back"):
        await room.says(words, replies_to="$m")
    assert await room.edits("$m", "added 6 kg to the shed bin") == []
    assert await room.standing() == []


async def test_an_hour_that_comes_twice_is_told_once(room: TalkingRoom) -> None:
    room.now = datetime(2026, 10, 23, 12, tzinfo=UTC)  # Lisbon's clocks go back on the 25th
    await room.says("added 1 kg to the shed bin")
    await room.says("quiet hours 22:00 to 0:30")
    await room.says("remind us at 1:30 am")
    await room.says("remind us to check the tap on Sunday at 1:30 am")
    await room.waits(minutes=1)
    told = [message for _ in range(160) for message in await room.waits(minutes=15)]
    assert [message.kind for message in told] == ["digest", "reminder"]


async def test_records_of_a_doubled_hour_keep_their_order(room: TalkingRoom) -> None:
    room.now = datetime(2026, 10, 25, 0, 40, tzinfo=UTC)  # 1:40, for the first time
    await room.says("added 1 kg to the shed bin")
    room.now = datetime(2026, 10, 25, 1, 20, tzinfo=UTC)  # 1:20, for the second time
    await room.says("added 2 kg to the shed bin")
    await room.says("no, 3 kg")
    standing = [(e.facts.mass_kg, f"{e.on}") for e in await room.standing()]
    assert standing == [(1.0, "2026-10-25"), (3.0, "2026-10-25")]
