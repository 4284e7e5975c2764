"""How to thin the liquid: amounts by the ratios that are published or usual."""

import re
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.asked.dilution import measured
from handlers.reading.acts import Ask
from storage.rows import Units
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


# The imperial pint is 568.26 mL (UK Weights and Measures Act 1985), the US one 473.18 mL (NIST
# HB 44); British and metric teaspoons hold 5 mL (BS 1348).
@pytest.mark.parametrize(
    ("units", "water_l", "use", "begins", "more"),
    [
        ("imperial", 0.56826125, "seedlings", "0.57 mL of liquid in 1 pint", "into 1⅛ gallons and"),
        ("us", 0.473176473, "seedlings", "0.47 mL of liquid in 2 cups", "into 1⅜ gallons and"),
        ("metric", 0.25, "pots", "0.5 mL of liquid in 250 mL", "into 2.5 L and use 250 mL"),
        ("us", 0.946352946, "pots", "1.9 mL of liquid in 1 quart", "into 2¾ quarts and"),
        ("metric", 2.0, "pots", "4 mL of liquid in 2 L", ""),
        ("imperial", 4.54609, "pots", "1¾ teaspoons (9.1 mL) of liquid in 1 gallon", ""),
        ("imperial", 9.09218, "pots", "1¼ tablespoons (18 mL) of liquid in 2 gallons", ""),
    ],
)
async def test_little_liquid_is_told_as_it_can_be_measured(
    group: Group, units: Units, water_l: float, use: str, begins: str, more: str
) -> None:
    group.book.room = replace(group.book.room, units=units)
    said = (await group.says(Ask(topic="dilution", water_l=water_l, use=use))).say
    assert said.startswith(begins)
    assert ("too little to measure" in said) == bool(more)
    assert more in said


@given(millilitres=st.floats(0.01, 20_000), units=st.sampled_from(["us", "imperial", "metric"]))
def test_what_is_measured_is_near_what_was_meant(millilitres: float, units: Units) -> None:
    words = measured(millilitres / 1000, units)
    if in_ml := re.search(r"([\d.]+) mL", words):
        assert float(in_ml[1]) == pytest.approx(millilitres, rel=0.05)
    if spoons := re.match(r"(\d*)([¼½¾]?) (tea|table)spoon", words):
        count = float(spoons[1] or 0) + {"": 0, "¼": 0.25, "½": 0.5, "¾": 0.75}[spoons[2]]
        spoon_ml = 14.787 if units == "us" else 15  # NIST HB 44; BS 1348
        in_spoons = count * spoon_ml / (3 if spoons[3] == "tea" else 1)
        assert in_spoons == pytest.approx(millilitres, rel=0.21)


@pytest.mark.parametrize(
    ("ask", "begins"),
    [
        (Ask(topic="dilution", use="lettuce"), "No, not on what is eaten raw"),
        (Ask(topic="dilution", use="parsley"), "No, not on what is eaten raw"),
        (Ask(topic="dilution", use="salad", water_l=9.0), "Not on what is eaten raw"),
        (Ask(topic="dilution", use="lettuce", parts=0.0), "Never undiluted"),
        (Ask(topic="dilution", use="tomatoes"), "100 mL"),
    ],
)
async def test_nothing_of_it_goes_on_what_is_eaten_raw(group: Group, ask: Ask, begins: str) -> None:
    assert (await group.says(ask)).say.startswith(begins)


async def test_much_liquid_is_told_in_the_measures_of_the_kitchen(group: Group) -> None:
    group.book.room = replace(group.book.room, units="imperial")
    ask = Ask(topic="dilution", liquid_l=0.56826125)
    assert (await group.says(ask)).say.startswith("1 pint of liquid in 12½ gallons")


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


async def test_cans_and_spoons_are_counted_as_people_do(group: Group) -> None:
    said = (await group.says(Ask(topic="dilution", liquid_l=0.1))).say
    assert "enough for about 1 watering can of" in said
    said = (await group.says(Ask(topic="dilution", liquid_l=0.005, water_l=1.0))).say
    assert "about 2 teaspoons" in said
