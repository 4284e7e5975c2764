"""Sharing with neighbours, as a newcomer is taught it: keepers, turns, reminders, and the law."""

from collections.abc import Mapping

from handlers.practice.advice import Advice, advice
from handlers.practice.bins import ORDINARY_BIN
from handlers.practice.days import FILL
from handlers.practice.density import PRESSED_MIXED
from handlers.practice.figure import Figure, number
from handlers.practice.lessons import Lesson
from handlers.practice.outlook import SEED_KG_WEEK

SHARERS = Figure(
    "people who fill an ordinary bin in the days it may take",
    round(ORDINARY_BIN.value * PRESSED_MIXED.value / (SEED_KG_WEEK.value * FILL.value / 7)),
    "people",
    "its capacity by the pressed density, over what a person throws out in that time",
    "derived",
)

GROUP: Mapping[Lesson, Advice] = {
    "leaving": advice(
        "What I know of turns and bins stays till it is said: “take Zoe off the rota”, “Bram takes "
        "over the blue bin”.",
        "If a bin goes away for good: “take the blue bin out of use”.",
    ),
    "sharing a bin": advice(
        f"As many as it takes to fill it within {number(FILL.value)} days, rather sooner: about "
        f"{number(SHARERS.value)} people for {number(ORDINARY_BIN.value)} L. Ask me “how many bins "
        "do we need for 4 people?”",
        source=f"{FILL.source}; {SEED_KG_WEEK.source}",
        standing="published",
        figures=(FILL, ORDINARY_BIN, SHARERS, PRESSED_MIXED, SEED_KG_WEEK),
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
    "handing it over": advice(
        "Say “handing the blue bin to Bram on Friday”; Bram says “I'll take it”. With no name I "
        "ask everybody.",
    ),
    "going away": advice(
        "Say “I'm away till Monday”: what is yours to do meanwhile is asked of somebody else; or "
        "“…, Bram looks after my bin”. A sealed bin needs only draining.",
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
}
