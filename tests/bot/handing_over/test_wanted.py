"""Somebody asks to have a bin: its keeper is asked, and nobody else can give it away."""

import pytest

from tests.room import TalkingRoom, words


@pytest.fixture
async def asked(room: TalkingRoom) -> TalkingRoom:
    """Ines keeps the yard bin; Bram has asked for it."""
    [asked] = await room.says("could I take over the yard bin on Friday?", who="bram", event="$w")
    assert asked.body == (
        "Ines, may Bram have the yard bin from Friday 6 March? Say “yes” or put 👍 here; or “no”."
    )
    return room


@pytest.mark.parametrize(
    "wish",
    [
        "can I have the yard bin from Friday?",
        "mind if I take the yard bin over on Friday?",
        "shall I look after the yard bin from Friday on?",
        "is it ok if I keep the yard bin from Friday?",
    ],
)
async def test_a_keeper_is_asked_for_their_bin(room: TalkingRoom, wish: str) -> None:
    [asked] = await room.says(wish, who="bram")
    assert asked.body.startswith("Ines, may Bram have the yard bin from Friday 6 March?")


@pytest.mark.parametrize(
    "talk",
    [
        "can I take the yard bin out?",
        "could I have the yard bin key?",
        "can I take the yard bin to the tip?",
        "can I have the yard bin's juice?",
        "can I have it with milk?",
    ],
)
async def test_what_else_is_asked_with_the_same_words_is_left_alone(
    room: TalkingRoom, talk: str
) -> None:
    assert "may Bram have" not in words(await room.says(talk, who="bram"))


@pytest.mark.parametrize(
    ("answer", "day"),
    [
        ("yes", "Friday 6 March"),
        ("of course, go ahead", "Friday 6 March"),
        ("sure Bram, it's all yours", "Friday 6 March"),
        ("yes but only from Sunday", "Sunday 8 March"),
        ("ok, you can fetch it on Saturday", "Saturday 7 March"),
    ],
)
async def test_the_keepers_yes_passes_it_on(asked: TalkingRoom, answer: str, day: str) -> None:
    [taken] = await asked.says(answer)
    assert taken.body == f"Bram takes the yard bin {day}; until then ines keeps it."


async def test_the_keepers_thumb_passes_it_on(asked: TalkingRoom) -> None:
    assert not await asked.marks("re-$w", "👍", who="mei")
    [taken] = await asked.marks("re-$w", "👍")
    assert taken.body.startswith("Bram takes the yard bin Friday 6 March")


@pytest.mark.parametrize("who", ["bram", "mei"])
async def test_nobody_but_its_keeper_gives_it(asked: TalkingRoom, who: str) -> None:
    assert not await asked.says("yes", who=who)
    await asked.waits(days=5)
    assert await asked.keeper("yard") == "ines"


async def test_a_keeper_may_keep_it(asked: TalkingRoom) -> None:
    assert not await asked.says("no, I'd rather keep it")
    await asked.waits(days=5)
    assert await asked.keeper("yard") == "ines"


async def test_the_keeper_need_not_answer_at_once(asked: TalkingRoom) -> None:
    await asked.says("lovely evening", who="mei")
    await asked.waits(days=1)
    [taken] = await asked.says("go ahead")
    assert "Bram takes the yard bin" in taken.body


async def test_the_bin_just_spoken_of_need_not_be_named(room: TalkingRoom) -> None:
    await room.says("who has the yard bin?", who="bram")
    [asked] = await room.says("can I have it next week?", who="bram")
    assert asked.body.startswith("Ines, may Bram have the yard bin from Monday 9 March?")
