"""Some of the scraps of a record are taken out of it; the rest stays."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom

LEEKS_AND_RICE = "600 g of leek tops and 400 g of rice in green"


async def layers(room: TalkingRoom) -> dict[str, float | None]:
    """Amounts by what went in."""
    return {
        " ".join(sorted(entry.facts.materials or {})): entry.facts.mass_kg or entry.facts.volume_l
        for entry in await room.standing()
        if entry.act == "layer"
    }


@pytest.mark.parametrize(
    ("told", "said", "left"),
    [
        (LEEKS_AND_RICE, "remove the rice", {"vegetable": 0.6}),
        (LEEKS_AND_RICE, "scratch the leeks", {"grain": 0.4}),
        (LEEKS_AND_RICE, "the rice didn't go in after all", {"vegetable": 0.6}),
        (LEEKS_AND_RICE, "sorry, leave the rice out", {"vegetable": 0.6}),
        ("600 g of leek tops and a tin of sardines in green", "the sardines never went in", None),
        (LEEKS_AND_RICE, "scratch the rice, it was 200 g", {"grain vegetable": 0.8}),
        (LEEKS_AND_RICE, "scratch the rice, it was cod", {"fish vegetable": 1}),
        ("600 g of leek tops in green", "take the leeks out", {}),
        ("600 g of leek tops in green", "take the rice out", None),
        ("600 g of leek tops in green", "can you take the rice out of the oven", None),
        ("600 g of leek tops in green", "remove the leeks from the freezer", None),
        ("600 g of leek tops in green", "take the rice and the leeks out of the fridge", None),
        (LEEKS_AND_RICE, "remove the rice from the record", {"vegetable": 0.6}),
        (LEEKS_AND_RICE, "remove the rice from the green bin", {"vegetable": 0.6}),
        (LEEKS_AND_RICE, "take the rice off the list", {"vegetable": 0.6}),
    ],
)
async def test_they_alone_are_taken_out(
    db: Database, told: str, said: str, left: dict[str, float] | None
) -> None:
    room = TalkingRoom(db)
    await room.says("opened the green bin, 30 L")
    await room.says("hello", who="bram")
    await room.says(told)
    await room.says(said)
    assert await layers(room) == pytest.approx({"vegetable": 0.6} if left is None else left)


async def test_ones_own_older_record_is_struck_unasked(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the green bin, 30 L")
    await room.says("2 kg of peelings in green")
    await room.says("1 kg of rice in green")
    await room.says("scratch the peelings")
    assert await layers(room) == {"grain": 1}


async def test_anothers_is_asked_about_with_what_would_be_left(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the green bin, 30 L")
    await room.says(LEEKS_AND_RICE, who="bram")
    await room.says("1 kg of herring in green")
    [answer] = await room.says("scratch the rice")
    assert answer.body.startswith("Bram's last record of such scraps is 1 kg in the green bin")
    assert answer.body.endswith("Shall I take them out of it?")
    await room.says("yes")
    assert await layers(room) == pytest.approx({"vegetable": 0.6, "fish": 1})
