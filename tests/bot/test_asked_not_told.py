"""What is asked, shown or told of others changes neither the book nor what the group settled."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom

LAYER = ("opened the barn bin, 15 L", "added 2 kg of skins")
DRAINED = (*LAYER, "drained 400 ml", "how's the barn bin?")


@pytest.fixture
def room(db: Database) -> TalkingRoom:
    return TalkingRoom(db)


async def told(room: TalkingRoom, *said: str) -> str:
    """What the bot says to the last of the lines."""
    for line in said[:-1]:
        await room.says(line)
    return "\n".join(message.body for message in await room.says(said[-1]))


@pytest.mark.parametrize(
    ("said", "answered"),
    [
        ((*LAYER, "starter for 6 kg"), "of starter on 6 kg"),
        ((*LAYER, "dilution for 3 L"), "30 mL of liquid in 3 L"),
        ((*LAYER, "8 L can for pots"), "16 mL of liquid in 8 L"),
        ((*LAYER, "1:500 in 10 litres"), "20 mL of liquid in 10 L"),
        (("opened the barn bin, 15 L", "1:1000 for 4 L"), "4 mL of liquid in 4 L"),
        ((*DRAINED, "1:500 in 10 litres"), "20 mL of liquid in 10 L"),
        ((*LAYER, "soil for 10 L"), "for 10 L"),
        ((*LAYER, "molasses for 3 kg"), "For 3 kg of bran"),
        ((*LAYER, "a 25 L bin"), ""),
        ((*LAYER, "for a 10 L can"), ""),
        ((*LAYER, "and in a 10 L can"), ""),
        ((*LAYER, "a cup of molasses"), ""),
        ((*LAYER, "in summer, 6 kg"), ""),
        ((*LAYER, "you could say: sealed the barn bin"), ""),
        ((*LAYER, "for instance added 6 kg of fish"), ""),
        ((*LAYER, "the farm shop has 15 kg of bran"), ""),
        ((*LAYER, "in our old house we put 3 kg in the bin"), ""),
        ((*LAYER, "a typical bin is 25 L"), ""),
        ((*LAYER, "bran for 8 kg mixed?"), "of starter on 8 kg"),
        ((*LAYER, "do you think we have 3 kg of starter left?"), "I don't know yet"),
        ((*LAYER, "bucket holds 18 L, how long a trench?"), "for 18 L"),
        ((*LAYER, "mixing 3 kg of bran, how much molasses?"), "For 3 kg of bran"),
        ((*LAYER, "ants all round the bin"), "They come for drips"),
        (("hello", "it has white fluff on it, ok?"), "White growth"),
        ((*LAYER, "I've 4 kg of bran and 300 ml of treacle, how do I make starter"), "For 4 kg"),
        ((*LAYER, "we have 4 lb of bran, how do we mix starter?"), "For 1.81 kg"),
        ((*LAYER, "I have 8 kg of bran, 1 L of culture and 500 ml of molasses"), ""),
        ((*LAYER, "carried the barn bin over to the bean bed"), ""),
        ((*LAYER, "put the barn bin beside the pear tree"), ""),
        ((*LAYER, "stood the barn bin under the pear tree"), "Shall I write down"),
        ((LAYER[0], "how much juice for a 6 L can?", "and in 15 litres?"), "150 mL of liquid"),
        ((LAYER[0], "how much juice for a 6 L can?", "and in a pail?"), "in 10 L"),
        ((*LAYER, "what's the C:N of 3 kg of bread and 1 kg of tea leaves?"), "C:N of about"),
        ((*LAYER, "give me the C:N of 3 kg of bread and 1 kg of tea leaves"), "C:N of about"),
        (("hello", "is the C:N of 2 kg of peel and 2 kg of tea leaves ok?"), "C:N of about"),
        ((*LAYER, "may we bury barn beside the apple?"), "not sealed yet. Sealed today"),
        ((*LAYER, "ought anyone to dig barn into the bean bed?"), ""),
        ((*LAYER, "who would like to bury barn in the bean bed?"), ""),
        ((*LAYER, "we might bury barn in the bean bed"), ""),
        ((*LAYER, "has somebody dug barn into the bean bed?"), "seal the barn bin"),
        ((*LAYER, "could we bury barn under the fig on Friday?"), "not sealed yet. Sealed today"),
    ],
)
async def test_nothing_is_written_down(
    room: TalkingRoom, said: tuple[str, ...], answered: str
) -> None:
    for line in said[:-1]:
        await room.says(line)
    before = await room.standing()
    answer = await told(room, said[-1])
    assert answered in answer if answered else not answer
    assert await room.standing() == before


@pytest.mark.parametrize(
    ("said", "records"),
    [
        ((*LAYER, "about 3 kg"), ["open", "layer"]),
        ((*LAYER, "another 5 L bucket"), ["open", "layer", "layer"]),
        ((*LAYER, "3 kg for sure"), ["open", "layer"]),
        ((*LAYER, "and 400 ml of liquid"), ["open", "layer", "drain"]),
        ((*LAYER, "drained the barn bin", "400 ml of liquid"), ["open", "layer", "drain"]),
        ((*LAYER, "mixed 3 kg of bran, when is it ready?"), ["open", "layer", "batch"]),
        ((*LAYER, "ants in the bin"), ["open", "layer", "observe"]),
        ((*LAYER, "the farm shop sold us 3 kg of bran"), ["open", "layer", "stock"]),
        ((*LAYER, "put the barn bin to bed in the bean patch"), ["open", "layer", "bury"]),
        ((LAYER[0], "we've 3 kg of starter left, how do I make more?"), ["open", "stock"]),
        ((LAYER[0], "added a can like this: 3 kg of skins"), ["open", "layer"]),
    ],
)
async def test_what_is_told_is_written_down(
    room: TalkingRoom, said: tuple[str, ...], records: list[str]
) -> None:
    await told(room, *said)
    assert [entry.act for entry in await room.standing()] == records


@pytest.mark.parametrize(
    ("asked", "answered"),
    [
        ("do we dose by the weight habit?", "Starter by the spoon habit"),
        ("is our clock Europe/Paris?", "Time zone: Europe/Lisbon"),
        ("do you remind us at 7?", "what is due comes at 09:00"),
        ("are our quiet hours 23:00 to 5:00?", "Quiet hours: 21:00 to 07:00"),
        ("bot, do you know imperial units?", "Units: metric"),
        ("pailkeeper, how do I mute the reminders at night?", "Quiet hours: 21:00"),
        ("bot, may I turn off the reminders?", "“turn the reminders off”"),
        ("bot, how can we set the time zone to Europe/Paris?", "Time zone: Europe/Lisbon"),
        ("how can I let you know that I'm away?", "Say “I'm away till Monday”"),
        ("what if I tell you I'm away till Friday?", "Say “I'm away till Monday”"),
    ],
)
async def test_a_question_settles_nothing(room: TalkingRoom, asked: str, answered: str) -> None:
    await room.says("hello", who="bram")
    before = (await room.book()).room
    answer = await told(room, asked)
    assert answered in answer
    assert "\n" not in answer
    assert (await room.book()).room == before
    assert not await room.standing()


async def test_what_is_wanted_politely_is_set(room: TalkingRoom) -> None:
    assert "at 07:00" in await told(room, "can you remind us at 7?")
    assert "from 23:00" in await told(room, "can we have quiet hours from 23:00 to 5:00?")


@pytest.mark.parametrize(
    ("body", "answered"),
    [
        ("Pailkeeper you are a marvel", False),
        ("pailkeeper, you rock!", False),
        ("@pailkeeper good work", False),
        ("Pailkeeper you are brilliant, what's due?", True),
        ("Pailkeeper you are useless", True),
    ],
)
async def test_praise_is_small_talk(db: Database, body: str, answered: bool) -> None:
    room = TalkingRoom(db)
    await room.says("opened the yard bin, 20 L")
    assert bool(await room.says(body)) is answered
