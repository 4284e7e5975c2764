"""One of several records is put right or struck out by its day alone."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines's layers of three days, told in one message; of what day each is, the test counts."""
    room = TalkingRoom(db)
    room.now = room.now.replace(year=2026, month=3, day=8, hour=18)  # a Sunday
    await room.says("hello", who="bram")
    await room.says("opened the green bin, 30 L, last Sunday")
    await room.says("opened the red bin, 12 L, last Sunday")
    await room.says("Mon 1 kg, Wed 800 g, Fri 500 g, all in green")
    return room


async def layers(room: TalkingRoom) -> list[tuple[str, str | None, float | None, str | None]]:
    """Weekday, bin, amount and member of each layer."""
    told = [e for e in await room.standing() if e.act == "layer"]
    by_day = sorted(told, key=lambda e: (e.on, e.id))
    return [
        (f"{e.on:%a}", e.bin and e.bin.name, e.facts.mass_kg, e.member)  # type: ignore[misc]
        for e in by_day
    ]


MON = ("Mon", "green", 1.0, "ines")
WED = ("Wed", "green", 0.8, "ines")
FRI = ("Fri", "green", 0.5, "ines")


@pytest.mark.parametrize(
    ("said", "left"),
    [
        ("and Mon was red", [("Mon", "red", 1.0, "ines"), WED, FRI]),
        ("sorry, Monday went in red", [("Mon", "red", 1.0, "ines"), WED, FRI]),
        ("Monday's should have gone in the red bin", [("Mon", "red", 1.0, "ines"), WED, FRI]),
        ("Wed was 900 not 800", [MON, ("Wed", "green", 0.9, "ines"), FRI]),
        ("the Wednesday one was 900 g", [MON, ("Wed", "green", 0.9, "ines"), FRI]),
        ("Monday's was Bram's", [("Mon", "green", 1.0, "bram"), WED, FRI]),
        ("Wednesday's wasn't me, it was Bram", [MON, ("Wed", "green", 0.8, "bram"), FRI]),
        ("Wednesday's was by Bram, not me", [MON, ("Wed", "green", 0.8, "bram"), FRI]),
        ("Wednesday's should be Thursday", [MON, ("Thu", "green", 0.8, "ines"), FRI]),
        ("scratch the Monday one", [WED, FRI]),
        ("scratch Monday", [WED, FRI]),
        ("please delete Wednesday's", [MON, FRI]),
        ("cancel Friday's", [MON, WED]),
    ],
)
async def test_it_alone_is_changed(
    room: TalkingRoom, said: str, left: list[tuple[str, str | None, float | None, str | None]]
) -> None:
    await room.says(said)
    assert await layers(room) == left


async def test_what_it_was_is_told(room: TalkingRoom) -> None:
    await room.says("the Wednesday one was bread")
    told = [e.facts.materials for e in await room.standing() if e.act == "layer"]
    assert told.count({"grain": 1.0}) == 1


@pytest.mark.parametrize(
    "said",
    [
        "Monday was hot",
        "cancel Friday",
        "Monday's meeting was Bram's idea",
        "was Monday's in red?",
        "Thursday's was in red",  # there is none of that day
        "scratch the Tuesday one",
    ],
)
async def test_nothing_is_changed(room: TalkingRoom, said: str) -> None:
    await room.says(said)
    assert await layers(room) == [MON, WED, FRI]


async def test_of_two_of_one_day_it_is_asked_which(room: TalkingRoom) -> None:
    await room.says("put 300 g in red on Monday")
    before = await layers(room)
    [answer] = await room.says("Monday's wasn't me, it was Bram")
    assert answer.body.startswith("Which of these do you mean: 1 kg in the green bin")
    assert await layers(room) == before
    await room.says("the 300 g on Monday was 600 g")
    assert ("Mon", "red", 0.6, "ines") in await layers(room)
