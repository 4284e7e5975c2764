"""A few words behind an answer ask the same question of something else, and record nothing."""

from collections.abc import Sequence
from dataclasses import replace

import pytest

from handlers.reading.acts import Ask
from handlers.reading.plans import read
from storage.database import Database
from tests.reading.context import group
from tests.room import TalkingRoom

BEGUN = ("opened the shed bin, 20 L", "opened the yard bin, 12 L")


async def room_with(db: Database, *said: str) -> TalkingRoom:
    room = TalkingRoom(db)
    for words in (*BEGUN, *said):
        await room.says(words)
    return room


@pytest.mark.parametrize(
    ("asked", "follows", "answered"),
    [
        ("how much bran for 2 kg of peel?", "and for meat?", "on 2 kg: rich in meat"),
        ("how much bran for 2 kg of peel?", "and for 3 kg?", "on 3 kg: nothing rich"),
        ("how much bran for 2 kg of peel?", "thanks, and for 3 kg of fish?", "on 3 kg: rich in"),
        ("how much bran for 2 kg of peel?", "and 5 litres?", "on 5 L: nothing rich"),
        ("how much bran for 2 kg of peel?", "how about 5 litres of crusts?", "on 5 L: nothing"),
        ("how much bran for 2 kg of peel?", "what about 1 kg of meat?", "on 1 kg: rich in meat"),
        ("how much bran for 2 kg of peel?", "and twice that?", "on 4 kg"),
        ("how much bran for 2 kg of peel?", "double that", "on 4 kg"),
        ("how much bran for 2 kg of peel?", "pailkeeper, and for meat?", "on 2 kg: rich in meat"),
        ("how much bran for 2 kg of peel?", "4 kg", "on 4 kg: nothing rich"),
        ("how much bran for 3 kg of peel?", "what if it's a third of that?", "on 1 kg"),
        ("how much bran for 2 kg of peel?", "so what if it's a bucket?", "on 10 L"),
        ("how much juice for a 9 l can?", "and for pots?", "18 mL of liquid in 9 L"),
        ("how much juice for a 9 l can?", "and for our house plants?", "18 mL of liquid in 9 L"),
        ("how much juice for a 9 l can?", "and in a bucket?", "100 mL of liquid in 10 L"),
        ("how much juice for a 9 l can?", "what if it's only half full?", "45 mL of liquid in 4.5"),
        ("how much water for 100 ml of juice?", "and for 300 ml?", "300 mL of liquid in 30 L"),
        ("how much juice for a 9 l can?", "and for 300 ml of juice?", "300 mL of liquid in 30 L"),
        ("how many bins for 4 people?", "and for 6?", "for 9 kg a week"),
        ("how many bins for 12 households?", "and for six?", "for 22.5 kg a week"),
        ("how many bins for 4 people?", "and for 8 kg a week?", "for 8 kg a week"),
        ("how long a trench for 20 L?", "and for 40 L?", "1.6 m long"),
        ("how long a trench for the shed bin?", "and the yard?", "in the yard bin"),
        ("how long a trench for 20 L?", "and for 3 bins?", "for 60 L, 3 bins of 20 L"),
        ("how long a trench for 20 L?", "and for two full bins?", "for 40 L, 2 bins of 20 L"),
        ("how long a trench for the shed bin?", "what about 3 bins?", "60 L, 3 bins of 20 L"),
        ("how long a trench for 3 bins?", "and for two?", "for 40 L, 2 bins of 20 L"),
        ("how long a trench for 3 bins?", "and for the yard?", "in the yard bin"),
        ("how much bran for 3 bins?", "and for 2 bins?", "on 2 bins of 20 L as they fill"),
        ("how much bran for 2 kg of meat?", "and for 3 bins?", "on 3 bins, 2 kg in each: rich in"),
        ("how long will 3 kg of bran last?", "and 5 kg?", "5 kg lasts"),
        ("how much do 3 cups of bran weigh?", "and 6 cups?", "6 cups"),
        ("how much on a bed of 2 m by 3 m?", "and on 2 m2?", "on 2 m²"),
        ("how full is the shed bin?", "and the yard?", "The yard bin: filling"),
        ("how full is the shed bin?", "and the other?", "The yard bin: filling"),
        ("how much molasses for 5 kg of bran?", "and water?", "For 5 kg of bran"),
        ("how much molasses for 5 kg of bran?", "how much water?", "For 5 kg of bran"),
        ("how much molasses for 5 kg of bran?", "and for 3?", "For 3 kg of bran"),
        ("how do we make bran?", "what do we need for 5 kg?", "For 5 kg of bran"),
        ("how much bran is left?", "how do we make it?", "For 1 kg of bran"),
        ("can I put meat in?", "and bones", "small bones"),
        ("can I put meat in?", "paper towels", "paper and cardboard"),
        ("2 L of peelings in the shed bin", "how many kilos is that?", "is about 900 g"),
        ("when is the shed bin due?", "and the yard?", "due with the yard bin"),
        ("can bones go in?", "and eggshells?", "shells"),
        ("how do I make starter from 2 kg of bran?", "and from 5 kg?", "For 5 kg of bran"),
        ("how do I make starter from 2 kg of bran?", "and with rice bran?", "For 2 kg of bran"),
        ("how much bran for 2 kg of peel?", "and in winter?", "on 2 kg: nothing rich"),
        ("how much have we added?", "and this month?", "Nothing was put in"),
        ("what's due?", "and tomorrow?", "due"),
        ("who has the shed bin?", "and the yard?", "The yard bin: ines"),
        ("how much bran for 2 kg of peel?", "and with 1 kg of meat?", "on 3 kg: rich in meat"),
        ("what's the carbon of 2 kg of peel?", "and with 100 g of paper?", "about 34 to 1"),
        ("how long a trench for 20 L?", "and 40 cm deep?", "40 cm deep for 20 L"),
        ("what's the carbon of 2 kg of peel?", "and of 3 kg of bread?", "C:N"),
    ],
)
async def test_the_question_asked_last_is_answered_anew(
    db: Database, asked: str, follows: str, answered: str
) -> None:
    room = await room_with(db, asked)
    before = len(await room.standing())
    (answer,) = await room.says(follows, who="bram")
    assert answered in answer.body
    assert len(await room.standing()) == before


@pytest.mark.parametrize(
    ("asked", "answered"),
    [
        ("how much water", "200 mL of liquid in 20 L"),
        ("and for pots?", "in 10 L of water"),
        ("what about house plants", "in 10 L of water"),
    ],
)
async def test_what_is_asked_behind_a_draining_is_of_its_liquid(
    db: Database, asked: str, answered: str
) -> None:
    room = await room_with(db, "drained 200 ml from the shed bin")
    (answer,) = await room.says(asked)
    assert answered in answer.body


@pytest.mark.parametrize(
    ("said", "answered"),
    [
        (("how much bran for 2 kg of peel?", "and for meat?", "and 3 kg?"), "on 3 kg: rich in"),
        (("how much bran for 2 kg of peel?", "and the cat?", "and 3 kg?"), "on 3 kg: nothing"),
        (("how much bran for 2 kg of peel?", "why?", "and 3 kg?"), "on 3 kg: nothing"),
        (("how much bran for 2 kg of peel?", "and the cat?", "why?"), "2 kg"),
        (
            ("how much bran for 2 kg of peel and 1 kg of meat?", "and without the meat?"),
            "nothing rich in it",
        ),
    ],
)
async def test_one_thing_is_changed_after_another(
    db: Database, said: Sequence[str], answered: str
) -> None:
    room = await room_with(db, *said[:-1])
    (answer,) = await room.says(said[-1])
    assert answered in answer.body


async def test_an_edited_question_is_the_one_that_stands(db: Database) -> None:
    room = await room_with(db)
    await room.says("how much bran for 2 kg of peel?", event="$asked")
    await room.edits("$asked", "how much bran for 5 kg of peel?")
    (answer,) = await room.says("and for meat?")
    assert "on 5 kg: rich in meat" in answer.body


async def test_an_edited_follow_up_is_answered_anew(db: Database) -> None:
    room = await room_with(db)
    await room.says("how much bran for 2 kg of peel?")
    await room.says("and for meat?", event="$follows")
    (answer,) = await room.edits("$follows", "and for bread?")
    assert "on 2 kg: nothing rich" in answer.body
    (answer,) = await room.edits("$follows", "and for 3 kg of fish?")
    assert "on 3 kg: rich in fish" in answer.body
    (answer,) = await room.says("and for 4 kg?")
    assert "on 4 kg: rich in fish" in answer.body


async def test_an_edit_leans_on_no_question_of_another(db: Database) -> None:
    room = await room_with(db)
    await room.says("how much bran for 2 kg of peel?", who="bram")
    await room.says("how full is the shed bin?", event="$asked")
    assert "on 2 kg" not in str(await room.edits("$asked", "and for bread?"))


@pytest.mark.parametrize(
    ("said", "measure"),
    [
        ("in cups?", "cups"),
        ("how many cups is that?", "cups"),
        ("what's that in cups?", "cups"),
        ("and in grams?", None),
    ],
)
def test_a_dose_is_asked_for_in_another_measure(said: str, measure: str | None) -> None:
    asked = Ask(topic="dose", mass_kg=2.0, materials={"meat": 1.0})
    (again,) = read(said, group(in_room=True, after_bot=True, asked=(asked,)))
    assert again == replace(asked, what=measure)


@pytest.mark.parametrize(
    ("asked", "behind", "answered"),
    [
        # 1 lb is 0.45359237 kg, 1 in 2.54 cm, 1 ft2 0.09290304 m2 (NIST SP 811)
        ("how much bran for 2 kg of fish?", "in pounds?", "on 4 lb 7 oz: rich in fish"),
        ("how long a trench for 20 L?", "in feet?", "8 in wide and 10 in deep"),
        ("how long a trench for 20 L?", "what's that in inches", "8 in wide and 10 in deep"),
        ("how long a trench for 20 L?", "and in feet and inches, please?", "10 in deep"),
        ("how long a trench for 3 gallons?", "in metric please", "25 cm deep"),
        ("how do I dilute 200 ml of liquid?", "in US gallons?", "of liquid in 5¼ gallons"),
        ("how do I dilute 200 ml of liquid?", "how many pints is that?", "in 4⅜ gallons"),
        ("how do I make starter from 2 kg of bran?", "in lbs?", "For 4 lb 7 oz of bran"),
        ("how much on a bed of 2 m by 3 m?", "what is that in square feet?", "on 64.6 square feet"),
        ("how full is the shed bin?", "in imperial units?", "holds 4⅜ gallons"),
        ("how heavy is the shed bin when it's full?", "in lb?", " lb of scraps"),
        ("3 kg of peel in the shed", "in pounds?", "on 6 lb 10 oz"),
        ("3 kg of peel in the shed", "what's that in cups?", "¼ cup"),
    ],
)
async def test_an_answer_is_asked_for_in_other_units(
    db: Database, asked: str, behind: str, answered: str
) -> None:
    room = await room_with(db, asked)
    before = await room.standing()
    (answer,) = await room.says(behind)
    assert answered in answer.body
    assert await room.standing() == before


async def test_what_is_asked_further_keeps_the_units(db: Database) -> None:
    room = await room_with(db, "how much bran for 2 kg of peel?", "in pounds?")
    (answer,) = await room.says("and for 3 kg?")
    assert "on 6 lb 10 oz" in answer.body


@pytest.mark.parametrize(
    ("asked", "behind"),
    [
        ("how much bran for 2 kg of fish?", "in the morning?"),
        ("how much bran for 2 kg of fish?", "in Fahrenheit?"),
        ("how long a trench for 20 L?", "in pounds?"),
        ("how long a trench for 20 L?", "in two days?"),
        ("who has the shed bin?", "in pounds?"),
        ("what's due?", "in metric please"),
        ("3 kg of peel in the shed", "in pounds"),
        ("3 kg of peel in the shed", "how many pounds of butter for the cake?"),
    ],
)
async def test_units_that_an_answer_is_not_measured_in_are_not_taken_up(
    db: Database, asked: str, behind: str
) -> None:
    room = await room_with(db, asked)
    before = await room.standing()
    assert await room.says(behind) == []
    assert await room.standing() == before


async def test_what_was_drained_is_asked_about_in_few_words(db: Database) -> None:
    room = await room_with(db, "3 kg peel in shed", "drained 200 ml from shed")
    (answer,) = await room.says("is that too much?")
    assert "200 mL came off so far" in answer.body


async def test_a_reply_leans_on_the_answer_replied_to(db: Database) -> None:
    room = await room_with(db)
    (dose,) = await room.says("how much bran for 2 kg of peel?")
    await room.says("when is the shed bin due?", who="bram")
    await room.says("lovely evening", who="bram")
    (answer,) = await room.says("and for 3 kg?", replies_to=dose.tx_id)
    assert "on 3 kg" in answer.body


@pytest.mark.parametrize(
    "said",
    [
        ("how much bran for 2 kg of peel?", "and for the party?"),
        ("how much bran for 2 kg of peel?", "and you?"),
        ("how much bran for 2 kg of peel?", "what about Friday?"),
        ("how many bins for 4 people?", "and for the kids?"),
        ("and for 3 kg?",),
    ],
)
async def test_what_asks_of_nothing_before_it_meets_silence(
    db: Database, said: Sequence[str]
) -> None:
    room = await room_with(db, *said[:-1])
    assert await room.says(said[-1]) == []


async def test_behind_a_neighbours_words_or_an_hour_later_nothing_is_asked_anew(
    db: Database,
) -> None:
    room = await room_with(db, "how much bran for 2 kg of peel?")
    await room.says("shall I bring sausages on Friday?", who="bram")
    assert await room.says("and for 3 kg?") == []
    await room.says("how much bran for 2 kg of peel?")
    await room.waits(hours=2)
    assert await room.says("and for 3 kg?") == []


async def test_a_record_before_the_question_stays_as_it_is(db: Database) -> None:
    room = await room_with(db, "3 kg of peel in the shed", "how much bran for 2 kg of meat?")
    for follows in ("double that", "5 kg", "and half of that", "for 6 kg"):
        await room.says(follows)
    assert [e.facts.mass_kg for e in await room.standing() if e.act == "layer"] == [3.0]


@pytest.mark.parametrize(
    ("behind", "answered"),
    [
        ("and 1 kg of fish", "on 3 kg: rich in fish"),
        ("plus half a kilo of rice", "on 2.5 kg: nothing rich"),
        ("no, 3 kg", "on 3 kg: nothing rich"),
        ("no, 3", "on 3 kg: nothing rich"),
        ("sorry, 3 kg of meat", "on 3 kg: rich in meat"),
        ("I meant 3 kg", "on 3 kg: nothing rich"),
    ],
)
async def test_a_few_words_behind_a_question_are_of_what_was_asked(
    db: Database, behind: str, answered: str
) -> None:
    room = await room_with(db, "1 kg of rice in the shed", "how much bran for 2 kg of peel?")
    before = await room.standing()
    (answer,) = await room.says(behind)
    assert answered in answer.body
    assert await room.standing() == before


@pytest.mark.parametrize(
    ("asked", "behind", "much"),
    [
        ("how much bran for 2 kg of peel?", "no, the rice was 3 kg", [3.0]),
        ("how much bran for 2 kg of peel?", "no, 3 kg in the shed", [3.0]),
        ("how much bran for 2 kg of peel?", "and 2 kg of fish in the yard bin", [1.0, 2.0]),
        ("how much bran for 2 kg of peel?", "and I added 2 kg of fish to the yard bin", [1.0, 2.0]),
        ("how much bran for 1 kg of rice?", "no, 3 kg", [3.0]),
        ("how full is the shed bin?", "and 2 kg of fish", [1.0, 2.0]),
    ],
)
async def test_what_is_of_the_record_behind_a_question_is(
    db: Database, asked: str, behind: str, much: list[float]
) -> None:
    room = await room_with(db, "1 kg of rice in the shed", asked)
    await room.says(behind)
    assert [e.facts.mass_kg for e in await room.standing() if e.act == "layer"] == much


async def test_a_record_is_put_right_behind_a_question_of_its_bin(db: Database) -> None:
    room = await room_with(db, "3 kg of peel in the shed", "how full is the shed bin?")
    await room.says("no, 4 kg")
    assert [e.facts.mass_kg for e in await room.standing() if e.act == "layer"] == [4.0]


@pytest.mark.parametrize("told", ["3 kg of peel in the shed", "and 3 kg of peel in the shed"])
async def test_what_is_told_behind_a_question_is_a_record(db: Database, told: str) -> None:
    room = await room_with(db, "how much bran for 2 kg of meat?")
    before = len(await room.standing())
    await room.says(told)
    assert len(await room.standing()) == before + 1
