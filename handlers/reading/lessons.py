"""What a newcomer asks about the craft: "what goes in?", "do I need to press it down?".

`lexicon/lessons.txt` holds the turns of phrase. Each is the whole of a sentence, so that talk of
other things is never answered.
"""

import re
from collections.abc import Iterator, Sequence
from functools import lru_cache

from handlers.practice.lessons import LESSONS, Lesson
from handlers.reading.arranged import Taught
from handlers.reading.asking import is_question
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.vocabulary import lines_of

CUES = (
    *("what", "how ", "do i", "do we", "can ", "should", "where", "when "),
    *("why ", "is it ", "is there", "need", "does ", "no garden", "no tap", "without"),
)

_LEAD = (
    r"(?:(?:and|so|but|ok|hi|hello|hey|all|everyone|bot|pailkeeper|please|sorry|quick question|"
    r"new here|i am new here|i am new|can (?:you|someone|anyone) tell me|tell me|does anyone know|"
    r"do you know|remind me|just wondering|then|also|actually|exactly) )*"
)
_TAIL = (
    r"(?: (?:please|then|exactly|again|thanks|bot|anyway|though|now|at all|in general|with this|"
    r"for bokashi|with bokashi|in bokashi|do you think|here|really|first|today|too|properly))*"
)
_NAMED = {
    "<i>": r"(?:i|we|you|one|people)",
    "<bin>": (
        r"(?:(?:the |a |my |our |your |this |that )?(?:bokashi )?"
        r"(?:qbin|bins?|buckets?|pails?)|it|one)"
    ),
    "<it>": (
        r"(?:it|them|this|that|the (?:stuff|scraps|contents|ferment|bokashi|qbin|bin|bucket|"
        r"layers?))"
    ),
    "<may>": (
        r"(?:can|could|may|should|do|must|am|are|is it ok(?:ay)? (?:if|to)|is it safe to|would)"
    ),
    "<liquid>": (
        r"(?:the |this |my |our )?(?:liquid|juice|leachate|tea|bokashi tea|bokashi juice|run ?off)"
    ),
    "<bran>": r"(?:the |this |my |our )?(?:starter |bokashi )?(?:bran|starter)",
}


def lessons(message: Message) -> Iterator[Found]:
    """The general questions of a message, each that is the whole of a sentence."""
    said = set()
    for phrase in phrases(message):
        lesson = _lesson(phrase)
        if lesson is not None and lesson not in said:
            said.add(lesson)
            yield Found(*phrase.sentence, Taught(lesson=lesson))


def _lesson(phrase: Phrase) -> Lesson | None:
    if not (phrase.asked or phrase.to_bot or is_question(phrase.tokens, False, frozenset())):
        return None
    lesson = next((name for name, words in _patterns() if words.fullmatch(phrase.text)), None)
    named = any(ref.known and ref.name for ref in phrase.message.bins)
    return None if named and lesson is not None and lesson.startswith("when to") else lesson


@lru_cache(maxsize=1)
def _patterns() -> Sequence[tuple[Lesson, re.Pattern[str]]]:
    """The turns of phrase of each lesson, as one pattern."""
    return [
        (name, re.compile(rf"{_LEAD}(?:{'|'.join(_turns()[name])}){_TAIL}")) for name in LESSONS
    ]


@lru_cache(maxsize=1)
def _turns() -> dict[str, list[str]]:
    turns: dict[str, list[str]] = {name: [] for name in LESSONS}
    for line in lines_of("lessons.txt"):
        name, _, words = line.partition(" | ")
        for short, full in _NAMED.items():
            words = words.replace(short, full)
        turns[name].append(words)
    return turns
