"""Several bins drained in few words, and one in a single word."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines keeps two bins, Bram one."""
    room = TalkingRoom(db)
    await room.says("opened the red bin, 20 L", who="bram")
    for name in ("shed", "yard"):
        await room.says(f"opened the {name} bin, 20 L")
        await room.says(f"added 2 kg of peel to the {name} bin")
    return room


async def _drained(room: TalkingRoom) -> list[tuple[str, float | None]]:
    told = [entry for entry in await room.standing() if entry.act == "drain"]
    return sorted((entry.bin.name if entry.bin else "", entry.facts.volume_l) for entry in told)


async def _says(room: TalkingRoom, words: str, who: str = "ines") -> str:
    return "\n".join(message.body for message in await room.says(words, who=who))


@pytest.mark.parametrize("words", ["drained them", "drained the lot", "drained them today"])
async def test_them_are_the_two_just_spoken_of(room: TalkingRoom, words: str) -> None:
    await room.says("sealed the shed bin and the yard bin")
    await room.says(words)
    assert await _drained(room) == [("shed", None), ("yard", None)]


async def test_which_of_more_is_asked(room: TalkingRoom) -> None:
    assert "Which of them" in await _says(room, "drained them")
    assert await _drained(room) == []


@pytest.mark.parametrize(
    "words", ["drained both, half a litre", "drained them, 1 litre in all", "drained both, 300 ml"]
)
async def test_one_amount_is_of_neither_until_it_is_told(room: TalkingRoom, words: str) -> None:
    await room.says("sealed the shed bin and the yard bin")
    assert "from each, or in all?" in await _says(room, words)
    await room.says("200 ml from the shed")
    assert await _drained(room) == [("shed", 0.2), ("yard", None)]


async def test_an_amount_of_each_is_of_each(room: TalkingRoom) -> None:
    await room.says("sealed the shed bin and the yard bin")
    await room.says("drained both, 300 ml each")
    assert await _drained(room) == [("shed", 0.3), ("yard", 0.3)]


async def test_a_word_alone_is_of_the_senders_only_bin(room: TalkingRoom) -> None:
    await room.says("added 1 kg of peel to the red bin", who="bram")
    await room.says("drained", who="bram")
    assert len(await _drained(room)) == 1
    assert (await _drained(room))[0][0] == "red"


async def test_a_word_alone_asks_which_of_several(room: TalkingRoom) -> None:
    await room.says("what's due?")
    assert "Which bin" in await _says(room, "drained")
    assert await _drained(room) == []


@pytest.mark.parametrize("words", ["I'm drained", "just drained", "drained?", "utterly drained"])
async def test_who_is_tired_drained_nothing(room: TalkingRoom, words: str) -> None:
    await room.says("what a day", who="bram")
    await room.says(words, who="bram")
    assert await _drained(room) == []


async def test_what_was_bought_is_drained_for_dinner(room: TalkingRoom) -> None:
    await room.says("opened two tins of beans and drained them", who="bram")
    assert await _drained(room) == []
