"""A rota as a group agrees on it: told, changed, ended, asked about."""

import pytest

from tests.bot.turns.agreed import DRAINING, KEEPING, march, turns
from tests.room import TalkingRoom, words


async def test_a_rota_is_agreed_and_stands_in_the_calendar(room: TalkingRoom) -> None:
    [told] = await room.says(DRAINING)
    assert told.body.startswith(
        "Turns to drain the yard bin, a week each: ines today to Sunday 8 March, then bram from "
        "Monday 9 March, then mei from Monday 16 March."
    )
    assert (await turns(room))[:3] == [
        ("turn to drain", march(2), "ines"),
        ("turn to drain", march(9), "bram"),
        ("turn to drain", march(16), "mei"),
    ]
    [whose] = await room.says("whose turn is it?")
    assert "Turn to drain the yard bin: ines today to Sunday 8 March, then bram" in whose.body
    [shown] = await room.says("show the rota")
    assert shown.body == whose.body.split("\n")[-1]


async def test_members_come_to_a_rota_and_leave_it(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    await room.says("hi", who="esi")
    [told] = await room.says("put me on the rota", who="esi")
    assert told.body == "Esi takes turns to drain the yard bin now."
    assert "esi" in [who for _, _, who in await turns(room)]
    [told] = await room.says("take me off the rota", who="bram")
    assert told.body.startswith("Bram takes no more turns to drain the yard bin.")
    assert "bram" not in [who for _, _, who in await turns(room)]


async def test_who_leaves_a_rota_after_this_turn_still_has_it(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    before = await turns(room)
    assert before[0][2]
    [told] = await room.says("take me off the rota after this turn", who=before[0][2])
    assert "takes no more turns to drain the yard bin from " in told.body
    after = await turns(room)
    assert after[0] == before[0]
    assert before[0][2] not in [who for _, _, who in after[1:]]


async def test_a_rota_ends(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    [told] = await room.says("stop the rota")
    assert told.body == "No more turns to drain the yard bin."
    assert await turns(room) == []


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("rota for the purple bin: Ines, Mei, weekly", "I know no bin called “purple”."),
        ("rota for the yard bin: Ines, Mei, every 0 days", "A turn lasts from 1 to 90 days"),
        ("rota for the yard bin: Ines, Mei, every -3 days", "A turn lasts from 1 to 90 days"),
        ("rota for the yard bin: Ines, Mei, every 20 weeks", "A turn lasts from 1 to 90 days"),
        ("rota for the yard bin: Ines, Bram, weekly", "Bram is not in this room any more."),
        ("add Mei to the rota for the purple bin", "There is no such rota."),
        ("add Bram to the rota", "Bram is not in this room any more."),
    ],
)
async def test_a_rota_that_cannot_be_is_not_agreed(room: TalkingRoom, said: str, told: str) -> None:
    await room.says("rota for the yard bin: Ines and Mei, weekly")
    await room.calls_itself("bram", who="bram", is_in=False)
    before = await turns(room)
    [answer] = await room.says(said)
    assert answer.body.startswith(told)
    assert await turns(room) == before


@pytest.mark.parametrize(
    "said",
    [
        "cleaning rota: Ines, Bram, weekly",
        "can anyone swap my shift on Friday?",
        "my week was awful",
        "it's your turn to cook, Bram",
        "take me off the list",
        "we take turns at the pub quiz",
    ],
)
async def test_talk_of_turns_elsewhere_is_left_alone(room: TalkingRoom, said: str) -> None:
    assert await room.says(said) == []
    await room.says(DRAINING)
    assert await room.says(said) == []


@pytest.mark.parametrize(
    ("said", "after"),
    [
        ("put Bram after Mei on the rota", ["ines", "mei", "bram"]),
        ("put Bram last on the rota", ["ines", "mei", "bram"]),
        ("put Mei first on the rota", ["ines", "mei", "bram"]),
        ("put Ines last on the rota", ["ines", "bram", "mei"]),
        ("swap the rota so Mei goes before Bram", ["ines", "mei", "bram"]),
        ("put Mei before Ines on the rota", ["ines", "bram", "mei"]),
        ("swap Ines and Mei on the rota", ["mei", "bram", "ines"]),
        ("add Zora to the rota after Ines", ["ines", "Zora", "bram", "mei"]),
        ("Bram is out, Zora is in on the rota", ["ines", "Zora", "mei"]),
        ("alphabetical rota please", ["ines", "mei", "bram"]),
    ],
)
async def test_the_round_goes_on_in_another_order(
    room: TalkingRoom, said: str, after: list[str]
) -> None:
    await room.says(DRAINING)
    await room.waits(days=2)
    [told] = await room.says(said)
    assert told.body.startswith(f"Turns to drain the yard bin, a week each: {after[0]} today to ")
    now = await turns(room)
    assert [who for _, _, who in now][: len(after)] == after
    assert now[0][1] == march(2)


async def test_turns_of_another_length_go_on_from_the_present_one(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    await room.waits(days=2)
    [told] = await room.says("make the rota two weeks each")
    assert told.body == (
        "Turns to drain the yard bin, 2 weeks each: ines today to Sunday 15 March, then bram from "
        "Monday 16 March, then mei from Monday 30 March."
    )
    assert [(day, who) for _, day, who in await turns(room)][:2] == [
        (march(2), "ines"),
        (march(16), "bram"),
    ]


@pytest.mark.parametrize(
    ("said", "answer"),
    [
        (
            "put Bram after Zora on the rota",
            "Zora is not on that rota: say “add Zora to the rota”.",
        ),
        ("99 weeks per keeper", "A turn lasts from 1 to 90 days: say how long."),
    ],
)
async def test_a_round_that_cannot_be_stays_as_it_is(
    room: TalkingRoom, said: str, answer: str
) -> None:
    await room.says(DRAINING)
    before = await turns(room)
    [told] = await room.says(said)
    assert (told.body, await turns(room)) == (answer, before)


async def test_a_rota_for_something_else_moves_no_bin(room: TalkingRoom) -> None:
    [told] = await room.says("rota for rinsing the lids: Ines, Bram, weekly")
    assert told.body.startswith("Turns are for keeping, draining or carrying a bin")
    assert "There is no rota" in (await room.says("show the rota"))[0].body


async def test_turns_of_a_month_to_come_are_told(room: TalkingRoom) -> None:
    await room.says("rota for the yard bin: Ines, Bram, weekly, from today")
    [told] = await room.says("whose turn is it in May?")
    assert "ines Monday 27 April to Sunday 3 May, then bram from Monday 4 May" in told.body


@pytest.mark.parametrize(
    ("who", "asked", "answer"),
    [
        ("mei", "when's my turn?", "Mei is to keep the yard bin Monday 16 to Sunday 22 March."),
        ("mei", "is it Bram's turn?", "Bram is to keep the yard bin Monday 9 to Sunday 15 March."),
        ("ines", "is it my turn?", "Ines is to keep the yard bin today to Sunday 8 March."),
        ("dov", "when's my turn?", "No turn of Dov's is coming up."),
        ("ines", "when do I hand it over?", "The yard bin: bram takes it Monday 9 March."),
    ],
)
async def test_whose_turn_is_when(room: TalkingRoom, who: str, asked: str, answer: str) -> None:
    await room.says(KEEPING)
    await room.says("hello", who=who)
    await room.waits(hours=1)
    assert [said.body for said in await room.says(asked, who=who)] == [answer]


@pytest.mark.parametrize(
    "said",
    ["leave me out for a month", "skip me this time", "put me after Mei", "make it two weeks each"],
)
async def test_where_no_turns_are_taken_nobody_is_left_out(room: TalkingRoom, said: str) -> None:
    assert await room.says(said, who="bram") == []


@pytest.mark.parametrize(
    ("told", "length"),
    [
        ("every two weeks", "2 weeks each"),
        ("monthly please", "4 weeks each"),
        ("no, make it 10 days", "10 days each"),
        ("fortnightly", "2 weeks each"),
    ],
)
async def test_how_long_a_turn_is_was_not_said(room: TalkingRoom, told: str, length: str) -> None:
    assert "Is a week each right?" in words(await room.says("rota: Ines, Bram, Mei"))
    assert length in words(await room.says(told))


async def test_a_week_each_was_right(room: TalkingRoom) -> None:
    await room.says("rota: Ines, Bram, Mei")
    assert [answer.kind for answer in await room.says("weekly")] == ["reaction"]


async def test_it_is_not_asked_where_it_was_said(room: TalkingRoom) -> None:
    assert "right?" not in words(await room.says("rota: Ines, Bram, Mei, fortnightly"))
    assert await room.says("what a week") == []
