"""As much as on another day: "same as Monday"."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Two bins, one of them with what went in on Monday."""
    room = TalkingRoom(db)
    for bin in ("hut", "barn"):
        await room.says(f"opened the {bin} bin, 20 L, last Friday")
    return room


async def layers(room: TalkingRoom) -> list[tuple[str, str | None, float | None]]:
    """Weekday, bin and kilos of each layer."""
    told = [e for e in await room.standing() if e.act == "layer"]
    return [(f"{e.on:%a}", e.bin.name if e.bin else None, e.facts.mass_kg) for e in told]


@pytest.mark.parametrize(
    ("said", "made"),
    [
        ("Sunday same as Saturday", ("Sun", "hut", 0.8)),
        ("same as Saturday in the barn", (None, "barn", 0.8)),
        ("same amount as on Saturday", (None, "hut", 0.8)),
    ],
)
async def test_as_much_as_on_that_day(
    room: TalkingRoom, said: str, made: tuple[str | None, str, float]
) -> None:
    await room.says("put 800 g of bread in the hut on Saturday")
    await room.says("300 g of peel in the barn")
    await room.says(said)
    day, bin, kg = (await layers(room))[-1]
    assert (bin, kg) == made[1:]
    assert day == (made[0] or f"{room.now:%a}")


@pytest.mark.parametrize(
    "first",
    [
        ["300 g in the hut on Friday"],
        ["300 g in the hut on Saturday", "500 g of bread in the hut on Saturday, too"],
    ],
)
async def test_where_that_day_has_no_one_layer_it_is_asked(
    room: TalkingRoom, first: list[str]
) -> None:
    for told in first:
        await room.says(told)
    before = await layers(room)
    answers = await room.says("Sunday same as Saturday")
    assert "How much was it" in words(answers)
    assert await layers(room) == before
