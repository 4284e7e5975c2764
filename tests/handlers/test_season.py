"""A bin's way from its first layer to planted soil, act by act."""

from datetime import date

import pytest

from handlers.reading.acts import Ask, Bury, Drain, Layer, Observe, Open, Seal
from handlers.state import look_up
from tests.group import BEGIN, Group


async def test_a_first_layer_in_a_group_without_bins_begins_one(group: Group) -> None:
    answer = await group.says(Layer(mass_kg=2.0, materials={"meat": 0.7, "mixed": 0.3}, rich=0.7))
    assert "tablespoons" in answer.say
    assert [bin.name for bin in await group.book.bins()] == ["bin 1"]


async def test_dues_follow_a_bin_through_its_run(group: Group) -> None:
    # Check values: trade facts (seal 2026-03-20 + 14 d = 2026-04-03) and ISO calendar arithmetic.
    await group.says(Open(bin="shed", capacity_l=20.0))
    assert await group.dues() == {}
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    dues = await group.dues()
    assert dues["shed", "drain"] == (date(2026, 3, 4), date(2026, 3, 5))
    assert dues["shed", "seal"][1] <= date(2026, 3, 16)
    await group.says(Drain(volume_l=0.3, bin="shed"), days=3)
    assert (await group.dues())["shed", "drain"] == (date(2026, 3, 7), date(2026, 3, 8))
    await group.says(Seal(bin="shed"), days=10)
    dues = await group.dues()
    assert dues["shed", "bury"] == (date(2026, 3, 22), date(2026, 3, 26))
    assert ("shed", "seal") not in dues
    await group.says(Bury(bin="shed", place="under the pear"), days=24)
    assert await group.dues() == {
        ("shed", "cover"): (date(2026, 3, 28), date(2026, 3, 31)),
        ("shed", "plant"): (date(2026, 4, 9), date(2026, 4, 16)),
    }
    await group.says(Layer(mass_kg=1.0, bin="shed"), days=25)
    dues = await group.dues()
    assert dues["shed", "plant"] == (date(2026, 4, 9), date(2026, 4, 16))
    assert dues["shed", "drain"] == (date(2026, 3, 29), date(2026, 3, 30))
    bin = await group.book.bin("shed")
    assert bin
    assert (await look_up(group.book, bin, BEGIN.date())).number == 2


async def test_stages(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    bin = await group.book.bin("shed")
    assert bin
    run = (await look_up(group.book, bin, BEGIN.date())).run
    assert run.stage(date(2026, 3, 2)) == "filling"
    await group.says(Seal(bin="shed"), days=1)
    run = (await look_up(group.book, bin, BEGIN.date())).run
    assert run.stage(date(2026, 3, 12)) == "fermenting"
    assert run.stage(date(2026, 3, 13)) == "ready"
    await group.says(Bury(bin="shed"), days=12)
    assert (await look_up(group.book, bin, BEGIN.date())).run.stage(
        date(2026, 3, 14)
    ) == "in the ground"


async def test_a_layer_on_a_sealed_bin_opens_it_again(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Seal(bin="shed"), days=2)
    answer = await group.says(Layer(mass_kg=1.0, bin="shed"), days=3)
    assert "opens it again" in answer.say
    assert ("shed", "bury") not in await group.dues()


async def test_an_absurd_layer_is_questioned_and_not_written_down(group: Group) -> None:
    answer = await group.says(Layer(mass_kg=2000.0, bin="shed"))
    assert not answer.entries
    assert "Nothing is written down" in answer.say
    assert await group.book.entries() == []


async def test_which_bin_is_asked_only_when_it_could_be_several(group: Group) -> None:
    await group.says(Open(bin="shed", capacity_l=20.0))
    assert "Which" not in (await group.says(Layer(mass_kg=1.0))).say
    await group.says(Open(bin="yard", capacity_l=20.0), who="bram")
    mine = await group.says(Layer(mass_kg=1.0))
    assert mine.entries[0].bin == "shed"
    theirs = await group.says(Layer(mass_kg=1.0), who="bram")
    assert theirs.entries[0].bin == "yard"
    guest = await group.says(Layer(mass_kg=1.0), who="nives")
    assert "Which bin: the shed bin or the yard bin?" in guest.say
    assert guest.entries[0].bin is None


async def test_trouble_raises_the_next_dose(group: Group) -> None:
    plain = await group.says(Ask(topic="dose", mass_kg=2.0, bin="shed"))
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    said = await group.says(Observe(signs=("rotten",), bin="shed"))
    assert "starter" in said.say
    more = await group.says(Ask(topic="dose", mass_kg=2.0, bin="shed"))
    assert more.say != plain.say


async def test_what_a_bin_holds(group: Group) -> None:
    await group.says(Open(bin="yard", capacity_l=20.0, shared=True), who="bram")
    await group.says(Layer(mass_kg=7.0, bin="yard"))
    said = (await group.says(Ask(topic="bin", bin="yard"))).say
    assert "filling" in said
    assert "Kept by bram" in said
    assert "7 kg" in said


async def test_what_is_to_come_is_no_record(group: Group) -> None:
    answer = await group.says(Layer(mass_kg=2.0, bin="shed", on=date(2026, 3, 9)))
    assert not answer.entries
    assert answer.say.startswith("Monday 9 March is still to come, so nothing is written down.")


@pytest.mark.parametrize(
    ("on", "also"),
    [(date(2025, 3, 5), ", and that of 2026 is still to come."), (date(2024, 5, 30), " now. Say")],
)
async def test_a_day_of_last_year_may_be_meant_of_this_one(
    group: Group, on: date, also: str
) -> None:
    answer = await group.says(Seal(bin="shed", on=on))
    assert not answer.entries
    assert also in answer.say


async def test_a_bin_sealed_twice_counts_from_the_first_day(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Seal(bin="shed"), days=1)
    again = await group.says(Seal(bin="shed"), days=3)
    assert "has been sealed since" in again.say
    assert (await group.dues())["shed", "bury"] == (date(2026, 3, 13), date(2026, 3, 17))


async def test_a_seal_after_a_burial_begins_the_next_run(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Seal(bin="shed"), days=1)
    await group.says(Bury(bin="shed"), days=12)
    again = await group.says(Seal(bin="shed"), days=20)
    assert "is sealed. Bury it" in again.say
    assert (await group.dues())["shed", "bury"] == (date(2026, 4, 1), date(2026, 4, 5))


async def test_a_bin_in_trouble_is_looked_into_again(group: Group) -> None:
    # A treated bin is given seven days to turn sour: a South African supplier.
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Observe(bin="shed", signs=("rotten",)), days=1)
    assert (await group.dues())["shed", "check"] == (date(2026, 3, 10), date(2026, 3, 12))
    await group.says(Observe(bin="shed", signs=("sour",)), days=8)
    assert ("shed", "check") not in await group.dues()


async def test_ground_that_was_filled_is_looked_at(group: Group) -> None:
    await group.says(Seal(bin="shed"), days=-14)
    await group.says(Bury(bin="shed"))
    assert (await group.dues())["shed", "cover"] == (date(2026, 3, 4), date(2026, 3, 7))


async def test_a_bin_that_nobody_has_keeps_its_size(group: Group) -> None:
    await group.says(Open(bin="shed", capacity_l=10.0))
    answer = await group.says(Open(bin="shed", capacity_l=1_000_000.0))
    assert "beyond what I reckon with" in answer.say
    assert "Nothing is written down." in answer.say
    bin = await group.book.bin("shed")
    assert bin
    assert (await group.book.about(bin)).capacity_l == 10.0
