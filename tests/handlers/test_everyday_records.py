"""Everyday reports, and how they are put right in few words."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines and Bram, two bins and a layer of 2 kg in the blue one."""
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("opened the shed bin, 20 L")
    await room.says("opened the blue bin, 20 L")
    await room.says("2 kg in the shed")
    await room.says("2 kg in blue")
    return room


async def answer(room: TalkingRoom, said: str) -> str:
    return words(await room.says(said))


async def told(room: TalkingRoom, act: str) -> list[tuple[str | None, float | None]]:
    """The bins of what stands of a deed, with kilos or litres."""
    return sorted(
        (
            (entry.bin.name if entry.bin else None, entry.facts.mass_kg or entry.facts.volume_l)
            for entry in await room.standing()
            if entry.act == act
        ),
        key=str,
    )


@pytest.mark.parametrize(
    ("said", "kg"),
    [
        ("it was with the bucket, so take off 500 g", 1.5),
        ("I wrote 2 kg but it was with the bucket, so take off 500 g", 1.5),
        ("take off 500 g", 1.5),
        ("minus 200 g for the bowl", 1.8),
        ("I forgot the tub, take 300 off", 1.7),
        ("that was with the tin, please subtract 250 g", 1.75),
    ],
)
async def test_what_is_taken_off_is_no_amount_of_its_own(
    room: TalkingRoom, said: str, kg: float
) -> None:
    await room.says(said)
    assert await told(room, "layer") == [("blue", pytest.approx(kg)), ("shed", 2.0)]


@pytest.mark.parametrize(
    "said",
    ["take off the lid", "take 500 g off to the neighbours tomorrow", "minus 2 degrees"],
)
async def test_what_takes_nothing_off_leaves_the_record(room: TalkingRoom, said: str) -> None:
    await room.says(said)
    assert await told(room, "layer") == [("blue", 2.0), ("shed", 2.0)]


@pytest.mark.parametrize(
    "said", ["in the shed", "into the shed sorry", "i mean the shed", "in the shed i meant"]
)
async def test_the_bin_left_out_is_told_behind(room: TalkingRoom, said: str) -> None:
    await room.says("added a kilo")
    await room.says(said)
    assert await told(room, "layer") == [("blue", 2.0), ("shed", 1.0), ("shed", 2.0)]


@pytest.mark.parametrize(
    "said", ["in the shed?", "off to the shed", "the lamp is in the shed", "nothing in the shed"]
)
async def test_a_bin_that_puts_nothing_right(room: TalkingRoom, said: str) -> None:
    await room.says("added a kilo")
    await room.says(said)
    assert await told(room, "layer") == [("blue", 1.0), ("blue", 2.0), ("shed", 2.0)]


@pytest.mark.parametrize(
    "said",
    [
        "no not yet, tomorrow",
        "not yet sorry",
        "oops not yet, i will seal it on friday",
        "no, not yet",
    ],
)
async def test_a_deed_that_is_still_to_be_done(room: TalkingRoom, said: str) -> None:
    await room.says("sealed blue")
    assert "Struck out" in await answer(room, said)
    assert await told(room, "seal") == []


@pytest.mark.parametrize("said", ["not yet dry outside", "not yet, yesterday", "not today?"])
async def test_a_deed_stands_where_nothing_says_it_was_not_done(
    room: TalkingRoom, said: str
) -> None:
    await room.says("sealed blue")
    await room.says(said)
    assert await told(room, "seal") == [("blue", None)]


@pytest.mark.parametrize(
    ("first", "said", "deed"),
    [
        ("buried blue", "sealed it i mean", "seal"),
        ("sealed blue", "no, drained", "drain"),
        ("drained blue", "sorry, sealed not drained", "seal"),
        ("buried blue", "oops sealed", "seal"),
    ],
)
async def test_another_deed_is_told_in_place_of_the_last(
    room: TalkingRoom, first: str, said: str, deed: str
) -> None:
    await room.says(first)
    await room.says(said)
    for act in ("bury", "seal", "drain"):
        assert await told(room, act) == ([("blue", None)] if act == deed else [])


async def test_a_deed_told_next_strikes_nothing_out(room: TalkingRoom) -> None:
    await room.says("drained blue")
    await room.says("sealed it")
    assert await told(room, "drain") == [("blue", None)]
    assert await told(room, "seal") == [("blue", None)]


@pytest.mark.parametrize(
    ("said", "drained"),
    [
        ("drained them, nothing in blue", [("blue", None), ("shed", None)]),
        ("drained both, 300 ml from blue", [("blue", 0.3), ("shed", None)]),
        ("drained them all. blue gave 200 ml", [("blue", 0.2), ("shed", None)]),
    ],
)
async def test_all_are_drained_though_one_is_named(
    room: TalkingRoom, said: str, drained: list[tuple[str, float | None]]
) -> None:
    await room.says(said)
    assert await told(room, "drain") == drained


async def test_amounts_behind_both_are_of_those_drainings(room: TalkingRoom) -> None:
    await room.says("drained both")
    await room.says("250 from the shed, barely a splash from blue")
    assert await told(room, "drain") == [("blue", None), ("shed", 0.25)]
    await room.says("100 ml from blue")
    assert await told(room, "drain") == [("blue", 0.1), ("shed", 0.25)]


@pytest.mark.parametrize("said", ["got 150 ml", "150 ml came out", "it was about 150 ml"])
async def test_an_amount_just_behind_a_bare_draining(room: TalkingRoom, said: str) -> None:
    await room.says("drained blue")
    await room.says(said)
    assert await told(room, "drain") == [("blue", 0.15)]


@pytest.mark.parametrize(
    "said",
    [
        "poured off the liquid first and put the rest in blue, 300 g",
        "strained the soup, the rest went in blue, 300 g",
    ],
)
async def test_liquid_poured_off_the_food_is_no_draining(room: TalkingRoom, said: str) -> None:
    await room.says(said)
    assert await told(room, "drain") == []
    assert ("blue", 0.3) in await told(room, "layer")


async def test_an_amount_is_told_in_answer_without_its_unit(room: TalkingRoom) -> None:
    await room.says("half a cabbage into blue")
    assert "Corrected" in await answer(room, "about 500")
    assert ("blue", 0.5) in await told(room, "layer")


async def test_layers_nobody_measured_have_no_weight(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the blue bin, 20 L")
    await room.says("half a cabbage into blue")
    assert await answer(room, "how much so far") == "1 layer, none measured, today."


async def test_a_vessel_put_right_with_what_it_comes_to(room: TalkingRoom) -> None:
    await room.says("half a bucket of apple cores into blue")
    await room.says("the little bucket, so 2 L")
    assert ("blue", 2.0) in await told(room, "layer")


@pytest.mark.parametrize(
    "said",
    [
        "off on holiday from tomorrow till next sunday",
        "I'm at my mum's till monday",
        "we're with my parents from tomorrow until friday",
    ],
)
async def test_away_in_ordinary_words(room: TalkingRoom, said: str) -> None:
    await room.says(said)
    assert [entry.act for entry in await room.standing()][-1] == "away"


@pytest.mark.parametrize("said", ["I'm at my desk till five", "at my mum's", "on holiday soon"])
async def test_no_absence_is_told(room: TalkingRoom, said: str) -> None:
    await room.says(said)
    assert "away" not in [entry.act for entry in await room.standing()]


@pytest.mark.parametrize(("said", "ends"), [("back", True), ("back!", True), ("my back", False)])
async def test_back_alone_ends_an_absence(room: TalkingRoom, said: str, ends: bool) -> None:
    await room.says("I'm away till Friday")
    await room.says(said)
    assert ("back" in [entry.act for entry in await room.standing()]) == ends


@pytest.mark.parametrize("asked", ["bram can you do mine", "bram could you take over?"])
async def test_a_yes_to_a_stand_in_of_who_is_away(db: Database, asked: str) -> None:
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says("opened the shed bin, 20 L")
    await room.says("off on holiday from tomorrow till friday")
    await room.says(asked)
    await room.says("yep no problem", who="bram")
    [away] = [entry for entry in await room.standing() if entry.act == "away"]
    assert away.receiver == "bram"


@pytest.mark.parametrize(("said", "hour"), [("no, 7", "07:00"), ("sorry, 9", "09:00")])
async def test_another_hour_right_behind_a_reminder(
    room: TalkingRoom, said: str, hour: str
) -> None:
    await room.says("remind me tomorrow at 8 to bring bran")
    assert hour in await answer(room, said)


@pytest.mark.parametrize(
    ("said", "litres"),
    [("drained it again, half that", 0.15), ("drained blue again, the same", 0.3)],
)
async def test_drained_again_by_the_last_amount(
    room: TalkingRoom, said: str, litres: float
) -> None:
    await room.says("drained blue, 300 ml")
    await room.says(said)
    assert ("blue", litres) in await told(room, "drain")
    assert ("blue", 0.3) in await told(room, "drain")


async def test_a_drink_may_be_the_liquid(room: TalkingRoom) -> None:
    assert await answer(room, "drained a pint") == "Shall I write down 568 mL drained?"
    await room.says("lovely evening at the pub", who="bram")
    assert await answer(room, "drained a glass") == ""


@pytest.mark.parametrize(
    ("said", "kg"),
    [
        ("ok 5.5", 5.5),
        ("ok 5.5 kg", 5.5),
        ("make it 4", 4.0),
        ("mostly orange peel", 5.0),
        ("yes", 5.0),
    ],
)
async def test_what_is_asked_about_is_settled_by_a_detail(
    room: TalkingRoom, said: str, kg: float
) -> None:
    assert words(await room.says("5 kg", who="bram")) == "Shall I write down 5 kg?"
    await room.says(said, who="bram")
    assert kg in [much for _, much in await told(room, "layer")]


@pytest.mark.parametrize(
    "said", ["scratch that", "forget it, wrong chat", "never mind", "sorry, ignore that"]
)
async def test_what_was_only_asked_about_is_taken_back_alone(room: TalkingRoom, said: str) -> None:
    await room.says("5 kg", who="bram")
    assert words(await room.says(said, who="bram")) == ""
    assert await told(room, "layer") == [("blue", 2.0), ("shed", 2.0)]


@pytest.mark.parametrize(
    ("asked", "said", "made_of"),
    [
        ("turkey carcass, can i", "broke it up, put in, 2 kg", "bone"),
        ("can i put lamb bones in?", "put it in, 2 kg", "bone"),
        ("can the fat go in?", "chopped it and put it in blue, 2 kg", "oil"),
        ("can i put lamb bones in?", "added 2 kg of potato peelings", "vegetable"),
        ("can i put lamb bones in?", "added 2 kg", "mixed"),
    ],
)
async def test_what_was_asked_about_is_what_goes_in(
    room: TalkingRoom, asked: str, said: str, made_of: str
) -> None:
    await room.says(asked)
    await room.says(said)
    last = [entry for entry in await room.standing() if entry.act == "layer"][-1]
    assert (last.facts.mass_kg, last.facts.materials) == (2.0, {made_of: 1.0})


async def test_what_was_asked_about_is_in_by_now(room: TalkingRoom) -> None:
    await room.says("can the fat go in")
    assert "Shall I write down 125 mL" in await answer(room, "about half a cup")
    assert "rich in" in await answer(room, "put it in")
    assert await told(room, "layer") == [("blue", 0.125), ("blue", 2.0), ("shed", 2.0)]


@pytest.mark.parametrize("said", ["saturday, sorry", "saturday i mean", "saturday not sunday"])
async def test_a_day_put_right_behind_it(room: TalkingRoom, said: str) -> None:
    await room.says("put 1 kg in blue on sunday")
    assert "Saturday 28 February" in await answer(room, said)


@pytest.mark.parametrize("said", ["3 in the shed", "and 3 into the shed"])
async def test_so_many_in_another_bin_is_asked_about(room: TalkingRoom, said: str) -> None:
    assert await answer(room, said) == "Shall I write down 3 kg in the shed bin?"


@pytest.mark.parametrize("said", ["3 in the shed?", "2 people in the shed", "3 of us in the shed"])
async def test_so_many_of_others_in_another_bin(room: TalkingRoom, said: str) -> None:
    assert "Shall I" not in await answer(room, said)


@pytest.mark.parametrize(
    ("said", "kg"), [("but it's 1.2", 1.2), ("but 3 of us", 2), ("ok 3 then", 2)]
)
async def test_a_bare_figure_right_behind_an_answer(
    room: TalkingRoom, said: str, kg: float
) -> None:
    await room.says(said)
    assert ("blue", kg) in await told(room, "layer")
