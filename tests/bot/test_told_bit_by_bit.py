"""A group's first bins, told over several messages."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


async def _bins(room: TalkingRoom) -> list[tuple[str, float | None]]:
    book = await room.book()
    return [(bin.name, (await book.about(bin)).capacity_l) for bin in await book.bins()]


@pytest.mark.parametrize(
    ("said", "bins"),
    [
        (
            ["we've got 3 bins", "they're 18 litres each",
             "one's at the church, one's in Ann's garage and one by the allotment gate"],
            [("church", 18), ("Ann's garage", 18), ("allotment gate", 18)],
        ),
        (
            ["we have three bins", "red, green and the one in the shed", "all 20 litres"],
            [("red", 20), ("green", 20), ("shed", 20)],
        ),
        (
            ["hi all, there are two buckets", "the green one is 15 litres", "the white one 20"],
            [("green", 15), ("white", 20)],
        ),
        (
            ["we're starting with two bins", "shed and yard", "shed is 20 L, yard is 15"],
            [("shed", 20), ("yard", 15)],
        ),
        (
            ["we have two bins, 12 litres each", "one in the kitchen, the other by the back door"],
            [("kitchen", 12), ("back door", 12)],
        ),
        (["I have a bin", "it's 20 litres", "it's called Bertha"], [("Bertha", 20)]),
    ],
)  # fmt: skip
async def test_each_message_tells_more_of_them(
    db: Database, said: list[str], bins: list[tuple[str, float]]
) -> None:
    room = TalkingRoom(db)
    for words in said:
        await room.says(words)
    assert sorted(await _bins(room)) == sorted(bins)


async def test_what_is_still_owed_is_asked_for(db: Database) -> None:
    room = TalkingRoom(db)
    [asked] = await room.says("we have three buckets, 12 litres each")
    assert "12 L each" in asked.body
    [told] = await room.says("the blue one is on the porch")
    assert "And the other 2?" in told.body


@pytest.mark.parametrize(
    "words",
    ["lovely, thanks", "what goes in?", "see you on Friday", "20 people came", "no idea",
     "Brilliant!", "Hi Bob"],
)  # fmt: skip
async def test_other_words_name_none_of_them(db: Database, words: str) -> None:
    room = TalkingRoom(db)
    await room.says("we've got 3 bins, 12 L each")
    await room.says(words)
    assert await room.standing() == []


@pytest.mark.parametrize(
    "words",
    ["we have two bins to drain", "we have three bins full of rubbish", "have we got three bins?",
     "there were three bins outside the pub"],
)  # fmt: skip
async def test_bins_that_are_only_spoken_of_are_not_asked_about(db: Database, words: str) -> None:
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    assert "Which are they" not in "".join(message.body for message in await room.says(words))
