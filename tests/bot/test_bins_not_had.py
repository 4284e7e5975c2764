"""What is said of bins that the group has not, or not any more, in a room."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
def room(db: Database) -> TalkingRoom:
    return TalkingRoom(db)


async def records(room: TalkingRoom) -> list[tuple[str, str | None]]:
    """Act and bin of each record that stands, but for the openings."""
    standing = await room.standing()
    return [(e.act, e.bin.name if e.bin else None) for e in standing if e.act != "open"]


@pytest.fixture
async def two_bins(room: TalkingRoom) -> TalkingRoom:
    """A white and a brown bin."""
    await room.says("opened the white bin, 20 L")
    await room.says("opened the brown bin, 20 L")
    return room


@pytest.mark.parametrize(
    ("said", "standing"),
    [
        (["drained 300 ml from the zinc bin"], []),
        (["drained 300 ml from the zinc bin", "white"], [("drain", "white")]),
        (["drained 300 ml from the zinc bin", "new"], [("drain", "zinc")]),
        (["drained 300 ml from the zinc bin", "the zinc bin"], [("drain", "zinc")]),
        (["drained 300 ml from the zinc bin", "no"], []),
        (["there is green mould in the zinc bin", "brown"], [("observe", "brown")]),
        (["added 3 kg to pink"], [("layer", "pink")]),
        (["added 3 kg to white and pink", "yes"], [("layer", "white"), ("layer", "pink")]),
        (["sealed pink"], [("seal", "pink")]),
        (["sealed pink", "no, the white bin"], [("seal", "white")]),
        (["added 3 kg to white", "no, into pink"], [("layer", "pink")]),
        (["drained white", "no, from pink"], [("drain", "white")]),
        (["drained white", "no, from pink", "no, brown"], [("drain", "brown")]),
    ],
)
async def test_no_record_goes_to_another_bin(
    two_bins: TalkingRoom, said: list[str], standing: list[tuple[str, str]]
) -> None:
    for words in said:
        await two_bins.says(words)
    assert await records(two_bins) == standing


@pytest.mark.parametrize(
    ("words", "answer"),
    [
        ("drained 300 ml from pink", "I know no bin called “pink”."),
        ("sealed pink", "The pink bin is new to me. Meant another?"),
        ("rename the zinc bin to Moss", "I know no bin called “zinc”."),
        ("retire the zinc bin", "I know no bin called “zinc”."),
        ("the story of the zinc bin", "I know no bin called “zinc”."),
        ("rename the white bin to", "What is its name to be?"),
        ("rename white to brown and brown to white", "One bin at a time"),
        ("opened the drain bin, 20 L", "I cannot call it as you said, so it is bin 1."),
    ],
)
async def test_what_is_not_there_is_said(two_bins: TalkingRoom, words: str, answer: str) -> None:
    [reply] = await two_bins.says(words)
    assert answer in reply.body


async def test_a_layer_puts_a_retired_bin_in_use_again_and_says_so(two_bins: TalkingRoom) -> None:
    await two_bins.says("rename brown to Moss")
    await two_bins.says("retire Moss")
    [reply] = await two_bins.says("added 3 kg to Moss")
    assert "Moss was out of use: with this layer it is in use again." in reply.body
    await two_bins.says("retire Moss")
    [reply] = await two_bins.says("opened Moss again")
    assert reply.body == "Moss is in use again, and its records go on."


async def test_a_former_name_begins_no_bin_and_sets_no_size(two_bins: TalkingRoom) -> None:
    await two_bins.says("rename brown to Moss")
    [reply] = await two_bins.says("opened the brown bin, 5 L")
    assert reply.body.startswith("The brown bin is Moss now, so nothing is written down.")
    moss = await (await two_bins.book()).bin("Moss")
    assert moss
    assert (await (await two_bins.book()).about(moss)).capacity_l == 20


async def test_a_struck_opening_keeps_its_name_and_says_so(two_bins: TalkingRoom) -> None:
    await two_bins.says("opened the pink bin, 20 L")
    await two_bins.says("scratch that")
    [reply] = await two_bins.says("rename white to pink")
    assert reply.body.startswith("The pink bin was struck out and keeps its name")


@pytest.mark.parametrize("words", ["brown", "to the brown bin"])
async def test_a_layer_without_its_bin_waits_for_days(two_bins: TalkingRoom, words: str) -> None:
    await two_bins.says("added 3 kg")
    assert await records(two_bins) == [("layer", None)]
    await two_bins.waits(days=3)
    await two_bins.says(words)
    assert await records(two_bins) == [("layer", "brown")]
    await two_bins.says("white")
    assert await records(two_bins) == [("layer", "brown")]


@pytest.mark.parametrize(
    "told",
    [
        "by the way the bin is called Ferdinand now",
        "we've named the bin Ferdinand",
        "our bin finally has a name: Ferdinand",
        "the bucket's new name is Ferdinand",
    ],
)
async def test_the_only_bin_gets_its_name(db: Database, told: str) -> None:
    room = TalkingRoom(db)
    await room.says("opened the brown bin, 20 L")
    [renamed] = await room.says(told)
    assert renamed.body.startswith("The brown bin is Ferdinand now.")
    assert [bin.name for bin in await (await room.book()).bins()] == ["Ferdinand"]


async def test_of_several_bins_none_is_called_so(two_bins: TalkingRoom) -> None:
    await two_bins.says("the bin is called Ferdinand now")
    assert {"white", "brown"} <= {bin.name for bin in await (await two_bins.book()).bins()}
