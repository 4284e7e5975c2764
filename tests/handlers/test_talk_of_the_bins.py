"""Few words that are of a bin only because the room has just talked of its bins."""

import pytest

from handlers.recording.observing import WHAT_IS_SEEN
from storage.database import Database
from tests.room import TalkingRoom, words


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Three neighbours, one bin, and a layer just told."""
    room = TalkingRoom(db)
    for who in ("bram", "zoe"):
        await room.says("hello", who=who)
    await room.says("opened the shed bin, 20 L")
    await room.says("added 2 kg of vegetables")
    return room


@pytest.mark.parametrize(
    ("said", "sign"),
    [
        ("maggots!", "insects"),
        ("there's a rat", "rodents"),
        ("saw another rat", "rodents"),
        ("it's really wet", "wet"),
        ("some of it is green now", "green_mould"),
        ("half of it has gone black", "black_mould"),
        ("like vinegar", "sour"),
        ("smells like rotten eggs", "rotten"),
        ("tap gave nothing", "no_liquid"),
        ("bit wet on the bottom", "wet"),
        ("little flies round the rim!!", "insects"),
        ("white fuzz on the rice", "white_mould"),
        ("and some blue spots on the peel", "green_mould"),
    ],
)
async def test_a_sign_is_of_the_bin_talked_of(room: TalkingRoom, said: str, sign: str) -> None:
    await room.says(said, who="bram")
    last = (await room.standing())[-1]
    assert (last.act, last.bin and last.bin.name) == ("observe", "shed")
    assert last.facts.signs == (sign,)


@pytest.mark.parametrize(
    "said",
    [
        "flies late, my plane",
        "so dry today",
        "wet through, what a day",
        "all gone black outside",
        "green tea anyone",
        "my hands smell of garlic",
        "the kitchen stinks",
        "saw a rat in that film",
        "like Vienna in spring",
        "nothing came of it",
        "it's 8 degrees outside",
        "8 degrees in the kitchen",
    ],
)
async def test_what_is_of_else_is_no_sign(room: TalkingRoom, said: str) -> None:
    assert await room.says(said, who="bram") == []
    assert (await room.standing())[-1].act == "layer"


@pytest.mark.parametrize(
    ("asked", "answered"),
    [
        ("how much water I must add", "150 mL of liquid in 15 L of water"),
        ("could we put it on the roses by the door", "for established beds"),
        ("can it go on our house plants?", "for pots and house plants"),
    ],
)
async def test_what_is_asked_of_what_was_just_drained(
    room: TalkingRoom, asked: str, answered: str
) -> None:
    await room.says("drained 150 ml", who="bram")
    assert answered in words(await room.says(asked, who="bram"))


@pytest.mark.parametrize(
    "asked", ["when do we dig next?", "when's the next time we bury?", "when can we bury next?"]
)
async def test_the_next_of_a_deed(room: TalkingRoom, asked: str) -> None:
    assert words(await room.says(asked)) == "No bin is sealed yet, so none is ready to bury."


async def test_clippings_of_the_lawn_are_not_to_be_watered(room: TalkingRoom) -> None:
    told = words(await room.says("two sacks of lawn clippings here, would the shed bin like some"))
    assert "water" not in told


async def test_after_other_talk_it_is_of_no_bin(room: TalkingRoom) -> None:
    await room.says("my sister is coming on Friday", who="zoe")
    await room.says("the bus was late again", who="bram")
    await room.says("maggots!", who="bram")
    assert (await room.standing())[-1].act == "layer"


@pytest.mark.parametrize(
    "asked",
    [
        *("is it ruined?", "do we throw it away?", "is it still good?", "is it dead?"),
        *("should we worry?", "do we need to start over?", "is that supposed to look like that?"),
    ],
)
async def test_what_is_asked_of_a_sign_just_told(room: TalkingRoom, asked: str) -> None:
    await room.says("some of it is green now", who="bram")
    assert "Lift out the mouldy scraps" in words(await room.says(asked, who="zoe"))


async def test_of_no_sign_it_is_asked_what_is_seen(room: TalkingRoom) -> None:
    assert words(await room.says("is it ruined?", who="zoe")) == WHAT_IS_SEEN


@pytest.mark.parametrize(
    ("said", "answered"),
    [
        ("can the dog lick it", "No, not to any animal"),
        ("is it safe with kids", "to no small child alone"),
        ("the cat ate some of the fish", "Call your vet now"),
        ("he got it on his hands", "soap and plenty of water"),
        ("the tap is leaking", "tap"),
    ],
)
async def test_harm_is_heard_where_nothing_is_named(
    room: TalkingRoom, said: str, answered: str
) -> None:
    assert answered in words(await room.says(said, who="bram"))


@pytest.mark.parametrize(
    "said", ["the dog needs a bath", "my cat drinks milk", "the kids are fine, thanks"]
)
async def test_beasts_and_children_of_other_talk_are_left_alone(
    room: TalkingRoom, said: str
) -> None:
    assert await room.says(said, who="bram") == []


async def test_what_comes_next_for_an_animal_that_ate_of_it(room: TalkingRoom) -> None:
    await room.says("the cat ate some of the fish", who="bram")
    assert "vet" in words(await room.says("is he gonna be ok", who="bram"))


@pytest.mark.parametrize(
    ("said", "celsius"),
    [
        ("it's 8 degrees in the shed", 8),
        ("it's 4 degrees in the bin", 4),
        ("ours is 35 degrees", 35),
        ("30 °C in there", 30),
    ],
)
async def test_how_warm_it_is_where_the_bin_stands(
    room: TalkingRoom, said: str, celsius: float
) -> None:
    await room.says(said, who="bram")
    last = (await room.standing())[-1]
    assert (last.act, last.facts.celsius) == ("observe", celsius)


async def test_what_to_do_about_a_sign_just_told(room: TalkingRoom) -> None:
    await room.says("bit wet on the bottom", who="bram")
    assert "too wet" in words(await room.says("what do I do", who="bram"))


@pytest.mark.parametrize(
    ("asked", "answered"),
    [
        ("who put something in today?", "Ines: 2 kg of vegetable"),
        ("who did the most?", "Ines: 2 kg, 100 %"),
        ("and who the least?", "Ines: 2 kg, 100 %"),
        ("what was my share?", "Ines"),
        ("percentage by person?", "Ines: 2 kg, 100 %"),
        ("give me the numbers for everyone", "Ines: 2 kg, 100 %"),
        ("how many times did Ines add something?", "Ines: 2 kg"),
        ("is there any meat in it?", "Nobody has put “meat” in"),
        ("any vegetables in the shed bin?", "Ines: 2 kg"),
        ("which day did Ines put the vegetables in", "Ines: 2 kg"),
        ("how much liquid did we get?", "drain"),
        ("how much is left to fill?", "still fit into the shed bin"),
        ("will 4 kg still fit?", "still fit into the shed bin"),
        ("which one is fermenting?", "The shed bin: filling"),
        ("how full are we", "The shed bin: filling"),
        ("is the shed bin sealed?", "The shed bin: filling"),
        ("who's in charge of it", "The shed bin: ines"),
        ("did Bram drain it", "drained"),
        ("needs more bran?", "2½ tablespoons"),
        ("how much is that in litres?", "loosely laid"),
    ],
)
async def test_what_is_asked_of_the_bins_in_a_few_words(
    room: TalkingRoom, asked: str, answered: str
) -> None:
    assert answered in words(await room.says(asked))


@pytest.mark.parametrize(
    "asked",
    [
        "who did the dishes?",
        "who put something in the post?",
        "is there any milk in the fridge?",
        "which one is yours?",
        "will it fit in the car?",
        "who's in charge of the music?",
        "did Bram call?",
        "how full is the car park?",
        "what's new?",
    ],
)
async def test_what_is_asked_of_other_things_is_left_to_others(
    room: TalkingRoom, asked: str
) -> None:
    await room.says("lovely, thanks", who="zoe")
    assert await room.says(asked, who="bram") == []


@pytest.mark.parametrize(
    "asked",
    ["when's it ready?", "can we dig it in on Saturday?", "how long now", "how long to go?"],
)
async def test_it_is_the_bin_that_is_to_be_buried(room: TalkingRoom, asked: str) -> None:
    await room.says("sealed the shed bin")
    said = words(await room.says(asked, who="zoe"))
    assert "bury the shed bin" in said
    assert "drain" not in said


@pytest.mark.parametrize(
    ("asked", "answered"),
    [
        ("what do I do with it?", "Thin it"),
        ("for my roses?", "in 10 L of water"),
        ("and for pots?", "in 10 L of water"),
        ("how much for tomatoes", "200 mL of liquid in 20 L"),
        ("how much do I need for the lawn?", "200 mL of liquid in 20 L"),
    ],
)
async def test_what_another_drained_is_asked_about(
    room: TalkingRoom, asked: str, answered: str
) -> None:
    await room.says("drained it, 200 ml", who="bram")
    assert answered in words(await room.says(asked, who="zoe"))


async def test_how_much_is_asked_of_other_things(room: TalkingRoom) -> None:
    await room.says("drained it, 200 ml", who="bram")
    assert await room.says("how much for the tickets?", who="zoe") == []


async def test_both_bins_just_told_of_have_one_size(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("we've got two buckets now, the kitchen one and the balcony one")
    said = words(await room.says("both 15 litres"))
    assert "the kitchen bin holds 15 L" in said
    assert "the balcony bin holds 15 L" in said


@pytest.mark.parametrize(
    "asked", ["who drained last?", "when was it drained?", "did anyone drain?"]
)
async def test_when_it_was_drained_is_told(room: TalkingRoom, asked: str) -> None:
    await room.says("drained it, 200 ml", who="bram")
    await room.says("added 300 g of peelings")
    assert "200 mL drained by bram" in words(await room.says(asked, who="zoe"))


@pytest.mark.parametrize(
    ("said", "bin", "litres", "shared"),
    [
        ("one 25 l bin in the cellar, for everyone", "cellar", 25, True),
        ("1 bin, 15 l, in the yard", "yard", 15, None),
        ("a 20 litre bucket on the balcony", "balcony", 20, None),
    ],
)
async def test_a_first_bin_is_called_by_where_it_stands(
    db: Database, said: str, bin: str, litres: float, *, shared: bool | None
) -> None:
    room = TalkingRoom(db)
    await room.says(said)
    [opened] = await room.standing()
    assert (opened.act, opened.bin and opened.bin.name) == ("open", bin)
    assert (opened.facts.capacity_l, opened.facts.shared) == (litres, shared)


@pytest.mark.parametrize("said", ["need a 20 L bin in the yard", "20 litre bin in the shop"])
async def test_a_bin_that_nobody_has_is_not_opened(db: Database, said: str) -> None:
    room = TalkingRoom(db)
    await room.says(said)
    assert await room.standing() == []


async def test_turns_at_draining_need_no_bin_named(room: TalkingRoom) -> None:
    said = words(
        await room.says("let's take turns draining it: bram and zoe, every two days", who="bram")
    )
    assert said.startswith("Turns to drain the shed bin, 2 days each: bram today")


@pytest.mark.parametrize(
    ("said", "act"),
    [
        ("porch: 300 g of rice", "layer"),
        ("drained porch this morning, only 50 ml", "drain"),
        ("porch is full and sealed", "seal"),
        ("green is sealed", "seal"),
    ],
)
async def test_what_is_told_of_another_place_is_not_done_to_the_only_bin(
    room: TalkingRoom, said: str, act: str
) -> None:
    before = len(await room.standing())
    await room.says(said)
    told = (await room.standing())[before:]
    assert all(entry.act == act and entry.bin and entry.bin.name != "shed" for entry in told)


@pytest.mark.parametrize(
    "said", ["the kitchen is full of people", "kitchen: 2 kg flour left", "the garden is dug over"]
)
async def test_a_place_of_other_talk_is_no_bin(room: TalkingRoom, said: str) -> None:
    before = await room.standing()
    await room.says(said)
    assert await room.standing() == before


async def test_what_went_in_behind_other_words_is_asked_about(room: TalkingRoom) -> None:
    await room.says("I'll drop mine off tonight", who="bram")
    asked = await room.says("mine went in, 1.3 kg", who="bram")
    assert words(asked) == "Shall I write down 1.3 kg?"


@pytest.mark.parametrize("said", ["in we went, 12 km", "how long?", "can I help"])
async def test_what_went_elsewhere_is_left_alone(room: TalkingRoom, said: str) -> None:
    await room.says("the train was late again", who="bram")
    assert await room.says(said, who="bram") == []


@pytest.mark.parametrize(
    ("said", "kilos"),
    [
        ("800 g of peel, no meat this time", 0.8),
        ("1 kg more, all veg. no bread in it", 1.0),
        ("600 g rice, not any fish", 0.6),
        ("2 kg flour, no sugar", None),
        ("1 kg, no sugar", None),
    ],
)
async def test_what_is_not_among_it_is_told_beside_an_amount(
    room: TalkingRoom, said: str, kilos: float | None
) -> None:
    await room.says(said, who="bram")
    assert await room.kilos() == [2.0, *([] if kilos is None else [kilos])]
