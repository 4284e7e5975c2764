"""What a few words add to the record in talk: more of it, the same again, where it went, when."""

from datetime import timedelta

import pytest

from tests.room import TalkingRoom


@pytest.mark.parametrize(
    ("said", "kg"),
    [
        ("in went 3 kg", [2, 3]),
        ("3 kilos more", [2, 3]),
        ("another 3 kg", [2, 3]),
        ("and 3 kg of bones too", [2, 3]),
        ("also 3 kg", [2, 3]),
        ("3 kg in mine", [2, 3]),
        ("3 kg in my one", [2, 3]),
        ("3 kg in the other one", [2]),
        ("3 kg in total", [3]),
        ("3 kg", [3]),
        ("no, 3 kg", [3]),
        ("no 3", [3]),
        ("nope, it was 3", [3]),
    ],
)
async def test_an_amount_behind_the_answer(room: TalkingRoom, said: str, kg: list[float]) -> None:
    await room.says(said)
    assert await room.kilos() == kg


async def test_what_is_drained_more_is_drained(room: TalkingRoom) -> None:
    await room.says("drained 500 ml from the shed bin")
    await room.says("another 200 ml")
    await room.says("lovely day", who="bram")
    await room.says("another 100 ml", who="bram")
    drains = [e.facts.volume_l for e in await room.standing() if e.act == "drain"]
    assert drains == [0.5, 0.2]
    assert await room.kilos() == [2]


async def test_more_goes_where_the_talk_is(room: TalkingRoom) -> None:
    await room.says("added 4 kg to the yard bin", who="bram")
    await room.says("another 3 kg")
    bins = [e.bin.name for e in await room.standing() if e.act == "layer" and e.bin]
    assert bins == ["shed", "yard", "yard"]


async def test_an_edit_of_more_is_still_more(room: TalkingRoom) -> None:
    await room.says("another 3 kg", event="$more")
    await room.edits("$more", "another 4 kg")
    assert await room.kilos() == [2, 4]
    await room.deletes("$more")
    assert await room.kilos() == [2]


async def test_a_new_name_begins_a_bin_and_fills_no_other(room: TalkingRoom) -> None:
    for name in ("Dot", "the 🦄 bin", "the coffee bin", "the evil.com bin", "the @room bin"):
        [told] = await room.says(f"added 2 kg to {name}")
        assert "That begins" in told.body
    bins = [e.bin.name for e in await room.standing() if e.bin]
    assert bins == ["shed", "shed", "Dot", "🦄", "coffee", "evil. com", "room"]


async def test_a_bare_amount_with_nothing_to_correct_is_asked_about(room: TalkingRoom) -> None:
    await room.says("opened the yard bin, 25 L", who="bram")
    [asked] = await room.says("adz 2kg peal", who="bram")
    assert asked.body == "Shall I write down 2 kg in the yard bin?"
    await room.says("yes", who="bram")
    assert await room.kilos() == [2, 2]


async def test_more_is_added_though_another_has_spoken(room: TalkingRoom) -> None:
    await room.says("added 4 kg to the yard bin", who="bram")
    await room.says("added 1 kg to the shed bin")
    await room.says("what weather!", who="bram")
    await room.says("another 300 g")
    last = (await room.standing())[-1]
    assert await room.kilos() == [2, 4, 1, 0.3]
    assert last.bin
    assert last.bin.name == "shed"


async def test_more_of_nothing_takes_the_place_of_nothing(room: TalkingRoom) -> None:
    await room.waits(days=1)
    await room.says("morning", who="bram")
    await room.says("plus 3 kg more")
    assert await room.kilos() == [2]


@pytest.mark.parametrize("said", ["300 ml", "about 0.3 litres", "it was 300 mL"])
async def test_how_much_came_off_is_no_layer(room: TalkingRoom, said: str) -> None:
    await room.says("drained the shed bin")
    await room.says(said)
    drains = [e.facts.volume_l for e in await room.standing() if e.act == "drain"]
    assert drains == [0.3]
    assert await room.kilos() == [2]


async def test_more_is_drained_from_the_bin_that_was_drained(room: TalkingRoom) -> None:
    await room.says("opened the blue bin, 20 L")
    await room.says("added 1 kg to the shed bin")
    await room.says("drained 200 mL from the blue bin")
    await room.says("drained another 100 mL")
    bins = [e.bin.name for e in await room.standing() if e.act == "drain" and e.bin]
    assert bins == ["blue", "blue"]


async def test_the_whole_amount_each_is_said_as_it_was_taught(room: TalkingRoom) -> None:
    await room.says("opened the blue bin, 20 L")
    [asked] = await room.says("put 3 kg in shed and blue")
    taught = asked.body.split("“")[1].split("”")[0]
    await room.says(taught)
    assert await room.kilos() == [2, 3, 3]


async def test_the_same_again_is_as_much_of_the_same(room: TalkingRoom) -> None:
    await room.says("added 3 kg of bread to the shed bin", who="bram")
    await room.waits(days=1)
    await room.says("same again", who="bram")
    last = (await room.standing())[-1]
    assert (last.facts.mass_kg, last.facts.materials) == (3, {"grain": 1.0})


async def test_the_same_again_of_nothing_is_asked_for(room: TalkingRoom) -> None:
    [asked] = await room.says("same again", who="bram")
    assert "Reply with the amount" in asked.body


async def test_an_amount_doubled_is_struck_out_by_no_word(room: TalkingRoom) -> None:
    await room.says("double that")
    assert await room.kilos() == [4]


async def test_a_question_of_ones_own_is_no_yes(room: TalkingRoom) -> None:
    await room.says("added 0 kg to the shed bin")
    before = len(await room.standing())
    for words in ("do I drain it", "do we open it?", "right then, later"):
        await room.says(words)
    assert len(await room.standing()) == before


async def test_a_yes_behind_a_later_record_is_not_for_an_earlier_question(
    room: TalkingRoom,
) -> None:
    [asked] = await room.says("closed the shed")
    assert asked.body == "Shall I write down a sealing in the shed bin?"
    await room.says("added 1 kg to the shed bin")
    await room.says("yes")
    assert [e.act for e in await room.standing()] == ["open", "layer", "layer"]


async def test_a_layer_from_long_before_its_bin_was_opened_is_asked_about(
    room: TalkingRoom,
) -> None:
    long_ago = room.now - timedelta(days=30)
    [asked] = await room.says(f"1 kg of marrow in the shed bin on {long_ago:%d %B}")
    assert "was opened later" in asked.body
    assert await room.kilos() == [2]
    await room.says("yes")
    assert await room.kilos() == [2, 1]


@pytest.mark.parametrize(
    ("said", "day"),
    [
        ("1 kg in the shed bin the other day", "Thursday"),
        ("1 kg in the shed bin on 31 June", "Friday"),
    ],
)
async def test_a_day_that_is_not_known_is_asked_for(room: TalkingRoom, said: str, day: str) -> None:
    [asked] = await room.says(said)
    assert "day" in asked.body
    assert await room.kilos() == [2]
    [answer] = await room.says(day)
    assert day in answer.body or "yesterday" in answer.body
    assert await room.kilos() == [2, 1]


@pytest.mark.parametrize(
    ("said", "bin"),
    [("put 3 kg of peels in it", "pantry"), ("added 3 kg of peels", "shed")],
)
async def test_scraps_go_into_it_or_into_the_bin_last_fed(
    room: TalkingRoom, said: str, bin: str
) -> None:
    await room.says("opened the pantry bin, 20 L")
    await room.says("1 kg in the shed bin")
    await room.says("how full is the pantry bin?")
    [answer] = await room.says(said)
    assert f"3 kg in the {bin} bin" in answer.body
