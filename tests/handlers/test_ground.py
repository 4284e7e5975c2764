"""A trench for what is to be buried; amounts by hand from sourced figures."""

from dataclasses import replace

import pytest

from handlers.practice.kinds import Shares
from handlers.reading.acts import Ask, Bury, Layer, Open, Seal
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


@pytest.mark.parametrize(
    ("kg", "what", "words"),
    [
        (0.0, None, "for 20 L in the shed bin when it is full (nothing is in it yet)."),
        (0.0, "full", "for 20 L in the shed bin when it is full."),
        # 5 kg of mixed scraps, pressed to 0.70 kg/L and settled by 15 %, are 6.1 L.
        (5.0, None, "for 6.1 L in the shed bin so far."),
        (5.0, "full", "for 20 L in the shed bin when it is full."),
        (14.0, None, "for 17 L in the shed bin."),
    ],
)
async def test_it_says_whether_a_bin_is_reckoned_as_it_is_or_full(
    group: Group, kg: float, what: str | None, words: str
) -> None:
    await group.says(Open(bin="shed", capacity_l=20.0))
    if kg:
        await group.says(Layer(bin="shed", mass_kg=kg))
    assert words in (await group.says(Ask(topic="trench", bin="shed", what=what))).say


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


async def test_amounts_come_in_the_groups_units(group: Group) -> None:
    group.book.room = replace(group.book.room, units="us")
    trench = (await group.says(Ask(topic="trench", volume_l=18.927))).say
    assert "30 in long, 8 in wide and 10 in deep for 5 gallons" in trench


async def test_the_make_up_of_a_bin_is_by_mass(group: Group) -> None:
    await group.says(Layer(bin="shed", mass_kg=3.0, materials={"meat": 0.5, "vegetable": 0.5}))
    await group.says(Layer(bin="shed", mass_kg=1.0))
    await group.says(Layer(bin="shed"))
    bin = await group.book.bin("shed")
    assert bin
    state = await look_up(group.book, bin, BEGIN.date())
    found = dict(state.run.make_up or {})
    assert found == pytest.approx({"meat": 0.375, "vegetable": 0.375, "mixed": 0.25})


async def test_a_part_that_is_buried_ends_no_run(group: Group) -> None:
    await fill(group, "shed", 14.0)
    answer = await group.says(Bury(bin="shed", part=True), days=14)
    assert not answer.entries
    assert "say “buried the shed bin”" in answer.say


@pytest.mark.parametrize(
    ("ask", "words"),
    [
        # Length = litres / (width x room for the ferment), where that room is half the depth (two
        # parts of soil) or what the cover leaves of it. Animals: a supplier's 12 in of cover,
        # 45 cm deep: 0.020 / (0.2 x 0.15) = 0.67 m.
        (Ask(topic="trench", volume_l=20.0, animals=True), "67 cm long, 20 cm wide and 45 cm deep"),
        # 40 cm deep under 30 cm leave 10 cm: 0.020 / (0.2 x 0.1) = 1 m.
        (Ask(topic="trench", volume_l=20.0, cover_m=0.3), "1 m long, 20 cm wide and 40 cm deep"),
        # 20 L on 1 m by 20 cm lie 10 cm deep: 22.5 cm with 12.5 cm of cover (4 to 6 in).
        (Ask(topic="trench", volume_l=20.0, length_m=1, width_m=0.2), "20 cm wide and 23 cm deep"),
        (Ask(topic="trench", volume_l=20.0, length_m=1), "1 m long, 16 cm wide and 25 cm deep"),
        (Ask(topic="trench", length_m=1, width_m=0.3, depth_m=0.3), "takes about 45 L"),
        (Ask(topic="trench", length_m=1, width_m=0.2), "That, dug 25 cm deep, takes about 25 L"),
        # 14 kg of mixed scraps are 17 L in the bin (0.70 kg/L, settled by 15 %).
        (Ask(topic="trench", bins=("shed", "yard")), "34 L in the shed bin and the yard bin"),
        (Ask(topic="trench", each="both"), "34 L in the shed bin and the yard bin"),
        (Ask(topic="trench", bin="shed", what="half of it"), "8.5 L in the shed bin"),
        (Ask(topic="trench", bin="shed", what="half full"), "10 L in the shed bin"),
        (
            Ask(topic="trench", bin="yard", length_m=0.5, width_m=0.2, depth_m=0.3),
            "Not enough for 17 L in the yard bin: as wide and deep, that wants 57 cm.",
        ),
    ],
)
async def test_what_is_said_of_a_trench_is_reckoned_with(
    group: Group, ask: Ask, words: str
) -> None:
    for name in ("shed", "yard"):
        await group.says(Open(bin=name, capacity_l=20.0))
        await group.says(Layer(bin=name, mass_kg=14.0))
    assert words in (await group.says(ask)).say
