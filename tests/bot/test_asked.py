"""Who may answer a question of the bot's, and what is said to an order it does not understand."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """A room with a green bin, into which rut put 2 kg."""
    room = TalkingRoom(db)
    await room.says("opened the green bin, 20 L, shared", who="olga")
    await room.says("opened bin 2, 20 L", who="olga")
    await room.says("2 kg in green", who="rut")
    return room


@pytest.mark.parametrize(
    ("talk", "kilos"),
    [
        ((("ines", "scratch that"), ("rut", "yes")), []),
        ((("ines", "no, 3 kg"), ("rut", "yep")), [3.0]),
        ((("ines", "scratch that"), ("rut", "no"), ("ines", "yes")), [2.0]),
        ((("ines", "scratch that"), ("olga", "yes")), [2.0]),
        ((("ines", "scratch that"), ("olga", "lunch?"), ("rut", "yes")), [2.0]),
    ],
)
async def test_who_told_the_record_answers_for_it(
    room: TalkingRoom, talk: tuple[tuple[str, str], ...], kilos: list[float]
) -> None:
    for who, words in talk:
        await room.says(words, who=who)
    standing = [entry for entry in await room.standing() if entry.act == "layer"]
    assert [entry.facts.mass_kg for entry in standing] == kilos


async def test_an_order_by_name_is_never_passed_over(room: TalkingRoom) -> None:
    [answer] = await room.says("pailkeeper take 1 kg off the green")
    assert "nothing is written down" in answer.body
    assert await room.says("pailkeeper is a funny name") == []
