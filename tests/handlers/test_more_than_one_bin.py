"""One deed told of two bins in few words: each of them has its record."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Two bins that are sealed."""
    room = TalkingRoom(db)
    await room.says("opened the red bin, 20 L, and the hall bin, 20 L")
    await room.says("2 kg in red and 3 kg in hall")
    return room


async def told(room: TalkingRoom, act: str) -> list[str]:
    return sorted(e.bin.name if e.bin else "" for e in await room.standing() if e.act == act)


@pytest.mark.parametrize(
    ("said", "act"),
    [
        ("buried red and hall", "bury"),
        ("buried red, hall", "bury"),
        ("buried hall and red this morning", "bury"),
        ("buried the red and hall bins", "bury"),
        ("hall and red are in the ground", "bury"),
        ("that's red and hall in the ground", "bury"),
        ("buried both", "bury"),
        ("both buried", "bury"),
        ("buried them both under the fig", "bury"),
        ("both drained", "drain"),
        ("drained red and hall, 100 ml each", "drain"),
        ("drained the red bin and the hall bin, not much", "drain"),
        ("drained the red bin and the hall bin not much", "drain"),
        ("sealed the two bins", "seal"),
        ("sealed both pails", "seal"),
        ("sealed everything", "seal"),
        ("both sealed", "seal"),
        ("everything sealed", "seal"),
        ("all buried", "bury"),
    ],
)
async def test_both_are_meant(room: TalkingRoom, said: str, act: str) -> None:
    if act == "bury":
        await room.says("sealed both bins")
    await room.says(said)
    assert await told(room, act) == ["hall", "red"]


@pytest.mark.parametrize(
    ("said", "asked"),
    [
        (
            "all three buried",
            "By the book it can be only the red bin and the hall bin. Which is the other: the fig "
            "bin or the pear bin?",
        ),
        ("drained all three", "Which 3: the red bin, the hall bin, the fig bin or the pear bin?"),
        ("1 kg in all five bins", "By the book it can be only the fig bin and the pear bin."),
    ],
)
async def test_which_are_so_many_is_asked(room: TalkingRoom, said: str, asked: str) -> None:
    await room.says("sealed both bins")
    await room.says("opened the fig bin, 20 L, and the pear bin, 20 L")
    before = await room.standing()
    [answer] = await room.says(said)
    assert answer.body.startswith(asked)
    assert await room.standing() == before


async def test_as_many_as_there_are_are_meant(room: TalkingRoom) -> None:
    await room.says("opened the fig bin, 20 L")
    await room.says("drained all three")
    assert await told(room, "drain") == ["fig", "hall", "red"]


@pytest.mark.parametrize("said", ["1 kg in each", "1 kg in each bin"])
async def test_as_much_in_each(room: TalkingRoom, said: str) -> None:
    await room.says(said)
    assert await told(room, "layer") == ["hall", "hall", "red", "red"]


@pytest.mark.parametrize(
    "said", ["buried red and the hall bench", "we should have buried both", "who buried both?"]
)
async def test_no_second_bin_is_meant(room: TalkingRoom, said: str) -> None:
    await room.says("sealed both bins")
    await room.says(said)
    assert "hall" not in await told(room, "bury")


@pytest.mark.parametrize(
    "said", ["scratch that, it was red", "scratch that, red", "no, it was red", "strike that, red"]
)
async def test_struck_out_of_one_bin_it_is_in_the_other(room: TalkingRoom, said: str) -> None:
    await room.says("4 kg of peel in hall")
    await room.says(said)
    kg = [e.facts.mass_kg for e in await room.standing() if e.bin and e.bin.name == "red"]
    assert kg == [None, 2, 4]


@pytest.mark.parametrize(
    "said",
    [
        "buried the hall bin and it's stinking a bit",
        "buried the hall bin, and sealed the red bin, and its tap is leaking",
    ],
)
async def test_a_burial_with_more_to_tell_is_a_burial(room: TalkingRoom, said: str) -> None:
    await room.says("sealed the hall bin")
    [answer] = await room.says(said)
    assert await told(room, "bury") == ["hall"]
    assert "press and seal" not in answer.body


@pytest.mark.parametrize(
    ("said", "place"),
    [
        ("that's both of them in the ground, back corner", "back corner"),
        ("both in the ground now", None),
        ("got them both in the ground, next to the fence", "fence"),
        ("they are all three in the ground", None),
    ],
)
async def test_both_in_the_ground_is_asked_of_those_sealed(
    room: TalkingRoom, said: str, place: str | None
) -> None:
    assert await room.says(said) == []
    await room.says("sealed both bins")
    (asked,) = await room.says(said)
    assert asked.body == "Shall I write down the burial of the red bin and the hall bin?"
    await room.says("yes")
    buried = [e for e in await room.standing() if e.act == "bury"]
    assert [(e.bin and e.bin.name, e.facts.place) for e in buried] == [
        ("red", place),
        ("hall", place),
    ]


@pytest.mark.parametrize(
    "said",
    ["are both in the ground?", "all the potatoes are in the ground", "both feet on the ground"],
)
async def test_what_else_is_in_the_ground(room: TalkingRoom, said: str) -> None:
    await room.says("sealed both bins")
    assert await room.says(said) == []


@pytest.mark.parametrize(
    "said",
    [
        "buried the red, hall didn't fit, next week",
        "we buried red, no room for hall, next week",
        "buried the red bin, the hall bin didn't fit, next week",
    ],
)
async def test_the_day_of_what_waits_is_not_that_of_the_deed(room: TalkingRoom, said: str) -> None:
    await room.says("sealed both bins")
    await room.waits(days=13)
    await room.says(said)
    [buried] = [e for e in await room.standing() if e.act == "bury"]
    assert (buried.bin and buried.bin.name, buried.on) == ("red", room.now.date())


@pytest.mark.parametrize(
    ("said", "act"),
    [
        ("sealed the red bin, the hall bin isn't full", "seal"),
        ("drained the red bin, hall bin not yet", "drain"),
        ("sealed the red bin and the hall bin wouldn't close", "seal"),
    ],
)
async def test_what_is_denied_of_the_second_bin(room: TalkingRoom, said: str, act: str) -> None:
    await room.says(said)
    assert await told(room, act) == ["red"]
