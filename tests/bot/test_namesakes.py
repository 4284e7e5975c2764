"""Two members who show one name: which of them a record is of."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom

SHARED = "More than one here has that name"
SECOND = "Anna (@anna2:test)"


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    room = TalkingRoom(db)
    for who in ("anna1", "anna2"):
        await room.calls_itself("Anna", who=who)
    await room.calls_itself("Ines", who="ines")
    await room.says("opened the shed bin, 20 L")
    return room


async def did(room: TalkingRoom) -> list[str | None]:
    return [entry.member for entry in await room.standing() if entry.act in ("layer", "away")]


@pytest.mark.parametrize(
    "said", ["Anna added 2 kg to the shed bin", "2 kg went into the shed bin, Anna did it"]
)
async def test_a_record_of_one_of_two_says_that_there_is_another(
    room: TalkingRoom, said: str
) -> None:
    [told] = await room.says(said, event="$said")
    assert f"{SHARED}: if it was @anna2:test" in told.body
    [again] = await room.edits("$said", "@anna2:test added 2 kg to the shed bin")
    assert SHARED not in again.body
    assert await did(room) == [SECOND]


@pytest.mark.parametrize("user", ["@anna1:test", "@anna2:test"])
async def test_whoever_is_mentioned_is_meant(room: TalkingRoom, user: str) -> None:
    content = {
        "msgtype": "m.text",
        "body": "Anna added 2 kg to the shed bin",
        "m.mentions": {"user_ids": [user]},
    }
    [told] = await room.event("m.room.message", content)
    assert SHARED not in told.body
    assert await did(room) == ["Anna" if user == "@anna1:test" else SECOND]


async def test_of_an_absence_it_is_said_too(room: TalkingRoom) -> None:
    told = await room.says("Anna is away till Friday")
    assert any(SHARED in message.body for message in told)


@pytest.mark.parametrize("who", ["anna1", "anna2", "ines"])
async def test_what_members_tell_of_themselves_is_theirs(room: TalkingRoom, who: str) -> None:
    [told] = await room.says("added 2 kg to the shed bin", who=who)
    assert SHARED not in told.body
    assert await did(room) == [{"anna1": "Anna", "anna2": SECOND, "ines": "Ines"}[who]]


async def test_a_namesake_who_has_left_is_not_meant(room: TalkingRoom) -> None:
    await room.calls_itself("Anna", who="anna2", is_in=False)
    [told] = await room.says("Anna added 2 kg to the shed bin")
    assert SHARED not in told.body
