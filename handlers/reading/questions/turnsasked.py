"""Questions of one member's turn, and of when a bin is handed on: "when's my turn?", "am I on next
week?", "when do I hand it over?".
"""

from collections.abc import Iterator
from datetime import date

from handlers.reading.acts import Ask
from handlers.reading.calendar.weeks import named_in
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late

CUES = (
    *("my turn", "'s turn", "’s turn", "my week", "my go", "am i on", "am i next", "am i up"),
    *("when do i", "who do i", "hand it", "hand over", "passes on", "go back"),
    " back",
)
TURN = "turn"
"""In `Ask.what`: a member's own turn."""
HAND_OVER = "hand over"
"""In `Ask.what`: when a bin is handed on, and to whom."""

_TIME = r"(?: (?:qday|this week|next week|this month|next month|now|next|again|then|up|today))*"
_OF_BIN = r"(?: (?:with|for|of|on|at) (?:the )?qbin)?"
_WHOSE = r"(?:my|our|qmember 's)"
_MY_TURN = Late(
    rf"(?:when(?: is| 's)?|whens|what day is|is it|is that|isnt it|was it) (?P<whose>{_WHOSE})"
    rf" (?:next )?(?:turn|week|go|shift){_OF_BIN}{_TIME}{_OF_BIN}"
)
_AM_ON = Late(
    rf"(?:when )?(?:(?:am i)|is (?P<whose>qmember)) (?:on|next|up)(?: (?:the rota|duty|turn))?"
    rf"{_OF_BIN}{_TIME}|when (?:do i|does (?P<other>qmember)) (?:have|get|take|keep) "
    rf"(?:the )?qbin{_TIME}"
)
_HANDED = Late(
    r"(?:when|who|what day|to whom|on which day)"
    r"(?: (?:do|does|must|should|shall|am|is|will|would))? "
    r"(?:i|we|qmember|it|(?:the )?qbin) (?:have to |need to |supposed to )?"
    r"(?:(?:hand|handing|pass|passing) (?:it|(?:the )?qbin)(?: back)?"
    r"(?: (?:over|on|back|to))*|"
    rf"(?:go|goes|pass|passes|change|be handed)(?: (?:on|over|back|hands|next))+){_TIME}|"
    r"when(?: (?:do|does|will|is|'s|would))? (?:it|(?:the )?qbin) (?:come|comes|coming|be|due)"
    rf"(?: (?:back|home))+{_TIME}|"
    rf"when (?:do|does|will) (?:i|we|qmember) (?:get|have) (?:it|(?:the )?qbin) back{_TIME}"
)


def turns_asked(message: Message) -> Iterator[Found]:
    """Each question of a member's turn, or of when a bin is handed on."""
    for phrase in phrases(message) if message.context.in_room else ():
        asked = _asked(phrase)
        if asked is not None:
            yield Found(*phrase.sentence, asked)


def _asked(phrase: Phrase) -> Ask | None:
    if _HANDED.fullmatch(phrase.text):
        named = phrase.known_bins
        return Ask(topic="custody", what=HAND_OVER, bin=named[0].name if named else None)
    match = _MY_TURN.fullmatch(phrase.text) or _AM_ON.fullmatch(phrase.text)
    if match is None or not (phrase.asked or phrase.text.startswith(("when", "what"))):
        return None
    member = phrase.member or phrase.message.context.sender
    if member is None:
        return None
    return Ask(topic="custody", what=TURN, bin=phrase.bin, member=member, on=_day(phrase))


def _day(phrase: Phrase) -> date | None:
    """The first day that is asked about, if one is."""
    named = named_in(phrase.message_text, phrase.message.today)
    if named:
        return named.first
    return phrase.days[0].future if phrase.days else None
