"""What a bin has been through, told from its entries."""

from datetime import date

import pytest

from handlers.sharing.keepers import whole_custody
from handlers.sharing.spells import spells
from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """A run from the first layer to the bed, and the beginning of the next."""
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 30 L, shared")
    await room.says("added 3 kg chicken bones and skin to the yard bin", who="bram")
    await room.says("put 1 kg of peelings in the yard bin", who="mei")
    await room.waits(days=3)
    await room.says("drained half a litre from the yard bin", who="mei")
    await room.says("handing the yard bin to Bram")
    await room.says("I'll take it", who="bram")
    await room.waits(days=9)
    await room.says("sealed the yard bin", who="bram")
    await room.waits(days=14)
    await room.says("buried the yard bin under the pear tree", who="bram")
    await room.waits(days=7)
    await room.says("added 2 kg of peelings to the yard bin")
    return room


async def test_who_put_it_in(room: TalkingRoom) -> None:
    [told] = await room.says("who put the chicken in?")
    assert told.body == (
        "I keep kinds, so for “chicken” I looked for meat or bone.\n"
        "Bram: 3 kg of bone in the yard bin, Monday 2 March."
    )
    [told] = await room.says("who put bread in the yard bin?")
    assert told.body == "Nobody has put “bread” in the yard bin that I know of."


@pytest.mark.parametrize(
    ("asked", "told"),
    [
        ("who kept the yard bin in March?", ["ines", "bram"]),
        ("who had the yard bin last week?", ["bram"]),
        ("who kept the yard bin on 3 March?", ["ines"]),
        ("who kept the yard bin before Bram?", ["ines"]),
        ("who kept the yard bin in January?", ["Nobody kept the yard bin then"]),
    ],
)
async def test_who_kept_it_when(room: TalkingRoom, asked: str, told: list[str]) -> None:
    [answer] = await room.says(asked)
    for name in ("ines", "bram"):
        assert (name in answer.body.casefold()) == (name in told), answer.body


async def test_each_members_share(room: TalkingRoom) -> None:
    [told] = await room.says("how much has each of us put in?")
    assert told.body.split("\n") == [
        "6 kg in 3 layers since Monday 2 March:",
        "Bram: 3 kg, 50 %.",
        "Ines: 2 kg, 33 %.",
        "Mei: 1 kg, 17 %.",
    ]
    [mine] = await room.says("what's my share of the yard bin?", who="mei")
    assert mine.body == "Mei: 1 kg, 17 %."


async def test_a_runs_whole_story(room: TalkingRoom) -> None:
    [told] = await room.says("tell me the story of the last run of the yard bin")
    assert told.body.split("\n") == [
        "The yard bin, run 1:",
        "Monday 2 March: opened by ines (30 L).",
        "Monday 2 March: 2 layers (bram 3 kg and mei 1 kg), 75 % of it meat, fish, dairy or fat.",
        "Thursday 5 March: 500 mL drained by mei, taken over by bram.",
        "Saturday 14 March: sealed by bram.",
        "Saturday 28 March: buried by bram, pear tree.",
        "In all 4 kg in 26 days, begin to bed.",
    ]
    [told] = await room.says("story of the yard bin")
    assert told.body.startswith("The yard bin, run 2:")
    [told] = await room.says("story of run 7 of the yard bin")
    assert told.body == "The yard bin has 2 runs, so there is no such."


async def test_every_day_has_one_keeper(room: TalkingRoom) -> None:
    book = await room.book()
    [bin] = await book.bins()
    kept = spells(await whole_custody(book, bin), date(2026, 4, 30), book.room.zone)
    assert [(one.keeper, one.first.day, one.last and one.last.day) for one in kept] == [
        ("ines", 2, 4),
        ("bram", 5, None),
    ]


@pytest.mark.parametrize(
    ("asked", "told"),
    [
        ("when did we last drain it?", "The yard bin: 500 mL drained by mei, Thursday 5 March."),
        ("when was the yard bin last drained?", "The yard bin: 500 mL drained by mei, Thursday"),
        ("who buried the yard bin last?", "The yard bin: buried by bram, pear tree, Saturday"),
        ("how many layers are in the yard bin?", "The yard bin: filling, 1 layer, 2 kg"),
        ("when was the yard bin last fed?", "Ines: 2 kg of vegetable in the yard bin, today."),
    ],
)
async def test_when_it_was_last_done(room: TalkingRoom, asked: str, told: str) -> None:
    [answer] = await room.says(asked)
    assert answer.body.startswith(told)


async def test_what_was_never_done_is_said_so(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 30 L")
    [answer] = await room.says("when was it last drained?")
    assert answer.body == "No bin was drained yet, as far as I know."


@pytest.mark.parametrize(
    ("asked", "told"),
    [
        ("what did I record today?", "Ines, today:\n2 kg in the yard bin"),
        (
            "what have I logged this week",
            "Ines, Monday 30 March to today:\n2 kg in the yard bin",
        ),
        (
            "what did Mei log on 2 March?",
            "Mei, Monday 2 March:\n1 kg in the yard bin, Monday 2 March",
        ),
        ("what did Bram put down yesterday", "Bram has written nothing down yesterday"),
    ],
)
async def test_what_was_written_down(room: TalkingRoom, asked: str, told: str) -> None:
    [answer] = await room.says(asked)
    assert answer.body.startswith(told)


@pytest.mark.parametrize("asked", ["list all bins", "which bins are there?", "show me our bins"])
async def test_every_bin_is_listed(room: TalkingRoom, asked: str) -> None:
    await room.says("opened the attic bin", who="mei")
    [answer] = await room.says(asked)
    assert [line.split(":")[0] for line in answer.body.split("\n")] == [
        "The yard bin",
        "The attic bin",
    ]


@pytest.mark.parametrize(
    "asked",
    ["how do I fix a mistake?", "how can we undo something", "can I change an entry later?",
     "what do I do if I made a mistake?"],
)  # fmt: skip
async def test_how_a_mistake_is_put_right(room: TalkingRoom, asked: str) -> None:
    await room.says("lovely day", who="mei")
    [answer] = await room.says(asked)
    assert answer.body.startswith("Put right: ")


@pytest.mark.parametrize("talk", ["how do I fix the lid?", "how do we change the bag"])
async def test_other_repairs_are_talk(room: TalkingRoom, talk: str) -> None:
    await room.says("lovely day", who="mei")
    assert await room.says(talk) == []


@pytest.fixture
async def spring(db: Database) -> TalkingRoom:
    """Layers of two members in two bins, in March and in April; two drainings."""
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 60 L, shared")
    await room.says("opened the gate bin, 60 L, shared")
    await room.says("1 kg of peelings in the yard bin")
    await room.waits(days=18)
    await room.says("2 kg of peelings in the gate bin", who="bram")
    await room.says("drained 300 ml from the gate bin", who="bram")
    await room.waits(days=16)
    await room.says("4 kg of peelings in the yard bin")
    await room.says("drained 200 ml from the yard bin")
    return room


@pytest.mark.parametrize(
    ("asked", "told"),
    [
        ("how much last month?", "3 kg in 2 layers, Sunday 1 to Tuesday 31 March."),
        ("how much this month?", "4 kg in 1 layer since Wednesday 1 April."),
        ("totals for March?", "3 kg in 2 layers, Sunday 1 to Tuesday 31 March."),
        ("how much have we done since 1 April?", "4 kg in 1 layer since Wednesday 1 April."),
        (
            "From 1st till date how many kgs from my side?",
            "4 kg in 1 layer by ines since Wednesday 1 April.",
        ),
        (
            "How many kgs from my side from the 3rd to date?",
            "4 kg in 1 layer by ines since Friday 3 April.",
        ),
        ("how much did I put in this month?", "4 kg in 1 layer by ines since Wednesday 1 April."),
        (
            "how much did Bram put in between 1 and 20 March?",
            "2 kg in 1 layer by bram, Sunday 1 to Friday 20 March.",
        ),
        (
            "totals by person for March",
            "3 kg in 2 layers, Sunday 1 to Tuesday 31 March:\nBram: 2 kg, 67 %.\nInes: 1 kg, 33 %.",
        ),
        (
            "how much so far by pail?",
            "7 kg in 3 layers since Monday 2 March:\nThe yard bin: 5 kg, 71 %.\n"
            "The gate bin: 2 kg, 29 %.",
        ),
        (
            "totals by month",
            "7 kg in 3 layers since Monday 2 March:\nMarch 2026: 3 kg, 43 %.\n"
            "April 2026: 4 kg, 57 %.",
        ),
        ("how much in May?", "Nothing was put in, Thursday 1 to Saturday 31 May 2025."),
        ("how much liquid so far?", "500 mL in 2 drainings since Friday 20 March."),
        (
            "how much liquid have we drained this month?",
            "200 mL in 1 draining since Wednesday 1 April.",
        ),
    ],
)
async def test_what_a_total_is_of(spring: TalkingRoom, asked: str, told: str) -> None:
    [answer] = await spring.says(f"bot, {asked}")
    assert answer.body == told


async def test_a_total_is_asked_for_apart_in_a_few_words(spring: TalkingRoom) -> None:
    await spring.says("how much this month?")
    [apart] = await spring.says("and per person?")
    assert (
        apart.body == "7 kg in 3 layers since Monday 2 March:\nInes: 5 kg, 71 %.\nBram: 2 kg, 29 %."
    )
    await spring.says("the choir got 40 pounds at the fair")
    assert await spring.says("and per person?") == []


@pytest.mark.parametrize(
    ("asked", "told"),
    [
        ("how much do we add a month?", "7 kg in 3 layers since Monday 2 March:\nMarch 2026: 3 kg"),
        ("how much have we added a week?", "7 kg in 3 layers since Monday 2 March:\nWeek of 2 Mar"),
    ],
)
async def test_how_much_comes_in_a_week_or_a_month(
    spring: TalkingRoom, asked: str, told: str
) -> None:
    [answer] = await spring.says(asked)
    assert answer.body.startswith(told)


@pytest.mark.parametrize(
    "asked",
    [
        "what did I miss?",
        "what's happened here this week?",
        "I've been away for a week, what did I miss?",
        "what happened while I was off?",
        "anything new since last week?",
        "bot, catch me up with the bins",
    ],
)
async def test_what_was_missed_is_told_with_who_did_it(room: TalkingRoom, asked: str) -> None:
    [answer] = await room.says(asked, who="mei")
    assert answer.body.endswith("2 kg in the yard bin, by ines")


@pytest.mark.parametrize("talk", ["what's new?", "what happened yesterday?", "what did Bram do?"])
async def test_news_among_neighbours_are_theirs(room: TalkingRoom, talk: str) -> None:
    await room.says("the choir sang in the hall", who="bram")
    assert await room.says(talk, who="mei") == []


@pytest.fixture
async def garden(db: Database) -> TalkingRoom:
    """A bin called after a place and one in the ground, each drained by somebody else."""
    room = TalkingRoom(db)
    await room.says("opened the laneway bin, 30 L, shared")
    await room.says("opened the red bin, 30 L, shared")
    await room.says("3 kg of peelings in the red bin")
    await room.says("2 kg of peelings in the laneway bin")
    await room.waits(days=1)
    await room.says("drained 200 ml from the laneway bin", who="mei")
    await room.says("sealed the red bin")
    await room.waits(days=12)
    await room.says("drained 300 ml from the red bin", who="bram")
    await room.says("buried the red bin under the fig")
    await room.waits(days=1)
    return room


@pytest.mark.parametrize(
    ("asked", "told"),
    [
        ("when was the laneway last drained?", "The laneway bin: 200 mL drained by mei, Tuesday"),
        ("when did we last drain the laneway?", "The laneway bin: 200 mL drained by mei, Tuesday"),
        ("how long is it since the last draining?", "The red bin: 300 mL drained by bram, yester"),
        ("where did we bury red?", "The red bin: buried by ines, fig, yesterday."),
        ("when did we start the laneway bin?", "The laneway bin: opened by ines (30 L), Monday"),
        ("story of the laneway", "The laneway bin, run 1:"),
        ("what's buried under the fig?", "The red bin: buried by ines, fig, yesterday.\nPlant"),
        ("when can we plant under the fig?", "The red bin: buried by ines, fig, yesterday.\nPlant"),
        ("what did we record yesterday?", "The group, yesterday:\n300 mL drained from the red bin"),
        ("who drained the laneway?", "The laneway bin: 200 mL drained by mei, Tuesday"),
        ("who has buried the red bin?", "The red bin: buried by ines, fig, yesterday."),
        ("who keeps what?", "The laneway bin: ines"),
        ("what did Bram do this month?", "Bram, Sunday 1 to today:\n300 mL drained"),
    ],
)
async def test_what_was_done_to_which_bin_and_where(
    garden: TalkingRoom, asked: str, told: str
) -> None:
    [answer] = await garden.says(asked)
    assert answer.body.startswith(told)


async def test_what_grows_at_a_place_is_talk(garden: TalkingRoom) -> None:
    assert await garden.says("what's under the fig?") == []


async def test_where_to_bury_is_told_with_the_places_so_far(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the green bin, 20 L, shared")
    for day, place in enumerate(("under the medlar", "beside the fence", "under the medlar")):
        await room.says(f"added {day + 2} kg of peelings to green")
        await room.says(f"buried green {place}")
        await room.waits(days=20)
    told = words(await room.says("where will we bury it next?"))
    assert told.splitlines()[0].startswith("So far: medlar (the green bin, ")
    assert told.splitlines()[0].count("medlar") == 1
    assert "fence" in told.splitlines()[0]
    assert "bare bed" in told
