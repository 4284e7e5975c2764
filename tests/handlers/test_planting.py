"""The soil's temperature, told beside a burial or by itself, moves the days to plant."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom

BURIED_16_MARCH = ("opened the shed bin, 20 L", "3 kg peel in shed", "sealed shed")

# Soil of 15 °C or more waits 2 to 3 weeks (a New York booklet, a UK master composter). That decay
# halves with each 10 °C (soil respiration's Q10 of about 2) makes it 6 to 8 weeks at 5 to 10 °C.
WARM, COOL, COLD = (
    "Monday 30 March to Monday 6 April",
    "Monday 6 to Monday 13 April",
    "Monday 11 May",
)


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    room = TalkingRoom(db)
    for words in BURIED_16_MARCH:
        await room.says(words)
    await room.waits(days=14)
    return room


@pytest.mark.parametrize(
    ("told", "days", "celsius"),
    [
        (("buried shed under the plum, the soil is 8 degrees",), COLD, 8),
        (("buried shed under the plum", "the soil is only 8 degrees"), COLD, 8),
        (("buried shed under the plum", "soil's 12 °C now"), COOL, 12),
        (("buried shed", "2 kg peel in shed", "checked the soil and it was 8 degrees"), COLD, 8),
        (("buried shed, soil 8 degrees", "the ground has warmed up to 16 degrees"), WARM, 16),
        (("buried shed under the plum", "we plant once the soil is 8 degrees"), WARM, None),
        (("buried shed under the plum", "the soil is 8 degrees warmer than in May"), WARM, None),
        (("buried shed under the plum", "is the soil 8 degrees?"), WARM, None),
        (("buried shed under the plum", "it's 8 degrees outside"), WARM, None),
    ],
)
async def test_cold_soil_is_planted_later(
    room: TalkingRoom, told: tuple[str, ...], days: str, celsius: float | None
) -> None:
    for words in told:
        await room.says(words)
    burials = [entry for entry in await room.standing() if entry.act == "bury"]
    assert [entry.facts.celsius for entry in burials] == [celsius]
    [due] = [message.body for message in await room.says("what's due?")]
    [planting] = [line for line in due.splitlines() if "plant where" in line]
    assert days in planting


async def test_soil_of_another_bed_moves_nothing(room: TalkingRoom) -> None:
    await room.says("buried shed under the plum")
    await room.says("opened the blue bin, 20 L")
    await room.says("2 kg peel in blue")
    await room.says("buried blue in the rose bed")
    [said] = await room.says("the soil in the rose bed is 8 degrees")
    assert said.body.startswith("The blue bin is in the ground.")
    assert "shed" not in said.body


async def test_the_soil_before_any_burial_is_no_record(room: TalkingRoom) -> None:
    before = await room.standing()
    await room.says("the soil is at 8 degrees")
    assert await room.standing() == before


@pytest.mark.parametrize(
    ("said", "left"),
    [
        (("buried shed under the plum", "the soil is 8 degrees", "scratch that"), [None]),
        (("buried shed, soil 8 degrees", "soil's 12 °C now", "scratch that"), [8.0]),
        (("buried shed, soil 8 degrees", "scratch that"), []),
        (("buried shed", "the soil is 8 degrees", "no, I buried it yesterday", "scratch that"), []),
        (("buried shed", "the soil is 8 degrees", "scratch that", "scratch that"), []),
    ],
)
async def test_what_was_measured_of_the_soil_alone_is_struck_out(
    room: TalkingRoom, said: tuple[str, ...], left: list[float | None]
) -> None:
    for words in said:
        await room.says(words)
    assert [e.facts.celsius for e in await room.standing() if e.act == "bury"] == left


async def test_a_measure_of_no_soil_of_ours_strikes_nothing(room: TalkingRoom) -> None:
    await room.says("morning all", who="bram")
    await room.says("drained shed, 1 L")
    before = await room.standing()
    await room.says("the soil is 8 degrees")
    assert await room.says("scratch that") == []
    assert await room.standing() == before


@pytest.mark.parametrize("said", ["no, 18 degrees", "it's 18 degrees, not 8", "no, it's 18 C"])
async def test_a_reading_put_right_moves_every_burial_it_was_kept_with(
    room: TalkingRoom, said: str
) -> None:
    await room.says("opened the yard bin, 20 L. 3 kg peel in yard")
    await room.says("sealed yard")
    await room.says("buried shed and yard")
    await room.says("the soil is 8 degrees")
    await room.says(said)
    burials = [entry for entry in await room.standing() if entry.act == "bury"]
    assert [entry.facts.celsius for entry in burials] == [18, 18]


@pytest.mark.parametrize(
    "said", ["no, 200 degrees", "lovely day, 25 degrees", "22 degrees in the kitchen"]
)
async def test_degrees_of_something_else_put_no_reading_right(room: TalkingRoom, said: str) -> None:
    await room.says("buried shed")
    await room.says("the soil is 8 degrees")
    await room.says(said)
    [burial] = [entry for entry in await room.standing() if entry.act == "bury"]
    assert burial.facts.celsius == 8


@pytest.mark.parametrize(
    ("words", "celsius"),
    [
        ("3 C", 3.0),
        ("6 not 8", 6.0),
        ("sorry, 6", 6.0),
        ("5 now", 5.0),
        ("it's 50 F", 10.0),
        ("5", 8.0),
        ("3 of us are coming", 8.0),
        ("in 3 days then", 8.0),
    ],
)
async def test_the_soil_is_put_right_in_few_words(db: Database, words: str, celsius: float) -> None:
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("opened the shed bin, 20 L")
    await room.says("1 kg of peelings in the shed")
    await room.says("buried the shed bin under the pear")
    await room.says("the soil is 8 degrees")
    await room.says(words)
    [buried] = [entry for entry in await room.standing() if entry.act == "bury"]
    assert buried.facts.celsius == celsius
