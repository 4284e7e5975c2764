"""Bins in talk: their size and name, which is meant, opened again, and on to whom."""

import pytest

from tests.room import TalkingRoom


@pytest.mark.parametrize("opening", ["opened the yard bin", "added 2 kg to the yard bin"])
@pytest.mark.parametrize("size", ["30 L", "30 litres", "it's about 30 litres", "30"])
async def test_the_size_that_was_asked_for(room: TalkingRoom, opening: str, size: str) -> None:
    [asked] = await room.says(opening)
    assert "how big" in asked.body.casefold()
    [told] = await room.says(size)
    assert told.body == "Noted: the yard bin holds 30 L."
    assert [kg for kg in await room.kilos() if kg] == ([2, 2] if "added" in opening else [2])
    [corrected] = await room.says("no, 25 L")
    assert "holds 25 L" in corrected.body
    [corrected] = await room.says("no 28")
    assert "holds 28 L" in corrected.body


async def test_a_size_is_no_answer_to_what_was_asked_before(room: TalkingRoom) -> None:
    await room.says("opened the yard bin")
    await room.says("added 5 L of peel to the shed bin")
    await room.says("6 L")
    volumes = [e.facts.volume_l for e in await room.standing() if e.act == "layer"]
    assert volumes == [None, 6]
    assert [e.facts.capacity_l for e in await room.standing() if e.act == "open"] == [20, None]


@pytest.mark.parametrize(
    "words",
    ["unsealed", "opened it again", "unsealed it again, we forgot the rinds",
     "had to open the shed bin again", "reopened the shed bin",
     "the shed bin is not sealed after all", "wait, not sealed yet"],
)  # fmt: skip
async def test_a_sealed_bin_is_opened_again(room: TalkingRoom, words: str) -> None:
    await room.says("sealed the shed bin")
    await room.waits(days=1)
    [told] = await room.says(words)
    assert told.body.startswith(
        "The shed bin is open again: its sealing, yesterday, is struck out."
    )
    assert [e.act for e in await room.standing()] == ["open", "layer", "unseal"]


async def test_what_is_not_sealed_is_not_unsealed(room: TalkingRoom) -> None:
    [told] = await room.says("unsealed the shed bin")
    assert told.body == "The shed bin is not sealed: its records go on."
    [told] = await room.says("unsealed the attic bin")
    assert told.body.startswith("I know no bin called “attic”.")
    assert await room.says("opened it again") == []
    assert [e.act for e in await room.standing()] == ["open", "layer"]


async def test_a_size_and_a_record_in_one_message(room: TalkingRoom) -> None:
    [told] = await room.says("the shed bin is 40 L and I added 18 kg to the shed bin")
    assert "holds 40 L" in told.body
    assert "more than" not in told.body
    assert await room.kilos() == [2, 18]


async def test_opening_again_is_told_in_the_story(room: TalkingRoom) -> None:
    await room.says("sealed the shed bin")
    await room.says("unsealed it")
    [told] = await room.says("story of the shed bin")
    assert "opened again by ines" in told.body


@pytest.mark.parametrize(
    ("words", "act"),
    [("shut both", "seal"), ("sealed all of them", "seal"), ("drained both bins", "drain")],
)
async def test_both_are_those_two_that_it_can_be(room: TalkingRoom, words: str, act: str) -> None:
    await room.says("opened the yard bin")
    await room.says("opened the attic bin, 10 L")
    await room.says("sealed the attic bin")
    await room.says("buried the attic bin")
    await room.says(words)
    done = [e.bin.name for e in await room.standing() if e.act == act and e.bin]
    assert sorted(set(done) - {"attic"}) == ["shed", "yard"]


async def test_both_of_three_are_asked_for(room: TalkingRoom) -> None:
    await room.says("opened the yard bin")
    await room.says("opened the attic bin", who="bram")
    [asked] = await room.says("sealed both", who="bram")
    assert asked.body == (
        "Which two: the shed bin, the yard bin or the attic bin? Say it again with their names."
    )
    assert "seal" not in [e.act for e in await room.standing()]


async def test_one_of_two_is_asked_for(room: TalkingRoom) -> None:
    await room.says("opened the yard bin")
    await room.says("added 1 kg to the yard bin")
    before = len(await room.kilos())
    [asked] = await room.says("added 2 kg to the shed or the yard")
    assert (
        asked.body == "Which bin: the shed bin or the yard bin? Say it again with its name alone."
    )
    assert len(await room.kilos()) == before


@pytest.mark.parametrize(
    "words",
    ["call it Greenie", "let's name it Greenie", "rename it to greenie", "it's called Greenie"],
)
async def test_the_bin_in_talk_gets_its_name(room: TalkingRoom, words: str) -> None:
    await room.says("opened the yard bin")
    [told] = await room.says(words)
    assert told.body.casefold().startswith("the yard bin is ")
    assert [bin.name.casefold() for bin in await (await room.book()).bins()] == ["shed", "greenie"]


@pytest.mark.parametrize("words", ["let's call it a day", "call it quits", "call it Sunday"])
async def test_a_day_is_called_and_no_bin(room: TalkingRoom, words: str) -> None:
    await room.says("opened the yard bin")
    assert await room.says(words) == []


async def test_a_bin_is_called_by_its_kind_where_there_are_others(room: TalkingRoom) -> None:
    await room.says("opened the tub, 15 L", who="bram")
    await room.says("added 1 kg to the tub")
    await room.says("sealed the tub")
    told = [(e.act, e.bin.name) for e in await room.standing() if e.bin]
    assert told[2:] == [("open", "tub"), ("layer", "tub"), ("seal", "tub")]
    await room.says("rename the tub to attic")
    bins = [bin.name for bin in await (await room.book()).bins()]
    assert bins == ["shed", "attic"]


@pytest.mark.parametrize(
    ("before", "then", "sealed"),
    [
        ("how full is the pantry bin?", "ok, sealed it", "the pantry bin"),
        ("drained the pantry bin, 200 ml", "closed it up", "the pantry bin"),
        ("how full are the bins?", "sealed it", "the shed bin"),
    ],
)
async def test_it_is_the_bin_just_spoken_of(
    room: TalkingRoom, before: str, then: str, sealed: str
) -> None:
    await room.says("opened the pantry bin, 20 L")
    await room.says("1 kg in the pantry bin")
    await room.says("1 kg in the shed bin")
    await room.says(before)
    [answer] = await room.says(then)
    assert f"{sealed} is sealed" in answer.body.lower()


async def test_it_is_not_the_bin_that_another_asked_about(room: TalkingRoom) -> None:
    await room.says("opened the pantry bin, 20 L")
    await room.says("1 kg in the shed bin")
    await room.says("how full is the pantry bin?", who="bram")
    [answer] = await room.says("closed it up")
    assert answer.body.startswith("The shed bin is sealed")


async def test_a_bin_just_opened_is_not_the_one_that_is_drained(room: TalkingRoom) -> None:
    await room.says("2 kg in the shed bin")
    await room.says("opened the pantry bin, 20 L")
    await room.says("drained it, 200 ml")
    drained = [entry for entry in await room.standing() if entry.act == "drain"]
    assert [entry.bin and entry.bin.name for entry in drained] == ["shed"]


async def test_no_liquid_is_no_refusal_of_an_offer(room: TalkingRoom) -> None:
    await room.says("Bram, can you take the shed bin?")
    await room.says("no liquid at all", who="bram")
    [told, *_] = await room.says("I'll take it", who="bram")
    assert told.body.startswith("Bram keeps the shed bin now.")


async def test_two_bins_are_handed_on_in_one_breath(room: TalkingRoom) -> None:
    for who in ("theo", "dana"):
        await room.says("hello", who=who)
    [opened] = await room.says("opened the hall bin, 25 L, for all, and the attic bin, 12 L")
    assert "the hall bin, 25 L, for everybody" in opened.body
    await room.says("handing the hall bin to Theo on Monday and the attic bin to Dana")
    offers = [e for e in await room.standing() if e.act == "offer"]
    assert [(e.bin and e.bin.name, e.receiver) for e in offers] == [
        ("hall", "theo"),
        ("attic", "dana"),
    ]


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("handing the shed bin to Ben for two weeks from Friday",
         "It is to go back to ines Friday 20 March."),
        ("move the burial to Saturday", "The day of a burial follows from what is in the book"),
        ("cancel the heap one", "Called off: turn the heap."),
    ],
)  # fmt: skip
async def test_what_is_arranged_is_answered_for(room: TalkingRoom, said: str, told: str) -> None:
    await room.says("hello", who="ben")
    await room.says("sealed the shed bin")
    await room.says("remind us to turn the heap every Friday at 19:00")
    [answer] = await room.says(said)
    assert told in answer.body
    assert "cannot set" not in answer.body


async def test_a_reminder_just_set_is_moved_and_no_layer(room: TalkingRoom) -> None:
    await room.says("remind us to bring lids on Sunday at 10")
    for said in ("change it to Monday", "move it to Tuesday"):
        [answer] = await room.says(said)
        assert "bring lids" in answer.body
    assert [e.act for e in await room.standing() if e.act in ("layer", "date")] == ["layer", "date"]
    assert (await room.standing())[-1].replaces
