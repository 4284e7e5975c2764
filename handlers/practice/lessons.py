"""What a newcomer asks about the craft and nothing has to be reckoned for."""

from collections.abc import Mapping
from typing import Literal, get_args

from handlers.practice.advice import Advice, advice
from handlers.practice.bins import ORDINARY_BIN
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
from handlers.practice.density import PRESSED_MIXED
from handlers.practice.dose import LAYER_DEPTH, SPOONS
from handlers.practice.figure import Figure, number
from handlers.practice.goes_in import BOOK
from handlers.practice.outlook import SEED_KG_WEEK
from handlers.practice.recipes import PACKED
from handlers.practice.starter import DRIED, DRY_DAYS, FERMENT_DAYS, KEEPS_DRY
from handlers.practice.trench import (
    COVER,
    COVER_ANIMALS,
    DEPTH,
    SOIL_PARTS,
    STIRRED_IN,
    TUB_DAYS,
)
from handlers.practice.trouble import ACID, ACID_LIMIT, COLD, HOT

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
    "knowing it is full",
    "sealing",
    "what a layer is",
    "weighing",
    "lid open",
    "which bin",
    "leaving",
    "cleaning",
    "keeping liquid",
    "keeping bran",
    "too long",
    "whole course",
    "near plants",
    "two bins",
    "using liquid",
    "much liquid",
    "soil in it",
    "on the surface",
    "in a bed",
    "pests",
    "ants outside",
    "pets",
    "freezing",
    "sharing a bin",
    "weight",
    "old bran",
    "moist bran",
    "getting bran",
    "moving it",
    "bran forgotten",
    "draining forgotten",
    "law",
    "bones",
    "handing it over",
    "going away",
    "colour of the liquid",
    "adding water",
    "stirring",
    "bad smell",
    "afterwards",
    "eating what grows",
    "dug up",
    "size",
    "leaks",
    "for plants",
    "putting off",
    "labels",
    "setting",
    "turns",
    "lime",
    "drying bran",
    "bran ready",
    "blocked tap",
    "spilled",
    "buried and smelling",
    "acidity",
    "what bin",
    "what the liquid holds",
    "warm food",
    "frozen bin",
    "smell on hands",
    "which bran",
]
"""What can be asked about the craft in general."""

LESSONS: tuple[Lesson, ...] = get_args(Lesson)


def _range(figure: Figure, times: float = 1) -> str:
    """A figure from its lowest to its highest, `times` over: "10 to 14"."""
    if figure.low is None or figure.high is None:
        return number(figure.value * times)
    return f"{number(figure.low * times)} to {number(figure.high * times)}"


def _fahrenheit(celsius: float | None) -> str:
    return number((celsius or 0) * 1.8 + 32, 2)


SHARERS = Figure(
    "people who fill an ordinary bin in the days it may take",
    round(ORDINARY_BIN.value * PRESSED_MIXED.value / (SEED_KG_WEEK.value * FILL.value / 7)),
    "people",
    "its capacity by the pressed density, over what a person throws out in that time",
    "derived",
)
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
        f"{_range(ROOM)} °C ({_fahrenheit(ROOM.low)} to {_fahrenheit(ROOM.high)} °F) is best. "
        f"Below {number(COLD.value)} °C ({_fahrenheit(COLD.value)} °F) it is slow, so give it more "
        "days: ask me “how long at 10 °C?”. "
        f"Above {number(HOT.value)} °C ({_fahrenheit(HOT.value)} °F) it may go foul.",
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
        f"From then on it is only drained, every {_range(DRAIN)} days. {_BURIED}",
        source=FERMENT.source,
        standing="published",
        figures=(DRAIN, FERMENT),
    ),
    "what a layer is": advice(
        f"What goes in at one time, with its starter: scraps {_range(LAYER_DEPTH)} cm deep, "
        "pressed down, starter strewn on top. Tell me each: “1 kg of peelings in the blue bin”.",
        figures=(LAYER_DEPTH,),
    ),
    "weighing": advice(
        "No need: litres, cups or a good guess do as well, like “a bucket of peelings, 5 L”. I "
        "reckon the starter from either.",
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
    "leaving": advice(
        "What I know of turns and bins stays till it is said: “take Zoe off the rota”, “Bram takes "
        "over the blue bin”.",
        "If a bin goes away for good: “take the blue bin out of use”.",
    ),
    "cleaning": advice(
        "Hot water and a brush, the tap too, and dry it in the sun; a little washing-up liquid is "
        "fine if it is rinsed off. No bleach: it gives off chlorine with acid.",
    ),
    "keeping liquid": advice(
        "Use it the same day: in air it soon stinks, and in a closed bottle gas builds up and can "
        "burst it, so never shut one tight.",
        "Older than two days, or smelling rotten: not on plants, but down the drain with plenty of "
        "water, if local rules allow.",
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
        f"{_range(PLANT)} days in warm soil before planting: up to {number(_WEEKS)} weeks in all.",
        source=BOOK,
        standing="published",
        figures=(FILL, FERMENT, PLANT),
    ),
    "near plants": advice(
        "A hand's breadth or two beside small plants, and at the drip line of trees and shrubs, "
        "not against roots.",
        caution("roots"),
    ),
    "two bins": advice(
        "Two at least: one fills while the other ferments. Ask me “how many bins do we need for "
        "5 kg a week?”",
    ),
    "using liquid": advice(
        "Thin it and give it to plants at the root: ask me “how much water for 250 mL?”, or “can I "
        "use it on houseplants?” Undiluted it goes down the drain only.",
        caution("liquid"),
    ),
    "much liquid": advice(
        "Any amount is: wet scraps give much, dry ones little or nothing. It should smell sour, "
        "and none is to stand in the bin.",
        "If the scraps swim, add torn cardboard or dry bread. To use it, ask me “how much water "
        "for 150 mL?”",
    ),
    "soil in it": advice(
        f"Not in the bin. When you bury it, yes: stir in {number(STIRRED_IN.value)} part of soil "
        "to one of ferment, so that it turns to earth sooner.",
        source=STIRRED_IN.source,
        standing="published",
        figures=(STIRRED_IN,),
    ),
    "on the surface": advice(
        f"No: it draws animals and smells there. Cover it with {_range(COVER, 100)} cm of soil, "
        f"{_range(COVER_ANIMALS, 100)} cm where animals dig.",
        source=COVER.source,
        standing="published",
        figures=(COVER, COVER_ANIMALS),
    ),
    "in a bed": advice(
        f"Yes, where nothing grows yet: cover it well ({_range(COVER_ANIMALS, 100)} cm if meat is "
        f"in it, and no salad beside it), and wait {_range(PLANT)} days before you plant. Ask me "
        "“how much may go on 3 m²?”",
        caution("roots"),
        source=f"{PLANT.source}; {COVER_ANIMALS.source}",
        standing="published",
        figures=(PLANT, COVER_ANIMALS),
    ),
    "pests": advice(
        "Not while the lid shuts tight and spills are wiped up; flies come in on the scraps, so "
        "keep those covered or frozen until they go in.",
        f"Once buried, it wants {_range(COVER_ANIMALS, 100)} cm of soil over it where animals dig.",
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
        f"it, and buried ferment wants {_range(COVER_ANIMALS, 100)} cm of soil over it.",
        source=COVER_ANIMALS.source,
        standing="published",
        figures=(COVER_ANIMALS,),
    ),
    "freezing": advice(
        "Yes: frozen scraps keep till there is enough for a layer, and flies' eggs die. Let them "
        "thaw and drain them before they go in.",
    ),
    "sharing a bin": advice(
        f"As many as it takes to fill it within {number(FILL.value)} days, rather sooner: about "
        f"{number(SHARERS.value)} people for {number(ORDINARY_BIN.value)} L. Ask me “how many bins "
        "do we need for 4 people?”",
        source=f"{FILL.source}; {SEED_KG_WEEK.source}",
        standing="published",
        figures=(FILL, ORDINARY_BIN, SHARERS, PRESSED_MIXED, SEED_KG_WEEK),
    ),
    "weight": advice(caution("lifting")),
    "old bran": advice(
        "Musty, rotten, or with green or black growth: throw it out, damp, without sniffing it, "
        "and not into a bin. Good bran smells sweet and sour; with no smell at all, try it on a "
        "small layer, or make new.",
        source=BOOK + ", ch. 4",
        standing="published",
    ),
    "moist bran": advice(
        f"{_range(PACKED, 100)} % water when it is packed to ferment: a handful holds together "
        "when squeezed, and no drop comes out.",
        f"For keeping, dried to {number(DRIED.value * 100)} % or so, so that it trickles. Ask me "
        "“how much water for 2 kg of bran?”",
        source=DRIED.source,
        standing=DRIED.standing,
        figures=(PACKED, DRIED),
    ),
    "getting bran": advice(
        "Plain bran comes from mills and feed or wholefood shops, culture and molasses from garden "
        "and farm suppliers; ready starter from those who sell bins, or from another group.",
        "To make it yourselves ask me “how do I make starter?”",
    ),
    "moving it": advice(
        "Yes, with the lid shut and drained before, so that nothing spills.",
        caution("lifting"),
    ),
    "bran forgotten": advice(
        "Strew the dose you missed on top now, press it down and shut the lid; the next layer "
        "brings more. If it smells of rot in the days after, tell me.",
    ),
    "draining forgotten": advice(
        "Drain it now. If it smells of pickles no harm is done; if it smells of rot, tell me: it "
        "wants more starter and dry paper.",
    ),
    "law": advice(
        "At home mostly yes. A group that shares bins, takes meat or gives ferment away may need "
        "leave: ask your local authority, whose word goes before mine.",
        "EU law calls all food waste of homes and caterers catering waste; in the UK a shared site "
        "for it needs approval from APHA or DAERA. Other lands differ, as do the states of the US.",
        source="Reg. (EU) 142/2011, Annex I; NetRegs on catering waste: communal sites are not "
        "exempt in the UK; the states of "
        "the US differ",
        standing="published",
    ),
    "bones": advice(
        "They come out soft but whole and crumble slowly in the soil; small ones do no harm there.",
    ),
    "handing it over": advice(
        "Say “handing the blue bin to Bram on Friday”; Bram says “I'll take it”. With no name I "
        "ask everybody.",
    ),
    "going away": advice(
        "Say “I'm away till Monday”: what is yours to do meanwhile is asked of somebody else; or "
        "“…, Bram looks after my bin”. A sealed bin needs only draining.",
    ),
    "colour of the liquid": advice(
        "Pale to dark brown, or red from beetroot, clear or cloudy: it is what went in. It should "
        "smell sour, not rotten.",
    ),
    "adding water": advice(
        "No: scraps bring enough, and free liquid lets them rot. A bin that is bone dry may have "
        "juicier scraps.",
    ),
    "stirring": advice(
        "No: stirring lets air in. Layer upon layer, pressed down, and left alone.",
    ),
    "bad smell": advice(
        "Sour is right. If it smells of rot: drain it, strew half as much starter again on top, "
        "press, and check that the lid seals.",
        "Tell me what you smell, such as “the blue bin smells of ammonia”.",
        source=BOOK + ", ch. 6",
        standing="published",
    ),
    "afterwards": advice(
        f"Bury it, about {number(DEPTH.value * 100)} cm deep, mixed with soil and covered; plant "
        f"{_range(PLANT)} days later. Ask me “how big a trench for 20 L?”",
        "No garden: mix it with soil in a tub, or put it into the middle of a compost heap.",
        figures=(DEPTH, PLANT),
    ),
    "eating what grows": advice(
        "Yes, washed as ever, once the ferment has rested in the soil; and keep the liquid off the "
        "parts you eat raw.",
        caution("rules"),
    ),
    "dug up": advice(
        f"Gloves on, put it back or into the waste, cover it {_range(COVER_ANIMALS, 100)} cm deep, "
        "and lay a board or wire mesh over it for two weeks.",
        source=COVER_ANIMALS.source,
        standing="published",
        figures=(COVER_ANIMALS,),
    ),
    "size": advice(
        f"{_range(ORDINARY_BIN)} L suits a household: full within {number(FILL.value)} days, and "
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
    "buried and smelling": advice(
        f"It wants more soil: {number(SOIL_PARTS.value)} parts to 1 of ferment, and "
        f"{_range(COVER, 100)} cm over it, {_range(COVER_ANIMALS, 100)} cm where animals dig.",
        caution("digging"),
        source=COVER.source,
        standing="published",
        figures=(SOIL_PARTS, COVER, COVER_ANIMALS),
    ),
    "acidity": advice(
        f"pH {_range(ACID)} in a good ferment; above {number(ACID_LIMIT.value)} it is not sour "
        "enough. Tell me what you measure: “pH 4.2 in the blue bin”.",
        source=ACID.source,
        standing="published",
        figures=(ACID, ACID_LIMIT),
    ),
    "what bin": advice(
        "Plastic with a tight lid is best. The sour liquid eats bare metal; stainless steel or "
        "whole enamel will do if it shuts tight.",
        caution("gas"),
        source="acids dissolve iron, zinc and aluminium: chemistry",
        standing="from memory",
    ),
    "putting off": advice("Answer the reminder with 💤, or say “tomorrow”."),
    "labels": advice("Say “a label for the blue bin” and print what I post."),
    "setting": advice(
        "Say it as a wish: “set the units to us”, “set the dilution to 1:200”, “quiet from 22:00 "
        "to 06:00”. “What are our settings?” shows them all."
    ),
    "turns": advice(
        "Say “rota for the blue bin: Ines, Bram, weekly”. Who cannot make a week asks “can anyone "
        "swap my week?”"
    ),
    "for plants": advice(
        f"It feeds them once it has rested {_range(PLANT)} days in the soil; the liquid only "
        "thinned, on the soil and not on leaves you eat. Fresh or undiluted it burns roots.",
        source=PLANT.source,
        standing="published",
        figures=(PLANT,),
    ),
    "lime": advice(
        "Not in the bin: it takes the acid away that keeps the scraps. In the ground it is seldom "
        "needed: the sourness goes by itself within the weeks before planting.",
        source="lime is a base: chemistry",
        standing="from memory",
    ),
    "drying bran": advice(
        f"Spread it thin in the shade and turn it daily for {_range(DRY_DAYS)} days, until it "
        "trickles. No oven and no hot sun: heat kills the culture. Used within days, it may stay "
        "moist.",
        source=DRY_DAYS.source + "; that heat kills the culture: from memory",
        standing="published",
        figures=(DRY_DAYS,),
    ),
    "bran ready": advice(
        f"After {number(FERMENT_DAYS.value)} days airtight and warm, if it smells sweet and sour; "
        "white growth is fine. Green or black growth or a rotten smell: throw it out, damp and "
        "without sniffing it.",
        source=BOOK + ", ch. 4, on its smell; the days: common practice",
        standing="published",
        figures=(FERMENT_DAYS,),
    ),
    "what the liquid holds": advice(
        "Water of the scraps with acids, salts and living bacteria; as a feed little nitrogen, "
        "more phosphorus and potassium, and a saltiness that varies much. I know no sure figures.",
        caution("liquid"),
        source="a Swedish university's trial of the liquid, by its abstract",
        standing="published",
    ),
    "warm food": advice(
        "Let it cool first: warm scraps sweat in the bin, and heat harms the culture.",
        source="heat kills the bacteria: general knowledge",
        standing="from memory",
    ),
    "which bran": advice(
        "Wheat, rice or oat bran, whichever is to be had plain: it carries the culture and feeds "
        "it. Sawdust carries it too, but feeds it poorly.",
        source="wood holds little that the bacteria can eat: general knowledge",
        standing="from memory",
    ),
    "frozen bin": advice(
        f"Frost stops the ferment and does not kill it: stand it where it is over "
        f"{number(COLD.value)} °C ({_fahrenheit(COLD.value)} °F), leave the lid shut, drain what "
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
"""What to say, by lesson."""
