"""A deed that is due waits for a day that is told; what others have to do, once that is agreed."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines and Bram each keep a bin that has been ready to bury for some days."""
    room = TalkingRoom(db)
    for who, bin in (("ines", "shed"), ("bram", "blue")):
        await room.says(f"opened the {bin} bin, 20 L", who=who)
        await room.says(f"2 kg of peelings in the {bin} bin", who=who)
        await room.says(f"drained the {bin} bin", who=who)
        await room.says(f"sealed the {bin} bin", who=who)
    await room.says("hello", who="zoe")
    await room.waits(days=15)  # to Tuesday 17 March
    return room


async def waiting(room: TalkingRoom) -> list[tuple[str, str]]:
    """The bins whose burial was put off, and until when."""
    dues = [
        due for due in await (await room.book()).dues() if due.what == "bury" and due.put_off_until
    ]
    return sorted((due.bin.name, f"{due.put_off_until:%d %b}") for due in dues if due.bin)


@pytest.mark.parametrize(
    ("who", "said", "put_off"),
    [
        ("bram", "I'll bury it on Friday", [("blue", "20 Mar")]),
        ("bram", "I'll bury the blue bin on Friday", [("blue", "20 Mar")]),
        ("bram", "can't bury this week, the ground's waterlogged", [("blue", "23 Mar")]),
        ("zoe", "I'll bury it on Friday", []),
        ("bram", "I'll seal it on Friday", []),
        ("bram", "let's bury the hatchet on Friday", []),
    ],
)
async def test_by_whom_it_is_put_off(
    room: TalkingRoom, who: str, said: str, put_off: list[tuple[str, str]]
) -> None:
    answers = [one for one in await room.says(said, who=who) if one.kind == "reply"]
    assert bool(answers) == bool(put_off)
    assert await waiting(room) == put_off


@pytest.mark.parametrize(
    ("answer", "put_off"),
    [("yes", [("blue", "21 Mar"), ("shed", "21 Mar")]), ("no", []), ("nice day today", [])],
)
async def test_what_others_have_to_do_is_asked_first(
    room: TalkingRoom, answer: str, put_off: list[tuple[str, str]]
) -> None:
    asked = words(await room.says("let's bury everything on Saturday", who="zoe"))
    duties = "bury the shed bin and bury the blue bin"
    assert f"Shall I leave it until Saturday 21 March: {duties}?" in asked
    assert await waiting(room) == []
    await room.says(answer, who="zoe")
    assert await waiting(room) == put_off
