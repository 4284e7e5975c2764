"""What a member was reminded of and forgot: said again on another day, or called off."""

import pytest

from tests.bot.own_dates.spoken import lives_until, words
from tests.room import TalkingRoom


@pytest.fixture
async def reminded(room: TalkingRoom) -> TalkingRoom:
    """Bram was reminded on Friday, and on Sunday Ines asks him."""
    await room.says("opened the shed bin, 20 L")
    await room.says("remind me to bring spades on Friday", who="bram")
    await lives_until(room, 8, 18)
    await room.says("did we ever get the spades")
    return room


@pytest.mark.parametrize(
    "said",
    ["oops, forgot. On Thursday then", "didn't get round to it, sorry. I'll do it on Thursday"],
)
async def test_what_was_forgotten_is_said_again_on_its_new_day(
    reminded: TalkingRoom, said: str
) -> None:
    [again] = words(await reminded.says(said, who="bram"))
    assert again == "I will say again Thursday 12 March: bring spades."
    assert "12 09:00 Today: bring spades (bram)." in "".join(await lives_until(reminded, 12, 12))


async def test_nobody_else_forgot_it(reminded: TalkingRoom) -> None:
    assert not await reminded.says("forgot, sorry. On Thursday then", who="zoe")


async def test_what_was_forgotten_long_after_is_something_else(reminded: TalkingRoom) -> None:
    await lives_until(reminded, 14, 18)
    assert not await reminded.says("forgot, sorry. On Thursday then", who="bram")


async def test_what_is_there_already_is_called_off(reminded: TalkingRoom) -> None:
    await reminded.says("forgot, sorry. On Thursday then", who="bram")
    assert not await reminded.says("cancel it, I have choir")
    [off] = words(await reminded.says("oh cancel it, we've got spades here"))
    assert off == "Called off: bring spades."
    assert await lives_until(reminded, 12, 12) == []
