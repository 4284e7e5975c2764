"""A bin is emptied, but not into a bed, and begins again."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """A bin of Ines's with one layer."""
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 20 L")
    await room.says("added 2 kg of peel to the yard bin")
    return room


async def _says(room: TalkingRoom, words: str) -> str:
    return "\n".join(message.body for message in await room.says(words))


async def _runs(room: TalkingRoom) -> list[tuple[str, int | None]]:
    return [(entry.act, entry.run) for entry in await room.standing() if entry.bin]


async def test_what_is_thrown_out_ends_the_run_without_a_burial(room: TalkingRoom) -> None:
    said = await _says(room, "tipped the yard bin out, starting again")
    assert "the 2 kg in it went into no bed" in said
    await room.says("added 1 kg of bread to the yard bin")
    assert await _runs(room) == [("open", 1), ("layer", 1), ("open", 2), ("layer", 2)]
    assert "1 layer, 1 kg" in await _says(room, "how full is the yard bin?")
    assert "thrown out and begun again by ines" in await _says(room, "story of the yard bin")


async def test_its_run_goes_on_once_that_is_scratched(room: TalkingRoom) -> None:
    await room.says("tipped the yard bin out, starting again")
    await room.says("scratch that")
    assert await _runs(room) == [("open", 1), ("layer", 1)]


async def test_the_bin_in_talk_is_meant(room: TalkingRoom) -> None:
    await room.says("binned the lot and washed it, new start")
    assert await _runs(room) == [("open", 1), ("layer", 1), ("open", 2)]


async def test_of_a_sealed_one_it_is_asked_where_it_went(room: TalkingRoom) -> None:
    await room.says("sealed the yard bin")
    said = await _says(room, "emptied the yard bin, back to nought")
    assert "go into the ground?" in said
    await room.says("yes")
    acts = [act for act, _ in await _runs(room)]
    assert acts == ["open", "layer", "seal", "bury", "open"]


async def test_an_empty_one_is_not_emptied(room: TalkingRoom) -> None:
    await room.says("tipped the yard bin out, starting again")
    assert "empty by the book" in await _says(room, "emptied the yard bin, starting again")
