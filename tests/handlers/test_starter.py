"""The starter: recipes, what is left of it, and when to begin the next batch."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from handlers.practice.cautions import caution
from handlers.reading.acts import Ask, Batch, Layer, Retract, Stock
from handlers.recording.starter import lasting, used_a_day
from storage.database import Database
from tests.group import BEGIN, Group
from tests.room import TalkingRoom


async def test_both_recipes_are_told_by_what_they_say(group: Group) -> None:
    # USDA SR28: ten US cups of bran weigh 580 g; a tablespoon is 14.8 mL (NIST HB 44), so 25 mL to
    # the kilogram; a tenth of the weight in molasses of 1.424 kg/L is 70 mL.
    answer = await group.says(Ask(topic="batch"))
    assert "1 kg of bran, by a tablespoon of molasses to ten cups of bran: 25 mL" in answer.say
    assert "ten parts of bran to one of molasses by weight: 70 mL" in answer.say
    assert "hold when squeezed" in answer.say
    # Two weeks from Monday 2 March 2026.
    assert "airtight until Monday 16 March" in answer.say
    assert answer.say.split("\n")[3:] == [caution("mould")]
    assert answer.why


async def test_a_batch_in_american_measures(group: Group) -> None:
    group.book.room = replace(group.book.room, units="us")
    said = (await group.says(Ask(topic="batch", mass_kg=4.5359237))).say
    assert "For 10 lb of bran" in said
    # 78 cups of bran take 7.8 tablespoons of 14.8 mL; from two on they are measured by halves.
    assert "8 tablespoons (115 mL) of molasses" in said


async def test_a_batch_by_volume_and_an_absurd_one(group: Group) -> None:
    assert "For 245 g of bran" in (await group.says(Ask(topic="batch", volume_l=1.0))).say
    assert "beyond" in (await group.says(Ask(topic="batch", mass_kg=1e6))).say


async def test_a_batch_mixed_is_told_its_day(group: Group) -> None:
    answer = await group.says(Batch(mass_kg=4.0))
    assert "airtight until Monday 16 March" in answer.say
    assert answer.entries[0].act == "batch"


async def test_nobody_has_counted_yet(group: Group) -> None:
    assert "don't know yet" in (await group.says(Ask(topic="starter"))).say
    await group.says(Batch(mass_kg=4.0))
    # Two weeks sealed and three days to dry.
    assert "ready about Thursday 19 March" in (await group.says(Ask(topic="starter"))).say


async def test_a_count_alone_tells_what_is_there(group: Group) -> None:
    await group.says(Stock(mass_kg=3.0))
    said = (await group.says(Ask(topic="starter"))).say
    assert said == "About 3 kg starter is left, by the count of today less the doses since."


async def test_the_starter_runs_out_and_a_batch_is_begun_in_time(group: Group) -> None:
    group.book.room = replace(group.book.room, habit="weight")
    await group.says(Stock(mass_kg=1.0))
    # 2 % of 10 kg is 200 g, in a week of which nothing else is known: 28.6 g a day, so that the
    # 800 g left are gone in 28 days, on 30 March, and a batch of 20 days is begun by the 10th.
    await group.says(Layer(bin="shed", mass_kg=10.0))
    answer = await group.says(Ask(topic="starter"))
    assert "About 800 g starter is left" in answer.say
    assert "lasts until Monday 30 March: begin a batch by Tuesday 10 March" in answer.say
    assert any("20 days" in line for line in answer.why)
    late = (await group.says(Ask(topic="starter"), days=20)).say
    assert "begin a batch by" in late
    # Six layers of 3.5 kg take 420 g more: 380 g are left, and 620 g went in four weeks, 22 a day.
    for day in range(21, 27):
        await group.says(Layer(bin="shed", mass_kg=3.5), days=day)
    assert "begin a batch now" in (await group.says(Ask(topic="starter"), days=27)).say


async def test_with_a_batch_on_its_way_none_is_begun(group: Group) -> None:
    await group.says(Stock(mass_kg=0.3))
    await group.says(Layer(bin="shed", mass_kg=10.0))
    await group.says(Batch(mass_kg=4.0))
    said = (await group.says(Ask(topic="starter"))).say
    assert "begin a batch" not in said
    assert "A batch is on its way" in said


async def test_plenty_is_plenty_and_none_is_none(group: Group) -> None:
    await group.says(Stock(mass_kg=500.0))
    await group.says(Layer(bin="shed", mass_kg=1.0))
    assert "for years" in (await group.says(Ask(topic="starter"))).say
    await group.says(Stock(mass_kg=0.001))
    await group.says(Layer(bin="shed", mass_kg=5.0))
    assert "About no starter" not in (await group.says(Ask(topic="starter"))).say
    assert "No starter is left" in (await group.says(Ask(topic="starter"))).say


async def test_doses_of_last_month_do_not_count(group: Group) -> None:
    await group.says(Layer(bin="shed", mass_kg=2.0))
    grams = (await group.book.entries())[0].facts.starter_g
    assert grams
    assert await used_a_day(group.book, BEGIN.date()) == pytest.approx(grams / 7)
    assert await used_a_day(group.book, date(2026, 4, 20)) is None


async def test_a_count_by_volume_and_one_taken_back(group: Group) -> None:
    # USDA SR28: 58 g to the US cup, 245 g to the litre.
    await group.says(Stock(volume_l=4.0))
    assert "About 980 g" in (await group.says(Ask(topic="starter"))).say
    await group.says(Stock(mass_kg=7.0))
    assert "About 7 kg" in (await group.says(Ask(topic="starter"))).say
    await group.says(Retract())
    assert "About 980 g" in (await group.says(Ask(topic="starter"))).say


async def test_a_batch_is_due_before_the_starter_runs_out(group: Group) -> None:
    # A batch takes 14 days sealed, 3 to dry and 3 in hand: common practice.
    await group.says(Stock(mass_kg=1.0))
    for day in range(8):
        await group.says(Layer(bin="shed", mass_kg=5.0), days=day)
    [mix] = [due for due in await group.book.dues() if due.what == "mix"]
    lasts = await lasting(group.book, BEGIN.date() + timedelta(days=7))
    assert lasts
    assert lasts.starter_out_on
    assert mix.to_day == lasts.begin_batch_by == lasts.starter_out_on - timedelta(days=20)
    await group.says(Batch(mass_kg=2.0), days=8)
    assert [due.what for due in await group.book.dues() if due.bin is None] == ["dry"]


@pytest.mark.parametrize(
    ("said", "left", "answer"),
    [
        ("gave 200 g of bran to Ruth", 0.8, "So 800 g of starter is on hand."),
        ("lent Bram 100 g of bran", 0.9, "So 900 g of starter is on hand."),
        ("spilled 300 g of the bran", 0.7, "So 700 g of starter is on hand."),
        ("took 200 g of bran", 0.8, "So 800 g of starter is on hand."),
        ("helped myself to 300 g of bran", 0.7, "So 700 g of starter is on hand."),
        ("bought a 5 kg bag of ready bran", 6, "So 6 kg of starter is on hand."),
        ("a new sack of bran came, 10 kg", 11, "So 11 kg of starter is on hand."),
        ("bought another 2 kg of bran", 3, "So 3 kg of starter is on hand."),
        ("gave away 3 kg of bran", 1, "That is more than the 1 kg of starter I know of"),
        ("we have 2 kg of bran left", 2, ""),
    ],
)
async def test_starter_comes_and_goes(db: Database, said: str, left: float, answer: str) -> None:
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("we have 1 kg of bran")
    heard = await room.says(said)
    assert answer in "\n".join(message.body for message in heard)
    counted = await (await room.book()).latest_batch("stock")
    assert counted
    assert counted.facts.mass_kg == pytest.approx(left)


async def test_what_goes_from_starter_never_counted(db: Database) -> None:
    room = TalkingRoom(db)
    [answer] = await room.says("gave 200 g of bran to Ruth")
    assert answer.body.startswith("I don't know how much starter there was")
    assert await room.standing() == []


async def test_nobody_is_late_before_the_starter_was_counted(group: Group) -> None:
    await group.says(Stock(mass_kg=1.0))
    await group.says(Layer(bin="shed", mass_kg=5.0))
    await group.says(Stock(mass_kg=0.0), days=4)
    [mix] = [due for due in await group.book.dues() if due.what == "mix"]
    assert mix.from_day == mix.to_day == BEGIN.date() + timedelta(days=4)


async def test_what_the_group_counts_tells_how_much_it_uses(db: Database) -> None:
    # 400 g went in each of two weeks, so that 1.2 kg are three weeks' worth: until 6 April.
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 60 L")
    await room.says("we have 2 kg of bran")
    for left in ("1.6", "1.2"):
        await room.waits(days=7)
        await room.says("2 kg of peelings in the yard bin")
        await room.says(f"{left} kg of bran left")
    [told] = await room.says("how much bran have we got?")
    assert "lasts until Monday 6 April: begin a batch by tomorrow" in told.body


async def test_nothing_is_to_be_mixed_while_the_starter_outlasts_what_it_keeps(
    group: Group,
) -> None:
    await group.says(Stock(mass_kg=4.0))
    for day in range(0, 30, 3):
        await group.says(Layer(bin="shed", mass_kg=2.0), days=day)
    assert [due.what for due in await group.book.dues() if due.bin is None] == []
    assert "more than a year" in (await group.says(Ask(topic="starter"), days=30)).say


async def test_a_batch_that_is_dry_is_to_be_counted_in(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("mixed 5 kg of starter today")
    await room.says("we have 500 g of bran")
    await room.waits(days=23)
    [*_, told] = await room.says("how much bran have we got?")
    assert "The batch mixed Monday 2 March is not counted in." in told.body
    await room.says("we have 4.5 kg of bran")
    [told] = await room.says("how much bran have we got?")
    assert "counted in" not in told.body


@pytest.mark.parametrize(
    ("said", "asked", "told"),
    [
        ("800 g of bran left", "how long does that last?", "About 800 g starter is left"),
        ("800 g of bran left", "how long will the bran last us?", "About 800 g starter is left"),
        ("drained a cup", "how much water for that?", "250 mL of liquid in 25 L of water"),
    ],
)
async def test_a_question_leans_on_what_was_just_told(
    db: Database, said: str, asked: str, told: str
) -> None:
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 30 L")
    await room.says(said)
    [answer] = await room.says(asked)
    assert answer.body.startswith(told)


async def test_a_count_of_starter_behind_an_answer_is_no_layer(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 30 L")
    await room.says("1.5 kg of bran on hand")
    assert [(e.act, e.facts.mass_kg) for e in await room.standing()][1:] == [("stock", 1.5)]
