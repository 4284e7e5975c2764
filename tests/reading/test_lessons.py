"""What a newcomer asks of the craft, and talk that sounds like it."""

from dataclasses import replace

import pytest

from handlers.practice.lessons import LESSONS, Lesson
from handlers.reading.acts import Drain
from handlers.reading.arranged import Taught
from handlers.reading.plans import read
from tests.reading.context import group

ASKED = [
    ("when may we sow our carrots there", "when to plant"),
    ("how will I see that the bin is full", "knowing it is full"),
    ("where shall we keep the bin, indoors or outdoors", "where to keep it"),
    ("does the bin need daylight", "where to keep it"),
    ("can we open the bin to have a look", "opening"),
    ("what happens if I open the bin too early", "opening"),
    ("must I empty the liquid every day", "when to drain"),
    ("how many days after sealing", "when to bury"),
    ("how small must I chop it", "cutting"),
    ("what could we do with the juice", "using liquid"),
    ("what's the most weight for a full bin", "weight"),
    ("how do we postpone a reminder?", "putting off"),
    ("what does the leachate contain?", "what the liquid holds"),
    ("what is the juice made of?", "what the liquid holds"),
    ("is the tea a good fertilizer?", "for plants"),
    ("the cellar is at 6 degrees, what should we do?", "temperature"),
    ("is wheat bran ok?", "which bran"),
    ("can we use rice bran?", "which bran"),
    ("is it like compost?", "how it works"),
    ("why not just compost?", "how it works"),
    ("how do I know its ready", "signs of success"),
    ("what colour should the mould be", "signs of success"),
    ("which mould is ok?", "signs of success"),
    ("do I have to have a garden", "no garden"),
    ("how often do I add stuff", "opening"),
    ("can I plant carrots there", "when to plant"),
    ("can we sow there now?", "when to plant"),
    ("can it go on the veg bed with meat in it", "in a bed"),
    ("can I put mine in the shed bin too?", "adding later"),
    ("what do we do when the garage is at 4 °C?", "temperature"),
    ("can we give bokashi to our worms?", "worms"),
    ("is it too sour for earthworms?", "worms"),
    ("can the wormery have some?", "worms"),
    ("will the acid harm my worms?", "worms"),
    ("can we tip it into the hot compost heap?", "heap"),
    ("soil factory?", "no garden"),
    ("how do I make a soil factory?", "no garden"),
    ("what do we do without a garden?", "no garden"),
    ("can we do it in a planter on our balcony?", "no garden"),
    ("what should I do if I have no tap on my bin?", "no tap"),
    ("what pH should a good bucket have?", "acidity"),
    ("it's freezing outside, where do we bury it?", "winter"),
    ("how near to the pear tree?", "near plants"),
    ("how many households can share a 30 L bin?", "sharing a bin"),
    ("does the bin need to be kept warm?", "where to keep it"),
    ("how often should we add scraps?", "opening"),
    ("can we make our own bin from two buckets?", "what bin"),
    ("how do I get a label for the bin?", "labels"),
    ("how do we change to gallons?", "setting"),
    ("how do I join the rota?", "turns"),
    ("how should I dry the bran?", "drying bran"),
    ("can we dry our bran in an oven?", "drying bran"),
    ("how will I know if the starter is ready?", "bran ready"),
    ("do I need to add some lime to the trench?", "lime"),
    ("is it safe for the onions?", "for plants"),
    ("can I put it beside my gooseberry bushes?", "near plants"),
    ("what are the rules on fish?", "law"),
    ("must we press it down?", "pressing"),
    ("how damp should the bran be?", "moist bran"),
    ("where can we get bran?", "getting bran"),
    ("where should the liquid go?", "using liquid"),
    ("we have no yard, where do I put it?", "no garden"),
    ("how should I bury it?", "afterwards"),
    ("how will I know it's working?", "signs of success"),
    ("can I take a peek in the bin?", "opening"),
    ("can somebody look after it while I'm off?", "going away"),
    ("what goes in?", "what goes in"),
    ("hi, new here. what can go in the bin?", "what goes in"),
    ("what can't go in?", "what stays out"),
    ("what do I do first?", "beginning"),
    ("how do I get started?", "beginning"),
    ("what is bokashi?", "how it works"),
    ("how long do I wait before I bury it", "when to bury"),
    ("when can I plant there?", "when to plant"),
    ("when do I seal it?", "when to seal"),
    ("how often do I drain it?", "when to drain"),
    ("can I open the lid every day?", "opening"),
    ("do I put the bran first or last?", "beginning"),
    ("do I need to press it down?", "pressing"),
    ("how small should I cut it?", "cutting"),
    ("how thick should a layer be?", "layers"),
    ("can I keep adding after it is sealed?", "adding later"),
    ("where do I keep the bin?", "where to keep it"),
    ("can the bin stand outside?", "where to keep it"),
    ("what temperature is best?", "temperature"),
    ("does it smell?", "smell"),
    ("how do I know if it's ready?", "signs of success"),
    ("do I need a tap?", "no tap"),
    ("what if I run out of bran?", "no bran"),
    ("can I use too much bran?", "much bran"),
    ("what is the bran for?", "what bran does"),
    ("I have no garden, what do I do?", "no garden"),
    ("no yard, only a tiny terrace", "no garden"),
    ("we've got no garden here just a balcony", "no garden"),
    ("can I put it on the compost heap?", "heap"),
    ("can I feed it to the worms?", "worms"),
    ("can I bury it in winter?", "winter"),
    ("what do I do when the bin is full?", "when it is full"),
    ("how do I clean the bin?", "cleaning"),
    ("can I use soap to wash the bin?", "cleaning"),
    ("how long does the juice keep?", "keeping liquid"),
    ("how do I store the bran?", "keeping bran"),
    ("what if I leave it too long?", "too long"),
    ("how long does it all take?", "whole course"),
    ("can I bury it near my roses?", "near plants"),
    ("do I need two bins?", "two bins"),
    ("what do I do with the liquid?", "using liquid"),
    ("do I mix it with soil?", "soil in it"),
    ("can I put it straight on the soil?", "on the surface"),
    ("can I bury it in my vegetable bed?", "in a bed"),
    ("will it attract rats?", "pests"),
    ("ants all over the bin", "ants outside"),
    ("how do I let you know I'm away?", "going away"),
    ("the starter smells musty", "old bran"),
    ("is it ok for pets to be around it?", "pets"),
    ("can I freeze scraps first?", "freezing"),
    ("can two families use one bin?", "sharing a bin"),
    ("how much does a full bin weigh?", "weight"),
    ("may I carry a 40 L pail by myself?", "weight"),
    ("can I store the liquid in an old wine bottle?", "keeping liquid"),
    ("what is the pH supposed to be?", "acidity"),
    ("how warm is too warm?", "temperature"),
    ("is 90°F too hot for the bin?", "temperature"),
    ("the cellar is at 9 C, is that too cold?", "temperature"),
    ("the tap is clogged", "blocked tap"),
    ("the tap won't drain, it's blocked", "blocked tap"),
    ("is the brown liquid normal?", "colour of the liquid"),
    ("the leachate is thick and smells like sewage", "bad smell"),
    ("how do we carry a full 40 litre bin?", "weight"),
    ("it's 33 degrees in the shed, is that too hot?", "temperature"),
    ("I spilt some of the leachate on the kitchen floor", "spilled"),
    ("the trench stinks", "buried and smelling"),
    ("the juice is brown and smells rotten", "bad smell"),
    ("the liquid came out red", "colour of the liquid"),
    ("something dug up the bed last night", "dug up"),
    ("a badger got into the trench", "dug up"),
    ("can we use a metal bucket?", "what bin"),
    ("can I use an old steel drum?", "what bin"),
    ("is a tin bucket ok?", "what bin"),
    ("do the worms like it?", "worms"),
    ("it's done, what now?", "afterwards"),
    ("what does it smell like once it's ready?", "signs of success"),
    ("my bran smells musty, can I use it?", "old bran"),
    ("can I move the bin while it's fermenting?", "moving it"),
    ("I forgot to add bran, what now?", "bran forgotten"),
    ("I forgot to drain it for a week", "draining forgotten"),
    ("forgot the starter", "bran forgotten"),
    ("what happens if I never drain it?", "draining forgotten"),
    ("can I fill the bin without bran?", "no bran"),
    ("do I have to add bran each time?", "layers"),
    ("should I lift the bin alone?", "weight"),
    ("is it legal?", "law"),
    ("what happens to the bones?", "bones"),
    ("how do I hand the bin over?", "handing it over"),
    ("what if I go on holiday?", "going away"),
    ("what colour should the liquid be?", "colour of the liquid"),
    ("can I add water?", "adding water"),
    ("do I need to stir it?", "stirring"),
    ("how do I stop the smell?", "bad smell"),
    ("what do I do with it after two weeks?", "afterwards"),
    ("can I eat the vegetables grown with it?", "eating what grows"),
    ("foxes dug it up", "dug up"),
    ("what size bin should I get?", "size"),
    ("what if the bin leaks?", "leaks"),
    ("when do I add the bran?", "layers"),
    ("why is the juice green?", "colour of the liquid"),
    ("can I keep the bin in the bedroom?", "where to keep it"),
    ("vinegar to clean the bin?", "cleaning"),
    ("filled to the top", "when it is full"),
    ("the bin is full now", "when it is full"),
    ("how much liquid is normal?", "much liquid"),
    ("how do I know when it is full?", "knowing it is full"),
    ("how full should I fill it?", "knowing it is full"),
    ("how high can we fill the bin?", "knowing it is full"),
    ("what counts as full?", "knowing it is full"),
    ("how do we seal it?", "sealing"),
    ("what does sealed mean?", "sealing"),
    ("do we put bran on top before sealing?", "sealing"),
    ("what is a layer?", "what a layer is"),
    ("do I have to weigh everything?", "weighing"),
    ("we have no scales", "weighing"),
    ("the lid won't close properly", "lid open"),
    ("I can't get the lid on", "lid open"),
    ("which bin should I use?", "which bin"),
    ("I'm leaving the group, bye", "leaving"),
    ("what happens when somebody leaves?", "leaving"),
    ("how do we drain it, there's no tap", "no tap"),
    ("our bin has no tap, what do we do?", "no tap"),
    ("where should we bury it?", "near plants"),
    ("can we bury it earlier?", "when to bury"),
    ("can we open it again after sealing?", "adding later"),
    ("forgot to put bran on top, is that a problem?", "bran forgotten"),
    ("I spilled half a cup of the juice on the rug", "spilled"),
    ("in Maine, is it legal to bury fish in the garden?", "law"),
    ("is it legal for a school to do this?", "law"),
    ("does the law on meat differ here?", "law"),
    ("is it ok to share a bin with neighbours?", "law"),
    ("can we sell the bran at the school fair?", "law"),
]
OTHER_TALK = [
    "what goes in the shed this weekend?",
    "how do I start the mower?",
    "where do I keep the keys?",
    "what do I need for the party?",
    "how long does the train take?",
    "does the new cafe smell of coffee?",
    "when can I plant the tulips?",
    "when should I seal the envelope?",
    "how often do you drain the pond?",
    "can I open the window?",
    "do I need to press the shirt?",
    "the car park is full",
    "the hall is full",
    "is it legal to park here?",
    "can I move the sofa?",
    "I forgot to drain the pasta",
    "what colour should the fence be?",
    "is 3 too many?",
    "the kitchen stinks",
    "I spilled the beans",
    "can I use a bigger bucket list?",
    "a fox got into the henhouse",
    "what is the temperature in Rome?",
    "how full is the car?",
    "how do we seal the deal?",
    "how do I know when the train is full?",
    "which bus should I use?",
    "I'm leaving now, bye",
    "I left the group photo on the table",
    "Ines has left",
    "Bram is leaving us some cake",
    "I'm moving to Bristol next week",
    "the lid won't come off the jam",
    "what is a layer cake?",
    "we have no stairs",
    "is it legal for a school to do that on a Sunday trip?",
    "can we sell the raffle tickets at the school fair?",
    "where should we bury the hatchet?",
]


IN_TALK: list[tuple[str, Lesson]] = [
    ("warm food ok?", "warm food"),
    ("does it have to cool down first?", "warm food"),
    ("frozen stuff?", "freezing"),
    ("the bin is frozen", "frozen bin"),
    ("it's frozen solid!", "frozen bin"),
    ("ground's frozen", "winter"),
    ("how do I get the smell off my hands?", "smell on hands"),
    ("will it get rats", "pests"),
    ("whats the liquid", "what the liquid holds"),
    ("balcony ok?", "where to keep it"),
    ("in summer it gets 35 there", "temperature"),
    ("is that too cold?", "temperature"),
    ("I'll wrap it in a towel, is that ok?", "temperature"),
    ("should I bring it inside?", "temperature"),
    ("how long can it stay shut?", "too long"),
    ("can I make it myself", "getting bran"),
    ("can I do it in a big pot instead?", "no garden"),
    ("can I put mine in there too?", "adding later"),
    ("can I plant now", "when to plant"),
    ("is the batch ready?", "bran ready"),
    ("do I need a special bucket", "no tap"),
]
"""What is of the craft only where the bins are talked of."""

OTHER_TALK_BESIDE = [
    "warm day, isn't it?",
    "frozen peas are on offer",
    "the lake is frozen",
    "is that too much trouble?",
    "should I bring it along on Sunday?",
    "I'll wrap it in paper for the party",
    "can I put mine on the list too?",
    "can I make it on Friday?",
    "how long can you stay?",
    "will it rain?",
    "garage sale on Saturday?",
]


@pytest.mark.parametrize(("text", "lesson"), IN_TALK)
def test_a_few_words_are_of_the_craft_while_the_bins_are_talked_of(
    text: str, lesson: Lesson
) -> None:
    talk = replace(group(in_room=True), of_bins=True)
    assert read(text, talk) == (Taught(lesson=lesson),)
    assert Taught(lesson=lesson) not in read(text, group(in_room=True))


@pytest.mark.parametrize("text", OTHER_TALK_BESIDE)
def test_other_talk_beside_that_of_the_bins_is_taught_nothing(text: str) -> None:
    talk = replace(group(in_room=True), of_bins=True)
    assert not [one for one in read(text, talk) if isinstance(one, Taught)]


@pytest.mark.parametrize(("text", "lesson"), ASKED)
def test_a_newcomer_is_taught(text: str, lesson: str) -> None:
    assert read(text, group(in_room=True)) == (Taught(lesson=lesson),)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("text", "lesson"),
    [
        ("what do I do with it?", "using liquid"),
        ("what should we do with that now?", "using liquid"),
        ("is that the right amount?", "much liquid"),
        ("can we keep it till the weekend?", "keeping liquid"),
        ("how long does it keep?", "keeping liquid"),
        ("can I give it to my geranium?", "using liquid"),
    ],
)
def test_it_is_the_liquid_behind_a_draining(text: str, lesson: Lesson) -> None:
    drawn = replace(group(in_room=True), last=Drain(volume_l=0.15, bin="shed"))
    assert read(text, drawn) == (Taught(lesson=lesson),)
    assert Taught(lesson=lesson) not in read(text, group(in_room=True))


def test_every_lesson_is_asked_for_here() -> None:
    assert {lesson for _, lesson in (*ASKED, *IN_TALK)} == set(LESSONS)


@pytest.mark.parametrize("text", OTHER_TALK)
def test_other_talk_is_taught_nothing(text: str) -> None:
    assert not [one for one in read(text, group(in_room=True)) if isinstance(one, Taught)]


def test_a_bin_that_is_named_is_asked_about_itself() -> None:
    said = read("when can I bury the shed bin?", group(in_room=True))
    assert said
    assert not isinstance(said[0], Taught)
