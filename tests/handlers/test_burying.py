"""A burial is told once, and on a day that it can have been."""

import json
from datetime import date

import pytest

from handlers.reading.actjson import from_json
from handlers.reading.acts import Amend, Bury, Layer, Open, Seal
from storage.database import Database
from tests.group import Group
from tests.room import TalkingRoom


@pytest.fixture
def room(db: Database) -> TalkingRoom:
    return TalkingRoom(db)


async def burials(group: Group) -> list[tuple[date | None, str | None]]:
    entries = await group.book.entries()
    return [(e.on, e.facts.place) for e in entries if e.act == "bury" and not e.struck]


async def sealed(group: Group) -> None:
    await group.says(Open(bin="shed", capacity_l=20.0))
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Seal(bin="shed"), days=10)


@pytest.mark.parametrize(
    ("place", "days", "words", "count"),
    [
        (None, 26, "The shed bin is in the book as buried", 1),
        ("our pear tree", 26, "The shed bin is in the book as buried", 1),
        ("rose bed", 26, "The shed bin is in the ground", 2),
        (None, 60, "The shed bin is in the ground", 2),
    ],
    ids=["again", "again there", "another bed", "so late that it may be another filling"],
)
async def test_a_burial_that_is_told_again(
    group: Group, place: str | None, days: int, words: str, count: int
) -> None:
    await sealed(group)
    await group.says(Bury(bin="shed", place="the pear tree"), days=25)
    assert words in (await group.says(Bury(bin="shed", place=place), days=days)).say
    assert len(await burials(group)) == count


@pytest.mark.parametrize(
    ("on", "why"),
    [
        (date(2026, 3, 8), "was sealed later, Thursday 12 March"),
        (date(2026, 2, 1), "was sealed later, Thursday 12 March"),
    ],
)
async def test_a_burial_before_its_sealing_is_asked_about(group: Group, on: date, why: str) -> None:
    await sealed(group)
    answer = await group.says(Bury(bin="shed", on=on), days=20)
    assert why in answer.say
    assert answer.query
    assert await burials(group) == []
    [guess] = json.loads(answer.query.guess)
    answer = await group.says(from_json(guess), days=20)
    assert await burials(group) == [(on, None)]
    assert "sealed" not in answer.say


async def test_a_burial_before_its_opening_is_asked_about(group: Group) -> None:
    await group.says(Open(bin="shed", capacity_l=20.0))
    answer = await group.says(Bury(bin="shed", on=date(2026, 2, 25)))
    assert "was opened later, today. Shall I write down" in answer.say


async def test_no_burial_is_moved_before_its_sealing(group: Group) -> None:
    await sealed(group)
    await group.says(Bury(bin="shed"), days=25, event="$bury")
    wrong = Amend(on=date(2026, 3, 5))
    answer = await group.says(wrong, days=25, refers_to="$bury")
    assert "Its burial stands as it was." in answer.say
    assert await burials(group) == [(date(2026, 3, 27), None)]


async def test_one_yes_is_for_both(room: TalkingRoom) -> None:
    for name in ("shed", "yard"):
        await room.says(f"opened the {name} bin, 20 L")
        await room.says(f"added 2 kg to the {name} bin")
        await room.says(f"sealed the {name} bin")
    [asked] = await room.says("buried both bins on 20 February")
    assert asked.body.count("Shall I write down") == 2
    await room.says("yes")
    buried = [entry.on for entry in await room.standing() if entry.act == "bury"]
    assert buried == [date(2026, 2, 20)] * 2


async def test_a_bin_that_was_never_sealed_is_to_be_covered_well(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    assert "I have no sealing of it" in (await group.says(Bury(bin="shed"), days=3)).say
    later = await group.says(Seal(bin="shed", on=date(2026, 3, 3)), days=3)
    assert later.say == "Noted: the shed bin was sealed Tuesday 3 March, before it was buried."


async def test_a_burial_is_put_right_after_the_bin_was_opened_again(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the red bin, 30 L")
    await room.says("3 kg of peelings in the red bin")
    await room.says("sealed the red bin")
    await room.waits(days=12)
    await room.says("buried the red bin yesterday under the fig")
    [opened] = await room.says("opened the red bin again")
    assert "2½ tablespoons" in opened.body  # it still holds 30 L
    await room.says("1 kg of peelings in the red bin")
    [asked] = await room.says("actually the red bin was buried on Thursday")
    assert asked.body == (
        "By the book the red bin was buried yesterday. Shall I correct it to Thursday 12 March?"
    )
    await room.says("yes")
    told = [(e.act, e.on, e.run) for e in await room.standing() if e.act in ("bury", "layer")]
    assert sorted(told) == [
        ("bury", date(2026, 3, 12), 1),
        ("layer", date(2026, 3, 2), 1),
        ("layer", date(2026, 3, 14), 2),
    ]


async def test_an_edit_days_later_names_the_day(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the red bin, 30 L")
    await room.says("3 kg of peelings in the red bin")
    await room.waits(days=12)
    await room.says("sealed the red bin", event="$sealed")
    await room.waits(days=3)
    [told] = await room.edits("$sealed", "sealed the red bin on Friday the 13th")
    assert told.body.startswith("The red bin is sealed, Friday 13 March.")
    [seal] = [entry for entry in await room.standing() if entry.act == "seal"]
    assert seal.on == date(2026, 3, 13)
    await room.edits("$sealed", "sealed the red bin")
    [seal] = [entry for entry in await room.standing() if entry.act == "seal"]
    assert seal.on == date(2026, 3, 14)


async def test_a_layer_told_late_begins_no_new_run(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the green bin, 30 L, shared")
    await room.says("2 kg of peelings in the green bin")
    await room.says("sealed the green bin")
    await room.waits(days=12)
    await room.says("buried the green bin")
    await room.waits(days=1)
    [told] = await room.says("I put 1.5 kg of peelings in the green bin on 2 March", who="kev")
    assert told.body.endswith("By the book it went in before the green bin was buried, yesterday.")


@pytest.mark.parametrize(
    "said",
    ["buried the rest under the quince", "buried the other half", "I've buried the last of it"],
)
async def test_the_rest_of_a_bin_is_its_burial(room: TalkingRoom, said: str) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says("opened the yard bin, 20 L")
    await room.says("2 kg of skins in the shed bin")
    await room.says("sealed the shed bin")
    await room.waits(days=14)
    await room.says("buried half of the shed bin in the rose bed")
    assert all(entry.act != "bury" for entry in await room.standing())
    await room.says("we had cake", who="bram")
    await room.says(said)
    assert [e.bin.name for e in await room.standing() if e.act == "bury" and e.bin] == ["shed"]


@pytest.mark.parametrize("said", ["buried the rest of the onions", "the rest is for Bram"])
async def test_the_rest_of_other_things(room: TalkingRoom, said: str) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says(said)
    assert [entry.act for entry in await room.standing()] == ["open"]
