"""Moisture, C:N and liquid of what was logged; contents from USDA SR28, by hand."""

from dataclasses import replace

import pytest

from handlers.practice.kinds import Shares
from handlers.reading.acts import Ask, Drain, Layer, Open
from tests.group import Group


async def layer(group: Group, kg: float, materials: Shares | None) -> None:
    await group.says(Open(bin="shed", capacity_l=20.0))
    await group.says(Layer(bin="shed", mass_kg=kg, materials=materials))


@pytest.mark.parametrize(
    ("materials", "words"),
    [
        # Rice, pasta and bread hold 55.7 % on average, potato peel to celery 91.2 %.
        ({"grain": 1.0}, "is dry, about 56 % water: mix in juicy scraps, or sprinkle up to"),
        ({"vegetable": 1.0}, "is wet, about 91 % water: add 390 g of torn paper"),
        ({"grain": 0.5, "vegetable": 0.5}, "holds about 73 % water: 60 to 85 % is right"),
    ],
)
async def test_how_wet_a_bin_is(group: Group, materials: Shares, words: str) -> None:
    await layer(group, 5.0, materials)
    answer = await group.says(Ask(topic="moisture"))
    assert answer.say.startswith(f"By what was logged the shed bin {words}")
    assert any("USDA SR28" in line for line in answer.why)


async def test_the_carbon_of_a_bin(group: Group) -> None:
    # Chicken, beef and pork: 22.7 % carbon to 4.49 % nitrogen.
    await layer(group, 3.0, {"meat": 1.0})
    answer = await group.says(Ask(topic="carbon", bin="shed"))
    assert "a C:N of about 5.1 to 1" in answer.say
    assert "not for a sealed bin" in answer.say
    assert "mix in 4.7 kg of torn paper or cardboard" in answer.say
    assert any("LSU AgCenter" in line for line in answer.why)


async def test_scraps_that_are_named_need_no_bin(group: Group) -> None:
    said = (await group.says(Ask(topic="moisture", materials={"vegetable": 1.0}))).say
    assert said.startswith(
        "Such a mix is wet, about 91 % water: add 78 g of torn paper to each kilo"
    )
    group.book.room = replace(group.book.room, units="us")
    said = (await group.says(Ask(topic="moisture", materials={"vegetable": 1.0}))).say
    assert "35 g of torn paper to each pound" in said


async def test_without_layers_there_is_nothing_to_say(group: Group) -> None:
    assert "No bin is open yet" in (await group.says(Ask(topic="carbon"))).say
    await group.says(Open(bin="shed", capacity_l=20.0))
    assert "Nothing was logged" in (await group.says(Ask(topic="moisture"))).say
    assert "Log the layers" in (await group.says(Ask(topic="liquid"))).say


@pytest.mark.parametrize(
    ("drained_l", "words"),
    [
        # 10 kg of vegetables at 91.2 %: 1 L x (0.912 - 0.60) / 0.40 = 0.78 L.
        (3.0, "that is much"),
        (0.5, "what came off is as usual"),
        (0.1, "that is less than such scraps give"),
    ],
)
async def test_liquid_is_held_against_what_came_off(
    group: Group, drained_l: float, words: str
) -> None:
    await layer(group, 10.0, {"vegetable": 1.0})
    before = (await group.says(Ask(topic="liquid"))).say
    assert before.startswith("The shed bin may give about 780 mL in all; from none to 1 L")
    await group.says(Drain(bin="shed", volume_l=drained_l), days=3)
    answer = await group.says(Ask(topic="liquid"), days=3)
    assert words in answer.say
    assert "bleach" in answer.say
    assert any("100 mL to 1 kg" in line for line in answer.why)


async def test_an_amount_that_was_said_is_the_one_meant(group: Group) -> None:
    await layer(group, 10.0, {"vegetable": 1.0})
    said = (await group.says(Ask(topic="liquid", bin="shed", volume_l=2.0))).say
    assert "2 L came off so far: that is much" in said
    group.book.room = replace(group.book.room, units="us")
    assert "gallon" in (await group.says(Ask(topic="liquid", volume_l=8.0))).say


async def test_one_food_has_its_own_water(group: Group) -> None:
    # USDA SR28 20045, cooked white rice: 68.44 % water; bread (18069) has 36 %.
    rice = Ask(topic="moisture", materials={"grain": 1.0}, what="rice")
    assert "Rice holds about 68 % water" in (await group.says(rice)).say
