"""A record put right in talk: by whom, whose it is, and by how much."""

from datetime import timedelta

import pytest

from tests.room import TalkingRoom


async def test_a_correction_is_corrected_again(room: TalkingRoom) -> None:
    for said, kg in (("no, 3 kg", 3), ("no 4", 4), ("no, it was 5", 5), ("another 1 kg", 1)):
        await room.says(said)
        assert (await room.kilos())[-1] == kg
    assert await room.kilos() == [5, 1]


async def test_a_correction_is_of_ones_own_record_unless_it_is_a_reply(room: TalkingRoom) -> None:
    await room.says("added 5 kg to the shed bin", who="bram", event="$bram")
    await room.says("no, 3 kg")
    assert sorted(kg for kg in await room.kilos() if kg) == [3, 5]
    await room.says("no, 4 kg", replies_to="$bram")
    assert sorted(kg for kg in await room.kilos() if kg) == [3, 4]


async def test_one_corrects_what_another_told_of_one(room: TalkingRoom) -> None:
    await room.says("added 1 kg to the shed bin", who="bram")
    await room.says("Bram added 5 kg to the shed bin")
    await room.says("no, 3 kg", who="bram")
    assert sorted(kg for kg in await room.kilos() if kg) == [1, 2, 3]


async def test_what_is_over_corrects_no_offer(room: TalkingRoom) -> None:
    await room.says("Bram, can you take the shed bin on Friday?")
    [told] = await room.says("that was yesterday")
    assert told.body.startswith("Corrected. 2½ tablespoons")
    assert [e.act for e in await room.standing()] == ["open", "offer", "layer"]


@pytest.mark.parametrize(("name", "words"), [("bram", "Bram"), ("Zoe", "Zoe")])
async def test_it_was_somebody_else(room: TalkingRoom, name: str, words: str) -> None:
    [told] = await room.says(f"that was {words} not me")
    assert f"by {name}" in told.body
    [layer] = [e for e in await room.standing() if e.act == "layer"]
    assert layer.member == name


async def test_a_number_far_from_the_one_before_corrects_nothing(room: TalkingRoom) -> None:
    await room.says("drained 150 ml from the shed bin")
    await room.says("oops meant 300")
    await room.says("oops meant 3")
    volumes = [e.facts.volume_l for e in await room.standing() if e.act == "drain"]
    assert volumes == [0.3]


@pytest.mark.parametrize(
    ("said", "kg"),
    [
        ("no, the shed bin only got 1 kg of scraps, not 2", [1]),
        ("actually shed was 1 kg", [1]),
        ("shed was 1 kg", [1]),
        ("the shed only had 1 kg", [1]),
        ("the shed bin got another 1 kg", [2, 1]),
        ("the shed bin got 1 kg of rice", [2, 1]),
        ("the yard bin only got 1 kg", [2, 1]),
    ],
)
async def test_what_the_bin_got_is_told_again(
    room: TalkingRoom, said: str, kg: list[float]
) -> None:
    await room.says(said)
    assert await room.kilos() == kg


async def test_a_burial_put_right_is_no_second_one(room: TalkingRoom) -> None:
    await room.says("sealed the shed bin")
    await room.waits(days=14)
    await room.says("buried the shed bin under the plum tree")
    await room.says("the shed bin was actually buried yesterday")
    [buried] = [e for e in await room.standing() if e.act == "bury"]
    assert buried.on
    assert buried.on.isoformat() == (room.now.date() - timedelta(days=1)).isoformat()
    assert buried.facts.place == "plum tree"


@pytest.mark.parametrize(
    ("said", "days"),
    [("not Monday, Tuesday", {1: 1, 2: 3}), ("no, not Sunday but Saturday", {1: 28, 2: 2})],
)
async def test_the_record_of_the_wrong_day_is_put_right(
    room: TalkingRoom, said: str, days: dict[int, int]
) -> None:
    await room.waits(days=2)  # Wednesday 4 March
    await room.says("added 1 kg on Sunday and 2 kg on Monday to the shed bin")
    await room.says(said)
    told = [e for e in await room.standing() if e.act == "layer"][-2:]
    assert {e.facts.mass_kg: e.on and e.on.day for e in told} == days


async def test_anothers_record_is_put_right_only_when_asked(room: TalkingRoom) -> None:
    [asked] = await room.says("no that was 3 kg", who="bram")
    assert asked.body == "Ines's last record is 2 kg in the shed bin. Shall I correct it to 3 kg?"
    assert await room.kilos() == [2]
    await room.says("yes", who="bram")
    assert await room.kilos() == [3]


async def test_half_a_litre_is_no_bins_size(room: TalkingRoom) -> None:
    await room.says("opened the barrel, 60 L")
    await room.says("no, half a litre")
    await room.says("no, 50 L")
    sizes = {
        e.bin.name: e.facts.capacity_l for e in await room.standing() if e.act == "open" and e.bin
    }
    assert sizes == {"shed": 20, "barrel": 50}


async def test_what_another_told_of_us_is_ours_to_put_right(room: TalkingRoom) -> None:
    await room.says("ines drained 1 litre from the shed bin", who="bram")
    await room.says("no, half a litre")
    drains = [e.facts.volume_l for e in await room.standing() if e.act == "drain"]
    assert drains == [0.5]
    assert await room.kilos() == [2]


async def test_the_rest_of_a_layer_was_anothers(room: TalkingRoom) -> None:
    await room.says("added 3 kg of bread to the shed bin", who="bram")
    await room.waits(days=1)
    await room.says("only 2 kg of that was mine, the rest was Ines's", who="bram")
    told = [(e.member, e.facts.mass_kg) for e in await room.standing() if e.act == "layer"]
    assert told[1:] == [("bram", 2), ("ines", 1)]
    [asked] = await room.says("only 5 kg of that was mine, the rest was Ines's", who="bram")
    assert asked.body.startswith("Which record")


async def test_what_the_bot_answered_is_no_question_to_the_neighbours(room: TalkingRoom) -> None:
    await room.says("drained the shed bin, 300 ml", who="bram")
    await room.says("how much water for that?")
    await room.says("the drain was 200 ml not 300", who="bram")
    drains = [e.facts.volume_l for e in await room.standing() if e.act == "drain"]
    assert drains == [0.2]
