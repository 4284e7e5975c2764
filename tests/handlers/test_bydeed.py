"""A record called by what was done is put right, whichever was written down last."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines fills and drains the pail bin; a layer was written down since."""
    room = TalkingRoom(db)
    await room.says("opened the pail bin, 30 L")
    await room.says("2 kg in the pail bin")
    await room.says("drained 400 ml")
    await room.says("1 kg in the pail bin")
    return room


async def book(room: TalkingRoom, *acts: str) -> list[object]:
    """The figures and days of what stands of these acts."""
    told = [e for e in await room.standing() if e.act in acts]
    return [e.facts.volume_l or e.facts.mass_kg or e.on for e in told]


@pytest.mark.parametrize(
    "said",
    [
        "the drain was 250 ml not 400",
        "the draining was only 250 ml",
        "sorry, the drain from the pail bin was really 250 ml",
        "today's draining was 250 ml, not 400",
    ],
)
async def test_a_draining_is_put_right_and_no_layer(room: TalkingRoom, said: str) -> None:
    await room.says(said)
    assert await book(room, "layer", "drain") == [2, 1, 0.25]


async def test_anothers_draining_is_asked_about(room: TalkingRoom) -> None:
    await room.says("1 kg in the pail bin", who="bram")
    [asked] = await room.says("the draining was only 250 ml", who="bram")
    assert asked.body.endswith("Shall I correct it to 250 mL?")
    assert await book(room, "drain") == [0.4]
    await room.says("yes", who="bram")
    assert await book(room, "drain") == [0.25]


async def test_what_was_never_written_down_is_asked_about(room: TalkingRoom) -> None:
    await room.waits(days=1)
    [asked] = await room.says("the pail bin was sealed on Sunday, not Monday")
    assert asked.body == "Shall I write down a sealing in the pail?"
    assert not await book(room, "seal")


@pytest.mark.parametrize(
    "said",
    [
        "the pail bin was sealed on Wednesday, not Thursday",
        "sealed the pail bin on Wednesday not Thursday",
        "the pail bin's sealing was on Wednesday, not Thursday",
    ],
)
async def test_a_sealing_is_put_on_its_day_once(room: TalkingRoom, said: str) -> None:
    await room.waits(days=10)
    await room.says("sealed the pail bin")
    await room.says("hello", who="bram")
    await room.waits(days=2)
    await room.says(said)
    [on] = await book(room, "seal")
    assert str(on) == "2026-03-11"


@pytest.mark.parametrize(
    ("said", "litres"),
    [
        ("the pail bin is 20 L not 30", 20),
        ("actually the pail bin is 20 L", 20),
        ("bin's 25 L actually", 25),
    ],
)
async def test_a_size_put_right_changes_no_layer(
    room: TalkingRoom, said: str, litres: float
) -> None:
    await room.says("1 kg in the pail bin")
    await room.says(said)
    bin = await (await room.book()).bin("pail")
    assert bin
    assert (await (await room.book()).about(bin)).capacity_l == litres
    assert await book(room, "layer") == [2, 1, 1]


async def test_a_layer_of_so_many_litres_is_put_right(room: TalkingRoom) -> None:
    await room.says("added 12 L of scraps to the pail bin")
    await room.says("the pail bin was 8 L not 12")
    assert await book(room, "layer") == [2, 1, 8]


@pytest.mark.parametrize(
    ("told", "said", "left"),
    [
        ("hello", "scratch the draining", ["layer", "layer"]),
        ("pH 3.9 in the pail bin", "please delete the pH value", ["layer", "drain", "layer"]),
        ("white mould on the pail bin", "delete the mould", ["layer", "drain", "layer"]),
        ("sealed the pail bin", "undo the sealing", ["layer", "drain", "layer"]),
        ("hello", "delete the mould", ["layer", "drain", "layer"]),
    ],
)
async def test_what_is_called_by_its_kind_is_struck_alone(
    room: TalkingRoom, told: str, said: str, left: list[str]
) -> None:
    await room.says(told)
    await room.says("mixed a batch of bran, 2 kg")
    await room.says(said)
    acts = [e.act for e in await room.standing() if e.act not in ("open", "batch")]
    assert acts == left


async def test_what_holds_more_or_is_anothers_is_asked_about(room: TalkingRoom) -> None:
    await room.says("the pail bin is at 24 C with pH 3.9")
    [answer] = await room.says("delete the pH")
    assert "with what else was seen" in answer.body
    [answer] = await room.says("scratch the draining", who="bram")
    assert answer.body.startswith("Ines's record of that is 400 mL drained from the pail.")
    assert len(await book(room, "drain", "observe")) == 2


@pytest.mark.parametrize(
    ("said", "left"),
    [
        ("scratch the one in Rosie", [1]),
        ("delete the leeks in Rosie", [1]),
        ("scratch the last one in green", [2]),
        ("delete the leeks in green", [2, 1]),
    ],
)
async def test_one_of_several_bins_is_struck(db: Database, said: str, left: list[float]) -> None:
    room = TalkingRoom(db)
    await room.says("opened the green bin, 30 L")
    await room.says("opened Rosie, 30 L")
    await room.says("hello", who="bram")
    await room.says("2 kg of leeks in Rosie and 1 kg of rice in green")
    await room.says(said)
    assert await book(room, "layer") == left


async def test_what_is_to_be_lifted_out_of_a_bin_is_no_record(room: TalkingRoom) -> None:
    await room.says("green mould in the pail bin")
    await room.says("can you remove the mould in the pail bin")
    assert len(await book(room, "observe")) == 1


@pytest.mark.parametrize(
    "said",
    [
        "no, it was sealed on Wednesday",
        "sorry, sealed on Wednesday",
        "actually we sealed it on Wednesday",
        "the pail bin was sealed on Wednesday actually",
        "oops, I sealed the pail bin on Wednesday",
    ],
)
async def test_the_day_told_anew(room: TalkingRoom, said: str) -> None:
    await room.waits(days=3)
    await room.says("sealed the pail bin")
    await room.waits(days=1)
    await room.says(said)
    [day] = await book(room, "seal")
    assert str(day) == "2026-03-04"


@pytest.mark.parametrize(
    ("said", "told", "stage"),
    [
        ("the pail bin was sealed on Saturday", "sealed Monday 2 March: that day counts", "ferm"),
        ("the pail bin was sealed on Saturday actually", "counts as open", "filling"),
    ],
)
async def test_what_is_said_of_a_sealing_before_the_last_layer_holds(
    room: TalkingRoom, said: str, told: str, stage: str
) -> None:
    await room.says("sealed the pail bin")
    await room.waits(days=2)
    assert told in (await room.says(said))[-1].body
    assert f": {stage}" in (await room.says("how full is the pail bin?"))[-1].body


async def test_the_last_layer_is_put_on_another_day(room: TalkingRoom) -> None:
    await room.says("drained 100 ml")
    [answer] = await room.says("that layer was on Saturday")
    assert "on 1 kg in the pail, Saturday 28 February" in answer.body
