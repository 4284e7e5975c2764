"""Trenches and tubs against a published trench and against plain geometry."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.figure import Refused
from handlers.practice.trench import COVER_ANIMALS, DEPTH_ANIMALS, ferment, trench, tub
from handlers.practice.units import LITRES, METRES

PAIL_L = 5 * LITRES["us_gallon"]
INCH = METRES["inch"]


def test_a_pail_wants_about_the_trench_that_the_book_digs() -> None:
    # Footer 2013 ch. 7: 12 in deep, one shovel (8 in) wide, twice the height of the bucket, 30 in;
    # 47.2 L of soil, 1.5 parts to one of ferment, where we want 2.
    book_m = 30 * INCH
    found = trench(PAIL_L, width_m=8 * INCH)
    assert found.length_m == pytest.approx(book_m, rel=0.05)
    same_depth = trench(PAIL_L, width_m=8 * INCH, depth_m=12 * INCH)
    assert 0.6 * book_m < same_depth.length_m < book_m


@pytest.mark.parametrize(("fill_in", "length_in"), [(4, 36.1), (6, 24.1)])
def test_so_many_inches_of_fill_take_so_long_a_trench(fill_in: float, length_in: float) -> None:
    # 5 US gal are 1155 in³: 1155 / (8 x 4) = 36.1 in.
    fill_m = fill_in * INCH
    found = trench(PAIL_L, width_m=8 * INCH, depth_m=2 * fill_m, cover_m=fill_m)
    assert found.mound_m == pytest.approx(fill_in * INCH)
    assert found.length_m == pytest.approx(length_in * INCH, rel=0.002)


def test_one_part_to_two_parts_soil() -> None:
    # 18.93 L of ferment and 37.85 L of soil make 56.8 L.
    found = trench(PAIL_L)
    assert found.soil_l == pytest.approx(37.85, abs=0.01)
    assert found.mix_l == pytest.approx(56.8, abs=0.05)
    assert found.stirred_l == pytest.approx(PAIL_L)


def test_where_animals_dig_it_is_deeper_and_better_covered() -> None:
    # A supplier: 12 in of cover against animals.
    found = trench(PAIL_L, animals=True)
    assert found.depth_m == DEPTH_ANIMALS.value
    assert found.cover_m >= COVER_ANIMALS.value - 1e-9
    assert COVER_ANIMALS.value == pytest.approx(12 * INCH, abs=0.01)


def test_a_wanted_cover_is_kept() -> None:
    assert trench(PAIL_L, cover_m=0.3).cover_m >= 0.3
    assert trench(PAIL_L, cover_m=0.2, depth_m=0.25).cover_m == pytest.approx(0.2)


@pytest.mark.parametrize(
    ("mass_kg", "volume_l", "bins", "litres"),
    # Pressed to 0.70 kg/L and settled by 15 %: 0.82 kg/L, under the 0.9 of a drained, packed pail.
    [(14.0, None, 1, 17.0), (14.0, None, 3, 51.0), (None, 19.0, 2, 38.0)],
)
def test_ferment_of_several_bins(
    mass_kg: float | None, volume_l: float | None, bins: float, litres: float
) -> None:
    assert ferment(mass_kg=mass_kg, volume_l=volume_l, bins=bins).litres == pytest.approx(litres)


def test_a_tub_takes_ferment_soil_and_cover() -> None:
    # Two parts of soil to one; a flat dweller and a Canadian supplier wait 2 to 6 weeks.
    found = tub(10)
    assert (found.soil_l, found.mix_l) == (20, 30)
    assert found.tub_l == pytest.approx(found.mix_l + found.cover_l)
    assert 14 <= found.ready_days <= 42


def test_what_cannot_be_dug_is_refused() -> None:
    for depth in (0.05, 2.0):
        with pytest.raises(Refused):
            trench(PAIL_L, depth_m=depth)
    with pytest.raises(Refused, match="dig deeper"):
        trench(PAIL_L, depth_m=0.12)
    with pytest.raises(Refused):
        trench(PAIL_L, width_m=0)
    with pytest.raises(Refused):
        trench(-1)
    with pytest.raises(Refused):
        tub(0)
    with pytest.raises(Refused, match="one of the two"):
        ferment()
    with pytest.raises(Refused, match="how many bins"):
        ferment(volume_l=20, bins=0)


dug = st.floats(min_value=0.2, max_value=1.0)


@given(st.floats(min_value=1, max_value=500), dug, st.floats(min_value=0.1, max_value=1), dug)
def test_what_is_dug_goes_back(volume_l: float, depth: float, width: float, cover: float) -> None:
    if depth - cover < 0.03:
        return
    found = trench(volume_l, depth_m=depth, width_m=width, cover_m=cover)
    floor = found.width_m * found.length_m
    assert found.soil_l / 1000 == pytest.approx(floor * found.depth_m)
    assert found.mound_m * floor == pytest.approx(volume_l / 1000)
    assert found.soil_l >= 2 * volume_l * (1 - 1e-9)
    assert found.cover_m >= cover - 1e-9
    assert found.mix_l == pytest.approx(found.soil_l + volume_l)


@given(st.floats(1, 500), st.floats(1, 500), dug, dug)
def test_more_ferment_or_a_shallower_trench_is_longer(
    one: float, other: float, deep: float, deeper: float
) -> None:
    less, more = sorted((one, other))
    assert trench(less).length_m <= trench(more).length_m * (1 + 1e-9)
    shallow, deep = sorted((deep, deeper))
    assert trench(less, depth_m=deep).length_m <= trench(less, depth_m=shallow).length_m * (
        1 + 1e-9
    )


def test_the_way_from_a_weight_to_a_trench_is_shown() -> None:
    # 10 kg at 0.70 kg/L, settled by 15 %, are 12.14 L, three of them 36.43 L.
    found = ferment(mass_kg=10, bins=3)
    assert found.litres == pytest.approx(36.43, abs=0.005)
    assert found.steps == (
        "10 kg at 0.7 kg/L, settled by 15 %, are 12.1 L",
        "3 bins x 12.1 L = 36.4 L",
    )


def test_a_group_may_dig_deeper_than_usual() -> None:
    found = trench(20, usual_depth_m=0.4)
    assert (found.depth_m, found.chosen) == (0.4, ("soil_parts", "depth_cm"))
    # What is said, or animals demand, comes first.
    assert trench(20, depth_m=0.3, usual_depth_m=0.4).depth_m == 0.3
    assert trench(20, animals=True, usual_depth_m=0.3).depth_m == DEPTH_ANIMALS.value


def test_little_ferment_wants_one_hole() -> None:
    assert trench(2.4).lines[0].startswith("Dig one hole 20 cm square and 25 cm deep")


def test_a_tub_is_not_dug() -> None:
    assert (trench(20).caution, tub(20).caution) == ("digging", "")
