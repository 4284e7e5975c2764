"""The bin itself, as a newcomer is taught it: its kind, its place, its lid and tap, and beasts."""

from collections.abc import Mapping

from handlers.practice.advice import Advice, advice
from handlers.practice.bins import ORDINARY_BIN
from handlers.practice.cautions import caution
from handlers.practice.days import FILL, ROOM
from handlers.practice.figure import fahrenheit, number, ranging
from handlers.practice.lessons import Lesson
from handlers.practice.trench import COVER_ANIMALS
from handlers.practice.trouble import COLD, HOT

BINS: Mapping[Lesson, Advice] = {
    "where to keep it": advice(
        f"Indoors or in shade, near {number(ROOM.value)} °C, out of sun and frost, where no animal "
        "gets at it: under a sink, in a cellar, a shed.",
        "Where gas can get away, and low enough that nobody lifts it far when it is full.",
        figures=(ROOM,),
    ),
    "temperature": advice(
        f"{ranging(ROOM)} °C ({fahrenheit(ROOM.low)} to {fahrenheit(ROOM.high)} °F) is best. "
        f"Below {number(COLD.value)} °C ({fahrenheit(COLD.value)} °F) it is slow, so give it more "
        "days: ask me “how long at 10 °C?”. "
        f"Above {number(HOT.value)} °C ({fahrenheit(HOT.value)} °F) it may go foul.",
        figures=(ROOM, COLD, HOT),
    ),
    "no tap": advice(
        "A tap is handy, not needed: lay a raised grid or torn cardboard on the floor, and pour "
        "off "
        "or soak up the liquid; add dry bread or paper to wet scraps.",
    ),
    "lid open": advice(
        "Press the scraps down, or take some out, and wipe the rim and its groove; weigh the lid "
        "down till it holds. While air gets in it may rot.",
        "If the lid is pushed up by gas, tell me: “the lid is bulging”.",
    ),
    "which bin": advice(
        "The one that is being filled, until it is full; never a sealed one. Ask me “how full are "
        "the bins?”",
    ),
    "cleaning": advice(
        "Hot water and a brush, the tap too, and dry it in the sun; a little washing-up liquid is "
        "fine if it is rinsed off. No bleach: it gives off chlorine with acid.",
    ),
    "two bins": advice(
        "Two at least: one fills while the other ferments. Ask me “how many bins do we need for "
        "5 kg a week?”",
    ),
    "pests": advice(
        "Not while the lid shuts tight and spills are wiped up; flies come in on the scraps, so "
        "keep those covered or frozen until they go in.",
        f"Once buried, it wants {ranging(COVER_ANIMALS, 100)} cm of soil over it where animals "
        "dig.",
        source=COVER_ANIMALS.source,
        standing="published",
        figures=(COVER_ANIMALS,),
    ),
    "ants outside": advice(
        "They come for drips and crumbs, not out of the ferment: wipe the bin and its tap clean, "
        "shut the lid tight, and stand it where no crumbs lie. Inside, tell me: “ants in the bin”.",
    ),
    "pets": advice(
        "With the lid tight and the liquid out of reach, yes; they must neither eat nor drink of "
        f"it, and buried ferment wants {ranging(COVER_ANIMALS, 100)} cm of soil over it.",
        source=COVER_ANIMALS.source,
        standing="published",
        figures=(COVER_ANIMALS,),
    ),
    "weight": advice(caution("lifting")),
    "moving it": advice(
        "Yes, with the lid shut and drained before, so that nothing spills.",
        caution("lifting"),
    ),
    "size": advice(
        f"{ranging(ORDINARY_BIN)} L suits a household: full within {number(FILL.value)} days, and "
        "still to be lifted.",
        caution("lifting"),
        figures=(ORDINARY_BIN, FILL),
    ),
    "blocked tap": advice(
        "Gloves on, a tray under it: push a skewer up through the open tap, or flush it with hot "
        "water from outside. A little bread or paper on top soaks up liquid meanwhile.",
        caution("splash"),
    ),
    "spilled": advice(
        "Gloves on: soak it up with paper, then wash the spot with hot water and soap, children "
        "and animals kept off it. No bleach: with acid it gives off chlorine.",
    ),
    "what bin": advice(
        "Plastic with a tight lid is best. The sour liquid eats bare metal; stainless steel or "
        "whole enamel will do if it shuts tight.",
        caution("gas"),
        source="acids dissolve iron, zinc and aluminium: chemistry",
        standing="from memory",
    ),
    "frozen bin": advice(
        f"Frost stops the ferment and does not kill it: stand it where it is over "
        f"{number(COLD.value)} °C ({fahrenheit(COLD.value)} °F), leave the lid shut, drain what "
        "comes when it has thawed, and give it as many more days as it was frozen.",
        source="lactic bacteria outlast frost: general knowledge",
        standing="from memory",
        figures=(COLD,),
    ),
    "smell on hands": advice(
        "Soap and plenty of water, then a little vinegar or lemon juice, and soap again. Gloves "
        "the next time.",
        source="what is used against the smell of fish",
        standing="from memory",
    ),
    "leaks": advice(
        "Drain it, stand it in a tray, and wipe up with gloves on. A bin that leaks lets air in as "
        "well: mend the tap or put the ferment into another.",
    ),
}
