"""Refusals, delays, strikings and doubts that are between people, and answer nothing of ours."""

import re

from handlers.reading.amending import plain_text
from handlers.reading.message import Message

_OURS = (
    r"(?!qbin\b|it\b|this\b|that\b|my\b|our\b|the (?:qbin|turn|week|offer|rota|bin|next)\b|"
    r"turns?\b|next\b|one\b|any\b|another\b|weeks?\b|bins?\b|today\b|tomorrow\b|tonight\b|on\b|over\b|"
    r"(?:mon|tues|wednes|thurs|fri|satur|sun)days?\b|now\b|more\b|so\b|either\b|sorry\b|for\b|"
    r"you\b|him\b|her\b|them\b|anything\b|right\b|much\b)"
)
_OF_ELSE = {
    "decline": re.compile(
        rf"\b(?:cant|wont|couldnt) (?:do|make) {_OURS}(?:the )?[a-z]+|"
        rf"\b(?:pass on|decline|refuse|say no to) (?:the|your|his|her|some) "
        r"(?!qbin\b|turn\b|offer\b|bin\b|week\b|next\b|rota\b|bucket\b)[a-z]+|"
        r"\b(?:play|start|eat|sing|carry on|go) without me\b"
    ),
    "retract": re.compile(
        r"\b(?:delete|cancel|remove|scrap) (?:that|this) (?:pic|pics|photo|picture|video|order|"
        r"booking|meeting|subscription|app|number|song|game|party)\b|"
        r"\bscratch that ,? ?(?:\w+ ){1,3}for (?:tea|dinner|supper|lunch|breakfast)\b|"
        r"\b(?:scratch|scrap) that ,? (?:\S+ ){0,4}(?:works|suits|is better|fits|won|lost|scored|"
        r"equalised)\b|"
        r"\btake (?:that|it|this) down (?:from|off) (?:the|that|your|his|her) "
        r"(?!list|log|record|book|count|sheet)|"
        r"\b(?:ignore|forget|disregard) what i said about "
        r"(?!that|it|the last|(?:the |my )?(?:\d|layer|drain|scraps|bran))|"
        r"\b(?:ignore|forget) that (?:message|email|letter|call) from\b|"
        r"\bwipe that (?:[a-z]+ )?(?:look|smile|grin|smirk|expression)\b|"
        r"\b(?:rub|wipe|take) (?:that|the) last (?:bit|drop|piece|slice|biscuit|cake|smear)\b|"
        r"\berase the (?:black|white|chalk)?board\b|"
        r"\bundo that (?:[a-z]+ )?(?:button|zip|knot|bow|lace|screw|buckle|belt)\b|"
        r"^take it away ,|\bmake that (?!entry|record|one|last|layer|message)[a-z]+ vanish\b|"
        r"\bguest list\b|\bto the waiter\b|"
        r"\btake that back ,? (?:the|my|his|her|your) (?:joke|compliment|insult|remark)\b|"
        r"\bwrong , it (?:is|'s|was) a\b"
    ),
    "amend": re.compile(
        r"\bmake (?:that|it) \S+ (?:coffees|teas|beers|lagers|burgers|pizzas|seats|places|tickets|"
        r"chairs|rooms|beds|portions)\b|"
        r"\bmake (?:that|it) \S+ (?:pints|halves|cups|glasses)\b.{0,30}\b(?:brought|here|coming|"
        r"joining|staying|thirsty|turned up|brother|sister|mates?)\b|"
        r"\bthe (?:milk|beer|wine|paint|petrol|diesel|heating oil) i mean\b|"
        r"\b(?:at|to|told|tell) the (?:deli|waiter|waitress|butcher|pub|bar|chippy|restaurant|vet|"
        r"doctor|nurse|sushi place|door|barber)\b|"
        r"\bwhen the (?:fair|circus|bus|train|post) came\b"
    ),
    "done": re.compile(
        r"\b(?:homework|chores|antibiotics|exams?|marking|ironing|dishes|taxes|revision|shopping)"
        r"(?: is| all)? done\b|\bfinished with (?:the )?(?:antibiotics|exams|dentist|book)\b|"
        r"\bdone in\b(?: ,| $|$)|\bdone as a [a-z]+\b"
    ),
    "later": re.compile(
        r"^what a\b|\b(?:ring|phone|telephone|text) (?:me|us) (?:again|back|later|tonight)\b|"
        r"\bgive (?:me|us) a (?:bell|ring|call|buzz|tinkle)\b|"
        r"\bfor (?:ball|cricket|football|golf|tennis|rugby)\b|"
        r"\b(?:days?|weeks?) for the (?!qbin|bin|bucket|turn|rota|layer|bran|soil|trench)[a-z]+"
    ),
    "ask custody": re.compile(r"^(?:says|said) who$"),
}


def is_aside(kind: str, message: Message) -> bool:
    """Whether an answer or question of that kind speaks of other things, or to another person."""
    if message.context.after_bot:
        return False
    of_else = _OF_ELSE.get(kind)
    if of_else is None or message.bins:
        return False
    return of_else.search(plain_text(message)) is not None or (
        kind == "later" and not message.bot and _speaks_to_a_member(message)
    )


def _speaks_to_a_member(message: Message) -> bool:
    """ "Remind me tomorrow, Ruth": set off by a stop on its left, or first of all."""
    norms = message.norms
    return any(
        (norms[m.start - 1] == "," if m.start else norms[m.end : m.end + 1] == [","])
        for m in message.members
    )
