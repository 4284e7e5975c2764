"""A burial that another member tells again, and a bin opened again once it is in the ground."""

from datetime import timedelta

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines buried the green bin two days ago; the gym bin is being filled."""
    room = TalkingRoom(db)
    await room.says("opened the green bin, 20 L, for all")
    await room.says("opened the gym bin, 20 L")
    await room.says("2 kg in green and 2 kg in gym")
    await room.says("sealed the green bin")
    room.now += timedelta(days=12)
    await room.says("buried the green bin by the fence")
    room.now += timedelta(days=2)
    return room


async def burials(room: TalkingRoom) -> list[tuple[int, str | None]]:
    told = [e for e in await room.standing() if e.act == "bury" and e.on]
    return [(e.on.day, e.facts.place) for e in told if e.on]


@pytest.mark.parametrize(
    ("said", "corrected"),
    [
        ("buried the green bin under the pear", (16, "pear")),
        ("no, we buried the green bin on Friday", (13, "fence")),
    ],
)
async def test_told_otherwise_it_is_asked_about(
    room: TalkingRoom, said: str, corrected: tuple[int, str]
) -> None:
    [asked] = await room.says(said, who="bram")
    assert "in the book as buried Saturday 14 March (fence) by ines" in asked.body
    assert await burials(room) == [(14, "fence")]
    await room.says("yes", who="bram")
    assert await burials(room) == [corrected]


@pytest.mark.parametrize("who", ["ines", "bram"])
@pytest.mark.parametrize("said", ["green is in the ground", "the green bin went into the soil"])
async def test_that_it_is_in_the_ground_is_told_again(
    room: TalkingRoom, said: str, who: str
) -> None:
    [answer] = await room.says(said, who=who)
    assert "is in the book as buried" in answer.body
    assert "?" not in answer.body
    assert await burials(room) == [(14, "fence")]


async def test_where_it_lies_is_put_to_ones_own_burial(room: TalkingRoom) -> None:
    await room.says("sealed gym")
    room.now += timedelta(days=12)
    await room.says("buried gym")
    await room.says("buried gym under the plum")
    await room.says("yes")
    assert await burials(room) == [(14, "fence"), (28, "plum")]


async def test_reopened_it_begins_a_new_run(room: TalkingRoom) -> None:
    [answer] = await room.says("reopened the green bin", who="bram")
    assert answer.body.startswith("Opened the green bin")
    [asked] = await room.says("2 kg scraps", who="bram")
    assert "Which bin: the green bin or the gym bin?" in asked.body


@pytest.mark.parametrize(
    ("said", "place"),
    [
        ("under the lemon", "lemon"),
        ("next to the old pear", "old pear"),
        ("in a bad mood today", None),
        ("by the way", None),
    ],
)
async def test_where_it_went_may_be_said_after_it(
    db: Database, said: str, place: str | None
) -> None:
    room = TalkingRoom(db)
    await room.says("opened the green bin, 20 L")
    await room.says("2 kg in green")
    await room.says("sealed green")
    room.now += timedelta(days=12)
    await room.says("buried green")
    await room.says(said)
    assert await burials(room) == [(14, place)]


async def seals(room: TalkingRoom) -> list[int]:
    return [e.on.day for e in await room.standing() if e.act == "seal" and e.on]


@pytest.mark.parametrize(("said", "on"), [("sealed green", 16), ("green was sealed yesterday", 15)])
async def test_a_sealing_of_a_bin_just_emptied_is_asked_about(
    room: TalkingRoom, said: str, on: int
) -> None:
    [asked] = await room.says(said)
    assert "was buried Saturday 14 March, and nothing went in since" in asked.body
    assert await seals(room) == [2]
    await room.says("yes")
    assert await seals(room) == [2, on]


async def test_a_no_leaves_the_bin_in_the_ground(room: TalkingRoom) -> None:
    await room.says("sealed green")
    await room.says("no")
    assert await seals(room) == [2]


@pytest.mark.parametrize(
    ("before", "said"),
    [
        ("2 kg in green", "sealed green"),
        ("reopened the green bin", "sealed green"),
        ("hello", "green was sealed on 3 March"),
        ("hello", "sealed gym"),
    ],
)
async def test_a_sealing_of_a_bin_that_is_at_work_is_written_down(
    room: TalkingRoom, before: str, said: str
) -> None:
    await room.says(before)
    answers = await room.says(said)
    assert not any("Shall I write down" in answer.body for answer in answers)
    assert len(await seals(room)) == 2


async def test_what_is_sealed_long_after_a_burial_was_filled_unheard(room: TalkingRoom) -> None:
    await room.waits(days=8)
    await room.says("sealed green")
    assert len(await seals(room)) == 2
