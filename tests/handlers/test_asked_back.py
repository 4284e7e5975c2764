"""What the bot asks back is answered by the next words, and by nothing else's amount."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Two bins, and a layer of which it is not known where it went."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("opened the larder bin, 20 L")
    await room.says("opened the gate bin, 20 L")
    await room.says("added 2 kg of scraps")
    return room


async def layers(room: TalkingRoom) -> list[tuple[str | None, float | None]]:
    entries = [entry for entry in await room.standing() if entry.act == "layer"]
    return [(entry.bin.name if entry.bin else None, entry.facts.mass_kg) for entry in entries]


async def test_an_amount_answers_the_question_of_the_dose(room: TalkingRoom) -> None:
    await room.says("how much starter on peelings?")
    [dose] = await room.says("about 3 kg")
    assert "on 3 kg" in dose.body
    assert await layers(room) == [(None, 2)]
    await room.says("gate")
    assert await layers(room) == [("gate", 2)]


@pytest.mark.parametrize(
    ("said", "answered"),
    [("a bucket", "10 L"), ("2 kg of fish", "rich in fish"), ("half a bucket of rice", "5 L")],
)
async def test_it_may_be_a_vessel_or_other_scraps(
    room: TalkingRoom, said: str, answered: str
) -> None:
    await room.says("how much starter on peelings?")
    [dose] = await room.says(said)
    assert answered in dose.body
    assert await layers(room) == [(None, 2)]


async def test_a_question_passed_over_leaves_the_one_before_it_open(room: TalkingRoom) -> None:
    await room.says("how much starter on peelings?")
    await room.says("larder")
    assert await layers(room) == [("larder", 2)]


@pytest.mark.parametrize("said", ["3 tbsp", "put 3 tbsp", "no, 2 tablespoons"])
async def test_spoons_are_starter_and_no_layer(room: TalkingRoom, said: str) -> None:
    await room.says("gate")
    await room.says(said)
    assert await layers(room) == [("gate", 2)]


async def test_a_draining_may_be_put_right_in_spoons(room: TalkingRoom) -> None:
    await room.says("drained 300 ml from the gate bin")
    await room.says("no, 3 tbsp")
    [drain] = [entry for entry in await room.standing() if entry.act == "drain"]
    assert drain.facts.volume_l == pytest.approx(0.045)


@pytest.mark.parametrize(
    ("said", "kg"), [("1.5 kg left", 1.5), ("about 2 kg", 2), ("1 kg of bran left", 1)]
)
async def test_an_amount_answers_the_question_of_the_starter(
    room: TalkingRoom, said: str, kg: float
) -> None:
    await room.says("how much bran is left?")
    await room.says(said)
    [stock] = [entry for entry in await room.standing() if entry.act == "stock"]
    assert stock.facts.mass_kg == kg
    assert await layers(room) == [(None, 2)]


async def test_no_forecast_goes_beyond_what_bran_keeps(room: TalkingRoom) -> None:
    await room.says("we have 3 kg of bran")
    await room.says("added 1 kg of bread to the gate bin")
    [answer] = await room.says("how much starter is left?")
    assert "more than a year" in answer.body
    assert "begin a batch" not in answer.body


async def test_whose_pounds_are_meant_is_asked(room: TalkingRoom) -> None:
    [asked] = await room.says("bot, use pounds and quarts please")
    assert "use imperial units" in asked.body
    assert (await room.book()).room.units == "metric"
    await room.says("use US units")
    await room.says("use pounds")
    assert (await room.book()).room.units == "us"


async def test_both_on_a_day(room: TalkingRoom) -> None:
    await room.says("gate")
    await room.waits(days=2)
    await room.says("sealed both on Tuesday")
    seals = [entry for entry in await room.standing() if entry.act == "seal"]
    assert {entry.bin.name for entry in seals if entry.bin} == {"gate", "larder"}
    assert {entry.on and entry.on.day for entry in seals} == {3}
