"""Dressings of beds against published nitrogen limits, worked out by hand."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.bed import FREE, GARDEN_NEED, LIMIT, SOIL_DENSITY, bed
from handlers.practice.figure import Refused
from handlers.practice.kinds import KINDS, Kind
from handlers.practice.units import KILOGRAMS, SQUARE_METRES

BED_M2 = 32 * SQUARE_METRES["square_foot"]


def test_the_usual_dressing_of_a_bed_of_four_by_eight_feet() -> None:
    # 5 kg at 0.7 % are 35 g of nitrogen on 2.9729 m²: 117.7 kg/ha, under 170 (91/676/EEC).
    found = bed(BED_M2)
    assert found.mass_kg == pytest.approx(5.0)
    assert found.nitrogen_g == pytest.approx(35.0)
    assert found.nitrogen_kg_ha == pytest.approx(117.7, abs=0.05)
    assert found.used_share == pytest.approx(117.73 / 170, abs=0.001)
    assert found.limit_kg_ha == 170


def test_the_most_that_the_limit_lets_it_take() -> None:
    # 170 kg/ha on 2.9729 m² are 50.54 g, in 7.22 kg at 0.7 %.
    assert bed(BED_M2).most_kg == pytest.approx(7.22, abs=0.005)


def test_five_kilograms_are_under_a_hundredth_of_the_topsoil() -> None:
    # 16 ft³ of soil at 1330 kg/m³ weigh 602.6 kg; 5 kg are 0.83 % (with 15 cm for 6 in, 0.84 %).
    assert bed(BED_M2, depth_m=0.1524).soil_share == pytest.approx(0.0083, abs=0.00005)


def test_soil_density_is_that_of_the_acre_furrow_slice() -> None:
    # 2 000 000 lb on an acre, 6 2/3 in deep: 1323.8 kg/m³ (US soil science convention).
    slice_m3 = SQUARE_METRES["acre"] * 20 / 3 * 0.0254
    assert SOIL_DENSITY.value == pytest.approx(2e6 * KILOGRAMS["pound"] / slice_m3, rel=0.01)


def test_what_a_garden_needs_in_pounds_and_in_kilograms() -> None:
    # Colorado State GardenNotes 711: 2 lb to 1000 ft² a year; 97.65 kg/ha.
    assert GARDEN_NEED.value == pytest.approx(97.65, abs=0.05)
    # 170 kg/ha are 3.482 lb to 1000 ft².
    pounds = LIMIT.value / 10000 * 1000 * SQUARE_METRES["square_foot"] / KILOGRAMS["pound"]
    assert pounds == pytest.approx(3.482, abs=0.001)


def test_what_a_bed_had_this_year_counts() -> None:
    # 50.54 g of nitrogen less the 28 g of 4 kg leave 3.22 kg; 1 kg before leaves the usual 5.
    found = bed(BED_M2, had_kg=4)
    assert found.mass_kg == pytest.approx(found.most_kg) == pytest.approx(3.22, abs=0.01)
    assert found.nitrogen_g == pytest.approx(50.54, abs=0.01)
    assert found.used_share == pytest.approx(1)
    assert bed(BED_M2, had_kg=1).mass_kg == pytest.approx(5)
    full = bed(BED_M2, had_kg=10)
    assert full.mass_kg == 0
    assert "enough for the year" in full.lines[0]


def test_meat_is_given_thinner() -> None:
    found = bed(BED_M2, materials={"meat": 1.0})
    assert found.mass_kg == pytest.approx(found.most_kg)
    assert found.mass_kg < 2
    assert found.used_share == pytest.approx(1.0)


def test_too_much_is_told() -> None:
    assert "at most 7.2 kg" in bed(BED_M2, mass_kg=12).lines[1]
    assert not any("too much" in line for line in bed(BED_M2, mass_kg=7).lines)


def test_a_group_may_take_the_other_limit() -> None:
    # UK nitrate zones: 250 kg N/ha of all organic manures, 74.32 g and 10.62 kg on this bed.
    found = bed(BED_M2, limit_kg_ha=250)
    assert found.most_kg == pytest.approx(10.62, abs=0.005)
    assert (found.limit_kg_ha, found.field_limit_kg_ha) == (250, 250)
    assert bed(BED_M2).field_limit_kg_ha == 250
    with pytest.raises(Refused, match="published"):
        bed(BED_M2, limit_kg_ha=0)


def test_planting_waits_two_to_three_weeks() -> None:
    # A New York booklet: two weeks; a UK master composter: two to three.
    assert "14 to 21 days" in bed(BED_M2).lines[-1]
    assert bed(BED_M2).wait_days == 21


def test_within_the_limit_no_more_is_free_than_vegetables_need() -> None:
    assert LIMIT.value * FREE.value < GARDEN_NEED.value


@pytest.mark.parametrize("area", [0.0, -3.0, 1e9, float("nan")])
def test_no_bed_has_that_area(area: float) -> None:
    with pytest.raises(Refused, match="4x8ft"):
        bed(area)


def test_masses_and_depths_are_bounded() -> None:
    with pytest.raises(Refused, match="more ferment than"):
        bed(1, mass_kg=500)
    for wrong in (
        {"mass_kg": -1.0},
        {"mass_kg": 0.0},
        {"had_kg": -1.0},
        {"depth_m": 0.0},
        {"depth_m": 3.0},
    ):
        with pytest.raises(Refused):
            bed(
                3,
                mass_kg=wrong.get("mass_kg"),
                had_kg=wrong.get("had_kg", 0.0),
                depth_m=wrong.get("depth_m"),
            )


@given(st.floats(1, 1000), st.floats(0, 50), st.sampled_from(KINDS))
def test_what_is_advised_is_never_over_the_limit(area: float, had: float, kind: Kind) -> None:
    found = bed(area, had_kg=had, materials={kind: 1.0})
    assert found.mass_kg <= found.most_kg + 1e-9
    if found.mass_kg > 0:
        assert found.used_share <= 1 + 1e-9


@given(st.floats(1, 1000), st.floats(0.1, 100))
def test_a_load_is_grams_to_the_area(area: float, mass: float) -> None:
    found = bed(area, mass_kg=mass)
    assert found.nitrogen_kg_ha == pytest.approx(found.nitrogen_g / 1000 / area * 10000)


def test_nitrogen_of_another_make_up_counts_too() -> None:
    # 50.54 g are the limit on 4 by 8 ft; 35 g of them leave 15.54 g, 2.22 kg at 0.7 %.
    found = bed(BED_M2, had_nitrogen_g=35)
    assert found.mass_kg == pytest.approx(2.22, abs=0.005)
    assert found.most_kg == bed(BED_M2, had_kg=5).most_kg
    assert bed(BED_M2, had_nitrogen_g=135).mass_kg == 0
    assert any("35 g that it had" in step for step in found.steps)


def test_the_depth_that_was_asked_about_is_told() -> None:
    assert "worked into the top 30 cm" in bed(BED_M2, depth_m=0.3).lines[0]
