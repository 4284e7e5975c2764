"""Talk in the craft's words that tells nothing, and its near twins that do."""

import pytest

from handlers.reading.acts import Ask, Drain, Layer, Offer
from tests.reading.context import acts

_BINS = ("shed", "kitchen", "bin 3", "Hank", "Doris", "Aunt Be", "gård")
_MEMBERS = ("ines", "tom", "ruth")


def _kinds(text: str) -> list[str]:
    told = acts(text, bins=_BINS, members=_MEMBERS)
    return sorted(f"ask {act.topic}" if isinstance(act, Ask) else act.act for act in told)


@pytest.mark.parametrize(
    "text",
    [
        "Pipes burst so drained the whole house, 20 litres, into the shed sink",
        "drained down the caravan for winter, about 40 litres",
        "took three buckets of tennis balls out of the shed",
        "2 buckets of rubble out of the kitchen",
        "the bed where we buried bin 3 last spring is full of beans",
        "The place where we emptied bin 3 two years ago still sinks",
        "buried our cat this morning under the apple tree",
        "I buried the cat yesterday. Under the shed window",
        "we buried the old dog on Sunday. By the shed",
        "a fox opened the street bin last night and ate 2 kg of chicken",
        "monkeys opened our wheelie bin again",
        "they opened the new gym and there is a bucket for tips",
        "the starter was prawn cocktail, 1 kg of prawns",
        "made flapjacks, 1 lb oats, sealed in a tin",
        "our dog Hank ate 2 kg of cheese",
        "my friend Hank weighs 80 kg now",
        "my baby niece weighs nine pounds and drinks a cup at a time",
        "Something reeks in the shed and it isn't the bin, promise",
        "midges ate us alive at the shed",
        "Doris opened a bottle of prosecco and it hit the ceiling",
        "Hank has a sour face today",
        "my urine smells of asparagus, Hank",
        "Venison in the freezer in the shed, 20 kg",
        "shot a nice buck, 140 lb, liver in the fridge in the kitchen",
        "haven't drained anything yet, I was at work",
        "the kitchen is all yours, Ines, I've done the washing up",
        "tally ho everyone",
        "piano lid is swollen",
        "the shed's full of junk, tins with lids on tight",
        "we put 2 kg of cake away between us at Doris's",
        "the shed is shut for resurfacing",
        "kitchen's closed, pizza tonight",
        "a jar of pickles exploded in the kitchen, smells like death",
        "caught 3 kg of mackerel off the shed",
        "the shed is rotten, two planks went through",
        "Hank is off to college on Monday, who wants his bike",
        "the spare room is free from Saturday if anyone needs it",
        "a tray of prawns for the barbie, 4 kg, in the shed",
        "dug a trench for the broadband cable, 40 cm deep",
        "what do you feed a hedgehog",
        "Hank drained a 30 footer on the last hole",
        "gave Hank his worming tablet, 3 kg now the wee fella",
        "new coffee machine in the kitchen, 12 cups at a time",
        "you take it, I've had two slices",
        "Doris struck out 9 at the field by the shed",
        "dumped 200 on a new bin for the recycling",
        "smells like snow",
        "whose dog is loose by the shed",
        "whose turn for the crossing patrol",
        "fed 40 people at the shed on 6 kg of rice",
        "cooked down 4 kg of tomatoes in the kitchen",
        "scattered 2 kg of grass seed by the shed",
        "donated 10 kg of tins to the shed food bank",
        "took 2 litres of blackberries off the hedge by the shed",
        "the cat's been sick in the kitchen, smells vile",
        "vinegar to clean the kitchen tap, half a litre",
        "pass, I'm allergic to cats",
        "done! the wall is painted",
        "already done the recycling",
        "remind me in a week about the MOT",
        "give me till Friday on the essay",
        "cancel that, match is off",
        "kitchen staples: 1 kg rice, 500 g lentils, 2 tins tomatoes",
        "I meant Tuesday not Monday for the dentist",
    ],
)
def test_talk_in_the_same_words_tells_nothing(text: str) -> None:
    assert _kinds(text) == []


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("drained the house bin, 300 ml", ["drain"]),
        ("took 2 buckets of drippings out of the shed", ["drain"]),
        ("buried bin 3 where the beans were last year", ["bury"]),
        ("dug in the kitchen bin under the apple tree, cat watching", ["bury"]),
        ("opened a new bin called Max, the fox got into the old one", ["open"]),
        ("sealed bin 3 and put the biscuit tin on top", ["seal"]),
        ("made 3 kg of starter tonight, molasses and all", ["batch"]),
        ("my mate Hank added 2 kg of peel to Doris", ["layer"]),
        ("Hank smells sour", ["observe"]),
        ("ants in the shed bin", ["observe"]),
        ("3 kg of mouldy veg from the fridge into Doris", ["layer"]),
        ("drew nothing off the shed", ["observe"]),
        ("drained Doris, 200 ml, but drew nothing off the shed", ["drain", "observe"]),
        ("bin 3 is full to the brim, lid on tight", ["seal"]),
        ("Aunt Bes bin is done n dusted, lid on tight", ["seal"]),
        ("1 kg peel in bin 3, also the lid is all puffed up", ["layer", "observe"]),
        ("2 litres of peelings out of the sink into bin 3", ["layer"]),
        ("orange peel, a 5 litre bucket full, tipped everything in Hank", ["layer"]),
        ("the kitchen bin's away to ferment now", ["seal"]),
        ("Put the board and the brick on Hank, it is finished", ["seal"]),
        ("the shed is hot to the touch", ["observe"]),
        ("got 2 kg of trimmings from the supermarket, tipped into Hank", ["layer"]),
        ("froze 2 kg of peel last week, in the shed today", ["layer"]),
        ("fed Hank 2 kg of rice", ["layer"]),
        ("caught 300 ml in a cup from the shed", ["drain"]),
        ("white stuff in bin 3, looks like snow", ["observe"]),
        ("started a new bin for the church hall, 20 L, by the recycling", ["open"]),
        ("when's the next seal", ["ask due"]),
        ("whose turn for the draining", ["ask custody"]),
        ("can't, I'm allergic to the mould", ["decline"]),
        ("remind me in two days about the draining", ["later"]),
        ("who's put in the most?", ["ask totals"]),
        ("shed or bin 3, which one gets buried first", ["ask due"]),
        ("it makes how many days that bin 3 is closed?", ["ask due"]),
        ("Tom's got bin 3 from Monday, is that right bot?", ["ask custody"]),
        ("how longs bin 3 got left", ["ask due"]),
        ("bot totals feb", ["ask totals"]),
        ("no juice in Doris again wats up wiv it", ["ask trouble", "observe"]),
        ("how much bran for goat meat 3kg?", ["ask dose"]),
        ("does the starter work with honey or must it be treacle", ["ask batch"]),
        ("can bin 3 go in a raised bed of 3 sq m", ["ask bed"]),
    ],
)
def test_near_words_of_a_bin_are_told(text: str, kinds: list[str]) -> None:
    assert _kinds(text) == kinds


def test_a_bin_is_found_by_its_name_with_accents() -> None:
    layers = acts("800 g of stalks, in gård", bins=_BINS)
    assert [act.bin for act in layers if isinstance(act, Layer)] == ["gård"]


def test_a_pint_and_a_half_with_the_d_left_out() -> None:
    (drain,) = acts("pint an a half off Doris", bins=_BINS, units="imperial")
    assert isinstance(drain, Drain)
    assert drain.volume_l == pytest.approx(0.852, abs=0.001)


def test_each_of_two_who_drained_has_a_day_and_an_amount() -> None:
    text = "Monday Ruth got 350 ml out of the shed and I on Tuesday 200"
    told = acts(text, bins=_BINS, members=_MEMBERS)
    drains = [(d.member, round(d.volume_l or 0, 3)) for d in told if isinstance(d, Drain)]
    assert drains == [("ruth", 0.35), (None, 0.2)]


@pytest.mark.parametrize(
    ("text", "to"),
    [
        ("Doris is all yours until March, Tom", "tom"),
        ("bin 3 is going to be Ruth's from the 1st of July", "ruth"),
    ],
)
def test_a_bin_that_is_to_be_somebodys_is_offered(text: str, to: str) -> None:
    offers = [act for act in acts(text, bins=_BINS, members=_MEMBERS) if isinstance(act, Offer)]
    assert [offer.to for offer in offers] == [to]
