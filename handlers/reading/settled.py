"""Questions about what the group has settled: "what are our settings?", "what's our time zone"."""

from collections.abc import Iterator

from handlers.reading.arranged import WhatIsSet
from handlers.reading.found import Found
from handlers.reading.late import Late
from handlers.reading.message import Message
from handlers.reading.phrases import phrases

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


def settled(message: Message) -> Iterator[Found]:
    """Each question about a setting that is the whole of a sentence."""
    for phrase in phrases(message):
        what = next((what for what, asked in _ASKED if asked.fullmatch(phrase.text)), None)
        if what is not None:
            yield Found(*phrase.sentence, WhatIsSet(what=what))
