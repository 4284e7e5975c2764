"""Whose turn it is is told in the digest, once, and the bin is offered with it."""

from tests.bot.turns.agreed import DRAINING, digests, turns
from tests.room import TalkingRoom


async def test_who_has_the_turn_is_told_in_the_digest_and_drains(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    await room.waits(days=6)
    [digest] = [m for m in await room.waits(days=1) if m.kind == "digest"]
    assert "turn to drain the yard bin (bram)" in digest.body
    assert "@bram:test" in digest.mentions
    drains = [due for due in await (await room.book()).dues() if due.what == "drain"]
    assert [due.to_member for due in drains] == ["bram"]


async def test_a_turn_to_keep_is_offered_when_it_comes(room: TalkingRoom) -> None:
    await room.says("rota for the yard bin: Ines and Bram, weekly")
    await room.waits(days=6)
    [asked] = [m for m in await room.waits(days=1) if m.kind == "notice"]
    assert asked.body == (
        "Bram, it is your turn to keep the yard bin, today to Sunday 15 March. Say “I'll take it” "
        "or put 👍 here; or “not me”. Until you do, ines keeps it."
    )
    [taken] = await room.says("I'll take it", who="bram")
    assert taken.body.startswith("Bram keeps the yard bin now.")


async def test_each_turn_is_told_once(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    told = digests(await room.waits(days=20))
    named = [body for body in told if "turn to drain the yard bin" in body]
    assert len(named) == 3


async def test_what_is_in_the_ground_has_no_turns_to_drain(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    await room.waits(days=3)
    await room.says("sealed the yard bin")
    await room.waits(days=14)
    await room.says("buried the yard bin")
    assert await turns(room) == []
    assert not [m for m in await room.waits(days=14) if "turn to drain" in m.body]
    await room.says("opened the yard bin again")
    assert await turns(room) != []


async def test_a_turn_that_went_to_another_is_no_longer_offered(room: TalkingRoom) -> None:
    await room.says("rota to keep the yard bin: Ines, Bram and Mei, a week each")
    await room.waits(days=7)
    [told] = await room.says("I'm away from the 10th to the 16th", who="bram")
    assert told.body == "Noted. Mei is to keep the yard bin today to Sunday 15 March instead."
    notices = [m.body for m in await room.waits(days=5) if m.kind == "notice"]
    offered = [body for body in notices if "your turn" in body]
    assert [body.split(",")[0] for body in offered] == ["Mei"]
    assert not [body for body in notices if "Bram" in body or "Nobody took" in body]


async def test_the_keeper_is_not_pressed_for_what_another_has_the_turn_to_do(
    room: TalkingRoom,
) -> None:
    await room.says("draining rota for the yard bin: Bram and Mei, a week each")
    heard = await room.waits(days=12)
    assert any("drain the yard bin (mei)" in m.body for m in heard)
    assert not [m for m in heard if m.kind == "notice"]
