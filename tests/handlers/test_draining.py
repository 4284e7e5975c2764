"""Liquid that comes off a bin, against what went in."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.mark.parametrize(
    ("said", "doubted"), [("drained 4 litres", True), ("drained 300 ml", False)]
)
async def test_more_than_went_in_is_written_down_and_doubted(
    db: Database, said: str, doubted: bool
) -> None:
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 15 L")
    await room.says("added 3 kg of peelings")
    words = " ".join(message.body for message in await room.says(said))
    assert ("more than the 3 kg" in words) is doubted
    assert [e.facts.volume_l for e in await room.standing() if e.act == "drain"] != []


@pytest.mark.parametrize("asked", ["how much water for that?", "what do I thin it with, how much?"])
async def test_what_was_drained_is_thinned(db: Database, asked: str) -> None:
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 15 L")
    await room.says("added 3 kg of peelings")
    await room.says("drained 200 ml")
    words = " ".join(message.body for message in await room.says(asked))
    assert "200 mL of liquid in 20 L of water" in words


async def test_what_is_drained_and_asked_about_is_written_down_and_judged(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L")
    await room.says("3 kg peel in shed")
    (answer,) = await room.says("drained a litre from the shed, is that too much?")
    assert "1 L came off so far: that is much" in answer.body
    assert [e.facts.volume_l for e in await room.standing() if e.act == "drain"] == [1.0]
