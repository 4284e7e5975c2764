"""Names, ends, rules and who may decide on them."""

from typing import Any

import pytest

from storage.database import Database
from storage.rows import Message
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 30 L")
    await room.says("added 2 kg scraps to the yard bin", who="bram")
    return room


async def state(
    room: TalkingRoom, kind: str, content: dict[str, Any], who: str = "ines", key: str | None = ""
) -> list[Message]:
    """A state event, or with no key what only looks like one."""
    room.count += 1
    raw = {
        "type": kind,
        "event_id": f"$e{room.count}",
        "sender": f"@{who}:test",
        "origin_server_ts": int(room.now.timestamp() * 1000),
        "content": content,
    }
    raw |= {} if key is None else {"state_key": key}
    return [spoken.message for spoken in await room.playback.take(raw, room.now)]


async def test_a_bin_is_renamed_and_known_by_both_names(room: TalkingRoom) -> None:
    [told] = await room.says("rename the yard bin to Gertie", event="$new")
    assert told.body.startswith("The yard bin is Gertie now.")
    for name in ("Gertie", "the yard bin"):
        [told] = await room.says(f"how full is {name}?")
        assert told.body.startswith("Gertie: filling, 1 layer, 2 kg")
    await room.says("added 1 kg scraps to the yard bin")
    assert [bin.name for bin in await (await room.book()).bins()] == ["Gertie"]
    await room.deletes("$new")
    [told] = await room.says("how full is the yard bin?")
    assert told.body.startswith("The yard bin: filling, 2 layers, 3 kg")


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("rename the yard bin to shed", "There is the shed bin already."),
        ("rename the yard bin to yard", "The yard bin is called so already."),
        ("rename the attic bin to Gertie", ""),
        ("swap the names of the yard and the shed bin", "Two bins cannot take each other's names"),
    ],
)
async def test_what_is_no_name_is_refused(room: TalkingRoom, said: str, told: str) -> None:
    await room.says("opened the shed bin")
    answer = await room.says(said)
    assert "".join(message.body for message in answer).startswith(told)
    assert [bin.name for bin in await (await room.book()).bins()] == ["yard", "shed"]


@pytest.mark.parametrize(
    ("said", "name"),
    [
        ("we renamed the yard bin to Gertie", "Gertie"),
        ("call the yard bin Gertie", "Gertie"),
        ("bot, call the yard bin the porch bin", "porch"),
        ("call the yard bin people", "yard"),
    ],
)
async def test_another_name_in_plain_words(room: TalkingRoom, said: str, name: str) -> None:
    await room.says(said)
    assert [bin.name for bin in await (await room.book()).bins()] == [name]


@pytest.mark.parametrize(
    ("said", "told", "left"),
    [
        ("threw the yard bin away", "The yard bin is out of use", []),
        ("the yard bin is broken, we don't use it any more", "The yard bin is out of use", []),
        ("bot, delete the yard bin", "The yard bin is out of use", []),
        ("the yard bin is gone", "Is the yard bin out of use? Then say", ["yard"]),
        ("remove the yard bin from the stairs", "", ["yard"]),
    ],
)
async def test_the_end_of_a_bin_in_plain_words(
    room: TalkingRoom, said: str, told: str, left: list[str]
) -> None:
    assert "".join(one.body for one in await room.says(said)).startswith(told)
    assert [bin.name for bin in await (await room.book()).bins()] == left


async def test_a_bin_is_deleted_once(room: TalkingRoom) -> None:
    await room.says("retire the yard bin")
    [told] = await room.says("bot, delete the yard bin")
    assert told.body == "The yard bin is out of use already."
    await room.says("opened the shed bin")
    [told] = await room.says("bot, delete the shed bin")
    assert told.body == "Struck out: opening of the shed bin."


async def test_a_name_taken_meanwhile_is_not_given_back_twice(room: TalkingRoom) -> None:
    await room.says("rename the yard bin to Gertie", event="$new")
    book = await room.book()
    await room.db.write(
        "INSERT INTO bin (room, name, key) VALUES (?, 'yard', 'yard')", (book.room.id,)
    )
    await room.deletes("$new")
    assert [bin.name for bin in await book.bins()] == ["Gertie"]


async def test_a_retired_bin_is_out_of_use_until_it_is_opened(room: TalkingRoom) -> None:
    [told] = await room.says("retire the yard bin", event="$end")
    assert told.body.startswith("The yard bin is out of use; its record is kept.")
    assert "2 kg in it that was never buried" in told.body
    book = await room.book()
    assert await book.bins() == []
    assert await book.dues() == []
    await room.says("opened the yard bin, 30 L", who="mei")
    [told] = await room.says("who has the yard bin?")
    assert told.body == "The yard bin: mei."


async def test_a_retirement_taken_back_is_none(room: TalkingRoom) -> None:
    await room.says("retire the yard bin", event="$end")
    await room.deletes("$end")
    [told] = await room.says("who has the yard bin?")
    assert told.body == "The yard bin: ines."
    assert await (await room.book()).dues()


async def test_what_is_left_to_those_with_power_is_refused_to_others(room: TalkingRoom) -> None:
    await state(room, "m.room.power_levels", {"users": {"@ines:test": 100, "@mei:test": 49}})
    [told] = await room.says("only moderators may rename or retire bins and change settings")
    assert told.body == (
        "Only those with power in this room may rename a bin, retire a bin and change settings now."
    )
    for said in ("rename the yard bin to Gertie", "retire the yard bin", "bot, use pounds"):
        [told] = await room.says(said, who="bram")
        assert told.body.startswith("Here only those with power in the room may ")
        assert told.body.endswith(": ask ines.")
    assert (await room.book()).room.units == "metric"
    [told] = await room.says("who may rename a bin?", who="bram")
    assert told.body == (
        "Only ines may rename a bin, retire a bin and change settings. Everybody may take a bin "
        "that was not offered to them."
    )
    [told] = await room.says("rename the yard bin to Gertie")
    assert told.body.startswith("The yard bin is Gertie now.")


async def test_nobody_gives_themselves_what_was_left_to_others(room: TalkingRoom) -> None:
    await state(room, "m.room.power_levels", {"users": {"@ines:test": 100}})
    await room.says("only moderators may take bins")
    [told] = await room.says("bot, everybody may take bins", who="bram")
    assert "only those with power in the room may decide who may do what" in told.body
    [told] = await room.says("I'll take the yard bin", who="bram")
    assert told.body.endswith("may take a bin that was not offered to them: ask ines.")
    [told] = await room.says("bot, everybody may take bins")
    assert told.body == "Everybody may take a bin that was not offered to them now."


async def test_an_offered_bin_is_taken_by_whom_it_is_offered_to(room: TalkingRoom) -> None:
    await state(room, "m.room.power_levels", {"users": {"@ines:test": 100}})
    await room.says("only moderators may take bins")
    await room.says("handing the yard bin to Bram")
    [told] = await room.says("I'll take it", who="bram")
    assert told.body.startswith("Bram keeps the yard bin now.")


async def test_creators_have_power_from_room_version_12_on(room: TalkingRoom) -> None:
    await state(room, "m.room.create", {"room_version": "12"})
    await state(room, "m.room.power_levels", {"users": {}})
    await room.says("only moderators may rename bins")
    assert (await room.says("rename the yard bin to Gertie", who="bram"))[0].body.endswith(
        "ask ines."
    )


async def test_power_is_only_what_the_rooms_state_says(room: TalkingRoom) -> None:
    await state(room, "m.room.power_levels", {"users": {"@ines:test": 100}})
    await room.says("only moderators may rename bins")
    forged = {"users": {"@bram:test": 100}}
    await state(room, "m.room.power_levels", forged, who="bram", key=None)
    [told] = await room.says("rename the yard bin to Gertie", who="bram")
    assert told.body.endswith("ask ines.")


async def test_where_nobody_has_power_everything_is_for_everybody(room: TalkingRoom) -> None:
    [told] = await room.says("only moderators may rename bins")
    assert told.body == "Nobody has power in this room that I know of, so it is for everybody."
    [told] = await room.says("rename the yard bin to Gertie", who="bram")
    assert told.body.startswith("The yard bin is Gertie now.")


async def test_a_group_keeps_kinds_out_of_a_bin(room: TalkingRoom) -> None:
    [told] = await room.says("the yard bin takes no meat or fish")
    assert told.body == ("The yard bin takes no meat or fish from now on. Its label says so.")
    [told] = await room.says("added 1 kg of fish heads to the yard bin", who="bram")
    assert told.body.endswith("By your own rule the yard bin takes no fish.")
    assert len([e for e in await room.standing() if e.act == "layer"]) == 2
    [told] = await room.says("can salmon go in the yard bin?")
    assert told.body == "No: by your own rule the yard bin takes no fish."
    await room.says("the yard bin takes everything again")
    [told] = await room.says("added 1 kg of fish heads to the yard bin", who="bram")
    assert "rule" not in told.body
