"""What a bin is like, said of the one that was taken: cracked, clean, half full."""

import re

from handlers.reading.arrangements.communal import Condition
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, as_written
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_CONDITION = Late(r"^(?:the )?condition(?: of (?:the )?qbin)?(?: is)? (?P<words>\S.{0,400})$")
_FOUND = Late(
    r"^(?:i |we )?(?:have )?found (?:the )?qbin "
    r"(?!(?:under|behind|beside|near|next to|outside|inside|by|at|(?:in|on) (?:the|our|my))\b)"
    r"(?P<words>\S.{0,400})$"
)
"""What it was found to be like; "found the drum under the stairs" is where it was."""

_GIVEN = Late(
    r"^(?:i |we |have |just )*(?:handed|passed|gave|given|brought|dropped|took)\b.{0,60}\bqbin\b"
    r".{0,80}?\b(?P<words>(?:it|she|he) (?:is|'s) \S.{2,400})$"
)
"""What a bin is like, told by whoever has handed it on."""

_STATES = words_in(
    "lid tap spigot handle gasket rim strap cracked cracks leak leaks leaking leaky drips dripping "
    "broken bent missing chipped dented dirty filthy grubby sticky spotless heavy heavier lighter "
    "weighs fuller emptier smelly rusty stained jammed wobbly"
)
"""What a bin can be like; without one of these an answer to the card is only an answer."""
_WEIGHED = Late(r"\b(?:about|more like|rather|nearer|only|it is|it 's|i make it|found) \d")
_FULL = Late(
    r"\b(?:(?P<percent>\d{1,3}) ?(?:%|percent|per cent)|(?P<share>half|a third|two thirds|"
    r"a quarter|"
    r"three quarters|almost|nearly|completely|totally|brim)) (?:of the way )?(?:full|to the top)\b"
)
_SHARES = {
    "half": 0.5,
    "a third": 1 / 3,
    "two thirds": 2 / 3,
    "a quarter": 0.25,
    "three quarters": 0.75,
    "almost": 0.9,
    "nearly": 0.9,
}
_LONGEST = 40
"""Words of an answer to the card; a longer message is talk."""


def condition_told(message: Message, said: list[Phrase]) -> Found | None:
    """What a bin is like: said with that word, or in answer to the card by whoever took it."""
    if not said:
        return None
    first = said[0]
    match = _CONDITION.match(first.text) or _FOUND.match(first.text)
    if match and not first.asked and (first.bin or message.context.took):
        span = first.words(match, "words")
        if span:
            return noted(message, span[0], first.bin or message.context.took)
    given = None if first.asked or not first.bin or not first.member else _GIVEN.match(first.text)
    span = first.words(given, "words") if given else None
    if span and (
        message.has_in(_STATES, span[0], first.end) or message.signs or _FULL.search(first.text)
    ):
        return noted(message, span[0], first.bin)._replace(aside=True)
    if message.context.took and is_answer(message, said):
        return noted(message, 0, first.bin or message.context.took)
    return None


def is_answer(message: Message, said: list[Phrase]) -> bool:
    """Whether no more is told than what a bin is like, in reply to the card of the hand-over."""
    if len(message.words) > _LONGEST or any(phrase.asked for phrase in said):
        return False
    if message.has(_STATES):
        return True
    weighed = any(amount.quantity == "mass" for amount in message.amounts)
    return weighed and _WEIGHED.search(" ".join(message.norms)) is not None


def noted(message: Message, start: int, bin: str | None) -> Found:
    """What the words from `start` on say of the bin, as they are written."""
    masses = [a.value for a in message.amounts if a.quantity == "mass" and a.start >= start]
    text = " ".join(message.norms[start:])
    plan = Condition(
        words=as_written(message, start, len(message.words)),
        bin=bin,
        mass_kg=sum(masses) if masses else None,
        fill=_fill(text),
    )
    # What was smelt or seen is told to the record as well; a weight would be taken for scraps.
    is_aside = bool(message.signs) and not message.amounts
    return Found(0, len(message.words), plan, aside=is_aside)


def _fill(text: str) -> float | None:
    match = _FULL.search(text)
    if match is None:
        return 0.0 if re.search(r"\b(?:is|it 's|was|quite|all) empty\b", text) else None
    if match["percent"]:
        return min(int(match["percent"]), 100) / 100
    return _SHARES.get(match["share"], 1.0)
