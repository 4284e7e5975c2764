"""The card that goes with a bin, and what its taker finds."""

import pytest

from tests.room import TalkingRoom, words


async def test_the_card_says_what_the_bin_is_and_what_comes_first(room: TalkingRoom) -> None:
    await room.says("green mould in the yard bin")
    await room.says("drained half a litre from the yard bin")
    await room.waits(days=3)
    await room.says("handing the yard bin to Bram")
    [taken] = await room.says("I'll take it", who="bram")
    assert taken.body.split("\n") == [
        "Bram keeps the yard bin now.",
        "The yard bin: filling, 2 layers, 5 kg, about 15 % full.",
        "Last drained Monday 2 March.",
        "First drain it (today), then seal it (Monday 16 March).",
        "Seen: green mould, Monday 2 March.",
        "Do not sniff mould or dusty bran: damp it, wear a mask and gloves, and leave it to others "
        "if your lungs or immunity are weak.",
        "Treat it as raw waste: gloves on, use it the same day, keep it off leaves you eat raw and "
        "away from bleach.",
        "It holds about 5 kg. A full bin can weigh more than 15 kg (33 lb): lift it in pairs or on "
        "a trolley.",
        "Reply with what you find, such as “lid cracked, about 6 kg”, and I keep it.",
    ]


async def test_what_the_taker_finds_is_kept_beside_the_book(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram")
    await room.says("I'll take it", who="bram", event="$taken")
    [noted] = await room.says("lid cracked, it's about 8 kg", who="bram", replies_to="re-$taken")
    assert "You found 8 kg; by the book there is about 5 kg. Both are kept." in noted.body
    [note] = [entry for entry in await room.standing() if entry.act == "note"]
    assert (note.facts.words, note.facts.mass_kg) == ("lid cracked, it's about 8 kg", 8.0)
    assert [e.facts.mass_kg for e in await room.standing() if e.act == "layer"] == [4.0, 1.0]
    await room.says("handing the yard bin to Mei", who="bram")
    assert "Seen: “lid cracked, it's about 8 kg”, today." in words(
        await room.says("I'll take it", who="mei")
    )


@pytest.mark.parametrize(
    "answer", ["thanks, will do", "added 2 kg scraps", "how full is it?", "brilliant, ta"]
)
async def test_an_answer_to_the_card_that_tells_nothing_of_the_bin_is_no_note(
    room: TalkingRoom, answer: str
) -> None:
    await room.says("handing the yard bin to Bram")
    await room.says("I'll take it", who="bram", event="$taken")
    await room.says(answer, who="bram", replies_to="re-$taken")
    assert not any(entry.act == "note" for entry in await room.standing())


async def test_a_short_word_after_the_card_tells_what_the_bin_is_like(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram")
    await room.says("I'll take it", who="bram")
    [noted] = await room.says("lid's loose, about 8 kg", who="bram")
    assert "You found 8 kg" in noted.body
