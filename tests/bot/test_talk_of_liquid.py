"""What the room says of the liquid: drawn off in passing, asked about with a plant, given away."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines and Bram share the yard bin, which has scraps in it."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("opened the yard bin, 20 L, shared", who="ines")
    await room.says("2 kg of peelings in the yard bin", who="ines")
    return room


async def drained(room: TalkingRoom) -> list[float | None]:
    return [entry.facts.volume_l for entry in await room.standing() if entry.act == "drain"]


@pytest.mark.parametrize(
    ("said", "litres"),
    [
        ("oh and there was juice in the tap, got half a mug", 0.15),
        ("opened the tap just now, got 180 ml", 0.18),
    ],
)
async def test_it_came_off_at_the_tap(room: TalkingRoom, said: str, litres: float) -> None:
    await room.says(said, who="bram")
    assert await drained(room) == pytest.approx([litres])


@pytest.mark.parametrize(
    ("asked", "parts"),
    [
        ("what can I do with it? we have orchids on the windowsill", "500 parts"),
        ("my baby lettuces are out, would they like it?", "1000 parts"),
        ("what should we do with it? there's a hedge at the back", "100 parts"),
    ],
)
async def test_what_to_do_with_what_was_just_drained(
    room: TalkingRoom, asked: str, parts: str
) -> None:
    await room.says("drained 150 ml", who="bram")
    told = words(await room.says(asked, who="bram"))
    assert "150 mL of liquid" in told
    assert parts in told


@pytest.mark.parametrize(
    ("asked", "parts"),
    [
        ("may we give the yard juice to the pepper seedlings?", "1000 parts"),
        ("is the juice good for young kale?", "1000 parts"),
        ("can the liquid go on the seed trays?", "1000 parts"),
        ("would the ferns in the hall like the juice?", "500 parts"),
        ("can the house plants have some of the juice?", "500 parts"),
        ("can the juice go on the rose bed?", "100 parts"),
        ("could we put the juice round the fruit trees?", "100 parts"),
    ],
)
async def test_what_it_is_for_by_the_plant_that_is_named(
    room: TalkingRoom, asked: str, parts: str
) -> None:
    assert parts in words(await room.says(asked, who="bram"))
    assert await drained(room) == []


async def test_no_child_is_a_seedling(room: TalkingRoom) -> None:
    assert "parts" not in words(await room.says("can the baby have the juice?", who="bram"))


@pytest.mark.parametrize(
    "said", ["I took off 350 already, gave it to Ines", "drew about 350 off it this morning"]
)
async def test_a_bare_figure_that_came_off_is_asked_about(room: TalkingRoom, said: str) -> None:
    await room.says("can we put the juice on the roses?", who="ines")
    assert "350 mL drained" in words(await room.says(said, who="bram"))
    await room.says("yes", who="bram")
    assert await drained(room) == [0.35]


@pytest.mark.parametrize("said", ["took 350 off the rent already", "took off 5 early"])
async def test_what_is_taken_off_other_things(room: TalkingRoom, said: str) -> None:
    await room.says("can we put the juice on the roses?", who="ines")
    await room.says(said, who="bram")
    await room.says("yes", who="bram")
    assert await drained(room) == []


@pytest.mark.parametrize(
    "asked",
    [
        "how much came out of the yard so far?",
        "how much liquid did we get from the yard bin?",
        "how much has the yard bin given us in all?",
        "how much juice has come out of the yard?",
        "how much did we drain off the yard this week?",
    ],
)
async def test_what_came_out_of_a_bin_is_its_liquid(room: TalkingRoom, asked: str) -> None:
    await room.says("drained the yard bin, 300 ml", who="bram")
    await room.says("drained the yard bin again, 150 ml", who="ines")
    assert "450 mL" in words(await room.says(asked, who="ines"))


async def test_what_went_in_is_no_liquid(room: TalkingRoom) -> None:
    await room.says("drained the yard bin, 300 ml", who="bram")
    told = words(await room.says("how much went into the yard so far?", who="ines"))
    assert "2 kg" in told
    assert "300 mL" not in told


@pytest.mark.parametrize(
    "said",
    [
        "I keep the juice in a jam jar with the lid on",
        "I store the liquid in a sealed bottle",
        "I keep it in an old milk bottle, lid screwed tight",
        "can I keep the juice in a jam jar with the lid on?",
    ],
)
async def test_whoever_shuts_it_in_a_bottle_is_warned(room: TalkingRoom, said: str) -> None:
    await room.says("drained the yard bin, 300 ml", who="bram")
    assert "gas builds up" in words(await room.says(said, who="bram"))


@pytest.mark.parametrize(
    "said",
    [
        "I keep it in the fridge",
        "I made 3 jars of jam, lids on tight",
        "we keep the apple juice in a sealed bottle in the cellar",
        "is the lid on tight?",
    ],
)
async def test_other_jars_are_none_of_it(room: TalkingRoom, said: str) -> None:
    await room.says("drained the yard bin, 300 ml", who="bram")
    assert "gas builds up" not in words(await room.says(said, who="bram"))
