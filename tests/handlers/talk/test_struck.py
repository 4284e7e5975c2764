"""A record struck out in talk, and put back on second thoughts."""

import pytest

from tests.room import TalkingRoom


@pytest.mark.parametrize("words", ["oops posted twice", "sorry, logged it twice", "scratch that"])
async def test_the_last_record_is_struck_and_no_other(room: TalkingRoom, words: str) -> None:
    await room.says("added 1 kg to the shed bin")
    await room.says(words)
    assert await room.kilos() == [2]
    [asked] = await room.says("scratch that")
    assert asked.body.startswith("Struck out already: 1 kg in the shed bin.")
    assert await room.kilos() == [2]


@pytest.mark.parametrize(
    "words",
    ["no wait, keep it", "leave that as it was", "hang on, put it back", "that was right after all",
     "oops I didn't mean to delete it"],
)  # fmt: skip
async def test_a_second_thought_puts_back_what_was_struck_out(
    room: TalkingRoom, words: str
) -> None:
    await room.says("scratch that")
    assert await room.kilos() == []
    [told] = await room.says(words)
    assert told.body == "In the book again: 2 kg in the shed bin."
    assert await room.kilos() == [2]


async def test_what_was_put_back_is_changed_and_changed_back(room: TalkingRoom) -> None:
    await room.says("scratch that")
    await room.says("put it back")
    await room.says("no, 3 kg", event="$three")
    assert await room.kilos() == [3]
    await room.deletes("$three")
    assert await room.kilos() == [2]


async def test_a_correction_is_left_as_it_was(room: TalkingRoom) -> None:
    await room.says("no, 3 kg")
    await room.says("leave it as it was")
    assert await room.kilos() == [2]


async def test_only_who_struck_it_out_puts_it_back(room: TalkingRoom) -> None:
    await room.says("scratch that")
    assert await room.says("put it back", who="bram") == []
    assert await room.kilos() == []


@pytest.mark.parametrize("words", ["keep it", "leave it as it was", "put it back please"])
async def test_where_nothing_was_struck_out_it_is_talk(room: TalkingRoom, words: str) -> None:
    assert await room.says(words) == []
    assert await room.kilos() == [2]


@pytest.mark.parametrize("words", ["scratch that", "leave it as it was"])
async def test_a_bin_opened_by_mistake_is_sealed_again(room: TalkingRoom, words: str) -> None:
    await room.says("sealed the shed bin")
    await room.says("unsealed it")
    [told] = await room.says(words)
    assert told.body.endswith("In the book again: sealing of the shed bin.")
    assert "seal" in [e.act for e in await room.standing()]


async def test_anothers_record_is_struck_out_only_when_sure(room: TalkingRoom) -> None:
    await room.says("hello all", who="bram")
    [asked] = await room.says("scratch that", who="bram")
    assert asked.body == "Ines's last record is 2 kg in the shed bin. Shall I strike it out?"
    assert await room.kilos() == [2]
    await room.says("no", who="bram")
    assert await room.kilos() == [2]
    await room.says("scratch that", who="bram")
    [told] = await room.says("yes", who="bram")
    assert told.body == "Struck out: 2 kg in the shed bin."
    assert await room.kilos() == []


@pytest.mark.parametrize("words", ["jk", "lol just kidding", "psych!", "haha april fools"])
async def test_a_jest_is_taken_back(room: TalkingRoom, words: str) -> None:
    await room.says("added 9 kg to the shed bin")
    await room.says(words)
    assert await room.kilos() == [2]


@pytest.mark.parametrize(
    "words", ["double the fun", "he said: scratch that", "what was the last entry I logged?"]
)
async def test_what_only_sounds_like_striking_strikes_nothing(
    room: TalkingRoom, words: str
) -> None:
    await room.says(words)
    assert await room.kilos() == [2]


async def test_a_record_is_struck_out_by_what_went_in(room: TalkingRoom) -> None:
    await room.says("added 1 kg of bread to the shed bin", who="bram")
    await room.says("added 3 kg of peelings to the shed bin")
    [asked] = await room.says("scratch the bread")
    assert asked.body == (
        "Bram's last record of such scraps is 1 kg in the shed bin. Shall I strike it out?"
    )
    assert await room.kilos() == [2, 1, 3]
    await room.says("yes")
    assert await room.kilos() == [2, 3]
    await room.says("put the bread back", who="bram")
    assert sorted(await room.kilos(), key=str) == [1, 2, 3]
    await room.says("strike out the fish")
    await room.says("scratch the peelings")
    assert sorted(await room.kilos(), key=str) == [1, 2]


async def test_only_the_scraps_that_are_named_are_struck_out(room: TalkingRoom) -> None:
    await room.says("added 2 kg of peelings and sealed the shed bin")
    await room.says("opened the hall bin, 12 L")
    await room.says("added 2 kg of carrots to the shed bin and 1 kg of bread to the hall bin")
    [struck] = await room.says("scratch the bread")
    assert struck.body == "Struck out: 1 kg in the hall bin."
