"""What neighbours say in the first weeks of a bin, leaning on what was said just before."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines, Bram and Zoe, and one bin."""
    room = TalkingRoom(db)
    for who in ("bram", "zoe"):
        await room.says("hello", who=who)
    await room.says("opened the yard bin, 20 L")
    return room


async def answer(room: TalkingRoom, said: str) -> str:
    return words(await room.says(said))


async def layers(room: TalkingRoom) -> list[tuple[str | None, float | None, float | None]]:
    told = [entry for entry in await room.standing() if entry.act == "layer"]
    assert all(entry.bin and entry.bin.name == "yard" for entry in told)
    return [(entry.member, entry.facts.mass_kg, entry.facts.volume_l) for entry in told]


@pytest.mark.parametrize(
    ("said", "kg", "litres"),
    [
        ("and 300 g of bread crusts from me", 0.3, None),
        ("plus half a kilo of peel from us", 0.5, None),
        ("200 g of pasta from me too", 0.2, None),
        ("and a jar of coffee grounds from downstairs", None, 0.4),
        ("+ 400 g from me", 0.4, None),
        ("same here but 800 g", 0.8, None),
        ("me too, about 1 kg", 1.0, None),
        ("same, only 2 litres", None, 2.0),
        ("1.5 from me", 1.5, None),
        ("and 800 from us too", 0.8, None),
        ("1.2 kg in, full now", 1.2, None),
        ("1 kg, some chicken in it", 1.0, None),
    ],
)
async def test_another_adds_to_the_layer_just_told(
    room: TalkingRoom, said: str, kg: float | None, litres: float | None
) -> None:
    await room.says("600 g of leftovers into the yard bin", who="bram")
    await room.says(said, who="zoe")
    member, told_kg, told_l = (await layers(room))[-1]
    assert (member, told_kg) == ("zoe", kg)
    assert (told_l is not None) == (litres is not None)


@pytest.mark.parametrize(
    "said",
    [
        "and 2 loaves for the party?",
        "and 300 g of butter for my cake",
        "plus 5 minutes from me",
        "same here, lovely weather",
        "me too, 3 hours in the garden",
        "and 200 g of chicken for the dog tonight",
    ],
)
async def test_what_is_said_of_else_behind_a_layer_adds_nothing(
    room: TalkingRoom, said: str
) -> None:
    await room.says("600 g of leftovers into the yard bin", who="bram")
    await room.says(said, who="zoe")
    assert len(await layers(room)) == 1


@pytest.mark.parametrize(
    ("said", "kg"), [("1 kg, some chicken in it", 1.0), ("500 g of bread", 0.5), ("2 kg in", 2.0)]
)
async def test_an_amount_behind_others_layers_puts_none_right(
    room: TalkingRoom, said: str, kg: float
) -> None:
    await room.says("3 kg of peelings into the yard bin")
    await room.says("600 g of leftovers into the yard bin", who="bram")
    await room.says(said)
    assert [told for _, told, _ in await layers(room)] == [3.0, 0.6, kg]


async def test_the_first_layer_is_told_by_its_amount_alone(room: TalkingRoom) -> None:
    await room.says("first kilo's in", who="zoe")
    assert await layers(room) == [("zoe", 1.0, None)]
    await room.waits(days=1)
    assert await answer(room, "1.5 kg") == "Shall I write down 1.5 kg?"


@pytest.mark.parametrize("said", ["1.5 from the garden", "2 from me to you", "0 from me"])
async def test_a_figure_of_else_is_no_layer(room: TalkingRoom, said: str) -> None:
    await room.says("600 g of leftovers into the yard bin", who="bram")
    told = len(await layers(room))
    await room.says(said, who="zoe")
    assert len(await layers(room)) == told


@pytest.mark.parametrize(
    ("said", "deed"),
    [
        ("it's full, sealing it tonight", "seal"),
        ("it's full, shutting it tonight", "seal"),
        ("it's full, closing it tonight", "seal"),
        ("I'll seal it tonight", "seal"),
        ("going to drain it later", "drain"),
    ],
)
async def test_what_the_keeper_was_going_to_do_is_done(
    room: TalkingRoom, said: str, deed: str
) -> None:
    await room.says("3 kg of peelings into the yard bin")
    await room.waits(days=4)
    await room.says(said)
    await room.says("done")
    assert [one.act for one in await room.standing()][-1] == deed


@pytest.mark.parametrize("said", ["sealing it tonight?", "thinking of sealing it tonight"])
async def test_what_nobody_said_they_do_is_not_done(room: TalkingRoom, said: str) -> None:
    await room.says("3 kg of peelings into the yard bin")
    await room.says(said)
    await room.says("done")
    assert [one.act for one in await room.standing()][-1] == "layer"


@pytest.mark.parametrize(
    ("said", "made_of"),
    [
        ("half of that was citrus", "50 % fruit, 50 % vegetables"),
        ("a quarter of it was chicken actually", "75 % vegetables, 25 % meat"),
        ("half of it bread", "50 % bread, rice or pasta, 50 % vegetables"),
        ("no it was coffee grounds mostly", "70 % coffee and tea, 30 % of all sorts"),
    ],
)
async def test_a_share_of_the_last_layer_was_something_else(
    room: TalkingRoom, said: str, made_of: str
) -> None:
    await room.says("1 kg of potato peelings")
    assert "Corrected" in await answer(room, said)
    assert f"In it: {made_of}." in await answer(room, "what's in the bin?")


@pytest.mark.parametrize("said", ["half of that was yesterday", "half of it was gone by noon"])
async def test_a_share_of_no_food_changes_nothing(room: TalkingRoom, said: str) -> None:
    await room.says("1 kg of potato peelings")
    await room.says(said)
    assert "In it: 100 % vegetables." in await answer(room, "what's in the bin?")


@pytest.mark.parametrize(
    "asked",
    ["story of the bin", "the history of our bin", "what happened to the bin?"],
)
async def test_the_only_bin_needs_no_name(room: TalkingRoom, asked: str) -> None:
    await room.says("1 kg of potato peelings")
    assert (await answer(room, asked)).startswith("The yard bin, run 1:")


@pytest.mark.parametrize("asked", ["when can it go in the ground?", "when can it be buried?"])
async def test_an_open_bin_is_told_with_the_days_it_will_be_buried(
    room: TalkingRoom, asked: str
) -> None:
    await room.says("1 kg of potato peelings")
    said = await answer(room, asked)
    assert "The yard bin is still open: sealed" in said
    assert "bury it" in said


async def test_a_bed_of_no_size_is_told_by_a_full_bin(room: TalkingRoom) -> None:
    said = await answer(room, "how much bed does one bin do?")
    assert said.startswith("A full bin of 20 L, about 16 kg, is enough for 9.8 m² of bed.")


@pytest.mark.parametrize(
    ("follows", "answered"),
    [
        ("what about houseplants?", "20 mL of liquid in 10 L"),
        ("and for pots? it's a 5 litre can", "10 mL of liquid in 5 L"),
        ("what about egg shells?", "With care, shells"),
    ],
)
async def test_behind_the_liquid_plants_are_what_it_is_given_to(
    room: TalkingRoom, follows: str, answered: str
) -> None:
    assert "in 10 L of water" in await answer(room, "can I pour the liquid on the tomatoes?")
    assert answered in await answer(room, follows)


@pytest.mark.parametrize("said", ["closed those two", "closed them both", "sealed both of them"])
async def test_the_two_just_spoken_of_are_meant_among_more(room: TalkingRoom, said: str) -> None:
    for name in ("green", "red"):
        await room.says(f"opened the {name} bin, 20 L")
    await room.says("2 kg of peelings in green, 2 kg in red and 2 kg in yard")
    await room.says("how full are green and red?")
    await room.says(said)
    sealed = [one.bin.name for one in await room.standing() if one.act == "seal" and one.bin]
    assert sealed == ["green", "red"]


@pytest.mark.parametrize(
    "said", ["ok move it to 10 april", "let's bury it on 10 april", "put it off until 10 april"]
)
async def test_a_burial_is_put_off_to_a_day(room: TalkingRoom, said: str) -> None:
    await room.says("3 kg of peelings into the yard bin")
    await room.says("sealed it")
    await room.waits(days=13)
    told = "I will say again Friday 10 April: bury the yard bin."
    assert told in await answer(room, said)
    assert "bury" not in await answer(room, "remind us")
    assert "Friday 10 April, put off: bury the yard bin" in await answer(room, "what's due?")


@pytest.mark.parametrize("said", ["moved it to the hall", "can we move it to 10 april?"])
async def test_what_moves_no_burial_puts_none_off(room: TalkingRoom, said: str) -> None:
    await room.says("3 kg of peelings into the yard bin")
    await room.says("sealed it")
    await room.waits(days=13)
    assert "I will say again" not in await answer(room, said)


@pytest.mark.parametrize(
    "said",
    [
        "put it in the tub with soil",
        "emptied it into the soil factory",
        "tipped the yard bin into a tub of soil",
        "mixed it with soil in a tub",
    ],
)
async def test_a_tub_of_soil_stands_for_the_ground(room: TalkingRoom, said: str) -> None:
    await room.says("3 kg of peelings into the yard bin")
    await room.says("sealed it")
    await room.waits(days=14)
    assert "The yard bin is in the soil tub. Leave it about 28 days" in await answer(room, said)
    assert [one.act for one in await room.standing()][-1] == "bury"


@pytest.mark.parametrize(
    "said", ["will put it in the tub with soil", "put some soil in the tub", "put it in the soil?"]
)
async def test_soil_alone_buries_nothing(room: TalkingRoom, said: str) -> None:
    await room.says("3 kg of peelings into the yard bin")
    await room.says("sealed it")
    await room.says(said)
    assert [one.act for one in await room.standing()][-1] == "seal"


@pytest.mark.parametrize("said", ["it's with me again", "it's back with me", "I have it again"])
async def test_a_bin_is_with_whoever_had_it_before(room: TalkingRoom, said: str) -> None:
    await room.says("Bram, will you take the yard bin?")
    await room.says("I'll take it", who="bram")
    assert await room.keeper("yard") == "bram"
    assert "Struck out" not in await answer(room, "can you take it back?")
    await room.says(said)
    assert await room.keeper("yard") == "ines"


async def test_a_bin_is_not_with_whoever_never_had_it(room: TalkingRoom) -> None:
    await room.says("it's with me again", who="zoe")
    assert await room.keeper("yard") == "ines"


@pytest.mark.parametrize(
    "said",
    [
        "group 4 put in another 300 g",
        "class 2 added 400 g",
        "group 2 has 650 g bread",
        "group 5, 900 g mixed",
        "team 1: 800 g apple cores",
    ],
)
async def test_into_which_bin_a_group_put_it_is_asked(room: TalkingRoom, said: str) -> None:
    await room.says("opened the red bin, 20 L")
    await room.says("2 kg of peelings into the red bin")
    assert (await answer(room, said)).startswith("Which bin: the yard bin or the red bin?")


@pytest.mark.parametrize("said", ["class 2 has 25 kg of books", "table 6 sent back 2 litres"])
async def test_what_else_a_class_has_is_not_asked_about(room: TalkingRoom, said: str) -> None:
    await room.says("opened the red bin, 20 L")
    assert "Which bin" not in await answer(room, said)
