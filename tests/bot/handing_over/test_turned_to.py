"""Another is asked to take a bin, behind a no or where nobody has answered."""

import pytest

from tests.room import TalkingRoom, words


async def declined(room: TalkingRoom, offer: str = "Bram, can you take the yard bin?") -> None:
    await room.says("hello", who="zoe")
    await room.says(offer)
    await room.says("no sorry, not me", who="bram")


@pytest.mark.parametrize(
    "said",
    [
        "fine, Mei?",
        "ok, Mei?",
        "fair enough. Mei?",
        "no worries Bram. Mei, could you?",
        "right, what about you, Mei?",
        "Mei, would you?",
        "or Mei?",
        "ok, how about Mei?",
        "Mei, any chance?",
        "no problem. Mei, can you have it?",
    ],
)
async def test_it_is_offered_to_whom_its_keeper_turns_to(room: TalkingRoom, said: str) -> None:
    await declined(room)
    assert words(await room.says(said)).startswith("Mei, will you take the yard bin?")
    await room.says("yes", who="mei")
    assert await room.keeper("yard") == "mei"


@pytest.mark.parametrize(
    "said", ["ok", "fine", "fair enough", "ok, no problem", "yes, fine", "sure, that's ok", "great"]
)
async def test_what_is_said_to_a_no_withdraws_nothing(room: TalkingRoom, said: str) -> None:
    await declined(room)
    assert await room.says(said) == []
    await room.says("I'll take it", who="zoe")
    assert await room.keeper("yard") == "zoe"


@pytest.mark.parametrize(
    "said",
    [
        "Mei, coffee later?",
        "fine weather, Mei?",
        "ok Mei, how is the baby?",
        "is that Mei's ladder?",
    ],
)
async def test_neighbours_are_asked_other_things(room: TalkingRoom, said: str) -> None:
    await declined(room)
    assert await room.says(said) == []


async def test_who_is_asked_by_name_has_time_to_answer(room: TalkingRoom) -> None:
    await room.says("Bram, can you take the yard bin?")
    assert await room.says("Mei?") == []
    await room.says("I'll take it", who="bram")
    assert await room.keeper("yard") == "bram"


async def test_another_has_it_for_the_same_days(room: TalkingRoom) -> None:
    await declined(room, "Bram, can you take the yard bin from Friday to Wednesday?")
    asked = words(await room.says("fine, Mei?"))
    assert "Friday 6 March" in asked
    assert "It is to go back to ines Wednesday 11 March." in asked
