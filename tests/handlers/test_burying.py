"""Burials: of a bin that nobody sealed, and told twice."""

from handlers.reading.acts import Bury, Layer, Seal
from tests.group import Group

PEELS = Layer(mass_kg=2.0, materials={"vegetable": 1.0}, bin="yard")


async def burials(group: Group) -> int:
    bin = await group.book.bin("yard")
    assert bin is not None
    return sum(entry.act == "bury" for entry in await group.book.since_run(bin, 1))


async def test_a_bin_that_was_never_sealed_is_to_be_covered_well(group: Group) -> None:
    await group.says(PEELS)
    said = (await group.says(Bury(bin="yard"), days=3)).say
    assert "I have no sealing of it" in said
    later = await group.says(Seal(bin="yard", on=group.day(1)), days=3)
    assert later.say == "Noted: the yard bin was sealed Tuesday 3 March, before it was buried."


async def test_a_burial_told_twice_is_one(group: Group) -> None:
    await group.says(PEELS)
    await group.says(Seal(bin="yard"))
    first = await group.says(Bury(bin="yard"), days=14)
    again = await group.says(Bury(bin="yard"), days=15)
    assert again.say.startswith("The yard bin has been in the ground since yesterday. Plant there")
    assert first.say.split("Plant")[1].split(",")[0] in again.say
    assert await burials(group) == 1
    placed = await group.says(Bury(bin="yard", place="plum tree"), days=15)
    assert placed.say.endswith("Its place is noted.")


async def test_the_next_run_is_buried_as_ever(group: Group) -> None:
    await group.says(Bury(bin="yard"))
    await group.says(Bury(bin="yard"), days=12)
    assert await burials(group) == 2
    await group.says(PEELS, days=13)
    assert "in the ground. Plant" in (await group.says(Bury(bin="yard"), days=13)).say
    assert await burials(group) == 3
