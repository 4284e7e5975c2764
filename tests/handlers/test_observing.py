"""What is seen in a bin is written down, and answered where it means something."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from handlers.reading.acts import Ask, Layer, Observe, Seal
from handlers.state import look_up
from storage.database import Database
from tests.group import BEGIN, Group
from tests.room import TalkingRoom


async def test_good_signs_are_called_good(group: Group) -> None:
    # Footer 2013 ch. 4 and booklets: white growth and a sour smell are as they should be.
    said = (await group.says(Ask(topic="trouble", signs=("white_mould", "sour")))).say
    assert "ferment at work" in said
    assert "Carry on" in said


@pytest.mark.parametrize(
    ("signs", "cause", "also"),
    [
        # Footer 2013 ch. 4 and 6; common practice for flies and gas.
        (("rotten", "wet"), "too wet, or not drained", ""),
        (("green_mould",), "air gets in", "bury those 20 cm deep"),
        (("insects",), "flies laid eggs", ""),
        (("gas",), "yeasts make gas", "face turned away"),
    ],
)
async def test_the_likeliest_cause_and_its_remedy(
    group: Group, signs: tuple[str, ...], cause: str, also: str
) -> None:
    answer = await group.says(Ask(topic="trouble", signs=signs))  # type: ignore[arg-type]
    assert answer.say.startswith(f"Most likely {cause}")
    assert also in answer.say
    assert len(answer.say.split("\n")) <= 3
    assert answer.why


async def test_a_bin_past_saving_is_given_up_first(group: Group) -> None:
    said = (await group.says(Ask(topic="trouble", signs=("green_mould", "rotten")))).say
    assert said.startswith("Give this bin up")
    assert "mask" in said


async def test_a_question_without_a_sign_is_asked_back(group: Group) -> None:
    assert "What do you see or smell" in (await group.says(Ask(topic="trouble"))).say


async def test_a_smell_that_lasts_a_week_is_given_up(group: Group) -> None:
    # A South African supplier: still rotten after seven days, bury it.
    await group.says(Layer(bin="shed", mass_kg=2.0))
    first = await group.says(Observe(signs=("rotten",), bin="shed"), days=1)
    assert first.say.startswith("The shed bin: Most likely")
    soon = await group.says(Observe(signs=("rotten",), bin="shed"), days=4)
    assert "Give this bin up" not in soon.say
    later = await group.says(Observe(signs=("rotten",), bin="shed"), days=9)
    assert "Give this bin up" in later.say


@pytest.mark.parametrize(
    ("seen", "words"),
    [
        # 21 CFR 114.3: acid foods reach 4.6; common practice: 15 to 30 °C.
        (Observe(ph=3.8), "sour enough"),
        (Observe(ph=5.2), "not sour yet"),
        (Observe(celsius=8.0), "too cold"),
        (Observe(celsius=40.0), "too warm"),
    ],
)
async def test_a_figure_that_means_something_is_answered(
    group: Group, seen: Observe, words: str
) -> None:
    answer = await group.says(seen)
    assert words in answer.say
    assert len(answer.entries) == 1


async def test_an_ordinary_temperature_is_only_noted(group: Group) -> None:
    for seen in (Observe(celsius=20.0), Observe()):
        answer = await group.says(seen)
        assert answer.noted
        assert not answer.say


async def test_a_ph_that_cannot_be_is_not_written_down(group: Group) -> None:
    answer = await group.says(Observe(ph=40.0))
    assert "between 0 and 14" in answer.say
    assert not answer.entries


@pytest.mark.parametrize("celsius", [70.0, -50.0])
async def test_a_temperature_that_no_bin_has_is_not_written_down(
    group: Group, celsius: float
) -> None:
    await group.says(Layer(bin="shed", mass_kg=2.0))
    await group.says(Seal(bin="shed"), days=1)
    answer = await group.says(Observe(bin="shed", celsius=celsius), days=2)
    assert not answer.entries
    assert "nothing is written down" in answer.say
    assert (await group.dues())["shed", "bury"][1] == BEGIN.date() + timedelta(days=15)


async def test_an_old_reading_beyond_all_bounds_stops_no_calendar(group: Group) -> None:
    await group.says(Layer(bin="shed", mass_kg=2.0))
    bin = await group.book.bin("shed")
    assert bin
    state = await look_up(group.book, bin, BEGIN.date())
    hot = replace(state.run, celsius=75.0)
    assert hot.to_bury(BEGIN.date()).start == BEGIN.date() + timedelta(days=10)


@pytest.mark.parametrize(
    ("ph", "begin", "end"),
    [
        ("3.8", date(2026, 3, 12), date(2026, 3, 16)),
        ("4.4", date(2026, 3, 15), date(2026, 3, 17)),
        ("5.2", date(2026, 3, 19), date(2026, 3, 26)),
    ],
)
async def test_what_is_not_sour_is_buried_later(
    db: Database, ph: str, begin: date, end: date
) -> None:
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 30 L")
    await room.says("4 kg of peelings in the yard bin")
    await room.says("sealed the yard bin")
    await room.waits(days=10)
    await room.says(f"ph is {ph} in the yard bin")
    [bury] = [due for due in await (await room.book()).dues() if due.what == "bury"]
    assert (bury.from_day, bury.to_day) == (begin, end)


@pytest.mark.parametrize(
    ("celsius", "days"),
    [
        # Growth of lactic acid bacteria (Wijtzes et al. 1995) at 8 °C is 4.3 times as slow as at
        # 20 °C: 10 to 14 days are forty or more, of which no more than six weeks are forecast.
        (8.0, "Tuesday 14 April now, not Friday 13 to Tuesday 17 March"),
        (20.0, ""),
    ],
)
async def test_a_temperature_that_moves_the_burial_says_so(
    group: Group, celsius: float, days: str
) -> None:
    await group.says(Layer(bin="shed", mass_kg=2.0))
    await group.says(Seal(bin="shed"), days=1)
    answer = await group.says(Observe(bin="shed", celsius=celsius), days=2)
    assert days in answer.say
    assert bool(answer.say) == bool(days)


@pytest.mark.parametrize("said", ["the blue one", "blue", "it's the blue bin"])
async def test_a_sign_of_one_of_several_bins_owes_which(db: Database, said: str) -> None:
    room = TalkingRoom(db)
    await room.says("opened the blue bin, 20 L, and the green bin, 20 L")
    [answer] = await room.says("it smells rotten", who="bram")
    assert "Which bin: the blue bin or the green bin?" in answer.body
    await room.says(said, who="bram")
    seen = [e.bin.name for e in await room.standing() if e.act == "observe" and e.bin]
    assert seen == ["blue"]


async def test_a_good_sign_owes_nothing(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the blue bin, 20 L, and the green bin, 20 L")
    [answer] = await room.says("white mould on top", who="bram")
    assert "?" not in answer.body


@pytest.mark.parametrize(
    ("ph", "answer"),
    # maize silage: 3.7 to 4.2 (Kung and Shaver); acid foods: 4.6 (21 CFR 114.3)
    [
        (3.8, "is sour enough"),
        (4.4, "is nearly sour enough"),
        (5.0, "not sour yet"),
        (40.0, "0 and"),
    ],
)
async def test_a_ph_that_is_asked_about_is_judged_and_not_written_down(
    group: Group, ph: float, answer: str
) -> None:
    said = await group.says(Ask(topic="trouble", ph=ph))
    assert answer in said.say
    assert not said.entries
