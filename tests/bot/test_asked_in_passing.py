"""What neighbours ask in passing while the talk is of their bins, in words that lean on it."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ada and Jo have a bin called Plum, with scraps in it, and one called Fig."""
    room = TalkingRoom(db)
    await room.says("hello", who="jo")
    await room.says("opened the Plum bin, 15 L, shared", who="ada")
    await room.says("opened the Fig bin, 15 L, shared", who="ada")
    await room.says("2 kg of peelings in Plum", who="ada")
    return room


@pytest.mark.parametrize(
    "asked",
    [
        "what do I have to do with Plum this week?",
        "what should we be doing with the Plum bin?",
        "do I need to do anything with Plum this week?",
        "is there anything to do with the Plum bin?",
    ],
)
async def test_what_a_bin_is_to_have_done(room: TalkingRoom, asked: str) -> None:
    told = words(await room.says(asked, who="jo"))
    assert "drain Plum" in told
    assert "Fig" not in told


@pytest.mark.parametrize("asked", ["do I need to drain it?", "does it need draining today?"])
async def test_whether_it_is_to_be_drained(room: TalkingRoom, asked: str) -> None:
    assert "drain Plum" in words(await room.says(asked, who="jo"))


@pytest.mark.parametrize(
    "asked",
    [
        "what's the date we need to seal by?",
        "by what day must we seal it?",
        "what's the deadline for sealing?",
    ],
)
async def test_by_when_it_is_to_be_sealed(room: TalkingRoom, asked: str) -> None:
    assert "seal Plum" in words(await room.says(asked, who="jo"))


@pytest.mark.parametrize("between", ["how is your mum?", "pls remind us the day before"])
async def test_what_came_out_of_the_tap_needs_no_bins_name(room: TalkingRoom, between: str) -> None:
    await room.says(between, who="jo")
    told = words(await room.says("250 ml out of the tap", who="ada"))
    drained = [e.facts.volume_l for e in await room.standing() if e.act == "drain"]
    assert drained == [0.25] or "250 mL" in told


@pytest.mark.parametrize(
    "asked",
    [
        "does the pond need draining?",
        "do I need to seal the tiles?",
        "what do I have to do with the invoice this week?",
        "what shall we do with the drunken sailor?",
    ],
)
async def test_what_other_things_need_is_not_answered(room: TalkingRoom, asked: str) -> None:
    assert words(await room.says(asked, who="jo")) == ""


@pytest.mark.parametrize(
    "said",
    [
        "and a bit of green in the corner",
        "oh, also some blue spots round the edge",
        "there's a touch of pink here and there",
        "plus black patches on the lid",
    ],
)
@pytest.mark.parametrize("who", ["jo", "ada"])
async def test_another_growth_beside_the_white_one(room: TalkingRoom, said: str, who: str) -> None:
    assert "Carry on" in words(await room.says("there's white fuzz on Plum", who=who))
    assert "Do not sniff mould" in words(await room.says(said, who="jo"))


@pytest.mark.parametrize(
    "said", ["I like a bit of pink in the garden", "some red paint on the shelf", "green or red?"]
)
async def test_other_colours_grow_nowhere(room: TalkingRoom, said: str) -> None:
    await room.says("there's white fuzz on Plum", who="jo")
    assert words(await room.says(said, who="jo")) == ""


@pytest.mark.parametrize(
    ("asked", "taught"),
    [
        ("we press down with a plate, is that right?", "press"),
        ("is it right to press it down with a plate?", "press"),
        ("how do I explain to the class why we don't open it?", "air"),
        ("why shouldn't we open it every day?", "air"),
        ("how do we get the air out?", "press"),
        ("oops forgot the bran, too late?", "the dose you missed"),
        ("is it ok to leave it 10 days?", "draining"),
        ("does it need covering against foxes?", "yes: 10 to 20 cm of soil"),
    ],
)
async def test_a_lesson_asked_in_passing(room: TalkingRoom, asked: str, taught: str) -> None:
    await room.says("how big a hole for Plum?", who="ada")
    assert taught in words(await room.says(asked, who="ada")).lower()


async def test_labels_of_all_bins(room: TalkingRoom) -> None:
    told = words(await room.says("print labels for the buckets", who="ada"))
    assert "label" in told
