"""A trench for what is to be buried, a dressing for a bed; amounts by hand from sourced figures."""

from dataclasses import replace

import pytest

from handlers.ground import make_up
from handlers.practice.kinds import Shares
from handlers.reading.acts import Ask, Layer, Open, Seal
from handlers.state import look_up
from tests.group import BEGIN, Group


async def fill(group: Group, name: str, kg: float, materials: Shares | None = None) -> None:
    await group.says(Open(bin=name, capacity_l=20.0))
    await group.says(Layer(bin=name, mass_kg=kg, materials=materials))
    await group.says(Seal(bin=name), days=1)


async def test_a_trench_for_so_many_litres(group: Group) -> None:
    # 20 L with two parts of soil, 20 cm wide and 25 cm deep: 0.020 / (0.2 x 0.125) = 0.8 m.
    said = (await group.says(Ask(topic="trench", volume_l=20.0))).say
    assert said.startswith("Dig 80 cm long, 20 cm wide and 25 cm deep for 20 L.")
    # One part to two of soil, and a quarter of the mix on top.
    assert "40 L of soil in a tub, 15 L more on top" in said
    assert "pipes and cables" in said


async def test_a_trench_for_a_bin_goes_by_its_layers(group: Group) -> None:
    await fill(group, "shed", 14.0)
    said = (await group.says(Ask(topic="trench", bin="Shed"))).say
    # 14 kg of mixed scraps, pressed to 0.70 kg/L and settled by 15 %, are 17 L: 0.68 m.
    assert "68 cm long" in said
    assert "for 17 L in the shed bin" in said


async def test_several_ripe_bins_are_buried_at_once(group: Group) -> None:
    await fill(group, "shed", 14.0)
    await fill(group, "yard", 14.0)
    fermenting = (await group.says(Ask(topic="trench"), days=5)).say
    ready = (await group.says(Ask(topic="trench"), days=12)).say
    for said in (fermenting, ready):
        assert "for 34 L in the shed bin and the yard bin" in said


async def test_a_bin_without_weights_is_taken_as_full(group: Group) -> None:
    await group.says(Open(bin="shed", capacity_l=20.0))
    assert "for 20 L in the shed bin" in (await group.says(Ask(topic="trench"))).say


async def test_an_unknown_amount_is_asked_for(group: Group) -> None:
    assert "How much is there to bury" in (await group.says(Ask(topic="trench"))).say
    await group.says(Open(bin="shed"))
    await group.says(Open(bin="yard"))
    for bin in (None, "shed", "attic"):
        assert "How much is there to bury" in (await group.says(Ask(topic="trench", bin=bin))).say


async def test_a_trench_nobody_digs_is_refused(group: Group) -> None:
    answer = await group.says(Ask(topic="trench", mass_kg=90000.0))
    assert "beyond what I reckon with" in answer.say
    assert not answer.why
    large = (await group.says(Ask(topic="trench", mass_kg=100.0))).say
    assert "tub" not in large


async def test_a_bed_takes_the_usual_dressing(group: Group) -> None:
    # Common practice: 5 kg on 4 by 8 ft; 117.7 of 170 kg N/ha (91/676/EEC) are 70 %.
    answer = await group.says(Ask(topic="bed", area_m2=2.97289728))
    assert answer.say.startswith("5 kg on 2.97 m², worked into the top 15 cm: 70 %")
    assert "two to three weeks" in answer.say
    assert "Local rules" in answer.say
    assert any("91/676/EEC" in line for line in answer.why)


async def test_a_rich_bin_is_spread_thinner(group: Group) -> None:
    await fill(group, "shed", 10.0, {"meat": 1.0})
    said = (await group.says(Ask(topic="bed", area_m2=2.97289728, bin="shed"))).say
    # Meat holds about 4.5 % nitrogen: 50.54 g of it on this bed are in 1.12 kg.
    assert said.startswith("1.1 kg from the shed bin")
    assert "100 %" in said


async def test_too_much_for_a_bed_is_said(group: Group) -> None:
    said = (await group.says(Ask(topic="bed", area_m2=2.97289728, mass_kg=12.0))).say
    assert "too much: give it at most 7.2 kg" in said


async def test_a_bin_is_enough_for_so_much_bed(group: Group) -> None:
    await fill(group, "shed", 10.0)
    # 10 kg at 5 kg to 32 ft²: 64 ft², 5.95 m².
    said = (await group.says(Ask(topic="bed", bin="shed"))).say
    assert "10 kg is enough for 5.9 m²" in said


async def test_a_bed_without_a_size_is_asked_for(group: Group) -> None:
    assert "How big is the bed" in (await group.says(Ask(topic="bed"))).say
    assert "cannot be" in (await group.says(Ask(topic="bed", area_m2=-3.0))).say
    assert "beyond" in (await group.says(Ask(topic="bed", mass_kg=1e9))).say


async def test_amounts_come_in_the_groups_units(group: Group) -> None:
    group.book.room = replace(group.book.room, units="us")
    trench = (await group.says(Ask(topic="trench", volume_l=18.927))).say
    assert "30 in long, 8 in wide and 10 in deep for 5 gallons" in trench
    assert "11 lb on 32 square feet" in (await group.says(Ask(topic="bed", area_m2=2.9729))).say


async def test_the_make_up_of_a_bin_is_by_mass(group: Group) -> None:
    await group.says(Layer(bin="shed", mass_kg=3.0, materials={"meat": 0.5, "vegetable": 0.5}))
    await group.says(Layer(bin="shed", mass_kg=1.0))
    await group.says(Layer(bin="shed"))
    bin = await group.book.bin("shed")
    assert bin
    state = await look_up(group.book, bin, BEGIN.date())
    found = dict(await make_up(state, group.book) or {})
    assert found == pytest.approx({"meat": 0.375, "vegetable": 0.375, "mixed": 0.25})
