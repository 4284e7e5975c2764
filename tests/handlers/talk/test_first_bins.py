"""The first bins of a group: how they are told, by whom they are kept, and how they go."""

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
    [asked] = await room.says("500 g of peel in the white bin")
    assert "Which bin: white 1 or white 2?" in asked.body
    assert [bin.name for bin in await (await room.book()).bins()] == ["white 1", "white 2"]
