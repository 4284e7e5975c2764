"""Who is away, or out of it for some weeks, is passed over."""

import pytest

from storage.database import Database
from tests.bot.turns.agreed import DRAINING, KEEPING, turns
from tests.room import TalkingRoom
from tests.rota_year import RotaYear


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


async def test_months_of_turns_are_fair_and_nobody_has_one_while_away(db: Database) -> None:
    year = RotaYear(db)
    await year.live(120)
    assert year.told >= 17
    assert year.away > 50


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
