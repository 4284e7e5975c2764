""" "Done" said of what the bot reminded of."""

from datetime import datetime, timedelta

import pytest

from storage.database import Database
from tests.room import BEGIN, TalkingRoom

FRIDAY = BEGIN.replace(day=6, hour=9)


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines keeps two bins; on Friday both are to be drained."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("opened the pear bin, 30 L")
    await room.says("opened the plum bin, 30 L")
    await room.says("2 kg in pear and 3 kg in plum")
    return room


async def until(room: TalkingRoom, moment: datetime) -> None:
    await room.waits(seconds=(moment - room.now).total_seconds())


async def drains(room: TalkingRoom) -> list[tuple[str, float | None]]:
    """The bins drained, and how much came out."""
    entries = [e for e in await room.standing() if e.act == "drain" and e.bin]
    told = [(e.bin.name, e.facts.volume_l) for e in entries if e.bin]
    return sorted(told, key=lambda one: (one[0], one[1] or 9))


@pytest.mark.parametrize(
    ("said", "answer", "drained"),
    [
        ("done", "the plum bin", [("plum", None)]),
        ("done", "plum", [("plum", None)]),
        ("done", "the pear one", [("pear", None)]),
        ("done", "drain the pear bin", [("pear", None)]),
        ("done", "both", [("pear", None), ("plum", None)]),
        ("done", "pear and plum", [("pear", None), ("plum", None)]),
        ("done, 250 ml", "plum", [("plum", 0.25)]),
        ("done, 250 ml", "both of them", [("pear", None), ("plum", None)]),
        ("done", "nice day today", []),
        ("done", "not yet", []),
        ("done, drained plum, 250 ml", "thanks", [("plum", 0.25)]),
        ("done both", "thanks", [("pear", None), ("plum", None)]),
        ("all done", "thanks", [("pear", None), ("plum", None)]),
    ],
)
async def test_which_it_was(
    room: TalkingRoom, said: str, answer: str, drained: list[tuple[str, float | None]]
) -> None:
    await until(room, FRIDAY)
    await room.says(said)
    await room.says(answer)
    assert await drains(room) == drained


@pytest.mark.parametrize(
    ("said", "litres"),
    [
        ("done, 250 ml", 0.25),
        ("done - 250 ml", 0.25),
        ("did it, about 250 ml again", 0.25),
        ("just did it, 250 ml came out", 0.25),
        ("done", None),
    ],
)
async def test_how_much_came_out(room: TalkingRoom, said: str, litres: float | None) -> None:
    await until(room, FRIDAY)
    await room.says("drained plum")
    await room.says(said, who="bram")
    assert ("pear", litres) in await drains(room)


async def test_a_turn_to_drain_is_no_second_job(room: TalkingRoom) -> None:
    await room.says("rota for draining the pear bin: bram, ines, a week each")
    await until(room, FRIDAY)
    *_, mark = await room.says("done", who="bram")
    assert mark.kind == "reaction"
    assert await drains(room) == [("pear", None)]


async def test_what_was_just_said_is_meant(room: TalkingRoom) -> None:
    await room.says("remind us to wash the lids on Friday at 9:10")
    await until(room, FRIDAY)
    said = await room.waits(minutes=15)
    assert any("lids" in message.body for message in said)
    [mark] = await room.says("done", who="bram")
    assert mark.kind == "reaction"
    assert await drains(room) == []


@pytest.mark.parametrize(
    ("before", "as_reply", "drained"),
    [
        ("added 1 kg of bread to pear", True, 0),
        ("added 1 kg of bread to pear", False, 0),
        ("how much starter for 1 kg of bread?", True, 0),
        ("what's due?", True, 2),
        ("how full is pear?", False, 2),
        ("could somebody empty the tap of pear and plum?", True, 2),
    ],
)
async def test_done_behind_a_dose_is_of_the_starter(
    room: TalkingRoom, before: str, as_reply: bool, drained: int
) -> None:
    await until(room, FRIDAY)
    await room.says(before, event="$b")
    await room.says("done both", replies_to="$b" if as_reply else None)
    assert len(await drains(room)) == drained


async def test_done_behind_a_dose_for_another_is_of_what_was_named(room: TalkingRoom) -> None:
    await until(room, FRIDAY)
    await room.says("added 1 kg of bread to pear")
    await room.says("done both", who="bram")
    assert len(await drains(room)) == 2


@pytest.mark.parametrize(
    ("said", "drained"),
    [
        ("pear done, plum done", ["pear", "plum"]),
        ("pear done, plum tomorrow", ["pear"]),
        ("done all two", ["pear", "plum"]),
        ("did pear this morning, about 150 ml", ["pear"]),
        ("nearly done pear", []),
        ("doing pear now", []),
    ],
)
async def test_each_job_is_written_down(room: TalkingRoom, said: str, drained: list[str]) -> None:
    await until(room, FRIDAY)
    await room.says(said)
    assert [bin for bin, _ in await drains(room)] == drained


async def test_the_day_is_the_one_said(room: TalkingRoom) -> None:
    await until(room, FRIDAY)
    await room.says("did plum on Wednesday")
    [entry] = [e for e in await room.standing() if e.act == "drain"]
    assert entry.on == FRIDAY.date() - timedelta(days=2)


@pytest.mark.parametrize(
    ("said", "litres"), [("drained, all fine", None), ("done the draining, 300 ml", 0.3)]
)
async def test_a_deed_said_is_written_down_though_it_is_not_due(
    room: TalkingRoom, said: str, litres: float | None
) -> None:
    await room.says("1 kg in plum")
    await room.says(said)
    assert await drains(room) == [("plum", litres)]


async def test_all_the_jobs_of_others_are_asked_about(room: TalkingRoom) -> None:
    await room.says("opened the fig bin, 20 L", who="bram")
    await room.says("1 kg in the fig bin", who="bram")
    await until(room, FRIDAY)
    *_, asked = await room.says("did the whole lot", who="bram")
    assert asked.body.startswith("Well done. All of it: ")
    assert await drains(room) == []
    await room.says("yes", who="bram")
    assert [bin for bin, _ in await drains(room)] == ["fig", "pear", "plum"]


async def test_sealed_but_not_drained(room: TalkingRoom) -> None:
    await room.says("opened the fig bin, 20 L", who="bram")
    await room.says("1 kg in the fig bin", who="bram")
    await until(room, FRIDAY + timedelta(days=12))
    await room.says("sealed but not drained", who="bram")
    deeds = [(e.act, e.bin.name) for e in await room.standing() if e.bin]
    assert ("seal", "fig") in deeds
    assert ("drain", "fig") not in deeds


@pytest.mark.parametrize(
    ("set_for", "drained"),
    [
        ("drain the plum bin", ["plum"]),
        ("empty plum", ["plum"]),
        ("wash the lids", []),
        ("drain the pond", []),
    ],
)
async def test_a_reminder_to_do_what_is_recorded_is_done_by_the_record(
    room: TalkingRoom, set_for: str, drained: list[str]
) -> None:
    await room.says(f"remind us on Friday at 9:10 to {set_for}", who="bram")
    await until(room, FRIDAY)
    await room.says("drained pear")
    await room.waits(minutes=15)
    [mark] = await room.says("done")
    assert mark.kind == "reaction"
    assert [bin for bin, _ in await drains(room) if bin == "plum"] == drained


async def test_what_it_was_is_asked_hours_behind_a_reminder(room: TalkingRoom) -> None:
    await room.says("remind us on Friday at 9:10 to wash the lids")
    await until(room, FRIDAY)
    await room.says("drained pear")
    await room.waits(minutes=300)
    [asked] = await room.says("done")
    assert asked.body == "Well done. Which was it: wash the lids or drain the plum bin?"
    await room.says("the lids")
    assert [bin for bin, _ in await drains(room)] == ["pear"]


@pytest.mark.parametrize(
    ("told", "drained"),
    [
        ("that was the lids, sorry", ["pear"]),
        ("it was the plum one that I did", ["pear", "plum"]),
        ("the plum's", ["pear", "plum"]),
        ("washing the lid", ["pear"]),
    ],
)
async def test_which_it_was_is_told_in_other_words(
    room: TalkingRoom, told: str, drained: list[str]
) -> None:
    await room.says("remind us on Friday at 9:10 to wash the lids")
    await until(room, FRIDAY)
    await room.says("drained pear")
    await room.waits(minutes=300)
    await room.says("done")
    assert [answer.kind for answer in await room.says(told)] == ["reaction"]
    assert sorted(bin for bin, _ in await drains(room)) == drained


@pytest.mark.parametrize(
    "taken_back",
    ["actually no, tap's stuck", "spoke too soon", "oh it isn't done yet, lid won't open"],
)
async def test_a_deed_taken_back_is_struck_out(room: TalkingRoom, taken_back: str) -> None:
    await until(room, FRIDAY)
    await room.says("drained plum")
    await room.says(taken_back)
    assert await drains(room) == []
    await room.says("ok plum is done now")
    assert await drains(room) == [("plum", None)]


@pytest.mark.parametrize(
    ("then", "who"),
    [
        ("actually no idea", "bram"),
        ("actually no, see you tomorrow", "ines"),
        ("actually not a bad day", "ines"),
        ("actually no, I'm not coming", "ines"),
        ("not done with the garden", "ines"),
    ],
)
async def test_what_takes_nothing_back_leaves_it(room: TalkingRoom, then: str, who: str) -> None:
    await room.says("drained plum")
    await room.says(then, who=who)
    assert await drains(room) == [("plum", None)]


@pytest.mark.parametrize(
    ("first", "then", "told"),
    [
        ("done", "drained it this evening, about 100 ml", [("fig", 0.1)]),
        ("done", "ok now it's done, 250 ml", [("fig", 0.25)]),
        ("drained fig", "drained fig, 100 ml", [("fig", 0.1)]),
        ("drained fig, 50 ml", "drained fig, 100 ml", [("fig", 0.05), ("fig", 0.1)]),
        ("drained fig yesterday", "drained fig, 100 ml", [("fig", 0.1), ("fig", None)]),
    ],
)
async def test_an_amount_told_behind_a_draining_is_of_it(
    room: TalkingRoom, first: str, then: str, told: list[tuple[str, float | None]]
) -> None:
    await room.says("opened the fig bin, 20 L", who="bram")
    await room.says("1 kg in the fig bin", who="bram")
    await until(room, FRIDAY + timedelta(hours=2))
    await room.says(first, who="bram")
    await room.says(then, who="bram")
    assert [one for one in await drains(room) if one[0] == "fig"] == told


async def test_done_right_behind_its_record_is_of_that_one(room: TalkingRoom) -> None:
    await room.says("opened the fig bin, 20 L", who="bram")
    await room.says("1 kg in the fig bin", who="bram")
    await until(room, FRIDAY)
    await room.says("drained fig", who="bram")
    [mark] = await room.says("did it", who="bram")
    assert mark.kind == "reaction"
    assert await drains(room) == [("fig", None)]


@pytest.mark.parametrize(
    "said",
    ["thanks bot", "thanks for the reminder bot", "well done bot", "cheers bot, much appreciated",
     "Drained plum? Not me."],
)  # fmt: skip
async def test_thanks_for_a_reminder_do_nothing(room: TalkingRoom, said: str) -> None:
    await until(room, FRIDAY)
    before = await room.standing()
    answers = [message for message in await room.says(said) if message.kind != "digest"]
    assert answers == []
    assert await room.standing() == before


@pytest.mark.parametrize(
    ("answer", "drained"),
    [
        ("yes", [("pear", None)]),
        ("👍", [("pear", None)]),
        ("no, the exam", []),
        ("lovely weather", []),
    ],
)
async def test_with_a_remark_of_other_things_it_is_asked_about(
    room: TalkingRoom, answer: str, drained: list[tuple[str, float | None]]
) -> None:
    await until(room, FRIDAY)
    await room.says("drained plum, 200 ml")
    before = await drains(room)
    await room.waits(seconds=7200)
    [asked] = await room.says("all done, exam too")
    assert asked.body == "Is that done: drain the pear bin?"
    await room.says(answer)
    assert await drains(room) == sorted([*before, *drained])


@pytest.mark.parametrize(
    ("said", "put_off"),
    [
        ("later!", False),
        ("another 2 weeks", False),
        ("snooze till tomorrow", True),
        ("remind me tomorrow", True),
    ],
)
async def test_a_farewell_behind_a_record_puts_nothing_off(
    room: TalkingRoom, said: str, *, put_off: bool
) -> None:
    await until(room, FRIDAY)
    await room.says("good morning", who="bram")
    await room.waits(seconds=7200)
    await room.says("500 g of peelings in pear")
    answer = await room.says(said)
    assert any(one.body.startswith("I will say again") for one in answer) == put_off
