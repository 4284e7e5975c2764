"""A correction that names its record: by the bin it is not in, or by whose it is."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines has put bread into the hut bin; Bram has drained it."""
    room = TalkingRoom(db)
    for who in ("bram", "cleo"):
        await room.says("hello", who=who)
    await room.says("opened the hut bin, 20 L")
    await room.says("opened the barn bin, 20 L")
    await room.says("2 kg of bread in the hut bin")
    await room.says("drained the hut bin, 300 ml", who="bram")
    return room


async def book(room: TalkingRoom) -> list[tuple[str, str, float | None, str | None]]:
    return [
        (e.act, e.bin.name, e.facts.mass_kg or e.facts.volume_l, e.member)
        for e in await room.standing()
        if e.bin and e.act != "open"
    ]


BREAD, DRAIN = ("layer", "hut", 2.0, "ines"), ("drain", "hut", 0.3, "bram")


@pytest.mark.parametrize(
    "said",
    [
        "my bread went in the barn not the hut",
        "no, that went into the barn bin, not the hut bin",
        "the bread on monday was in the barn, not in the hut",
    ],
)
async def test_it_is_moved_and_not_told_twice(room: TalkingRoom, said: str) -> None:
    await room.says(said)
    assert await book(room) == [DRAIN, ("layer", "barn", 2.0, "ines")]


async def test_a_day_names_the_only_record_of_it(room: TalkingRoom) -> None:
    await room.waits(days=5)
    await room.says("1 kg of rice in the barn bin")
    await room.says("my peelings on monday went in the barn not the hut")
    assert BREAD in await book(room)
    await room.says("my bread on monday went in the barn not the hut")
    assert ("layer", "barn", 2.0, "ines") in await book(room)
    assert BREAD not in await book(room)


async def test_anothers_amount_is_asked_about(room: TalkingRoom) -> None:
    [said] = await room.says("Ines's was 5 kg", who="cleo")
    assert said.body == "Ines's last record is 2 kg in the hut bin. Shall I correct it to 5 kg?"
    assert await book(room) == [BREAD, DRAIN]
    await room.says("yes", who="cleo")
    assert await book(room) == [DRAIN, ("layer", "hut", 5.0, "ines")]


async def test_who_did_it_is_asked_about(room: TalkingRoom) -> None:
    await room.waits(days=4)
    *_, said = await room.says("it was me that drained the hut, not Bram", who="cleo")
    assert "Shall I put it down to cleo?" in said.body
    assert await book(room) == [BREAD, DRAIN]
    await room.says("yes", who="cleo")
    assert await book(room) == [BREAD, ("drain", "hut", 0.3, "cleo")]


async def test_what_one_told_of_others_is_put_right_by_their_names(room: TalkingRoom) -> None:
    await room.says("Bram 1 kg in the hut bin, Ines 3 kg in the barn bin", who="cleo")
    await room.says("Bram's was 2 and Ines's was 4", who="cleo")
    assert (await book(room))[-2:] == [
        ("layer", "hut", 2.0, "bram"),
        ("layer", "barn", 4.0, "ines"),
    ]


@pytest.mark.parametrize("said", ["Cleo's was 3 kg", "Cleo's was lovely", "it was me, not Bram"])
async def test_of_nobodys_record_nothing_is_said(room: TalkingRoom, said: str) -> None:
    await room.says("morning", who="cleo")
    before = await book(room)
    assert await room.says(said, who="cleo") == []
    assert await book(room) == before


async def test_the_first_of_two_is_the_one_asked_about(room: TalkingRoom) -> None:
    await room.says("put 4 kg of scraps in", who="cleo")
    await room.says("and 1 kg of bread in the hut bin", who="cleo")
    await room.says("the first one was the barn", who="cleo")
    assert (await book(room))[-2:] == [
        ("layer", "hut", 1.0, "cleo"),
        ("layer", "barn", 4.0, "cleo"),
    ]


@pytest.mark.parametrize(
    ("said", "edited", "bin"),
    [
        ("4 kg of peelings", "5 kg of peelings", "barn"),
        ("4 kg of peelings", "5 kg of peelings in the hut", "hut"),
        ("4 kg of peelings in the barn", "5 kg of peelings", None),
    ],
)
async def test_an_edit_keeps_the_bin_that_was_told_in_an_answer(
    room: TalkingRoom, said: str, edited: str, bin: str | None
) -> None:
    await room.says(said, who="cleo", event="$peel")
    await room.says("barn", who="cleo")
    await room.edits("$peel", edited, who="cleo")
    last = (await room.standing())[-1]
    assert (last.bin.name if last.bin else None, last.facts.mass_kg) == (bin, 5)


async def test_another_bin_was_offered(room: TalkingRoom) -> None:
    await room.says("Bram is having the hut from friday")
    await room.says("yes", who="bram")
    await room.says("actually not the hut, the barn", event="$barn")
    await room.says("yes", who="bram")
    acts = [(e.act, e.bin and e.bin.name) for e in await room.standing()]
    assert ("accept", "barn") in acts
    assert ("accept", "hut") not in acts
