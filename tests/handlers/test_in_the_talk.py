"""Records as a talk makes them: added to, corrected, struck out, answered to, opened again."""

from datetime import timedelta

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines and Bram, and a bin of 20 L that is being filled."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("opened the shed bin, 20 L")
    await room.says("added 2 kg to the shed bin")
    return room


async def layers(room: TalkingRoom) -> list[float | None]:
    entries = [e for e in await room.standing() if e.act == "layer"]
    return [entry.facts.mass_kg for entry in sorted(entries, key=lambda entry: entry.id)]


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
    assert await layers(room) == kg


async def test_what_is_drained_more_is_drained(room: TalkingRoom) -> None:
    await room.says("drained 500 ml from the shed bin")
    await room.says("another 200 ml")
    await room.says("lovely day", who="bram")
    await room.says("another 100 ml", who="bram")
    drains = [e.facts.volume_l for e in await room.standing() if e.act == "drain"]
    assert drains == [0.5, 0.2]
    assert await layers(room) == [2]


async def test_more_goes_where_the_talk_is(room: TalkingRoom) -> None:
    await room.says("added 4 kg to the yard bin", who="bram")
    await room.says("another 3 kg")
    bins = [e.bin.name for e in await room.standing() if e.act == "layer" and e.bin]
    assert bins == ["shed", "yard", "yard"]


async def test_a_correction_is_corrected_again(room: TalkingRoom) -> None:
    for said, kg in (("no, 3 kg", 3), ("no 4", 4), ("no, it was 5", 5), ("another 1 kg", 1)):
        await room.says(said)
        assert (await layers(room))[-1] == kg
    assert await layers(room) == [5, 1]


async def test_an_edit_of_more_is_still_more(room: TalkingRoom) -> None:
    await room.says("another 3 kg", event="$more")
    await room.edits("$more", "another 4 kg")
    assert await layers(room) == [2, 4]
    await room.deletes("$more")
    assert await layers(room) == [2]


async def test_a_correction_is_of_ones_own_record_unless_it_is_a_reply(room: TalkingRoom) -> None:
    await room.says("added 5 kg to the shed bin", who="bram", event="$bram")
    await room.says("no, 3 kg")
    assert sorted(kg for kg in await layers(room) if kg) == [3, 5]
    await room.says("no, 4 kg", replies_to="$bram")
    assert sorted(kg for kg in await layers(room) if kg) == [3, 4]


async def test_one_corrects_what_another_told_of_one(room: TalkingRoom) -> None:
    await room.says("added 1 kg to the shed bin", who="bram")
    await room.says("Bram added 5 kg to the shed bin")
    await room.says("no, 3 kg", who="bram")
    assert sorted(kg for kg in await layers(room) if kg) == [1, 2, 3]


async def test_what_is_over_corrects_no_offer(room: TalkingRoom) -> None:
    await room.says("Bram, can you take the shed bin on Friday?")
    [told] = await room.says("that was yesterday")
    assert told.body.startswith("Corrected. 2½ tablespoons")
    assert [e.act for e in await room.standing()] == ["open", "offer", "layer"]


@pytest.mark.parametrize("words", ["oops posted twice", "sorry, logged it twice", "scratch that"])
async def test_the_last_record_is_struck_and_no_other(room: TalkingRoom, words: str) -> None:
    await room.says("added 1 kg to the shed bin")
    await room.says(words)
    assert await layers(room) == [2]
    [asked] = await room.says("scratch that")
    assert asked.body.startswith("Struck out already: 1 kg in the shed bin.")
    assert await layers(room) == [2]


@pytest.mark.parametrize(("name", "words"), [("bram", "Bram"), ("Zoe", "Zoe")])
async def test_it_was_somebody_else(room: TalkingRoom, name: str, words: str) -> None:
    [told] = await room.says(f"that was {words} not me")
    assert f"by {name}" in told.body
    [layer] = [e for e in await room.standing() if e.act == "layer"]
    assert layer.member == name


@pytest.mark.parametrize("opening", ["opened the yard bin", "added 2 kg to the yard bin"])
@pytest.mark.parametrize("size", ["30 L", "30 litres", "it's about 30 litres", "30"])
async def test_the_size_that_was_asked_for(room: TalkingRoom, opening: str, size: str) -> None:
    [asked] = await room.says(opening)
    assert "how big" in asked.body.casefold()
    [told] = await room.says(size)
    assert told.body == "Noted: the yard bin holds 30 L."
    assert [kg for kg in await layers(room) if kg] == ([2, 2] if "added" in opening else [2])
    [corrected] = await room.says("no, 25 L")
    assert "holds 25 L" in corrected.body
    [corrected] = await room.says("no 28")
    assert "holds 28 L" in corrected.body


async def test_a_size_is_no_answer_to_what_was_asked_before(room: TalkingRoom) -> None:
    await room.says("opened the yard bin")
    await room.says("added 5 L of peel to the shed bin")
    await room.says("6 L")
    volumes = [e.facts.volume_l for e in await room.standing() if e.act == "layer"]
    assert volumes == [None, 6]
    assert [e.facts.capacity_l for e in await room.standing() if e.act == "open"] == [20, None]


@pytest.mark.parametrize(
    "words",
    ["unsealed", "opened it again", "unsealed it again, we forgot the rinds",
     "had to open the shed bin again", "reopened the shed bin",
     "the shed bin is not sealed after all", "wait, not sealed yet"],
)  # fmt: skip
async def test_a_sealed_bin_is_opened_again(room: TalkingRoom, words: str) -> None:
    await room.says("sealed the shed bin")
    await room.waits(days=1)
    [told] = await room.says(words)
    assert told.body.startswith(
        "The shed bin is open again: its sealing, yesterday, is struck out."
    )
    assert [e.act for e in await room.standing()] == ["open", "layer", "unseal"]


async def test_what_is_not_sealed_is_not_unsealed(room: TalkingRoom) -> None:
    [told] = await room.says("unsealed the shed bin")
    assert told.body == "The shed bin is not sealed: its records go on."
    [told] = await room.says("unsealed the attic bin")
    assert told.body.startswith("I know no bin called “attic”.")
    assert await room.says("opened it again") == []
    assert [e.act for e in await room.standing()] == ["open", "layer"]


async def test_a_new_name_begins_a_bin_and_fills_no_other(room: TalkingRoom) -> None:
    for name in ("Dot", "the 🦄 bin", "the coffee bin", "the evil.com bin", "the @room bin"):
        [told] = await room.says(f"added 2 kg to {name}")
        assert "That begins" in told.body
    bins = [e.bin.name for e in await room.standing() if e.bin]
    assert bins == ["shed", "shed", "Dot", "🦄", "coffee", "evil. com", "room"]


async def test_a_size_and_a_record_in_one_message(room: TalkingRoom) -> None:
    [told] = await room.says("the shed bin is 40 L and I added 18 kg to the shed bin")
    assert "holds 40 L" in told.body
    assert "more than" not in told.body
    assert await layers(room) == [2, 18]


async def test_no_liquid_is_no_refusal_of_an_offer(room: TalkingRoom) -> None:
    await room.says("Bram, can you take the shed bin?")
    await room.says("no liquid at all", who="bram")
    [told, *_] = await room.says("I'll take it", who="bram")
    assert told.body.startswith("Bram keeps the shed bin now.")


@pytest.mark.parametrize(
    "words",
    ["no wait, keep it", "leave that as it was", "hang on, put it back", "that was right after all",
     "oops I didn't mean to delete it"],
)  # fmt: skip
async def test_a_second_thought_puts_back_what_was_struck_out(
    room: TalkingRoom, words: str
) -> None:
    await room.says("scratch that")
    assert await layers(room) == []
    [told] = await room.says(words)
    assert told.body == "In the book again: 2 kg in the shed bin."
    assert await layers(room) == [2]


async def test_what_was_put_back_is_changed_and_changed_back(room: TalkingRoom) -> None:
    await room.says("scratch that")
    await room.says("put it back")
    await room.says("no, 3 kg", event="$three")
    assert await layers(room) == [3]
    await room.deletes("$three")
    assert await layers(room) == [2]


async def test_a_correction_is_left_as_it_was(room: TalkingRoom) -> None:
    await room.says("no, 3 kg")
    await room.says("leave it as it was")
    assert await layers(room) == [2]


async def test_only_who_struck_it_out_puts_it_back(room: TalkingRoom) -> None:
    await room.says("scratch that")
    assert await room.says("put it back", who="bram") == []
    assert await layers(room) == []


@pytest.mark.parametrize("words", ["keep it", "leave it as it was", "put it back please"])
async def test_where_nothing_was_struck_out_it_is_talk(room: TalkingRoom, words: str) -> None:
    assert await room.says(words) == []
    assert await layers(room) == [2]


@pytest.mark.parametrize("words", ["scratch that", "leave it as it was"])
async def test_a_bin_opened_by_mistake_is_sealed_again(room: TalkingRoom, words: str) -> None:
    await room.says("sealed the shed bin")
    await room.says("unsealed it")
    [told] = await room.says(words)
    assert told.body.endswith("In the book again: sealing of the shed bin.")
    assert "seal" in [e.act for e in await room.standing()]


async def test_anothers_record_is_struck_out_only_when_sure(room: TalkingRoom) -> None:
    await room.says("hello all", who="bram")
    [asked] = await room.says("scratch that", who="bram")
    assert asked.body == ("The last record is ines's: 2 kg in the shed bin. Shall I strike it out?")
    assert await layers(room) == [2]
    await room.says("no", who="bram")
    assert await layers(room) == [2]
    await room.says("scratch that", who="bram")
    [told] = await room.says("yes", who="bram")
    assert told.body == "Struck out: 2 kg in the shed bin."
    assert await layers(room) == []


@pytest.mark.parametrize(
    ("words", "act"),
    [("shut both", "seal"), ("sealed all of them", "seal"), ("drained both bins", "drain")],
)
async def test_both_are_those_two_that_it_can_be(room: TalkingRoom, words: str, act: str) -> None:
    await room.says("opened the yard bin")
    await room.says("opened the attic bin, 10 L")
    await room.says("sealed the attic bin")
    await room.says("buried the attic bin")
    await room.says(words)
    done = [e.bin.name for e in await room.standing() if e.act == act and e.bin]
    assert sorted(set(done) - {"attic"}) == ["shed", "yard"]


async def test_both_of_three_are_asked_for(room: TalkingRoom) -> None:
    await room.says("opened the yard bin")
    await room.says("opened the attic bin", who="bram")
    [asked] = await room.says("sealed both", who="bram")
    assert asked.body == (
        "Which two: the shed bin, the yard bin or the attic bin? Say it again with their names."
    )
    assert "seal" not in [e.act for e in await room.standing()]


async def test_one_of_two_is_asked_for(room: TalkingRoom) -> None:
    await room.says("opened the yard bin")
    await room.says("added 1 kg to the yard bin")
    before = len(await layers(room))
    [asked] = await room.says("added 2 kg to the shed or the yard")
    assert (
        asked.body == "Which bin: the shed bin or the yard bin? Say it again with its name alone."
    )
    assert len(await layers(room)) == before


@pytest.mark.parametrize(
    "words",
    ["call it Greenie", "let's name it Greenie", "rename it to greenie", "it's called Greenie"],
)
async def test_the_bin_in_talk_gets_its_name(room: TalkingRoom, words: str) -> None:
    await room.says("opened the yard bin")
    [told] = await room.says(words)
    assert told.body.casefold().startswith("the yard bin is ")
    assert [bin.name.casefold() for bin in await (await room.book()).bins()] == ["shed", "greenie"]


@pytest.mark.parametrize("words", ["let's call it a day", "call it quits", "call it Sunday"])
async def test_a_day_is_called_and_no_bin(room: TalkingRoom, words: str) -> None:
    await room.says("opened the yard bin")
    assert await room.says(words) == []


async def test_a_number_far_from_the_one_before_corrects_nothing(room: TalkingRoom) -> None:
    await room.says("drained 150 ml from the shed bin")
    await room.says("oops meant 300")
    await room.says("oops meant 3")
    volumes = [e.facts.volume_l for e in await room.standing() if e.act == "drain"]
    assert volumes == [0.3]


async def test_a_question_of_ones_own_is_no_yes(room: TalkingRoom) -> None:
    await room.says("added 0 kg to the shed bin")
    before = len(await room.standing())
    for words in ("do I drain it", "do we open it?", "right then, later"):
        await room.says(words)
    assert len(await room.standing()) == before


@pytest.mark.parametrize("words", ["jk", "lol just kidding", "psych!", "haha april fools"])
async def test_a_jest_is_taken_back(room: TalkingRoom, words: str) -> None:
    await room.says("added 9 kg to the shed bin")
    await room.says(words)
    assert await layers(room) == [2]


async def test_a_yes_behind_a_later_record_is_not_for_an_earlier_question(
    room: TalkingRoom,
) -> None:
    [asked] = await room.says("sealed it with 3 kg of tape")
    assert asked.body == "Shall I write down a sealing?"
    await room.says("added 1 kg to the shed bin")
    await room.says("yes")
    assert [e.act for e in await room.standing()] == ["open", "layer", "layer"]


@pytest.mark.parametrize(
    "words", ["double the fun", "he said: scratch that", "what was the last entry I logged?"]
)
async def test_what_only_sounds_like_striking_strikes_nothing(
    room: TalkingRoom, words: str
) -> None:
    await room.says(words)
    assert await layers(room) == [2]


async def test_an_amount_doubled_is_struck_out_by_no_word(room: TalkingRoom) -> None:
    await room.says("double that")
    assert await layers(room) == [4]


async def test_a_bare_amount_with_nothing_to_correct_is_asked_about(room: TalkingRoom) -> None:
    await room.says("opened the yard bin, 25 L", who="bram")
    [asked] = await room.says("adz 2kg peal", who="bram")
    assert asked.body == "Shall I write down 2 kg in the yard bin?"
    await room.says("yes", who="bram")
    assert await layers(room) == [2, 2]


async def test_opening_again_is_told_in_the_story(room: TalkingRoom) -> None:
    await room.says("sealed the shed bin")
    await room.says("unsealed it")
    [told] = await room.says("story of the shed bin")
    assert "opened again by ines" in told.body


async def test_more_is_added_though_another_has_spoken(room: TalkingRoom) -> None:
    await room.says("added 4 kg to the yard bin", who="bram")
    await room.says("added 1 kg to the shed bin")
    await room.says("what weather!", who="bram")
    await room.says("another 300 g")
    last = (await room.standing())[-1]
    assert await layers(room) == [2, 4, 1, 0.3]
    assert last.bin
    assert last.bin.name == "shed"


async def test_more_of_nothing_takes_the_place_of_nothing(room: TalkingRoom) -> None:
    await room.waits(days=1)
    await room.says("morning", who="bram")
    await room.says("plus 3 kg more")
    assert await layers(room) == [2]


@pytest.mark.parametrize("said", ["300 ml", "about 0.3 litres", "it was 300 mL"])
async def test_how_much_came_off_is_no_layer(room: TalkingRoom, said: str) -> None:
    await room.says("drained the shed bin")
    await room.says(said)
    drains = [e.facts.volume_l for e in await room.standing() if e.act == "drain"]
    assert drains == [0.3]
    assert await layers(room) == [2]


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
    assert await layers(room) == kg


async def test_a_record_is_struck_out_by_what_went_in(room: TalkingRoom) -> None:
    await room.says("added 1 kg of bread to the shed bin", who="bram")
    await room.says("added 3 kg of peelings to the shed bin")
    [asked] = await room.says("scratch the bread")
    assert "is bram's: 1 kg in the shed bin. Shall I strike it out?" in asked.body
    assert await layers(room) == [2, 1, 3]
    await room.says("yes")
    assert await layers(room) == [2, 3]
    await room.says("put the bread back", who="bram")
    assert sorted(await layers(room), key=str) == [1, 2, 3]
    await room.says("strike out the fish")
    await room.says("scratch the peelings")
    assert sorted(await layers(room), key=str) == [1, 2]


async def test_a_reminder_just_set_is_moved_and_no_layer(room: TalkingRoom) -> None:
    await room.says("remind us to bring lids on Sunday at 10")
    for said in ("change it to Monday", "move it to Tuesday"):
        [answer] = await room.says(said)
        assert "bring lids" in answer.body
    assert [e.act for e in await room.standing() if e.act in ("layer", "date")] == ["layer", "date"]
    assert (await room.standing())[-1].replaces


async def test_more_is_drained_from_the_bin_that_was_drained(room: TalkingRoom) -> None:
    await room.says("opened the blue bin, 20 L")
    await room.says("added 1 kg to the shed bin")
    await room.says("drained 200 mL from the blue bin")
    await room.says("drained another 100 mL")
    bins = [e.bin.name for e in await room.standing() if e.act == "drain" and e.bin]
    assert bins == ["blue", "blue"]


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
    assert asked.body == (
        "The last record is ines's: 2 kg in the shed bin. Shall I correct it to 3 kg?"
    )
    assert await layers(room) == [2]
    await room.says("yes", who="bram")
    assert await layers(room) == [3]


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
    assert await layers(room) == [2]


async def test_the_whole_amount_each_is_said_as_it_was_taught(room: TalkingRoom) -> None:
    await room.says("opened the blue bin, 20 L")
    [asked] = await room.says("put 3 kg in shed and blue")
    taught = asked.body.split("“")[1].split("”")[0]
    await room.says(taught)
    assert await layers(room) == [2, 3, 3]


async def test_the_rest_of_a_layer_was_anothers(room: TalkingRoom) -> None:
    await room.says("added 3 kg of bread to the shed bin", who="bram")
    await room.waits(days=1)
    await room.says("only 2 kg of that was mine, the rest was Ines's", who="bram")
    told = [(e.member, e.facts.mass_kg) for e in await room.standing() if e.act == "layer"]
    assert told[1:] == [("bram", 2), ("ines", 1)]
    [asked] = await room.says("only 5 kg of that was mine, the rest was Ines's", who="bram")
    assert asked.body.startswith("Which record")


async def test_the_same_again_is_as_much_of_the_same(room: TalkingRoom) -> None:
    await room.says("added 3 kg of bread to the shed bin", who="bram")
    await room.waits(days=1)
    await room.says("same again", who="bram")
    last = (await room.standing())[-1]
    assert (last.facts.mass_kg, last.facts.materials) == (3, {"grain": 1.0})


async def test_the_same_again_of_nothing_is_asked_for(room: TalkingRoom) -> None:
    [asked] = await room.says("same again", who="bram")
    assert "Reply with the amount" in asked.body


async def test_a_bin_is_called_by_its_kind_where_there_are_others(room: TalkingRoom) -> None:
    await room.says("opened the tub, 15 L", who="bram")
    await room.says("added 1 kg to the tub")
    await room.says("sealed the tub")
    told = [(e.act, e.bin.name) for e in await room.standing() if e.bin]
    assert told[2:] == [("open", "tub"), ("layer", "tub"), ("seal", "tub")]
    await room.says("rename the tub to attic")
    bins = [bin.name for bin in await (await room.book()).bins()]
    assert bins == ["shed", "attic"]


async def test_two_bins_are_handed_on_in_one_breath(room: TalkingRoom) -> None:
    for who in ("theo", "dana"):
        await room.says("hello", who=who)
    [opened] = await room.says("opened the hall bin, 25 L, for all, and the attic bin, 12 L")
    assert "the hall bin, 25 L, for everybody" in opened.body
    await room.says("handing the hall bin to Theo on Monday and the attic bin to Dana")
    offers = [e for e in await room.standing() if e.act == "offer"]
    assert [(e.bin and e.bin.name, e.receiver) for e in offers] == [
        ("hall", "theo"),
        ("attic", "dana"),
    ]


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("handing the shed bin to Ben for two weeks from Friday",
         "Friday 20 March: I ask"),
        ("move the burial to Saturday", "The day of a burial follows from what is in the book"),
        ("cancel the heap one", "Called off: turn the heap."),
    ],
)  # fmt: skip
async def test_what_is_arranged_is_answered_for(room: TalkingRoom, said: str, told: str) -> None:
    await room.says("hello", who="ben")
    await room.says("sealed the shed bin")
    await room.says("remind us to turn the heap every Friday at 19:00")
    [answer] = await room.says(said)
    assert told in answer.body
    assert "cannot set" not in answer.body


async def test_only_the_scraps_that_are_named_are_struck_out(room: TalkingRoom) -> None:
    await room.says("added 2 kg of peelings and sealed the shed bin")
    await room.says("opened the hall bin, 12 L")
    await room.says("added 2 kg of carrots to the shed bin and 1 kg of bread to the hall bin")
    [struck] = await room.says("scratch the bread")
    assert struck.body == "Struck out: 1 kg in the hall bin."


async def test_what_the_bot_answered_is_no_question_to_the_neighbours(room: TalkingRoom) -> None:
    await room.says("drained the shed bin, 300 ml", who="bram")
    await room.says("how much water for that?")
    await room.says("the drain was 200 ml not 300", who="bram")
    drains = [e.facts.volume_l for e in await room.standing() if e.act == "drain"]
    assert drains == [0.2]


async def test_a_layer_from_long_before_its_bin_was_opened_is_asked_about(
    room: TalkingRoom,
) -> None:
    long_ago = room.now - timedelta(days=30)
    [asked] = await room.says(f"1 kg of marrow in the shed bin on {long_ago:%d %B}")
    assert "was opened later" in asked.body
    assert await layers(room) == [2]
    await room.says("yes")
    assert await layers(room) == [2, 1]


@pytest.mark.parametrize(
    ("before", "then", "sealed"),
    [
        ("how full is the pantry bin?", "ok, sealed it", "the pantry bin"),
        ("drained the pantry bin, 200 ml", "closed it up", "the pantry bin"),
        ("how full are the bins?", "sealed it", "the shed bin"),
    ],
)
async def test_it_is_the_bin_just_spoken_of(
    room: TalkingRoom, before: str, then: str, sealed: str
) -> None:
    await room.says("opened the pantry bin, 20 L")
    await room.says("1 kg in the pantry bin")
    await room.says("1 kg in the shed bin")
    await room.says(before)
    [answer] = await room.says(then)
    assert f"{sealed} is sealed" in answer.body.lower()


async def test_it_is_not_the_bin_that_another_asked_about(room: TalkingRoom) -> None:
    await room.says("opened the pantry bin, 20 L")
    await room.says("1 kg in the shed bin")
    await room.says("how full is the pantry bin?", who="bram")
    [answer] = await room.says("closed it up")
    assert answer.body.startswith("The shed bin is sealed")


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
    assert await layers(room) == [2]
    [answer] = await room.says(day)
    assert day in answer.body or "yesterday" in answer.body
    assert await layers(room) == [2, 1]


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


async def test_a_bin_just_opened_is_not_the_one_that_is_drained(room: TalkingRoom) -> None:
    await room.says("2 kg in the shed bin")
    await room.says("opened the pantry bin, 20 L")
    await room.says("drained it, 200 ml")
    drained = [entry for entry in await room.standing() if entry.act == "drain"]
    assert [entry.bin and entry.bin.name for entry in drained] == ["shed"]
