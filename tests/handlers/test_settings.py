"""A group's units, zone and dosing habit."""

import pytest

from handlers.reading.acts import Ask, Set
from storage.rooms import find
from tests.group import Group


@pytest.mark.parametrize(
    ("what", "value", "kept"),
    [("units", "pounds", "us"), ("habit", "weight", "weight"), ("zone", "Asia/Kolkata", None)],
)
async def test_a_setting_is_kept(group: Group, what: str, value: str, kept: str | None) -> None:
    answer = await group.says(Set(what=what, value=value))
    assert answer.settings
    room = await find(group.book.db, group.book.room.address)
    assert getattr(room, what) == (kept or value)


@pytest.mark.parametrize(
    ("what", "value"), [("units", "furlongs"), ("habit", "guess"), ("zone", "Moon"), ("mood", "x")]
)
async def test_what_cannot_be_set_is_explained(group: Group, what: str, value: str) -> None:
    answer = await group.says(Set(what=what, value=value))
    assert not answer.settings
    assert answer.say


async def test_the_weight_habit_gives_another_dose(group: Group) -> None:
    spoon = await group.says(Ask(topic="dose", mass_kg=2.0))
    await group.says(Set(what="habit", value="weight"))
    room = await find(group.book.db, group.book.room.address)
    assert room
    group.book.room = room
    weight = await group.says(Ask(topic="dose", mass_kg=2.0))
    # 2 % of 2 kg: common practice, section "Choices made" of the craft
    assert "40 g" in weight.say
    assert weight.say != spoon.say
