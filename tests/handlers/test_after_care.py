"""Ground that was looked at or planted is named no more; nothing is written down for it."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Bram and Ines each buried a bin a good three weeks ago."""
    room = TalkingRoom(db)
    for who, bin in (("ines", "shed"), ("bram", "blue")):
        await room.says(f"opened the {bin} bin, 20 L", who=who)
        await room.says(f"2 kg of peelings in the {bin} bin", who=who)
        await room.says(f"sealed the {bin} bin", who=who)
    await room.waits(days=14)
    await room.says("buried shed under the pear tree", who="ines")
    await room.says("buried blue in the long bed", who="bram")
    return room


async def shown(room: TalkingRoom, what: str) -> list[str]:
    """The bins that such a due is still shown of."""
    dues = [one for one in await (await room.book()).dues() if one.what == what]
    return sorted(one.bin.name for one in dues if one.bin and one.put_off_until is None)


@pytest.mark.parametrize(
    ("days", "what", "said", "left"),
    [
        (3, "cover", "nothing dug there", ["shed"]),
        (3, "cover", "fox had a go at mine, covered it with a slab", ["shed"]),
        (3, "cover", "nothing dug where shed went", ["blue"]),
        (3, "plant", "nothing dug there", ["blue", "shed"]),
        (22, "plant", "planted beans in mine", ["shed"]),
        (22, "plant", "planted lettuce in the pots", ["blue", "shed"]),
        (3, "plant", "planted beans in mine", ["blue", "shed"]),
    ],
)
async def test_whose_ground_it_is(
    room: TalkingRoom, days: int, what: str, said: str, left: list[str]
) -> None:
    await room.waits(days=days)
    before = await room.standing()
    await room.says(said, who="bram")
    assert await shown(room, what) == left
    assert await room.standing() == before
