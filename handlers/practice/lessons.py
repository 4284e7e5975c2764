"""What a newcomer asks about the craft and nothing has to be reckoned for."""

from collections.abc import Mapping
from typing import Literal, get_args

from handlers.practice.advice import Advice, advice
from handlers.practice.cautions import caution
from handlers.practice.days import (
    DRAIN,
    FERMENT,
    FILL,
    LATE,
    PLANT,
    PLANT_COLD,
    PLANT_COOL,
    ROOM,
)
from handlers.practice.dose import LAYER_DEPTH, SPOONS
from handlers.practice.figure import Figure, number
from handlers.practice.goes_in import BOOK
from handlers.practice.starter import KEEPS_DRY
from handlers.practice.trench import DEPTH, SOIL_PARTS, TUB_DAYS
from handlers.practice.trouble import COLD, HOT

Lesson = Literal[
    "what goes in",
    "what stays out",
    "beginning",
    "how it works",
    "when to bury",
    "when to plant",
    "when to seal",
    "when to drain",
    "opening",
    "pressing",
    "cutting",
    "layers",
    "adding later",
    "where to keep it",
    "temperature",
    "smell",
    "signs of success",
    "no tap",
    "no bran",
    "much bran",
    "what bran does",
    "no garden",
    "heap",
    "worms",
    "winter",
    "when it is full",
    "cleaning",
    "keeping liquid",
    "keeping bran",
    "too long",
    "whole course",
    "near plants",
    "two bins",
]
"""What can be asked about the craft in general."""

LESSONS: tuple[Lesson, ...] = get_args(Lesson)


def _range(figure: Figure) -> str:
    """A figure from its lowest to its highest: "10 to 14"."""
    if figure.low is None or figure.high is None:
        return number(figure.value)
    return f"{number(figure.low)} to {number(figure.high)}"


_WEEKS = (FILL.value + FERMENT.value + PLANT.value) / 7
_BURIED = (
    f"Two weeks sealed at room temperature ({_range(FERMENT)} days from sealing), longer where it "
    f"is cold."
)
TAUGHT: Mapping[Lesson, Advice] = {
    "what goes in": advice(
        "All that was food: fruit, vegetables, bread, cooked leftovers, meat, fish, cheese, eggs, "
        "small bones, coffee grounds. Cut small, drained, starter on each layer.",
        "Not: liquids, mouldy food, pet waste, plastic, ash. Ask about any one: “can lamb bones "
        "go in?”",
        source=BOOK + ", ch. 6",
        standing="published",
    ),
    "what stays out": advice(
        "Liquids and much oil, food that is mouldy or rotten, pet waste and nappies, plastic, "
        "glass "
        "and metal, bags called compostable, ash, soil, cleaners and medicine.",
        "Ask about any one: “can tea bags go in?”",
        source=BOOK + ", ch. 6",
        standing="published",
    ),
    "beginning": advice(
        "Take a bin with a tight lid, best with a tap; a thin bed of starter bran on its floor, "
        "then scraps cut small, pressed down, starter on each layer, lid tight.",
        f"Drain every {_range(DRAIN)} days, seal it when full (within {number(FILL.value)} days), "
        "bury it two weeks later. Tell me: “opened the blue bin, 20 L”.",
        figures=(DRAIN, FILL, FERMENT),
    ),
    "how it works": advice(
        "Kitchen scraps are pickled, not composted: shut away from air with bran that carries "
        "lactic bacteria, they turn sour in about two weeks.",
        "Then they go into soil, where they turn to earth in a few weeks. Say “help” for what you "
        "can tell me.",
        source=BOOK,
        standing="published",
        figures=(FERMENT,),
    ),
    "when to bury": advice(
        _BURIED,
        "It is ready when it smells of pickles; white growth is fine.",
        source=FERMENT.source,
        standing="published",
        figures=(FERMENT,),
    ),
    "when to plant": advice(
        f"{_range(PLANT)} days after burying in warm soil, up to {number(PLANT_COOL.value)} in "
        f"cool and {number(PLANT_COLD.value)} in cold soil.",
        caution("roots"),
        source=PLANT.source,
        standing="published",
        figures=(PLANT, PLANT_COOL, PLANT_COLD),
    ),
    "when to seal": advice(
        f"When it is full, or {number(FILL.value)} days after the first layer, whichever comes "
        "first: starter on top, pressed down, lid tight.",
        source=FILL.source,
        standing="published",
        figures=(FILL,),
    ),
    "when to drain": advice(
        f"Every {_range(DRAIN)} days, also while it is sealed; that little or nothing comes is no "
        "fault.",
        caution("liquid"),
        source=DRAIN.source,
        figures=(DRAIN,),
    ),
    "opening": advice(
        "As seldom as you can, once a day at most: each opening lets air in. Gather the day's "
        "scraps in a covered bowl and add them together.",
        source=BOOK,
        standing="published",
    ),
    "pressing": advice(
        "Yes: press each layer down firmly, with a plate or a masher, to drive out the air; a "
        "plate "
        "or a bag left on top keeps more of it out.",
    ),
    "cutting": advice(
        "To the size of a thumb: smaller pieces leave less air and ferment sooner.",
        source="a US community programme: chop to 0.5 to 1 in",
        standing="published",
    ),
    "layers": advice(
        f"{_range(LAYER_DEPTH)} cm deep, with {_range(SPOONS)} tablespoons of starter on each; "
        "more on meat and fish.",
        figures=(LAYER_DEPTH, SPOONS),
    ),
    "adding later": advice(
        "Until it is full, yes; once it is sealed leave it shut, since fresh scraps and air set "
        "the "
        "ferment back. Begin another bin meanwhile.",
    ),
    "where to keep it": advice(
        f"Indoors or in shade, near {number(ROOM.value)} °C, out of sun and frost, where no animal "
        "gets at it: under a sink, in a cellar, a shed.",
        "Where gas can get away, and low enough that nobody lifts it far when it is full.",
        figures=(ROOM,),
    ),
    "temperature": advice(
        f"{_range(ROOM)} °C is best. Below {number(COLD.value)} °C it is slow, so give it more "
        f"days; above {number(HOT.value)} °C it may go foul.",
        figures=(ROOM, COLD, HOT),
    ),
    "smell": advice(
        "Sour, like pickles or cider, and only when the lid is off. Rot, sewage or ammonia means "
        "something is wrong: tell me what you smell.",
        source=BOOK,
        standing="published",
    ),
    "signs of success": advice(
        "It smells of pickles, and may have white growth on top; the scraps still look like "
        "scraps. "
        "Rot, or green or black growth, means air got in.",
        source=BOOK,
        standing="published",
    ),
    "no tap": advice(
        "A tap is handy, not needed: lay a raised grid or torn cardboard on the floor, and pour "
        "off "
        "or soak up the liquid; add dry bread or paper to wet scraps.",
    ),
    "no bran": advice(
        "Not well: without the culture scraps rot as often as they sour. If you run out, keep "
        "scraps in the freezer until there is more, or ask me “how do I make starter?”",
    ),
    "much bran": advice(
        "Too much does no harm, it is only waste; too little lets the bin go foul. When in "
        "doubt, a "
        "little more.",
    ),
    "what bran does": advice(
        "It is bran that carries living lactic bacteria and yeasts: strewn on each layer it makes "
        "the scraps sour before they can rot.",
    ),
    "no garden": advice(
        f"In a tub with holes: {number(SOIL_PARTS.value)} parts soil to 1 of ferment, soil on top, "
        f"covered {_range(TUB_DAYS)} days; then it is soil for pots.",
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
    "when it is full": advice(
        f"Starter on top, press, shut the lid tight, tell me “sealed it”, and drain it every "
        f"{_range(DRAIN)} days. Two weeks later bury it, about {number(DEPTH.value * 100)} cm "
        "deep.",
        figures=(DRAIN, FERMENT, DEPTH),
    ),
    "cleaning": advice(
        "Hot water and a brush, the tap too, and dry it in the sun; a little washing-up liquid is "
        "fine if it is rinsed off. No bleach: it gives off chlorine with acid.",
    ),
    "keeping liquid": advice(
        "Use it the same day: in air it soon stinks. What you cannot use goes down the drain with "
        "plenty of water, if local rules allow.",
        source=BOOK,
        standing="published",
    ),
    "keeping bran": advice(
        f"Dry, dark and airtight; dried well it keeps {number(KEEPS_DRY.value)} months. "
        "It should smell sweet and sour; with green or black growth, throw it out "
        "without sniffing it.",
        source=KEEPS_DRY.source,
        standing="published",
        figures=(KEEPS_DRY,),
    ),
    "too long": advice(
        f"It comes to no harm for weeks if the lid stays shut and it is drained; I call it late "
        f"after {number(LATE.value)} days, since bins are wanted again.",
        source=LATE.source,
        figures=(LATE,),
    ),
    "whole course": advice(
        f"Filling up to {number(FILL.value)} days, then {_range(FERMENT)} days sealed, then "
        f"{_range(PLANT)} days in warm soil before planting: about {number(_WEEKS)} weeks in all.",
        source=BOOK,
        standing="published",
        figures=(FILL, FERMENT, PLANT),
    ),
    "near plants": advice(
        "A hand's breadth or two beside small plants, and at the drip line of trees and shrubs, "
        "not "
        "against roots.",
        caution("roots"),
    ),
    "two bins": advice(
        "Two at least: one fills while the other ferments. Ask me “how many bins do we need for "
        "5 kg "
        "a week?”",
    ),
}
"""What to say, by lesson."""
