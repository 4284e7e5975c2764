"""What a few words do behind talk of other things, and what is only wondered at."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines's yard bin, into which Bram has put something."""
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 20 L")
    await room.says("added 2 kg of leeks", who="bram")
    return room


async def acts(room: TalkingRoom) -> list[str]:
    return [entry.act for entry in await room.standing()]


async def test_what_goes_on_from_lunch_goes_into_no_bin(room: TalkingRoom) -> None:
    await room.says("what did you have for lunch?")
    await room.says("soup", who="bram")
    await room.says("and a bit of chicken", who="bram")
    assert await acts(room) == ["open", "layer"]


@pytest.mark.parametrize(
    "said",
    ["added 2 kg", "chucked in 2 kg", "added 2 kg to the green bin", "put 2 kg in the tub"],
)
async def test_a_deed_is_told_behind_whatever_talk(room: TalkingRoom, said: str) -> None:
    await room.says("my kid is at school", who="bram")
    await room.says("is she well?")
    await room.says("very, thanks. The garden is lovely this year", who="bram")
    await room.says(said, who="bram")
    assert await room.kilos() == [2, 2]


@pytest.mark.parametrize("said", ["2 kg", "gained 2 kg since Christmas", "she was 2 kg"])
async def test_an_amount_behind_other_talk_is_no_deed(room: TalkingRoom, said: str) -> None:
    await room.says("my kid is at school", who="bram")
    await room.says(said, who="bram")
    assert await acts(room) == ["open", "layer"]


async def test_the_first_bin_is_begun_behind_other_talk(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("lovely weather we are having")
    await room.says("added 2 kg to the green bin")
    assert await room.kilos() == [2]


async def test_right_behind_the_record_it_goes_in(room: TalkingRoom) -> None:
    await room.says("plus a bit of chicken", who="bram")
    assert await acts(room) == ["open", "layer", "layer"]


async def test_an_opening_that_was_filled_since_is_undone_by_no_mere_word(
    room: TalkingRoom,
) -> None:
    await room.says("undo")
    assert await acts(room) == ["open", "layer"]


@pytest.mark.parametrize("said", ["so bram drained the yard bin?", "bram sealed the yard bin?"])
async def test_what_another_may_have_done_is_asked_first(room: TalkingRoom, said: str) -> None:
    await room.says(said)
    assert await acts(room) == ["open", "layer"]


@pytest.mark.parametrize(
    "said", ["drained 250 ml, how much water for that?", "drained 250 ml. How full is it?"]
)
async def test_a_record_with_a_question_behind_it_is_kept(room: TalkingRoom, said: str) -> None:
    [answer] = await room.says(said)
    assert await acts(room) == ["open", "layer", "drain"]
    assert "250 mL" in answer.body


async def test_a_vessel_named_behind_a_dilution_holds_the_water(room: TalkingRoom) -> None:
    await room.says("how much water for 300 ml?")
    [answer] = await room.says("and in a bucket?")
    assert answer.body.startswith("100 mL of liquid in 10 L")


async def test_food_amid_the_talk_of_the_bins_is_asked_about(room: TalkingRoom) -> None:
    await room.says("the lid looks odd")
    await room.says("it was dented in the van", who="bram")
    [asked] = await room.says("right. 600 g pasta then")
    assert asked.body == "Shall I write down 600 g?"


@pytest.mark.parametrize("said", ["buried it right there", "buried it in the hole you made"])
async def test_what_was_buried_there_is_the_bin_asked_about(db: Database, said: str) -> None:
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 20 L")
    await room.says("opened the shed bin, 20 L")
    await room.says("put 2 kg of leeks in the yard bin")
    await room.says("sealed the yard bin")
    await room.waits(days=13)
    await room.says("can the yard bin be buried?")
    await room.says("I made a hole by the pear, half a metre wide", who="bram")
    await room.says(said)
    [buried] = [entry for entry in await room.standing() if entry.act == "bury"]
    assert buried.bin
    assert buried.bin.name == "yard"


async def test_what_was_buried_behind_other_talk_is_no_bin(room: TalkingRoom) -> None:
    await room.says("our hamster died", who="bram")
    await room.says("oh no. Where will you put him?")
    await room.says("under the roses, there's a nice spot", who="bram")
    await room.says("buried it there", who="bram")
    assert await acts(room) == ["open", "layer"]
