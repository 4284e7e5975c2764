"""Reminders wished for at no day of their own: "the evening before", "when it's thawed"."""

from datetime import time

from handlers.reading.arranged import Untimed
from handlers.reading.arrangements.pared import Pared
from handlers.reading.calendar.hours import PARTS, hour_at
from handlers.reading.words.late import Late

CUES = (" before", "ahead", "earlier", "in advance", "tell us", "warn ")

_LEADS = (
    r"(?:(?:hey|hi|hello|ok|so|also|and|then|but|please|can you|could you|would you|will you|"
    r"can we|actually|sorry|,|:|-|just|no|better) )*"
)
_SAY = (
    r"(?:(?:remind|tell|warn|ping|nudge|notify|alert|message) "
    r"(?:me|us|everyone|everybody|all|people|qmember)|let (?:me|us|everyone|everybody) know)"
)
_SPAN = (
    r"(?:(?:the|an?|one|1|(?P<two>two|2|a couple of|three|3)|half an?|\d\d?) )?"
    r"(?P<unit>days?|evenings?|nights?|mornings?|afternoons?|weeks?|fortnight|weekend|hours?|"
    r"minutes?|bit|little)"
)
_BEFORE = rf"{_SPAN} (?:before(?:hand)?|ahead|in advance|earlier|sooner)"
_AHEAD = Late(
    rf"{_LEADS}{_SAY}(?: (?:please|of (?:it|this|that)|about (?:it|this|that)))* "
    rf"(?:{_BEFORE}|beforehand|in advance|ahead|earlier|sooner)(?: of| that| when| if)?"
    r"(?: (?P<rest>\S+(?: \S+){0,9}?))?(?: please| too| as well| as usual)*"
)
_AHEAD_OF_IT = Late(
    rf"{_LEADS}(?:make (?:it|that)|(?:i|we) (?:mean|meant)|can (?:it|that) (?:be|come)|rather)? ?"
    rf"{_BEFORE}(?: of)?(?: (?P<rest>\S+(?: \S+){{0,9}}?))?(?: please| instead)*"
)
_SOONER = Late(r"\b(?:earlier|sooner)\b")
_ONCE = Late(
    rf"{_LEADS}{_SAY}(?: (?:please|again|about (?:it|this|that)))* (?:when|once|if|as soon as) "
    r"(?!(?:i|we|im|my|our|you|to|is|are|do|does|did)\b)\S+.*"
)
_DAYS = {"week": 7, "fortnight": 14}
_TWO = {"three": 3, "3": 3}


def untimed(text: Pared, *, asked: bool) -> Untimed | None:
    """Whether a reminder is wished for so long before something, or once something is so."""
    match = _AHEAD.fullmatch(text.text)
    if match is None and text.message.context.on_reminder:
        match = _AHEAD_OF_IT.fullmatch(text.text)
    if match is None:
        is_once = not asked and _ONCE.fullmatch(text.text) is not None
        return Untimed(once=True) if is_once else None
    unit = (match["unit"] or "").removesuffix("s")
    hour, rest = _hour(text, unit), match["rest"] or ""
    words = "" if hour and rest.startswith("at ") else text.said(match, "rest") if rest else ""
    of_day = unit in PARTS or unit in ("day", *_DAYS)
    return Untimed(
        words=words,
        days=_DAYS.get(unit, _TWO.get(match["two"], 2) if match["two"] else 1) if of_day else None,
        hour=hour or PARTS.get(unit),
        instead=_SOONER.search(text.text) is not None,
    )


def _hour(text: Pared, unit: str) -> time | None:
    """ "The evening before at 8": the hour that is said last."""
    norms = text.message.norms
    at = next((i for i in reversed(text.at) if norms[i] == "at"), None)
    hour = hour_at(text.message.words, norms, at) if at is not None else None
    if hour is None or hour.end <= text.at[-1]:
        return None
    is_late = unit in ("evening", "night", "afternoon") and hour.at < _NOON
    return hour.at.replace(hour=hour.at.hour + _NOON.hour) if is_late else hour.at


_NOON = time(12)
