"""A bin that is called by where it stands, in a group with several."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L")
    await room.says("opened the blue bin, 12 L")
    await room.says("1 kg of peelings in the shed")
    return room


async def told(room: TalkingRoom) -> list[tuple[str, str]]:
    """What stands since, and of which bin."""
    return [(e.act, e.bin.name) for e in await room.standing() if e.bin and e.act != "open"][1:]


@pytest.mark.parametrize(
    ("said", "answer", "recorded"),
    [
        ("put 2 kg in the bin under the sink", "blue", [("layer", "blue")]),
        ("put 2 kg in the bin in the garage", "no, shed", [("layer", "shed")]),
        ("2 kg into our caddy by the back door", "the blue one", [("layer", "blue")]),
        ("drained the bin in the cellar", "blue", [("drain", "blue")]),
        ("sealed the bin under the stairs", "shed", [("seal", "shed")]),
        ("put 2 kg in the bin in the garage", "good evening", []),
    ],
)
async def test_it_is_asked_which_is_meant(
    room: TalkingRoom, said: str, answer: str, recorded: list[tuple[str, str]]
) -> None:
    [asked] = await room.says(said)
    assert "which was it?" in asked.body
    assert await told(room) == []
    await room.says(answer)
    assert await told(room) == recorded


@pytest.mark.parametrize(
    ("said", "recorded"),
    [
        ("put 2 kg in the bin in the shed", [("layer", "shed")]),
        ("put 2 kg in the bin in the end", [("layer", "shed")]),
        ("put 2 kg in the bin in the morning", [("layer", "shed")]),
        ("put 2 kg in the blue bin by the door", [("layer", "blue")]),
        ("buried the blue bin by the fence", [("bury", "blue")]),
    ],
)
async def test_another_place_tells_no_bin(
    room: TalkingRoom, said: str, recorded: list[tuple[str, str]]
) -> None:
    await room.says(said)
    assert await told(room) == recorded


async def test_the_only_bin_may_stand_anywhere(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L")
    await room.says("put 2 kg in the bin under the sink")
    assert [(e.act, e.bin.name) for e in await room.standing() if e.bin][1:] == [("layer", "shed")]
