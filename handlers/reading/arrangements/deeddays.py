"""A deed that is to be done on a day to come, or cannot be before it: "let's bury everything on
Saturday the 4th", "can't bury this week, the ground's waterlogged", "can we push the burial to next
weekend?".

Whether such a deed is due at all is known to the book alone: see `handlers/planning/putoff.py`.
"""

import re
from collections.abc import Iterator
from datetime import date, timedelta

from handlers.reading.acts import Later
from handlers.reading.arranged import Deed
from handlers.reading.arrangements.putoff import put_off_by
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late

CUES = ("bury", "burial", "seal ", "sealing", "drain ", "draining")
PROPOSED = "proposed"
"""The rule of what neighbours are asked to agree on."""
GROUND_WAITS = timedelta(days=7)
"""So long a burial rests where the ground does not let it and no day is said."""

_MOST_SENTENCES, _LONGEST = 3, 30
"""Sentences and words of a message; a longer one tells of other things."""

_VERB = r"(?:bury|seal|drain)(?: up)?"
_NOUN = r"(?:burials?|burying|sealing|draining)"
_BIN = r"(?:the |my |our )?qbin(?: one)?"
_ALL = (
    r"(?:everything|all(?: of (?:it|them)| the bins| our bins)?|both(?: of them| bins)?|the lot|"
    r"the bins|them|them all|those)"
)
_THING = rf"(?:it|that|this(?! week)|mine|ours|(?:my|our) (?:bin|one|bucket)|{_BIN}|{_ALL})"
_WHAT = rf"(?: {_THING})?(?: (?:all|together))*"
_SOFTLY = r"(?: (?:just|all|probably|maybe|perhaps|only|better|then|also|rather|try to))*"
_DAY = (
    r"(?: (?:on|at|by|over|for|the|instead|then|together|maybe|perhaps|probably|or so|if it 's|"
    r"if it is|if the weather is|is|are|weather permitting|dry|fine|warm|ok|good|first thing|"
    r"in the (?:morning|afternoon|evening)|morning|afternoon|evening|at \d+|about|around|\d{1,2}|"
    r"am|pm))*"
)
_ON = rf"{_DAY} qday{_DAY}"
_OWN = r"(?:(?:i|we) (?:will|shall|can|could|want to|plan to|mean to|am going to|are going to))"
_LETS = (
    r"(?:let 's|let us|lets|shall we|should we|could we|can we|shall i|how about we|"
    r"why dont we|we should|we could)"
)
_MOVE = (
    r"(?:push|move|put off|put|postpone|delay|shift|leave|hold off|hold off on|hold|wait with|"
    r"reschedule|do)"
)
_BY = r"(?: (?:back|off|out))*(?: (?:to|till|until|til|for|by|on|over))?"
_SPAN = (
    r"(?:(?:another|a|one|two|three|four|five|six|\d{1,2})"
    r"(?: (?:more|or two|other|further))* (?:days?|weeks?|fortnight|weekend))"
)
_LEAD = (
    r"(?:because|cos|as|since|if|when|too|so|sorry|folks|all|everyone|no|my|i|we|it|weather|the)"
)
_WHY = rf"(?P<why> (?:{_LEAD}|ground|soil|earth|rain)(?: (?!but|unless)\S+){{0,10}})?"
_RECORD = Late(
    r"\b(?:drained|sealed|buried|emptied|added|put|opened|filled|topped|did|done|got|fed|went|"
    r"smells?|mould|q?bin)\b"
)
"""What is told besides is no reason."""
_PLANNED = Late(rf"(?:{_OWN}|(?P<ask>{_LETS})){_SOFTLY} (?P<deed>{_VERB}){_WHAT}{_ON}{_WHY}")
_DOING = Late(
    rf"(?:(?:i|we) (?:am|are) |(?P<ask>how about |what about ))?"
    rf"(?P<deed>burying|sealing|draining){_WHAT}{_ON}{_WHY}"
)
_THEN = Late(rf"(?:so )?(?:the )?(?P<deed>{_NOUN})(?: is| then)?{_ON}")
"""Right behind our words: "burial on Saturday then"."""
_MOVED = Late(
    rf"(?:(?:{_OWN}|(?P<ask>{_LETS})){_SOFTLY} )?(?P<way>{_MOVE}) (?:the |our |my )?"
    rf"(?P<deed>{_NOUN})(?: (?:of|for) {_THING})?{_BY}(?: {_SPAN}|{_ON}){_DAY}{_WHY}"
)
_GROUND = r"(?:the )?(?:ground|soil|earth|bed)(?: (?!not|never)\S+){1,4}"
_TOO = r"too (?:wet|cold|muddy|frozen|boggy|hard|icy|snowy|hot|dark|windy)(?: out| outside)?"
_CANNOT = Late(
    rf"(?:(?P<before>{_GROUND}) )?(?:(?:so |and )?(?:i |we )?(?:cant|cannot|wont|will not|couldnt|"
    r"not (?:able|going) to)(?: (?:really|be able to|get to|manage to|possibly))*|"
    rf"(?:it |ground |the ground )?(?:is |'s )?(?:still |far |all |much )*(?P<too>{_TOO}) to)"
    rf" (?P<deed>{_VERB}){_WHAT}(?: yet| now| today)?(?: (?:before|till|until|til))?"
    rf"(?:(?P<on>{_ON})| (?P<week>this week))?{_WHY}"
)
_UNFIT = Late(
    r"\b(?:ground|soil|earth|bed|it)(?: (?:is|'s|still|so|all|far|too|rock|under|much))* "
    r"(?:frozen|waterlogged|sodden|soaked|soaking|flooded|wet|hard|solid|snow|boggy|muddy)\b"
)
_DEEDS: dict[str, Deed] = {"bur": "bury", "sea": "seal", "dra": "drain"}


def deed_days(message: Message) -> Iterator[Found]:
    """Each sentence that puts a deed of the craft on a day to come, or off until then."""
    said = phrases(message) if message.context.in_room and len(message.words) <= _LONGEST else ()
    if len(said) > _MOST_SENTENCES:
        return
    for phrase in said:
        later = _put_on(phrase)
        if later is not None:
            yield Found(*phrase.sentence, later)


def _put_on(phrase: Phrase) -> Later | None:
    text, today = phrase.text, phrase.message.today
    cannot = _CANNOT.fullmatch(text)
    match = cannot or _PLANNED.fullmatch(text) or _DOING.fullmatch(text) or _MOVED.fullmatch(text)
    then = phrase.message.context.after_bot and not (match or phrase.asked)
    match = match or (_THEN.fullmatch(text) if then else None)
    if match is None or _tells_more(phrase, match):
        return None
    said = match.groupdict()
    if cannot:
        on = _monday(today) if said["week"] else _said_day(phrase) if said["on"] else None
        if on is None and said["deed"].startswith("bury") and _lies_in_ground(cannot):
            on = today + GROUND_WAITS
        proposed = False
    else:
        if said.get("way") == "do" and "qday" not in text:
            return None  # "let's do the burying" has a day, and does not wait so long
        on = _said_day(phrase)
        proposed = then or bool(said.get("ask")) or phrase.asked
    if on is None or len(phrase.bins) > 1 or (phrase.strange_bin and not phrase.bin):
        return None
    return Later(
        what=_DEEDS[match["deed"][:3]],
        bin=phrase.bin,
        on=on,
        each=True if proposed and not _is_own(phrase) else None,
        rules=(PROPOSED,) if proposed else (),
    )


def _lies_in_ground(match: re.Match[str]) -> bool:
    """Whether it is the ground that does not let it."""
    why = f"{match['before'] or ''} {match['why'] or ''}"
    return match["too"] is not None or _UNFIT.search(why) is not None


def _tells_more(phrase: Phrase, match: re.Match[str]) -> bool:
    """Whether what stands behind it is no reason, but something else that is told or asked."""
    why = match.groupdict().get("why") or ""
    return bool(why) and (_RECORD.search(why) is not None or bool(phrase.message.measured()))


def _is_own(phrase: Phrase) -> bool:
    """Whether it is said of what the sender has to do, or of one bin."""
    return phrase.bin is not None or not _OWNED.isdisjoint(phrase.tokens)


_OWNED = frozenset({"mine", "my", "i"})


def _said_day(phrase: Phrase) -> date | None:
    """The day to come that the sentence names, or so many days from today on."""
    today = phrase.message.today
    days = [day.past if day.past > today else day.future for day in phrase.days if not day.loose]
    if ahead := [day for day in days if day > today]:
        return ahead[0]
    counted = None if phrase.days else put_off_by(phrase.message)
    return today + timedelta(days=round(counted)) if counted else None


def _monday(today: date) -> date:
    return today + timedelta(days=7 - today.weekday())
