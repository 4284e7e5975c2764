"""A keeper who leaves, comes back, is away or falls silent; whose the dues of a bin are."""

from tests.room import TalkingRoom


async def test_a_keeper_who_leaves_is_noticed_and_the_group_asked_once(room: TalkingRoom) -> None:
    [asked] = await room.calls_itself("ines", who="ines", is_in=False)
    assert asked.body.startswith(
        "Ines has left the room, and nobody keeps the yard bin. Who takes it?"
    )
    assert await room.keeper("yard") == "nobody, since ines left"
    assert not [m for m in await room.waits(days=9) if "left the room" in m.body]
    [taken] = await room.marks(asked.tx_id, "👍", who="mei")
    assert taken.body.startswith("Mei keeps the yard bin now.")


async def test_a_keeper_who_comes_back_has_the_bin_unless_it_was_taken(room: TalkingRoom) -> None:
    await room.calls_itself("ines", who="ines", is_in=False)
    await room.calls_itself("ines", who="ines")
    assert await room.keeper("yard") == "ines"
    await room.calls_itself("ines", who="ines", is_in=False)
    await room.says("I'll take the yard bin", who="bram")
    await room.calls_itself("ines", who="ines")
    assert await room.keeper("yard") == "bram"


async def test_at_night_nobody_is_asked(room: TalkingRoom) -> None:
    await room.waits(hours=4)
    assert await room.calls_itself("ines", who="ines", is_in=False) == []
    told = await room.waits(hours=12)
    assert [m.body[:24] for m in told if m.kind == "notice"] == ["Ines has left the room, "]


async def test_a_keeper_who_goes_silent_past_a_due_is_asked_for(room: TalkingRoom) -> None:
    told = [m for m in await room.waits(days=14) if m.kind == "notice"]
    assert [m.body.split(".")[0] for m in told] == [
        "Ines, are you there? Nothing was heard of you since Monday 2 March, and it was time to "
        "drain the yard bin by Thursday 5 March"
    ]
    await room.marks(told[0].tx_id, "👍", who="mei")
    assert await room.keeper("yard") == "mei"


async def test_a_keeper_who_is_away_is_not_silent(room: TalkingRoom) -> None:
    await room.says("I'm away till the 30th")
    told = [m for m in await room.waits(days=14) if m.kind == "notice"]
    assert told == []


async def test_a_layer_of_another_is_theirs_and_the_dues_stay_the_keepers(
    room: TalkingRoom,
) -> None:
    layers = [entry for entry in await room.standing() if entry.act == "layer"]
    assert [entry.member for entry in layers] == ["bram", "mei"]
    digest = next(m for m in await room.waits(days=2) if m.kind == "digest")
    assert "drain the yard bin (ines)" in digest.body
    assert digest.mentions == ("@ines:test",)
