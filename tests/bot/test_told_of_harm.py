"""What could hurt is heard in the words that newcomers use, and answered before any recipe."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom

OPEN = "opened the barn bin, 15 L"
NO_FEED = "No, not to any animal"
POISON = "Call your poison line or a doctor now"
VET = "Call your vet now"
WOUND = "Wash the cut well"
LEAVE_IT = "Leave open bins, mould and dusty bran to others"
STALE = "Older than two days"
BAD_BRAN = "throw it out, damp, without sniffing it"


@pytest.mark.parametrize(
    ("said", "begins"),
    [
        ("can we give it to our chickens?", NO_FEED),
        ("could I offer the leftovers to the ducks?", NO_FEED),
        ("may the pigs eat the fermented peelings?", NO_FEED),
        ("my mother has a bad heart, may she lift it?", "Better not: leave lifting"),
        ("our toddler put her hand in and licked it", "Rinse or wipe out the mouth"),
        ("the baby chewed on the lid", "Rinse or wipe out the mouth"),
        ("the dog dug up the trench and ate it all", "Take it away"),
        ("the cat is vomiting after eating from the bin", "Take it away"),
        ("I have a bit of glass in my finger from the bin", WOUND),
        ("it went into a cut, is that bad?", WOUND),
        ("I have a cut on my thumb, may I drain it?", "Yes, wear gloves"),
        ("I'm expecting, may I still help?", LEAVE_IT),
        ("my sister is on chemo, can she do this?", LEAVE_IT),
        ("bot, I have asthma", LEAVE_IT),
        ("how strong for an orchid?", "20 mL of liquid in 10 L"),
        ("what dilution for roses in a planter?", "20 mL of liquid in 10 L"),
        ("how strong for freshly sown beans?", "10 mL of liquid in 10 L"),
        ("how much liquid for a 5 L sprayer?", "Better on the soil"),
        ("may I use the juice after two weeks?", "Use it the same day"),
        ("it stinks, may I still give it to the plants?", "Use it the same day"),
        ("the bran turned black", "Musty, rotten"),
        ("our bran has gone mouldy, what now?", "Musty, rotten"),
        ("tomato with blight?", "No, sick plants"),
        ("may I close the cap on the bottle?", "Use it the same day"),
        ("can I ferment it in a glass jar?", "Plastic with a tight lid"),
        ("the lid popped up", "It is mostly carbon dioxide"),
        ("must I burp it?", "It is mostly carbon dioxide"),
        ("do I need to ring somebody before digging?", "Yes, where you dig deep"),
        ("how can I carry 18 kg?", "A full bin can weigh"),
        ("there are droppings beside the barn bin", "The barn bin: Most likely animals"),
        ("could it give me weil's disease from this?", "Treat it as raw waste"),
        ("may I pour it down the storm drain?", "Not into ponds"),
        ("we are a school garden, do we need a licence?", "At home mostly yes"),
        ("can the restaurant bring us its scraps?", "At home mostly yes"),
        ("what are the rules on meat in Wales?", "At home mostly yes"),
    ],
)
async def test_the_caution_comes_first(db: Database, said: str, begins: str) -> None:
    room = TalkingRoom(db)
    await room.says("hello", who="bram")
    await room.says(OPEN)
    answered = "\n".join(message.body for message in await room.says(said))
    assert answered.startswith(begins)


@pytest.mark.parametrize(
    "said",
    [
        "the hens lay well, who wants eggs?",
        "Bram is expecting a parcel, can he collect it?",
        "my heart sank when I saw it",
        "I have asthma",
        "the dog has hurt its paw",
        "white fluff on the bran",
    ],
)
async def test_other_talk_is_left_alone(db: Database, said: str) -> None:
    room = TalkingRoom(db)
    await room.says(OPEN)
    await room.says("hello", who="bram")
    await room.says("how are you all", who="bram")
    answered = "\n".join(message.body for message in await room.says(said, who="bram"))
    warnings = (NO_FEED, POISON, VET, WOUND, LEAVE_IT, STALE, BAD_BRAN)
    assert not any(words in answered for words in warnings)


async def test_what_is_asked_further_of_beasts(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says(OPEN)
    await room.says("can I give it to my chickens?")
    assert NO_FEED in (await room.says("and to the goats?"))[-1].body
