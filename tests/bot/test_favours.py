"""A favour between neighbours: what the helper then calls done is of that bin, and no keeper
changes.
"""

from datetime import date

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines keeps the shed bin, Bram the blue one and Zoe the green one; all are to be drained."""
    room = TalkingRoom(db)
    for who, bin in (("ines", "shed"), ("bram", "blue"), ("zoe", "green"), ("dov", "yard")):
        await room.says(f"opened the {bin} bin, 20 L", who=who)
        await room.says(f"2 kg of peelings in the {bin} bin", who=who)
    await room.waits(days=5)
    await room.says("good morning", who="dov")
    return room


async def done(room: TalkingRoom) -> list[tuple[str, str | None, str | None]]:
    return [
        (e.act, e.bin.name if e.bin else None, e.member)
        for e in await room.standing()
        if e.act in ("drain", "seal", "bury")
    ]


@pytest.mark.parametrize(
    ("asked", "yes", "told", "deed"),
    [
        ("I can't do the draining today, Zoe can you?", "yes, will do", "done", "drain"),
        ("Zoe can you drain mine please?", "sure, after work", "drained it, 200 ml", "drain"),
        ("can anyone drain the blue bin for me?", "I can", "all done", "drain"),
        ("can't seal today, back's gone. Zoe can you?", "yep", "sealed it", "seal"),
        ("can't today, Zoe can you do the blue one?", "on it", "done", "drain"),
        ("Zoe, could you drain mine today?", "", "done", "drain"),
    ],
)
async def test_what_the_helper_calls_done(
    room: TalkingRoom, asked: str, yes: str, told: str, deed: str
) -> None:
    assert await room.says(asked, who="bram") == []
    if yes:
        await room.says(yes, who="zoe")
    assert "blue" in words(await room.says(told, who="zoe"))
    assert await done(room) == [(deed, "blue", "zoe")]
    assert await room.keeper("blue") == "bram"


async def test_it_is_so_hours_later_and_after_a_restart(room: TalkingRoom, db: Database) -> None:
    await room.says("I can't do the draining today, Zoe can you?", who="bram")
    await room.says("yes, tonight", who="zoe")
    room = room.restarted(db)
    await room.waits(hours=8)
    await room.says("done", who="zoe")
    assert await done(room) == [("drain", "blue", "zoe")]


@pytest.mark.parametrize(
    ("asked", "bin"),
    [
        ("Zoe can you drain mine today?", "blue"),
        ("can anyone drain the blue bin?", "blue"),
        ("Dov can you drain mine today?", "green"),
    ],
)
async def test_a_thumb_on_it_is_a_yes(room: TalkingRoom, asked: str, bin: str) -> None:
    await room.says(asked, who="bram", event="$asked")
    await room.marks("$asked", "👍", who="zoe")
    await room.waits(hours=2)
    await room.says("done", who="zoe")
    assert await done(room) == [("drain", bin, "zoe")]


async def test_a_thumb_taken_off_it_is_a_yes_no_longer(room: TalkingRoom) -> None:
    await room.says("can anyone drain mine tomorrow?", who="bram", event="$asked")
    await room.marks("$asked", "👍", who="zoe", event="$thumb")
    await room.deletes("$thumb", who="zoe")
    await room.waits(hours=2)
    await room.says("done", who="zoe")
    assert await done(room) == [("drain", "green", "zoe")]
    await room.marks("$asked", "👍", who="dov")
    await room.says("done", who="dov")
    assert ("drain", "blue", "dov") in await done(room)


async def test_behind_a_reminder_it_is_asked_which(room: TalkingRoom) -> None:
    await room.says("can anyone drain mine tomorrow?", who="bram")
    await room.says("happy to", who="zoe")
    await room.waits(hours=64)
    assert "Which was it" in words(await room.says("done", who="zoe"))
    await room.says("blue", who="zoe")
    await room.says("done", who="zoe")
    assert await done(room) == [("drain", "blue", "zoe"), ("drain", "green", "zoe")]


@pytest.mark.parametrize(
    "between",
    [
        [("zoe", "sorry, no")],
        [("zoe", "sorry can't"), ("dov", "I will")],
        [("dov", "me")],
        [("ines", "who fixed the gate?"), ("zoe", "me")],
    ],
)
async def test_who_has_not_taken_it_on_did_not_do_it(
    room: TalkingRoom, between: list[tuple[str, str]]
) -> None:
    await room.says("I can't do the draining today, Zoe can you?", who="bram")
    for who, said in between:
        await room.says(said, who=who)
    await room.says("done", who="zoe")
    assert ("drain", "blue", "zoe") not in await done(room)


async def test_once_done_the_next_is_ones_own(room: TalkingRoom) -> None:
    await room.says("I can't do the draining today, Zoe can you?", who="bram")
    await room.says("yes", who="zoe")
    await room.says("done", who="zoe")
    await room.waits(hours=64)
    await room.says("done", who="zoe")
    assert await done(room) == [("drain", "blue", "zoe"), ("drain", "green", "zoe")]


@pytest.mark.parametrize(
    ("asked", "yes"),
    [
        ("Zoe can you pick up the kids?", "sure"),
        ("who can bring cake on Saturday?", "I will"),
        ("Zoe can you do the washing up?", "yep"),
    ],
)
async def test_a_favour_of_other_things(room: TalkingRoom, asked: str, yes: str) -> None:
    await room.says(asked, who="bram")
    assert await room.says(yes, who="zoe") == []
    assert await room.says("done", who="zoe") == []
    assert await done(room) == []


@pytest.mark.parametrize(
    ("who", "said"),
    [
        ("zoe", "I'll do Bram's"),
        ("zoe", "I can cover for Bram"),
        ("bram", "Zoe's doing mine this week"),
        ("dov", "Ines can't, Zoe will"),
        ("zoe", "me"),
    ],
)
async def test_who_offers_to_cover_stands_in(room: TalkingRoom, who: str, said: str) -> None:
    await room.says("I'm away till the 20th", who="bram")
    await room.says("can someone cover for me?", who="bram")
    await room.says(said, who=who)
    assert "the blue bin (zoe for bram)" in words(await room.says("what's due?", who="dov")).lower()
    await room.says("I'm back", who="bram")
    assert "for bram" not in words(await room.says("what's due?", who="dov")).lower()


@pytest.mark.parametrize("said", ["I'll do Bram's till the 12th", "I can do Bram's from the 15th"])
async def test_who_can_for_a_part_of_it_does_not_stand_in_for_all(
    room: TalkingRoom, said: str
) -> None:
    await room.says("I'm away till the 20th", who="bram")
    told = words(await room.says(said, who="zoe"))
    assert "for all of the time that Bram is away, until Thursday 19 March" in told
    assert "zoe for bram" not in words(await room.says("what's due?", who="dov")).lower()
    await room.says("I'll do Bram's", who="zoe")
    assert "zoe for bram" in words(await room.says("what's due?", who="dov")).lower()


async def test_a_promise_taken_back_is_none(room: TalkingRoom) -> None:
    await room.says("can anyone drain mine?", who="bram")
    await room.says("I will", who="zoe", event="$promise")
    await room.deletes("$promise", who="zoe")
    await room.says("done", who="zoe")
    assert ("drain", "blue", "zoe") not in await done(room)


async def test_what_was_promised_is_down_to_whoever_promised_it(room: TalkingRoom) -> None:
    await room.says("can anyone drain mine tomorrow?", who="bram")
    await room.says("I will", who="zoe", event="$promise")
    await room.waits(hours=2)
    due = words(await room.says("what needs draining?", who="dov"))
    assert "the blue bin (zoe for bram)" in due
    assert "the green bin (zoe)" in due
    await room.deletes("$promise", who="zoe")
    due = words(await room.says("what needs draining?", who="dov"))
    assert "the blue bin (bram)" in due


async def test_once_it_is_done_it_is_its_keepers_again(room: TalkingRoom) -> None:
    await room.says("can anyone drain mine tomorrow?", who="bram")
    await room.says("I will", who="zoe")
    await room.waits(hours=2)
    await room.says("done", who="zoe")
    due = words(await room.says("what's due this week?", who="dov"))
    assert "zoe for bram" not in due


async def test_whoever_promised_is_called_by_the_digest(room: TalkingRoom) -> None:
    await room.waits(days=9)  # to the last day to seal
    await room.says("can someone seal mine?", who="bram")
    await room.says("I will", who="zoe")
    told = [one for one in await room.waits(days=2) if "seal the blue bin" in one.body]
    assert "the blue bin (zoe for bram)" in told[0].body
    assert "@zoe:test" in told[0].mentions


@pytest.mark.parametrize(
    ("asked", "yes", "told", "deed"),
    [
        ("blue looks nearly full to me. Seal it, Zoe?", "will do", "done", "seal"),
        ("blue is brim-full, bury it tonight Zoe", "on it", "all done", "bury"),
        ("the blue one is heavy. Zoe you should drain it", "yep, tonight", "done, 200 ml", "drain"),
        ("Zoe you'd better close the blue bin", "ok will do", "closed", "seal"),
        ("empty the blue bin too Zoe?", "sure", "emptied it", "drain"),
    ],
)
async def test_what_a_neighbour_is_told_to_do_is_not_done_yet(
    room: TalkingRoom, asked: str, yes: str, told: str, deed: str
) -> None:
    assert await room.says(asked, who="bram") == []
    assert await done(room) == []
    await room.says(yes, who="zoe")
    await room.waits(hours=5)
    assert "blue" in words(await room.says(told, who="zoe"))
    assert await done(room) == [(deed, "blue", "zoe")]


async def test_it_was_done_before_it_was_asked_for(room: TalkingRoom) -> None:
    await room.says("drain green too Zoe?", who="bram")
    await room.says("did yesterday, like a small cup", who="zoe")
    [drained] = [entry for entry in await room.standing() if entry.act == "drain"]
    assert (drained.bin and drained.bin.name, drained.member) == ("green", "zoe")
    assert drained.on == date(2026, 3, 6)


async def test_a_deed_promised_in_talk_of_a_bin_is_of_that_bin(room: TalkingRoom) -> None:
    await room.says("the shed one is full to the top", who="dov")
    await room.says("who is on tea duty?", who="ines")
    await room.says("ill close it up then", who="dov")
    await room.says("closed", who="dov")
    assert await done(room) == [("seal", "shed", "dov")]


@pytest.mark.parametrize(
    ("asked", "told"),
    [
        ("Zoe can you close up tonight?", "closed"),
        ("shut it Zoe", "closed"),
        ("did you see the match Zoe?", "did yesterday"),
        ("you should seal it once it is full", "closed"),
        ("", "closed"),
    ],
)
async def test_what_is_closed_or_was_done_of_other_things(
    room: TalkingRoom, asked: str, told: str
) -> None:
    if asked:
        assert await room.says(asked, who="bram") == []
        await room.says("sure", who="zoe")
    assert await room.says(told, who="zoe") == []
    assert await done(room) == []


async def test_what_was_answered_between_is_no_promise_of_it(room: TalkingRoom) -> None:
    await room.says("the blue bin is nearly full. seal it Zoe?", who="bram")
    await room.says("is that the big one?", who="zoe")
    await room.says("yes", who="bram")
    await room.says("ok, will do later", who="zoe")
    await room.waits(hours=4)
    await room.says("sealed", who="zoe")
    assert await done(room) == [("seal", "blue", "zoe")]


async def test_later_is_a_promise_as_well(room: TalkingRoom) -> None:
    await room.says("Zoe drain the blue one please", who="bram")
    await room.says("later", who="zoe")
    await room.waits(hours=3)
    await room.says("ok did it, 150 ml", who="zoe")
    assert await done(room) == [("drain", "blue", "zoe")]


async def test_closed_it_is_of_the_bin_that_its_sender_was_on(room: TalkingRoom) -> None:
    await room.says("the shed bin is full", who="zoe")
    await room.says("closed it", who="zoe")
    assert await done(room) == [("seal", "shed", "zoe")]


async def test_the_only_bin_needs_no_name(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("hello", who="zoe")
    await room.says("opened the yard bin, 20 L, shared", who="ines")
    await room.says("2 kg of peelings in the yard bin", who="ines")
    await room.waits(days=2)
    await room.says("bin's full, close it up Zoe?", who="ines")
    await room.says("yeah", who="zoe")
    await room.says("all closed", who="zoe")
    assert await done(room) == [("seal", "yard", "zoe")]
