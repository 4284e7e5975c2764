"""What was told of two bins and was done to one of them is struck out of the other."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines filled and sealed two bins, and says that she buried both."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    for bin in ("barn", "roof"):
        await room.says(f"opened the {bin} bin, 20 L")
        await room.says(f"2 kg in the {bin} bin")
    await room.says("sealed the barn bin and the roof bin")
    await room.waits(days=12)
    await room.says("buried both in the bean bed")
    return room


async def buried(room: TalkingRoom) -> list[str]:
    return [e.bin.name for e in await room.standing() if e.act == "bury" and e.bin]


@pytest.mark.parametrize(
    "said",
    [
        "no, only the roof",
        "sorry, just the roof bin, not the barn",
        "the roof bin only",
        "not the barn bin",
        "the barn bin isn't buried yet",
        "oops, barn was not buried",
    ],
)
async def test_one_of_two_is_struck_out(room: TalkingRoom, said: str) -> None:
    [answer] = await room.says(said)
    assert answer.body == "Struck out: burial of the barn bin."
    assert await buried(room) == ["roof"]
    await room.says("put it back")
    assert sorted(await buried(room)) == ["barn", "roof"]


@pytest.mark.parametrize(
    ("said", "who"),
    [
        ("the barn bin isn't buried yet", "bram"),
        ("is the barn bin not buried yet?", "ines"),
        ("only the roof bin is blue", "ines"),
    ],
)
async def test_nothing_is_struck_out(room: TalkingRoom, said: str, who: str) -> None:
    await room.says(said, who=who)
    assert sorted(await buried(room)) == ["barn", "roof"]


async def test_what_no_book_tells_is_no_news(room: TalkingRoom) -> None:
    await room.says("opened the loft bin, 20 L")
    assert not await room.says("the loft bin isn't sealed yet")
