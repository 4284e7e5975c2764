"""Turns as a group agrees on them: told, swapped, passed over, in the calendar and the digest."""

from datetime import date

import pytest

from storage.database import Database
from storage.rows import Message
from tests.room import TalkingRoom
from tests.rota_year import RotaYear


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """A Monday: Ines keeps the yard bin; Bram and Mei have spoken."""
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 30 L, shared")
    await room.says("added 4 kg scraps to the yard bin", who="bram")
    await room.says("hello!", who="mei")
    await room.waits(minutes=1)
    return room


DRAINING = "draining rota for the yard bin: Ines, Bram and Mei, a week each"


async def turns(room: TalkingRoom) -> list[tuple[str, date, str | None]]:
    book = await room.book()
    dues = await book.dues()
    return [(d.what, d.from_day, d.to_member) for d in dues if d.what.startswith("turn")]


def march(day: int) -> date:
    return date(2026, 3, day)


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


async def test_who_has_the_turn_is_told_in_the_digest_and_drains(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    await room.waits(days=6)
    [digest] = [m for m in await room.waits(days=1) if m.kind == "digest"]
    assert "turn to drain the yard bin (bram)" in digest.body
    assert "@bram:test" in digest.mentions
    drains = [due for due in await (await room.book()).dues() if due.what == "drain"]
    assert [due.to_member for due in drains] == ["bram"]


async def test_who_is_away_is_passed_over_and_told_who_has_it(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    [told] = await room.says("I'm away from the 8th to the 20th", who="bram")
    assert told.body == "Noted. Mei is to drain the yard bin Monday 9 to Sunday 15 March instead."
    assert [who for _, _, who in await turns(room)][:4] == ["ines", "mei", "ines", "bram"]


async def test_an_absence_called_off_gives_the_turn_back(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    await room.says("I'm away from the 8th to the 20th", who="bram", event="$away")
    await room.deletes("$away", who="bram")
    assert [who for _, _, who in await turns(room)][:3] == ["ines", "bram", "mei"]


@pytest.mark.parametrize("how", ["I can", "👍"])
async def test_a_turn_is_swapped(room: TalkingRoom, how: str) -> None:
    await room.says(DRAINING)
    [asked] = await room.says("can anyone swap my week?", who="bram", event="$swap")
    assert asked.body == (
        "Who can swap with bram: drain the yard bin, Monday 9 to Sunday 15 March? Say “I can” or "
        "put 👍 here; bram does your next turn for it."
    )
    assert set(asked.mentions) == {"@ines:test", "@mei:test"}
    swapped = (
        await room.marks("re-$swap", how, who="mei")
        if how == "👍"
        else await room.says(how, who="mei")
    )
    assert swapped[0].body == (
        "Mei is to drain the yard bin Monday 9 to Sunday 15 March. Bram does it Monday 16 to "
        "Sunday 22 March instead."
    )
    assert [who for _, _, who in await turns(room)][:4] == ["ines", "mei", "bram", "ines"]


async def test_a_swap_asked_of_one_is_theirs_to_agree(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    [asked] = await room.says("Mei, can you swap weeks with me?", event="$swap")
    assert asked.body.startswith("Mei, can you swap with ines: drain the yard bin, today to")
    assert await room.marks("re-$swap", "👍", who="bram") == []
    [told] = await room.says("sorry, not me", who="mei")
    assert told.body == "Fair enough. Who else can swap with ines: drain the yard bin, from today?"
    assert [who for _, _, who in await turns(room)][:1] == ["ines"]


async def test_a_swap_taken_back_is_none(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    await room.says("can anyone swap my week?", who="bram")
    await room.says("I can", who="mei", event="$yes")
    await room.deletes("$yes", who="mei")
    assert [who for _, _, who in await turns(room)][:3] == ["ines", "bram", "mei"]


@pytest.mark.parametrize("who", ["bram", "mei"])
async def test_either_of_the_two_calls_a_swap_off(room: TalkingRoom, who: str) -> None:
    await room.says(DRAINING)
    await room.says("can anyone swap my week?", who="bram")
    await room.says("I can", who="mei")
    [told] = await room.says("call off the swap", who=who)
    assert told.body.startswith("The swap is off. To drain the yard bin:")
    assert list(told.mentions) == (["@mei:test"] if who == "bram" else ["@bram:test"])
    assert [who for _, _, who in await turns(room)][:3] == ["ines", "bram", "mei"]
    [shown] = await room.says("show the rota")
    assert "would like to swap" not in shown.body


async def test_a_swap_only_asked_for_is_taken_back_by_whoever_asked(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    await room.says("can anyone swap my week?", who="bram")
    assert await room.says("forget the swap", who="mei") == []
    [told] = await room.says("forget the swap", who="bram")
    assert told.body.startswith("The swap is off.")
    assert await room.says("I can", who="mei") == []


async def test_a_swap_whose_turns_are_over_stands(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    await room.says("can anyone swap my week?", who="bram")
    await room.says("I can", who="mei")
    await room.waits(days=14)
    assert await room.says("call off the swap", who="bram") == []


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


async def test_a_turn_to_keep_is_offered_when_it_comes(room: TalkingRoom) -> None:
    await room.says("rota for the yard bin: Ines and Bram, weekly")
    await room.waits(days=6)
    [asked] = [m for m in await room.waits(days=1) if m.kind == "notice"]
    assert asked.body == (
        "Bram, it is your turn to keep the yard bin, today to Sunday 15 March. Say “I'll take it” "
        "or put 👍 here; or “not me”. Until you do, ines keeps it."
    )
    [taken] = await room.says("I'll take it", who="bram")
    assert taken.body.startswith("Bram keeps the yard bin now.")


async def test_a_turn_that_nobody_is_there_for_is_asked_about(room: TalkingRoom) -> None:
    await room.says("draining rota for the yard bin: Ines and Bram, weekly")
    await room.says("I'm away from the 9th to the 20th", who="bram")
    await room.says("I'm away from the 7th to the 12th")
    told = [m for m in await room.waits(days=5) if m.kind == "notice"]
    assert [m.body for m in told] == [
        "None of the rota is there to drain the yard bin tomorrow or Sunday 8 March. Who can? Say "
        "“I can” or put 👍 here."
    ] or told[0].body.startswith("None of the rota is there to drain the yard bin")
    await room.marks(told[0].tx_id, "👍", who="mei")
    assert "mei" in [who for _, _, who in await turns(room)]


async def test_a_member_who_leaves_the_room_takes_no_turns(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    await room.calls_itself("bram", who="bram", is_in=False)
    assert "bram" not in [who for _, _, who in await turns(room)]


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


def digests(messages: list[Message]) -> list[str]:
    return [message.body for message in messages if message.kind == "digest"]


async def test_each_turn_is_told_once(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    told = digests(await room.waits(days=20))
    named = [body for body in told if "turn to drain the yard bin" in body]
    assert len(named) == 3


async def test_months_of_turns_are_fair_and_nobody_has_one_while_away(db: Database) -> None:
    year = RotaYear(db)
    await year.live(120)
    assert year.told >= 17
    assert year.away > 50


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


async def test_what_is_in_the_ground_has_no_turns_to_drain(room: TalkingRoom) -> None:
    await room.says(DRAINING)
    await room.waits(days=3)
    await room.says("sealed the yard bin")
    await room.waits(days=14)
    await room.says("buried the yard bin")
    assert await turns(room) == []
    assert not [m for m in await room.waits(days=14) if "turn to drain" in m.body]
    await room.says("opened the yard bin again")
    assert await turns(room) != []


async def test_a_turn_that_went_to_another_is_no_longer_offered(room: TalkingRoom) -> None:
    await room.says("rota to keep the yard bin: Ines, Bram and Mei, a week each")
    await room.waits(days=7)
    [told] = await room.says("I'm away from the 10th to the 16th", who="bram")
    assert told.body == "Noted. Mei is to keep the yard bin today to Sunday 15 March instead."
    notices = [m.body for m in await room.waits(days=5) if m.kind == "notice"]
    offered = [body for body in notices if "your turn" in body]
    assert [body.split(",")[0] for body in offered] == ["Mei"]
    assert not [body for body in notices if "Bram" in body or "Nobody took" in body]


async def test_the_keeper_is_not_pressed_for_what_another_has_the_turn_to_do(
    room: TalkingRoom,
) -> None:
    await room.says("draining rota for the yard bin: Bram and Mei, a week each")
    heard = await room.waits(days=12)
    assert any("drain the yard bin (mei)" in m.body for m in heard)
    assert not [m for m in heard if m.kind == "notice"]


async def test_a_rota_for_something_else_moves_no_bin(room: TalkingRoom) -> None:
    [told] = await room.says("rota for rinsing the lids: Ines, Bram, weekly")
    assert told.body.startswith("Turns are for keeping, draining or carrying a bin")
    assert "There is no rota" in (await room.says("show the rota"))[0].body


async def test_a_swap_told_as_agreed_is_asked_of_the_other(room: TalkingRoom) -> None:
    assert await room.says("I swapped with Bram") == []
    await room.says("rota for the yard bin: Ines, Bram, Mei, weekly")
    [asked] = await room.says("I swapped with Bram")
    assert asked.body.startswith("Bram, can you swap with ines: keep the yard bin, today")
    await room.says("I'll do Mei's week")
    [shown] = await room.says("show the rota")
    assert shown.body.count("would like to swap") == 1


async def test_whoever_takes_their_turn_after_all_swaps_no_more(room: TalkingRoom) -> None:
    await room.says("rota for the yard bin: Bram, Ines, weekly")
    await room.says("can anyone swap my week?", who="bram")
    await room.says("I'll take the yard bin", who="bram")
    await room.says("yes", who="bram")
    [shown] = await room.says("show the rota")
    assert "would like to swap" not in shown.body


async def test_turns_of_a_month_to_come_are_told(room: TalkingRoom) -> None:
    await room.says("rota for the yard bin: Ines, Bram, weekly, from today")
    [told] = await room.says("whose turn is it in May?")
    assert "ines Monday 27 April to Sunday 3 May, then bram from Monday 4 May" in told.body


KEEPING = "rota for the yard bin: Ines, Bram and Mei, a week each"


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


async def test_who_is_out_of_it_for_some_weeks_comes_back_to_it(room: TalkingRoom) -> None:
    await room.says(KEEPING)
    [told] = await room.says("leave me out from 9 to 29 March", who="bram", event="$out")
    assert told.body == (
        "Bram takes no turn to keep the yard bin Monday 9 to Sunday 29 March. Mei is to keep the "
        "yard bin Monday 9 to Sunday 15 March instead."
    )
    assert [who for _, _, who in await turns(room)][:5] == ["ines", "mei", "ines", "mei", "bram"]
    await room.deletes("$out", who="bram")
    assert [who for _, _, who in await turns(room)][:3] == ["ines", "bram", "mei"]


@pytest.mark.parametrize(
    "said",
    ["leave me out for a month", "skip me this time", "put me after Mei", "make it two weeks each"],
)
async def test_where_no_turns_are_taken_nobody_is_left_out(room: TalkingRoom, said: str) -> None:
    assert await room.says(said, who="bram") == []


@pytest.mark.parametrize(
    ("who", "said", "answer"),
    [
        ("bram", "can't keep it on the 20th", "You have no turn on that day that I know of."),
        ("mei", "can't keep it on the 20th", "Who can swap with mei: keep the yard bin, Monday 16"),
    ],
)
async def test_a_day_refused_is_of_the_turn_it_lies_in(
    room: TalkingRoom, who: str, said: str, answer: str
) -> None:
    await room.says(KEEPING)
    await room.waits(days=7)
    [told] = [one for one in await room.says(said, who=who) if one.kind == "reply"]
    assert told.body.startswith(answer)
