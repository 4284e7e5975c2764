"""Absences kept in the book, and who is away on a day."""

from collections.abc import Sequence
from datetime import date

import pytest

from storage.absences import absences, away_on
from storage.database import Database
from tests.room import TalkingRoom

MARCH = [date(2026, 3, day) for day in range(1, 16)]


@pytest.fixture
def room(db: Database) -> TalkingRoom:
    return TalkingRoom(db)


async def days_away(room: TalkingRoom, who: str = "ines") -> list[int]:
    book = await room.book()
    return [day.day for day in MARCH if who in await away_on(book, day)]


async def test_an_absence_is_marked_without_words(room: TalkingRoom) -> None:
    [mark] = await room.says("I'm away till Friday")
    assert (mark.kind, mark.body) == ("reaction", "✅")
    assert await days_away(room) == [2, 3, 4, 5]


async def test_whoever_is_back_early_is_back(room: TalkingRoom) -> None:
    await room.says("I'm away from the 3rd to the 10th")
    await room.waits(days=4)
    await room.says("I'm back")
    assert await days_away(room) == [3, 4, 5]


async def test_an_absence_without_an_end_lasts_until_the_return(room: TalkingRoom) -> None:
    await room.says("I'm away")
    assert await days_away(room) == list(range(2, 16))
    await room.says("I'm back on Sunday")
    assert await days_away(room) == [2, 3, 4, 5, 6, 7]


async def test_whoever_writes_something_down_is_back(room: TalkingRoom) -> None:
    await room.says("I'm away")
    await room.says("added 1 kg to the shed bin before I left")
    assert await days_away(room) == list(range(2, 16))
    await room.waits(days=5)
    await room.says("added 1 kg to the shed bin")
    assert await days_away(room) == [2, 3, 4, 5, 6]


async def test_nothing_is_said_to_one_who_was_never_away(room: TalkingRoom) -> None:
    assert await room.says("I'm back!") == []
    assert await room.standing() == []


async def test_an_edit_changes_an_absence_and_a_deletion_ends_it(room: TalkingRoom) -> None:
    await room.says("I'm away till Friday", event="$away")
    await room.edits("$away", "I'm away till Thursday")
    assert await days_away(room) == [2, 3, 4]
    await room.deletes("$away")
    assert await days_away(room) == []


async def test_an_absence_is_called_off(room: TalkingRoom) -> None:
    await room.says("I'm away from the 3rd to the 10th")
    await room.says("I'm not away after all")
    assert await days_away(room) == []


async def test_a_correction_is_never_meant_for_an_absence(room: TalkingRoom) -> None:
    await room.says("added 2 kg to the shed bin")
    await room.says("I'm away till Friday")
    await room.says("no, 3 kg")
    assert [e.facts.mass_kg for e in await room.standing() if e.act == "layer"] == [3.0]


async def test_others_can_say_it_and_anybody_can_ask(room: TalkingRoom) -> None:
    await room.says("hello", who="bram")
    await room.says("bram is away until Thursday")
    assert await days_away(room, "bram") == [2, 3, 4]
    [told] = await room.says("who's away?")
    assert told.body == "Bram is away, back Thursday 5 March."
    [told] = await room.says("who's away next week?")
    assert told.body == "Nobody is away Monday 9 to Sunday 15 March, as far as I know."


async def test_what_is_struck_out_of_an_absence_is_named(room: TalkingRoom) -> None:
    await room.says("I'm away from the 3rd to the 10th")
    await room.waits(days=4)
    await room.says("I'm back")
    [told] = await room.says("scratch that")
    assert told.body == "Struck out: ines's return, today. The absence stands as it was."
    assert await days_away(room) == list(range(3, 11))


async def test_whoever_is_back_hears_of_an_absence_still_to_come(room: TalkingRoom) -> None:
    await room.says("I'm away from the 9th to the 12th")
    [told] = await room.says("I'm back")
    assert told.body == (
        "Ines is still down as away Monday 9 to Thursday 12 March. "
        "If that is off, say “I'm not away after all”."
    )
    assert await days_away(room) == [9, 10, 11, 12]
    await room.says("I'm not away after all")
    assert await days_away(room) == []


async def test_a_stand_in_whom_nobody_knows_is_named(room: TalkingRoom) -> None:
    [told] = await room.says("I'm away till Friday, Zora looks after my bin")
    assert told.body.startswith("Noted. I have not heard Zora here yet")
    assert await days_away(room) == [2, 3, 4, 5]


async def test_a_stand_in_who_has_left_is_named(room: TalkingRoom) -> None:
    await room.says("hello", who="bram")
    await room.calls_itself("bram", who="bram", is_in=False)
    [told] = await room.says("I'm away till Friday, bram looks after my bin")
    assert told.body == "Noted. Bram is not in this room any more. Who else could do it?"


@pytest.mark.parametrize(
    ("first", "then", "away"),
    [
        ("I'm away till 12 March", "I'm away till 8 March only", range(2, 8)),
        ("I'm away till 8 March", "I'm away till 12 March", range(2, 12)),
        ("I'm away from 4 to 12 March", "I'm away from 4 to 6 March", range(4, 7)),
    ],
)
async def test_of_two_ends_told_for_an_absence_the_later_word_counts(
    room: TalkingRoom, first: str, then: str, away: range
) -> None:
    await room.says(first)
    await room.says(then, event="$then")
    assert await days_away(room) == list(away)
    [entry] = await room.standing()
    await room.deletes("$then")
    assert len(await room.standing()) == 1
    assert await days_away(room) != list(away)
    assert entry not in await room.standing()


@pytest.mark.parametrize(
    "then", ["I'm away tomorrow", "I'm away from 10 to 14 March", "bram is away till 5 March"]
)
async def test_other_days_or_people_away_leave_an_absence_as_it_is(
    room: TalkingRoom, then: str
) -> None:
    await room.says("hello", who="bram")
    await room.says("I'm away till 9 March")
    before = set(await days_away(room))
    await room.says(then)
    assert before <= set(await days_away(room))
    assert len(await room.standing()) == 2


@pytest.mark.parametrize(
    "said",
    [
        "I'm away from Monday till last Friday",
        "I'm away from 20 March till 10 March",
        "I'm away till yesterday",
    ],
)
async def test_an_absence_that_ends_before_it_begins_is_asked_for_again(
    room: TalkingRoom, said: str
) -> None:
    [told] = await room.says(said)
    assert told.body.startswith("That ends before it begins")
    assert await room.standing() == []


@pytest.mark.parametrize(
    ("later", "days"),
    [
        ("sorry, 4th to 8th", range(4, 9)),
        ("we're staying on till the 12th", range(3, 12)),
        ("not home before Saturday", range(3, 14)),
        ("staying two days longer", range(3, 13)),
        ("trip's off, I'm staying", ()),
    ],
)
async def test_an_absence_is_told_anew(room: TalkingRoom, later: str, days: Sequence[int]) -> None:
    await room.says("I'm away from the 3rd to the 10th")
    [mark] = await room.says(later)
    assert mark.body == "✅"
    assert await days_away(room) == list(days)


@pytest.mark.parametrize("said", ["we're staying on till the 12th", "home early", "trip's off"])
async def test_who_was_not_away_stays_no_longer(room: TalkingRoom, said: str) -> None:
    assert await room.says(said) == []
    assert await room.standing() == []


@pytest.mark.parametrize(
    ("who", "answer", "stands_in"),
    [("bram", "yes", "bram"), ("bram", "sure, happy to", "bram"), ("zoe", "yes", None)],
)
async def test_who_is_asked_to_stand_in_does_so_once_they_say_yes(
    room: TalkingRoom, who: str, answer: str, stands_in: str | None
) -> None:
    await room.says("hello", who="bram")
    [asked] = await room.says("I'm away till Friday, Bram can you do mine?")
    assert asked.body == "Noted. Bram, will you stand in for ines? Say “yes” or put 👍 here."
    await room.says(answer, who=who)
    [one] = await absences(await room.book(), MARCH[1], MARCH[1])
    assert one.stand_in == stands_in
