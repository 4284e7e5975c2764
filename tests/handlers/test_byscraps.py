"""A record is struck out or put right by what it holds, though others were written since."""

from datetime import timedelta

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Bram's rice and Ines's bread of a Monday, and her peelings of Thursday."""
    room = TalkingRoom(db)
    await room.says("opened the green bin, 30 L")
    await room.says("put 1.8 kg of rice in green", who="bram")
    await room.says("put 1 kg of bread in green")
    room.now += timedelta(days=3)
    await room.says("put 2 kg of peelings in green")
    return room


async def layers(room: TalkingRoom) -> dict[str, tuple[float | None, str | None]]:
    """Amount and member by what went in."""
    found = {}
    for entry in await room.standing():
        if entry.act == "layer":
            [kind] = entry.facts.materials or {"mixed"}
            found[kind] = entry.facts.mass_kg, entry.member
    return found


@pytest.mark.parametrize(
    "said",
    [
        "strike out the 1 kg bread in green",
        "delete the 1 kg of bread in green from Monday",
        "please cancel the 1 kg of bread",
        "scratch my 1 kg of bread",
    ],
)
async def test_ones_own_is_struck_out(room: TalkingRoom, said: str) -> None:
    [answer] = await room.says(said)
    assert answer.body.startswith("Struck out: 1 kg in the green bin")
    assert await layers(room) == {"grain": (1.8, "bram"), "vegetable": (2, "ines")}


@pytest.mark.parametrize(
    ("said", "kg"),
    [
        ("strike out the 1.8 kg of rice in green from Monday", None),
        ("actually the rice Bram put in green on Monday was 1.5 kg", 1.5),
    ],
)
async def test_anothers_is_asked_about_first(
    room: TalkingRoom, said: str, kg: float | None
) -> None:
    before = await layers(room)
    [answer] = await room.says(said)
    assert answer.body.startswith("Bram's record of that is 1.8 kg in the green bin")
    assert await layers(room) == before
    await room.says("yes")
    left = [e.facts.mass_kg for e in await room.standing() if e.member == "bram"]
    assert left == ([] if kg is None else [kg])


@pytest.mark.parametrize(
    "said",
    [
        "the 1.8 kg I put in on Monday was really 2.5 kg",
        "actually the 1.8 kg on Monday was 2.5 kg",
        "sorry, the rice I put in on Monday was 2.5 kg",
        "delete the 1.8 kg of rice, it was 2.5 kg",
    ],
)
async def test_an_older_one_is_put_right(room: TalkingRoom, said: str) -> None:
    await room.says(said, who="bram")
    assert [e.facts.mass_kg for e in await room.standing() if e.member == "bram"] == [2.5]
    assert (await layers(room))["vegetable"] == (2, "ines")


async def test_it_was_another_who_put_it_in(room: TalkingRoom) -> None:
    await room.says("it was Bram who put the bread in on Monday, not me")
    told = [(e.member, e.facts.mass_kg) for e in await room.standing() if e.act == "layer"]
    assert sorted(told, key=str) == [("bram", 1), ("bram", 1.8), ("ines", 2)]


@pytest.mark.parametrize(
    "said",
    [
        "strike out the 9 kg of rice",
        "scratch the 9 kg of bread in green",
    ],
)
async def test_nothing_else_is_touched(room: TalkingRoom, said: str) -> None:
    before = await room.standing()
    await room.says(said)
    assert await room.standing() == before


@pytest.mark.parametrize(
    ("said", "bin", "kg"),
    [
        ("the 1 kg in green was 600 g", "green", 0.6),
        ("the 1 kg of bread in the green bin was 600 g", "green", 0.6),
        ("the 1 kg in green was in the attic bin", "attic", 1),
        ("sorry, the 1 kg of bread in green were in the attic bin", "attic", 1),
    ],
)
async def test_one_called_by_its_amount(room: TalkingRoom, said: str, bin: str, kg: float) -> None:
    await room.says("opened the attic bin, 20 L")
    count = len(await room.standing())
    await room.says(said)
    told = await room.standing()
    bread = [e for e in told if e.act == "layer" and "grain" in (e.facts.materials or {})]
    assert [(e.bin and e.bin.name, e.facts.mass_kg) for e in bread if e.writer == "ines"] == [
        (bin, kg)
    ]
    assert len(told) == count
