"""Days asked about by a deed that is only supposed, or by the soil; nothing is written down."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.mark.parametrize(
    ("said", "words"),
    [
        # Said on Monday 2 March 2026; counted on a calendar. Sealed 10 to 14 days (a US retailer;
        # Footer 2013 ch. 7), 2 to 3 weeks in warm soil (a UK master composter), 6 to 8 in soil of
        # 5 to 10 °C (decay halves with each 10 °C).
        (
            "If I seal today when can I bury it?",
            "If it is sealed today, bury it Thursday 12 to Monday 16 March.",
        ),
        (
            "sealed on 1 March, when ready?",
            "If it was sealed yesterday, bury it Wednesday 11 to Sunday 15 March.",
        ),
        (
            "we ferment for 3 weeks, when is it ready if sealed today?",
            "If it is sealed today, bury it Monday 23 March.",
        ),
        ("what if we seal shed on Friday, when can it be buried?", "sealed Friday 6 March, bury"),
        (
            "buried on 1 March, when can I plant?",
            "If it was buried yesterday, plant there Sunday 15 to Sunday 22 March, later in cold",
        ),
        ("when can we plant if we bury it on Friday?", "plant there Friday 20 to Friday 27 March"),
        ("when can I plant if the soil is 8 degrees?", "42 to 56 days after burying"),
        ("how long in soil of 3 degrees?", "hardly anything happens: wait"),
        ("when can I plant in soil of 9 degrees?", "42 to 56 days after burying"),
        ("how long does it take in winter?", "Below 15 °C"),
    ],
)
async def test_days_that_follow_from_what_is_supposed(db: Database, said: str, words: str) -> None:
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L")
    await room.says("3 kg peel in shed")
    before = await room.standing()
    [answer] = await room.says(said)
    assert words in answer.body
    assert await room.standing() == before


async def test_a_bin_that_is_cold_is_reckoned_as_cold(db: Database) -> None:
    room = TalkingRoom(db)
    for told in ("opened the shed bin, 20 L", "3 kg peel in shed", "the shed bin is at 8 degrees"):
        await room.says(told)
    [answer] = await room.says("if shed is sealed on Friday when is it ready?")
    # Six weeks, the most that is forecast of so cold a bin (Wijtzes et al. 1995).
    assert answer.body == "If it is sealed Friday 6 March, bury it Friday 17 April."


async def test_a_sealing_that_is_told_is_written_down(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L")
    await room.says("3 kg peel in shed")
    await room.says("sealed the shed bin today, when is it ready?")
    assert "seal" in [entry.act for entry in await room.standing()]
