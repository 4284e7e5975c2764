"""What neighbours say to each other while the bot waits for an answer, or behind what another told:
no record is made of it, and none is changed unasked.
"""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    room = TalkingRoom(db)
    await room.says("opened the cellar bin, 20 L", who="olga")
    await room.says("opened the balcony bin, 12 L", who="olga")
    for who in ("rut", "ines"):
        await room.says("morning", who=who)
    return room


@pytest.mark.parametrize(
    ("asked", "told"),
    [("rut how many guests on sunday?", []), ("how old is your aunt now?", []), ("hm", [90.0])],
)
async def test_a_figure_for_a_neighbour_is_no_size_of_a_bin(
    db: Database, asked: str, told: list[float]
) -> None:
    room = TalkingRoom(db)
    await room.says("morning", who="olga")
    assert "How big is it?" in words(await room.says("put in 2 kg of bread", who="rut"))
    await room.says(asked, who="olga")
    await room.says("90", who="rut")
    sizes = [entry.facts.capacity_l for entry in await room.standing() if entry.act == "open"]
    assert [size for size in sizes if size] == told


@pytest.mark.parametrize("said", ["that's the balcony actually", "no that was the balcony"])
async def test_whose_bin_is_put_right_behind_anothers_record(room: TalkingRoom, said: str) -> None:
    await room.says("drained the cellar bin, 200 ml", who="rut")
    told = words(await room.says(said, who="olga"))
    assert told.startswith("Rut's last record is 200 mL drained")
    await room.says("yes", who="olga")
    bins = [entry.bin.name for entry in await room.standing() if entry.bin]
    assert sorted(bins) == ["balcony", "balcony", "cellar"]


@pytest.mark.parametrize("said", ["yeah cellar", "aye, the cellar one"])
async def test_a_yes_with_a_bin_takes_none_that_nobody_offers(room: TalkingRoom, said: str) -> None:
    await room.says("put 1 kg of peel in the cellar", who="ines")
    await room.says("which one was that, ines?", who="rut")
    assert await room.says(said, who="ines") == []
    assert await room.keeper("cellar") == "olga"


@pytest.mark.parametrize(
    "said", ["8 kg with the bucket", "the cellar is 9 kg with the lid on", "7 kg including the bin"]
)
async def test_a_bin_weighed_with_all_in_it_is_no_layer(room: TalkingRoom, said: str) -> None:
    await room.says(said, who="ines")
    assert {entry.act for entry in await room.standing()} == {"open"}


@pytest.mark.parametrize("said", ["did you put bran on, rut?", "how much bran did you use rut"])
async def test_what_a_neighbour_has_done_is_asked_of_them(room: TalkingRoom, said: str) -> None:
    assert await room.says(said, who="ines") == []


@pytest.mark.parametrize(
    ("said", "bin"), [("cellar. old rice", "cellar"), ("balcony, some rice", "balcony")]
)
async def test_a_bin_and_its_food_are_of_the_layer_just_told(
    room: TalkingRoom, said: str, bin: str
) -> None:
    await room.says("put 600 g in the cellar", who="ines")
    await room.says("where?", who="rut")
    await room.says(said, who="ines")
    [layer] = [entry for entry in await room.standing() if entry.act == "layer"]
    assert (layer.bin and layer.bin.name, layer.facts.materials) == (bin, {"grain": 1.0})


@pytest.mark.parametrize(
    ("who", "said", "kilos"),
    [
        ("ines", "sorry, that went in the council bin, not this one", []),
        ("ines", "it ended up on my own heap in the end", []),
        ("rut", "that went in the rubbish", [0.6]),
        ("ines", "my umbrella went in the rubbish", [0.6]),
    ],
)
async def test_all_of_a_layer_may_have_gone_elsewhere(
    room: TalkingRoom, who: str, said: str, kilos: list[float]
) -> None:
    await room.says("put 600 g of rice in the cellar", who="ines")
    await room.says(said, who=who)
    assert await room.kilos() == kilos


async def test_as_much_in_another_bin_is_asked_about(room: TalkingRoom) -> None:
    await room.says("put 600 g of rice in the cellar", who="ines")
    told = words(await room.says("ditto for the balcony", who="rut"))
    assert told == "Shall I write down 600 g in the balcony bin?"
    await room.says("no wait, 800 g", who="rut")
    assert await room.kilos() == [0.6, 0.8]


async def test_how_much_was_drained_is_told_behind_it(room: TalkingRoom) -> None:
    await room.says("drained the cellar bin", who="ines")
    await room.says("150 I think", who="ines")
    [drained] = [entry for entry in await room.standing() if entry.act == "drain"]
    assert drained.facts.volume_l == 0.15


async def test_a_late_ok_is_no_yes_once_the_record_was_put_right(room: TalkingRoom) -> None:
    await room.says("drained the cellar bin, 200 ml", who="rut")
    await room.says("that's the balcony actually", who="olga")
    await room.says("no, it was the cellar", who="rut")
    await room.says("ok sorry", who="olga")
    [drained] = [entry for entry in await room.standing() if entry.act == "drain"]
    assert drained.bin is not None
    assert drained.bin.name == "cellar"
