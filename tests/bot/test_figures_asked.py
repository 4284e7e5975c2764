"""The figures that are told to a question in a room, each against one from outside."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
def room(db: Database) -> TalkingRoom:
    return TalkingRoom(db)


async def told(room: TalkingRoom, *said: str) -> str:
    """What the bot says to the last of the lines."""
    answer = ""
    for line in said:
        answer = "\n".join(message.body for message in await room.says(line))
    return answer


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        # 30 mL on the floor of 5 US gal (18.9 L), and the floor by (30/18.9)^(2/3): 40.8 mL;
        # USDA SR28 20077: wheat bran 58 g to a cup of 236.6 mL, so 10 g
        ("how much bran on the bottom of a 30 L bin?", "2½ tablespoons (about 10 g)"),
        # the habit that is taught: 2.5 level spoons on 6.25 cm, so 2 on 5 cm
        ("how much bran for a layer 5 cm deep?", "2 tablespoons (about 7 g)"),
        # and twice that where all of it is fish
        ("how much bran for a layer of fish 5 cm deep?", "4 tablespoons (about 15 g)"),
        ("how much bran for 50 cm of leeks?", "say one layer at a time"),
    ],
)
async def test_how_much_starter(room: TalkingRoom, said: str, wanted: str) -> None:
    assert wanted in await told(room, said)


async def test_the_question_and_the_record_come_to_the_same(room: TalkingRoom) -> None:
    asked = await told(room, "2 kg peel and 500 g fish, how much bran?")
    record = await told(room, "opened the hall bin, 20 L", "added 2 kg peel and 500 g fish to hall")
    assert asked.split(" of starter")[0] == record.split(" of starter")[0]
    assert "a fifth more" in asked  # a fifth of it is fish, which alone would take twice as much
