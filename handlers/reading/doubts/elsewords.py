"""What shows that a deed of the craft was done to something else, and how that is written."""

from typing import NamedTuple

from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


class Else(NamedTuple):
    """What shows that a kind of deed was done to no bin."""

    cues: frozenset[str]
    """Words without one of which it is not looked for."""
    turns: Late
    itself: Late
    """Words that may tell the deed itself in the rest of the message."""


BEASTS = (
    "dog dogs cat cats fox foxes raccoon raccoons possum possums badger badgers monkey monkeys "
    "baboon baboons bear bears gull gulls seagull seagulls crow crows goat goats"
)
GOODS = "machine kettle urn fridge freezer cooker washer dishwasher fryer printer projector tumble"
_WHOSE = r"(?:(?:the|a|an|his|her|my|our|their|your|all|poor|old|good|two|three|\w+ 's|qbin) )*"
_WHERE = (
    r"(?:in|into|on|onto|over|to|by|beside|before|after|for|and|with|at|near|under|behind|from|"
    r"down|"
    r"off|out|next|qbin|while|when|then|but)"
)
"""Behind one of these stands where or when a bin was dealt with."""


def else_of(verbs: str, things: str, beside: str, turns: str, cues: str, itself: str) -> Else:
    """Things that the verbs are said of, words that may stand beside them, and turns of phrase.

    `cues` are the words of which one stands in each turn of phrase.
    """
    pattern = (
        rf"{turns}|"
        rf"\b(?:{verbs}) {_WHOSE}(?:(?!{_WHERE}\b)\w+ )?(?:{things.replace(' ', '|')})\b|"
        rf"\b(?:{verbs})\b.*\b(?:{beside.replace(' ', '|')})\b|"
        rf"\b(?:{beside.replace(' ', '|')})\b.*\b(?:{verbs})\b"
    )
    return Else(words_in(f"{things} {beside} {cues}"), Late(pattern), Late(itself))
