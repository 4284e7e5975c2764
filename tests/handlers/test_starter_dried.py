"""A batch of starter that is dry is on hand from then on; starter given away is less of it."""

from datetime import timedelta

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """1 kg on hand, and a batch that was mixed fifteen days ago."""
    room = TalkingRoom(db)
    await room.says("we have 1 kg of bran")
    await room.says("mixed 5 kg of starter today")
    room.now += timedelta(days=15)
    return room


async def on_hand(room: TalkingRoom) -> float | None:
    counts = [e for e in await room.standing() if e.act == "stock"]
    return max(counts, key=lambda entry: entry.id).facts.mass_kg


@pytest.mark.parametrize(
    "said",
    [
        ["bagged 4.2 kg of the new starter"],
        ["the starter is dry, 4.2 kg"],
        ["dried the starter, it came to 4.2 kg"],
        ["the batch is dry", "4.2 kg"],
        ["dried the batch, it's 4.2 kg"],
        ["the batch came to about 4.2 kg"],
        ["our batch of bran yielded 4.2 kg"],
        ["the batch gave 4.2 kg of starter"],
        ["dried the bran", "4.2 kg"],
    ],
)
async def test_what_a_batch_gave_is_on_hand(room: TalkingRoom, said: list[str]) -> None:
    for words in said:
        await room.says(words)
    assert await on_hand(room) == pytest.approx(5.2)
    assert [e.act for e in await room.standing()].count("batch") == 1
    assert "dry" not in "".join(m.body for m in await room.says("what's due?"))


async def test_a_batch_of_something_else_came_to_that(room: TalkingRoom) -> None:
    await room.says("the batch of jam came to 4.2 kg")
    await room.says("we have 1 kg of bran")  # counted anew, so that no batch waits to be dried
    await room.says("the batch came to 4.2 kg")
    assert await on_hand(room) == 1


@pytest.mark.parametrize("said", ["dried the apples", "the batch is not dry yet", "is it dry?"])
async def test_nothing_is_dry(room: TalkingRoom, said: str) -> None:
    await room.says(said)
    assert await on_hand(room) == 1
    assert "dry" in "".join(m.body for m in await room.says("what's due?"))


@pytest.mark.parametrize(
    ("said", "left"),
    [
        ("gave Nan 200 g of bran", 0.8),
        ("gave my sister 200 g of bran", 0.8),
        ("spilled half the bran, 500 g gone", 0.5),
        ("took 100 g of bran home", 0.9),
        ("took 100 g of bran flakes home", 1),
    ],
)
async def test_what_went_is_less(room: TalkingRoom, said: str, left: float) -> None:
    await room.says(said)
    assert await on_hand(room) == pytest.approx(left)
