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
        r"(?!qbin\b|turn\b|offer\b|bin\b|week\b|next\b|rota\b|bucket\b)[a-z]+"
    ),
    "retract": re.compile(
        r"\b(?:delete|cancel|remove|scrap) (?:that|this) (?:pic|pics|photo|picture|video|order|"
        r"booking|meeting|subscription|app|number|song|game|party)\b|"
        r"\bscratch that ,? ?(?:\w+ ){1,3}for (?:tea|dinner|supper|lunch|breakfast)\b|"
        r"\bscratch that ,? ?(?:(?:on|the|\w*day|\w*noon|morning|evening|\d+|\w+teen) )+"
        r"(?:works|suits|(?:is|'s) (?:better|fine|good|best))\b"
    ),
    "amend": re.compile(
        r"\bmake (?:that|it) (?:\w+ )?(?:pints?|halves|beers?|wines?|coffees?|teas?|pizzas?|"
        r"tickets?)\b.* (?:brought|here|coming|joining|joined|came|thirsty|as well|too)\b"
    ),
    "later": re.compile(r"^what a\b"),
    "ask custody": re.compile(r"^(?:says|said) who$"),
}


def is_aside(kind: str, message: Message) -> bool:
    """Whether an answer or question of that kind speaks of other things, or to another person."""
    if message.context.after_bot and kind not in ("retract", "amend"):
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
