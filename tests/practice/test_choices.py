"""What a group may settle for itself, and what is ours."""

from dataclasses import fields

import pytest

from handlers.practice.choices import OURS, WHY, Choices
from handlers.practice.reckon import reckon


def test_a_group_settles_for_itself_what_the_sources_leave_open() -> None:
    ours = Choices(
        habit="weight",
        recipe="ten-to-one",
        bed_parts=300,
        ferment_days=21,
        plant_days=28,
        soil_parts=1.5,
        limit_kg_ha=250,
    )
    assert set(WHY) == {field.name for field in fields(Choices)}
    assert reckon("dose", {"mass": "2kg"}, choices=ours).answer["starter_g"] == pytest.approx(40)
    assert reckon("starter", {"bran": "1kg"}, choices=ours).answer["recipe"] == "ten-to-one"
    assert reckon("dilution", {"water": "9L"}, choices=ours).answer["liquid_ml"] == pytest.approx(
        30
    )
    days = reckon("days", {"sealed": "2026-03-20"}, choices=ours).answer
    # Counted on a calendar: 21 days sealed, then 28 in the soil.
    assert (days["bury_by"], days["plant_usual"]) == ("2026-04-10", "2026-05-08")
    tub = reckon("trench", {"volume": "10L", "tub": "yes"}, choices=ours).answer
    assert tub["soil_l"] == pytest.approx(15)
    assert reckon("bed", {"area": "4x8ft"}, choices=ours).answer["limit_kg_ha"] == 250
    # What is said comes before what was settled, and nothing is chosen then.
    assert not any(
        "our choice" in line for line in reckon("bed", {"area": "3m2", "limit": "250"}).why
    )
    assert any("our choice" in line for line in reckon("bed", {"area": "3m2"}).why)
    said = reckon("dose", {"mass": "2kg", "habit": "spoon"}, choices=ours).answer
    assert said == reckon("dose", {"mass": "2kg"}).answer


def test_the_defaults_are_the_figures_of_their_modules() -> None:
    # Choices of the craft: two weeks sealed, three in soil, 1:100, two parts of soil, 170 kg/ha.
    assert (OURS.ferment_days, OURS.plant_days, OURS.bed_parts) == (14, 21, 100)
    assert (OURS.soil_parts, OURS.limit_kg_ha, OURS.habit) == (2, 170, "spoon")
