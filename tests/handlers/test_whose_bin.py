"""A neighbour's bin, called by whoever keeps it."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines keeps the pear bin, Bram the plum bin, Dev two."""
    room = TalkingRoom(db)
    for who, bin in (("ines", "pear"), ("bram", "plum"), ("dev", "fig"), ("dev", "hazel")):
        await room.says(f"opened the {bin} bin, 30 L", who=who)
        await room.says(f"2 kg of peelings in the {bin} bin", who=who)
    return room


async def told(room: TalkingRoom) -> list[tuple[str, str, str | None]]:
    """What was drained and sealed, and by whom."""
    deeds = [e for e in await room.standing() if e.act in ("drain", "seal") and e.bin]
    return sorted((e.act, e.bin.name, e.member) for e in deeds if e.bin)


@pytest.mark.parametrize(
    ("said", "deed"),
    [
        ("drained Bram's, 400 ml", ("drain", "plum", "ines")),
        ("sealed Bram's", ("seal", "plum", "ines")),
        ("drained brams bin", ("drain", "plum", "ines")),
        ("drained mine", ("drain", "pear", "ines")),
    ],
)
async def test_it_is_done_to_the_keepers_bin(
    room: TalkingRoom, said: str, deed: tuple[str, str, str]
) -> None:
    await room.says("300 g of bread in the hazel bin")
    await room.says(said)
    assert await told(room) == [deed]


@pytest.mark.parametrize(
    ("said", "deed"), [("drained Dev's", "drain"), ("sealed Dev's bin", "seal")]
)
async def test_it_is_asked_which_where_the_keeper_has_several(
    room: TalkingRoom, said: str, deed: str
) -> None:
    [asked] = await room.says(said)
    assert asked.body == "Dev keeps the fig bin and the hazel bin: which was it?"
    assert await told(room) == []
    await room.says("fig")
    assert await told(room) == [(deed, "fig", "ines")]
