"""An absence that is put right in few words, and what is lent for its sake."""

from collections.abc import Sequence
from datetime import date

import pytest

from storage.absences import away_on
from storage.database import Database
from tests.room import TalkingRoom, words

MARCH = [date(2026, 3, day) for day in range(1, 24)]
TOLD = "I'm away from Friday to Wednesday"
"""From the 6th to the 11th, told on Monday the 2nd."""


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines keeps the yard bin and is to be away; Bram has spoken."""
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 30 L")
    await room.says("hello", who="bram")
    return room


async def days_away(room: TalkingRoom) -> list[int]:
    book = await room.book()
    return [day.day for day in MARCH if "ines" in await away_on(book, day)]


@pytest.mark.parametrize(
    ("said", "days"),
    [
        ("back Tuesday not Wednesday", range(6, 10)),
        ("change of plan, we're back Tuesday", range(6, 10)),
        ("home on the 10th instead", range(6, 10)),
        ("actually I'm only back on Saturday", range(6, 14)),
        ("won't be back till Saturday", range(6, 14)),
        ("coming home a day early", range(6, 11)),
        ("we'll be back two days later than planned", range(6, 14)),
        ("staying one day less", range(6, 11)),
        ("leaving Saturday instead of Friday", range(7, 12)),
        ("setting off a day later", range(7, 12)),
        ("scrap that, we're not going till Sunday", range(8, 12)),
        ("change of plan, I'm here till Sunday", range(8, 12)),
        ("I'm home until Thursday", range(6, 12)),
        ("we're not going now", ()),
        ("not going after all, the car's broken", ()),
        ("we've decided to stay home", ()),
        ("plans changed, staying put instead", ()),
        ("we've cancelled our trip", ()),
    ],
)
async def test_other_days_in_few_words(room: TalkingRoom, said: str, days: Sequence[int]) -> None:
    await room.says(TOLD)
    await room.says(said)
    assert await days_away(room) == list(days)


@pytest.mark.parametrize(
    "said",
    [
        "we're not going to the market till Sunday",
        "the plumber is back Tuesday not Wednesday",
        "the bus is leaving Saturday instead of Friday",
        "we're staying home tonight",
        "I'm not going to the meeting now",
        "are we back Tuesday not Wednesday?",
        "the post came a day early",
        "the match is off",
        "home-made soup on Saturday",
        "going Saturday",
        "I'm here till six",
    ],
)
async def test_other_things_move_and_are_off(room: TalkingRoom, said: str) -> None:
    await room.says(TOLD)
    await room.says(said)
    assert await days_away(room) == list(range(6, 12))


async def test_of_which_end_a_day_is_is_asked(room: TalkingRoom) -> None:
    await room.says(TOLD)
    await room.says("have fun", who="bram")
    assert words(await room.says("make that Tuesday")).startswith("Is that the day you go, or ")
    assert await days_away(room) == list(range(6, 12))
    await room.says("back Tuesday")
    assert await days_away(room) == list(range(6, 10))


async def test_a_first_day_behind_the_last_asks_for_both(room: TalkingRoom) -> None:
    await room.says("I'm away on Friday and Saturday")
    assert "when are you back?" in words(await room.says("we're not leaving till Monday"))
    assert await days_away(room) == [6, 7]


async def lends(room: TalkingRoom) -> None:
    await room.says(f"{TOLD}. Bram has the yard bin till I'm back")
    await room.says("ok", who="bram")


@pytest.mark.parametrize(
    ("said", "first", "home"),
    [
        ("back Tuesday not Wednesday", 6, 10),
        ("leaving Saturday instead", 7, 12),
        ("we'll be home two days later", 6, 14),
    ],
)
async def test_what_is_lent_goes_with_it(
    room: TalkingRoom, said: str, first: int, home: int
) -> None:
    await lends(room)
    [told] = await room.says(said)
    assert f"{home} March" in told.body
    assert "@bram:test" in told.mentions
    kept = []
    for _ in range(15):
        kept.append(await room.keeper("yard") == "bram")
        await room.waits(days=1)
    assert [day for day, lent in enumerate(kept, start=2) if lent] == list(range(first, home))


@pytest.mark.parametrize("is_taken", [True, False])
async def test_what_was_to_be_lent_stays(room: TalkingRoom, is_taken: bool) -> None:
    await room.says(f"{TOLD}. Bram has the yard bin till I'm back")
    if is_taken:
        await room.says("ok", who="bram")
    assert "The yard bin stays with ines." in words(await room.says("we're not going after all"))
    await room.says("ok", who="bram")
    await room.waits(days=6)
    assert await room.keeper("yard") == "ines"


async def test_whoever_is_back_early_has_it_again(room: TalkingRoom) -> None:
    await lends(room)
    await room.waits(days=6)
    assert "The yard bin goes back today." in words(await room.says("I'm back"))
    assert await room.keeper("yard") == "ines"


async def test_what_is_lent_for_longer_stays_away(room: TalkingRoom) -> None:
    await room.says("Bram takes the yard bin till the 30th")
    await room.says("ok", who="bram")
    await room.says(TOLD)
    await room.says("we're not going after all")
    assert await room.keeper("yard") == "bram"
