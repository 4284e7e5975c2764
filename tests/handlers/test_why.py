"""Every answer with a figure can say why: arithmetic, source and standing."""

import re
from collections.abc import Sequence

import pytest

from handlers.practice.figure import STANDINGS
from handlers.reading.acts import (
    Act,
    Ask,
    Batch,
    Bury,
    Drain,
    Layer,
    Observe,
    Open,
    Seal,
    Set,
    Stock,
)
from storage.database import Database
from storage.rooms import find
from tests.group import Group
from tests.room import TalkingRoom

FILLED: Sequence[Act] = (
    Open(bin="shed", capacity_l=20.0),
    Layer(bin="shed", mass_kg=2.0, materials={"meat": 0.7, "mixed": 0.3}),
    Layer(bin="shed", volume_l=3.0),
    Drain(bin="shed", volume_l=0.2),
    Stock(mass_kg=1.0),
)
FIGURES: Sequence[Act] = (
    Open(bin="yard", capacity_l=20.0),
    Layer(bin="shed", mass_kg=2.0),
    Layer(bin="shed"),
    Seal(bin="shed"),
    Bury(bin="shed", place="pear bed"),
    Batch(mass_kg=2.0),
    Observe(bin="shed", ph=4.2),
    *(
        Ask(topic=topic)
        for topic in (
            *("dose", "dilution", "due", "bin", "trench", "batch", "starter", "totals"),
            *("full", "bins", "liquid", "moisture", "carbon"),
        )
    ),
    Ask(topic="bin", bin="shed"),
    Ask(topic="dose", mass_kg=2.0),
    Ask(topic="dilution", use="the cat"),
    Ask(topic="bed", area_m2=3.0),
    Ask(topic="bed", mass_kg=5.0),
)


@pytest.mark.parametrize("act", FIGURES, ids=str)
async def test_an_answer_with_a_figure_says_why(group: Group, act: Act) -> None:
    for before in FILLED:
        await group.says(before)
    answer = await group.says(act, days=1)
    assert re.search(r"\d", answer.say)
    assert answer.why
    assert any(standing in line for line in answer.why for standing in STANDINGS) or (
        isinstance(act, Ask) and act.topic in {"totals", "bin"}
    )


async def test_an_empty_calendar_tells_the_usual_days_and_why(group: Group) -> None:
    answer = await group.says(Ask(topic="due"))
    assert "buried 10 to 14 days after that" in answer.say
    assert any("Footer" in line for line in answer.why)


@pytest.mark.parametrize(
    ("what", "value", "act", "words"),
    [
        ("dilution", "1:200", Ask(topic="dilution"), "usual is 100"),
        ("pot dilution", "1:1000", Ask(topic="dilution", use="pots"), "usual is 500"),
        ("ferment days", "21", Seal(bin="shed"), "usual is 14"),
        ("planting days", "28", Bury(bin="shed"), "usual is 21"),
        ("soil", "3", Ask(topic="trench", volume_l=20.0), "usual is 2"),
        ("trench depth", "30 cm", Ask(topic="trench", volume_l=20.0), "usual is 25"),
        ("nitrogen limit", "250", Ask(topic="bed", area_m2=3.0), "usual is 170"),
        ("recipe", "ten to one", Ask(topic="batch"), "usual is tablespoon"),
        ("habit", "weight", Ask(topic="dose", mass_kg=2.0), "usual is spoon"),
    ],
)
async def test_where_sources_disagree_why_says_whose_choice_it_was(
    group: Group, what: str, value: str, act: Act, words: str
) -> None:
    for before in FILLED:
        await group.says(before)
    ours = (await group.says(act)).why
    assert any("our choice where sources differ" in line for line in ours)
    await group.says(Set(what=what, value=value))
    room = await find(group.book.db, group.book.room.address)
    assert room
    group.book.room = room
    theirs = (await group.says(act)).why
    assert any("your group's choice" in line and words in line for line in theirs)


async def test_a_choice_moves_the_days_of_bins_that_are_already_sealed(group: Group) -> None:
    await group.says(Layer(bin="shed", mass_kg=2.0))
    await group.says(Seal(bin="shed"), days=2)
    before = (await group.dues())["shed", "bury"][1]
    await group.says(Set(what="ferment days", value="21"), days=3)
    assert ((await group.dues())["shed", "bury"][1] - before).days == 7


async def test_in_the_room_why_follows_every_answer(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L")
    await room.says("added 2 kg scraps, mostly meat, to the shed bin")
    for question, words in (
        ("how many bins do we need for 5 kg a week?", "(19.6 + 14) / 19.6, rounded up = 2"),
        ("when will the shed bin be full?", "17.9 kg are left"),
        ("is that too much liquid?", "100 mL to 1 kg"),
        ("is it too wet?", "61.3 % water"),
        ("how's the carbon?", "LSU AgCenter"),
        ("what's due?", "2 to 3 days"),
        ("how full is the shed bin?", "hold 19.9 kg"),
    ):
        (answer,) = await room.says(question)
        assert answer.kind == "reply"
        (why,) = await room.says("why?")
        assert words in why.body


async def test_a_digest_can_be_asked_why(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L")
    await room.says("added 2 kg scraps to the shed bin")
    told = [message for _ in range(3) for message in await room.waits(days=1)]
    assert told[-1].kind == "digest"
    (why,) = await room.says("why?")
    assert "2 to 3 days" in why.body


async def test_why_we_reminded_is_told_whatever_was_said_since(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L")
    await room.says("added 2 kg to the shed bin")
    await room.waits(days=3)
    await room.says("how much water for 250 ml?")
    [told] = await room.says("why did you remind us today?")
    assert "days between drainings" in told.body.casefold()


async def test_small_talk_in_the_room_meets_silence(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L")
    await room.says("added 2 kg scraps to the shed bin")
    for small in (
        "is it too wet to mow?",
        "when is the moon full?",
        "how many bins do we need for the party?",
        "how's the carbon footprint?",
        "is the pitch too wet for football?",
    ):
        assert await room.says(small) == []
