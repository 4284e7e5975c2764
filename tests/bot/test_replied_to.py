"""A few words in reply to what the bot answered to a record: nobody is left without an answer."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    room = TalkingRoom(db)
    for who, shown in (("ines", "Ines"), ("bram", "Bram")):
        await room.calls_itself(shown, who=who)
    await room.says("opened the yard bin, 20 L, shared")
    return room


@pytest.mark.parametrize("said", ["no", "wrong", "that seems a lot", "what?", "not me"])
async def test_what_is_unclear_is_asked(room: TalkingRoom, said: str) -> None:
    [answer] = await room.says("added 2 kg of bread to the yard bin")
    [asked] = await room.says(said, replies_to=answer.tx_id)
    assert asked.body.startswith("What was wrong?")


@pytest.mark.parametrize("said", ["thanks", "ok", "lol", "nice one"])
async def test_a_courtesy_is_left(room: TalkingRoom, said: str) -> None:
    [answer] = await room.says("added 2 kg of bread to the yard bin")
    assert not await room.says(said, replies_to=answer.tx_id)


@pytest.mark.parametrize(
    ("said", "right"), [("yesterday", "yesterday"), ("not me, Bram", "by Bram")]
)
async def test_a_day_or_a_doer_alone_is_right(room: TalkingRoom, said: str, right: str) -> None:
    [answer] = await room.says("added 2 kg of bread to the yard bin")
    [corrected] = await room.says(said, replies_to=answer.tx_id)
    assert corrected.body.startswith("Corrected")
    assert right in corrected.body


async def test_a_figure_alone_is_asked_about(room: TalkingRoom) -> None:
    [answer] = await room.says("added 2 kg of bread to the yard bin")
    [asked] = await room.says("3", replies_to=answer.tx_id)
    assert asked.body == "Shall I write down that it was 3 kg?"
