"""Turns are swapped: asked, agreed, taken back, called off."""

import pytest

from tests.bot.turns.agreed import DRAINING, turns
from tests.room import TalkingRoom


@pytest.mark.parametrize("how", ["I can", "👍"])
async def test_a_turn_is_swapped(room: TalkingRoom, how: str) -> None:
    await room.says(DRAINING)
    [asked] = await room.says("can anyone swap my week?", who="bram", event="$swap")
    assert asked.body == (
        "Who can swap with bram: drain the yard bin, Monday 9 to Sunday 15 March? Say “I can” or "
        "put 👍 here; bram does your next turn for it."
    )
    assert set(asked.mentions) == {"@ines:test", "@mei:test"}
    swapped = (
        await room.marks("re-$swap", how, who="mei")
        if how == "👍"
        else await room.says(how, who="mei")
    )
    assert swapped[0].body == (
        "Mei is to drain the yard bin Monday 9 to Sunday 15 March. Bram does it Monday 16 to "
        "Sunday 22 March instead."
    )
    assert [who for _, _, who in await turns(room)][:4] == ["ines", "mei", "bram", "ines"]


async def test_a_swap_asked_of_one_is_theirs_to_agree(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    [asked] = await room.says("Mei, can you swap weeks with me?", event="$swap")
    assert asked.body.startswith("Mei, can you swap with ines: drain the yard bin, today to")
    assert await room.marks("re-$swap", "👍", who="bram") == []
    [told] = await room.says("sorry, not me", who="mei")
    assert told.body == "Fair enough. Who else can swap with ines: drain the yard bin, from today?"
    assert [who for _, _, who in await turns(room)][:1] == ["ines"]


async def test_a_swap_taken_back_is_none(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    await room.says("can anyone swap my week?", who="bram")
    await room.says("I can", who="mei", event="$yes")
    await room.deletes("$yes", who="mei")
    assert [who for _, _, who in await turns(room)][:3] == ["ines", "bram", "mei"]


@pytest.mark.parametrize("who", ["bram", "mei"])
async def test_either_of_the_two_calls_a_swap_off(room: TalkingRoom, who: str) -> None:
    await room.says(DRAINING)
    await room.says("can anyone swap my week?", who="bram")
    await room.says("I can", who="mei")
    [told] = await room.says("call off the swap", who=who)
    assert told.body.startswith("The swap is off. To drain the yard bin:")
    assert list(told.mentions) == (["@mei:test"] if who == "bram" else ["@bram:test"])
    assert [who for _, _, who in await turns(room)][:3] == ["ines", "bram", "mei"]
    [shown] = await room.says("show the rota")
    assert "would like to swap" not in shown.body


async def test_a_swap_only_asked_for_is_taken_back_by_whoever_asked(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    await room.says("can anyone swap my week?", who="bram")
    assert await room.says("forget the swap", who="mei") == []
    [told] = await room.says("forget the swap", who="bram")
    assert told.body.startswith("The swap is off.")
    assert await room.says("I can", who="mei") == []


async def test_a_swap_whose_turns_are_over_stands(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    await room.says("can anyone swap my week?", who="bram")
    await room.says("I can", who="mei")
    await room.waits(days=14)
    assert await room.says("call off the swap", who="bram") == []


async def test_a_swap_told_as_agreed_is_asked_of_the_other(room: TalkingRoom) -> None:
    assert await room.says("I swapped with Bram") == []
    await room.says("rota for the yard bin: Ines, Bram, Mei, weekly")
    [asked] = await room.says("I swapped with Bram")
    assert asked.body.startswith("Bram, can you swap with ines: keep the yard bin, today")
    await room.says("I'll do Mei's week")
    [shown] = await room.says("show the rota")
    assert shown.body.count("would like to swap") == 1


async def test_whoever_takes_their_turn_after_all_swaps_no_more(room: TalkingRoom) -> None:
    await room.says("rota for the yard bin: Bram, Ines, weekly")
    await room.says("can anyone swap my week?", who="bram")
    await room.says("I'll take the yard bin", who="bram")
    await room.says("yes", who="bram")
    [shown] = await room.says("show the rota")
    assert "would like to swap" not in shown.body
