"""How to thin the liquid: amounts by the ratios that are published or usual."""

from dataclasses import replace

import pytest

from handlers.reading.acts import Ask
from tests.group import Group


@pytest.mark.parametrize(
    ("ask", "begins"),
    [
        # Footer 2013 ch. 8: 100 to 1 on soil; pots and seedlings get less (common practice).
        (Ask(topic="dilution", water_l=9.0), "90 mL of liquid in 9 L of water"),
        (Ask(topic="dilution", liquid_l=0.5), "500 mL of liquid in 50 L of water"),
        (Ask(topic="dilution"), "100 mL of liquid in 10 L of water"),
        (Ask(topic="dilution", water_l=5.0, use="seedlings"), "5 mL of liquid in 5 L"),
        (Ask(topic="dilution", water_l=9.0, parts=300.0), "30 mL of liquid in 9 L"),
        (Ask(topic="dilution", use="drain"), "Down the drain it goes undiluted"),
    ],
)
async def test_the_mix_comes_first(group: Group, ask: Ask, begins: str) -> None:
    said = (await group.says(ask)).say
    assert said.startswith(begins)
    assert "bleach" in said
    assert len(said.split("\n")) <= 3


async def test_a_spoon_to_the_gallon_is_told_kindly(group: Group) -> None:
    group.book.room = replace(group.book.room, units="us")
    # NIST HB 44: 1 US tablespoon is 14.787 mL, a US gallon 3.785412 L: 1:256.
    ask = Ask(topic="dilution", liquid_l=0.01478676, water_l=3.785411784)
    said = (await group.says(ask)).say
    assert said.startswith(
        "1 tablespoon (15 mL) of liquid in 1 gallon of water: 1 part liquid to 256"
    )
    assert "about 2½ US tablespoons" in said
    claimed = Ask(topic="dilution", liquid_l=0.01478676, water_l=3.785411784, parts=100.0)
    assert "often called 1:100, but it is 1:256" in (await group.says(claimed)).say


async def test_an_american_can_is_two_gallons(group: Group) -> None:
    group.book.room = replace(group.book.room, units="us")
    # 2 US gal / 100 are 5.12 tablespoons.
    assert (await group.says(Ask(topic="dilution"))).say.startswith("5 tablespoons (76 mL)")


async def test_a_use_that_is_none_is_answered_with_those_there_are(group: Group) -> None:
    said = (await group.says(Ask(topic="dilution", use="the cat"))).say
    assert "For beds it is 1 part to 100" in said


async def test_nonsense_is_refused(group: Group) -> None:
    assert "cannot be" in (await group.says(Ask(topic="dilution", water_l=-5.0))).say
    neat = await group.says(Ask(topic="dilution", liquid_l=0.5, water_l=0.0))
    assert "undiluted it is for drains only" in neat.say
    neat = await group.says(Ask(topic="dilution", liquid_l=0.5, parts=0.0))
    assert neat.say.startswith("Never undiluted on plants")
