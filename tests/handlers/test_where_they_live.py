"""Where a group lives tells its clock, and in the States its units: it is asked once."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
def room(db: Database) -> TalkingRoom:
    """A room whose clock nobody has set."""
    return TalkingRoom(db, zone="UTC")


@pytest.mark.parametrize(
    ("said", "zone", "units"),
    [
        ("we're in London", "Europe/London", "metric"),
        ("a WG in Berlin", "Europe/Berlin", "metric"),
        ("We're in Columbus, Ohio", "America/New_York", "us"),
        ("Hi, we are six flats in Leeds and share two bins", "Europe/London", "metric"),
    ],
)
async def test_a_yes_sets_the_clock(room: TalkingRoom, said: str, zone: str, units: str) -> None:
    asked = words(await room.says(said))
    assert f"Shall I go by {zone}" in asked
    assert (await room.book()).room.zone == "UTC"
    await room.says("yes")
    set_now = (await room.book()).room
    assert (set_now.zone, set_now.units) == (zone, units)
    assert await room.says("we're in Paris") == []  # it is set


@pytest.mark.parametrize(
    "said",
    [
        "we're in London this weekend",
        "my parents live in Berlin",
        "the flats in London are so expensive",
        "we were living in Berlin",
        "we're in Paris, back Sunday",
        "are we in London?",
        "we're in trouble",
    ],
)
async def test_other_places_are_no_home(room: TalkingRoom, said: str) -> None:
    assert "Shall I go by" not in words(await room.says(said))


async def test_a_no_leaves_the_clock(room: TalkingRoom) -> None:
    await room.says("we're in London")
    await room.says("no")
    assert (await room.book()).room.zone == "UTC"
