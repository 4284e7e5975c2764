"""A deed told of one bin more, or once more, in a few words."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines and Bram, and three bins."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    for bin in ("hut", "barn", "porch"):
        await room.says(f"opened the {bin} bin, 20 L")
    return room


async def last(room: TalkingRoom) -> tuple[str, str | None, str | None, str | None]:
    entry = (await room.standing())[-1]
    return entry.act, entry.bin.name if entry.bin else None, entry.member, entry.facts.place


@pytest.mark.parametrize(
    ("first", "then", "who", "made"),
    [
        ("buried the hut bin under the pear", "barn too", "ines", ("bury", "barn", "ines", "pear")),
        (
            "buried the hut bin under the pear",
            "barn as well, by the pond",
            "bram",
            ("bury", "barn", "bram", "pond"),
        ),
        ("sealed the hut", "and the porch bin too", "ines", ("seal", "porch", "ines", None)),
        ("drained the hut, 200 ml", "porch also", "ines", ("drain", "porch", "ines", None)),
    ],
)
async def test_the_same_of_another_bin(
    room: TalkingRoom, first: str, then: str, who: str, made: tuple[str, str, str, str | None]
) -> None:
    await room.says(first)
    await room.says(then, who=who)
    assert await last(room) == made


async def test_what_was_said_next_is_what_is_put_right(room: TalkingRoom) -> None:
    await room.says("buried the hut bin under the pear")
    await room.says("barn too")
    await room.says("no, not the barn, the porch")
    buried = {e.bin.name for e in await room.standing() if e.act == "bury" and e.bin}
    assert buried == {"hut", "porch"}


@pytest.mark.parametrize("said", ["barn too?", "the barn is lovely too", "hut too"])
async def test_no_deed_is_told(room: TalkingRoom, said: str) -> None:
    await room.says("sealed the hut")
    await room.says(said)
    assert [e.act for e in await room.standing()].count("seal") == 1


@pytest.mark.parametrize("said", ["ok sealed again", "shut it again", "resealed"])
async def test_the_bin_of_the_talk_is_sealed_again(room: TalkingRoom, said: str) -> None:
    await room.says("1 kg of bread in the hut bin")
    await room.says("sealed the hut")
    await room.says("1 kg of bread in the barn bin")
    await room.says("put 2 kg in the hut bin after you shut it", who="bram")
    await room.says(said)
    assert await last(room) == ("seal", "hut", "ines", None)


@pytest.mark.parametrize(
    "said", ["same in the porch", "and the same for porch", "same again porch"]
)
async def test_the_same_as_another_has_just_told_is_asked_first(
    room: TalkingRoom, said: str
) -> None:
    await room.says("1 kg of bread in the hut bin")
    await room.says("drained the barn, 200 ml", who="bram")
    (asked,) = await room.says(said)
    assert asked.body == "Shall I write down 200 mL drained from the porch bin?"
    await room.says("yes")
    assert await last(room) == ("drain", "porch", "ines", None)


@pytest.mark.parametrize("said", ["same here", "the porch is much the same"])
async def test_the_same_without_a_deed_is_not_told(room: TalkingRoom, said: str) -> None:
    await room.says("drained the barn, 200 ml", who="bram")
    before = await room.standing()
    await room.says(said)
    assert await room.standing() == before
