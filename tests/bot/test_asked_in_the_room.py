"""What members ask in a room, and what is told there that no record holds."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


async def heard(room: TalkingRoom, *said: str) -> str:
    """What the bot says to the last of the lines, other members having spoken too."""
    await room.says("hello", who="bram")
    for line in said[:-1]:
        await room.says(line)
    await room.says("hello", who="bram")
    return "\n".join(message.body for message in await room.says(said[-1]))


@pytest.fixture
def room(db: Database) -> TalkingRoom:
    return TalkingRoom(db)


OPEN = "opened the blue bin, 20 L"


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        (["some got in my eye"], "15 minutes"),
        (["my child drank the juice"], "poison line"),
        ([OPEN, "rats at the bin"], "gloves on, cuts covered"),
        ([OPEN, "the lid exploded"], "face turned away"),
        (["is the gas dangerous"], "carbon dioxide"),
        (["can I put it down the drain"], "Down the drain it goes undiluted"),
        ([OPEN, "can I put the juice on lettuce neat"], "Never undiluted on plants"),
        ([OPEN, "put dog poo in the bin 1 kg"], "nothing is written down"),
        ([OPEN, "can I put a litre of cooking oil in"], "No, that much oil"),
        ([OPEN, "can I put rhubarb leaves in?"], "Yes, rhubarb leaves"),
        ([OPEN, "is mouldy bread ok"], "No, mouldy food"),
        ([OPEN, "added 2 kg scraps", "how much did ines put in?"], "Ines: 2 kg"),
        (["what are our settings?"], "Europe/Lisbon"),
        (["what's our time zone"], "Europe/Lisbon"),
        (["our time zone is Europe/Paris"], "now Europe/Paris"),
        ([OPEN, "rota for the blue bin: Ines, Zora, Milo, weekly"], "not heard Zora and Milo"),
        ([OPEN, "rota for the blue bin: bram, zora, weekly"], "not heard zora"),
        (["how much starter for -1 kg"], "how much do you mean"),
        (["how much starter for 5 gallons"], "a US gallon is 3.79 L"),
        (["opened the shed bin, 20 L", "something furry and green in the shed"], "mouldy scraps"),
    ],
)
async def test_the_answer_is_there(room: TalkingRoom, said: list[str], wanted: str) -> None:
    assert wanted in await heard(room, *said)


@pytest.mark.parametrize("said", ["my feet smell rotten", "kids drank all the orange juice"])
async def test_what_is_none_of_its_business(room: TalkingRoom, said: str) -> None:
    assert await heard(room, OPEN, said) == ""


async def test_rats_are_written_down_and_poo_is_not(room: TalkingRoom) -> None:
    await heard(room, OPEN, "rats at the bin", "put dog poo in the bin 1 kg")
    assert [entry.act for entry in await room.standing()] == ["open", "observe"]


async def test_planting_is_told_of_the_bin_that_is_in_the_ground(room: TalkingRoom) -> None:
    general = await heard(room, "when can I plant there?")
    assert general.startswith("14 to 21 days after burying")
    own = await heard(room, OPEN, "added 2 kg scraps", "sealed it", "when can I bury it?")
    assert own.endswith("bury the blue bin (ines)")
    await room.waits(days=14)
    planted = await heard(
        room, "buried the blue bin under the pear tree", "when can I plant there?"
    )
    assert planted.endswith("plant where the blue bin was buried (ines)")
    assert "\n" not in planted


@pytest.mark.parametrize(
    ("seen", "advice"),
    [
        ("the blue bin smells of rotten eggs, any advice?", "Most likely"),
        ("it smells like pickled onions, is that what we want?", "Carry on"),
    ],
)
async def test_advice_is_given_once_for_what_is_seen_and_asked_in_one_breath(
    room: TalkingRoom, seen: str, advice: str
) -> None:
    said = await heard(room, OPEN, "added 1 kg to the blue bin", seen)
    assert said.count(advice) == 1


async def test_the_dose_on_that_is_of_the_layer_just_told(room: TalkingRoom) -> None:
    told = await heard(room, OPEN, "added 1.5 kg of chicken to the blue bin")
    (again,) = await room.says("how much bran for that?")
    assert again.body.split(" of starter")[0] == told.split(" of starter")[0]
    assert "On a kilo of plain scraps" in await heard(room, "how much bran do you use?")


@pytest.mark.parametrize("asked", ["how much bran?", "and how much starter do I need?"])
async def test_the_dose_asked_barely_is_of_ones_own_last_layer(
    room: TalkingRoom, asked: str
) -> None:
    assert "Reply with the amount" in await heard(room, OPEN, asked)
    told = await heard(room, "added 1.5 kg of chicken to the blue bin")
    (again,) = await room.says(asked)
    assert again.body.split(" of starter")[0] == told.split(" of starter")[0]
    (general,) = await room.says(asked, who="bram")
    assert "Reply with the amount" in general.body


@pytest.mark.parametrize(
    ("before", "answered"),
    [
        ("I'll seal the blue bin on Saturday", True),
        ("the blue bin is heavy today", True),
        ("I'll bring the cake on Saturday", False),
        ("is anyone coming to the choir?", False),
    ],
)
async def test_who_is_late_is_asked_of_the_bins_behind_a_word_on_them(
    room: TalkingRoom, before: str, answered: bool
) -> None:
    await heard(room, OPEN)
    await room.says(before, who="bram")
    assert bool(await room.says("who's late?")) is answered


async def test_the_dose_on_that_is_of_what_another_told(room: TalkingRoom) -> None:
    told = await heard(room, OPEN, "added 1.5 kg of chicken to the blue bin")
    (again,) = await room.says("how much bran for that?", who="bram")
    assert again.body.split(" of starter")[0] == told.split(" of starter")[0]


async def test_the_dose_on_that_is_of_what_was_asked_about(room: TalkingRoom) -> None:
    await heard(room, OPEN, "added 1 kg to the blue bin")
    await room.waits(hours=20)
    (asked,) = await room.says("2 kg of ham bones or so, blue?", who="bram")
    assert asked.body == "Shall I write down 2 kg in the blue bin?"
    await room.says("those are big", who="zoe")
    (dose,) = await room.says("how much bran for that", who="ines")
    assert "of starter on 2 kg" in dose.body


@pytest.mark.parametrize("asked", ["no fish yet?", "any fish yet", "still no fish so far?"])
async def test_what_others_have_put_in_is_asked_of_them(room: TalkingRoom, asked: str) -> None:
    await heard(room, OPEN, "added 1 kg of leeks to the blue bin")
    assert not await room.says(asked, who="bram")
    assert "Yes, meat and fish" in words(await room.says("can fish go in yet?", who="bram"))
