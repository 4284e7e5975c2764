"""Who is away is said where it matters: an offer, a keeper, a rota that is left on a day."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines keeps the gate bin, Bram the larder bin and is away for a week."""
    room = TalkingRoom(db)
    await room.says("hello", who="mei")
    await room.says("opened the gate bin, 20 L")
    await room.says("opened the larder bin, 20 L", who="bram")
    await room.says("I'm away 2 to 9 March", who="bram")
    return room


async def test_a_bin_offered_to_whoever_is_away(room: TalkingRoom) -> None:
    [asked] = await room.says("handing the gate bin to Bram tonight")
    assert "bram is away then, back Tuesday 10 March" in asked.body
    [asked] = await room.says("handing the gate bin to Mei tonight")
    assert "away" not in asked.body


@pytest.mark.parametrize(("day", "away"), [("4 March", True), ("20 March", False)])
async def test_who_has_a_bin_on_a_day(room: TalkingRoom, day: str, away: bool) -> None:
    [answer] = await room.says(f"who looks after the larder bin on {day}?")
    assert ("is away" in answer.body) == away


async def test_a_rota_is_left_on_a_day(room: TalkingRoom) -> None:
    await room.says("rota for the gate bin: Ines, Mei, weekly")
    [answer] = await room.says(
        "Mei's moving out on Saturday 14 March, take her off the rota", who="ines"
    )
    assert "from Saturday 14 March on" in answer.body
    [answer] = await room.says("I'm moving out soon, take me off the rota")
    assert "takes no more turns" in answer.body


async def test_who_is_away_on_a_feast(room: TalkingRoom) -> None:
    await room.says("I'm away from 3 April to 9 April", who="mei")
    [answer] = await room.says("who's away for Easter?")
    assert "Mei" in answer.body
    assert "Bram" not in answer.body


@pytest.mark.parametrize(
    "said",
    [
        "how full is the freezer?",
        "whose turn is it to bake?",
        "put 3 kg of compost on the beds",
        "somebody dumped 20 kg of rubbish in the park",
        "sorry, 4 kg of what?",
    ],
)
async def test_of_other_things_nothing_is_said(room: TalkingRoom, said: str) -> None:
    await room.says("added 1 kg of bread to the gate bin")
    before = await room.standing()
    assert await room.says(said) == []
    assert await room.standing() == before
