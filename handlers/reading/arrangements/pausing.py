"""Reminders that are to stop for a while, or for one member: "no reminders till Monday"."""

from collections.abc import Iterator
from datetime import timedelta

from handlers.reading.arranged import Pausing
from handlers.reading.calendar.stretches import stretch_in
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = (
    "reminder",
    "remind me",
    "remind us",
    "reminding",
    "nag me",
    "nagging",
    "digest",
    "pinging me",
    "everything",
)

_LEAD = (
    r"^(?:(?:can|could|would|will) (?:you|we) |please |bot |now |lets |let us |i want you to |"
    r"i want |we want |kindly )*"
)
_STOP = (
    r"(?:stop|pause|mute|hold|hold off|suspend|skip|silence|switch off|turn off|no(?: more)?|"
    r"dont send|quit)"
)
_REMINDERS = (
    r"(?: (?:the|any|all|all the|your|these|those|our|sending|with|on|us))*"
    r" (?:reminders?|reminding(?: us| me| everyone)?|nagging(?: us| me)?|digests?)(?: (?:off|us))?"
)
_PAUSED = Late(
    rf"{_LEAD}(?:{_STOP}{_REMINDERS}|dont remind us|(?:snooze|pause|mute|hold) everything|"
    r"(?:(?:turn|switch|put)(?: (?:the|all|all the|our|your))? )?reminders? off)"
    r" (?=until|till|til|this|next|from|between|for (?:a|the|two|three|four|ten|some|\d+|qday|next|"
    r"this)\b)"
)
_NOT_ME = Late(
    rf"{_LEAD}(?:(?:stop|quit|no more) (?:reminding|nagging|pinging|bugging|mentioning) me|"
    r"dont (?:remind|nag|ping|bug) me|(?:stop|no(?: more)?) (?:the |your )?reminders (?:to|for) me|"
    r"(?:i dont want|i want no)(?: any| your)?(?: more)? reminders)"
    r"(?: (?:please|any ?more|now|ever|again|about (?:it|this|that)|thanks))*$"
)


def pausing(message: Message) -> Iterator[Found]:
    """A sentence that stops the reminders until a day, or asks to stop one's own."""
    for phrase in phrases(message):
        if "remind" in phrase.tokens and "to" in phrase.tokens:
            continue  # "don't remind us to …" is about one date
        if (found := _paused(phrase)) is not None:
            yield found
        elif _NOT_ME.match(phrase.text):
            yield Found(*phrase.sentence, Pausing(own=True))


def _paused(phrase: Phrase) -> Found | None:
    match = _PAUSED.match(phrase.text)
    if match is None:
        return None
    start = phrase.spans[match.group().count(" ")][0]
    message, end = phrase.message, phrase.end
    stretch = stretch_in(message, start, end)
    if stretch is None:  # "for the holidays, 1 to 8 April"
        comma = next((i for i in range(start, end) if message.norms[i] == ","), end)
        stretch = stretch_in(message, comma + 1, end) if comma < end else None
    if stretch is None or stretch.last is None:
        return Found(*phrase.sentence, Pausing())
    is_until = message.norms[start] in _UNTIL
    first = stretch.first if stretch.first > message.today and not is_until else None
    return Found(*phrase.sentence, Pausing(first=first, until=stretch.last + timedelta(days=1)))


_UNTIL = words_in("until till til")
