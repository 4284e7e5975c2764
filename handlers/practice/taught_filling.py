"""Filling a bin, as a newcomer is taught it: what goes in, layer by layer, till it is full."""

from collections.abc import Mapping

from handlers.practice.advice import Advice, advice
from handlers.practice.days import DRAIN, FERMENT, FILL
from handlers.practice.dose import LAYER_DEPTH, SPOONS
from handlers.practice.figure import number, ranging
from handlers.practice.goes_in import BOOK
from handlers.practice.lessons import Lesson
from handlers.practice.taught_soil import BURIED
from handlers.practice.trench import DEPTH, STIRRED_IN

FILLING: Mapping[Lesson, Advice] = {
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
        f"Drain every {ranging(DRAIN)} days, seal it when full (within {number(FILL.value)} days), "
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
    "when to seal": advice(
        f"When it is full, or {number(FILL.value)} days after the first layer, whichever comes "
        "first: starter on top, pressed down, lid tight.",
        source=FILL.source,
        standing="published",
        figures=(FILL,),
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
        f"{ranging(LAYER_DEPTH)} cm deep, with {ranging(SPOONS)} tablespoons of starter on each; "
        "more on meat and fish.",
        figures=(LAYER_DEPTH, SPOONS),
    ),
    "adding later": advice(
        "Until it is full, yes; once it is sealed leave it shut, since fresh scraps and air set "
        "the "
        "ferment back. Begin another bin meanwhile.",
    ),
    "when it is full": advice(
        f"Starter on top, press, shut the lid tight, tell me “sealed it”, and drain it every "
        f"{ranging(DRAIN)} days. Two weeks later bury it, about {number(DEPTH.value * 100)} cm "
        "deep.",
        figures=(DRAIN, FERMENT, DEPTH),
    ),
    "knowing it is full": advice(
        "When pressed down it stands so near the rim that no further layer fits under the lid with "
        "the starter on top. Scraps sink for days, so a bin fills more slowly than it looks.",
        f"Seal it then, or {number(FILL.value)} days after the first layer. Ask me “how full is "
        "the blue bin?”",
        source=FILL.source,
        standing="published",
        figures=(FILL,),
    ),
    "sealing": advice(
        "Sealed means: nothing more goes in, and the lid stays shut while it ferments. Starter on "
        "top, press, shut the lid tight, and tell me “sealed it”.",
        f"From then on it is only drained, every {ranging(DRAIN)} days. {BURIED}",
        source=FERMENT.source,
        standing="published",
        figures=(DRAIN, FERMENT),
    ),
    "what a layer is": advice(
        f"What goes in at one time, with its starter: scraps {ranging(LAYER_DEPTH)} cm deep, "
        "pressed down, starter strewn on top. Tell me each: “1 kg of peelings in the blue bin”.",
        figures=(LAYER_DEPTH,),
    ),
    "weighing": advice(
        "No need: litres, cups or a good guess do as well, like “a bucket of peelings, 5 L”. I "
        "reckon the starter from either.",
    ),
    "soil in it": advice(
        f"Not in the bin. When you bury it, yes: stir in {number(STIRRED_IN.value)} part of soil "
        "to one of ferment, so that it turns to earth sooner.",
        source=STIRRED_IN.source,
        standing="published",
        figures=(STIRRED_IN,),
    ),
    "freezing": advice(
        "Yes: frozen scraps keep till there is enough for a layer, and flies' eggs die. Let them "
        "thaw and drain them before they go in.",
    ),
    "bones": advice(
        "They come out soft but whole and crumble slowly in the soil; small ones do no harm there.",
    ),
    "adding water": advice(
        "No: scraps bring enough, and free liquid lets them rot. A bin that is bone dry may have "
        "juicier scraps.",
    ),
    "stirring": advice(
        "No: stirring lets air in. Layer upon layer, pressed down, and left alone.",
    ),
    "lime": advice(
        "Not in the bin: it takes the acid away that keeps the scraps. In the ground it is seldom "
        "needed: the sourness goes by itself within the weeks before planting.",
        source="lime is a base: chemistry",
        standing="from memory",
    ),
    "warm food": advice(
        "Let it cool first: warm scraps sweat in the bin, and heat harms the culture.",
        source="heat kills the bacteria: general knowledge",
        standing="from memory",
    ),
}
