"""A bin handed on for as long as its keeper is away."""

import pytest

from tests.room import TalkingRoom, words

GOES = "Bram takes the yard bin Friday 6 March; until then ines keeps it."
COMES = "It is to go back to ines Thursday 12 March."


@pytest.mark.parametrize(
    "said",
    [
        ["I'm away from Friday to Wednesday. Bram takes the yard bin while I'm away"],
        ["I'm away Friday to Wednesday, can someone have the yard bin?"],
        [
            "off on holiday from Friday till Thursday",
            "Bram, could you mind the yard bin meanwhile?",
        ],
        ["I'm away Friday to Wednesday", "Bram, could you take the yard bin?"],
        ["We're away Friday to Wednesday. Bram has the yard bin till we're back"],
        ["leaving the yard bin with Bram while I'm gone, Friday till Thursday"],
        ["Bram has the yard bin while I'm away", "Friday to Wednesday"],
        [
            "Bram, can you keep the yard bin until I get back?",
            "we go on Friday and are back Thursday",
        ],
    ],
)
async def test_it_goes_and_comes_back_with_its_keepers_absence(
    room: TalkingRoom, said: list[str]
) -> None:
    *before, last = said
    for line in before:
        await room.says(line)
    asked = words(await room.says(last))
    assert "ake the yard bin Friday 6 March? " in asked.replace("takes", "take")
    told = words(await room.says("I'll take it", who="bram"))
    assert GOES in told
    assert COMES in told
    await room.waits(days=5)
    assert await room.keeper("yard") == "bram"
    await room.waits(days=6)
    assert await room.keeper("yard") == "ines"


@pytest.mark.parametrize(
    ("said", "leave"),
    [
        ("I can have the yard bin while you're away ines", "that would be great"),
        ("I'll look after the yard bin while ines is away", "yes please"),
        ("shall I take the yard bin, ines?", "lovely, thanks"),
    ],
)
async def test_another_has_it_meanwhile_with_its_keepers_leave(
    room: TalkingRoom, said: str, leave: str
) -> None:
    await room.says("I'm away Friday to Wednesday")
    asked = words(await room.says(said, who="bram"))
    assert "may Bram have the yard bin from Friday 6 March until Thursday 12 March?" in asked
    assert words(await room.says(leave)).startswith(f"{GOES}\n{COMES}")


@pytest.mark.parametrize("said", ["Bram has the yard bin while I'm away"])
async def test_it_is_asked_from_when_to_when(room: TalkingRoom, said: str) -> None:
    asked = words(await room.says(said))
    assert asked.startswith("Ines, from which day to which are you away?")
    assert await room.says("I'll buy bread on Friday") == []
    assert await room.says("when does the film start on Friday till Monday?") == []
    await room.says("I'll take it", who="bram")
    assert await room.keeper("yard") == "ines"


@pytest.mark.parametrize(
    "said",
    [
        "we had the yard bins painted while you were away",
        "while I was away Bram had the yard bin",
        "can I keep the yard door open while you're away?",
        "shall I mind the kids while you're away?",
        "Bram has the yard bin keys till we're back",
    ],
)
async def test_other_things_go_on_meanwhile(room: TalkingRoom, said: str) -> None:
    await room.says("I'm away Friday to Wednesday", who="mei")
    await room.says(said, who="mei")
    assert "offer" not in [entry.act for entry in await room.standing()]
    assert await room.keeper("yard") == "ines"


async def test_who_keeps_it_on_days_to_come(room: TalkingRoom) -> None:
    await room.says("I'm away from Friday to Wednesday. Bram takes the yard bin while I'm away")
    await room.says("I'll take it", who="bram")
    told = words(await room.says("who keeps the yard bin next week?", who="mei"))
    assert "Bram, Friday 6 to Wednesday 11 March." in told
    assert "Ines, from Thursday 12 March on." in told


async def test_a_bin_handed_over_on_a_day_of_its_own_stays_there(room: TalkingRoom) -> None:
    await room.says("I'm away for two weeks, handing the yard bin to Bram on Friday")
    told = words(await room.says("I'll take it", who="bram"))
    assert GOES in told
    assert "go back" not in told
    await room.waits(days=30)
    assert await room.keeper("yard") == "bram"
