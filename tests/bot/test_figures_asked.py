"""The figures that are told to a question in a room, each against one from outside."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


@pytest.fixture
def room(db: Database) -> TalkingRoom:
    return TalkingRoom(db)


async def told(room: TalkingRoom, *said: str) -> str:
    """What the bot says to the last of the lines."""
    answer = ""
    for line in said:
        answer = "\n".join(message.body for message in await room.says(line))
    return answer


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        # 30 mL on the floor of 5 US gal (18.9 L), and the floor by (30/18.9)^(2/3): 40.8 mL;
        # USDA SR28 20077: wheat bran 58 g to a cup of 236.6 mL, so 10 g
        ("how much bran on the bottom of a 30 L bin?", "2½ tablespoons (about 10 g)"),
        # the habit that is taught: 2.5 level spoons on 6.25 cm, so 2 on 5 cm
        ("how much bran for a layer 5 cm deep?", "2 tablespoons (about 7 g)"),
        # and twice that where all of it is fish
        ("how much bran for a layer of fish 5 cm deep?", "4 tablespoons (about 15 g)"),
        # 2 kg of fish at 0.575 kg/L (USDA SR28 15077: 136 g to a cup), twice 9.1 mL to each litre
        ("how many cups of bran for 2 kg of cod?", "¼ cup (about 15 g)"),
        ("how much bran for 50 cm of leeks?", "say one layer at a time"),
    ],
)
async def test_how_much_starter(room: TalkingRoom, said: str, wanted: str) -> None:
    assert wanted in await told(room, said)


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        # USDA SR28: a kilo of bran is 17.24 cups of 58 g, and so takes 1.724 spoons of 14.79 mL
        ("I've only got 200 ml of molasses, how much bran can I use?", "enough for 7.8 kg of bran"),
        # and a tenth of its weight, of 1.424 kg/L, is 70.2 mL
        ("how much bran for 200 ml of molasses?", "there is enough for 2.8 kg"),
        ("how much starter can I make with 300 ml of molasses?", "enough for 12 kg of bran"),
        ("I've 100 ml of culture, how much bran will that do for?", "enough for 3.9 kg of bran"),
        (
            "I have 3 kg of bran and 200 ml molasses, what can I make",
            "200 mL of molasses is enough by the first, 11 mL short by the other",
        ),
        ("how much does a cup of bran weigh?", "1 cup (about 61 g)"),  # of 250 mL
        ("how many tablespoons is 50 g of bran?", "14 tablespoons (about 50 g) of bran, 204 mL"),
        ("how many grams is 4 tablespoons of bran?", "(about 15 g)"),
        ("how do I make starter?", "wear a mask and gloves"),
    ],
)
async def test_bran_by_its_amount(room: TalkingRoom, said: str, wanted: str) -> None:
    assert wanted in await told(room, said)


async def test_the_starter_that_was_used_and_how_long_it_lasts(room: TalkingRoom) -> None:
    assert "none in the last 4 weeks" in await told(room, "how much starter did we use?")
    await told(room, "opened the hall bin, 60 L")
    for _ in range(3):
        await told(room, "added 6 kg leeks to hall")
        await room.waits(days=6)
    used = await told(room, "how much starter did we use?")
    # each 6 kg: 13.3 L loose (0.45 kg/L), 2.5 spoons of 15 mL to 4.13 L, 0.245 g/mL: 29.7 g
    assert used.startswith("About 89 g of starter since Monday 2 March")
    assert used.endswith("by the doses on 3 layers.")
    # 19 days of it: 4.7 g a day
    assert "about 213 days" in await told(room, "how long will 1 kg of bran last?")


@pytest.mark.parametrize("said", ["how much starter will that be?", "how much starter is that?"])
async def test_what_a_batch_comes_to(room: TalkingRoom, said: str) -> None:
    # 3 kg at 9.89 % water (USDA SR28 20077) hold 2.7 kg dry, with the molasses 2.79: at 10 % 3.1 kg
    answer = await told(room, "mixed 3 kg of bran with 80 ml molasses", said)
    assert answer == "Dried, about 3.1 kg of starter."


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        # NRAES-54 Table A.1: food waste, 69 % water and C:N 14 to 16
        ("how much cardboard for 10 kg of scraps on the heap?", "C:N of about 15 to 1"),
        # 0.7 % N on mixed scraps as they are (NRAES-54: 1.9 to 2.9 % of the dry 31 %)
        ("how much nitrogen is in 10 kg of scraps?", "70 g of nitrogen in 10 kg"),
        # Cornell, Getting the Right Mix: G = sum(Q x M) / sum(Q); grain 56 %, vegetables 91 %
        ("what's the moisture of 3 kg rice and 1 kg peel?", "about 65 % water"),
        # at most 100 mL from each kilo, as suppliers say
        ("how much liquid will 5 kg of melon give?", "from none to 500 mL is normal"),
    ],
)
@pytest.mark.parametrize("before", [[], ["opened the hall bin, 20 L", "added 1 kg cod to hall"]])
async def test_scraps_are_asked_of_whatever_the_bins_hold(
    room: TalkingRoom, said: str, wanted: str, before: list[str]
) -> None:
    assert wanted in await told(room, *before, said)


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        # Footer, Bokashi Composting, 2013, ch. 8: 100 parts of water to one of liquid
        (
            "a cup to a bucket, is that ok?",
            "250 mL of liquid in 10 L of water",
        ),
        (
            "is a mug in a 10 litre can too strong?",
            "1:100 takes 100 mL, about 6½ tablespoons",
        ),
        ("a cup of juice in a bucket of water, is that ok?", "Or add 15 L of water"),
        ("I mixed 1 l of juice with 10 l of water, how much more water?", "Or add 90 L of water"),
        # the two readings of 1:100 (Footer: to 100 of water), so 7 L / 101
        ("what's 1:100 for 7 litres in total?", "69 mL of liquid in 6.93 L of water"),
        ("how much water for a yoghurt pot of juice?", "450 mL of liquid in 45 L of water"),
        ("how much water for a 200 ml pot of liquid?", "200 mL of liquid in 20 L of water"),
        ("how much juice for a lemon tree in a tub?", "1 part liquid to 500"),
        ("how much water for tomatoes in pots?", "1 part liquid to 500"),
        ("how much juice for peppers in grow bags?", "1 part liquid to 500"),
        ("how much juice in a big container of water?", "1 part liquid to 100"),
        ("how much water for my beans in a big container", "1 part liquid to 500"),
        ("how much water for half a cup?", "125 mL of liquid in 12.5 L of water"),
    ],
)
async def test_how_the_liquid_is_thinned(room: TalkingRoom, said: str, wanted: str) -> None:
    answer = await told(room, said)
    assert wanted in answer
    assert "Nothing so far" not in answer


async def test_what_answers_a_question_of_ours_is_no_record(room: TalkingRoom) -> None:
    await told(room, "opened the hall bin, 20 L")
    asked = await told(room, "2 kg peel and 500 g fish, how much bran?")
    again = await told(room, "how much bran do I need?", "2 kg peel and 500 g of fish")
    assert again == asked
    await told(room, "how much bran do I need?")
    apart = await told(room, "2 kg rice and 3 L of leeks")
    assert "on 2 kg" in apart
    assert "on 3 L" in apart
    assert [entry.act for entry in await room.standing()] == ["open"]


async def test_the_question_and_the_record_come_to_the_same(room: TalkingRoom) -> None:
    asked = await told(room, "2 kg peel and 500 g fish, how much bran?")
    record = await told(room, "opened the hall bin, 20 L", "added 2 kg peel and 500 g fish to hall")
    assert asked.split(" of starter")[0] == record.split(" of starter")[0]
    assert "a fifth more" in asked  # a fifth of it is fish, which alone would take twice as much
