"""What a newcomer asks about the craft: "what goes in?", "do I need to press it down?".

`lexicon/lessons.txt` holds the turns of phrase. Each is the whole of a sentence, so that talk of
other things is never answered; some hold only while the room talks of its bins.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import lru_cache, partial

from handlers.practice.lessons import LESSONS, Lesson
from handlers.reading.acts import Drain
from handlers.reading.arranged import Taught
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.questions.briefly import PLANTS
from handlers.reading.words.asking import is_question
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import lines_of

CUES = (
    *("will ", "forgot", "dug", "digging", "heavy", "clean", "what", "how ", "do i", "do we"),
    *("can ", "may ", "should", "where", "when ", "full", "filled", "why ", "is it ", "is there"),
    *("leaking", "leaks", "dripping", "drips"),
    *("does ", "blocked", "clogged", "plugged", "stuck", "jammed", "spil", "knocked over", "reek"),
    *("stinks", "smell", "liquid", "juice", "leachate", "runoff", "got at", "got into", "worms"),
    *("bottle", " jar", " jug", "flask", "cover"),
    *("must ", "ph is", "could i", "could we", "non-veg"),
    *("degrees", "°", "too hot", "too warm", "too cold", "warm enough", "no garden", "no yard"),
    *("ants all", "ants on", "ants around", "ants round", "ants near", "ants under", "ants by"),
    *("ants outside", "roaches", "woodlice", "bran went", "bran gone", "bran turned", "bran has"),
    *("bran is", "bran's", "bran got", "starter went", "starter has", "starter is", "starter's"),
    *("balcony", "no tap", "without", "metal", "steel", "tin ", "enamel", "wooden"),
    *(
        "factory",
        " tea ",
        "which ",
        "explain",
        "leav",
        "left",
        "quit",
        "moved ",
        "moving ",
        "the lid",
    ),
    *("frozen", "froze", "wrap ", "is it ", "will it", "will the", "too ", "longer", "gets "),
    *("one go", "at a time"),
    *("warm food", "hot food", "at once", "sour or", "garage", "cellar", "basement"),
    *("is all", "is every", "is any", "mould", "mold", "the batch", "septic", "lid was", "lid is"),
    *("our batch", "sawdust", "wheat", "rice bran", "oat bran", "plain bran"),
    *("coming with", "going with", "with me", "with us", "with h", "no scale", "the law"),
    *("is that ", "is this "),
)

_LEAD = (
    r"(?:(?:and|so|but|ok|hi|hello|hey|all|everyone|bot|pailkeeper|please|sorry|quick question|"
    r"new here|i am new here|i am new|can (?:you|someone|anyone) tell me|tell me|does anyone know|"
    r"do you know|remind me|just wondering|then|also|actually|exactly) )*"
)
_TAIL = (
    r"(?: (?:please|then|exactly|again|thanks|bot|anyway|though|now|at all|in general|with this|"
    r"for bokashi|with bokashi|in bokashi|do you think|here|really|first|today|too|properly|"
    r"normally|usually|afterwards|after))*"
)
_NAMED = {
    "<i>": r"(?:i|we|you|one|people)",
    "<bin>": (
        r"(?:(?:the |a |my |our |your |this |that |one )?(?:bokashi )?"
        r"(?:qbin|bins?|buckets?|pails?|barrels?|tubs?|drums?)|it|one)"
    ),
    "<it>": (
        r"(?:it|them|this|that|the (?:finished |fermented |ready |old )?(?:stuff|scraps|contents|"
        r"ferment|bokashi|qbin|bin|bucket|layers?))"
    ),
    "<may>": (
        r"(?:can|could|may|should|do|must|am|are|is it ok(?:ay)? (?:if|to)|is it safe to|would)"
    ),
    "<liquid>": (
        r"(?:the |this |my |our )?(?:liquid|juice|leachate|tea|bokashi tea|bokashi juice|run ?off)"
    ),
    "<bran>": r"(?:the |this |my |our )?(?:starter |bokashi )?(?:bran|starter)",
    "<plant>": rf"(?:{'|'.join(sorted(PLANTS))})",
}


def lessons(message: Message) -> Iterator[Found]:
    """The general questions of a message, each that is the whole of a sentence."""
    said = set()
    for phrase in phrases(message):
        lesson = _of_drawn(phrase) or _lesson(phrase)
        if lesson is not None and lesson not in said:
            said.add(lesson)
            yield Found(*phrase.sentence, Taught(lesson=lesson))


def _of_drawn(phrase: Phrase) -> Lesson | None:
    """What is asked of "it" where the talk is on a draining: "what do I do with it?"."""
    context = phrase.message.context
    drawn = isinstance(context.last, Drain) or isinstance(context.just_told, Drain)
    text = _DRAWN.sub("the liquid", phrase.text) if drawn else phrase.text
    if text == phrase.text:
        return None
    lesson = _lesson(replace(phrase, text=text))
    fits = lesson in _OF_LIQUID and (lesson == "keeping liquid" or _is_question(phrase))
    return lesson if fits else None


_DRAWN = Late(r"\b(?:all of (?:it|that)|the lot|it|that|this)\b")
_OF_LIQUID: frozenset[Lesson] = frozenset(
    {
        *("using liquid", "keeping liquid", "for plants", "colour of the liquid", "much liquid"),
        "what the liquid holds",
    }
)
"""Lessons that "it" may ask for behind a draining."""


def _lesson(phrase: Phrase) -> Lesson | None:
    if _is_full(phrase):
        return "when it is full"
    in_talk = phrase.to_bot or phrase.message.context.of_bins
    asked = in_talk or _is_question(phrase)
    each = _EACH if (_ANY if asked else _ANY_TOLD).fullmatch(phrase.text) else ()
    if not each and in_talk and _ANY_IN_TALK.fullmatch(phrase.text):
        each = _EACH_IN_TALK
    lesson = next((name for name, words in each if words.fullmatch(phrase.text)), None)
    if lesson is None or not (lesson in _TOLD_OF or asked):
        return None
    if lesson == "leaving" and phrase.message.context.on_offer:
        return None  # "I'll take the shed bin with me" may say yes to the offer
    named = any(ref.known and ref.name for ref in phrase.message.bins)
    return None if named and lesson in _OF_ONE_BIN else lesson


_TOLD_OF: frozenset[Lesson] = frozenset(
    {
        *("bran forgotten", "draining forgotten", "dug up", "weight", "no garden", "blocked tap"),
        *("spilled", "buried and smelling", "bad smell", "colour of the liquid", "old bran"),
        *("ants outside", "lid open", "leaving", "weighing", "keeping liquid"),
    }
)
_OF_ONE_BIN: frozenset[Lesson] = frozenset(
    {"when to bury", "when to plant", "when to seal", "when to drain", "bad smell"}
)
"""What the book can say more of, where a bin is named."""


def _is_question(phrase: Phrase) -> bool:
    return phrase.asked or phrase.to_bot or is_question(phrase.tokens, False, frozenset())


_FULL = Late(
    r"(?:(?P<bin>(?:the |our |my )?(?:qbin|bin|bucket|pail)|it) (?:is |'s |got |looks )?)?(?:now |"
    r"nearly |almost |completely |totally |already )*"
    r"(?P<full>full|filled(?: right)?(?: up)? to the (?:top|brim|rim)|full up|brim ?full|"
    r"full to the (?:top|brim|rim)|chock full)"
    r"(?: now| already| again)*"
)


def _is_full(phrase: Phrase) -> bool:
    """ "The shed bin is full", "filled to the top", with nothing else in the message."""
    match = _FULL.fullmatch(phrase.text)
    if match is None or phrase.asked or len(phrase.message.sentences) > 1:
        return False
    if not match["bin"]:
        return match["full"] != "full"
    if match["bin"] == "it":
        return phrase.to_bot or getattr(phrase.message.context.last, "bin", None) is not None
    return any(ref.plain or (ref.known and not ref.place) for ref in phrase.message.bins)


_IN_TALK = "~ "
"""What a line begins with whose words may be of anything, but where the bins are talked of."""


def _source(names: Sequence[Lesson], before: str = "") -> str:
    """The turns of phrase of some lessons, as one pattern."""
    turns = "|".join(words for name in names for words in _turns()[before + name])
    return rf"{_LEAD}(?:{turns}){_TAIL}" if turns else r"(?!)"


@lru_cache(maxsize=1)
def _turns() -> dict[str, list[str]]:
    turns: dict[str, list[str]] = {
        before + name: [] for name in LESSONS for before in ("", _IN_TALK)
    }
    for line in lines_of("lessons.txt"):
        name, _, words = line.partition(" | ")
        for short, full in _NAMED.items():
            words = words.replace(short, full)
        turns[name].append(words)
    return turns


_ANY = Late(partial(_source, tuple(LESSONS)))
_ANY_TOLD = Late(partial(_source, tuple(name for name in LESSONS if name in _TOLD_OF)))
"""All lessons, and those that need not be asked for: few sentences are any of them."""
_ANY_IN_TALK = Late(partial(_source, tuple(LESSONS), _IN_TALK))
_EACH = tuple((name, Late(partial(_source, (name,)))) for name in LESSONS)
_EACH_IN_TALK = tuple((name, Late(partial(_source, (name,), _IN_TALK))) for name in LESSONS)
