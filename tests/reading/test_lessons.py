"""What a newcomer asks of the craft, and talk that sounds like it."""

import pytest

from handlers.practice.lessons import LESSONS
from handlers.reading.arranged import Taught
from handlers.reading.plans import read
from tests.reading.context import group

ASKED = [
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
]


@pytest.mark.parametrize(("text", "lesson"), ASKED)
def test_a_newcomer_is_taught(text: str, lesson: str) -> None:
    assert read(text, group(in_room=True)) == (Taught(lesson=lesson),)  # type: ignore[arg-type]


def test_every_lesson_is_asked_for_here() -> None:
    assert {lesson for _, lesson in ASKED} == set(LESSONS)


@pytest.mark.parametrize("text", OTHER_TALK)
def test_other_talk_is_taught_nothing(text: str) -> None:
    assert not [one for one in read(text, group(in_room=True)) if isinstance(one, Taught)]


def test_a_bin_that_is_named_is_asked_about_itself() -> None:
    said = read("when can I bury the shed bin?", group(in_room=True))
    assert said
    assert not isinstance(said[0], Taught)
