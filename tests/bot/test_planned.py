"""What was only planned is written down once its sender tells that it is in."""

import pytest

from storage.database import Database
from storage.rows import Entry
from tests.room import TalkingRoom, words

PLAN = "I'll put 900 g of crusts in the green bin after work"


async def talked(db: Database, *lines: tuple[str, str]) -> TalkingRoom:
    """A room with two bins and three neighbours, in which the lines were said."""
    room = TalkingRoom(db)
    for opening in ("opened the green bin, 20 L, shared", "opened bin 2, 20 L"):
        await room.says(opening, who="olga")
    for who in ("rut", "ines"):
        await room.says("hello", who=who)
    for who, line in lines:
        await room.says(line, who=who)
    return room


async def layers(room: TalkingRoom) -> list[Entry]:
    """The layers that stand."""
    return [entry for entry in await room.standing() if entry.act == "layer"]


@pytest.mark.parametrize(
    "told",
    ["added it", "it's in now", "ok, chucked it all in", "done, put it in the green bin", "all in",
     "that's in", "in it went", "done"],
)  # fmt: skip
async def test_what_was_planned_is_in(db: Database, told: str) -> None:
    room = await talked(db, ("ines", PLAN), ("ines", told))
    [entry] = await layers(room)
    assert entry.bin is not None
    assert (entry.bin.name, entry.facts.mass_kg) == ("green", 0.9)
    assert entry.facts.materials == {"grain": 1.0}
    assert entry.member == "ines"


@pytest.mark.parametrize(
    ("told", "kilos"),
    [
        ("added it, 1.1 kg in the end", 1.1),
        ("it's in. was more like 750 g", 0.75),
        ("put it in, came to 820", 0.82),
        ("all in, it was only 0.6", 0.6),
        ("done, but it was 0.6 only", 0.6),
        ("it's done, 800 g though", 0.8),
        ("did it, but 1.1 kg", 1.1),
        ("did it, 3 times", None),
        ("it's in, 2 people helped", None),
        ("it's in, 300 people saw it", None),
    ],
)
async def test_how_much_it_was_in_the_end(db: Database, told: str, kilos: float | None) -> None:
    room = await talked(db, ("ines", PLAN), ("ines", told))
    kept = [(entry.facts.mass_kg, entry.facts.materials) for entry in await layers(room)]
    assert kept == ([] if kilos is None else [(kilos, {"grain": 1.0})])


@pytest.mark.parametrize(
    "plan",
    ["got 900 g of crusts to add tonight", "gonna tip 900 g of crusts in the green bin later",
     "planning to add 900 g of crusts if there's room", "adding 900 g of crusts tonight"],
)  # fmt: skip
async def test_a_plan_in_other_words(db: Database, plan: str) -> None:
    room = await talked(db, ("ines", plan), ("ines", "it's in"), ("ines", "green"))
    assert [entry.facts.mass_kg for entry in await layers(room)] == [0.9]


async def test_it_is_asked_where_others_have_spoken_since(db: Database) -> None:
    room = await talked(db, ("ines", PLAN), ("rut", "my parcel came at last"))
    assert "900 g in the green bin?" in words(await room.says("it's in", who="ines"))
    assert await layers(room) == []
    await room.says("yes", who="ines")
    assert [entry.facts.mass_kg for entry in await layers(room)] == [0.9]


@pytest.mark.parametrize(
    "lines",
    [
        (("ines", PLAN), ("rut", "it's in")),
        (("ines", PLAN), ("rut", "is the post there?"), ("ines", "done")),
        (("ines", "I won't add 900 g of crusts to green"), ("ines", "it's in")),
        (("ines", "rut will put 900 g of crusts in green"), ("ines", "it's in")),
        (("ines", "shall I add 900 g of crusts to green?"), ("ines", "it's in")),
        (("ines", "I'll add 900 g of sugar to the jam tonight"), ("ines", "it's in")),
        (("ines", PLAN), ("ines", "it's in the oven")),
    ],
)
async def test_nothing_was_put_in(db: Database, lines: tuple[tuple[str, str], ...]) -> None:
    room = await talked(db, *lines)
    assert await layers(room) == []


async def test_it_is_put_in_once(db: Database) -> None:
    room = await talked(db, ("ines", PLAN), ("ines", "added it"), ("ines", "it's in"))
    assert len(await layers(room)) == 1


async def test_a_plan_is_what_its_edit_made_of_it(db: Database) -> None:
    room = await talked(db)
    await room.says(PLAN, who="ines", event="$plan")
    await room.edits("$plan", PLAN.replace("900", "600"), who="ines")
    await room.says("added it", who="ines")
    assert [entry.facts.mass_kg for entry in await layers(room)] == [0.6]


async def test_a_plan_taken_back_is_none(db: Database) -> None:
    room = await talked(db)
    await room.says(PLAN, who="ines", event="$plan")
    await room.deletes("$plan", who="ines")
    await room.says("added it", who="ines")
    assert await layers(room) == []


async def test_an_old_plan_is_none(db: Database) -> None:
    room = await talked(db, ("ines", PLAN))
    await room.waits(days=5)
    await room.says("added it", who="ines")
    assert await layers(room) == []
