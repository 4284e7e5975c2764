"""A second bin beside one that has a name, and what it is called by from then on."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines's porch bin, into which Bram has put something."""
    room = TalkingRoom(db)
    await room.says("opened the porch bin, 20 L")
    await room.says("added 2 kg of leeks to the porch bin", who="bram")
    return room


async def bins(room: TalkingRoom) -> list[str]:
    return [bin.name for bin in await (await room.book()).bins()]


@pytest.mark.parametrize(
    "said",
    [
        "opened porch 2, 20 L",
        "opened porch 2 today, 20 L",
        "started the second porch bin, 20 L",
        "opened a second one, 20 L",
        "started a second bucket, 20 L",
        "sealed the porch. Opened porch 2, 20 L",
    ],
)
async def test_a_second_one_has_the_name_of_the_first(room: TalkingRoom, said: str) -> None:
    assert "Opened porch 2, 20 L" in words(await room.says(said))
    assert await bins(room) == ["porch", "porch 2"]


@pytest.mark.parametrize(
    "said",
    [
        "put 1 kg in 2",
        "and 1 kg of rice in the second one",
        "porch 2 got 1 kg",
        "1 kg in the second porch bin",
        "put 1 kg in porch bin 2",
        "bin 2 got 1 kg",
    ],
)
async def test_what_goes_into_the_second_one(room: TalkingRoom, said: str) -> None:
    await room.says("opened porch 2, 20 L")
    await room.says(said, who="bram")
    [layer] = [e for e in await room.standing() if e.act == "layer" and e.facts.mass_kg == 1]
    assert layer.bin
    assert layer.bin.name == "porch 2"


async def test_what_goes_into_the_first_one(room: TalkingRoom) -> None:
    await room.says("opened porch 2, 20 L")
    await room.says("put 1 kg in the porch bin", who="bram")
    assert {e.bin.name for e in await room.standing() if e.act == "layer" and e.bin} == {"porch"}


@pytest.mark.parametrize("said", ["porch 2 is 25 L too", "the second one is also 25 litres"])
async def test_how_big_the_second_one_is(room: TalkingRoom, said: str) -> None:
    await room.says("opened porch 2")
    assert "holds 25 L" in words(await room.says(said))


@pytest.mark.parametrize(
    "said", ["drained the porch 2 cups", "put 2 kg in the porch 2 days ago", "porch 2, shed 1"]
)
async def test_a_number_of_other_things_begins_none(room: TalkingRoom, said: str) -> None:
    await room.says(said)
    assert await bins(room) == ["porch"]


async def test_a_second_one_beside_several_has_no_name_of_theirs(room: TalkingRoom) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says("opened a second one, 20 L")
    assert await bins(room) == ["porch", "shed", "bin 1"]


@pytest.mark.parametrize("said", ["sealed it. Started porch 2", "sealed it and opened porch 2"])
async def test_it_is_the_first_one_that_was_sealed_before(room: TalkingRoom, said: str) -> None:
    await room.says(said, who="bram")
    [sealed] = [entry for entry in await room.standing() if entry.act == "seal"]
    assert sealed.bin
    assert sealed.bin.name == "porch"
