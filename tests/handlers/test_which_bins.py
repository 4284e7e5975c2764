"""Which bins are open, sealed or shared."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """A sealed bin, and two that are filled, one of them for everybody."""
    room = TalkingRoom(db)
    await room.says("opened the green bin, 20 L")
    await room.says("500 g in green")
    await room.says("sealed green")
    await room.says("opened the red bin, 12 L, shared")
    await room.says("opened the blue bin, 12 L")
    return room


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("which bin is open?", {"red", "blue"}),
        ("which of the bins are still filling?", {"red", "blue"}),
        ("which bins are sealed?", {"green"}),
        ("which bins are shared?", {"red"}),
    ],
)
async def test_the_bins_in_that_stage_are_named(
    room: TalkingRoom, said: str, told: set[str]
) -> None:
    body = words(await room.says(said))
    assert {name for name in ("green", "red", "blue") if f"The {name} bin:" in body} == told


async def test_of_none_it_is_said_so(room: TalkingRoom) -> None:
    await room.says("sealed red")
    await room.says("sealed blue")
    assert words(await room.says("which bins are open?")).startswith("No bin is open.")


async def test_other_things_are_not_asked_of_us(room: TalkingRoom) -> None:
    await room.says("hello", who="bram")
    assert await room.says("which window is open?", who="bram") == []
