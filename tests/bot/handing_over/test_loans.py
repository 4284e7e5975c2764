"""A bin that is lent, and goes back to its lender."""

import pytest

from tests.room import TalkingRoom, words


async def lends(room: TalkingRoom, said: str = "Bram takes the yard bin till Sunday") -> None:
    await room.says(said)
    [told] = await room.says("I'll take it", who="bram", event="$taken")
    assert "It is to go back to ines" in told.body


async def test_a_bin_that_was_lent_goes_back_on_its_day(room: TalkingRoom) -> None:
    await lends(room)
    await room.waits(days=5)
    assert await room.keeper("yard") == "bram"
    told = [message.body for message in await room.waits(days=1)]
    assert any("hand over the yard bin to ines" in body for body in told)
    assert any("the yard bin goes from bram to ines" in body for body in told)
    assert await room.keeper("yard") == "ines"
    told = [message.body for message in await room.waits(days=12)]
    assert not any("bram" in body for body in told)


async def test_a_bin_lent_from_a_day_on_goes_there_and_back(room: TalkingRoom) -> None:
    await lends(room, "handing the yard bin to Bram from Friday till Tuesday")
    assert await room.keeper("yard") == "ines"
    [told] = await room.says("who has the yard bin?", who="zoe")
    assert "Friday 6 March bram takes it. It is to go back to ines Tuesday 10 March." in told.body
    await room.waits(days=5)
    assert await room.keeper("yard") == "bram"
    await room.waits(days=4)
    assert await room.keeper("yard") == "ines"


@pytest.mark.parametrize(
    "said",
    ["when does the yard bin come back?", "when do I get it back?", "when is it due back?",
     "when will the yard bin be back?"],
)  # fmt: skip
async def test_when_it_goes_back_is_asked(room: TalkingRoom, said: str) -> None:
    await lends(room)
    assert "It is to go back to ines Sunday 8 March." in words(await room.says(said))
    told = words(await room.says("who has the yard bin on Sunday?"))
    assert "stand in" not in told


async def test_what_is_lent_goes_back_whoever_has_it_by_then(room: TalkingRoom) -> None:
    await lends(room)
    await room.says("I can't have the yard bin any more. Mei, can you take it?", who="bram")
    [told] = await room.says("I'll take it", who="mei")
    assert "It is to go back to ines Sunday 8 March." in told.body
    assert await room.keeper("yard") == "mei"
    await room.waits(days=6)
    assert await room.keeper("yard") == "ines"


async def test_a_lender_who_has_left_gets_nothing_back(room: TalkingRoom) -> None:
    await lends(room)
    await room.calls_itself("ines", who="ines", is_in=False)
    await room.waits(days=8)
    assert await room.keeper("yard") == "bram"


async def test_whoever_comes_too_late_is_told_who_was_first(room: TalkingRoom) -> None:
    await lends(room)
    [told] = await room.says("I'll take the yard bin", who="mei")
    assert told.body.startswith("bram was first")


@pytest.mark.parametrize("how", ["not me after all", "deleted"])
@pytest.mark.parametrize(
    "said",
    ["Bram takes the yard bin till Sunday", "handing the yard bin to Bram from Friday for a week"],
)
async def test_a_loan_that_is_off_leaves_nothing_to_go_back(
    room: TalkingRoom, said: str, how: str
) -> None:
    await lends(room, said)
    if how == "deleted":
        await room.deletes("$taken", who="bram")
    else:
        await room.says(how, who="bram")
    await room.waits(days=14)
    assert await room.keeper("yard") == "ines"
    assert "bram" not in [one.writer for one in await room.standing() if one.act == "offer"]


async def test_a_bin_handed_on_for_good_is_not_asked_back(room: TalkingRoom) -> None:
    await room.says("handing the yard bin to Bram")
    [told] = await room.says("I'll take it", who="bram")
    assert "go back" not in told.body
    assert "bram" not in [one.writer for one in await room.standing() if one.act == "offer"]


@pytest.mark.parametrize(
    ("who", "said"),
    [("ines", "we're staying on till the 12th"), ("bram", "keeping it till the 12th")],
)
async def test_a_loan_is_prolonged(room: TalkingRoom, who: str, said: str) -> None:
    await room.says("Bram, could you have the yard bin while I'm away 4th to 8th?")
    await room.says("ok", who="bram")
    await room.waits(days=3)
    told = await room.says(said, who=who)
    assert "Thursday 12 March" in told[0].body
    told = await room.waits(days=6)
    assert not any("stays with" in message.body for message in told)
    await room.waits(days=1)
    await room.says("fetched it")
    assert await room.keeper("yard") == "ines"


@pytest.mark.parametrize(
    "said",
    ["Bram, can you keep the yard bin till Thursday?", "Bram keeps the yard bin till Thursday"],
)
async def test_a_lender_prolongs_it(room: TalkingRoom, said: str) -> None:
    await lends(room)
    await room.waits(days=4)
    assert words(await room.says(said)) == "The yard bin goes back to ines Thursday 12 March."
    await room.waits(days=5)
    assert await room.keeper("yard") == "bram"
    await room.waits(days=1)
    assert await room.keeper("yard") == "ines"


async def test_a_lender_fetches_what_was_lent_long_after_its_day(room: TalkingRoom) -> None:
    await lends(room)
    await room.waits(days=16)
    await room.says("fetched it")
    assert await room.keeper("yard") == "ines"


async def test_a_lender_fetches_it_tomorrow(room: TalkingRoom) -> None:
    await lends(room)
    await room.waits(days=3)
    [told] = await room.says("I'll fetch it tomorrow")
    assert told.body.startswith("Ines takes the yard bin tomorrow; until then bram keeps it.")
