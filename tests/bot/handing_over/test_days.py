"""The day on which a bin passes on: agreed, changed or called off; a loan; an offer that lapses."""

import pytest

from tests.room import TalkingRoom, words


@pytest.mark.parametrize(
    ("who", "said", "answer"),
    [
        ("ines", "cancel the hand-over", "The yard bin stays with ines."),
        ("ines", "the handover of the yard bin is off", "The yard bin stays with ines."),
        ("ines", "I'd rather keep the yard bin", "The yard bin stays with ines."),
        ("ines", "I'm not handing over the yard bin after all", "The yard bin stays with ines."),
        ("ines", "sorry, I changed my mind, I keep the yard bin", "The yard bin stays with ines."),
        ("bram", "the hand-over is off", "Fair enough: ines still keeps it."),
    ],
)
async def test_a_hand_over_that_was_agreed_is_called_off(
    room: TalkingRoom, who: str, said: str, answer: str
) -> None:
    await room.says("handing the yard bin to Bram on Friday")
    await room.says("yes", who="bram")
    assert words(await room.says(said, who=who)).startswith(answer)
    await room.waits(days=8)
    assert await room.keeper("yard") == "ines"


@pytest.mark.parametrize(
    ("said", "begins", "back"),
    [
        ("handing the yard bin to Bram from 12 to 20 March", "Thursday 12 March", "Friday 20"),
        ("can Bram mind the yard bin 12-20 March?", "Thursday 12 March", "Friday 20 March"),
        ("can Bram have the yard bin between 7 and 9 March?", "Saturday 7 March", "Monday 9"),
        ("handing the yard bin to Bram from Friday till Tuesday", "Friday 6 March", "Tuesday 10"),
        ("handing the yard bin to Bram on Friday for a week", "Friday 6 March", "Friday 13 March"),
        ("can Bram take the yard bin until Friday?", "", "Friday 6 March"),
    ],
)
async def test_a_bin_goes_on_the_first_day_of_a_loan(
    room: TalkingRoom, said: str, begins: str, back: str
) -> None:
    [told] = await room.says(said)
    assert f"will you take the yard bin{f' {begins}' if begins else ''}?" in told.body
    assert f"It is to go back to ines {back}" in told.body


@pytest.mark.parametrize("agreed", [True, False])
@pytest.mark.parametrize(
    ("said", "asked"),
    [
        ("actually on Saturday", "Bram, will you take the yard bin Saturday 7 March?"),
        ("move the hand-over to Saturday", "Bram, will you take the yard bin Saturday 7 March?"),
        ("not Friday, Sunday", "Bram, will you take the yard bin Sunday 8 March?"),
        ("no, to Mei", "Mei, will you take the yard bin Friday 6 March?"),
        ("no, Mei on Saturday", "Mei, will you take the yard bin Saturday 7 March?"),
    ],
)
async def test_a_hand_over_gets_another_day_or_taker(
    room: TalkingRoom, said: str, asked: str, agreed: bool
) -> None:
    await room.says("handing the yard bin to Bram on Friday")
    if agreed:
        await room.says("yes", who="bram")
    [told] = await room.says(said)
    assert told.body.casefold().startswith(asked.casefold())
    assert "@bram:test" in told.mentions
    await room.waits(days=4)
    assert await room.keeper("yard") == "ines"


async def test_a_bin_agreed_for_a_day_passes_on_that_day(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram on Friday")
    [agreed] = await room.says("I'll take it", who="bram")
    assert agreed.body == "Bram takes the yard bin Friday 6 March; until then ines keeps it."
    told = await room.waits(days=3)
    assert await room.keeper("yard") == "ines"
    told = await room.waits(days=1)
    card = next(message for message in told if message.kind == "notice")
    assert card.body.startswith("Today the yard bin goes from ines to bram.\nThe yard bin: filling")
    assert set(card.mentions) == {"@ines:test", "@bram:test"}
    assert await room.keeper("yard") == "bram"
    assert all("goes from" not in m.body for m in await room.waits(days=2))


async def test_an_offer_is_said_again_and_lapses(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram on Friday", event="$offer")
    [still] = [m for m in await room.waits(days=3) if m.kind == "notice"]
    assert still.body.startswith("Bram, the yard bin is still on offer from ines, until tomorrow.")
    assert set(still.mentions) == {"@ines:test", "@bram:test"}
    [lapsed] = [m for m in await room.waits(days=2) if m.kind == "notice"]
    assert lapsed.body == (
        "Nobody took the yard bin, so it stays with ines. Hand it over anew if it is still to go."
    )
    assert lapsed.to_event == "$offer"
    late = await room.says("I'll take it", who="bram")
    assert "Shall I write down that you keep it" in words(late)
    assert await room.keeper("yard") == "ines"
    assert not [m for m in await room.waits(days=5) if m.kind == "notice" and "took" in m.body]


async def test_an_offer_without_a_day_waits_for_three(room: TalkingRoom) -> None:
    await room.says("can anyone take the yard bin?")
    told = [m.body for m in await room.waits(days=3) if m.kind == "notice"]
    assert told == [
        "The yard bin is still on offer from ines, until today. Say “I'll take it” or put 👍 "
        "here; or “not me”."
    ]
    told = [m.body for m in await room.waits(days=1) if m.kind == "notice"]
    assert told[0].startswith("Nobody took the yard bin")


@pytest.mark.parametrize("words", ["handing the yard bin to Bram", "who wants the yard bin"])
async def test_a_bin_passes_on_no_day_that_there_is_not(room: TalkingRoom, words: str) -> None:
    [told] = await room.says(f"{words} on 31 February")
    assert told.body == "No calendar has that day. Say it again with the right one."


async def test_a_bin_that_was_handed_on_is_asked_after(room: TalkingRoom) -> None:
    [told] = await room.says("handed the yard bin to Bram yesterday")
    assert told.body.startswith("Bram, have you had the yard bin since yesterday?")
    await room.says("I'll take it", who="bram")
    assert await room.keeper("yard") == "bram"


@pytest.mark.parametrize(
    ("said", "asked"),
    [
        ("can we make it a week later?", "Friday 13 March"),
        ("could you take it two days later, Bram?", "Sunday 8 March"),
        ("actually, make it a day earlier", "Thursday 5 March"),
    ],
)
async def test_a_hand_over_is_moved_from_its_own_day(
    room: TalkingRoom, said: str, asked: str
) -> None:
    await room.says("handing the yard bin to Bram on Friday")
    await room.says("yes", who="bram")
    assert f"Bram, will you take the yard bin {asked}?" in words(await room.says(said))


async def test_a_keeper_who_cannot_have_it_on_a_day_offers_it_for_that_day(
    room: TalkingRoom,
) -> None:
    assert await room.says("I can't keep the yard bin over Easter", who="bram") == []
    told = words(await room.says("I can't keep the yard bin over Easter, I'm in Wales"))
    assert "Who takes the yard bin Sunday 5 April?" in told
