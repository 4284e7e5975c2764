"""What is struck out and told right in one breath, or a day put right alone, keeps the rest."""

from datetime import date

import pytest

from storage.database import Database
from tests.room import TalkingRoom

MONDAY, SUNDAY, SATURDAY = date(2026, 3, 2), date(2026, 3, 1), date(2026, 2, 28)
LEEKS = "2 kg of leeks in green on Sunday"


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    room = TalkingRoom(db)
    await room.says("opened the green bin, 30 L")
    await room.says("opened the hut bin, 30 L")
    await room.says("hello", who="bram")
    return room


async def told(room: TalkingRoom) -> list[tuple[str | None, float | None, date | None]]:
    """Bin, amount and day of each layer."""
    return [
        (entry.bin.name if entry.bin else None, entry.facts.mass_kg, entry.on)
        for entry in await room.standing()
        if entry.act == "layer"
    ]


@pytest.mark.parametrize(
    ("said", "right"),
    [
        (["scratch that it was 3 kg"], ("green", 3, SUNDAY)),
        (["strike that it was 3"], ("green", 3, SUNDAY)),
        (["scrap that I meant hut"], ("hut", 2, SUNDAY)),
        (["scrap that it went in the hut"], ("hut", 2, SUNDAY)),
        (["scratch that, Saturday"], ("green", 2, SATURDAY)),
        (["delete that it was Saturday I think"], ("green", 2, SATURDAY)),
        (["scratch that", "it was 3 kg"], ("green", 3, SUNDAY)),
        (["scratch that", "it was the hut"], ("hut", 2, SUNDAY)),
        (["no, Saturday"], ("green", 2, SATURDAY)),
        (["*saturday"], ("green", 2, SATURDAY)),
        (["sorry, meant today"], ("green", 2, MONDAY)),
        (["was it Sunday? no, it must have been Saturday"], ("green", 2, SATURDAY)),
        (["it was more like 3 kg now I come to think of it"], ("green", 3, SUNDAY)),
        (["no, tomorrow"], ("green", 2, SUNDAY)),
        (["actually Saturday"], ("green", 2, SATURDAY)),
        (["strike that and put it in the hut"], ("hut", 2, SUNDAY)),
        (["that was in the hut", "and 3 kg not 2"], ("hut", 3, SUNDAY)),
        (["when do we drain green?", "no, Saturday"], ("green", 2, SUNDAY)),
    ],
)
async def test_it_is_put_right(
    room: TalkingRoom, said: list[str], right: tuple[str, float, date]
) -> None:
    await room.says(LEEKS)
    for body in said:
        await room.says(body)
    assert await told(room) == [right]


@pytest.mark.parametrize("said", ["scratch that it was a mistake", "scrap that it was in the way"])
async def test_a_reason_is_nothing_in_its_place(room: TalkingRoom, said: str) -> None:
    await room.says(LEEKS)
    await room.says(said)
    assert await told(room) == []


async def test_what_was_struck_stays_so_where_something_else_is_spoken_of(
    room: TalkingRoom,
) -> None:
    await room.says(LEEKS)
    await room.says("scratch that")
    await room.says("1 kg of rice in hut")
    await room.says("no, 1.5 kg")
    assert await told(room) == [("hut", 1.5, MONDAY)]


@pytest.mark.parametrize(
    ("said", "asked"),
    [
        ("that was mine", True),
        ("oh that was me, sorry", True),
        ("that was me, not Ines", True),
        ("that's me done", False),
        ("it was me who called", False),
        ("was that mine?", False),
    ],
)
async def test_one_who_says_that_it_was_theirs_is_asked(
    room: TalkingRoom, said: str, asked: bool
) -> None:
    await room.says(LEEKS)
    answers = await room.says(said, who="bram")
    assert any("Shall I put it down to bram?" in answer.body for answer in answers) is asked
    if asked:
        await room.says("yes", who="bram")
        assert [e.member for e in await room.standing() if e.act == "layer"] == ["bram"]


async def test_what_was_done_to_something_else_is_not_theirs(room: TalkingRoom) -> None:
    await room.says(LEEKS)
    await room.says("who left the gate open?")
    assert await room.says("that was me", who="bram") == []
