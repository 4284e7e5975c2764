"""Starter bran, as a newcomer is taught it: how much, which, how it is had, kept and tried."""

from collections.abc import Mapping

from handlers.practice.advice import Advice, advice
from handlers.practice.figure import number, ranging
from handlers.practice.goes_in import BOOK
from handlers.practice.lessons import Lesson
from handlers.practice.recipes import PACKED
from handlers.practice.starter import DRIED, DRY_DAYS, FERMENT_DAYS, KEEPS_DRY

BRAN: Mapping[Lesson, Advice] = {
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
    "keeping bran": advice(
        f"Dry, dark and airtight; dried well it keeps {number(KEEPS_DRY.value)} months. "
        "It should smell sweet and sour; with green or black growth, throw it out "
        "without sniffing it.",
        source=KEEPS_DRY.source,
        standing="published",
        figures=(KEEPS_DRY,),
    ),
    "old bran": advice(
        "Musty, rotten, or with green or black growth: throw it out, damp, without sniffing it, "
        "and not into a bin. Good bran smells sweet and sour; with no smell at all, try it on a "
        "small layer, or make new.",
        source=BOOK + ", ch. 4",
        standing="published",
    ),
    "moist bran": advice(
        f"{ranging(PACKED, 100)} % water when it is packed to ferment: a handful holds together "
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
    "bran forgotten": advice(
        "Strew the dose you missed on top now, press it down and shut the lid; the next layer "
        "brings more. If it smells of rot in the days after, tell me.",
    ),
    "drying bran": advice(
        f"Spread it thin in the shade and turn it daily for {ranging(DRY_DAYS)} days, until it "
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
    "which bran": advice(
        "Wheat, rice or oat bran, whichever is to be had plain: it carries the culture and feeds "
        "it. Sawdust carries it too, but feeds it poorly.",
        source="wood holds little that the bacteria can eat: general knowledge",
        standing="from memory",
    ),
}
