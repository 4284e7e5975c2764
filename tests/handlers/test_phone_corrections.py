"""Corrections as they are typed on a phone, each right behind its record."""

from collections.abc import Sequence
from datetime import date

import pytest

from storage.database import Database
from storage.rows import Entry
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Four neighbours keep the shed, blue and green bins."""
    room = TalkingRoom(db)
    for who in ("bram", "zoe"):
        await room.says("hello", who=who)
    for bin in ("shed", "blue", "green"):
        await room.says(f"opened the {bin} bin, 20 L")
    await room.says("1 kg of peelings in the shed")
    return room


def _short(entry: Entry) -> tuple[str, str, float | None]:
    much = entry.facts.mass_kg or entry.facts.volume_l
    return entry.act, entry.bin.name if entry.bin else "", much and round(much, 2)


async def told(room: TalkingRoom) -> list[tuple[str, str, float | None]]:
    """The deeds that stand, by bin, beside the first one."""
    deeds = [e for e in await room.standing() if e.act != "open"]
    return sorted((_short(e) for e in deeds[1:]), key=lambda one: one[:2])


@pytest.mark.parametrize(
    ("record", "corrections", "left"),
    [
        (
            "2 kg in blue and 1 kg in green",
            ["no the other way round"],
            [("layer", "blue", 1.0), ("layer", "green", 2.0)],
        ),
        ("2 kg in blue and 1 kg in green", ["swap those"], [("layer", "blue", 1.0)]),
        ("2 kg in blue and 1 kg in green", ["vice versa, sorry"], [("layer", "blue", 1.0)]),
        ("drained blue 300 ml and green 200 ml", ["other way round"], [("drain", "blue", 0.2)]),
        ("1 kg rice in blue", ["the other way round"], [("layer", "blue", 1.0)]),
        ("1 kg rice in blue", ["2 actually"], [("layer", "blue", 2.0)]),
        ("1 kg rice in blue", ["1.2", "yes"], [("layer", "blue", 1.2)]),
        ("1 kg rice in blue", ["1.2", "no"], [("layer", "blue", 1.0)]),
        ("1 kg rice in blue", ["2026", "yes"], [("layer", "blue", 1.0)]),
        ("1 kg rice in blue", ["two please", "yes"], [("layer", "blue", 1.0)]),
        ("1 kg rice in blue", ["Zoe brought that cake"], [("layer", "blue", 1.0)]),
        ("1 kg rice in blue", ["no bread left in the shop"], [("layer", "blue", 1.0)]),
        ("1 kg rice in blue", ["forgot to buy 2 kg of flour"], [("layer", "blue", 1.0)]),
        ("1 kg rice in blue", ["less the tub, 200 g"], [("layer", "blue", 0.8)]),
        ("1 kg rice in blue", ["take off 200 g for the bowl"], [("layer", "blue", 0.8)]),
        ("1 kg rice in blue", ["the bowl weighs 300 g"], [("layer", "blue", 0.7)]),
        ("1 kg rice in blue", ["less the tub, 800 g"], [("layer", "blue", 0.8)]),
        ("1 kg rice in blue", ["minus the bowl, so 800 g"], [("layer", "blue", 0.8)]),
        ("1 kg rice in blue", ["not blue", "green"], [("layer", "green", 1.0)]),
        ("1 kg rice in blue", ["into green", "yes"], [("layer", "green", 1.0)]),
        ("1 kg rice in blue", ["green!", "👍"], [("layer", "green", 1.0)]),
        ("1 kg rice in blue", ["green", "lovely evening"], [("layer", "blue", 1.0)]),
        ("1 kg rice in blue", ["oops no I didn't"], []),
        (
            "1 kg rice in blue",
            ["forgot the peelings, 300 g"],
            [("layer", "blue", 1.0), ("layer", "blue", 0.3)],
        ),
        ("sealed blue", ["not sealed, drained"], [("drain", "blue", None)]),
        ("sealed blue", ["drained not sealed"], [("drain", "blue", None)]),
        ("sealed blue", ["no, only drained it"], [("drain", "blue", None)]),
        ("sealed blue", ["it's not sealed"], []),
        ("sealed blue", ["sealed, not buried"], [("seal", "blue", None)]),
        ("drained blue, 200 ml", ["sorry, not drained, sealed"], [("seal", "blue", None)]),
        ("drained blue, 650 ml", ["500 not 650 on that drain"], [("drain", "blue", 0.5)]),
        ("drained blue, 650 ml", ["500 not 650 on that bus"], [("drain", "blue", 0.65)]),
        ("drained blue, 200 ml", ["just drained it"], [("drain", "blue", 0.2)]),
    ],
)
async def test_it_is_put_right(
    room: TalkingRoom,
    record: str,
    corrections: Sequence[str],
    left: list[tuple[str, str, float | None]],
) -> None:
    await room.says(record)
    for words in corrections:
        await room.says(words)
    assert (await told(room))[: len(left)] == left
    assert left or await told(room) == []


@pytest.mark.parametrize(
    ("record", "words", "main"),
    [
        ("1 kg scraps in blue, mostly meat", "not meat, veg", {"vegetable": 1.0}),
        ("1 kg scraps in blue, half meat half rice", "there was no meat in it", {"grain": 1.0}),
        ("1 kg peelings in blue", "coffee not peelings", {"coffee": 1.0}),
        ("1 kg peelings in blue", "coffee grounds actually", {"coffee": 1.0}),
        ("1 kg peelings in blue", "no meat", {"vegetable": 1.0}),
        ("1 kg peelings in blue", "no bread today", {"vegetable": 1.0}),
    ],
)
async def test_what_it_is_made_of(
    room: TalkingRoom, record: str, words: str, main: dict[str, float]
) -> None:
    await room.says(record)
    await room.says(words)
    last = [entry for entry in await room.standing() if entry.act == "layer"][-1]
    assert last.facts.mass_kg == 1.0
    assert last.facts.materials == main


@pytest.mark.parametrize(
    ("words", "place"),
    [
        ("under the plum", "plum"),
        ("plum not pear", "plum"),
        ("under the plum, not the pear", "plum"),
        ("sorry, by the back gate", "back gate"),
        ("under the weather today", "pear"),
        ("in the rain", "pear"),
        ("by hand", "pear"),
        ("in the dark", "pear"),
        ("near killed me", "pear"),
        ("plum not apple", "pear"),
    ],
)
async def test_where_it_was_buried(room: TalkingRoom, words: str, place: str) -> None:
    await room.says("buried the shed bin under the pear")
    await room.says(words)
    [buried] = [entry for entry in await room.standing() if entry.act == "bury"]
    assert buried.facts.place == place


async def test_two_bins_are_swapped_though_another_has_spoken(room: TalkingRoom) -> None:
    await room.says("2 kg in blue and 1 kg in green")
    await room.says("ok", who="bram")
    await room.says("other way round", who="zoe")
    assert await told(room) == [("layer", "blue", 2.0), ("layer", "green", 1.0)]
    await room.says("sorry, other way round")
    assert await told(room) == [("layer", "blue", 1.0), ("layer", "green", 2.0)]


async def test_when_and_by_whom(room: TalkingRoom) -> None:
    await room.says("1 kg of rice in blue")
    await room.says("yesterday sorry")
    await room.says("Zoe put that in")
    last = [entry for entry in await room.standing() if entry.act == "layer"][-1]
    assert (last.member, last.on) == ("zoe", date(2026, 3, 1))
