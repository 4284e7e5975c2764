"""What the bot says of a layer's dose behind the talk, and whether it has heard somebody."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    room = TalkingRoom(db)
    await room.says("opened the barn bin, 20 L, shared", who="olga")
    await room.says("morning", who="rut")
    await room.says("put 2 kg of fish skins in the barn", who="ines")
    await room.says("did you put any on it ines", who="rut")
    await room.says("hm, two handfuls", who="ines")
    return room


@pytest.mark.parametrize(
    ("who", "asked"),
    [
        ("rut", "bot how much should it have been?"),
        ("olga", "bot, how much bran should ines have used"),
        ("rut", "bot what was the right amount"),
        ("ines", "how much should I have put on?"),
    ],
)
async def test_the_dose_of_the_layer_in_talk(room: TalkingRoom, who: str, asked: str) -> None:
    assert "4 tablespoons (about 15 g) of starter on the 2 kg" in words(
        await room.says(asked, who=who)
    )


@pytest.mark.parametrize(
    ("who", "asked"),
    [
        ("rut", "how much should it have been?"),
        ("ines", "how much should the tickets have been?"),
        ("ines", "how much should I have drunk?"),
    ],
)
async def test_what_is_asked_of_others_is_left_alone(
    room: TalkingRoom, who: str, asked: str
) -> None:
    assert await room.says(asked, who=who) == []


@pytest.mark.parametrize(
    "asked", ["bot did you get that", "pailkeeper, have you noted mine?", "bot was that recorded"]
)
async def test_what_was_last_written_down_of_somebody(room: TalkingRoom, asked: str) -> None:
    told = words(await room.says(asked, who="ines"))
    assert told == "Yes, written down: 2 kg in the barn bin."
    assert "Nothing of yours" in words(await room.says(asked, who="rut"))


async def test_what_was_struck_out_is_said_to_be(room: TalkingRoom) -> None:
    await room.says("bot, scratch that", who="ines")
    assert words(await room.says("bot did you get that", who="ines")).startswith("Struck out: 2 kg")


async def test_what_still_waits_for_an_answer_is_not_written_down(room: TalkingRoom) -> None:
    await room.says("opened the loft bin, 20 L", who="olga")
    await room.says("loft 850", who="rut")
    assert words(await room.says("bot did you get that", who="rut")).startswith("Not yet")


async def test_a_neighbour_is_asked_whether_they_heard(room: TalkingRoom) -> None:
    assert await room.says("rut did you get that", who="ines") == []
