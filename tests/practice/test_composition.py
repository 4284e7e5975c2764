"""Moisture, nitrogen and C:N against USDA rows and Cornell's worked examples."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.composition import (
    CONTENT,
    FOODS,
    Content,
    blend_of,
    content,
    ratio,
)
from handlers.practice.kinds import KINDS, Kind

# Cornell Composting: percent of the wet mass from moisture and percent of the dry mass.
GRASS = Content(77, 2.4 * 0.23, 45 * 0.23, "Cornell Composting, example", "published")
LEAVES = Content(35, 0.75 * 0.65, 50 * 0.65, "Cornell Composting, example", "published")


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


def test_mixed_scraps_lie_in_the_published_ranges() -> None:
    # NRAES-54 Table A.1, food waste: 69 % water, N 1.9 to 2.9 % of dry mass, C:N 14 to 16.
    made = CONTENT["mixed"]
    assert 1.9 <= made.nitrogen / (100 - made.water) * 100 <= 2.9
    assert 14 <= made.carbon / made.nitrogen <= 16


@pytest.mark.parametrize(
    ("kind", "least", "most"),
    # Tables of composting handouts: vegetable scraps 25:1, fruit 35:1, grounds 20:1.
    [("vegetable", 15, 30), ("fruit", 35, 70), ("coffee", 20, 25)],
)
def test_kinds_are_near_the_tables_in_circulation(kind: Kind, least: float, most: float) -> None:
    made = CONTENT[kind]
    assert least <= made.carbon / made.nitrogen <= most


def test_a_blend_tells_moisture_and_paper() -> None:
    found = blend({"vegetable": 1.0}, mass_kg=5, goal=0.8)
    assert found.paper_kg is not None
    dried = blend_of([(5, CONTENT["vegetable"]), (found.paper_kg, CONTENT["paper"])])
    assert dried.water == pytest.approx(80)
    assert blend({"paper": 1.0}, goal=0.8).paper_kg == 0
    assert blend(None).paper_kg is None
    assert "very wet" in blend({"vegetable": 1.0}).lines[-1]


def test_pure_oil_without_butter_has_no_ratio() -> None:
    made = FOODS["olive oil"]
    assert made.nitrogen == 0
    with pytest.raises(Refused):
        kg_for_cn(1, made, FOODS["rice"], 20)


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_is_made_of_something(kind: Kind) -> None:
    made = CONTENT[kind]
    assert 0 <= made.water <= 100
    assert 0 <= made.nitrogen <= 10
    assert made.water + made.carbon <= 100


@given(st.sampled_from(KINDS), st.floats(0, 1), st.floats(0, 1))
def test_more_meat_is_more_nitrogen(kind: Kind, one: float, other: float) -> None:
    less, more = sorted((one, other))
    if kind == "meat":
        return
    poorer = nitrogen_percent({"meat": less, kind: 1 - less})
    assert poorer <= nitrogen_percent({"meat": more, kind: 1 - more}) + 1e-9


@given(st.sampled_from(KINDS), st.sampled_from(KINDS), st.floats(0.01, 0.99))
def test_a_blend_lies_between_its_kinds(one: Kind, other: Kind, share: float) -> None:
    if one == other:
        return
    low, high = sorted((CONTENT[one].water, CONTENT[other].water))
    assert low - 1e-9 <= content({one: share, other: 1 - share}).water <= high + 1e-9
