"""What events do to the book, and what is said to them."""

import pytest

from bot import hearing
from bot.turn import SORRY
from storage import inbox
from storage.database import Database
from tests.room import OWN, TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    return TalkingRoom(db)


async def masses(room: TalkingRoom) -> list[float | None]:
    return [entry.facts.mass_kg for entry in await room.standing() if entry.act == "layer"]


async def test_a_layer_is_written_down_and_answered_with_its_dose(room: TalkingRoom) -> None:
    [reply] = await room.says("added 2 kg scraps, mostly meat", event="$m")
    assert (reply.kind, reply.to_event, reply.tx_id) == ("reply", "$m", "re-$m")
    assert "tablespoons" in reply.body
    [entry] = await room.standing()
    assert (entry.act, entry.facts.mass_kg, entry.member) == ("layer", 2.0, "ines")


@pytest.mark.parametrize(
    "body",
    [
        "I'll add 2 kg tomorrow",
        "should I add 2 kg of meat?",
        "I didn't add any scraps today",
        "lovely evening, isn't it",
        "",
        "   ",
        "🎉" * 16_384,  # 64 KiB of UTF-8
    ],
)
async def test_what_is_no_record_leaves_none(room: TalkingRoom, body: str) -> None:
    await room.says(body)
    assert await room.standing() == []


@pytest.mark.parametrize(
    "body",
    [
        "added 2000 kg",
        "added 1e9 kg scraps",
        "added -3 kg scraps",
        "added NaN kg scraps",
        "added 2 blorps of scraps",
        "added 0 kg scraps",
        "drained -1 L from the shed bin",
        "added 2 kg scraps on 31 February",
        "added 2 kg scraps 12 years ago",
        "sealed the shed bin on 1 January 2020",
        "buried the shed bin 3 years ago",
    ],
)
async def test_a_bad_amount_or_day_is_asked_about(room: TalkingRoom, body: str) -> None:
    await room.says("opened the shed bin, 20 L")
    [said] = await room.says(body)
    assert [entry.act for entry in await room.standing()] == ["open"]
    assert "again" in said.body or "at most" in said.body
    assert said.body != SORRY


async def test_an_edit_corrects_the_record_and_the_answer(room: TalkingRoom) -> None:
    await room.says("added 2 kg scraps to the shed", event="$m")
    [again] = await room.edits("$m", "added 3 kg scraps to the shed")
    assert again.rewrites is not None
    assert again.to_event == "$m"
    assert "3 kg" in again.body
    assert await masses(room) == [3.0]
    first, second = await (await room.book()).entries()
    assert second.replaces == first.id


async def test_every_change_takes_the_place_of_the_answer_itself(room: TalkingRoom) -> None:
    await room.says("added 2 kg scraps to the shed", event="$m")
    changes = [
        change
        for kg in (3, 4, 5)
        for change in await room.edits("$m", f"added {kg} kg scraps to the shed")
    ]
    assert len(changes) == 3
    assert len({change.rewrites for change in changes}) == 1


async def test_an_edit_into_small_talk_strikes_the_record(room: TalkingRoom) -> None:
    await room.says("added 2 kg scraps to the shed", event="$m")
    [said] = await room.edits("$m", "what a lovely evening")
    assert said.body.startswith("Struck out")
    assert await room.standing() == []


async def test_an_edit_can_make_a_record(room: TalkingRoom) -> None:
    await room.says("hello all", event="$m")
    await room.edits("$m", "added 1 kg scraps to the shed")
    assert await masses(room) == [1.0]


async def test_an_edit_is_read_on_the_day_of_its_message(room: TalkingRoom) -> None:
    await room.says("added 2 kg scraps to the shed", event="$m")
    await room.waits(days=3)
    await room.edits("$m", "added 3 kg scraps to the shed")
    [entry] = await room.standing()
    assert entry.on
    assert entry.on.isoformat() == "2026-03-02"


async def test_nobody_edits_for_another(room: TalkingRoom) -> None:
    await room.says("added 2 kg scraps to the shed", event="$m")
    assert await room.edits("$m", "added 9 kg scraps to the shed", who="mallory") == []
    assert await masses(room) == [2.0]


async def test_a_deleted_message_strikes_its_record(room: TalkingRoom) -> None:
    await room.says("added 2 kg scraps to the shed", event="$m")
    await room.deletes("$m")
    assert await room.standing() == []


async def test_a_deleted_edit_brings_the_first_words_back(room: TalkingRoom) -> None:
    await room.says("added 2 kg scraps to the shed", event="$m")
    await room.edits("$m", "added 3 kg scraps to the shed", event="$edit")
    await room.deletes("$edit")
    assert await masses(room) == [2.0]


async def test_a_reply_to_the_bots_answer_corrects_that_record(room: TalkingRoom) -> None:
    [answer] = await room.says("added 2 kg scraps to the shed", event="$m")
    await room.says("added 1 kg scraps to the shed")
    await room.says("no, 5 kg", replies_to=answer.tx_id)
    assert sorted(filter(None, await masses(room))) == [1.0, 5.0]


async def test_a_cross_by_its_author_strikes_the_record(room: TalkingRoom) -> None:
    [answer] = await room.says("added 2 kg scraps to the shed", event="$m")
    await room.marks(answer.tx_id, "❌", who="bram")
    assert await masses(room) == [2.0]
    await room.marks(answer.tx_id, "❌", event="$x")
    assert await room.standing() == []
    [again] = await room.deletes("$x")
    assert again.body.startswith("In the book again")
    assert await masses(room) == [2.0]


async def test_notices_and_our_own_words_are_not_read(room: TalkingRoom) -> None:
    assert await room.says("added 2 kg scraps", msgtype="m.notice", who="otherbot") == []
    assert await room.says("added 2 kg scraps", who=OWN) == []
    assert await (await room.book()).entries() == []


async def test_why_shows_the_arithmetic_and_the_sources(room: TalkingRoom) -> None:
    [answer] = await room.says("added 2 kg scraps, mostly meat, to the shed")
    [why] = await room.says("why?")
    assert why.body == answer.why
    assert "USDA" in why.body
    [again] = await room.says("why?", replies_to=answer.tx_id)
    assert again.body == why.body


async def test_which_bin_is_settled_by_its_bare_name(room: TalkingRoom) -> None:
    await room.says("opened the shed bin, 20 L")
    await room.says("opened the yard bin, 20 L", who="bram")
    [asked] = await room.says("added 1 kg scraps", who="nives")
    assert "Which bin" in asked.body
    [settled] = await room.says("the yard one", who="nives")
    assert "of starter on 1 kg in the yard bin" in settled.body.splitlines()[0]
    [layer] = [entry for entry in await room.standing() if entry.act == "layer"]
    assert layer.bin
    assert layer.bin.name == "yard"


async def test_the_same_event_twice_counts_once(room: TalkingRoom) -> None:
    await room.says("added 2 kg scraps to the shed", event="$m")
    assert await room.says("added 2 kg scraps to the shed", event="$m") == []
    assert await masses(room) == [2.0]


async def test_one_event_that_fails_is_owned_up_to_and_stops_nobody(
    room: TalkingRoom, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    with monkeypatch.context() as broken:
        broken.setattr(hearing, "Reading", lambda body, _: {}[body])
        [sorry] = await room.says("added 2 kg scraps to the shed", event="$m")
    assert sorry.body == SORRY
    assert "event $m: KeyError at turn.py:" in caplog.text
    assert "scraps" not in caplog.text
    assert await room.standing() == []
    await room.says("added 1 kg scraps to the shed")
    assert await masses(room) == [1.0]


async def test_the_words_of_a_message_are_not_kept(room: TalkingRoom) -> None:
    await room.says("added 2 kg scraps to the shed; my secret is safe")
    kept = await room.db.rows("SELECT raw FROM inbox")
    assert [row["raw"] for row in kept] == [None]
    assert await inbox.waiting(room.db) == []


async def test_a_digest_comes_once_at_nine_and_only_if_there_is_something(
    room: TalkingRoom,
) -> None:
    await room.says("added 2 kg scraps to the shed")
    assert await room.waits(days=1) == []
    digests = await room.waits(days=1)
    assert [message.kind for message in digests] == ["digest"]
    assert digests[0].body == "Today or tomorrow: drain the shed bin (ines)."
    assert digests[0].mentions == ("@ines:test",)
    await room.says("drained 200 ml from the shed")
    assert await room.waits(hours=5) == []


async def test_an_edit_of_an_edit_is_none(room: TalkingRoom) -> None:
    # Client-server specification 1.19, 11.37.1: the target of a valid edit is not itself an edit
    await room.says("added 2 kg scraps to the shed bin", event="$m")
    await room.edits("$m", "added 3 kg scraps to the shed bin", event="$b")
    await room.edits("$b", "added 4 kg scraps to the shed bin")
    assert await masses(room) == [3.0]


async def test_a_correction_that_was_edited_is_undone_whole(room: TalkingRoom) -> None:
    await room.says("added 2 kg scraps to the shed bin", event="$m")
    await room.says("no, 3 kg", replies_to="$m", event="$c")
    await room.edits("$c", "no, 4 kg")
    assert await masses(room) == [4.0]
    await room.deletes("$c")
    assert await masses(room) == [2.0]


async def test_a_unit_nobody_knows_is_asked_about(room: TalkingRoom) -> None:
    [asked] = await room.says("added 2 blorps of scraps to the shed bin")
    assert asked.body.startswith("How much is that?")
    assert await room.standing() == []


async def test_many_layers_in_one_message_are_all_written_down_and_told_in_short(
    room: TalkingRoom,
) -> None:
    [answer] = await room.says("\n".join(["added 100 g scraps to the shed bin"] * 20))
    assert len(await room.standing()) == 20
    assert answer.body.endswith("… and so on for 14 more.")


async def test_a_question_to_the_bot_is_never_met_with_silence(room: TalkingRoom) -> None:
    [said] = await room.says("Pailkeeper: is the moon made of cheese?")
    assert "help" in said.body
    assert await room.says("is the moon made of cheese?") == []


async def test_a_plan_right_after_an_answer_is_still_a_plan(room: TalkingRoom) -> None:
    await room.says("added 2 kg scraps to the shed bin")
    assert await room.says("I'll add 3 kg tomorrow") == []
    assert await masses(room) == [2.0]


async def test_an_answer_that_was_deleted_is_given_anew(room: TalkingRoom) -> None:
    await room.says("added 1 kg scraps to the shed bin", event="$m")
    assert await room.deletes("re-$m", who="mei") == []
    [anew] = await room.edits("$m", "added 2 kg scraps to the shed bin", event="$edit")
    assert (anew.rewrites, anew.to_event) == (None, "$m")
    assert await room.kilos() == [2.0]
    # From then on that one is changed.
    [changed] = await room.edits("$m", "added 3 kg scraps to the shed bin")
    assert changed.rewrites is not None
