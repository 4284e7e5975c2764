"""One message told several records: a correction is of the one that it names, or of all."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom

SAID = "3 kg of peelings in the hut bin and 2 kg of bread in bin 4"


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines has told of two layers in one breath."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("opened the hut bin, 20 L")
    await room.says("opened bin 4, 20 L")
    await room.says(SAID)
    return room


async def layers(room: TalkingRoom) -> dict[str, tuple[float | None, str | None, str]]:
    return {
        entry.bin.name: (entry.facts.mass_kg, entry.member, entry.on.isoformat()[-5:])
        for entry in await room.standing()
        if entry.act == "layer" and entry.bin and entry.on
    }


@pytest.mark.parametrize(
    ("said", "hut", "four"),
    [
        ("the peelings were 5", 5, 2),
        ("peelings was 5 kg", 5, 2),
        ("sorry, the bread was 1", 3, 1),
        ("no, the hut was 5 and bin 4 was 1", 5, 1),
        ("oops, peelings were 5, bread was 1 kg", 5, 1),
        ("the hut bin was 5 kg", 5, 2),
        ("the bread was in the hut and the peelings were bin 4", 2, 3),
        ("no, 5", 3, 5),
    ],
)
async def test_the_part_named_is_put_right(
    room: TalkingRoom, said: str, hut: float, four: float
) -> None:
    await room.says(said)
    assert {bin: told[0] for bin, told in (await layers(room)).items()} == {
        "hut": hut,
        "bin 4": four,
    }


@pytest.mark.parametrize("said", ["the coffee was 5", "no, the yard was 5 and the porch was 2"])
async def test_a_part_that_nobody_told_changes_nothing(room: TalkingRoom, said: str) -> None:
    before = await layers(room)
    await room.says(said)
    assert await layers(room) == before


@pytest.mark.parametrize(
    ("said", "member", "day"),
    [
        ("that was all yesterday", "ines", "03-01"),
        ("that was yesterday", "ines", "03-01"),
        ("that was Bram", "bram", "03-02"),
    ],
)
async def test_a_day_or_a_member_is_of_all_that_was_told(
    room: TalkingRoom, said: str, member: str, day: str
) -> None:
    await room.says(said)
    assert await layers(room) == {"hut": (3, member, day), "bin 4": (2, member, day)}


async def test_what_was_put_right_together_is_taken_back_together(room: TalkingRoom) -> None:
    before = await layers(room)
    await room.says("that was all yesterday", event="$day")
    await room.deletes("$day")
    assert await layers(room) == before


@pytest.mark.parametrize("said", ["no, 4", "sorry, 4"])
async def test_a_number_alone_is_the_amount(room: TalkingRoom, said: str) -> None:
    await room.says("1 kg of fish in the hut bin")
    await room.says(said)
    assert (await layers(room))["hut"][0] == 4


async def test_a_share_of_one_layer_is_put_right(room: TalkingRoom) -> None:
    await room.says("3 kg of peelings and 1 kg of bread in the hut bin")
    await room.says("the bread was 2")
    facts = (await room.standing())[-1].facts
    assert facts.mass_kg == pytest.approx(5)
    assert facts.materials == pytest.approx({"vegetable": 0.6, "grain": 0.4})


async def test_a_day_is_of_all_whoever_did_them(room: TalkingRoom) -> None:
    await room.says("Bram 1 kg in the hut bin, Ines 4 kg in bin 4")
    await room.says("that was all yesterday")
    told = [(e.member, e.on.day) for e in await room.standing() if e.act == "layer" and e.on]
    assert told[-2:] == [("bram", 1), ("ines", 1)]
