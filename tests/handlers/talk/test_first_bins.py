"""The first bins of a group: how they are told, by whom they are kept, and how they go."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


async def test_who_is_told_to_keep_a_bin_keeps_it(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    [told] = await room.says("opened the blue bin, 20 L, Bram looks after it")
    assert "kept by bram" in told.body
    assert await room.keeper("blue") == "bram"


async def test_who_keeps_a_bin_by_another_is_asked(room: TalkingRoom) -> None:
    [asked] = await room.says("Bram keeps the shed bin")
    assert "Bram, will you take the shed bin?" in asked.body
    await room.says("ok", who="bram")
    assert await room.keeper("shed") == "bram"


async def test_bins_that_were_not_caught_are_asked_for(db: Database) -> None:
    room = TalkingRoom(db)
    [asked] = await room.says(
        "we have three pails, a 20 L blue bin in the hall, and two odd things"
    )
    assert "3 bins" in asked.body
    assert "the blue bin (20 L)" in asked.body
    assert await room.standing() == []
    await room.says("yes")
    assert [e.bin.name for e in await room.standing() if e.bin] == ["blue"]


async def test_a_bin_taken_off_the_list_strikes_out_no_layer(room: TalkingRoom) -> None:
    [told] = await room.says("please take the shed bin off the list")
    assert "is out of use" in told.body
    assert await room.kilos() == [2]
    [told] = await room.says("sealed the shed bin")
    assert "is out of use" in told.body
    assert not any(entry.act == "seal" for entry in await room.standing())


async def test_one_of_several_alike_is_asked_for(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened two white bins, 12 L each")
    for said in ("500 g of peel in the white bin", "500 g of peel in the white one"):
        [asked] = await room.says(said)
        assert "Which bin: white 1 or white 2?" in asked.body
    assert [bin.name for bin in await (await room.book()).bins()] == ["white 1", "white 2"]


@pytest.mark.parametrize(
    "said",
    [
        "I opened blue yesterday, not today",
        "it was opened yesterday",
        "opened it yesterday actually",
    ],
)
async def test_the_day_of_an_opening_is_put_right(db: Database, said: str) -> None:
    room = TalkingRoom(db)
    await room.says("opened the blue bin, 20 L")
    await room.says(said)
    [opened] = await room.standing()
    assert opened.on
    assert opened.on.day == 1


async def test_a_slip_in_a_new_name_is_put_right(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the grene bin")
    [told] = await room.says("green sorry")
    assert "is the green bin now" in told.body


async def test_a_bin_that_is_none_is_struck_out(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the blue bin, 20 L")
    await room.says("opened the red bin, 12 L")
    await room.says("sorry, there is no red bin")
    assert [e.bin.name for e in await room.standing() if e.bin] == ["blue"]


async def test_a_bin_in_use_is_not_struck_out_so(room: TalkingRoom) -> None:
    [asked] = await room.says("there is no shed bin")
    assert "Is the shed bin out of use?" in asked.body
    assert await room.kilos() == [2]


async def test_the_first_scraps_need_no_bin_named(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the blue bin, 20 L")
    await room.says("put 2 kg in")
    await room.says("I've put in 500 g already", who="bram")
    assert await room.kilos() == [2, 0.5]


async def test_only_one_bin_is_renamed_at_a_time(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the blue bin, 20 L, and the red bin, 12 L")
    [told] = await room.says("from today the red bin is called Ruby and the blue bin Sky")
    assert "One bin at a time" in told.body
    assert [bin.name for bin in await (await room.book()).bins()] == ["blue", "red"]
