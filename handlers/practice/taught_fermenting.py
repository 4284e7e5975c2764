"""The sealed bin, as a newcomer is taught it: its smell and sourness, its days, its liquid."""

from collections.abc import Mapping

from handlers.practice.advice import Advice, advice
from handlers.practice.cautions import caution
from handlers.practice.days import DRAIN, FERMENT, FILL, LATE, PLANT
from handlers.practice.figure import number, ranging
from handlers.practice.goes_in import BOOK
from handlers.practice.lessons import Lesson
from handlers.practice.trouble import ACID, ACID_LIMIT

_WEEKS = (FILL.value + FERMENT.value + PLANT.value) / 7

FERMENTING: Mapping[Lesson, Advice] = {
    "when to drain": advice(
        f"Every {ranging(DRAIN)} days, also while it is sealed; that little or nothing comes is no "
        "fault.",
        caution("liquid"),
        source=DRAIN.source,
        figures=(DRAIN,),
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
    "keeping liquid": advice(
        "Use it the same day: in air it soon stinks, and in a closed bottle gas builds up and can "
        "burst it, so never shut one tight.",
        "Older than two days, or smelling rotten: not on plants, but down the drain with plenty of "
        "water, if local rules allow.",
        source=BOOK,
        standing="published",
    ),
    "too long": advice(
        f"It comes to no harm for weeks if the lid stays shut and it is drained; I call it late "
        f"after {number(LATE.value)} days, since bins are wanted again.",
        source=LATE.source,
        figures=(LATE,),
    ),
    "whole course": advice(
        f"Filling up to {number(FILL.value)} days, then {ranging(FERMENT)} days sealed, then "
        f"{ranging(PLANT)} days in warm soil before planting: up to {number(_WEEKS)} weeks in all.",
        source=BOOK,
        standing="published",
        figures=(FILL, FERMENT, PLANT),
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
    "draining forgotten": advice(
        "Drain it now. If it smells of pickles no harm is done; if it smells of rot, tell me: it "
        "wants more starter and dry paper.",
    ),
    "colour of the liquid": advice(
        "Pale to dark brown, or red from beetroot, clear or cloudy: it is what went in. It should "
        "smell sour, not rotten.",
    ),
    "bad smell": advice(
        "Sour is right. If it smells of rot: drain it, strew half as much starter again on top, "
        "press, and check that the lid seals.",
        "Tell me what you smell, such as “the blue bin smells of ammonia”.",
        source=BOOK + ", ch. 6",
        standing="published",
    ),
    "acidity": advice(
        f"pH {ranging(ACID)} in a good ferment; above {number(ACID_LIMIT.value)} it is not sour "
        "enough. Tell me what you measure: “pH 4.2 in the blue bin”.",
        source=ACID.source,
        standing="published",
        figures=(ACID, ACID_LIMIT),
    ),
    "what the liquid holds": advice(
        "Water of the scraps with acids, salts and living bacteria; as a feed little nitrogen, "
        "more phosphorus and potassium, and a saltiness that varies much. I know no sure figures.",
        caution("liquid"),
        source="a Swedish university's trial of the liquid, by its abstract",
        standing="published",
    ),
}
