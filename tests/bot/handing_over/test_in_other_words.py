"""A bin taken, moved and spoken for in the words that neighbours use."""

import pytest

from tests.room import TalkingRoom, words


@pytest.mark.parametrize(
    "said", ["I could have it", "we could take it", "I can have it at mine", "I could do it"]
)
async def test_who_could_have_it_takes_it(room: TalkingRoom, said: str) -> None:
    await room.says("can anyone have the yard bin?")
    await room.says(said, who="bram")
    assert await room.keeper("yard") == "bram"


@pytest.mark.parametrize("said", ["got it", "yes, got it, thanks", "picked it up today"])
async def test_who_has_got_it_takes_it(room: TalkingRoom, said: str) -> None:
    await room.says("dropped the yard bin at Bram's")
    await room.says(said, who="bram")
    assert await room.keeper("yard") == "bram"


async def test_got_it_is_no_more_than_understood_of_what_anybody_may_take(
    room: TalkingRoom,
) -> None:
    await room.says("can anyone have the yard bin?")
    assert await room.says("got it", who="bram") == []


@pytest.mark.parametrize(
    "said",
    [
        "Bram says he'll have it",
        "Bram could have it, couldn't you Bram?",
        "I think Bram would take it",
        "Bram told me he'd be happy to keep it",
        "Bram says he can take the yard bin",
        "Bram says yes",
    ],
)
@pytest.mark.parametrize("who", ["mei", "ines"])
async def test_nobody_takes_a_bin_by_anothers_word(room: TalkingRoom, said: str, who: str) -> None:
    await room.says("can anyone have the yard bin?")
    asked = words(await room.says(said, who=who))
    assert asked.startswith("Bram, will you take the yard bin?")
    assert await room.keeper("yard") == "ines"
    await room.says("yes", who="bram")
    assert await room.keeper("yard") == "bram"


@pytest.mark.parametrize(
    "said",
    ["Bram says hello", "Bram can't have it", "Bram has a cold", "Bram will bring the cake",
     "Bram says he'll have the soup", "did Bram take it?"],
)  # fmt: skip
async def test_of_neighbours_other_things_are_said(room: TalkingRoom, said: str) -> None:
    await room.says("can anyone have the yard bin?")
    assert "will you take" not in words(await room.says(said, who="mei"))
    assert await room.keeper("yard") == "ines"


@pytest.mark.parametrize(
    "said",
    [
        "actually could you have it from the 5th Bram?",
        "can you take it on Thursday instead?",
        "could you fetch it already on Thursday, Bram?",
    ],
)
async def test_what_is_agreed_is_asked_for_on_another_day(room: TalkingRoom, said: str) -> None:
    await room.says("Bram, could you take the yard bin on Saturday?")
    await room.says("yes", who="bram")
    assert "will you take the yard bin Thursday 5 March?" in words(await room.says(said))
    [told] = await room.says("yes that's fine", who="bram")
    assert told.body.startswith("Bram takes the yard bin Thursday 5 March")


async def test_what_is_done_for_an_ill_keeper_takes_nothing_away(room: TalkingRoom) -> None:
    await room.says("I'm in bed with flu, can't do the yard this week")
    assert "Shall I write down" not in words(await room.says("I'll do the yard for you", who="mei"))
    await room.says("yes", who="mei")
    assert await room.keeper("yard") == "ines"


async def test_another_bin_than_that_on_offer_is_offered_anew(room: TalkingRoom) -> None:
    await room.says("opened the blue bin, 12 L")
    await room.says("can anyone have the yard bin?")
    asked = words(await room.says("Bram can have the blue bin from Friday"))
    assert asked.startswith("Bram, will you take the blue bin Friday 6 March?")
