"""The craft's words of other matters, class by class, with the near ones that are records."""

import pytest

from tests.reading.context import acts

BINS = ("shed", "lane", "terrace", "bin 3", "Doris")
PLANS = [
    "I'll do the terrace tonight after work, 3 kg of peelings in the boot of the car",
    "going to top up the lane at the weekend, got about a kilo of pumpkin guts in a bag",
    "will top up Doris later, about 2 kg of cabbage here",
    "I'm keeping 1 kg of fish heads in the freezer for Doris",
]
MEMORIES = [
    "one spring years ago mum drained a litre of brown stuff off her pail",
    "three summers ago we buried a barrel by the pond and the fox had it up",
    "two seasons ago they put 5 kg of fish in and the whole street knew",
]
HOUSE = [
    "radiator leaking in the lane, drained 5 litres off it this morning",
    "the plumber was late, two buckets drained off the burst pipe by then, 20 litres",
    "drained my maple buckets, 8 litres",
    "terrace drain is blocked with leaves, cleared half a bucket",
    "dug a drain by the shed, 2 m of pipe",
    "we started the shed! foundations in",
    "Doris closed the door on me",
    "closed the shed for the winter, key with Ines",
    "new shop opened on the corner, 20 litre bins for 8 quid",
]
KITCHEN = [
    "3 cups of coffee and still yawning",
    "The menu ran to nine plates, and the starter was one pickled radish",
    "salted 5 kg of cabbage, crock's full",
    "topped up the bird table with scraps, magpies won",
    "koji is fluffy white and sweet, soy sauce on the way",
    "opened the jar of kimchi, it hissed, lovely and sour",
    "blue cheese has more blue, is there blue cheese without mould",
    "ginger bug started, 500 ml",
    "whole crop gone to mildew, white and dusty",
    "is it bad that I ate it",
]
BESIDE = [
    "drained the pond near the shed bin, 40 litres",
    "the path by bin 3 is wet and slippery again",
    "white mould on the wall beside the shed bin",
    "closed the gate behind the shed bin",
    "it's freezing cold by the lane bin",
    "lawn's dry near bin 3",
]
FROM_THERE = [
    "drew 2 litres of water from the shed tap for the dog",
    "fetched 3 litres of diesel from the shed",
    "took 2 kg of potatoes from the shed for tea",
    "noise from the terrace till 2 am",
    "pinched 1 kg of plums off Doris's tree",
    "raccoon dragged 2 kg of chicken into the shed",
    "kids threw 2 kg of tomatoes at the shed",
    "once bin 3 is sealed it waits two weeks",
    "let's seal Doris on Sunday",
]
NAMESAKES = [
    "Doris gave me 2 kg of figs",
    "fed Doris at the hospital, she managed half a yoghurt",
    "Doris is warm enough in that coat",
    "Doris has black spots on her roses",
    "Doris's ceiling is mouldy",
    "Doris's fridge smells rotten",
]
PEOPLE = ["handing the class over to Ines from Monday", "not my turn to do the stairs"]


@pytest.mark.parametrize(
    "text", [*PLANS, *MEMORIES, *HOUSE, *KITCHEN, *BESIDE, *FROM_THERE, *NAMESAKES, *PEOPLE]
)
def test_what_is_of_another_matter_is_left_alone(text: str) -> None:
    assert acts(text, bins=BINS) == ()


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("I'll get to the terrace bin later but put 2 kg of scraps in Doris", "layer"),
        ("will do bin 3 on Friday. shed: 2 kg peel", "layer"),
        ("fed the lane, going to feed it again tomorrow, 1 kg of bread", "layer"),
        ("2 kg of kale stalks from the freezer into the shed, more tomorrow", "layer"),
        ("last summer it took weeks, this time we buried Doris on Monday", "bury"),
        ("the pipe burst at ours, but drained the shed first, 300 ml", "drain"),
        ("plumber's here. got 200 ml out of Doris", "drain"),
        ("emptied Doris's tray into the maple bed, 200 ml", "drain"),
        ("dug Doris in by the pond", "bury"),
        ("dug a trench by the well and put bin 3 in", "bury"),
        ("closed Doris for the winter with tape and bran, full to the brim", "seal"),
        ("2 kg of salted fish skins into the shed", "layer"),
        ("marinated ribs leftovers 800 g in bin 3", "layer"),
        ("2 cups of coffee grounds in Doris", "layer"),
        ("2 kg of old kimchi into Doris", "layer"),
        ("Doris smells like kimchi, lovely", "observe"),
        ("white mould on the shed like brie", "observe"),
        ("opened the lane bin and it hissed, sour", "observe"),
        ("mouse droppings near the shed bin", "observe"),
        ("what a stink by bin 3, rotten eggs", "observe"),
        ("drained bin 3 near the pond, 200 ml", "drain"),
        ("sealed Doris and put it behind the shed bin", "seal"),
        ("took 2 litres from the shed", "drain"),
        ("drew 1 litre of brown water from bin 3", "drain"),
        ("Doris gave me 300 ml today", "drain"),
        ("from the terrace 200 ml", "drain"),
        ("Doris's lid is mouldy, green", "observe"),
        ("the shed bin's wall is mouldy, white", "observe"),
        ("Doris is warm, 34 degrees", "observe"),
        ("gave Doris 2 kg of figs from the tree", "layer"),
        ("2 kg of windfalls off the tree into Doris", "layer"),
        ("kids threw 2 kg of tomatoes in the shed", "layer"),
        ("2 kg from the school canteen into the shed", "layer"),
        ("sealed Doris, let's see in two weeks", "seal"),
        ("Doris is in the ground by her roses", "bury"),
        ("2 cups of starter left in the tub", "stock"),
    ],
)
def test_its_near_neighbour_is_a_record(text: str, kind: str) -> None:
    assert kind in [act.act for act in acts(text, bins=BINS)]
