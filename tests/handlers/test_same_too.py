"""A deed told of one bin more, or once more, in a few words."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines and Bram, and three bins."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    for bin in ("hut", "barn", "porch"):
        await room.says(f"opened the {bin} bin, 20 L")
    return room


async def last(room: TalkingRoom) -> tuple[str, str | None, str | None, str | None]:
    entry = (await room.standing())[-1]
    return entry.act, entry.bin.name if entry.bin else None, entry.member, entry.facts.place


@pytest.mark.parametrize(
    ("first", "then", "who", "made"),
    [
        ("buried the hut bin under the pear", "barn too", "ines", ("bury", "barn", "ines", "pear")),
        (
            "buried the hut bin under the pear",
            "barn as well, by the pond",
            "bram",
            ("bury", "barn", "bram", "pond"),
        ),
        ("sealed the hut", "and the porch bin too", "ines", ("seal", "porch", "ines", None)),
        ("drained the hut, 200 ml", "porch also", "ines", ("drain", "porch", "ines", None)),
    ],
)
async def test_the_same_of_another_bin(
    room: TalkingRoom, first: str, then: str, who: str, made: tuple[str, str, str, str | None]
) -> None:
    await room.says(first)
    await room.says(then, who=who)
    assert await last(room) == made


async def test_what_was_said_next_is_what_is_put_right(room: TalkingRoom) -> None:
    await room.says("buried the hut bin under the pear")
    await room.says("barn too")
    await room.says("no, not the barn, the porch")
    buried = {e.bin.name for e in await room.standing() if e.act == "bury" and e.bin}
    assert buried == {"hut", "porch"}


@pytest.mark.parametrize("said", ["barn too?", "the barn is lovely too", "hut too"])
async def test_no_deed_is_told(room: TalkingRoom, said: str) -> None:
    await room.says("sealed the hut")
    await room.says(said)
    assert [e.act for e in await room.standing()].count("seal") == 1


@pytest.mark.parametrize("said", ["ok sealed again", "shut it again", "resealed"])
async def test_the_bin_of_the_talk_is_sealed_again(room: TalkingRoom, said: str) -> None:
    await room.says("1 kg of bread in the hut bin")
    await room.says("sealed the hut")
    await room.says("1 kg of bread in the barn bin")
    await room.says("put 2 kg in the hut bin after you shut it", who="bram")
    await room.says(said)
    assert await last(room) == ("seal", "hut", "ines", None)


@pytest.mark.parametrize(
    "said", ["same in the porch", "and the same for porch", "same again porch"]
)
async def test_the_same_as_another_has_just_told_is_asked_first(
    room: TalkingRoom, said: str
) -> None:
    await room.says("1 kg of bread in the hut bin")
    await room.says("drained the barn, 200 ml", who="bram")
    (asked,) = await room.says(said)
    assert asked.body == "Shall I write down 200 mL drained from the porch bin?"
    await room.says("yes")
    assert await last(room) == ("drain", "porch", "ines", None)


@pytest.mark.parametrize("said", ["same here", "the porch is much the same"])
async def test_the_same_without_a_deed_is_not_told(room: TalkingRoom, said: str) -> None:
    await room.says("drained the barn, 200 ml", who="bram")
    before = await room.standing()
    await room.says(said)
    assert await room.standing() == before


@pytest.fixture
async def street(db: Database) -> TalkingRoom:
    """Everybody keeps one bin."""
    room = TalkingRoom(db)
    for who, bin in (("ines", "hut"), ("bram", "barn"), ("cleo", "porch")):
        await room.says(f"opened the {bin} bin, 20 L", who=who)
        await room.says(f"2 kg of peelings in the {bin} bin", who=who)
    await room.says("hello", who="dov")
    return room


Deed = tuple[str, str | None, str | None, float | None, str | None]


async def deeds(room: TalkingRoom) -> list[Deed]:
    return [
        (e.act, e.bin.name if e.bin else None, e.member, e.facts.volume_l, e.facts.place)
        for e in await room.standing()
        if e.act in ("drain", "seal", "bury")
    ]


@pytest.mark.parametrize(
    ("first", "then", "made"),
    [
        ("drained the hut, 200 ml", "me too, 150", ("drain", "barn", "bram", 0.15, None)),
        ("drained the hut, 200 ml", "same here, 100 ml", ("drain", "barn", "bram", 0.1, None)),
        ("drained the hut, 200 ml", "and the barn", ("drain", "barn", "bram", None, None)),
        ("drained the hut, 200 ml", "barn too", ("drain", "barn", "bram", None, None)),
        ("drained the hut, 200 ml", "mine as well", ("drain", "barn", "bram", None, None)),
        ("sealed the hut", "and the barn one", ("seal", "barn", "bram", None, None)),
        ("sealed the hut", "mine too", ("seal", "barn", "bram", None, None)),
        (
            "buried the hut bin in the long bed",
            "and barn next to it",
            ("bury", "barn", "bram", None, "long bed"),
        ),
        (
            "buried the hut bin in the long bed",
            "and the barn under the plum tree",
            ("bury", "barn", "bram", None, "plum tree"),
        ),
    ],
)
async def test_a_neighbour_goes_on_from_what_was_told(
    street: TalkingRoom, first: str, then: str, made: Deed
) -> None:
    await street.says(first)
    await street.says(then, who="bram")
    assert (await deeds(street))[1:] == [made]


async def test_a_mere_courtesy_stands_between(street: TalkingRoom) -> None:
    await street.says("sealed the hut")
    await street.says("lovely", who="dov")
    await street.says("and the barn", who="bram")
    assert (await deeds(street))[1:] == [("seal", "barn", "bram", None, None)]


@pytest.mark.parametrize("said", ["same here", "me too", "so did I", "ditto"])
async def test_whether_the_neighbours_own_is_meant_is_asked(street: TalkingRoom, said: str) -> None:
    await street.says("drained the hut, 200 ml")
    (asked,) = await street.says(said, who="bram")
    assert asked.body == "Shall I write down a draining in the barn bin?"
    (asked,) = await street.says(said, who="cleo")
    assert asked.body == "Shall I write down a draining in the porch bin?"
    await street.says("yes", who="cleo")
    await street.says("yes", who="bram")
    assert (await deeds(street))[1:] == [
        ("drain", "porch", "cleo", None, None),
        ("drain", "barn", "bram", None, None),
    ]


@pytest.mark.parametrize(
    ("first", "between", "who", "said"),
    [
        ("drained the hut, 200 ml", "so tired today", "bram", "same here"),
        ("drained the hut, 200 ml", "my roof leaks again", "bram", "and the barn"),
        ("drained the hut, 200 ml", None, "dov", "me too"),
        ("drained the hut, 200 ml", None, "bram", "and the barn?"),
        ("drained the hut, 200 ml", None, "bram", "me too, I love this weather"),
        ("what's due?", None, "bram", "same here"),
        ("sealed the hut", None, "bram", "and the barn dance on Friday"),
        ("sealed the hut", None, "bram", "and the hut"),
    ],
)
async def test_nothing_goes_on_from_other_talk(
    street: TalkingRoom, first: str, between: str | None, who: str, said: str
) -> None:
    await street.says(first)
    if between:
        await street.says(between, who="cleo")
    before = await street.standing()
    said_back = await street.says(said, who=who)
    assert await street.standing() == before
    assert "Shall I" not in "".join(one.body for one in said_back)
