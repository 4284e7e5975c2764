"""Who may answer a question of the bot's, and what is said to an order it does not understand."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """A room with a green bin, into which rut put 2 kg."""
    room = TalkingRoom(db)
    await room.says("opened the green bin, 20 L, shared", who="olga")
    await room.says("opened bin 2, 20 L", who="olga")
    await room.says("2 kg in green", who="rut")
    return room


@pytest.mark.parametrize(
    ("talk", "kilos"),
    [
        ((("ines", "scratch that"), ("rut", "yes")), []),
        ((("ines", "no, 3 kg"), ("rut", "yep")), [3.0]),
        ((("ines", "scratch that"), ("rut", "no"), ("ines", "yes")), [2.0]),
        ((("ines", "scratch that"), ("olga", "yes")), [2.0]),
        ((("ines", "scratch that"), ("olga", "lunch?"), ("rut", "yes")), [2.0]),
    ],
)
async def test_who_told_the_record_answers_for_it(
    room: TalkingRoom, talk: tuple[tuple[str, str], ...], kilos: list[float]
) -> None:
    for who, words in talk:
        await room.says(words, who=who)
    standing = [entry for entry in await room.standing() if entry.act == "layer"]
    assert [entry.facts.mass_kg for entry in standing] == kilos


@pytest.mark.parametrize("said", ["scratch the first one", "undo the earlier entry please"])
async def test_the_last_is_not_struck_for_another(room: TalkingRoom, said: str) -> None:
    await room.says("1 kg in green", who="rut")
    [asked] = await room.says(said, who="rut")
    assert asked.body == "Which record do you mean? Reply to the message it is about."
    standing = [entry.facts.mass_kg for entry in await room.standing() if entry.act == "layer"]
    assert standing == [2.0, 1.0]


async def test_what_is_off_a_list_is_no_record(room: TalkingRoom) -> None:
    await room.says("scratch that one off the list", who="rut")
    assert "layer" in [entry.act for entry in await room.standing()]


async def test_an_order_by_name_is_never_passed_over(room: TalkingRoom) -> None:
    [answer] = await room.says("pailkeeper take 1 kg off the green")
    assert "nothing is written down" in answer.body
    assert await room.says("pailkeeper is a funny name") == []


async def agreed_on(db: Database) -> TalkingRoom:
    """Zoe has named a new bin, and it was asked whether it is one."""
    room = TalkingRoom(db)
    for who in ("ines", "bram"):
        await room.says("hello", who=who)
    [asked] = await room.says("ok, Hector it is. 30 litres", who="zoe")
    assert asked.body == "Shall I write down a new bin, Hector?"
    return room


async def test_anybody_may_say_that_a_bin_is_to_be_begun(db: Database) -> None:
    room = await agreed_on(db)
    [opened] = await room.says("yes", who="bram")
    assert opened.body.startswith("Opened Hector, 30 L")


@pytest.mark.parametrize("said", ["Hector got 1.5 kg of leeks", "added 1.5 kg to Hector"])
async def test_what_goes_into_it_says_so_as_well(db: Database, said: str) -> None:
    room = await agreed_on(db)
    await room.says(said, who="bram")
    [opened, layer] = await room.standing()
    assert (opened.act, opened.facts.capacity_l) == ("open", 30)
    assert (layer.act, layer.facts.mass_kg) == ("layer", 1.5)
    assert layer.bin == opened.bin


async def test_what_another_gets_says_nothing_of_it(db: Database) -> None:
    room = await agreed_on(db)
    [asked] = await room.says("Boris got 1.5 kg of leeks", who="bram")
    assert asked.body == "Shall I write down 1.5 kg in Boris?"
    assert not await room.standing()


async def test_a_first_bin_that_is_drained_keeps_its_name(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("drained Hector, 300 ml")
    [drained] = [entry for entry in await room.standing() if entry.act == "drain"]
    assert drained.bin
    assert drained.bin.name == "Hector"
