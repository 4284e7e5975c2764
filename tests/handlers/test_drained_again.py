"""A draining told of other days, too: "and Friday"."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines and Bram on a Sunday, and a bin that was drained on Monday."""
    room = TalkingRoom(db)
    await room.waits(days=6)
    await room.says("hello", who="bram")
    await room.says("opened the hut bin, 20 L, last Sunday")
    await room.says("drained the hut on Monday, 100 ml")
    return room


async def drained(room: TalkingRoom) -> list[tuple[str, float | None]]:
    """Weekday and litres of each draining that stands."""
    told = [e for e in await room.standing() if e.act == "drain" and e.bin]
    return [(f"{e.on:%a}", e.facts.volume_l) for e in told]


@pytest.mark.parametrize(
    ("said", "more"),
    [
        (["and Friday"], [("Fri", None)]),
        (["also on Saturday"], [("Sat", None)]),
        (["and on Thursday, 50 ml"], [("Thu", 0.05)]),
        (["and on Tuesday and Wednesday"], [("Tue", None), ("Wed", None)]),
        (["and 6/3"], [("Fri", None)]),
        (["and Friday", "and Saturday too"], [("Fri", None), ("Sat", None)]),
    ],
)
async def test_a_day_more_is_a_draining_more(
    room: TalkingRoom, said: list[str], more: list[tuple[str, float | None]]
) -> None:
    for words in said:
        await room.says(words)
    assert await drained(room) == [("Mon", 0.1), *more]


@pytest.mark.parametrize(
    ("said", "who"),
    [
        ("and Friday", "bram"),
        ("and Friday's the party", "ines"),
        ("and tomorrow", "ines"),
        ("and Friday?", "ines"),
        ("and Monday", "ines"),
        ("on Friday", "ines"),
        ("and on Thursday, 50 g", "ines"),
    ],
)
async def test_none_more_is_told(room: TalkingRoom, said: str, who: str) -> None:
    await room.says(said, who=who)
    assert await drained(room) == [("Mon", 0.1)]


async def test_behind_a_correction_it_is_the_day_of_that(room: TalkingRoom) -> None:
    await room.says("sorry, that was 200 ml")
    await room.says("and Friday")
    assert await drained(room) == [("Fri", 0.2)]
