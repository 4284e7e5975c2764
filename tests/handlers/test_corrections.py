"""Records are corrected and struck out, and nothing is ever overwritten."""

from datetime import date, timedelta

import pytest

from handlers.answer import Turn
from handlers.reading.acts import Amend, Bury, Drain, Layer, Observe, Open, Retract, Seal
from handlers.recording import keeping
from handlers.righting import corrections
from handlers.state import look_up
from tests.group import BEGIN, Group


async def standing(group: Group) -> list[tuple[str, str | None, float | None]]:
    return [
        (entry.act, entry.bin.name if entry.bin else None, entry.facts.mass_kg)
        for entry in await group.book.entries()
        if not entry.struck
    ]


async def withdraw(group: Group, event: str, by: str) -> None:
    turn = Turn(
        book=group.book,
        event=event,
        cause=by,
        sender="ines",
        at=BEGIN,
        now=BEGIN + timedelta(days=30),
        today=BEGIN.date(),
    )
    async with group.book.db.transaction():
        await keeping.carry_out(turn, await corrections.undo(event, turn))


async def test_an_amount_is_corrected_by_a_new_entry(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    answer = await group.says(Amend(mass_kg=3.0))
    assert answer.say.startswith("Corrected. ")
    assert "3 kg" in answer.say
    assert await standing(group) == [("layer", "shed", 3.0)]
    first, second = await group.book.entries()
    assert first.struck
    assert second.replaces == first.id
    assert second.event == first.event


async def test_a_reply_corrects_the_message_it_is_about(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"), event="$two")
    await group.says(Layer(mass_kg=1.0, bin="shed"))
    await group.says(Amend(mass_kg=5.0), refers_to="$two")
    assert sorted(m for _, _, m in await standing(group) if m) == [1.0, 5.0]


async def test_the_bin_is_corrected_and_both_bins_dues_follow(group: Group) -> None:
    await group.says(Open(bin="yard"))
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Amend(bin="yard"))
    dues = await group.dues()
    assert ("yard", "drain") in dues
    assert ("shed", "drain") not in dues


async def test_a_weight_takes_the_place_of_a_volume(group: Group) -> None:
    await group.says(Layer(volume_l=4.0, bin="shed"))
    await group.says(Amend(mass_kg=1.5))
    [entry] = [e for e in await group.book.entries() if not e.struck]
    assert (entry.facts.mass_kg, entry.facts.volume_l) == (1.5, None)


async def test_the_corrected_field_finds_its_entry_among_several(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"), event="$both")
    await group.says(Drain(volume_l=0.5, bin="shed"), event="$both")
    await group.says(Amend(mass_kg=1.0), refers_to="$both")
    assert ("drain", "shed", None) in await standing(group)
    assert ("layer", "shed", 1.0) in await standing(group)


async def test_nobody_corrects_what_is_not_there(group: Group) -> None:
    answer = await group.says(Amend(mass_kg=1.0))
    assert answer.say == corrections.NOTHING_THERE
    assert await group.book.entries() == []


async def test_only_ones_own_last_record_is_struck_by_words(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"), who="ines")
    await group.says(Layer(mass_kg=1.0, bin="shed"), who="bram")
    answer = await group.says(Retract(), who="ines")
    assert "2 kg in the shed bin" in answer.say
    assert await standing(group) == [("layer", "shed", 1.0)]


async def test_an_absurd_correction_changes_nothing(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Amend(mass_kg=5000.0))
    assert await standing(group) == [("layer", "shed", 2.0)]


async def test_withdrawing_a_correction_brings_the_first_record_back(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"), event="$m")
    await group.says(Amend(mass_kg=3.0), event="$c")
    await withdraw(group, "$c", "$r")
    assert await standing(group) == [("layer", "shed", 2.0)]


async def test_withdrawing_an_outdated_correction_changes_nothing(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"), event="$m")
    await group.says(Amend(mass_kg=3.0), event="$c")
    await group.says(Amend(mass_kg=4.0), event="$d")
    await withdraw(group, "$c", "$r")
    assert await standing(group) == [("layer", "shed", 4.0)]


async def test_withdrawing_the_message_strikes_its_corrections_too(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"), event="$m")
    await group.says(Amend(mass_kg=3.0), event="$c")
    await withdraw(group, "$m", "$r")
    assert await standing(group) == []
    assert await group.dues() == {}


async def test_a_burial_that_was_none_joins_the_runs_again(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Seal(bin="shed"), days=1)
    await group.says(Bury(bin="shed"), days=12, event="$bury")
    await group.says(Layer(mass_kg=1.0, bin="shed"), days=13)
    await withdraw(group, "$bury", "$r")
    bin = await group.book.bin("shed")
    assert bin
    state = await look_up(group.book, bin, BEGIN.date())
    assert (state.number, state.run.layer_count) == (1, 2)


async def test_a_backdated_layer_goes_into_the_run_of_its_day(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Bury(bin="shed"), days=14)
    await group.says(Layer(mass_kg=1.0, bin="shed"), days=15)
    await group.says(Layer(mass_kg=4.0, bin="shed", on=date(2026, 3, 5)), days=15)
    assert {(e.facts.mass_kg, e.run) for e in await group.book.entries() if e.act == "layer"} == {
        (2.0, 1),
        (4.0, 1),
        (1.0, 2),
    }


async def test_what_is_seen_after_burial_belongs_to_the_buried_run(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await group.says(Bury(bin="shed"), days=14)
    await group.says(Observe(signs=("sour",), bin="shed"), days=15)
    assert {entry.run for entry in await group.book.entries()} == {1}


async def test_an_old_record_is_changed_only_by_a_reply_to_it(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"), event="$m")
    assert (await group.says(Amend(mass_kg=3.0), days=5)).say == corrections.NOTHING_THERE
    await group.says(Amend(mass_kg=3.0), days=5, refers_to="$m")
    assert await standing(group) == [("layer", "shed", 3.0)]


async def test_a_second_striking_out_reaches_no_older_record(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"), event="$two")
    await group.says(Layer(mass_kg=1.0, bin="shed"))
    assert (await group.says(Retract())).say == "Struck out: 1 kg in the shed bin."
    for act in (Retract(), Retract(), Amend(mass_kg=5.0)):
        answer = await group.says(act)
        assert not answer.strikes
        assert "eply" in answer.say
    assert await standing(group) == [("layer", "shed", 2.0)]
    await group.says(Retract(), refers_to="$two")
    assert await standing(group) == []


async def test_a_correction_is_of_the_senders_own_record(group: Group) -> None:
    await group.says(Layer(mass_kg=2.0, bin="shed"), who="kofi")
    await group.says(Layer(mass_kg=5.0, bin="shed"), who="ines")
    await group.says(Amend(mass_kg=3.0), who="kofi")
    assert await standing(group) == [("layer", "shed", 5.0), ("layer", "shed", 3.0)]
    answer = await group.says(Amend(mass_kg=1.0), who="ruth")
    assert answer.say.startswith("Kofi's last record is 3 kg in the shed bin.")


async def test_a_record_of_another_bin_is_asked_about_not_the_last_one_struck(group: Group) -> None:
    await group.says(Open(bin="yard"))
    await group.says(Layer(mass_kg=0.7, bin="shed"), event="$shed")
    await group.says(Layer(mass_kg=2.0, bin="yard"))
    answer = await group.says(Retract(bin="shed"))
    assert "700 g in the shed bin. Shall I strike it out?" in answer.say
    assert ("layer", "yard", 2.0) in await standing(group)
    await group.says(Retract(of="$shed"))
    assert ("layer", "shed", 0.7) not in await standing(group)
    await group.says(Retract(bin="yard"))
    assert ("layer", "yard", 2.0) not in await standing(group)


@pytest.mark.parametrize(("anew", "left"), [(None, [("layer", "shed", 3.0)]), (True, [])])
async def test_a_struck_correction_gives_way_to_what_is_told_in_its_place(
    group: Group, anew: bool | None, left: list[tuple[str, str, float]]
) -> None:
    await group.says(Open(bin="yard"))
    await group.says(Layer(mass_kg=3.0, bin="shed"))
    await group.says(Amend(mass_kg=2.0), event="$right")
    await group.says(Layer(mass_kg=1.0, bin="yard"), event="$right")
    await group.says(Retract(anew=anew), refers_to="$right")
    assert [one for one in await standing(group) if one[0] == "layer"] == left
