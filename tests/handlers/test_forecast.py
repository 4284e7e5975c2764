"""When a bin is full and how many bins are wanted; days counted on a calendar."""

from datetime import date, timedelta

import pytest

from handlers.practice.outlook import full_forecast
from handlers.reading.acts import Ask, Layer, Open, Seal
from tests.group import BEGIN, Group


async def feed(group: Group, bin: str, kg: float, days: int, *, who: str = "ines") -> None:
    for n in range(days):
        await group.says(Layer(bin=bin, mass_kg=kg), who=who, days=n)


async def test_a_bin_is_full_when_its_layers_say(group: Group) -> None:
    # 20 L at 0.70 kg/L, settled by 15 %, hold 16.5 kg: 1 kg a day for twelve days leaves 4.5 kg,
    # five days more, or six, since the usual household throws away half as much.
    await group.says(Open(bin="shed", capacity_l=20.0))
    await feed(group, "shed", 1.0, 12)
    answer = await group.says(Ask(topic="full", bin="shed"), days=11)
    assert answer.say.startswith("The shed bin will be full about Thursday 19 March")
    assert "four times in five between" in answer.say
    assert any("4.47 kg are left" in line for line in answer.why)
    # Two weeks of filling end on the 16th.
    assert "Seal it by Monday 16 March all the same" in answer.say


async def test_a_bin_of_unknown_size_is_asked_about(group: Group) -> None:
    await group.says(Layer(bin="shed", mass_kg=1.0))
    assert "How big is the shed bin?" in (await group.says(Ask(topic="full"))).say


async def test_a_sealed_bin_fills_no_more(group: Group) -> None:
    await group.says(Open(bin="shed", capacity_l=20.0))
    await group.says(Layer(bin="shed", mass_kg=1.0))
    await group.says(Seal(bin="shed"), days=1)
    said = (await group.says(Ask(topic="full", bin="shed"), days=2)).say
    assert said == "The shed bin is fermenting, so nothing more goes in."


async def test_a_full_bin_is_to_be_sealed(group: Group) -> None:
    await group.says(Open(bin="shed", capacity_l=20.0))
    await group.says(Layer(bin="shed", mass_kg=16.4))
    await group.says(Layer(bin="shed", mass_kg=2.0))
    said = (await group.says(Ask(topic="full", bin="shed"))).say
    assert said.startswith("By what was logged the shed bin is full")


async def test_a_bin_that_is_not_there_or_not_clear_is_asked_about(group: Group) -> None:
    assert "No bin is open yet" in (await group.says(Ask(topic="full"))).say
    await group.says(Open(bin="shed", capacity_l=20.0))
    await group.says(Open(bin="yard", capacity_l=20.0))
    assert "no bin called “attic”" in (await group.says(Ask(topic="full", bin="attic"))).say
    said = (await group.says(Ask(topic="full"), who="bram")).say
    assert said == "Which bin: the shed bin or the yard bin?"


async def test_each_of_several_members_counts_for_a_household(group: Group) -> None:
    # UNEP 2024: 1.5 kg a person and week; two households of 2.5 are five people.
    await group.says(Open(bin="shed", capacity_l=60.0))
    await group.says(Layer(bin="shed", mass_kg=1.0), who="ines")
    await group.says(Layer(bin="shed", mass_kg=1.0), who="bram")
    on = BEGIN.date()
    five = full_forecast([(on, 2.0)], 60.0, on, people=5)
    why = (await group.says(Ask(topic="full", bin="shed"))).why
    assert set(five.steps) <= set(why)


@pytest.mark.parametrize(
    ("ask", "begins"),
    [
        # (fill + ferment) / fill, rounded up; 20 L hold 14 kg before they settle.
        (Ask(topic="bins", week_kg=5.0), "2 bins of 20 L for 5 kg a week"),
        (Ask(topic="bins", week_kg=19.0), "4 bins of 20 L for 19 kg a week"),
        (Ask(topic="bins", days=7.0), "3 bins of 20 L: one fills in about 7 days"),
        (Ask(topic="bins", days=3.0), "6 bins of 20 L"),
        # UNEP 2024: four people come to 6 kg a week, 12 L hold 8.4 kg.
        (Ask(topic="bins", people=4.0, capacity_l=12.0), "3 bins of 12 L for 6 kg a week"),
        # Nine households of three are 27 people, 40.5 kg a week; three weeks sealed.
        (Ask(topic="bins", people=27.0), "7 bins of 20 L for 40.5 kg a week"),
        (Ask(topic="bins", week_kg=5.0, ferment_days=21), "3 bins of 20 L for 5 kg a week"),
        # EPA 2016: 3.8 lb to the US gallon, 0.455 kg/L.
        (Ask(topic="bins", volume_l=20.0), "3 bins of 20 L for 9.1 kg a week"),
    ],
)
async def test_bins_by_the_figures_that_were_said(group: Group, ask: Ask, begins: str) -> None:
    answer = await group.says(ask)
    assert answer.say.startswith(begins)
    assert any("Footer 2013" in line for line in answer.why)


async def test_bins_by_what_the_group_logged_and_has(group: Group) -> None:
    await group.says(Open(bin="shed", capacity_l=30.0))
    await feed(group, "shed", 1.0, 14)
    answer = await group.says(Ask(topic="bins"), days=13)
    # A kilo a day is 7 kg a week; 30 L hold 21 kg, so that one fills in 21 days.
    assert answer.say.startswith("2 bins of 30 L for 7 kg a week: one fills in about 21 days")
    assert any("14 layers of 14 kg" in line for line in answer.why)


async def test_a_log_shorter_than_a_week_is_drawn_to_the_usual(group: Group) -> None:
    await feed(group, "shed", 3.0, 2)
    # Three kilos a day would be 21 kg a week; a household's 2.5 people throw away 3.75 kg of it
    # (UNEP 2024: 79 kg a person and year).
    [step, *_] = (await group.says(Ask(topic="bins"), days=1)).why
    assert "2 layers of one household" in step
    assert 3.75 < float(step.split(" come to ")[1].split()[0]) < 15


async def test_large_layers_of_several_days_apart_are_what_was_logged(group: Group) -> None:
    await group.says(Open(bin="yard", capacity_l=60.0))
    for days in (0, 4, 9, 14):
        await group.says(Layer(bin="yard", mass_kg=9.0), days=days)
    said = (await group.says(Ask(topic="bins"), days=14)).say
    # 9 kg every 14 / 3 days are 13.5 kg a week, 36 kg in those 15 days alone 16.8.
    assert said.startswith("2 bins of 60 L")
    assert 13.5 < float(said.split(" for ")[1].split()[0]) < 16.8


async def test_nonsense_is_refused(group: Group) -> None:
    assert "cannot be nought" in (await group.says(Ask(topic="bins", days=0.0))).say
    assert "larger bins" in (await group.says(Ask(topic="bins", week_kg=90000.0))).say


async def test_the_calendar_seals_when_the_forecast_says(group: Group) -> None:
    await group.says(Open(bin="shed", capacity_l=10.0))
    await feed(group, "shed", 1.5, 4)
    first, last = (await group.dues())["shed", "seal"]
    assert BEGIN.date() < first < last <= BEGIN.date() + timedelta(days=14)
    assert isinstance(first, date)


async def test_what_went_in_leaves_less_room(group: Group) -> None:
    async def left() -> float:
        said = (await group.says(Ask(topic="full", what="room", bin="yard"))).say
        return float(said.removeprefix("About ").split()[0])

    await group.says(Open(bin="yard", capacity_l=18.0))
    before = await left()
    await group.says(Layer(bin="yard", mass_kg=3.0, materials={"meat": 1.0}, rich=1.0))
    # 3 kg at no more than 1 kg/L take 2.5 L or more, in which 2 kg of mixed scraps would lie.
    assert await left() <= before - 2


@pytest.mark.parametrize(
    ("ask", "words"),
    [
        # A community garden's pressed pails come to 0.72 kg/L; Waters et al. 1993 let one person
        # lift 15 kg: 60 L x 0.7 = 42 kg, and settled by 15 % 49 kg; 12 L hold 8.4 to 9.9 kg.
        (Ask(topic="full", what="weight", bin="yard"), "about 42 kg of scraps, up to 49 kg"),
        (Ask(topic="full", what="weight", capacity_l=12.0), "about 8.4 kg of scraps, up to 9.9 kg"),
        (Ask(topic="full", what="weight", bin="shed"), "How big is the shed bin?"),
    ],
)
async def test_how_heavy_a_full_bin_is(group: Group, ask: Ask, words: str) -> None:
    await group.says(Open(bin="yard", capacity_l=60.0))
    await group.says(Open(bin="shed"))
    said = (await group.says(ask)).say
    assert words in said
    assert ("on a trolley" in said) == (ask.bin == "yard")
