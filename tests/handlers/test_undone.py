"""The last change is undone, what was refused is told again, and half is no half kilo."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.mark.parametrize(
    ("said", "kg"),
    [
        (["2 kg of leeks in green", "no, 1.5 kg", "undo that"], [2]),
        (["2 kg of leeks in green", "no, 1.5 kg", "undo", "undo"], [1.5]),
        (["2 kg of leeks in green", "no, 1.5 kg", "scratch that"], []),
        (["2 kg of leeks in green", "undo that"], []),
        (["2 kg of leeks in green", "scratch that", "undo"], [2]),
        (["2 kg of leeks in green", "delete the last one", "no, not that one"], [2]),
        (["2 kg of leeks in green", "no, not that one"], [2]),
        (["1 kg of rice in green", "90 kg of leeks in green", "no, 2 kg"], [1, 2]),
        (["90 kg of leeks in green", "nah 2 kg, typo"], [2]),
        (["90 kg of leeks in green", "how much bran for 2 kg?"], []),
        (["2 kg of leeks in green", "no, half"], [1]),
        (["2 kg of fish in green", "no, half"], [2]),
    ],
)
async def test_what_stands_then(db: Database, said: list[str], kg: list[float]) -> None:
    room = TalkingRoom(db)
    await room.says("opened the green bin, 30 L")
    await room.says("hello", who="bram")
    for body in said:
        await room.says(body)
    assert [e.facts.mass_kg for e in await room.standing() if e.act == "layer"] == kg
