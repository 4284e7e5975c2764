"""In a busy room: what answers a neighbour's question is not taken for the book's."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
async def room(db: Database) -> TalkingRoom:
    """Ines and Bram, Cleo and Dov; Ines has put bread into the shed bin."""
    room = TalkingRoom(db)
    for who in ("bram", "cleo", "dov"):
        await room.says("hello", who=who)
    await room.says("opened the shed bin, 20 L")
    await room.says("opened the kitchen bin, 12 L")
    await room.says("1 kg of bread in the shed bin", event="$bread")
    return room


async def told(room: TalkingRoom) -> list[tuple[str, float | None, str | None, str]]:
    return [
        (e.bin.name, e.facts.mass_kg, e.member, e.on.isoformat())
        for e in await room.standing()
        if e.act == "layer" and e.bin and e.on
    ]


BREAD = ("shed", 1.0, "ines", "2026-03-02")


@pytest.mark.parametrize(
    ("asked", "answered"),
    [
        ("who fixed the gate?", "that was Dov"),
        ("whos got the key to the hall", "it was Cleo"),
        ("how heavy is your dog now?", "it was 3 kg"),
        ("where did you find the cat?", "it was in the kitchen"),
        ("when was your wedding?", "it was last friday"),
        ("you out sunday Ines?", "sorry I meant to say sunday is no good"),
        ("did you ring the plumber?", "done"),
        ("when is the quiz?", "tomorrow"),
        ("what's for tea", "it was toast yesterday"),
    ],
)
async def test_a_neighbours_question_is_what_is_answered(
    room: TalkingRoom, asked: str, answered: str
) -> None:
    before = await room.standing()
    assert await room.says(asked, who="bram") == []
    assert await room.says(answered) == []
    assert await room.standing() == before


async def test_it_is_so_behind_another_word_and_a_restart(room: TalkingRoom, db: Database) -> None:
    await room.says("who fixed the gate?", who="bram")
    room = room.restarted(db)
    await room.says("looks grand", who="cleo")
    await room.says("that was Dov")
    assert await told(room) == [BREAD]


@pytest.mark.parametrize(
    ("asked", "answered", "kg"),
    [
        ("was that all of a kilo?", "it was 2 kg", 2),
        ("how much was that, Ines?", "it was 2 kg", 2),
        ("did you see the goal?", "the bread was 2 kg", 2),
        ("did you see the goal?", "2 kg, not 1 kg", 2),
        ("did you see the goal?", "bot, it was 2 kg", 2),
        ("anyone got more scraps?", "no, 2 kg", 2),
        ("lovely evening", "no, 2 kg", 2),
    ],
)
async def test_what_names_the_record_puts_it_right(
    room: TalkingRoom, asked: str, answered: str, kg: float
) -> None:
    await room.says(asked, who="bram")
    await room.says(answered)
    assert [layer[1] for layer in await told(room)] == [kg]


async def test_what_may_be_for_the_book_is_asked_about(room: TalkingRoom) -> None:
    await room.says("did you see the goal?", who="bram")
    [said] = await room.says("sorry, 2 kg")
    assert said.body == "Your last record is 1 kg in the shed bin. Shall I correct it to 2 kg?"
    await room.says("yes")
    assert [layer[1] for layer in await told(room)] == [2]
    await room.says("did you see the other goal?", who="bram")
    [said] = await room.says("scratch that")
    assert said.body == "Your last record is 2 kg in the shed bin. Shall I strike it out?"
    await room.says("yes")
    assert await told(room) == []


async def test_a_reply_to_the_record_is_of_it(room: TalkingRoom) -> None:
    await room.says("who fixed the gate?", who="bram")
    await room.says("that was Dov", replies_to="$bread")
    assert [layer[2] for layer in await told(room)] == ["dov"]


async def test_a_yes_answers_whoever_asked_last(room: TalkingRoom) -> None:
    await room.says("scratch that", who="bram")
    await room.says("coming to the pub Bram?", who="cleo")
    await room.says("yes", who="bram")
    assert await told(room) == [BREAD]
    await room.says("yes", who="bram")
    assert await told(room) == []


async def test_a_colour_may_be_a_bin(room: TalkingRoom) -> None:
    await room.says("2 kg of peelings", who="bram")
    await room.says("which room are you painting?", who="cleo")
    [said] = await room.says("kitchen", who="bram")
    assert said.body == "Did you mean the kitchen bin?"
    assert len(await told(room)) == 1
    await room.says("yes", who="bram")
    assert ("kitchen", 2.0, "bram", "2026-03-02") in await told(room)


@pytest.mark.parametrize(
    ("said", "what"),
    [
        ("sorry, that was yesterday", "correct it to yesterday"),
        ("oops, kitchen", "correct it to the kitchen bin"),
        ("oops, that was Dov", "put it down to dov"),
    ],
)
async def test_a_slip_of_ones_own_is_asked_about(room: TalkingRoom, said: str, what: str) -> None:
    await room.says("anyone seen my cat?", who="bram")
    [answer] = await room.says(said)
    assert answer.body.endswith(f"Shall I {what}?")
    assert await told(room) == [BREAD]


async def test_done_is_of_the_reminder_that_came_since(room: TalkingRoom) -> None:
    await room.waits(days=2, hours=14, minutes=49)
    await room.says("did you ring the plumber?", who="bram")
    await room.says("not yet", who="cleo")
    reminded = await room.waits(minutes=8)
    assert [said.kind for said in reminded] == ["digest"]
    await room.says("done")
    assert (await room.standing())[-1].act == "drain"


@pytest.mark.parametrize("said", ["yes", "I'll take it", "not me"])
async def test_what_is_on_offer_waits_until_it_is_named(room: TalkingRoom, said: str) -> None:
    await room.says("Bram is having the shed bin from friday")
    await room.says("who wants a puppy?", who="cleo")
    answer = [one.body for one in await room.says(said, who="bram")]
    asked = "If you mean the shed bin, say “I'll take the shed bin” or “I can't take the shed bin”."
    assert answer == ([] if said == "yes" else [asked])
    assert {e.act for e in await room.standing()} == {"open", "layer", "offer"}
    await room.says("I'll take the shed bin", who="bram")
    assert (await room.standing())[-1].act == "accept"


@pytest.mark.parametrize(
    "other",
    ["I bought 5 bags of flour today", "does anyone have 2 kg of flour?"],
)
@pytest.mark.parametrize(
    "behind", ["no, 3", "scratch that, 6", "and 2 kg of potatoes", "another 2 kg", "it was friday"]
)
async def test_a_few_words_are_of_ones_own_last_talk(
    room: TalkingRoom, other: str, behind: str
) -> None:
    assert await room.says(other) == []
    assert await room.says(behind) == []
    assert await told(room) == [BREAD]


@pytest.mark.parametrize(
    ("before", "behind", "much"),
    [
        (["I bought 5 bags of flour today"], "no, the bread was 3 kg", [3.0]),
        (["I bought 5 bags of flour today"], "no wait, kitchen", [1.0]),
        (["I bought 5 bags of flour today"], "and 2 kg of potatoes in the kitchen bin", [1.0, 2.0]),
        (["I bought 5 bags of flour today"], "bot, it was 3 kg", [3.0]),
        (["I bought 5 bags of flour today", "2 kg of rice in the shed bin"], "no, 3", [1.0, 3.0]),
        (["thanks all"], "another 2 kg", [1.0, 2.0]),
    ],
)
async def test_what_names_the_record_is_of_it_behind_any_talk(
    room: TalkingRoom, before: list[str], behind: str, much: list[float]
) -> None:
    for said in before:
        await room.says(said)
    await room.says(behind)
    assert [layer[1] for layer in await told(room)] == much


@pytest.mark.parametrize(
    "asked",
    [
        *("what do I owe you?", "what are you reading?", "is there a list for who brings what?"),
        *("when?", "count me in. When?", "when do they come?", "is it ready?"),
        *("and lemon?", "flour?", "with eggs?", "hm, and sand?", "and compost?"),
        *("do you soak the lentils?", "are those beans?", "does garlic keep slugs off?"),
        *("are they good?", "is that bad?", "is it bad if it's soft?"),
        *("how heavy is it?", "how much does she weigh now?", "what did you put in?"),
        "they're full of garlic, nothing can live in there",
        "soup. or throw it away if it's too salty",
    ],
)
async def test_a_question_of_other_things_amid_talk_is_not_ours(
    room: TalkingRoom, asked: str
) -> None:
    await room.says("we are at the fair on Friday", who="bram")
    assert await room.says(asked, who="cleo") == []


@pytest.mark.parametrize(
    "asked",
    [
        *("bot, when?", "bot, and lemon?", "what's due?", "when is the shed ready?"),
        *("can lemons go in?", "lamb bones?", "are eggs allowed?", "what about egg shells?"),
        *("how full is it?", "how many kilos so far?", "how does this work?", "help"),
        *("there is white fluff on top, is that bad?", "whose turn is it?"),
    ],
)
async def test_a_question_of_the_bins_is_ours_whoever_spoke(room: TalkingRoom, asked: str) -> None:
    await room.says("we are at the fair on Friday", who="bram")
    assert len(await room.says(asked, who="cleo")) == 1


@pytest.mark.parametrize("asked", ["and lemon?", "when?", "is it ready?"])
async def test_a_few_words_behind_our_answer_or_in_a_quiet_room_are_ours(
    room: TalkingRoom, asked: str
) -> None:
    await room.says("can bones go in?", who="bram")
    assert len(await room.says(asked, who="cleo")) == 1
    await room.says("we are at the fair on Friday", who="bram")
    await room.waits(hours=2)
    assert len(await room.says(asked, who="cleo")) == 1


@pytest.mark.parametrize("asked", ["is rice ok?", "are eggs allowed?", "can I put rice in too?"])
async def test_a_whole_question_behind_anothers_record_is_ours(
    room: TalkingRoom, asked: str
) -> None:
    await room.says("put 500 g of peel in the shed bin", who="bram")
    assert len(await room.says(asked, who="cleo")) == 1


@pytest.mark.parametrize("asked", ["and lemon?", "flour?"])
async def test_a_food_behind_anothers_record_asks_nothing(room: TalkingRoom, asked: str) -> None:
    assert len(await room.says("put 500 g of peel in the shed bin", who="bram")) == 1
    assert await room.says(asked, who="cleo") == []


@pytest.mark.parametrize(
    ("said", "kept"),
    [
        ("2 bowls of rice and the fish skins", False),
        ("500 g of pasta in the shed bin", True),
        ("put 500 g of pasta in", True),
    ],
)
async def test_food_told_to_a_neighbour_is_asked_about(
    room: TalkingRoom, said: str, kept: bool
) -> None:
    await room.says("what did the dog get?", who="bram")
    before = len(await told(room))
    assert len(await room.says(said)) == 1
    assert len(await told(room)) == before + kept
    if not kept:
        await room.says("yes")
        assert len(await told(room)) == before + 1


async def talked(room: TalkingRoom, lines: list[str]) -> list[str]:
    """The room is told each line ("name: words"), and what the bot said to the last of them."""
    said: list[str] = []
    for line in lines:
        who, _, body = line.partition(": ")
        said = [one.body for one in await room.says(body, who=who)]
    return said


@pytest.mark.parametrize(
    "lines",
    [
        ["cleo: she weighed 4 kg at birth", "ines: mine was 3.8"],
        ["bram: we had 2 kg of prawns", "ines: dinner was 2 kg haha"],
        ["ines: dinner was 2 kg haha"],
        ["bram: how many rolls, Ines?", "ines: 12", "bram: and milk?", "ines: 2 litres"],
        ["bram: how many rolls, Ines?", "ines: 2 litres", "ines: no, 3 litres"],
        ["bram: and milk?", "ines: 500 g"],
        ["bram: is it you who wanted muck?", "ines: yes, 2 bags"],
        ["bram: I need sugar for the jam", "ines: I've got 2 kg", "ines: 1.5 kg actually"],
        ["bram: bring back 8 rolls", "ines: and a pint of milk"],
        ["bram: bring back 8 rolls", "ines: 2 kg of flour as well"],
        ["ines: I've a photo of the pumpkin", "ines: scratch that"],
        ["bram: how big is the pool?", "ines: 50 litres"],
        ["bram: it's so hot out there", "ines: it was 22 degrees yesterday"],
        ["bram: grandma died", "ines: sorry to hear that, she was such a dear"],
        ["ines: I'd go less. 600 g per kilo"],
        ["bram: I was 82 on Sunday", "ines: I was 90 on Sunday, 91 today"],
    ],
)
async def test_few_words_go_on_from_the_talk_that_was_last(
    room: TalkingRoom, lines: list[str]
) -> None:
    await talked(room, lines)
    assert await told(room) == [BREAD]


@pytest.mark.parametrize(
    "words",
    ["mine was 3 kg", "and some bananas", "2 kg", "it's 2 kg I think, the parcel", "scratch that"],
)
async def test_a_bare_word_reaches_over_no_night(room: TalkingRoom, words: str) -> None:
    await room.waits(days=1)
    await talked(room, ["bram: our cat is asleep on the mat", f"ines: {words}"])
    assert await told(room) == [BREAD]


@pytest.mark.parametrize(
    ("lines", "kg"),
    [
        (["bram: lovely", "ines: no, 1.5 kg"], [1.5]),
        (["bram: morning all", "cleo: what a day", "ines: make it 2 kg"], [2]),
        (["bram: I'm off to the shops", "ines: another 2 kg"], [1, 2]),
        (["bram: I'm off to the shops", "ines: scratch that, 4 kg to the kitchen"], [4]),
        (["bram: I'm off to the shops", "ines: undo"], []),
        (["ines: thanks", "ines: it was 2 kg"], [2]),
        (["ines: off to town", "ines: the bread was 2 kg"], [2]),
        (["bram: I've 3 kg of sugar", "ines: bot, it was 2 kg"], [2]),
    ],
)
async def test_what_is_for_the_book_by_its_own_words_is_kept(
    room: TalkingRoom, lines: list[str], kg: list[float]
) -> None:
    await talked(room, lines)
    assert [layer[1] for layer in await told(room)] == kg


@pytest.mark.parametrize(
    ("lines", "asked"),
    [
        (["ines: I'm off to town", "ines: no, 2 kg"], "Shall I correct it to 2 kg?"),
        (["bram: I'm off to town", "ines: it was 2 kg"], "Shall I correct it to 2 kg?"),
        (["ines: I'm off to town", "ines: that was yesterday"], "Shall I correct it to yesterday?"),
        (["ines: I'm off to town", "ines: undo"], "Shall I strike it out?"),
        (["bram: I've 3 kg of sugar", "ines: no, 2 kg"], "Shall I correct it to 2 kg?"),
    ],
)
async def test_behind_other_talk_the_doubtful_is_asked(
    room: TalkingRoom, lines: list[str], asked: str
) -> None:
    [said] = await talked(room, lines)
    assert said.endswith(asked)
    assert await told(room) == [BREAD]


@pytest.mark.parametrize("between", [[], ["bram: lovely evening", "cleo: isn't it"]])
async def test_a_question_of_ours_waits_while_others_talk(
    room: TalkingRoom, between: list[str]
) -> None:
    await talked(room, ["bram: hi", "bram: scratch that", *between, "bram: yes"])
    assert await told(room) == []


async def test_a_question_of_ours_is_not_answered_behind_ones_own_talk(room: TalkingRoom) -> None:
    lines = ["bram: scratch that", "bram: can I have the key tonight?", "cleo: at 8", "bram: ok"]
    assert await talked(room, lines) == []
    assert await told(room) == [BREAD]
