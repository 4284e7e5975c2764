"""The bot is called by the name that it shows in the room."""

import pytest

from bot.mentions import by_plain_name
from storage import rooms
from storage.database import Database
from tests.room import TalkingRoom, words


async def asked(db: Database, shown: str, question: str) -> str:
    """What it answers amid the talk of others, under the name that it shows."""
    room = TalkingRoom(db)
    await room.says("opened the green bin, 20 L, shared", who="olga")
    async with db.transaction():
        await rooms.set_own_name(db, (await room.book()).room, shown)
    await room.says("who ate my sandwich?", who="rut")
    await room.says("not me", who="olga")
    return words(await room.says(question, who="ines"))


QUESTION = "how much for 2 kg of peelings?"


@pytest.mark.parametrize(
    ("shown", "called"),
    [
        ("Rosalind", "rosalind, "),
        ("Rosalind", "ROSALIND "),
        ("Mrs Bucket 🪣", "mrs bucket: "),
        ("Mrs Bucket (the bin bot)", "hey Mrs Bucket, "),
        ("Bokashi", "bokashi, "),
        ("Żaneta", "żaneta, "),
    ],
)
async def test_it_is_called_by_that_name(db: Database, shown: str, called: str) -> None:
    assert "starter" in await asked(db, shown, called + QUESTION)


@pytest.mark.parametrize(
    ("shown", "called"),
    [("Rosalind", ""), ("Rosalind", "Rosa, "), ("Olga", "olga "), ("", "Rosalind ")],
)
async def test_nobody_else_is(db: Database, shown: str, called: str) -> None:
    assert await asked(db, shown, called + "what's for supper?") == ""


async def test_it_is_greeted(db: Database) -> None:
    assert await asked(db, "Rosalind", "Rosalind, are you there?") != ""


@pytest.mark.parametrize("body", ["added 2 kg bran to green", "the green bin, please", "sam's in"])
def test_a_name_that_others_have_changes_no_words(body: str) -> None:
    for shown in ("Bran", "Green", "Sam"):
        assert by_plain_name(body, shown, ("green bin", "sam")) == body
