"""Blends and what to add to them, against Cornell's worked examples and published ranges."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.blending import (
    HEAP_CN,
    MOISTURE,
    Purpose,
    blend,
    kg_for_cn,
    kg_for_moisture,
)
from handlers.practice.composition import (
    CARBON_OF_FAT,
    CARBON_OF_PROTEIN,
    CONTENT,
    FOODS,
    NITROGEN_MIXED,
    Content,
    blend_of,
    content,
    content_named,
    ratio,
)
from handlers.practice.figure import Refused, number
from handlers.practice.kinds import Shares

# Cornell Composting: percent of the wet mass from moisture and percent of the dry mass.
GRASS = Content(77, 2.4 * 0.23, 45 * 0.23, "Cornell Composting, example", "published")
LEAVES = Content(35, 0.75 * 0.65, 50 * 0.65, "Cornell Composting, example", "published")


def test_mixed_scraps_lie_in_the_published_ranges() -> None:
    # Food waste of San Francisco: 70 to 74 % water (Zhang et al., Bioresource Technology 98, 2007).
    # NRAES-54 Table A.1, as recalled: N 1.9 to 2.9 % of dry mass, C:N 14 to 16.
    made = CONTENT["mixed"]
    assert 70 <= made.water <= 74
    assert 1.9 <= made.nitrogen / (100 - made.water) * 100 <= 2.9
    assert 14 <= made.carbon / made.nitrogen <= 16


def test_what_kitchens_throw_away_holds_about_so_much_nitrogen() -> None:
    # WRAP: meat and fish are 6 % of what UK households waste; the rest in two plausible mixes.
    kitchens: tuple[Shares, ...] = (
        {"vegetable": 0.5, "fruit": 0.25, "grain": 0.15, "meat": 0.06, "dairy": 0.04},
        {"vegetable": 0.4, "fruit": 0.25, "grain": 0.2, "meat": 0.06, "dairy": 0.05, "egg": 0.04},
    )
    for kitchen in kitchens:
        assert content(kitchen).nitrogen == pytest.approx(NITROGEN_MIXED.value, abs=0.15)


def test_carbon_of_protein_and_fat_follows_from_their_formulas() -> None:
    # Atomic masses: IUPAC. Average residue of proteins: Senko, Beu, McLafferty, JASMS 6, 1995.
    carbon, hydrogen, nitrogen, oxygen, sulphur = 12.011, 1.008, 14.007, 15.999, 32.06
    residue = 4.9384 * carbon + 7.7583 * hydrogen + 1.3577 * nitrogen
    residue += 1.4773 * oxygen + 0.0417 * sulphur
    assert 4.9384 * carbon / residue == pytest.approx(CARBON_OF_PROTEIN.value, abs=0.005)
    triolein = 57 * carbon + 104 * hydrogen + 6 * oxygen
    assert 57 * carbon / triolein == pytest.approx(CARBON_OF_FAT.value, abs=0.005)


def test_grass_and_leaves_make_cornells_blend() -> None:
    # Cornell Composting: 10 kg of grass at 77 % and 6.8 kg of leaves at 35 % come to 60 % water.
    made = blend({"grass": 10 / 16.8, "leaves": 6.8 / 16.8})
    assert made.moisture == pytest.approx(0.60, abs=0.001)


@pytest.mark.parametrize(
    ("food", "nitrogen", "carbon", "cn"),
    # From USDA SR28's protein, fat and carbohydrate, by hand.
    [
        ("potato", 0.33, 8.9, 27),
        ("carrot", 0.15, 4.9, 33),
        ("cabbage", 0.20, 3.3, 16),
        ("banana", 0.17, 11.0, 63),
        ("rice", 0.43, 14.1, 33),
        ("bread", 1.42, 29.2, 21),
        ("kidney beans", 1.39, 15.1, 11),
        ("chicken", 4.96, 19.2, 4),
        ("salmon", 4.07, 19.7, 5),
        ("egg", 2.01, 15.3, 8),
        ("cheddar", 3.66, 39.1, 11),
        ("milk", 0.50, 6.3, 13),
        ("wheat bran", 2.49, 40.2, 16),
    ],
)
def test_nitrogen_and_carbon_of_foods(food: str, nitrogen: float, carbon: float, cn: float) -> None:
    made = FOODS[food]
    assert made.nitrogen == pytest.approx(nitrogen, abs=0.006)
    assert made.carbon == pytest.approx(carbon, abs=0.06)
    assert made.carbon / made.nitrogen == pytest.approx(cn, abs=0.6)


def test_a_blend_of_rice_carrot_and_chicken() -> None:
    # 0.4 x 68.44 + 0.4 x 88.29 + 0.2 x 65.26 = 75.74 % water; nitrogen 1.224 %.
    made = blend_of([(0.4, FOODS["rice"]), (0.4, FOODS["carrot"]), (0.2, FOODS["chicken"])])
    assert made.water == pytest.approx(75.74, abs=0.01)
    assert made.nitrogen == pytest.approx(1.224, abs=0.001)


def test_a_blend_of_hay_scraps_and_coffee() -> None:
    # A composting handout: 50 lb of hay, 10 lb of scraps, 2 lb of grounds; 21.5 / 0.62 = 34.7.
    made = blend_of(
        [
            (50, Content(0, 1, 40, "handout", "published")),
            (10, Content(0, 1, 10, "handout", "published")),
            (2, Content(0, 1, 25, "handout", "published")),
        ]
    )
    assert made.carbon / made.nitrogen == pytest.approx(34.7, abs=0.05)


def test_leaves_that_dry_grass_to_a_goal() -> None:
    # Cornell Composting, Calculating Moisture Content: 10 kg at 77 %, leaves at 35 %, goal 60 %.
    assert kg_for_moisture(10, 0.77, 0.35, 0.60) == pytest.approx(6.8)


def test_leaves_that_bring_grass_to_thirty_to_one() -> None:
    # Cornell Composting, C/N Ratio: 3.5 kg of leaves to 10 kg of grass; and back.
    leaves = kg_for_cn(10, GRASS, LEAVES, 30)
    assert leaves == pytest.approx(3.47, abs=0.005)
    made = blend_of([(10, GRASS), (leaves, LEAVES)])
    assert made.carbon / made.nitrogen == pytest.approx(30, abs=0.01)


def test_a_goal_outside_the_two_materials_is_refused() -> None:
    for goal in (0.9, 0.2):
        with pytest.raises(Refused, match="between"):
            kg_for_moisture(10, 0.77, 0.35, goal)
    with pytest.raises(Refused, match="between"):
        kg_for_cn(10, GRASS, LEAVES, 100)
    with pytest.raises(Refused):
        kg_for_moisture(10, 1.2, 0.35, 0.6)


def test_a_blend_of_foods_by_name() -> None:
    # By hand from USDA SR28: 0.4 x 68.44 + 0.4 x 88.29 + 0.2 x 65.26 = 75.74 % water, 1.224 % N.
    found = blend({"rice": 0.4, "carrot": 0.4, "chicken": 0.2})
    assert found.moisture == pytest.approx(0.7574, abs=1e-4)
    assert found.nitrogen_share == pytest.approx(0.01224, abs=1e-5)


def test_juicy_scraps_want_paper_and_dry_ones_water() -> None:
    wet = blend({"vegetable": 1.0}, mass_kg=5)
    (paper,) = wet.add
    dried = blend_of([(5, CONTENT["vegetable"]), (paper.kg, CONTENT["paper"])])
    assert dried.water / 100 == pytest.approx(MOISTURE.high)
    assert "very wet" in wet.lines[-1]
    (water,) = blend({"grain": 1.0}, mass_kg=5).add
    assert water.what == "water"
    assert blend(None).add == ()
    assert "right for a sealed bin" in blend(None).lines[-1]


def test_a_goal_takes_the_place_of_the_range() -> None:
    (paper,) = blend({"vegetable": 1.0}, mass_kg=10, goal=0.8).add
    dried = blend_of([(10, CONTENT["vegetable"]), (paper.kg, CONTENT["paper"])])
    assert dried.water == pytest.approx(80)


def test_rich_scraps_want_carbon_and_poor_ones_nitrogen_for_a_heap() -> None:
    # LSU AgCenter 3838-D, from NRAES-54: 20 to 40 is reasonable, 25 to 30 preferred.
    assert (HEAP_CN.low, HEAP_CN.high) == (20, 40)
    rich = blend({"meat": 0.5, "mixed": 0.5}, mass_kg=10, purpose="carbon")
    (paper,) = rich.add
    meaty = blend_of([(5, CONTENT["meat"]), (5, CONTENT["mixed"]), (paper.kg, CONTENT["paper"])])
    assert ratio(meaty) == pytest.approx(25)
    (green,) = blend({"paper": 1.0}, mass_kg=1, purpose="carbon").add
    assert "coffee" in green.what
    assert blend({"vegetable": 0.5, "fruit": 0.5}, purpose="carbon").add == ()


def test_a_carbon_goal_that_is_met_asks_for_nothing() -> None:
    own = blend({"grain": 1.0}).cn
    assert blend({"grain": 1.0}, purpose="carbon", goal=own).add == ()
    with pytest.raises(Refused, match="suits a heap"):
        blend({"grain": 1.0}, purpose="carbon", goal=1)


def test_oil_without_nitrogen_has_no_ratio() -> None:
    assert FOODS["olive oil"].nitrogen == 0
    found = blend({"olive oil": 1.0}, purpose="carbon", mass_kg=1)
    assert found.cn is None
    assert "cn" not in found.results()
    assert found.lines[0].endswith("no nitrogen, so no C:N.")


def test_names_of_foods_and_kinds() -> None:
    assert content_named("olive_oil") == FOODS["olive oil"]
    assert content_named("fish") == CONTENT["fish"]
    assert content_named("granite") is None
    with pytest.raises(Refused, match="granite"):
        blend({"granite": 1.0})
    with pytest.raises(Refused):
        blend(None, mass_kg=0)


@given(st.sampled_from(sorted(FOODS)), st.sampled_from(sorted(FOODS)), st.floats(0.01, 0.99))
def test_water_nitrogen_and_carbon_balance(one: str, other: str, share: float) -> None:
    if one == other:
        return
    found = blend({one: share, other: 1 - share})
    for own, name in ((found.moisture, "water"), (found.nitrogen_share, "nitrogen")):
        by_hand = share * getattr(FOODS[one], name) + (1 - share) * getattr(FOODS[other], name)
        assert own == pytest.approx(by_hand / 100, rel=1e-9)


@pytest.mark.parametrize(
    ("parts", "purpose", "line"),
    [
        ({"fish": 1.0}, "carbon", "torn paper or cardboard: "),
        ({"vegetable": 1.0}, "moisture", "torn paper, "),
        ({"grain": 1.0}, "moisture", "water, 100 % water: "),
    ],
)
def test_what_is_to_be_added_stands_in_the_working(
    parts: dict[str, float], purpose: Purpose, line: str
) -> None:
    found = blend(parts, mass_kg=3.0, purpose=purpose)
    (added,) = found.add
    steps = [step for step in found.steps if step.startswith(line)]
    assert steps
    assert any(step.endswith(f"= {number(added.kg)} kg") for step in found.steps)


def test_what_is_right_has_no_working_of_more() -> None:
    assert not any(" kg x " in step for step in blend({"mixed": 1.0}).steps)
