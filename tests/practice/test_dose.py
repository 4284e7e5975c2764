"""The dose of starter, by the two habits that are taught."""

from math import pi

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.dose import MOST_LAYER_KG, MOST_LAYER_L, SPRINKLE, Dose, Habit, dose
from handlers.practice.figure import Refused
from handlers.practice.first_bed import first_bed, with_bed
from handlers.practice.kinds import RICH, Kind, Shares
from handlers.practice.tablespoons import SPOON_ML, Spoon
from handlers.practice.units import KILOGRAMS, LITRES

MEATY: Shares = {"meat": 0.7, "mixed": 0.3}
amounts = st.floats(min_value=0.01, max_value=30)
rich_kinds = st.sampled_from(sorted(RICH))


@pytest.mark.parametrize("depth_cm", [5.0, 6.0, 6.25, 7.0, 7.5])
@pytest.mark.parametrize("tablespoon", ["metric", "us"])
def test_a_taught_layer_gets_two_to_three_spoons(depth_cm: float, tablespoon: Spoon) -> None:
    # Common practice: 2 to 3 level tablespoons on a layer of 5 to 7.5 cm in an ordinary household
    # bucket (29 cm across inside, as a pail of 5 US gal is about 12 in outside).
    volume_l = pi * 14.5**2 * depth_cm / 1000
    assert 1.95 <= dose(volume_l=volume_l, tablespoon=tablespoon).tablespoons <= 3.05


def test_a_layer_in_a_twelve_inch_pail_weighs_what_was_worked_out_by_hand() -> None:
    # 12 in across, 2.5 in deep: 283 in³ = 4.63 L, at EPA's 3.8 lb/US gal 2.11 kg.
    found = dose(volume_l=pi * 6**2 * 2.5 * LITRES["cubic_inch"])
    assert found.volume_l == pytest.approx(4.63, abs=0.01)
    assert found.mass_kg == pytest.approx(2.11, abs=0.01)
    assert 2 <= found.tablespoons <= 3


@pytest.mark.parametrize(
    ("materials", "grams", "source"),
    [
        (MEATY, 80, "4 %: extra on meat, the mixed dose doubled"),
        ({"mixed": 1.0}, 40, "2 %: how long bran lasts a family"),
        ({"vegetable": 1.0}, 20, "1 %: starter is not strictly needed (Matsukawa 2014)"),
        ({"fish": 1.0}, 80, "4 %: all of it rich is no more than mostly"),
    ],
)
def test_the_weight_habit_on_two_kilograms(materials: Shares, grams: float, source: str) -> None:
    found = dose(mass_kg=2, materials=materials, habit="weight", tablespoon="us")
    assert found.starter_g == pytest.approx(grams, rel=1e-6), source
    # USDA SR28 20077: 58 g of wheat bran to a US cup of 16 tablespoons.
    assert found.tablespoons == pytest.approx(grams / 58 * 16, rel=1e-3)


def test_the_two_habits_differ_by_a_factor_of_four_or_more() -> None:
    # A spoon or two on a layer is 0.2 to 0.5 % of its mass, what families use up 1.3 to 2.9 %.
    spoon, weight = dose(mass_kg=2), dose(mass_kg=2, habit="weight")
    assert 0.001 < spoon.starter_g / 2000 < 0.006
    assert weight.starter_g / spoon.starter_g > 4


def test_all_meat_gets_twice_the_plain_dose_and_mostly_meat_more_than_half_again() -> None:
    plain = dose(volume_l=4).starter_ml
    assert dose(volume_l=4, materials={"meat": 1.0}).starter_ml == pytest.approx(2 * plain)
    assert dose(volume_l=4, materials=MEATY).starter_ml == pytest.approx(1.7 * plain)


def test_trouble_raises_the_dose_by_half_and_wet_scraps_are_no_second_reason() -> None:
    plain = dose(mass_kg=2).starter_ml
    for more in (dose(mass_kg=2, trouble=True), dose(mass_kg=2, wetness=1.0)):
        assert more.starter_ml == pytest.approx(1.5 * plain)
    assert dose(mass_kg=2, wetness=1.0, trouble=True).starter_ml == pytest.approx(1.5 * plain)
    assert dose(mass_kg=2, wetness=0.0).starter_ml == plain


def test_a_crumb_still_gets_a_sprinkle() -> None:
    assert dose(mass_kg=0.01).starter_ml == SPRINKLE.value
    assert dose(mass_kg=0.01, habit="weight").starter_ml == SPRINKLE.value


@pytest.mark.parametrize(
    ("found", "words"),
    [
        (dose(mass_kg=2), "nothing rich in it"),
        (dose(mass_kg=2, materials=MEATY), "rich in meat, so three quarters more"),
        (dose(mass_kg=2, materials={"meat": 0.3, "fish": 0.2, "mixed": 0.5}), "meat and fish"),
        (dose(mass_kg=2, materials={"fish": 0.5, "mixed": 0.5}), "half as much again"),
        (dose(mass_kg=2, materials={"cooked": 1}, rich=0.2), "meat, fish, dairy or fat"),
        (dose(mass_kg=2, materials={"dairy": 1}), "twice as much"),
        (dose(mass_kg=2, trouble=True), "the bin is in trouble, so half as much again"),
        (dose(mass_kg=2, wetness=1), "the scraps are wet"),
        (dose(mass_kg=2, wetness=0.6), "the scraps are wet, so a little more"),
        (dose(mass_kg=2, trouble=True, materials=MEATY), "half as much again on top"),
        (dose(mass_kg=2, materials=MEATY, habit="weight"), "rich in meat, so more"),
    ],
)
def test_the_reason_is_a_clause_to_read(found: Dose, words: str) -> None:
    assert words in found.reason
    assert found.reason in found.lines[0]
    assert found.habit in found.lines[0]


def test_the_working_names_each_step_and_figure() -> None:
    found = dose(mass_kg=2, materials=MEATY)
    why = "\n".join(found.why())
    for words in ("2 kg at 0.549 kg/L", "x 1.7", "common practice", "USDA SR28"):
        assert words in why


@pytest.mark.parametrize(
    ("mass_kg", "volume_l"),
    [
        (None, None),
        (1.0, 1.0),
        (0.0, None),
        (-2.0, None),
        (None, 0.0),
        (None, -1.0),
        (MOST_LAYER_KG * 1.01, None),
        (None, MOST_LAYER_L * 1.01),
        (float("nan"), None),
        (None, float("inf")),
    ],
)
def test_no_layer_is_nothing_or_a_lorry_load(mass_kg: float | None, volume_l: float | None) -> None:
    with pytest.raises(Refused) as refused:
        dose(mass_kg=mass_kg, volume_l=volume_l)
    assert str(refused.value).endswith(".")


@pytest.mark.parametrize(("rich", "wetness"), [(1.5, 0.5), (-0.1, 0.5), (0.5, 1.1), (0.5, -1)])
def test_shares_lie_between_nought_and_one(rich: float, wetness: float) -> None:
    with pytest.raises(Refused):
        dose(mass_kg=1, rich=rich, wetness=wetness)


@given(amounts, amounts, st.sampled_from(["spoon", "weight"]))
def test_more_scraps_never_want_less_starter(one: float, other: float, habit: Habit) -> None:
    less, more = sorted((one, other))
    assert (
        dose(mass_kg=less, habit=habit).starter_ml
        <= dose(mass_kg=more, habit=habit).starter_ml + 1e-9
    )


@given(amounts, rich_kinds, st.floats(0, 1), st.floats(0, 1), st.sampled_from(["spoon", "weight"]))
def test_richer_scraps_never_want_less_starter(
    amount: float, kind: Kind, one: float, other: float, habit: Habit
) -> None:
    poorer, richer = sorted((one, other))
    for measure in ("mass_kg", "volume_l"):
        doses = [
            dose(
                mass_kg=amount if measure == "mass_kg" else None,
                volume_l=amount if measure == "volume_l" else None,
                materials={kind: share, "mixed": 1 - share},
                habit=habit,
            ).starter_ml
            for share in (poorer, richer)
        ]
        assert doses[0] <= doses[1] * (1 + 1e-9)


@given(amounts, st.sampled_from(["us", "metric", "au", "imperial"]))
def test_the_spoon_it_is_told_in_changes_no_dose(amount: float, tablespoon: Spoon) -> None:
    found = dose(volume_l=amount, tablespoon=tablespoon)
    assert found.starter_ml == dose(volume_l=amount).starter_ml
    assert found.tablespoons * SPOON_ML[tablespoon] == pytest.approx(found.starter_ml)


@given(amounts)
def test_pounds_and_kilograms_of_the_same_scraps_get_the_same(pounds: float) -> None:
    kilograms = pounds * KILOGRAMS["pound"]
    grams = pounds * 16 * KILOGRAMS["ounce"] * 1000
    assert dose(mass_kg=kilograms).starter_g == pytest.approx(dose(mass_kg=grams / 1000).starter_g)


@given(amounts)
def test_a_mass_and_its_volume_get_the_same(mass_kg: float) -> None:
    by_mass = dose(mass_kg=mass_kg, materials=MEATY)
    by_volume = dose(volume_l=by_mass.volume_l, materials=MEATY)
    assert by_volume.starter_ml == pytest.approx(by_mass.starter_ml)


def test_the_first_bed_is_a_layers_dose_and_grows_with_the_floor() -> None:
    # A US restaurant-scrap programme puts a layer's dose on the bottom, a US firm half a cup.
    found = first_bed(tablespoon="us")
    assert 1 <= found.tablespoons <= 8
    assert first_bed(capacity_l=8 * 18.9).starter_ml == pytest.approx(4 * found.starter_ml)
    assert "floor" in found.lines[0]
    with pytest.raises(Refused):
        first_bed(capacity_l=0)


def test_a_dose_is_the_sum_of_its_parts() -> None:
    plain = dose(volume_l=4)
    assert [part.part for part in plain.parts] == ["plain"]
    found = dose(volume_l=4, materials=MEATY, trouble=True)
    # 0.7 of it rich doubles 0.7 of the plain dose; trouble adds half of that.
    usual = plain.starter_ml
    assert [part.ml for part in found.parts] == pytest.approx(
        [usual, 0.7 * usual, 0.5 * 1.7 * usual]
    )
    for habit in ("spoon", "weight"):
        for kg in (0.01, 2.0):
            made = dose(
                mass_kg=kg,
                materials=MEATY,
                wetness=0.8,
                habit="weight" if habit == "weight" else "spoon",
            )
            assert sum(part.ml for part in made.parts) == pytest.approx(made.starter_ml, rel=1e-9)


def test_the_first_layer_of_an_empty_bin_lies_on_its_bed() -> None:
    layer = dose(volume_l=4)
    found = with_bed(layer, 20)
    assert found.starter_ml == layer.starter_ml
    assert found.first_bed_ml == first_bed(capacity_l=20).starter_ml
    assert "floor" in found.lines[0]
    assert found.lines[1] == layer.lines[0]


def test_a_layer_by_its_depth_in_a_pail() -> None:
    # 12 in across and 2.5 in deep: 283 in³, 4.63 L, 2.11 kg at 3.8 lb to the US gallon (EPA 2016).
    found = dose(depth_m=2.5 * 0.0254, width_m=12 * 0.0254)
    assert found.volume_l == pytest.approx(4.63, abs=0.005)
    assert found.mass_kg == pytest.approx(2.11, abs=0.005)
    # An ordinary bucket where its width is not known: 2 to 3 spoons on 5 to 7.5 cm.
    assert dose(depth_m=0.05).tablespoons == pytest.approx(2)
    assert dose(depth_m=0.075).tablespoons == pytest.approx(3)


def test_one_amount_is_enough() -> None:
    for given_twice in ({"mass_kg": 2.0, "depth_m": 0.05}, {"volume_l": 2.0, "depth_m": 0.05}):
        with pytest.raises(Refused, match="one of them"):
            dose(**given_twice)  # type: ignore[arg-type]
    with pytest.raises(Refused, match=r"7\.5 cm"):
        dose(depth_m=0.5)
