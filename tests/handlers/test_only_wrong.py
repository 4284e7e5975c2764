"""A record that is called wrong, and not how, stands until it is said what was wrong."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines has put bread into the hut bin, and there is a barn bin."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("opened the hut bin, 20 L")
    await room.says("opened the barn bin, 20 L")
    await room.says("2 kg of bread in the hut bin", event="$bread")
    return room


async def layers(room: TalkingRoom) -> list[tuple[str, float | None, str | None]]:
    return [
        (entry.bin.name, entry.facts.mass_kg, entry.member)
        for entry in await room.standing()
        if entry.act == "layer" and entry.bin
    ]


OF_BIN = "Which bin was it: the barn bin? Say “scratch that” to strike it out."
OF_WHAT = (
    "What was wrong? Say how it was (“it was 3 kg”, “it was yesterday”). "
    "Say “scratch that” to strike it out."
)


@pytest.mark.parametrize(
    ("said", "asked", "then", "layer"),
    [
        ("no, that was the other one", OF_BIN, "the barn", ("barn", 2, "ines")),
        ("bot you put it in the wrong bin", OF_BIN, "it was the barn", ("barn", 2, "ines")),
        ("wrong bin", OF_BIN, "barn", ("barn", 2, "ines")),
        ("that's wrong", OF_WHAT, "no it was 5", ("hut", 5, "ines")),
        ("please correct my last entry", OF_WHAT, "it was 5 kg", ("hut", 5, "ines")),
        ("can you fix the last record?", OF_WHAT, "it was 5 kg", ("hut", 5, "ines")),
        ("bot, that is not right", OF_WHAT, "it was 5 kg", ("hut", 5, "ines")),
    ],
)
async def test_it_is_asked_what_was_wrong(
    room: TalkingRoom, said: str, asked: str, then: str, layer: tuple[str, float, str]
) -> None:
    [answer] = await room.says(said)
    assert answer.body == asked
    assert await layers(room) == [("hut", 2, "ines")]
    await room.says(then)
    assert await layers(room) == [layer]


async def test_it_can_be_struck_out_after_all(room: TalkingRoom) -> None:
    await room.says("bot that's wrong")
    await room.says("scratch that")
    assert await layers(room) == []


async def test_what_was_told_of_several_is_put_right_by_each(room: TalkingRoom) -> None:
    await room.says("hello", who="cleo")
    await room.says("Bram 1 kg in the hut bin, Cleo 3 kg in the barn bin")
    await room.says("that kilo wasn't mine, it was Ines's", who="bram")
    assert ("hut", 1, "ines") in await layers(room)
    assert ("barn", 3, "cleo") in await layers(room)
