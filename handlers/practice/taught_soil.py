"""Into the soil, as a newcomer is taught it: when and where it is buried, and what grows there."""

from collections.abc import Mapping

from handlers.practice.advice import Advice, advice
from handlers.practice.cautions import caution
from handlers.practice.days import FERMENT, PLANT, PLANT_COLD, PLANT_COOL
from handlers.practice.figure import number, ranging
from handlers.practice.lessons import Lesson
from handlers.practice.trench import COVER, COVER_ANIMALS, DEPTH, SOIL_PARTS, TUB_DAYS

BURIED = (
    f"Two weeks sealed at room temperature ({ranging(FERMENT)} days from sealing), longer where it "
    f"is cold."
)

SOIL: Mapping[Lesson, Advice] = {
    "when to bury": advice(
        BURIED,
        "It is ready when it smells of pickles; white growth is fine.",
        source=FERMENT.source,
        standing="published",
        figures=(FERMENT,),
    ),
    "when to plant": advice(
        f"{ranging(PLANT)} days after burying in warm soil, up to {number(PLANT_COOL.value)} in "
        f"cool and {number(PLANT_COLD.value)} in cold soil.",
        caution("roots"),
        source=PLANT.source,
        standing="published",
        figures=(PLANT, PLANT_COOL, PLANT_COLD),
    ),
    "no garden": advice(
        f"In a tub with holes: {number(SOIL_PARTS.value)} parts soil to 1 of ferment, soil on top, "
        f"covered {ranging(TUB_DAYS)} days; then it is soil for pots.",
        "Or give it to a neighbour's bed, an allotment or a compost heap.",
        source=TUB_DAYS.source,
        standing="published",
        figures=(SOIL_PARTS, TUB_DAYS),
    ),
    "heap": advice(
        "Yes, fermented scraps may go into the middle of a heap, covered with dry stuff; they heat "
        "it up. Where rats come, bury them instead.",
    ),
    "worms": advice(
        "A little at a time, and only in one corner: it is sour at first, so let the worms come to "
        "it, or leave it in soil for two weeks before.",
    ),
    "winter": advice(
        "In cold soil little happens: bury it where the ground can be dug and wait for spring, or "
        "keep the bin sealed and cool, or use a tub of soil indoors.",
        source=PLANT_COLD.source,
        standing="derived",
        figures=(PLANT_COLD,),
    ),
    "where to bury": advice(
        f"Where you can dig and nothing is to be planted for {ranging(PLANT)} days: a bare bed, "
        "best, and never against roots. A place takes only so much a year: ask me “how much may go "
        "on 3 m²?”",
        caution("digging"),
        source=PLANT.source,
        standing="published",
        figures=(PLANT,),
    ),
    "near plants": advice(
        "A hand's breadth or two beside small plants, and at the drip line of trees and shrubs, "
        "not against roots.",
        caution("roots"),
    ),
    "covering": advice(
        f"Yes: {ranging(COVER, 100)} cm of soil over it, {ranging(COVER_ANIMALS, 100)} cm where "
        "animals dig; a board or wire mesh over that for two weeks keeps them off.",
        source=COVER.source,
        standing="published",
        figures=(COVER, COVER_ANIMALS),
    ),
    "on the surface": advice(
        f"No: it draws animals and smells there. Cover it with {ranging(COVER, 100)} cm of soil, "
        f"{ranging(COVER_ANIMALS, 100)} cm where animals dig.",
        source=COVER.source,
        standing="published",
        figures=(COVER, COVER_ANIMALS),
    ),
    "in a bed": advice(
        f"Yes, where nothing grows yet: cover it well ({ranging(COVER_ANIMALS, 100)} cm if meat is "
        f"in it, and no salad beside it), and wait {ranging(PLANT)} days before you plant. Ask me "
        "“how much may go on 3 m²?”",
        caution("roots"),
        source=f"{PLANT.source}; {COVER_ANIMALS.source}",
        standing="published",
        figures=(PLANT, COVER_ANIMALS),
    ),
    "afterwards": advice(
        f"Bury it, about {number(DEPTH.value * 100)} cm deep, mixed with soil and covered; plant "
        f"{ranging(PLANT)} days later. Ask me “how big a trench for 20 L?”",
        "No garden: mix it with soil in a tub, or put it into the middle of a compost heap.",
        figures=(DEPTH, PLANT),
    ),
    "eating what grows": advice(
        "Yes, washed as ever, once the ferment has rested in the soil; and keep the liquid off the "
        "parts you eat raw.",
        caution("rules"),
    ),
    "dug up": advice(
        f"Gloves on, put it back or into the waste, cover it {ranging(COVER_ANIMALS, 100)} cm "
        "deep, and lay a board or wire mesh over it for two weeks.",
        source=COVER_ANIMALS.source,
        standing="published",
        figures=(COVER_ANIMALS,),
    ),
    "buried and smelling": advice(
        f"It wants more soil: {number(SOIL_PARTS.value)} parts to 1 of ferment, and "
        f"{ranging(COVER, 100)} cm over it, {ranging(COVER_ANIMALS, 100)} cm where animals dig.",
        caution("digging"),
        source=COVER.source,
        standing="published",
        figures=(SOIL_PARTS, COVER, COVER_ANIMALS),
    ),
    "for plants": advice(
        f"It feeds them once it has rested {ranging(PLANT)} days in the soil; the liquid only "
        "thinned, on the soil and not on leaves you eat. Fresh or undiluted it burns roots.",
        source=PLANT.source,
        standing="published",
        figures=(PLANT,),
    ),
}
