"""Questions about what the group has settled: "what are our settings?", "what's our time zone"."""

from collections.abc import Iterator

from handlers.reading.arranged import WhatIsSet
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late

CUES = (
    "setting",
    " set",
    "zone",
    "unit",
    "metric",
    "imperial",
    "or pounds",
    "quiet hours",
    "remind",
    "habit",
    "digest",
    "nagging",
    *("use litre", "use liter", "use kilo", "use pound", "use gallon", "in litre", "in kilo"),
    *(
        "in pound",
        "to pound",
        "to kilo",
        "to litre",
        "to liter",
        "to gallon",
        "us clock",
        "r clock",
    ),
)

_OURS = r"(?:the|our|your|this group 's|this room 's|group)"
_WHICH = (
    r"(?:and |so |bot )*(?:what(?: is| 's| are)?|whats|which|show(?: me| us)?|list|tell me|see|in "
    r"which|in what)"
)
_DOES = r"(?: (?:do|does|did|are|is|have|has) (?:we|you|it|i|the (?:bot|group)|this group))?"
_ON = (
    r"(?: (?:set to|set|using|use|on|in|now|have|follow|work in|here|reckon in|for (?:us|"
    r"this group)|in this (?:group|room)))*"
)
_ASKED: tuple[tuple[str, Late], ...] = (
    ("all", Late(rf"(?:{_OURS} )?settings|"
                       rf"{_WHICH}(?: {_OURS})?(?: current| present)? settings?{_DOES}{_ON}|"
                       rf"(?:whats|what(?: is| 's| have we| has been)) set(?: up)?{_ON}|"
                       r"how (?:are we|is this group|is the bot|are you) set(?: up)?")),
    ("zone", Late(rf"{_WHICH}(?: {_OURS})?(?: current)? time ?zones?{_DOES}{_ON}")),
    ("units", Late(rf"{_WHICH}(?: {_OURS})? (?:units?|measures?){_DOES}{_ON}|"
                         r"(?:are|is) (?:we|you|it|the bot|this group) (?:on |in |using |set to )?"
                         r"(?:metric|imperial|kilos or pounds|metric or imperial)")),
    ("digest", Late(r"(?:when|what time|at what time) (?:do|does|are|is) (?:the |our |your |"
                          r"you |we )?(?:reminders?|digest|remind us|get reminded|be reminded)"
                          r"(?: come| sent| be sent| posted)?")),
    ("quiet", Late(rf"{_WHICH}(?: {_OURS})? quiet hours{_DOES}{_ON}|when (?:are|is) {_OURS} "
                         r"quiet (?:hours|time)")),
    ("habit", Late(rf"{_WHICH}(?: {_OURS})? (?:dosing |dose )?habit{_DOES}{_ON}")),
)  # fmt: skip
_MEASURES = (
    r"(?:the )?(?:metric|imperial|us|american|british|kilos|kilograms|kg|grams|lit(?:re|er)s|"
    r"pounds|lbs|ounces|pints|quarts|gallons)(?: (?:units|measures|gallons|system))?"
)
_CHANGES = (
    r"(?:set|change|switch|turn|stop|pause|mute|silence|move|make|choose|alter|adjust|snooze|end|"
    r"have|get|use|go|pick)(?: (?:up|off|on|over|back))?"
)
_HOW = (
    r"(?:(?:and |so )?(?:how|where) (?:(?:do|can|could|would|should|must) (?:i|we|you|one)|to)|"
    r"(?:can|may|could) i(?= (?:set|change|switch|turn|stop|pause|mute|silence|choose))) "
    rf"{_CHANGES}"
)
_OF = rf"(?: (?:to|{_OURS}|my|all|any|these|those))*"
_MORE = r"(?: \S+){0,6}"
_IF = r"(?:do|does|are|is|have|has)"
_WE = r"(?:we|you|they|it|the bot|this group|everyone)"
_WHETHER: tuple[tuple[str, Late], ...] = (
    ("quiet", Late(rf"{_HOW}{_OF} (?:quiet|silent) (?:hours|time){_MORE}|"
                   rf"{_HOW}{_OF} (?:reminders?|digests?|nagging|messages) (?:at night|overnight|"
                   rf"while we sleep){_MORE}|{_IF}{_OF} (?:quiet|silent) hours{_MORE}|"
                   rf"{_IF} {_WE} (?:have|keep|keeping) (?:the )?quiet (?:hours|from){_MORE}")),
    ("digest", Late(rf"{_HOW}{_OF} (?:reminders?|digests?|nagging)(?: time| hour)?{_MORE}|"
                    rf"{_IF} {_WE} (?:remind|reminding) (?:us|me|everyone) (?:at|in the|every day|"
                    rf"daily){_MORE}|{_IF}{_OF} (?:reminders?|digest) (?:on|off|at|come|"
                    rf"sent|set){_MORE}")),
    ("zone", Late(rf"{_HOW}{_OF} (?:time ?zone|zone|clock){_MORE}|"
                  rf"{_IF}{_OF} (?:time ?zone|zone|clock) (?:set to |on |in )?"
                  r"[a-z]+ ?/ ?\S+(?: / \S+)?")),
    ("units", Late(rf"{_HOW}{_OF} (?:units?|measures?|measurements|{_MEASURES}){_MORE}|"
                   rf"{_IF} {_WE} (?:use|using|on|in|know|work in|reckon in|speak|answer in|"
                   rf"understand|set to|take) {_MEASURES}(?: or {_MEASURES})?")),
    ("habit", Late(rf"{_HOW}{_OF} (?:(?:dosing |dose |spoon |weight )?habit){_MORE}|"
                   rf"{_IF} {_WE} (?:use|using|on|dose by|go by|follow|following|have) (?:the )?"
                   r"(?:weight|spoon) habit(?: here| now)?")),
)  # fmt: skip
"""How a setting is changed, or whether it is so: the words name it and change nothing."""


def settled(message: Message) -> Iterator[Found]:
    """Each question about a setting that is the whole of a sentence."""
    for phrase in phrases(message):
        what = next((what for what, asked in _ASKED if asked.fullmatch(phrase.text)), None)
        what = what or _whether(phrase)
        if what is not None:
            yield Found(*phrase.sentence, WhatIsSet(what=what))


def _whether(phrase: Phrase) -> str | None:
    """The setting that is asked about by its value, or of which it is asked how it is changed."""
    what = next((what for what, asked in _WHETHER if asked.fullmatch(phrase.text)), None)
    to_bot = phrase.to_bot or phrase.message.context.to_bot
    if what == "units" and not (to_bot or _UNITS_NAMED.search(phrase.text)):
        return None  # "do you use litres?" may be said to a neighbour
    return what


_UNITS_NAMED = Late(r"\b(?:units?|metric|imperial|how|(?:do|are) we)\b")
