"""Bins called after rooms and colours: what befalls the place, a beast or a thing there."""

import pytest

from handlers.reading.acts import Layer, meant
from tests.reading.context import acts

_BINS = ("shed", "laundry", "yard", "school", "depot", "kitchen", "red", "green", "blue")
_RECORDS = {"layer", "drain", "seal", "bury", "observe", "open"}


def _records(text: str) -> list[str]:
    kinds = [meant(act).act for act in acts(text, bins=_BINS)]
    return [kind for kind in kinds if kind in _RECORDS or kind == "amend"]


@pytest.mark.parametrize(
    "text",
    [
        # shut, and not sealed
        "school was shut by the council, no water",
        "laundry shut this afternoon, plumbers in",
        "depot closed early yesterday because of the storm",
        "the shed is closed for repairs",
        "yard closed due to high winds",
        "school shut today, exams",
        # a tap mended, and no liquid drawn
        "sink in the yard needed a new washer, drained 2 litres out of it first",
        "the stopcock by the shed stuck, so I drained 3 litres into a bucket",
        # torn up, and nothing laid in
        "the yard is all dug up for the new pipes",
        "depot's being dug up on Friday",
        # a feast in a room
        "quiz night in the laundry on Saturday, nachos by ruth",
        "afternoon tea in the yard on Sunday, scones from ines",
        "our summer party in the shed on Saturday, curry by ruth",
        "choir rehearsal in the school on Thursday at 7, soup by ines",
        # what stands in a place
        "the gutters at the school were emptied, a barrow load",
        "the pond behind the shed was drained last week",
        "the boiler at the school was drained, 10 litres",
        "the gate at the depot was closed",
        "a swan by the shed hissed at the kids",
        "the radiator in the laundry hisses all night",
        "green leaks a bit when it pours, the old umbrella that is",
        "the red one leaks, I mean the wee boat",
        "the yard is covered in gull droppings",
        "health inspector looked into all the bins, found a moth",
        "there's moths in the flour bin",
        # how warm a room was, and how somebody felt
        "it was 31 in the laundry yesterday, the soap melted",
        "it was 36 in the kitchen all day, cheese sweating",
        "I was feeling rotten all week",
        "blue week. feeling rotten",
        # a beast that bears the name
        "our cat Red died in the night, buried by the fence",
        "buried my poor old dog Green yesterday under the cherry",
        "we buried Blue the hamster on Sunday under the roses",
        "buried Blue, our old hen, under the lilac",
    ],
)
def test_what_befalls_the_place_is_no_record_of_its_bin(text: str) -> None:
    assert _records(text) == []


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("yard closed today, full", "seal"),
        ("closed the laundry early, no more room", "seal"),
        ("school bin closed on Friday, lid weighed down", "seal"),
        ("shed shut yesterday, taped", "seal"),
        ("depot's closed now till after half term", "seal"),
        ("red was shut today, brim full", "seal"),
        ("the yard was dug in on Friday by the fence", "bury"),
        ("dug up the bed and buried the yard in it", "bury"),
        ("quiz night leftovers in the laundry, nachos 2 kg by ruth", "layer"),
        ("lunch scraps in the shed on Friday", "layer"),
        ("supper in the shed: 1 kg of soup and bread", "layer"),
        ("the bucket in the shed was drained, 400 ml", "drain"),
        ("the shed was drained, 400 ml", "drain"),
        ("new washer on the red bin's tap. Drained 300 ml", "drain"),
        ("the cat jumped when the shed hissed", "observe"),
        ("the shed hissed like a cat", "observe"),
        ("red hissed at me", "observe"),
        ("the blue bin is leaking, water everywhere", "observe"),
        ("droppings all round the shed", "observe"),
        ("rat droppings by the red bin", "observe"),
        ("the inspector found maggots in the shed bin", "observe"),
        ("red smells rotten", "observe"),
        ("the blue bin is feeling rotten", "observe"),
        ("no, it was 12 kg in the kitchen", "amend"),
        ("I meant the red bin", "amend"),
        ("the shed, I mean the meat", "amend"),
        ("buried red by the dog kennel", "bury"),
        ("buried red, my dog dug it up", "bury"),
        ("fed the cat, red buried under the apple", "bury"),
        ("a dead mouse in blue, buried it under the lilac", "bury"),
    ],
)
def test_the_same_words_told_of_the_bin_are_one(text: str, kind: str) -> None:
    assert kind in _records(text)


@pytest.mark.parametrize(
    "text",
    [
        "the canteen burnt 6 kg of lentils and we all got toast",
        "our cook ruined 4 kg of rice and blamed the stove",
        "took a bag of scraps of fabric to the school, 2 kg",
        "brought 4 kg of offcuts of leather to the shed",
        "ruth brought 3 kilos of plums to rehearsal and they were gone in a minute",
        "ines took 2 kg of flapjack to her yoga class and came home with none",
        "stirred honey into 2 litres of tea",
        "poured rum into 5 litres of punch by mistake, nobody minded",
        "put half a bottle of red in the gravy",
        "same time next week everyone",
        "right, same again tomorrow lads",
        "two spare 25 litre buckets here if anybody fancies them",
        "we've got an old lidded bucket, 15 litres, free to a good home",
        "years ago they buried everything behind the school",
        "back in 2015 we buried three bins by the wall",
        "in those days we buried the scraps in the orchard",
        "years back my father buried 20 kg of fish under the vines",
        "last summer at the camp someone put 3 kg of salt in the beans",
    ],
)
def test_what_went_elsewhere_or_long_ago_is_no_record(text: str) -> None:
    assert _records(text) == []


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("canteen burnt 6 kg of lentils, all in the school bin now", 6),
        ("kitchen burnt 3 kg rice, into the red bin with it", 3),
        ("ruth brought 3 kilos of plums for the shed", 3),
        ("ines brought 2 kg of old flapjack to the shed after class", 2),
        ("offcuts of wood and 3 kg of peel in the shed", 3),
        ("3 kg scraps of lamb in the shed", 3),
        ("added 2 kg to the shed, same again next week", 2),
    ],
)
def test_a_layer_beside_such_words_stands(text: str, kg: float) -> None:
    told = acts(text, bins=_BINS)
    assert [act.mass_kg for act in told if isinstance(act, Layer)] == [kg]


@pytest.mark.parametrize(
    "text",
    [
        "got a spare bucket, starting a communal bin called nelly, 20 l",
        "got an old bucket from the baker, 20 litres, starting a new bin called rosie",
    ],
)
def test_a_spare_bucket_may_become_a_bin(text: str) -> None:
    assert _records(text) == ["open"]
